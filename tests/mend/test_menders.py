"""Each mender at its own small program: what it writes, what it leaves alone, and that the finding is gone."""

from __future__ import annotations

from importlib import import_module
from pathlib import Path

import pytest

from gclint.mend.mend import Mended, mend
from gclint.setup.declare import Options
from gclint.tables.mendable import MENDERS
from tests.mend.oracle import worst_difference

HEAD = "G21 G90 G94 G17 G54\nT1 M6\n"
SHOP = """
[machine]
rapid = { x = "5000 mm/min", y = "5000 mm/min", z = "2000 mm/min" }
feed_limit = { x = "2500 mm/min", y = "2500 mm/min", z = "800 mm/min" }
homes = false
controller = "CARD"
[spindle]
KIND
[[tool]]
number = 1
shape = "flat"
diameter = "6 mm"
flutes = 2
[[tool]]
number = 2
name = "quarter"
shape = "flat"
diameter = "6.35 mm"
flutes = 2
"""
BY_PROGRAM = 'kind = "commanded"\nrange = [6000, 24000]\nstarted = "program"\nspin_up = "4 s"'
DIAL = 'kind = "dial"\ndial = [ { mark = "A", stated = 10000 }, { mark = "B", stated = 16000 } ]\nstarted = "by-hand"'


def mended(text: str, tmp_path: Path, card: str = "hobby-3-axis", kind: str = BY_PROGRAM, material: str = "mdf",
           hold: str = "", extra: tuple[str, ...] = (), only: tuple[str, ...] = ()) -> Mended:  # fmt: skip
    (tmp_path / "shop.toml").write_text(SHOP.replace("CARD", card).replace("KIND", kind))
    (tmp_path / "job.toml").write_text(
        f'shop = "shop.toml"\nmaterial = "{material}"\nz_zero = "stock-top"\n'
        f'[stock]\nsize = ["120 mm", "80 mm", "12 mm"]\ncorner = ["0 mm", "0 mm"]\n{hold}'
    )
    program = tmp_path / "quay.nc"
    program.write_text(text)
    return mend(text.encode(), str(program), Options(), str(program), only, extra)


def kinds(made: Mended) -> set[tuple[str, str]]:
    return {(each.rule, each.kind) for each in made.document.changes}


def lines(made: Mended) -> list[str]:
    assert made.data is not None, made.document.not_mended
    return [line for line in made.data.decode().split("\n") if not line.startswith("(")]


@pytest.mark.parametrize("name", MENDERS)
def test_every_mender_stands_in_its_own_file(name: str) -> None:
    assert callable(import_module(f"gclint.mend.{name}").offers)


def test_a_comment_that_leaks_is_closed(tmp_path: Path) -> None:
    made = mended(HEAD + "(Pocket (2))\nM3 S16000\nG4 P4\nG0 Z15\nG0 X10 Y40\nM5\nM30\n", tmp_path, card="any")
    assert "comment-leftover" in {each.rule for each in made.document.changes}
    assert made.data is not None
    assert b"(Pocket  2)" in made.data or b"(Pocket 2)" in made.data


def test_a_wait_in_the_other_unit_is_written_in_the_cards(tmp_path: Path) -> None:
    text = HEAD + "M3 S16000\nG4 P4000\nG0 Z15\nG0 X10 Y40\nG0 Z1\nG1 Z-1 F500\nG1 X60 F2400\nG0 Z15\nM5\nM30\n"
    made = mended(text, tmp_path)
    assert ("dwell-unit-suspect", "words") in kinds(made)
    assert "G4 P4" in lines(made)


def test_spin_up_gets_a_dwell_in_seconds_or_milliseconds(tmp_path: Path) -> None:
    text = HEAD + "G0 Z15\nG0 X10 Y40\nM3 S16000\nG0 Z1\nG1 Z-1 F500\nG1 X60 F2400\nG0 Z15\nM5\nM30\n"
    for card, wait in (("hobby-3-axis", "G4 P8"), ("shop-mill-macros", "G4 P8000")):
        made = mended(text, tmp_path, card=card, kind=BY_PROGRAM.replace("4 s", "8 s"))
        assert ("no-spin-up-time", "dwell") in kinds(made)
        assert lines(made)[lines(made).index("M3 S16000") + 1] == wait


def test_without_a_card_no_dwell_is_written(tmp_path: Path) -> None:
    text = HEAD + "G0 Z15\nG0 X10 Y40\nM3 S16000\nG0 Z1\nG1 Z-1 F500\nG1 X60 F2400\nG0 Z15\nM5\nM30\n"
    made = mended(text, tmp_path, card="any", kind=BY_PROGRAM.replace("4 s", "8 s"))
    assert "G4" not in (made.data or b"").decode()
    assert any("controller has to be declared" in each.because for each in made.document.not_mended)


