"""Fine moves swept as one against the same moves swept one by one."""

from __future__ import annotations

import math

import numpy as np
import pytest

from gclint.stock import sweeps
from gclint.stock.engage import engage
from gclint.tables.engagement import ENTRY_KINDS, Engagement
from gclint.tables.setup import Tool
from tests.stock import dexels
from tests.stock.build import Path, box, flat, setup

BLANK = box((0, 60), (0, 40))


def both(path: Path, tool: Tool, monkeypatch: pytest.MonkeyPatch) -> tuple[Engagement, Engagement]:
    """Merged and one by one."""
    merged = engage(path.motion(), setup(tool, stock=BLANK))
    monkeypatch.setattr(sweeps, "MOST_MERGED", 1)
    single = engage(path.motion(), setup(tool, stock=BLANK))
    return merged, single


def raster(step: float, stepover: float, rows: int, wave: float, turned: bool = False) -> Path:
    """Rows to and fro over a wavy surface, entered from outside the blank."""
    path = Path((-4, 10, 5)).rapid(z=-2)
    for row in range(rows):
        y = 10 + row * stepover
        xs = [-4 + step * k for k in range(round(40 / step) + 1)]
        for x in xs if row % 2 == 0 else reversed(xs):
            z = -2 + wave * math.sin(0.3 * x) * math.cos(0.2 * y)
            path.line(*((y, x) if turned else (x, y)), z)
    return path


@pytest.mark.parametrize("tool", [Tool(1, "ball", 6.0), flat(), Tool(1, "v", 6.0, angle=90.0)])
def test_fine_arcs_in_one_piece_cut_as_each_alone(tool: Tool, monkeypatch: pytest.MonkeyPatch) -> None:
    path = Path((-4, 10, 5)).rapid(z=-1)
    for row in range(6):
        for _ in range(200):
            x, y, _z = path.at
            side = 1 if row % 2 == 0 else -1
            path.arc((x + 0.1 * side, y - 0.1), -90.0 * side)
        path.line(y=path.at[1] + 1.0)
    merged, single = both(path, tool, monkeypatch)
    assert len(merged.contact) < 0.5 * len(single.contact)
    np.testing.assert_allclose(merged.cut, single.cut, atol=1e-3)
    assert merged.pieces.removed.sum() == pytest.approx(single.pieces.removed.sum(), rel=0.005)
    assert merged.pieces.length.sum() == pytest.approx(single.pieces.length.sum(), rel=0.01)
    for name, most in (("ap", 0.03), ("ae", 0.15)):
        deep, alone = (np.median(getattr(each.pieces, name)) for each in (merged, single))
        assert deep == pytest.approx(alone, abs=most)


@pytest.mark.parametrize("turned", [False, True])
@pytest.mark.parametrize(
    ("tool", "stepover", "wave"),
    [
        (Tool(1, "ball", 6.0), 0.4, 0.0),
        (Tool(1, "ball", 6.0), 0.4, 0.8),
        (Tool(1, "ball", 2.0), 0.2, 0.8),
        (Tool(1, "bull-nose", 6.0, corner_radius=1.0), 1.0, 0.0),
        (Tool(1, "v", 6.0, angle=90.0), 0.3, 0.3),
        (flat(), 1.5, 0.0),
        (flat(), 1.5, 0.8),
        (Tool(1, "bull-nose", 6.0, corner_radius=1.0), 1.0, 0.8),
    ],
)
def test_merged_and_single_sweeps_agree(
    tool: Tool, stepover: float, wave: float, turned: bool, monkeypatch: pytest.MonkeyPatch
) -> None:
    path = raster(0.2, stepover, 8, wave, turned)
    merged, single = both(path, tool, monkeypatch)
    # the cells at a flat tool's rim are shared out anew: its volume is as that of one long move, good to 1 %
    volume = pytest.approx(single.pieces.removed.sum(), rel=0.01 if tool.shape == "flat" else 0.005)
    assert merged.pieces.removed.sum() == volume
    assert merged.cut.sum(dtype=float) == pytest.approx(single.cut.sum(dtype=float), rel=0.003)
    # where rows meet, single moves leave the near part of a cell a little deeper (see _wall)
    assert np.mean(np.abs(merged.cut - single.cut) > 0.02) < (0.005 if tool.shape == "flat" and wave else 0.001)
    one, other = (dict(zip(e.pieces.move.tolist(), range(len(e.pieces)), strict=True)) for e in (merged, single))
    # the same moves are in contact, but for those within a piece's length of where a contact begins or ends
    assert len(one.keys() ^ other.keys()) <= 0.01 * len(other) + 8
    shared = sorted(one.keys() & other.keys())
    rows, like = [one[move] for move in shared], [other[move] for move in shared]
    for name, most in (("ap", 0.03), ("ae", 0.05)):
        ours, theirs = getattr(merged.pieces, name)[rows], getattr(single.pieces, name)[like]
        assert np.median(ours) == pytest.approx(np.median(theirs), rel=0.05, abs=most), name
        assert ours.mean() == pytest.approx(theirs.mean(), rel=0.08, abs=most), name
    for name in ("length", "travel", "drop", "depth", "start", "end"):
        np.testing.assert_allclose(
            getattr(merged.pieces, name)[rows], getattr(single.pieces, name)[like], atol=1e-5, err_msg=name
        )


