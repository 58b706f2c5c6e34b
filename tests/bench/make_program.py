"""Long programs made on the spot, as a post-processor would write them; invented, and never stored."""

from __future__ import annotations

import math
import sys

HEADER = """%
(harbour chart relief - finishing - Lowtide workshop, invented)
(T1 ball 6 mm 2 flutes)
G21
G90 G94 G17
G54
T1 M6
S18000 M3
G4 P4
G0 Z10.000
G0 X0.000 Y0.000
G0 Z2.000
G1 Z{first:.3f} F600
F2400
"""
FOOTER = """G0 Z10.000
M5
G0 X0.000 Y0.000
M30
%
"""
STEP = 0.2  # mm between two points and between two rows


def height(x: float, y: float) -> float:
    """Depth of the wavy surface, mm; between -0.3 and -3.3."""
    return -1.8 + 0.9 * math.sin(x * 0.12) * math.cos(y * 0.09) + 0.6 * math.sin((x + y) * 0.31)


def finishing_program(lines: int) -> bytes:
    """A 3-axis raster over a wavy surface, mm, of exactly `lines` lines (at least 30), for a ball or a flat tool alike.

    The square field grows with the root of `lines`: 1,000,000 lines are about 200 x 200 mm and 28 MB.
    """
    header, footer = HEADER.format(first=height(0.0, 0.0)), FOOTER
    points = lines - header.count("\n") - footer.count("\n")
    if points < 1:
        raise ValueError("a finishing program has at least 30 lines")
    per_row = max(2, math.isqrt(points))
    along = [n * STEP for n in range(per_row)]
    out = [header]
    row = 0
    while points:
        y = row * STEP
        xs = along if row % 2 == 0 else along[::-1]
        out.extend(f"G1 X{x:.3f} Y{y:.3f} Z{height(x, y):.3f}\n" for x in xs[:points])
        points -= min(points, per_row)
        row += 1
    out.append(footer)
    return "".join(out).encode("ascii")


def main() -> None:
    """Write a program of N lines (first argument, 1,000,000 if none) to standard output."""
    sys.stdout.buffer.write(finishing_program(int(sys.argv[1]) if len(sys.argv) > 1 else 1_000_000))


if __name__ == "__main__":
    main()
