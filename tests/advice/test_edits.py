"""Changes as edits of the text: the exact span, and nothing that does not read as it should."""

from __future__ import annotations

import pytest

from gclint.advice.edits import edited, edits_of, words_on
from gclint.tables.finding import Change, SetWord


def change(*sets: tuple[int, str, float | None, float]) -> Change:
    return Change("", tuple(SetWord(*each) for each in sets))


@pytest.mark.parametrize(
    ("text", "set_word", "expected"),
    [
        ("G1 X40 F400", ("F", 400.0, 1855.0), "G1 X40 F1855"),
        ("g1x40f400", ("F", 400.0, 1855.0), "g1x40f1855"),
        ("N20 G1 X40. F400. (F400 to the wall)", ("F", 400.0, 1855.0), "N20 G1 X40. F1855. (F400 to the wall)"),
        ("G1 F 4 00 X1", ("F", 400.0, 12.5), "G1 F12.5 X1"),
        ("(\U0001fa9a) M3 S18000 ; S18000", ("S", 18000.0, 9500.0), "(\U0001fa9a) M3 S9500 ; S18000"),
        ("G1 X5 Y6 (back)", ("F", None, 2200.0), "G1 X5 Y6 F2200 (back)"),
        ("g1 x5", ("F", None, 0.5), "g1 x5 f0.5"),
        ("N3 G0 Z5 (up)", ("G", None, 90.0), "N3 G0 Z5 G90 (up)"),
        ("G4 P2000", ("P", 2000.0, 2.0), "G4 P2"),
        ("G20 G1 X1 F15.7480", ("F", 15.748, 73.03), "G20 G1 X1 F73.03"),
    ],
)
def test_one_word_is_replaced_where_it_stands(
    text: str, set_word: tuple[str, float | None, float], expected: str
) -> None:
    made = edits_of(change((7, *set_word)), {7: text})
    assert [edit.line for edit in made] == [7]
    assert edited(text, list(made)) == expected
    assert any(word.letter == set_word[0] and word.value == pytest.approx(set_word[2]) for word in words_on(expected))


@pytest.mark.parametrize(
    ("text", "set_word"),
    [
        ("G1 X40 F400*71", ("F", 400.0, 1855.0)),  # the checksum would no longer fit
        ("G1 X40 F[#1]", ("F", 400.0, 1855.0)),
        ("G1 X40 F400", ("F", 500.0, 1855.0)),  # not what the change was worked out from
        ("G1 X40 F400", ("F", None, 1855.0)),  # there is an F already
        ("G1 X40", ("F", 400.0, 1855.0)),
        ("(F400)", ("F", 400.0, 1855.0)),
        ("(nothing)", ("F", None, 1855.0)),
        ("G1 X40 F400", ("F", 400.0, 1e-9)),  # too small to be written
        ("", ("F", None, 1855.0)),
    ],
)
def test_what_cannot_be_one_word_is_left_alone(text: str, set_word: tuple[str, float | None, float]) -> None:
    assert edits_of(change((1, *set_word)), {1: text}) == ()


def test_the_words_of_a_change_go_together_or_not_at_all() -> None:
    texts = {3: "M3 S18000 F400", 9: "G1 X4 F400"}
    both = change((9, "F", 400.0, 800.0), (3, "F", 400.0, 800.0), (3, "S", 18000.0, 9500.0))
    made = edits_of(both, texts)
    assert [(e.line, e.column, e.end_column, e.text) for e in made] == [
        (3, 4, 10, "S9500"), (3, 11, 15, "F800"), (9, 7, 11, "F800"),
    ]  # fmt: skip
    assert edited(texts[3], list(made[:2])) == "M3 S9500 F800"
    assert edits_of(change((3, "F", 400.0, 800.0), (12, "F", 400.0, 800.0)), texts) == ()
    assert edits_of(change((3, "F", 400.0, 800.0), (3, "F", 400.0, 900.0)), texts) == ()
    assert edits_of(change(), texts) == ()