@pytest.mark.parametrize("wave", [0.1, 0.8, 2.5])
@pytest.mark.parametrize(
    "tool", [flat(6.0), flat(2.0), Tool(1, "ball", 6.0), Tool(1, "bull-nose", 6.0, corner_radius=1.0)]
)
def test_moves_swept_as_one_leave_the_floor_within_the_bound(tool: Tool, wave: float) -> None:
    # up and down slopes of up to 37 degrees: what is swept for the moves lies at most 0.003 mm beside them, in depth
    # and across, and so does the floor, be it a flat tool's low edge that leaves it
    path = raster(0.17, 1.3, 1, wave)
    found = engage(path.motion(), setup(tool, stock=BLANK))
    assert len(found.contact) < 0.5 * len(found.pieces)  # most are swept together
    places = dexels.trace(path.motion(), 0.01)
    cell, radius = found.cell, tool.diameter / 2
    columns = np.arange(30, round(34 / cell))
    for beside in (0.0, 0.3, 0.6, 0.85):
        row = round((10 + beside * radius) / cell)
        x, y = (columns + 0.5) * cell, np.full(len(columns), (row + 0.5) * cell)
        true = -dexels.surface(tool, places, x, y, (0, 60, 0, 40))
        bound = 0.003 * (1 + 0.3 * wave) + 0.001  # and what the oracle's own places leave between them
        assert np.abs(found.cut[row, columns] - true).max() <= bound, beside


def test_merging_takes_place(monkeypatch: pytest.MonkeyPatch) -> None:
    for tool in (Tool(1, "ball", 6.0), flat(), Tool(1, "bull-nose", 6.0, corner_radius=1.0)):
        merged, single = both(raster(0.2, 0.4, 2, 0.3), tool, monkeypatch)
        assert len(merged.contact) < 0.5 * len(single.contact)
        monkeypatch.undo()


@pytest.mark.parametrize("stepover", [0.2, 0.4, 1.0])
def test_a_ball_has_the_stepover_as_ae(stepover: float) -> None:
    # an equal pass beside the last takes the stepover, whatever the length of the moves; the first is a slot
    for step in (0.2, 5.0):
        path = Path((-5, 10, 5))
        for row in range(4):
            path.rapid(-5, 10 + row * stepover).rapid(z=-0.5)
            for k in range(1, round(70 / step) + 1):
                path.line(x=-5 + k * step)
            path.rapid(z=5)
        pieces = engage(path.motion(), setup(Tool(1, "ball", 6.0), stock=BLANK)).pieces
        per_row = len(path.rows) // 4
        middle = (pieces.move % per_row > 0.3 * per_row) & (pieces.move % per_row < 0.7 * per_row)
        first, last = middle & (pieces.move < per_row), middle & (pieces.move > 3 * per_row)
        assert pieces.ap[middle] == pytest.approx(0.5, abs=0.001)
        assert pieces.ae[first] == pytest.approx(2 * math.sqrt(0.5 * 5.5), rel=0.02)
        assert np.median(pieces.ae[last]) == pytest.approx(stepover, rel=0.05)
        assert pieces.climb[last] == pytest.approx(0.0, abs=0.1)


def ramp(slope: float) -> Path:
    path = Path((10, 20, 0))
    for k in range(1, 101):
        path.line(10 + 0.1 * k, 20, -0.1 * k * slope)
    return path.line(x=50)


def helix(radius: float) -> Path:
    path = Path((30 + radius, 20, 0))
    for k in range(1, 301):
        angle = k * 2 * math.pi / 100
        path.line(30 + radius * math.cos(angle), 20 + radius * math.sin(angle), -k / 100)
    return path.line(x=50)


@pytest.mark.parametrize("tool", [flat(), Tool(1, "ball", 6.0)])
@pytest.mark.parametrize(
    "path",
    [
        ramp(0.05),
        ramp(0.3),
        ramp(2.0),
        helix(2.5),
        Path((30, 20, 2)).through([(30, 20, 2 - 0.1 * k) for k in range(51)]).line(x=50),
    ],
    ids=["gentle ramp", "ramp", "steep ramp", "helix", "plunge"],
)
def test_entries_stay_as_they_are(path: Path, tool: Tool, monkeypatch: pytest.MonkeyPatch) -> None:
    merged, single = both(path, tool, monkeypatch)
    assert [ENTRY_KINDS[k] for k in merged.entries.kind] == [ENTRY_KINDS[k] for k in single.entries.kind]
    assert len(merged.entries) == 1
    for name, most in (("solid", 0.05), ("descent", 1e-3), ("slope", 0.5), ("depth", 1e-3), ("travel", 0.3)):
        assert getattr(merged.entries, name) == pytest.approx(getattr(single.entries, name), rel=0.01, abs=most), name
    assert merged.entries.centre.tolist() == single.entries.centre.tolist()
    # the share of the disc a ball covers anew grows with the piece, up to that of one long move
    assert merged.entries.under == pytest.approx(single.entries.under, abs=0.1 if tool.shape == "flat" else 0.4)
