"""Thin walls: what stands between two cuts when the program has run, tall and hardly thicker than a card."""

from __future__ import annotations

import numpy as np
from msgspec import Struct

from gclint.columns import Floats, Longs
from gclint.knowledge.numbers import model_number
from gclint.stock.assume import outline
from gclint.tables.engagement import Engagement
from gclint.tables.motion import RAPID, Motion

LEVELS = (0.45, 0.9)  # of the deepest cut: heights at which walls are looked for
MOST = 30.0  # cells; the kernel marks no thicker wall
MOST_WALLS = 200  # kept, the longest first
ALONG = 0.5  # of a wall's cells on the field are its length times its thickness, at least


class Walls(Struct, frozen=True, eq=False):
    """One row for each thin wall, in mm; at most two rows for one wall, seen at two heights."""

    move: Longs  # row of Motion of the last deep cut that passes nearest to its middle
    thickness: Floats  # mean over the wall
    height: Floats  # above the depth at which it is looked at: it stands at least so high on both sides
    length: Floats

    def __len__(self) -> int:
        return len(self.move)


def thin_walls(motion: Motion, engagement: Engagement) -> Walls:
    """Empty where nothing is cut deeper than the least height of a wall."""
    from gclint.stock.islands import EIGHTHS, label, thin

    box, cut, cell = engagement.box, engagement.cut, engagement.cell
    least = model_number("wall_height")
    deepest = float(engagement.pieces.depth.max()) if len(engagement.pieces) else 0.0
    made: list[tuple[float, float, float, float]] = []
    if box is not None and cell > 0 and deepest >= least:
        x_low, _, y_low, _ = outline(box)
        for level in {max(share * deepest, least) for share in LEVELS}:
            deep = cut >= level
            rows, columns = np.flatnonzero(deep.any(axis=1)), np.flatnonzero(deep.any(axis=0))
            if not len(rows):
                continue
            j0, j1 = max(int(rows[0]) - 1, 0), min(int(rows[-1]) + 2, cut.shape[0])
            i0, i1 = max(int(columns[0]) - 1, 0), min(int(columns[-1]) + 2, cut.shape[1])
            solid = np.ascontiguousarray(~deep[j0:j1, i0:i1]).view(np.uint8)
            del deep
            marks = np.zeros(solid.shape, np.uint8)
            if not thin(solid, min(model_number("wall_thickness") / cell, MOST), marks):
                continue
            labels = np.zeros(solid.shape, np.int32)
            table = label(marks, cut[j0:j1, i0:i1], labels, True)
            j, i = np.nonzero(labels)
            own, count = labels[j, i] - 1, table[:, 0]
            thick = np.bincount(own, marks[j, i], len(table)) / count / EIGHTHS * cell
            tall = level - np.bincount(own, cut[j + j0, i + i0], len(table)) / count
            length = count * cell * cell / thick
            span = np.hypot(table[:, 2] - table[:, 1] + 1, table[:, 4] - table[:, 3] + 1) * cell
            x = x_low + (np.bincount(own, i, len(table)) / count + i0 + 0.5) * cell
            y = y_low + (np.bincount(own, j, len(table)) / count + j0 + 0.5) * cell
            worth = np.flatnonzero((tall >= least) & (span >= model_number("wall_length")) & (length >= ALONG * span))
            for n in worth[np.argsort(-span[worth], kind="stable")][:MOST_WALLS].tolist():
                made.append((_nearest(motion, engagement, level, x[n], y[n]), thick[n], tall[n], span[n]))
    columns_ = np.array(made).reshape(-1, 4).T
    return Walls(columns_[0].astype(np.int64), *columns_[1:])


def _nearest(motion: Motion, engagement: Engagement, level: float, x: float, y: float) -> int:
    """Row of Motion of the piece of path at least as deep whose end is nearest to a point; the last of equals."""
    pieces = engagement.pieces
    rows = np.flatnonzero((pieces.depth >= level) & (pieces.removed > 0) & (motion.kind[pieces.move] != RAPID))
    if not len(rows):
        return int(pieces.move[-1])
    move = pieces.move[rows]
    share = (pieces.start[rows] + pieces.end[rows]) / 2
    dx = motion.x0[move] + share * (motion.x1[move] - motion.x0[move]) - x
    dy = motion.y0[move] + share * (motion.y1[move] - motion.y0[move]) - y
    far = np.rint(np.hypot(dx, dy) / engagement.cell)
    return int(move[len(far) - 1 - int(np.argmin(far[::-1]))])
