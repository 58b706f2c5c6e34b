"""The kernel of the proof against a brute search over the height of a profile along the move."""

from __future__ import annotations

import numpy as np
import pytest

from gclint.mend.envelope import lower
from gclint.stock.profile import Profile, profile
from gclint.tables.setup import Tool

TOOLS = (
    Tool(1, "flat", 4.0),
    Tool(1, "ball", 5.0),
    Tool(1, "bull-nose", 6.0, corner_radius=1.0),
    Tool(1, "v", 6.0, angle=60.0),
    Tool(1, "tapered-ball", 6.0, corner_radius=0.5, angle=20.0),
)


def height(tool: Tool, r: np.ndarray) -> np.ndarray:
    """Height above the tip, from the shapes' own geometry."""
    big = tool.diameter / 2
    if tool.shape == "flat":
        return np.zeros_like(r)
    if tool.shape == "ball":
        return big - np.sqrt(np.maximum(big**2 - r**2, 0))
    if tool.shape == "bull-nose":
        c = tool.corner_radius or 0
        return np.where(r <= big - c, 0, c - np.sqrt(np.maximum(c**2 - (r - big + c) ** 2, 0)))
    half = np.radians((tool.angle or 0) / 2)
    if tool.shape == "v":
        return r / np.tan(half)
    c = tool.corner_radius or 0
    join = c * np.cos(half)
    return np.where(
        r < join, c - np.sqrt(np.maximum(c**2 - r**2, 0)), c * (1 - np.sin(half)) + (r - join) / np.tan(half)
    )


@pytest.mark.parametrize("tool", TOOLS, ids=lambda tool: tool.shape)
@pytest.mark.parametrize("end", [(9.0, 3.0, -2.0), (0.0, 0.0, -3.0), (7.0, -4.0, -0.5), (0.02, 0.01, -4.0)])
def test_the_lowest_place_of_a_profile_along_a_move(tool: Tool, end: tuple[float, float, float]) -> None:
    made = profile(tool)
    assert isinstance(made, Profile)
    cell, low = 0.37, -6.0
    field = np.full((40, 50), np.inf)
    a, b = np.array((0.0, 0.0, -0.5)), np.array(end)
    lower(
        field,
        low,
        low,
        cell,
        np.array([[*a, *b]]),
        np.zeros(1, np.int32),
        np.array([made.row[:7]]),
        np.zeros(1, np.int64),
    )
    x, y = np.meshgrid(low + (np.arange(50) + 0.5) * cell, low + (np.arange(40) + 0.5) * cell)
    t = np.linspace(0, 1, 4001)
    wanted = np.full(field.shape, np.inf)
    near = np.full(field.shape, np.inf)
    for share in t:
        p = a + (b - a) * share
        r = np.hypot(x - p[0], y - p[1])
        wanted = np.where(r <= tool.diameter / 2, np.minimum(wanted, p[2] + height(tool, r)), wanted)
        near = np.minimum(near, np.abs(r - tool.diameter / 2))
    clear = near > 0.01  # at the very rim a sample more or less decides
    assert (np.isfinite(field) == np.isfinite(wanted))[clear].all()
    both = np.isfinite(field) & np.isfinite(wanted)
    assert both.sum() > 30
    assert np.abs(field[both] - wanted[both]).max() < 5e-3
    assert (field[both] <= wanted[both] + 1e-6).all()


def test_what_stands_lower_already_stays() -> None:
    made = profile(TOOLS[0])
    assert isinstance(made, Profile)
    field = np.full((8, 8), -5.0)
    lower(
        field,
        0,
        0,
        1.0,
        np.array([[0.0, 0, -1, 8, 8, -1]]),
        np.zeros(1, np.int32),
        np.array([made.row[:7]]),
        np.zeros(1, np.int64),
    )
    assert (field == -5).all()
