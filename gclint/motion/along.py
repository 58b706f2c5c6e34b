"""Where the tip is on its way along moves."""

from __future__ import annotations

import numpy as np

from gclint.columns import Column, Floats
from gclint.tables.motion import Motion


def starts_in_plane(motion: Motion, move: Column) -> tuple[Floats, Floats, Floats]:
    """Start of each move on the first, second and third axis of its plane, mm."""
    plane = motion.plane[move]
    x, y, z = motion.x0[move], motion.y0[move], motion.z0[move]
    xy, zx = plane == 17, plane == 18
    return (
        np.where(xy, x, np.where(zx, z, y)), np.where(xy, y, np.where(zx, x, z)), np.where(xy, z, np.where(zx, y, x)),
    )  # fmt: skip


def points_at(motion: Motion, move: Column, share: Floats) -> tuple[Floats, Floats, Floats]:
    """X, Y and Z after a share (0..1) of each move, mm; on arcs of any plane."""
    out = [
        start[move] + (end[move] - start[move]) * share
        for start, end in ((motion.x0, motion.x1), (motion.y0, motion.y1), (motion.z0, motion.z1))
    ]
    arcs = np.flatnonzero((motion.sweep[move] != 0) & (share > 0) & (share < 1))
    if len(arcs):
        m = move[arcs]
        first, second, _ = starts_in_plane(motion, m)
        du, dv = first - motion.cu[m], second - motion.cv[m]
        turn = np.radians(motion.sweep[m] * share[arcs])
        u = motion.cu[m] + du * np.cos(turn) - dv * np.sin(turn)
        v = motion.cv[m] + du * np.sin(turn) + dv * np.cos(turn)
        for plane, axes in ((17, (0, 1)), (18, (2, 0)), (19, (1, 2))):
            mine = motion.plane[m] == plane
            out[axes[0]][arcs[mine]], out[axes[1]][arcs[mine]] = u[mine], v[mine]
    return out[0], out[1], out[2]


def point_at(motion: Motion, move: int, share: float) -> tuple[float, float, float]:
    """As `points_at`, of one move."""
    x, y, z = points_at(motion, np.array([move]), np.array([share]))
    return float(x[0]), float(y[0]), float(z[0])
