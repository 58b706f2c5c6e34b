"""Each mender at its own small program: what it writes, what it leaves alone, and that the finding is gone."""

from __future__ import annotations

from importlib import import_module
from pathlib import Path

import pytest

from gclint.mend.mend import Mended, mend
from gclint.packs.shipped_packs import shipped_packs
from gclint.setup.declare import Options
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


@pytest.mark.parametrize("name", sorted({m for p in shipped_packs() for rule in p.rules for m in rule.text.mended_by}))
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


def test_a_height_that_is_worked_out_does_not_keep_the_rest_from_being_ramped(tmp_path: Path) -> None:
    text = HEAD + "M3 S16000\n#1=1\nG0 Z15\nG0 X20 Y20\nG0 Z#1\nG1 Z-5 F150\nG1 X60 F900\nG0 Z15\nM5\nM30\n"
    made = mended(text, tmp_path, card="any", material="cured-epoxy", only=("straight-plunge",))
    assert ("straight-plunge", "entry") in kinds(made), made.document.not_mended
    words = mended(text.replace("Z-5", "Z[0-5]"), tmp_path, card="any", material="cured-epoxy")
    assert not any(each.kind == "entry" for each in words.document.changes)


CALLED = (
    "G21 G90 G94 G17 G54\nT1 M6\nM3 S16000\nG4 P4\nG0 Z15\nG0 X15 Y15\nG0 Z1\nM98 P7\nG90 G0 Z15\nG0 X15 Y45\nG0 Z1\n"
    "M98 P7\nG90 G0 Z15\nM5\nM30\nO7\nG91\nG1 Z-2.5 F300\nX30 F1100\nY10\nG90\nM99\n"
)


def test_a_subprogram_in_increments_is_mended_once_for_all_its_calls(tmp_path: Path) -> None:
    made = mended(CALLED, tmp_path, card="shop-mill-macros", material="cured-epoxy", only=("straight-plunge",))
    assert ("straight-plunge", "entry") in kinds(made), made.document.not_mended
    own = lines(made)
    ramp = own[own.index("G91") + 1 : own.index("X30 F1100")]
    assert len(ramp) > 2
    assert sum(float(word[1:]) for line in ramp for word in line.split() if word[0] == "Z") == pytest.approx(-2.5)
    assert sum(float(word[1:]) for line in ramp for word in line.split() if word[0] == "X") == pytest.approx(0)
    assert len(made.copy.motion) > len(made.original.motion) + 2 * (len(ramp) - 2)
    assert not [each for each in made.copy.findings if each.rule == "straight-plunge"]


def test_calls_that_do_not_agree_are_left_alone(tmp_path: Path) -> None:
    text = CALLED.replace("G0 X15 Y45\nG0 Z1", "G0 X15 Y45\nG0 Z0.4")
    made = mended(text, tmp_path, card="shop-mill-macros", material="cured-epoxy", only=("straight-plunge",))
    assert not any(each.kind == "entry" for each in made.document.changes)
    assert any("would not be mended alike" in each.because for each in made.document.not_mended)


def test_a_stretch_in_increments_is_ramped_in_increments(tmp_path: Path) -> None:
    text = HEAD + "M3 S16000\nG4 P4\nG0 Z15\nG0 X20 Y20\nG0 Z1\nG91\nG1 Z-2 F200\nX40 F1100\nG90\nG0 Z15\nM5\nM30\n"
    made = mended(text, tmp_path, material="cured-epoxy", only=("straight-plunge",))
    assert ("straight-plunge", "entry") in kinds(made), made.document.not_mended
    assert made.data is not None
    assert worst_difference(text.encode(), made.data, 3.0) <= 0.02


def test_a_pocket_gets_a_helix_where_its_way_starts_short(tmp_path: Path) -> None:
    rings = "".join(
        f"G1 X{50 + r:g}\nG3 X{50 - r:g} Y40 I{-r:g} J0\nG3 X{50 + r:g} Y40 I{r:g} J0\n" for r in (1, 2, 4, 6, 8, 10)
    )
    text = HEAD + f"M3 S16000\nG4 P4\nG0 Z15\nG0 X50 Y40\nG0 Z1\nG1 Z-3 F200\nF1100\n{rings}G0 Z15\nM5\nM30\n"
    from gclint.mend.case import Case, Proposal
    from gclint.mend.entries import offers

    made = mended(text, tmp_path, material="cured-epoxy", only=("straight-plunge",))
    finding = next(each for each in made.original.findings if each.rule == "straight-plunge")
    case: Case = made.original
    offer = offers(case, finding)[0]
    assert isinstance(offer, Proposal)
    assert any("a helix" in each.because for each in (offer, *offer.others))
    assert ("straight-plunge", "entry") in kinds(made), made.document.not_mended
    assert worst_difference(text.encode(), made.data or b"", 3.0) <= 0.02


