"""What comments say of tools: only what is plain. A wrongly guessed tool is worse than none."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from gclint.motion.interpret import interpret
from gclint.program.read import read
from gclint.setup.comments import said_in, tools_in
from gclint.tables.setup import Controller, Tool
from tests.strategies import STEADY

CUT = "G21 G90 G94 G17 G54\nM3 S10000\nG0 Z5\nG1 Z-1 F300\nG1 X50 F1000\nM30\n"


def tools(text: str) -> dict[int, Tool]:
    program = read(text.encode(), "part.nc")
    return {number: tool for number, (tool, _) in tools_in(program, interpret(program, Controller())).items()}


@pytest.mark.parametrize(
    ("text", "shape", "diameter", "flutes"),
    [
        ("T1 CR=0 D=2.7 - flat end mill - deepest Z=-3", "flat", 2.7, None),
        ("T1 ball end mill - CR=3 D=6", "ball", 6.0, None),
        ('1/4" Downcut Carbide End Mill001', "flat", 6.35, None),
        ("Use a 1/32inch Bit", None, 0.79375, None),
        ("TC: 3mm_Endmill_1flutes003", "flat", 3.0, 1),
        ("Carbide 4-Flute Endmill, 2mm", "flat", 2.0, 4),
        ("tool 2: ball nose 6.35 mm 2fl", "ball", 6.35, 2),
        ("Tool: Dia 6 end mill", "flat", 6.0, None),
        ("two flute end mill diameter: 0.25 in", "flat", 6.35, 2),
        ("twist drill 4.5mm", "drill", 4.5, None),
        ("bull nose cutter 8mm corner radius 1", "bull-nose", 8.0, None),
        ("60 deg V-bit 12.7 mm", "v", 12.7, None),
    ],
)
def test_plain_words_are_read(text: str, shape: str | None, diameter: float, flutes: int | None) -> None:
    said = said_in(text, 1, 1.0)
    assert said is not None
    assert said.diameter == pytest.approx(diameter, abs=1e-3)
    assert (said.shape, said.flutes) == (shape, flutes)


@pytest.mark.parametrize(
    "text",
    [
        "Radius is 15.5. Minus half mill bit is 6.350/2 = 12.3",
        "Note: use the location of the 1/4 drill bit so the 1/8 inch center is in the same spot",
        "Compensated Tool Path. Diameter: 3.175",
        "mill the 20 mm hole with the end mill",
        "1/8 in shank, 30 deg V-bit",
        "pocket 3 mm deep, end mill",
        "6 mm end mill, 22 mm long",
        "3 mm ply",
        "feed 200 mm/min",
        "part 12 of 15",
        "",
    ],
)
def test_other_sizes_are_left_alone(text: str) -> None:
    said = said_in(text, 1, 1.0)
    assert said is None or said.diameter is None


def test_two_sizes_in_one_comment_are_none() -> None:
    assert said_in("end mill 6mm or 1/4 in end mill", 1, 1.0) is None


def test_a_size_without_unit_takes_the_programs() -> None:
    inch = said_in("T1 D=0.25 end mill", 1, 25.4)
    assert inch is not None
    assert inch.diameter == pytest.approx(6.35)
    unknown = said_in("T1 D=0.25 end mill", 1, None)
    assert unknown is not None
    assert unknown.diameter is None


def test_tied_by_its_number() -> None:
    found = tools("(T1 D=6 - flat end mill)\n(T2 D=3 - ball end mill)\n" + CUT.replace("M3", "T1 M6\nM3"))
    assert (found[1].diameter, found[2].shape) == (6.0, "ball")
    assert found[1].declared_in == "comment on line 1"


def test_tied_to_the_call_beside_it() -> None:
    text = CUT.replace("M30\n", "(1/8 in end mill)\nT2 M6\nG1 X0\nM30\n").replace("M3 S", "T1 M6 (6mm end mill)\nM3 S")
    found = tools(text)
    assert found[1].diameter == pytest.approx(6.0)
    assert found[2].diameter == pytest.approx(3.175)


def test_the_only_tool() -> None:
    assert tools("(3mm end mill 2 flutes)\n" + CUT)[-1].flutes == 2


def test_comments_that_disagree_give_no_tool() -> None:
    assert tools("(3mm end mill)\n(6mm end mill)\n" + CUT) == {}
    assert tools("(3mm end mill)\n(3mm ball nose)\n" + CUT) == {}


def test_a_v_bit_without_angle_or_size_gives_no_tool() -> None:
    assert tools("(use a V bit)\n" + CUT) == {}
    assert tools("(6 mm V bit)\n" + CUT) == {}
    assert tools("(25degree_Vbit003)\n" + CUT) == {}


def test_shapes_that_words_cannot_describe_give_no_tool() -> None:
    assert tools("(T1 12mm dovetail cutter)\n" + CUT.replace("M3", "T1 M6\nM3")) == {}


@STEADY
@given(st.text(max_size=80), st.sampled_from([None, 1.0, 25.4]))
def test_any_comment_ends(text: str, unit: float | None) -> None:
    said = said_in(text, 1, unit)
    assert said is None or said.diameter is None or 0.0 < said.diameter <= 200.0
