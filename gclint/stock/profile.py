"""A tool's profile z(r) as the sweep wants it: flat disc, corner torus, cone, cylinder."""

from __future__ import annotations

import math

from msgspec import Struct

from gclint.tables.setup import Assumed, Tool

DRILL_POINT = 118.0  # degrees; DESIGN section 5: what an undeclared drill is taken to have
LEAST_ANGLE = 0.01  # degrees; nothing ground is sharper, and its cone would have no end
FLAT, BALL, CONE, OTHER = 0, 1, 2, 3  # as in gclint.stock.sweep


class Profile(Struct, frozen=True):
    """Lengths in mm. Height above the tip: 0 up to radius `flat`, a torus of radius `torus` to `join_r`, a cone."""

    radius: float
    flat: float
    torus: float
    join_r: float
    join_z: float
    cone: float  # height per radius; 0 where there is none
    shape: int
    flute_length: float  # inf where undeclared
    shank_radius: float  # NaN where undeclared
    assumed: tuple[Assumed, ...] = ()

    @property
    def rim(self) -> float:
        """Height of the profile at the tool's radius, where the cylinder starts."""
        return self.join_z + self.cone * (self.radius - self.join_r)

    def radius_at(self, height: float) -> float:
        """Largest radius of the tool up to a height above its tip, mm."""
        if self.shape == FLAT or height >= self.rim:
            return self.radius
        if height <= self.join_z:
            return self.flat + math.sqrt(max(0.0, 2 * self.torus * height - height * height))
        return self.join_r + (height - self.join_z) / self.cone if self.cone > 0 else self.radius

    @property
    def row(self) -> tuple[float, ...]:
        """The row of sweep.TOOL_COLUMNS."""
        return (self.radius, self.flat, self.torus, self.join_r, self.join_z, self.cone, self.rim, float(self.shape),
                self.flute_length, self.shank_radius)  # fmt: skip


def _number(value: float | None) -> float | None:
    return value if value is not None and math.isfinite(value) else None


def profile(tool: Tool) -> Profile | str | None:
    """The tool's profile; a string names the key that must be declared first; None for a tool that never cuts (drag).

    "" stands for a shape that is not modelled (T-slot, form, thread mill), which no declaration helps.
    """
    if tool.shape == "drag":
        return None
    if tool.shape in ("t-slot", "form", "thread-mill"):
        return ""
    radius = tool.diameter / 2
    if not 0 < radius < 1e6:
        return "diameter"
    assumed: list[Assumed] = []
    flat, torus, join_r, join_z, cone, shape = radius, 0.0, radius, 0.0, 0.0, FLAT
    corner, tip = _number(tool.corner_radius), _number(tool.tip_diameter)
    tip = tip / 2 if tip is not None else None
    if tool.shape == "ball":
        flat, torus, join_z, shape = 0.0, radius, radius, BALL
    elif tool.shape == "bull-nose":
        if corner is None:
            return "corner_radius"
        torus = min(max(corner, 0.0), radius)
        flat, join_z = radius - torus, torus
        shape = FLAT if torus < 1e-6 else BALL if flat < 1e-6 else OTHER
    elif tool.shape in ("v", "drill"):
        angle = tool.angle
        if angle is None and tool.shape == "drill":
            angle = DRILL_POINT
            assumed.append(Assumed(f"point angle of {tool.called}", "118 degrees", "no angle is declared"))
        if angle is None or not LEAST_ANGLE <= angle <= 180:
            return "angle"
        flat = join_r = min(max(tip or 0.0, 0.0), radius)
        if angle < 180 and flat < radius:
            cone, shape = 1 / math.tan(math.radians(angle / 2)), CONE if flat < 1e-6 else OTHER
        else:
            flat = join_r = radius
    elif tool.shape == "tapered-ball":
        nose = corner if corner is not None else tip
        if nose is None:
            return "tip_diameter"
        if tool.angle is None or not 0 <= tool.angle < 180:
            return "angle"
        torus, half = min(max(nose, 1e-6), radius), math.radians(tool.angle / 2)
        flat, join_r, join_z = 0.0, torus * math.cos(half), torus * (1 - math.sin(half))
        if tool.angle >= LEAST_ANGLE and join_r < radius:
            cone, shape = 1 / math.tan(half), OTHER
        else:
            torus, join_r, join_z, shape = radius, radius, radius, BALL
    elif tool.shape == "burr":
        assumed.append(Assumed(f"shape of {tool.called}", "flat-ended", "the end of a burr is not declared"))
    flute_length = _number(tool.flute_length)
    flute_length = flute_length if flute_length is not None else math.inf
    shank = tool.shank / 2 if tool.shank is not None else math.nan
    return Profile(radius, flat, torus, join_r, join_z, cone, shape, flute_length, shank, tuple(assumed))