def test_the_spindle_is_started_only_where_the_shop_says_so(tmp_path: Path) -> None:
    text = HEAD + "S16000\nG0 Z15\nG0 X10 Y40\nG0 Z1\nG1 Z-1 F500\nG1 X60 F2400\nG0 Z15\nM30\n"
    made = mended(text, tmp_path)
    assert ("spindle-not-running", "spindle") in kinds(made)
    assert lines(made)[3:5] == ["M3 S16000", "G4 P4"]
    unknown = mended(text, tmp_path, kind='kind = "commanded"\nrange = [6000, 24000]')
    assert "M3" not in (unknown.data or b"").decode()


def test_a_tool_change_that_is_passed_over_gets_a_stop(tmp_path: Path) -> None:
    text = (
        HEAD + "M3 S16000\nG4 P4\nG0 Z15\nG0 X10 Y40\nG0 Z1\nG1 Z-1 F500\nG1 X60 F2400\nG0 Z15\nT2 M6\n"
        "G0 X10 Y60\nG0 Z1\nG1 Z-1 F500\nG1 X60 F2400\nG0 Z15\nM5\nM30\n"
    )
    made = mended(text, tmp_path)
    assert ("tool-change-without-stop", "stop") in kinds(made)
    own = lines(made)
    at = own.index("M0")
    assert own[at - 1] == "M5"
    assert own[at + 1 : at + 4] == ["M3 S16000", "G4 P4", "T2 M6"]
    by_hand = mended(text, tmp_path, kind='kind = "commanded"\nrange = [6000, 24000]\nstarted = "by-hand"')
    own = lines(by_hand)
    assert own[own.index("M0") + 1] == "T2 M6"
    assert b"PUT IN TOOL 2" in (by_hand.data or b"").upper()


def test_a_dial_that_has_to_be_turned_gets_a_stop_and_a_word(tmp_path: Path) -> None:
    text = (
        HEAD + "S10000 M3\nG0 Z15\nX10 Y40\nZ1\nG1 Z-1 F500\nX60 F1500\nG0 Z15\nS16000\n"
        "X10 Y60\nZ1\nG1 Z-1 F500\nX60 F2400\nG0 Z15\nM5\nM30\n"
    )
    made = mended(text, tmp_path, kind=DIAL)
    assert ("dial-change-without-stop", "stop") in kinds(made)
    assert b"set the dial to B" in (made.data or b"")


def test_it_lifts_before_the_first_travel(tmp_path: Path) -> None:
    made = mended(HEAD + "M3 S16000\nG4 P4\nG0 X10 Y40\nZ5\nG0 Z15\nM5\nM30\n", tmp_path)
    assert ("first-move-low", "lift") in kinds(made)
    own = lines(made)
    assert own[own.index("G0 X10 Y40") - 1] == "G0 Z15"


def test_a_rapid_through_the_blank_goes_over_it(tmp_path: Path) -> None:
    text = (
        HEAD + "M3 S16000\nG4 P4\nG0 Z15\nG0 X10 Y40\nG0 Z1\nG1 Z-1 F500\nG1 X40 F2400\nG0 Z1\nG0 X60 Y60\n"
        "G1 Z-1 F500\nG1 X90 F2400\nG0 X12 Y41\nG0 Z15\nM5\nM30\n"
    )
    made = mended(text, tmp_path)
    assert ("rapid-through-stock", "lift") in kinds(made)
    assert not [each for each in made.copy.findings if each.rule == "rapid-through-stock"]


def test_a_home_that_is_not_found_becomes_a_lift(tmp_path: Path) -> None:
    text = HEAD + "M3 S16000\nG4 P4\nG0 Z15\nG0 X10 Y40\nG0 Z1\nG1 Z-1 F500\nG1 X60 F2400\nG0 Z15\nM5\nG28\nM30\n"
    made = mended(text, tmp_path)
    assert ("home-unknown", "lift") in kinds(made)
    assert "G28" not in "".join(lines(made))


OPEN = HEAD + "M3 S16000\nG4 P4\nG0 Z15\nG0 X20 Y20\nG0 Z1\nG1 Z-9 F500\nG1 X60 F2400\nG1 Y40\nG0 Z15\nM5\nM30\n"
RING = HEAD + "M3 S16000\nG4 P4\nG0 Z15\nG0 X20 Y40\nG0 Z1\nG1 Z-9 F500\nG2 X20 Y40 I20 J0 F2400\nG0 Z15\nM5\nM30\n"


@pytest.mark.parametrize("text", [OPEN, RING], ids=["open", "ring"])
def test_a_pass_that_is_too_deep_becomes_laps_in_one_direction(text: str, tmp_path: Path) -> None:
    made = mended(text, tmp_path, material="birch-plywood")
    assert any(each.kind == "laps" for each in made.document.changes)
    assert not made.failing, made.document.not_mended
    assert made.data is not None
    assert worst_difference(text.encode(), made.data, 3.0) <= 0.02
    assert "G3" not in "".join(lines(made))