def test_a_ramp_behind_a_dip_in_x_and_z_goes_to_the_depth_of_the_dip(tmp_path: Path) -> None:
    text = (
        HEAD + "M3 S16000\nG4 P4\nG0 Z15\nG0 X20 Y20\nG0 Z1\nG1 Z-2 F200\nG18 G2 X20.4 Z-2.4 I0.4 K0 F1100\n"
        "G1 X70\nG17 G1 Y50\nG0 Z15\nM5\nM30\n"
    )
    made = mended(text, tmp_path, material="cured-epoxy", only=("straight-plunge",))
    assert ("straight-plunge", "entry") in kinds(made), made.document.not_mended
    assert not [each for each in made.copy.findings if each.rule in ("straight-plunge", "steep-ramp", "hidden-plunge")]
    assert worst_difference(text.encode(), made.data or b"", 3.0) <= 0.02


def test_steps_round_a_narrow_ring_become_ramps_round_it(tmp_path: Path) -> None:
    steps = "".join(f"G1 Z-{n * 0.5:g} F200\nG3 X40 Y40 I-2 J0 F1100\n" for n in range(1, 7))
    text = HEAD + f"M3 S16000\nG4 P4\nG0 Z15\nG0 X40 Y40\nG0 Z1\n{steps}G0 Z15\nM5\nM30\n"
    made = mended(text, tmp_path, material="cured-epoxy", only=("straight-plunge",))
    if any(each.rule == "straight-plunge" for each in made.original.findings):
        assert ("straight-plunge", "entry") in kinds(made), made.document.not_mended
        assert worst_difference(text.encode(), made.data or b"", 3.0) <= 0.02


def test_a_helix_that_is_too_steep_gets_more_turns(tmp_path: Path) -> None:
    turns = "".join(f"X{36 if n % 2 else 44} Y40 Z{-2.5 * n:g} I{-4 if n % 2 else 4} J0\n" for n in range(1, 5))
    text = (
        HEAD + f"M3 S16000\nG4 P4\nG0 Z15\nG0 X44 Y40\nG0 Z1\nG1 Z0 F300\nG3\n{turns}"
        "X36 Y40 I-4 J0\nX44 Y40 I4 J0\nG0 Z15\nM5\nM30\n"
    )
    made = mended(text, tmp_path, material="cured-epoxy", only=("steep-ramp",))
    assert ("steep-ramp", "entry") in kinds(made), (made.document.not_mended, made.original.findings)
    assert worst_difference(text.encode(), made.data or b"", 3.0) <= 0.02


def test_a_steep_way_down_from_a_tab_is_gone_down_to_behind_it(tmp_path: Path) -> None:
    text = (
        HEAD
        + "M3 S16000\nG4 P4\nG0 Z15\nG0 X20 Y20\nG0 Z1\nG1 Z-0.2 F200\nX40 F1100\nX40.6 Z-1.4\nX80\nG0 Z15\nM5\nM30\n"
    )
    made = mended(text, tmp_path, material="cured-epoxy", only=("steep-ramp", "straight-plunge", "hidden-plunge"))
    assert any(kind == "entry" for _, kind in kinds(made)), (made.document.not_mended, made.original.findings)
    assert not [each for each in made.copy.findings if each.rule in ("steep-ramp", "straight-plunge", "hidden-plunge")]
    assert worst_difference(text.encode(), made.data or b"", 3.0) <= 0.02


def test_laps_of_a_contour_with_dips_set_plane_and_mode_back(tmp_path: Path) -> None:
    text = (
        HEAD + "M3 S16000\nG4 P4\nG0 Z15\nG0 X20 Y20\nG0 Z1\nG1 Z-8.8 F300\nG18 G2 X20.2 Z-9 I0.2 K0 F2400\nG1 X60\n"
        "G17 G3 X64 Y24 I0 J4\nG1 Y50\nG0 Z15\nM5\nM30\n"
    )
    made = mended(text, tmp_path, material="birch-plywood", only=("too-deep", "full-width-too-deep"))
    assert any(each.kind == "laps" for each in made.document.changes), made.document.not_mended
    assert worst_difference(text.encode(), made.data or b"", 3.0) <= 0.02


