"""Where and how steep the edge of each shape of tool cuts at a depth: lengths mm, over numbers or numpy arrays."""

from __future__ import annotations

import numpy as np

from gclint.columns import Column
from gclint.cutting import formulas
from gclint.tables.setup import Tool


def diameter_at(tool: Tool, ap: Column | float) -> Column:
    """Returns the diameter that cuts where the tool stands `ap` deep in material; NaN where its angle is not known."""
    D = tool.diameter
    if tool.shape == "bull-nose" and tool.corner_radius:
        return formulas.effective_diameter_bull_nose(D, tool.corner_radius, ap)
    if tool.shape == "v":
        angle = np.nan if tool.angle is None else tool.angle
        return formulas.effective_diameter_v(D, angle, ap, tool.tip_diameter or 0.0)
    if tool.shape == "tapered-ball" and tool.tip_diameter and tool.angle:
        return formulas.effective_diameter_tapered_ball(D, tool.angle, ap, tool.tip_diameter)
    if tool.shape in ("ball", "tapered-ball"):
        return formulas.effective_diameter_ball(D, ap)
    return np.full(np.shape(ap), D)


def sine_at(tool: Tool, ap: Column | float) -> Column:
    """Returns sin(kr), kr the angle between the edge and the level plane at the height `ap` above the tip.

    A cone of full angle A stands at 90 - A / 2 degrees, so its sine is cos(A / 2). A chip is thinner by it.
    """
    D = tool.diameter
    if tool.shape == "bull-nose" and tool.corner_radius:
        return formulas.sin_edge_angle_bull_nose(tool.corner_radius, ap)
    if tool.shape == "v":
        angle = np.nan if tool.angle is None else tool.angle
        return np.full(np.shape(ap), np.cos(np.radians(angle / 2.0)))
    if tool.shape == "tapered-ball" and tool.tip_diameter and tool.angle:
        cone = np.cos(np.radians(tool.angle / 2.0))
        return np.minimum(formulas.sin_edge_angle_ball(tool.tip_diameter, ap), cone)
    if tool.shape in ("ball", "tapered-ball"):
        return formulas.sin_edge_angle_ball(D, ap)
    return np.ones(np.shape(ap))