def test_a_hole_as_wide_as_the_tool_is_left_alone(tmp_path: Path) -> None:
    text = HEAD + "M3 S16000\nG4 P4\nG0 Z15\nG0 X20 Y20\nG0 Z1\nG1 Z-5 F150\nG0 Z15\nM5\nM30\n"
    made = mended(text, tmp_path, material="cured-epoxy")
    assert any("hole as wide as the tool" in each.because for each in made.document.not_mended)


def test_words_of_the_program_in_loops_and_calls_are_not_ramped(tmp_path: Path) -> None:
    text = HEAD + "M3 S16000\n#1=1\nG0 Z15\nG0 X20 Y20\nG0 Z#1\nG1 Z-5 F150\nG1 X60 F900\nG0 Z15\nM5\nM30\n"
    made = mended(text, tmp_path, card="any", material="cured-epoxy")
    assert not any(each.kind == "entry" for each in made.document.changes)


BOX = (
    HEAD + "M3 S16000\nG4 P4\nG0 Z15\nG0 X10 Y10\nG0 Z1\n"
    + "".join(f"G1 Z{z} F500\nG1 X100 F2400\nG1 Y70\nG1 X10\nG1 Y10\n" for z in (-3, -6, -9, -12.2))
    + "G0 Z15\nM5\nM30\n"
)  # fmt: skip


def test_tabs_are_proposed_only_when_asked_for(tmp_path: Path) -> None:
    hold = '[hold]\nby = "screws"\nspoilboard = "0.5 mm"\n'
    plain = mended(BOX, tmp_path, hold=hold)
    assert any(each.rule == "part-comes-loose" for each in plain.document.not_mended)
    made = mended(BOX, tmp_path, hold=hold, extra=("tabs",))
    assert ("part-comes-loose", "tabs") in kinds(made), made.document.not_mended
    assert made.surface.higher > 2.5
    assert made.surface.deeper <= 0.01
    assert not made.document.proof.surface.same


def test_a_cut_into_the_table_is_clipped_only_when_asked_for(tmp_path: Path) -> None:
    text = BOX.replace("Z-12.2 ", "Z-13.5 ")
    hold = '[hold]\nby = "screws"\nspoilboard = "0.5 mm"\n'
    made = mended(text, tmp_path, hold=hold, extra=("clip",))
    assert ("cuts-table", "clip") in kinds(made), made.document.not_mended
    assert "Z-12.5" in "".join(lines(made))
    assert not [each for each in made.copy.findings if each.rule == "cuts-table"]


def test_an_arc_that_does_not_close_becomes_short_lines(tmp_path: Path) -> None:
    text = (
        HEAD + "M3 S16000\nG4 P4\nG0 Z15\nG0 X20 Y40\nG0 Z1\nG1 Z-1 F500\nG1 X40 F2400\n"
        "G2 X53.47 Y30 I3 J-10\nG1 Y20\nG0 Z15\nM5\nM30\n"
    )
    made = mended(text, tmp_path)
    assert ("arc-does-not-close", "arc") in kinds(made), made.document.not_mended
    assert not [each for each in made.copy.findings if each.rule == "arc-does-not-close"]
    far = mended(text.replace("X53.47", "X53.8"), tmp_path)
    assert ("arc-does-not-close", "arc") not in kinds(far)


def test_compensation_that_is_refused_is_worked_out(tmp_path: Path) -> None:
    text = (
        HEAD + "M3 S16000\nG4 P4\nG0 Z15\nG0 X20 Y5\nG0 Z1\nG1 Z-2 F500\nG41 D1 G1 X30 Y15 F2400\nG1 X90\nG1 Y60\n"
        "G1 X30\nG1 Y15\nG40 G1 X20 Y5\nG0 Z15\nM5\nM30\n"
    )
    made = mended(text, tmp_path)
    assert ("code-refused", "compensation") in kinds(made), made.document.not_mended
    own = "".join(lines(made))
    assert "G41" not in own
    assert "D1" not in own
    assert made.document.proof.surface.same
    # left of the way: the tool's centre runs 3 mm inside the contour, counter-clockwise
    assert "Y18" in own
    assert "X87" in own


def test_fine_moves_that_starve_the_feed_are_joined(tmp_path: Path) -> None:
    steps = "".join(f"G1 X{10 + k * 0.02:.3f} Y40.{k % 2}\n".replace("Y40.1", "Y40.001") for k in range(1, 3000))
    text = HEAD + "M3 S16000\nG4 P4\nG0 Z15\nG0 X10 Y40\nG0 Z1\nG1 Z-1 F500\nF2400\n" + steps + "G0 Z15\nM5\nM30\n"
    made = mended(text, tmp_path, only=("reads-too-slowly",))
    assert ("reads-too-slowly", "joined") in kinds(made), (made.document.not_mended, made.original.findings)
    assert made.document.proof.surface.same
    assert len(lines(made)) < 200
