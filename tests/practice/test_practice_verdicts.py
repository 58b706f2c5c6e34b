"""What a program in cured epoxy is told, from its text to the findings. Everything here is common practice, no source.

A bit of 1/8 in on a dial-set router that turns 0.85 of what its dial says: 40 to 60 in/min at settings of 10,000 to
14,000 cut well, the same feeds at 17,000 and above make dust, feeds twice as high chatter at the low speeds; every
straight plunge chips the edge, a ramp of 3 degrees does not; a longer bit is worse; a down-cut bit leaves a clean top.
"""

from __future__ import annotations

import pytest

from gclint.tables.finding import Checked
from tests.judge.try_judge import found, tried

NOMINAL = (10000, 12000, 14000, 17000, 20000, 23000, 26000)
DIAL = ", ".join(f'{{ mark = "{n}", stated = {s}, measured = {s * 0.85:g} }}' for n, s in enumerate(NOMINAL, 1))
ROUTER = f"""
[spindle]
kind = "dial"
dial = [{DIAL}]
started = "by-hand"

[[tool]]
number = 1
shape = "flat"
diameter = "1/8 in"
flutes = %d
flute_length = "0.5 in"
stickout = "%g in"
shank = "1/8 in"
helix = "%s"
made_of = "carbide"
"""
RAMP = "G1 Z0 F10\nG1 X1.2 Z-0.04 F20\nG1 X0.4\n"  # 2.9 degrees
CHIPS = ("chip-too-thin", "chip-too-thick", "edge-too-fast")


def cut(
    feed: float, nominal: int, way_in: str = RAMP, flutes: int = 2, stickout: float = 0.8, helix: str = "down-cut"
) -> Checked:
    """A groove of 0.04 in, the way in given; the true speed is 0.85 of the dial's."""
    program = f"G20 G90 G94 G17 G54\nS{nominal} M3\nG0 Z0.2\nG0 X0.4 Y1\n{way_in}G1 X4 F{feed:g}\nG1 Y2\nG0 Z0.2\nM30\n"
    return tried(
        program, material="cured-epoxy", stock="120 x 80 x 20 mm at 0 0", shop=ROUTER % (flutes, stickout, helix)
    )


def told(checked: Checked) -> set[str]:
    return {f.rule for f in found(checked, *CHIPS) if f.grade == "change"}


@pytest.mark.parametrize("nominal", [10000, 12000, 14000])
@pytest.mark.parametrize("feed", [40, 50, 60])
def test_good_pairs_are_clean(feed: float, nominal: int) -> None:
    assert {f.rule for f in cut(feed, nominal).findings if f.grade != "consider"} == set()
    assert not found(cut(feed, nominal), *CHIPS)


@pytest.mark.parametrize("nominal", [17000, 20000, 23000, 26000])
@pytest.mark.parametrize("feed", [40, 50, 60])
def test_dusty_pairs_are_too_thin(feed: float, nominal: int) -> None:
    checked = cut(feed, nominal)
    assert "chip-too-thin" in {f.rule for f in found(checked, *CHIPS)}
    assert told(checked) & {"chip-too-thin", "edge-too-fast"}
    assert "chip-too-thick" not in told(checked)


@pytest.mark.parametrize(("feed", "nominal"), [(100, 10000), (120, 12000), (140, 14000), (120, 10000)])
def test_chattering_pairs_are_too_thick(feed: float, nominal: int) -> None:
    assert told(cut(feed, nominal)) == {"chip-too-thick"}


def test_a_plunge_is_told_and_a_ramp_is_not() -> None:
    plunged = cut(50, 12000, "G1 Z-0.04 F10\n")
    assert [f.line for f in found(plunged, "straight-plunge")] == [5]
    entries = ("straight-plunge", "steep-ramp", "hidden-plunge", "plunge-too-fast", "bores-with-router-bit")
    assert not found(cut(50, 12000), *entries)
    assert found(cut(50, 12000, "G1 Z0 F10\nG1 X0.5 Z-0.04\n"), "steep-ramp")  # 22 degrees


def test_a_longer_bit_is_worse() -> None:
    bent = ("tool-bends", "tool-breaks", "long-tool")
    deep = "G1 Z0 F10\n" + "".join(f"G1 X{x} Z-{0.04 * n:g} F20\n" for n, x in ((1, 1.2), (2, 0.4), (3, 1.2)))
    short, long = cut(60, 10000, deep, stickout=0.6), cut(60, 10000, deep, stickout=2.5)
    assert len(found(long, *bent)) > len(found(short, *bent))


def test_a_down_cut_bit_leaves_the_cleaner_top() -> None:
    assert found(cut(50, 12000, helix="up-cut"), "up-cut-on-brittle-top")
    assert not found(cut(50, 12000, helix="down-cut"), "up-cut-on-brittle-top")


def test_one_flute_takes_the_chip_of_two() -> None:
    """40 in/min at 17,000 (14,450 true): 0.035 for each of two flutes, 0.070 for one."""
    assert "chip-too-thin" in {f.rule for f in cut(40, 17000).findings}
    assert "chip-too-thin" not in {f.rule for f in cut(40, 17000, flutes=1).findings}
    assert "chip-too-thick" in told(cut(60, 10000, flutes=1))
