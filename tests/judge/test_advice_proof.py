"""What a finding says to set has been tried: it takes the finding away and brings none, or no number is given."""

from __future__ import annotations

from collections.abc import Sequence

import pytest
from msgspec.structs import replace

from gclint.judge import advice_proof
from gclint.judge.judge import Judged
from gclint.tables.finding import Change, Finding, SetWord
from tests.advice.test_advice_mends import applied
from tests.judge.try_judge import found, names, tried

# A slot in two levels; each level is entered down an arc in YZ whose first bit is a plunge at a feed of its own.
SLOT = """G21 G90 G94 G17 G54
S12000 M3
G4 P4
G0 Z20
G0 X20 Y20
G0 Z2
G1 Z0 F600
Z-0.8
G19 G3 Y20.2 Z-1 J0.2 K0 F4000
G1 Y60
G1 Y20
G1 Z0 F4000
Z-0.8 F600
Z-2.4
G3 Y20.2 Z-2.6 J0.2 K0 F4000
G1 Y60
G17
G0 Z20
M5
M30
"""
SECOND = SLOT.replace("X20", "X40").replace("F4000", "F6000")
OPTIONS = {"material": "cast-acrylic", "stock": "60 x 90 x 8 mm at 0 0"}


def finding(rule: str, line: int, *sets: SetWord, grade: str = "change") -> Finding:
    return Finding(
        rule=rule, grade=grade, line=line, last_line=line, lines=(line,), worst_line=line, column=1, count=1, tool=1,
        found=None, window=None, happens="", change=Change("Set F400. Or take less.", sets),
    )  # fmt: skip


def test_every_set_of_a_program_with_entries_in_levels_holds() -> None:
    before = tried(SLOT, "1: flat 3.175mm 2fl", **OPTIONS)  # type: ignore[arg-type]
    told = [one for one in before.findings if one.change.set]
    assert told
    for one in told:
        after = tried(applied(SLOT, one), "1: flat 3.175mm 2fl", **OPTIONS)  # type: ignore[arg-type]
        assert not [left for left in found(after, one.rule) if set(left.lines) & set(one.lines)]
        assert names(after) <= names(before)


WORD = SetWord(3, "F", 900.0, 400.0)
DEEPER = SetWord(7, "F", 300.0, 120.0)


def proved(*outcomes: Sequence[Finding], tries: int = 9) -> tuple[Change, list[tuple[SetWord, ...]]]:
    asked: list[tuple[SetWord, ...]] = []

    def again(words: Sequence[SetWord], advise: bool) -> tuple[Finding, ...]:
        if not advise:  # each try is looked at without words to set first
            asked.append(tuple(words))
        return tuple(outcomes[min(len(asked), len(outcomes)) - 1])

    one = finding("chip-too-thick", 3, WORD)
    judged = Judged((one,), (), plain={one.change.text: "Or take less."})
    return advice_proof._proved(one, judged, again, tries)[0], asked


def test_a_change_that_holds_is_given_as_it_is() -> None:
    change, asked = proved(())
    assert change == Change("Set F400. Or take less.", (WORD,))
    assert asked == [(WORD,)]


def test_what_a_change_brings_is_set_with_it() -> None:
    change, asked = proved((finding("plunge-too-fast", 7, DEEPER),), ())
    assert change.set == (WORD, DEEPER)
    assert "Set F120 on line 7 with it" in change.text
    assert asked[-1] == (WORD, DEEPER)


def test_a_change_that_is_too_little_is_told_anew() -> None:
    less = SetWord(3, "F", 400.0, 350.0)
    change, _ = proved((finding("chip-too-thick", 3, less),), ())
    assert change.set == (replace(WORD, to=350.0),)  # from what stands in the program
    assert "F400" not in change.text
    assert "F350 on line 3" in change.text


@pytest.mark.parametrize(
    "came",
    [finding("chip-too-thick", 3), finding("plunge-too-fast", 7), finding("rapid-through-stock", 50, grade="halt")],
)
def test_a_change_that_leaves_or_brings_a_finding_gives_no_number(came: Finding) -> None:
    change, _ = proved((came,))
    assert change == Change("Take less.")


def test_what_stood_there_before_and_what_is_only_to_consider_do_not_hinder() -> None:
    change, _ = proved((finding("no-spin-up-time", 9, grade="consider"),))
    assert change.set == (WORD,)
    assert "Then look at no-spin-up-time" in change.text
    other = finding("full-width-too-deep", 8)
    one = finding("chip-too-thick", 3, WORD)
    judged = Judged((one, other), (), plain={})
    assert advice_proof._proved(one, judged, lambda words, advise: (other,), 9)[0].set == (WORD,)


def test_beyond_the_budget_no_word_is_offered(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(advice_proof, "MOST_WORK", 1)
    before = tried(SLOT.replace("M30\n", "") + SECOND, "1: flat 3.175mm 2fl", **OPTIONS)  # type: ignore[arg-type]
    given = [one for one in before.findings if one.change.set]
    left = [one for one in before.findings if advice_proof.NOT_TRIED in one.change.text]
    assert len(given) == 1
    assert left
