"""The text of a copy: what nobody edits stays byte for byte; new lines are written as the program is."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from gclint.mend.draft import Collision, Edit, draft_of
from gclint.mend.style import NoRoom, checksum, numbered, style_of, with_checksum
from gclint.program.read import tabulate


@given(st.lists(st.sampled_from((b"G1 X1", b"", b"(p\xe4tch)", b"N5 M3")), min_size=1, max_size=9),
       st.sampled_from((b"\n", b"\r\n", b"\r")), st.booleans(), st.data())  # fmt: skip
def test_lines_around_an_edit_keep_their_bytes(
    lines: list[bytes], end: bytes, closed: bool, data: st.DataObject
) -> None:
    text = end.join(lines) + (end if closed else b"")
    draft = draft_of(text)
    if not draft.lines:
        return
    at = data.draw(st.integers(1, draft.lines))
    made = draft.apply([(1, Edit(at, before=(b"G4 P1",), after=(b"M0",)))])
    assert made.data.replace(end + b"M0", b"", 1).replace(b"M0" + end, b"", 1).count(b"G4 P1") == 1
    kept = [made.raw(row + 1).rstrip(b"\r\n") for row in range(made.lines) if made.origin[row]]
    assert kept == [draft.raw(row + 1).rstrip(b"\r\n") for row in range(draft.lines)]
    assert made.lines == draft.lines + 2
    assert [int(n) for n in made.origin if n] == list(range(1, draft.lines + 1))
    again = draft_of(made.data)
    assert again.lines == made.lines


def test_a_byte_order_mark_stays_first() -> None:
    draft = draft_of(b"\xef\xbb\xbfG21\nG90\n")
    assert draft.apply([(1, Edit(1, before=(b"(note)",)))]).data == b"\xef\xbb\xbf(note)\nG21\nG90\n"
    assert draft.apply([(1, Edit(1, text=b"G20"))]).data == b"\xef\xbb\xbfG20\nG90\n"


def test_two_texts_for_one_line_collide() -> None:
    draft = draft_of(b"G1 X1\n")
    with pytest.raises(Collision):
        draft.apply([(1, Edit(1, text=b"G1 X2")), (2, Edit(1, text=b"G1 X3"))])


def test_a_line_that_is_taken_out_is_remembered() -> None:
    made = draft_of(b"G1 X1\nG1 X2\nG1 X3\n").apply([(1, Edit(2, drop=True))])
    assert made.data == b"G1 X1\nG1 X3\n"
    assert made.dropped == (2,)
    assert made.origin.tolist() == [1, 3]


def test_new_lines_take_numbers_between_their_neighbours_or_none() -> None:
    wide = draft_of(b"N10 G21\nN20 G1 X1\n")
    style = style_of(tabulate(wide.data, ""))
    assert numbered(style, wide, 2, (b"M0", b"M3")) == (b"N13 M0", b"N16 M3")
    close = draft_of(b"N1 G21\nN2 G1 X1\n")
    assert numbered(style_of(tabulate(close.data, "")), close, 2, (b"M0",)) == (b"M0",)


def test_checksums_are_made_right_or_lines_refused() -> None:
    body = b"N2 G1 X1"
    line = body + b"*%d" % checksum(body)
    assert with_checksum(line) == line
    assert with_checksum(b"N2 G1 X2*1").endswith(b"*%d" % checksum(b"N2 G1 X2"))
    draft = draft_of(line + b"\n")
    with pytest.raises(NoRoom):
        numbered(style_of(tabulate(draft.data, "")), draft, 1, (b"M0",))


@pytest.mark.parametrize(
    ("text", "letter", "value", "written"),
    [
        (b"G1 X10.000 Y5.500 F1200.", "X", 2.5, "X2.500"),
        (b"G1 X10.000 Y5.500 F1200.", "F", 900, "F900."),
        (b"g1 x10 y5.5 f1200", "X", 2.5, "x2.5"),
        (b"G01 X10. Y5.5 F1200.0", "X", 3, "X3."),
        (b"G01 X10. Y5.5 F1200.0", "F", 900, "F900.0"),
        (b"G1 X10 Y5", "Z", -0.0001, "Z0"),
    ],
)
def test_numbers_are_written_as_the_program_writes_them(text: bytes, letter: str, value: float, written: str) -> None:
    assert style_of(tabulate(text + b"\n", "")).word(letter, value) == written
