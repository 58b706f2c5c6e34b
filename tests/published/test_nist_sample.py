"""The engraved words of sample program C.1 of the NIST RS274/NGC report (NISTIR 6556, 2000).

The program is written anew here from its strokes; the lengths are those of C.1 (rapids without the first, whose start
is not known to a reader of the program).
"""

from __future__ import annotations

import math

import numpy as np
import pytest

from tests.motion.run import run

# Each stroke: where the tool goes down, then the cuts of it.
STROKES = (
    ("X0 Y0", "G1 Y10"),
    ("Y5", "G1 X7"),
    ("Y0", "G1 Y10"),
    ("X11 Y2.5", "G1 X16", "G3 X13.5 Y0 I-2.5", "G1 X16"),
    ("X20 Y0", "G1 Y9"),
    ("X26", "G1 Y0"),
    ("X32.5", "G2 X32.5 J2.5"),
    ("X45 Y5", "G1 X47 Y0", "G1 X48.5 Y3", "G1 X50 Y0", "G1 X52 Y5"),
    ("X57.5 Y0", "G2 X57.5 J2.5"),
    ("X64", "G1 Y5", "G1 Y4", "G2 X69 R4"),
    ("X73 Y0", "G1 Y9"),
    ("X81", "G1 Y0", "G1 X79.5", "G2 Y5 J2.5", "G1 X81"),
)


def program() -> str:
    lines = ["G21 G90 G94 G17 G54", "G0 X0 Y0 Z50", "T1 M6 M3 F20 S4000"]
    for start, *cuts in STROKES:
        lines += [f"G0 {start}" if lines[-1] == "G0 Z2" else f"G0 {start} Z2", "G1 Z-0.5", *cuts, "G0 Z2"]
    return "\n".join([*lines[:-1], "G0 Z50", "M2", ""])


def test_lengths_and_times() -> None:
    m = run(program())
    rapid = m.kind == 0
    assert len(m.faults) == 0
    assert np.nansum(m.length[rapid]) == pytest.approx(252.0528 - 50, abs=1e-4)
    assert m.length[~rapid].sum() == pytest.approx(183.4305, abs=1e-4)
    assert (m.length[~rapid] / m.feed[~rapid]).sum() == pytest.approx(9.1715, abs=1e-4)
    plunges = ~rapid & (m.z1 < m.z0)
    assert m.length[plunges].tolist() == pytest.approx([2.5] * 12)
    assert set(m.speed[~rapid]) == {4000.0}
    assert set(m.spindle[~rapid]) == {1}


def test_box() -> None:
    m = run(program())
    low = [np.nanmin(column) for column in (m.x1, m.y1)]
    high = [np.nanmax(column) for column in (m.x1, m.y1)]
    assert (*low, *high) == pytest.approx((0, 0, 81, 10))


def test_sweeps() -> None:
    m = run(program())
    arcs = np.flatnonzero(m.kind >= 2)
    assert m.sweep[arcs].tolist() == pytest.approx([270, -360, -360, -77.3644, -180], abs=1e-4)
    r = arcs[3]
    assert (m.cu[r], m.cv[r]) == pytest.approx((66.5, 0.8775), abs=1e-4)
    assert math.hypot(m.x0[r] - m.cu[r], m.y0[r] - m.cv[r]) == pytest.approx(4)
