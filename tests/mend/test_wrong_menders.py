"""Menders that are wrong on purpose: the proof lets none of them through, and their neighbours go on."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from gclint.mend import mend as mending
from gclint.mend.case import Case, Offer, Proposal
from gclint.mend.draft import Edit
from gclint.mend.mend import Mended, mend
from gclint.mend.registry import Mender
from gclint.setup.declare import Options
from gclint.tables.finding import Finding

OPTIONS = Options("cured-epoxy", ("1: flat 6mm 2fl down-cut",), "100 x 60 x 12 mm at 0 0")
PROGRAM = (
    b"G21 G90 G94 G17 G54\nT1 M6\nM3 S9000\nG0 Z15\nX20 Y20\nZ1\nG1 Z0 F200\nZ-1.2\nX60 F1100\nG0 Z15\n"
    b"X20 Y45\nZ1\nG1 Z0 F200\nX50 Z-1.2 F1100\nX20\nX50\nG0 Z15\nM5\nM30\n"
)
LINE = 8  # Z-1.2, straight down into the solid

Edits = tuple[Edit, ...]


def after(*lines: bytes) -> Edits:
    return (Edit(LINE, text=b"Z0", after=lines),)


WRONG: dict[str, Edits] = {
    "a ramp outside the slot": after(b"X40 Y24 Z-0.6 F1100", b"X20 Y20 Z-1.2"),
    "a ramp beyond its end": after(b"X64 Z-0.6 F1100", b"X20 Z-1.2"),
    "a ramp that goes too deep": after(b"X40 Z-0.6 F1100", b"X20 Z-1.3"),
    "a ramp that ends too high": after(b"X40 Z-0.6 F1100", b"X20 Z-1.1"),
    "a ramp that ends elsewhere": after(b"X40 Z-0.6 F1100", b"X20.1 Z-1.2"),
    "a feed left behind": (*after(b"X40 Z-0.6 F1100", b"X20 Z-1.2"), Edit(10, before=(b"F90",))),
    "a speed left behind": after(b"X40 Z-0.6 F1100", b"X20 Z-1.2", b"S12000"),
    "a mode left behind": after(b"X40 Z-0.6 F1100", b"X20 Z-1.2", b"G91"),
    "units left behind": after(b"X40 Z-0.6 F1100", b"X20 Z-1.2", b"G20"),
    "an offset left behind": after(b"X40 Z-0.6 F1100", b"X20 Z-1.2", b"G55"),
    "a spindle left standing": after(b"X40 Z-0.6 F1100", b"X20 Z-1.2", b"M5"),
    "a motion mode left behind": after(b"X40 Z-0.6 F1100", b"X20 Z-1.2", b"G0"),
    "a rapid through the blank": after(b"X40 Z-0.6 F1100", b"X20 Z-1.2", b"G0 Y45", b"Y20", b"G1"),
    "a travel out of reach": after(b"X40 Z-0.6 F1100", b"X20 Z-1.2", b"G0 Z15", b"X400", b"X20", b"G1 Z-1.2"),
    "a ramp that is still too steep": after(b"X22 Z-0.6 F1100", b"X20 Z-1.2"),
    "an end in the middle": after(b"X40 Z-0.6 F1100", b"X20 Z-1.2", b"M30"),
    "a line taken out": (Edit(LINE, drop=True),),
    "a lap that gouges": (Edit(LINE, before=(b"G2 X20 Y20 I2 J0", b"G1")),),
    "a code that nobody knows": after(b"X40 Z-0.6 F1100", b"X20 Z-1.2", b"G777"),
}
RIGHT = after(b"X43 Z-0.6 F1100", b"X20 Z-1.2")


def mended_by(
    edits: Edits, monkeypatch: pytest.MonkeyPatch, more: Callable[[Case, Finding], list[Offer]] | None = None
) -> Mended:
    def offers(case: Case, finding: Finding) -> list[Offer]:
        if LINE not in [int(case.draft.origin[line - 1]) for line in finding.lines]:
            return []
        shift = case.draft.now(LINE) - LINE
        moved = tuple(Edit(e.line + shift, e.before, e.text, e.after, e.drop) for e in edits)
        return [Proposal(finding.rule, "entry", (LINE + shift,), moved, "wrong on purpose")]

    own = [Mender("own", ("straight-plunge",), offers)]
    monkeypatch.setattr(mending, "menders", lambda names: own if "entries" in names else [])
    return mend(PROGRAM, "quay.nc", OPTIONS)


@pytest.mark.parametrize("edits", WRONG.values(), ids=WRONG.keys())
def test_a_wrong_mender_gets_nothing_through(edits: Edits, monkeypatch: pytest.MonkeyPatch) -> None:
    made = mended_by(edits, monkeypatch)
    assert made.data is None
    assert made.document.to is None
    assert made.failing
    refused = [each for each in made.document.not_mended if each.rule == "straight-plunge"]
    assert refused
    assert refused[0].because.startswith("not proved (")


def test_a_right_one_does(monkeypatch: pytest.MonkeyPatch) -> None:
    made = mended_by(RIGHT, monkeypatch)
    assert made.data is not None
    assert made.document.proof.surface.same


def test_the_menders_of_the_house_mend_it_too() -> None:
    made = mend(PROGRAM, "quay.nc", OPTIONS)
    assert [each.rule for each in made.document.changes] == ["straight-plunge"]
    assert not made.failing