HOLE = (
    HEAD
    + "M3 S16000\nG4 P4\nG0 Z15\nG0 X20 Y20\nG0 Z1\nG1 Z-10 F300\nG0 Z15\nG0 X60 Y20\nG0 Z1\nG1 Z-10 F300\nG0 Z15\n"
)


def test_holes_as_wide_as_the_tool_go_down_in_pecks_where_the_card_allows_it(tmp_path: Path) -> None:
    text = HOLE + "M5\nM30\n"
    made = mended(text, tmp_path, material="cast-acrylic")
    assert any(kind == "pecks" for _, kind in kinds(made)), made.document.not_mended
    own = lines(made)
    assert own.count("G1 Z-10 F300") == 2
    assert "Z-2.167" in "".join(own) or "G0 Z1" in own
    assert worst_difference(text.encode(), made.data or b"", 3.0) <= 0.02
    epoxy = mended(text, tmp_path, material="cured-epoxy")
    assert not any(each.kind == "pecks" for each in epoxy.document.changes)
    assert not any(each.mendable for each in epoxy.original.findings if each.rule == "straight-plunge")


def test_a_drill_that_goes_too_deep_gets_the_pecking_cycle(tmp_path: Path) -> None:
    text = HEAD + "M3 S3000\nG4 P8\nG0 Z15\nG81 X20 Y20 Z-11.5 R2 F150\nX60\nG80\nG0 Z15\nM5\nM30\n"
    (tmp_path / "drill.nc").write_text(text)
    from gclint.setup.declare import Options

    options = Options("aluminium-6061", ("1: drill 3mm 2fl",), "120 x 80 x 12 mm at 0 0",
                      shop=str(_drill_shop(tmp_path)))  # fmt: skip
    made = mend(text.encode(), "drill.nc", options, None, ("peck-too-deep",))
    assert ("peck-too-deep", "pecks") in kinds(made), (made.document.not_mended, made.original.findings)
    assert "G83 X20 Y20 Z-11.5 R2 F150 Q3" in lines(made)
    assert b"\nX60\n" in (made.data or b"")


def _drill_shop(folder: Path) -> Path:
    own = folder / "drill-shop.toml"
    own.write_text('[machine]\ncontroller = "rs274ngc"\n[spindle]\nkind = "commanded"\nrange = [500, 24000]\n')
    return own


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


def test_laps_bring_the_ramps_that_their_own_ways_down_need(tmp_path: Path) -> None:
    body = "M3 S16000\nG4 P4\nG0 Z5\nX20 Y20\nG1 Z0 F300\nZ-10\nX90 F1200\nY50\nG0 Z5\nM5\nM30\n"
    made = mended(HEAD + body, tmp_path, material="cast-acrylic")
    assert {each.rule for each in made.original.findings} >= {"straight-plunge", "full-width-too-deep"}
    assert not [each for each in made.copy.findings if each.grade in ("halt", "change")], made.document.not_mended
    assert ("full-width-too-deep", "laps") in kinds(made)
    assert made.data is not None
    assert worst_difference((HEAD + body).encode(), made.data, 3.0, 200) < 0.02


@pytest.mark.parametrize(
    ("card", "kind", "expected"),
    [("hobby-3-axis", BY_PROGRAM, True), ("any", BY_PROGRAM, False), ("hobby-3-axis", 'kind = "commanded"', False)],
)
def test_what_a_declaration_is_lacking_for_is_not_called_mendable(
    card: str, kind: str, expected: bool, tmp_path: Path
) -> None:
    body = "G0 Z5\nX20 Y20\nS16000\nG1 Z-1 F300\nX90 F1200\nG0 Z5\nM30\n"
    made = mended(HEAD + body, tmp_path, card=card, kind=kind)
    stands = [each for each in made.original.findings if each.rule == "spindle-not-running"]
    assert [each.mendable for each in stands] == [expected]
    assert any(each.rule == "spindle-not-running" for each in made.copy.findings) != expected
