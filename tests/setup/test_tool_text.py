"""Tools and blanks in one line of text."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from gclint.problem import Problem
from gclint.setup.tool_text import stock_from_text, tool_from_text
from gclint.tables.setup import SHAPES, Tool
from tests.strategies import STEADY


@pytest.mark.parametrize(
    ("text", "tool"),
    [
        ("1: flat 3.175mm 2fl down-cut", Tool(1, "flat", 3.175, flutes=2, helix="down-cut")),
        ("2: ball 6mm 2fl up-cut", Tool(2, "ball", 6.0, flutes=2, helix="up-cut")),
        ("3: v 12.7mm 60deg 1fl", Tool(3, "v", 12.7, flutes=1, angle=60.0)),
        ("4: bull-nose 8 mm corner 1 mm", Tool(4, "bull-nose", 8.0, corner_radius=1.0)),
        ("7: flat 0.02mm corner 0.001mm", Tool(7, "flat", 0.02, corner_radius=0.001)),
        ("5:flat 1/2in 1 flute", Tool(5, "flat", 12.7, flutes=1)),
        ("0: FLAT 6MM", Tool(0, "flat", 6.0)),
        ("6: drill 3mm 118°", Tool(6, "drill", 3.0, angle=118.0)),
    ],
)
def test_tool(text: str, tool: Tool) -> None:
    read = tool_from_text(text)
    assert read.declared_in == "--tool"
    for name in ("number", "shape", "flutes", "helix"):
        assert getattr(read, name) == getattr(tool, name)
    for name in ("diameter", "corner_radius", "angle"):
        assert getattr(read, name) == pytest.approx(getattr(tool, name))


@pytest.mark.parametrize(
    ("text", "says"),
    [
        ("1: falt 3mm", 'column 4: "falt" is not a word of a tool; nearest: "flat"'),
        ("1: flat 3mm upcutt", 'column 13: "upcutt" is not a word of a tool; nearest: "up-cut"'),
        ("flat 3mm", "does not begin with a number and a colon"),
        ("1: flat", 'column 8: the diameter is missing, such as "6 mm"'),
        ("1: 3mm", "the shape is missing"),
        ("1: flat 3", 'column 9: "3" has no unit; write "3mm", "3in" or "3fl"'),
        ("1: flat 3,175mm", "decimal comma"),
        ("1: flat 3mm 4mm", "column 13: the diameter is given twice"),
        ("1: flat 0mm", "is no size of a tool"),
        ("1: flat 0.019mm", "is no size of a tool"),
        ("1: flat 3mm 2fl 4fl", "the number of flutes is given twice"),
        ("1: flat 3mm 0fl", "a tool has 1 to 100 flutes"),
        ("1: v 3mm 200deg", "the full angle lies between 0 and 180 deg"),
        ("1: flat 3mm corner", 'such as "corner 0.5mm"'),
        ("1: flat 3mm corner 2mm", "larger than half the diameter"),
        ("123456: flat 3mm", "at most five digits"),
        ("", "does not begin with a number"),
    ],
)
def test_what_is_wrong_with_a_tool(text: str, says: str) -> None:
    with pytest.raises(Problem) as caught:
        tool_from_text(text)
    assert caught.value.path == "--tool"
    assert says in caught.value.says


def good_tool(text: str) -> bool:
    """Whether a text gives a tool, or a Problem with its place."""
    try:
        tool = tool_from_text(text)
    except Problem as problem:
        return problem.path == "--tool"
    return tool.shape in SHAPES and tool.diameter > 0


WORDS = ["1:", "flat", "6mm", "corner", "2fl", "60deg", "up-cut", "v", "3", "/", "1/8 in", "x"]


@STEADY
@given(st.text(max_size=50))
def test_any_text_is_a_tool_or_a_problem(text: str) -> None:
    for each in (text, f"1: flat 6mm {text}"):
        assert good_tool(each)


@STEADY
@given(st.lists(st.sampled_from(WORDS)))
def test_any_words_are_a_tool_or_a_problem(words: list[str]) -> None:
    assert good_tool(" ".join(words))


@pytest.mark.parametrize(
    ("text", "size", "corner"),
    [
        ("120 x 80 x 18 mm at -10 -10", (120, 80, 18), (-10, -10)),
        ("120x80x18mm", (120, 80, 18), None),
        ("4 x 3 x 3/4 in at 0 0", (101.6, 76.2, 19.05), (0, 0)),
        ("120 mm x 3 in x 1/2 in at 1 in -2 mm", (120, 76.2, 12.7), (25.4, -2)),
    ],
)
def test_stock(text: str, size: tuple[float, ...], corner: tuple[float, ...] | None) -> None:
    read_size, read_corner = stock_from_text(text)
    assert read_size == pytest.approx(size)
    assert read_corner == (None if corner is None else pytest.approx(corner))


@pytest.mark.parametrize(
    ("text", "says"),
    [
        ("120 x 80 x 18", "has no unit"),
        ("120 x 80 mm", "does not hold three sizes"),
        ("120 x 80 x 0 mm", "above zero"),
        ("120 x 80 x 18 mm at 5", "the lowest X and Y"),
        ("120 x 80 x 18 kg", "but a length is wanted"),
        ("", "does not hold three sizes"),
    ],
)
def test_what_is_wrong_with_a_stock(text: str, says: str) -> None:
    with pytest.raises(Problem) as caught:
        stock_from_text(text)
    assert caught.value.path == "--stock"
    assert says in caught.value.says


@STEADY
@given(st.one_of(st.text(max_size=40), st.lists(st.sampled_from(["1", "x", "mm", "at", "-3", "1/0"])).map(" ".join)))
def test_any_text_is_a_stock_or_a_problem(text: str) -> None:
    try:
        size, _ = stock_from_text(text)
    except Problem as problem:
        size, where = (1.0, 1.0, 1.0), problem.path
    else:
        where = "--stock"
    assert min(size) > 0
    assert where == "--stock"


@pytest.mark.parametrize(
    ("written", "shape", "helix"),
    [
        ("1/8in endmill", "flat", None), ("6mm end mill upcut", "flat", "up-cut"), ("60deg vbit 6mm", "v", None),
        ("ballnose 6mm 2fl downcut", "ball", "down-cut"), ("ball end mill 6mm", "ball", None),
        ("square end mill 6mm 2 flutes", "flat", None), ("bull nose 6mm corner 1mm", "bull-nose", None),
        ("flat 6mm endmill", "flat", None), ("90deg v-bit 1/2in", "v", None), ("drill bit 3mm", "drill", None),
    ],
)  # fmt: skip
def test_what_people_write_for_a_shape_or_a_helix_is_taken(written: str, shape: str, helix: str | None) -> None:
    tool = tool_from_text(f"1: {written}")
    assert (tool.shape, tool.helix) == (shape, helix)


@pytest.mark.parametrize("written", ["flat 6mm flat", "ball 6mm endmill", "upcut 6mm flat downcut"])
def test_two_shapes_or_two_helices_are_refused(written: str) -> None:
    with pytest.raises(Problem, match="given twice"):
        tool_from_text(f"1: {written}")
