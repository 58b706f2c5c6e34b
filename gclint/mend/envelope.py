"""The kernel that lowers a field of cells to the lowest place that a tool's profile reaches over straight moves.

Compiled by Cython; there is no interpreted twin. It knows no stock and no other kernel: for each cell centre it asks
where on the move the profile stands lowest over it.
"""

import cython

if not cython.compiled:
    raise ImportError("gclint.mend.envelope runs only as a compiled kernel")

from cython.cimports.libc.math import ceil, floor, sqrt

# columns of the table of tools: the first seven of gclint.stock.sweep.TOOL_COLUMNS
TOOL_COLUMNS = ("radius", "flat", "torus", "join_r", "join_z", "cone", "rim")
GOLDEN = cython.declare(cython.double, 0.6180339887498949)
STEPS = cython.declare(cython.int, 34)  # golden sections: the place on the move is known to 1e-7 of a diameter


@cython.cfunc
@cython.exceptval(check=False)
def _height(r: cython.double, tools: cython.const[cython.double][:, ::1], k: cython.Py_ssize_t) -> cython.double:
    """Height of the profile above the tip at a radius within the tool's."""
    flat: cython.double = tools[k, 1]
    torus: cython.double = tools[k, 2]
    inside: cython.double
    if r <= flat:
        return 0.0
    if r < tools[k, 3]:
        inside = torus * torus - (r - flat) * (r - flat)
        return torus - sqrt(inside) if inside > 0 else torus
    return tools[k, 4] + tools[k, 5] * (r - tools[k, 3])


def lower(
    field: cython.double[:, ::1],
    x_low: cython.double,
    y_low: cython.double,
    cell: cython.double,
    moves: cython.const[cython.double][:, ::1],
    tool: cython.const[cython.int][::1],
    tools: cython.const[cython.double][:, ::1],
    rows: cython.const[cython.longlong][::1],
) -> None:
    """Lowers `field` [ny, nx] (Z in mm; +inf where nothing reaches) by the moves named in `rows`.

    moves [n, 6]: x0, y0, z0, x1, y1, z1, mm. tool [n]: row of `tools`. Cell (0, 0) has its centre half a cell
    from x_low, y_low. Profiles must rise outward and be convex: then the lowest place along a move is found by section.
    """
    ny: cython.Py_ssize_t = field.shape[0]
    nx: cython.Py_ssize_t = field.shape[1]
    n: cython.Py_ssize_t
    m: cython.Py_ssize_t
    k: cython.Py_ssize_t
    i: cython.Py_ssize_t
    j: cython.Py_ssize_t
    i0: cython.Py_ssize_t
    i1: cython.Py_ssize_t
    j0: cython.Py_ssize_t
    j1: cython.Py_ssize_t
    r: cython.double
    dx: cython.double
    dy: cython.double
    dz: cython.double
    ll: cython.double
    px: cython.double
    py: cython.double
    mid: cython.double
    off: cython.double
    half: cython.double
    lo: cython.double
    hi: cython.double
    a: cython.double
    b: cython.double
    fa: cython.double
    fb: cython.double
    z: cython.double
    flat_only: cython.bint
    for n in range(rows.shape[0]):
        m = rows[n]
        k = tool[m]
        r = tools[k, 0]
        flat_only = tools[k, 1] >= r
        dx = moves[m, 3] - moves[m, 0]
        dy = moves[m, 4] - moves[m, 1]
        dz = moves[m, 5] - moves[m, 2]
        ll = dx * dx + dy * dy
        i0 = cython.cast(cython.Py_ssize_t, floor((min(moves[m, 0], moves[m, 3]) - r - x_low) / cell))
        i1 = cython.cast(cython.Py_ssize_t, ceil((max(moves[m, 0], moves[m, 3]) + r - x_low) / cell))
        j0 = cython.cast(cython.Py_ssize_t, floor((min(moves[m, 1], moves[m, 4]) - r - y_low) / cell))
        j1 = cython.cast(cython.Py_ssize_t, ceil((max(moves[m, 1], moves[m, 4]) + r - y_low) / cell))
        i0 = max(i0, 0)
        j0 = max(j0, 0)
        i1 = min(i1, nx)
        j1 = min(j1, ny)
        for j in range(j0, j1):
            py = y_low + (j + 0.5) * cell - moves[m, 1]
            for i in range(i0, i1):
                px = x_low + (i + 0.5) * cell - moves[m, 0]
                if ll < 1e-18:
                    off = px * px + py * py
                    if off > r * r:
                        continue
                    z = min(moves[m, 2], moves[m, 5]) + _height(sqrt(off), tools, k)
                    if z < field[j, i]:
                        field[j, i] = z
                    continue
                mid = (px * dx + py * dy) / ll
                off = (px - mid * dx) * (px - mid * dx) + (py - mid * dy) * (py - mid * dy)
                if off > r * r:
                    continue
                half = sqrt((r * r - off) / ll)
                lo = max(mid - half, 0.0)
                hi = min(mid + half, 1.0)
                if lo > hi:
                    continue
                if flat_only:
                    z = moves[m, 2] + dz * (lo if dz > 0 else hi)
                elif dz == 0.0:
                    a = min(max(mid, lo), hi)
                    z = moves[m, 2] + _height(sqrt(off + (a - mid) * (a - mid) * ll), tools, k)
                else:
                    if moves[m, 2] + dz * (lo if dz > 0 else hi) >= field[j, i]:
                        continue
                    a = hi - GOLDEN * (hi - lo)
                    b = lo + GOLDEN * (hi - lo)
                    fa = moves[m, 2] + dz * a + _height(sqrt(off + (a - mid) * (a - mid) * ll), tools, k)
                    fb = moves[m, 2] + dz * b + _height(sqrt(off + (b - mid) * (b - mid) * ll), tools, k)
                    for _ in range(STEPS):
                        if fa < fb:
                            hi = b
                            b = a
                            fb = fa
                            a = hi - GOLDEN * (hi - lo)
                            fa = moves[m, 2] + dz * a + _height(sqrt(off + (a - mid) * (a - mid) * ll), tools, k)
                        else:
                            lo = a
                            a = b
                            fa = fb
                            b = lo + GOLDEN * (hi - lo)
                            fb = moves[m, 2] + dz * b + _height(sqrt(off + (b - mid) * (b - mid) * ll), tools, k)
                    z = min(fa, fb)
                if z < field[j, i]:
                    field[j, i] = z
