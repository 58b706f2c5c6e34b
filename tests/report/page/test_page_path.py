"""The drawn path against its moves, and what simplifying keeps."""

from __future__ import annotations

import math

import numpy as np
import pytest

from gclint.check import trace
from gclint.digest.packed_columns import Columns
from gclint.digest.path import CHORD, CUT, RAPID_AIR, RAPID_CUT, Path, chip_place, path_of
from gclint.digest.simplify import simplified
from gclint.run import Tables
from gclint.setup.declare import Options

PROGRAM = b"""G21 G90 G94 G17 G54
T1 M6
M3 S16000
G0 Z5
G0 X0 Y0
G1 Z-1 F300
G1 X40 F1200
G2 X60 Y-20 I0 J-20
G3 X60 Y-20 I-10 J0 Z-2
G0 X0
G0 Z5
G18 G2 X20 Z5 I10 K0
G53 G0 Z0
G0 X100
M30
"""


@pytest.fixture(scope="module")
def traced() -> Tables:
    options = Options(material="beech", tools=("1: flat 6mm 2fl up-cut",), stock="120 x 80 x 12 mm at -20 -60")
    return trace(PROGRAM, "cleat.nc", options)


def test_the_path_goes_where_the_moves_go(traced: Tables) -> None:
    path, hidden = path_of(traced)
    assert hidden == 4  # the first two from an unknown place, in machine coordinates, and after it
    ends = np.stack([path.x, path.y, path.z], 1)
    for place in ((40, 0, -1), (60, -20, -1), (60, -20, -2), (0, -20, -2), (20, -20, 5)):
        assert np.hypot.reduce(ends - place, axis=1).min() < 1e-6, place
    # arcs of all planes stay on their circle
    arcs = ((8, (40, -20), (0, 1), 20), (9, (50, -20), (0, 1), 10), (12, (10, 5), (0, 2), 10))
    for line, centre, axes, radius in arcs:
        rows = np.flatnonzero((traced.motion.line[path.first_move] == line) & path.drawn)
        points = ends[np.append(rows, rows[-1] + 1)][:, axes]
        assert np.abs(np.hypot(*(points - centre).T) - radius).max() < 1e-6
        middle = (points[1:] + points[:-1]) / 2
        assert np.abs(np.hypot(*(middle - centre).T) - radius).max() <= CHORD * 1.01


def test_kinds_are_told_apart(traced: Tables) -> None:
    path, _ = path_of(traced)
    line = traced.motion.line[path.first_move]
    assert set(path.kind[(line == 7) & path.drawn]) == {CUT}
    assert RAPID_CUT in path.kind[line == 10]
    assert set(path.kind[line == 11]) == {RAPID_AIR}
    assert np.isfinite(path.chip[line == 7]).all()
    assert np.isnan(path.chip[line == 11]).all()


def test_where_a_chip_lies_in_its_window() -> None:
    nan = math.nan
    chip = np.array([0.02, 0.04, 0.07, 0.1, 0.15, 0.5, 0.05, nan, 0.3])
    low = np.array([0.04, 0.04, 0.04, 0.04, 0.04, 0.04, nan, 0.04, 0.1])
    high = np.array([0.1, 0.1, 0.1, 0.1, 0.1, 0.1, nan, 0.1, nan])
    place = chip_place(chip, low, high)
    assert place[:6] == pytest.approx([0.5, 1, 1.5, 2, 2.5, 3])
    assert np.isnan(place[6])
    assert np.isnan(place[7])
    assert place[8] == pytest.approx(2)  # no high end: never over it


def wave(n: int) -> Path:
    """A long wavy path of cuts with one rapid in it and one bad chip."""
    x = np.linspace(0, 100, n + 1)
    kind = np.full(n, CUT, np.uint8)
    kind[n // 2] = RAPID_AIR
    place = np.full(n, 1.5, np.float32)
    place[n // 3] = 0.1
    zeros = np.zeros(n, np.float32)
    depth = np.abs(np.sin(np.arange(n) / n * 20)).astype(np.float32)
    return Path(
        x, np.sin(x / 5), np.cos(x / 7), np.arange(n, dtype=np.int32), np.ones(n, np.int32), kind, np.ones(n, bool),
        place, zeros, np.ones(n, np.float32), depth, zeros,
    )  # fmt: skip


@pytest.mark.parametrize("most", [20_000, 3000, 300])
def test_a_simplified_path_stays_beside_the_true_one(most: int) -> None:
    path = wave(20_000)
    pinned = np.zeros(20_001, bool)
    pinned[777] = True
    short, off = simplified(path, pinned, most)
    assert len(short) <= most
    assert (off == 0) == (most == 20_000)
    # every point of the true path beside the chord that stands for it
    row = np.searchsorted(short.first_move, np.arange(20_000), side="right") - 1
    a = np.stack([short.x[row], short.y[row], short.z[row]], 1)
    b = np.stack([short.x[row + 1], short.y[row + 1], short.z[row + 1]], 1)
    p = np.stack([path.x[:-1], path.y[:-1], path.z[:-1]], 1)
    along = np.clip(((p - a) * (b - a)).sum(1) / np.maximum(((b - a) ** 2).sum(1), 1e-12), 0, 1)
    assert np.hypot.reduce(p - a - along[:, None] * (b - a), axis=1).max() <= off + 1e-9
    assert short.place.min() == pytest.approx(0.1)  # the worst chip is still told
    assert short.depth.max() == pytest.approx(path.depth.max())
    assert (short.kind == RAPID_AIR).sum() == 1  # nothing is merged into a rapid
    assert np.any(np.abs(short.x - path.x[777]) < 1e-12)


def test_what_cannot_be_merged_still_ends() -> None:
    n = 4000
    path = wave(n)
    path.kind[:] = np.arange(n) % 3
    short, _ = simplified(path, np.zeros(n + 1, bool), 500)
    assert len(short) <= 500


def test_columns_come_back_as_they_were() -> None:
    columns = Columns()
    values = np.array([0.0, 1.2345, -2_000_000.0, 2_000_000.0, -1.0, math.nan])
    told = columns.add(values, 1000, delta=True)
    raw = np.frombuffer(b"".join(columns.parts), np.uint8).reshape(4, 6)
    numbers = np.ascontiguousarray(raw.T).view("<i4").ravel()
    assert told["at"] == 0
    assert np.cumsum(numbers, dtype=np.int32) / 1000 == pytest.approx([0, 1.234, -2e6, 2e6, -1, 0], abs=6e-4)
    byte = columns.add(np.array([0, 1.5, 3, math.nan]), 80, wide=False)
    assert list(b"".join(columns.parts)[byte["at"] :]) == [0, 120, 240, 255]
