"""Gives the facts that inside-corner alone looks at."""

from __future__ import annotations

import numpy as np

from gclint.columns import Floats
from gclint.cutting.formulas import engagement_angle
from gclint.facts.context import Context, once
from gclint.facts.fact import Fact, number
from gclint.facts.path import along_cut, diameters, piece_at, turn
from gclint.knowledge.numbers import model_number


@once
def angle_before(context: Context) -> Floats:
    """[pieces] engagement angle about one diameter of path before, degrees, the largest of three places.

    180 where the pass began later than that: nothing is known to have risen.
    """
    return _angle_away(context, -1.0)


@once
def angle_after(context: Context) -> Floats:
    """[pieces] engagement angle about one diameter of path after, as before; 180 where the pass ends sooner."""
    return _angle_away(context, 1.0)


def _angle_away(context: Context, way: float) -> Floats:
    """[pieces] the largest engagement angle of three places about one diameter before (-1) or after (1) each."""
    pieces = context.engagement.pieces
    before = np.zeros(len(pieces))
    if len(pieces) < 2:
        return before + 180.0
    middle, of_pass, diameter = along_cut(context)
    usual, spread = model_number("before_corner"), model_number("before_corner_spread")
    for back in (usual - spread, usual, usual + spread):
        row = piece_at(middle, of_pass, middle + way * back * diameter, diameter)
        before = np.maximum(before, np.where(row >= 0, pieces.angle[row], 180.0))
    return before


def angle_peak(context: Context) -> Floats:
    """[pieces] largest engagement angle within the piece, degrees; `angle` is its mean.

    Before an inside corner the second wall stands in front of the tool for as long as the layer on it is thick, which
    is taken to be the layer on the first: the mean rise of the piece belongs to that part of it. No rise is larger
    than the turn of the path.
    """
    pieces, before = context.engagement.pieces, angle_before(context)
    mean = np.fmax(pieces.angle, np.where(turn(context) > 0, engagement_angle(pieces.ae, diameters(context)), 0.0))
    rise = np.maximum(0.0, mean - before)
    layer = diameters(context) / 2 * (1 - np.cos(np.radians(before)))
    with np.errstate(divide="ignore", invalid="ignore"):
        steep = rise * np.fmax(1.0, pieces.length / np.maximum(layer, pieces.length * model_number("sharpest_rise")))
    peak = before + np.minimum(steep, turn(context))
    return np.where(rise > 0, np.fmax(np.minimum(peak, 180.0), pieces.angle), pieces.angle)


FACTS: dict[str, dict[str, Fact]] = {
    "pieces": {
        "angle_after": number("deg", "engagement angle about one diameter of path after; 180 where the pass ends",
                              angle_after),
        "angle_before": number("deg", "engagement angle about one diameter of path before; 180 where the pass began "
                               "later", angle_before),
        "angle_peak": number("deg", "largest engagement angle within the piece", angle_peak),
    },
}  # fmt: skip
