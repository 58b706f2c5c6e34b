"""Menders that are wrong on purpose: the proof lets none of them through, and their neighbours go on."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest

from gclint.mend import mend as mending
from gclint.mend.case import Case, Offer, Proposal
from gclint.mend.draft import Edit
from gclint.mend.mend import Mended, mend
from gclint.mend.registry import Mender
from gclint.packs.mendable import menders_of
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

    own = [Mender("entries", offers)]
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


# other places and kinds, each by a mender of its own

SHOP = """
[machine]
rapid = { x = "5000 mm/min", y = "5000 mm/min", z = "2000 mm/min" }
controller = "hobby-3-axis"
[spindle]
kind = "commanded"
range = [6000, 24000]
started = "program"
spin_up = "8 s"
[[tool]]
number = 1
shape = "flat"
diameter = "6 mm"
flutes = 2
"""
JOB = """
shop = "shop.toml"
material = "cured-epoxy"
z_zero = "stock-top"
[stock]
size = ["100 mm", "60 mm", "12 mm"]
corner = ["0 mm", "0 mm"]
[[keep_out]]
name = "left clamp"
from = ["0 mm", "0 mm", "0 mm"]
to = ["15 mm", "12 mm", "14 mm"]
"""


def one_by(rule: str, text: str, edits: Edits, tmp_path: Path, monkeypatch: pytest.MonkeyPatch,
           starts: bool = False, words: bool = False) -> Mended:  # fmt: skip
    """Mend a program by one mender that answers every finding of a rule with the same edits."""
    (tmp_path / "shop.toml").write_text(SHOP)
    (tmp_path / "job.toml").write_text(JOB)
    program = tmp_path / "quay.nc"
    program.write_text(text)

    def offers(case: Case, finding: Finding) -> list[Offer]:
        if case.draft.changed.any():
            return []
        return [Proposal(rule, "own", (finding.line,), edits, "wrong on purpose", starts=starts, words=words)]

    own = [Mender(menders_of(rule)[0], offers)]
    monkeypatch.setattr(mending, "menders", lambda names: own if "entries" in names else [])
    return mend(text.encode(), str(program), Options(), str(program))


STANDS = "G21 G90 G94 G17 G54\nT1 M6\nS9000\nG0 Z15\nX30 Y30\nZ1\nG1 Z0 F200\nX60 Z-1.2 F1100\nX30\nX60\nG0 Z15\nM30\n"


def test_a_start_of_the_spindle_without_the_wait_gets_nowhere(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    start = (Edit(6, before=(b"M3 S9000",)),)  # right above the cut
    made = one_by("spindle-not-running", STANDS, start, tmp_path, monkeypatch, starts=True)
    assert made.data is None
    assert any("no-spin-up-time" in each.because for each in made.document.not_mended)
    right = (Edit(6, before=(b"M3 S9000", b"G4 P8")),)
    assert one_by("spindle-not-running", STANDS, right, tmp_path, monkeypatch, starts=True).data is not None


def test_a_start_of_the_spindle_with_the_tip_in_the_blank_gets_nowhere(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    start = (Edit(9, before=(b"M3 S9000", b"G4 P8")),)
    made = one_by("spindle-not-running", STANDS, start, tmp_path, monkeypatch, starts=True)
    assert made.data is None


LOW = (
    "G21 G90 G94 G17 G54\nT1 M6\nM3 S9000\nG4 P8\nG0 Z20\nX8 Y30\nZ1\nG1 Z0 F200\nX60 Z-1.2 F1100\nX8\nX60\nX8\n"
    "G0 Y36\nG0 Z20\nM5\nM30\n"
)


def test_a_lift_into_a_clamp_gets_nowhere(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    lift = (Edit(13, text=b"G0 Z1", after=(b"Y6", b"Y36", b"Z-1.2")),)  # over the clamp's place, under its top
    made = one_by("rapid-through-stock", LOW, lift, tmp_path, monkeypatch)
    assert any(each.rule == "rapid-through-stock" for each in made.original.findings)
    assert made.data is None
    right = (Edit(13, text=b"G0 Z20", after=(b"Y36",)), Edit(14, otherwise=True))
    assert one_by("rapid-through-stock", LOW, right, tmp_path, monkeypatch).data is not None


WALL = "G21 G90 G94 G17 G54\nT1 M6\nM3 S9000\nG4 P8\nG0 Z20\nX-8 Y62\nZ-5\nG1 X108 F600\nG0 Z20\nM5\nM30\n"


def test_a_wall_cut_from_its_other_end_gets_nowhere(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    turned = (
        Edit(6, text=b"X108 Y62"),
        Edit(7, otherwise=True),
        Edit(8, text=b"G1 X-8 F1500"),
        Edit(9, otherwise=True),
    )
    seen: list[str] = []
    proved = mending.prove

    def prove(*given: object) -> object:
        result = proved(*given)  # type: ignore[arg-type]
        seen.extend(failure.says for failure in result.failures)
        return result

    monkeypatch.setattr(mending, "prove", prove)
    made = one_by("chip-too-thin", WALL, turned, tmp_path, monkeypatch, words=True)
    assert any(each.rule == "chip-too-thin" for each in made.original.findings)
    assert made.data is None
    assert "a wall would be cut in the other direction" in seen
    right = (Edit(8, text=b"G1 X108 F1500"),)
    assert one_by("chip-too-thin", WALL, right, tmp_path, monkeypatch, words=True).data is not None
