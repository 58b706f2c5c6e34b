"""The kernel that tells what is left standing apart: pieces that hang together in plan, and places that are thin.

Compiled by Cython; there is no interpreted twin. The field is seen from above, row by row, as in `sweep.py`.
"""

import cython

if not cython.compiled:
    raise ImportError("gclint.stock.islands runs only as a compiled kernel")

import numpy as np
from cython.cimports.libc.math import sqrt

# columns of the table `label` gives, one row for each piece; places are rows and columns of the field
ISLAND_COLUMNS = ("cells", "first_row", "last_row", "first_column", "last_column", "least")
EIGHTHS = 8  # `thin` counts in eighths of a cell


@cython.cfunc
@cython.exceptval(check=False)
def _root(parent: cython.int[::1], n: cython.int) -> cython.int:
    """The piece that a run of cells belongs to, with the way to it shortened."""
    while parent[n] != n:
        parent[n] = parent[parent[n]]
        n = parent[n]
    return n


@cython.cfunc
@cython.exceptval(check=False)
def _join(parent: cython.int[::1], a: cython.int, b: cython.int) -> cython.void:
    a, b = _root(parent, a), _root(parent, b)
    if a < b:
        parent[b] = a
    elif b < a:
        parent[a] = b


def label(
    solid: cython.const[cython.uchar][:, ::1],
    surface: cython.const[cython.float][:, :],
    labels: cython.int[:, ::1],
    corners: cython.bint,
) -> object:
    """Numbers the pieces of cells that are not 0 in `solid`, in the order of their first cells.

    labels (written): 1 and up; 0 where `solid` is 0. corners: cells that touch at a corner alone hang together.
    Returns float64 [pieces, ISLAND_COLUMNS]; `least` is the least value of `surface` in the piece.
    """
    ny: cython.Py_ssize_t = solid.shape[0]
    nx: cython.Py_ssize_t = solid.shape[1]
    if labels.shape[0] != ny or labels.shape[1] != nx or surface.shape[0] != ny or surface.shape[1] != nx:
        raise ValueError("solid, surface and labels must be of one shape")
    parent: cython.int[::1] = np.empty(ny * ((nx + 1) // 2) + 1, np.int32)
    runs: cython.int = 0
    i: cython.Py_ssize_t
    j: cython.Py_ssize_t
    own: cython.int
    for j in range(ny):
        own = 0
        for i in range(nx):
            if solid[j, i] == 0:
                labels[j, i] = own = 0
                continue
            if own == 0:
                runs += 1
                own = runs
                parent[own] = own
                if corners and j > 0 and i > 0 and labels[j - 1, i - 1] > 0:
                    _join(parent, own, labels[j - 1, i - 1])
            labels[j, i] = own
            if j > 0:
                if labels[j - 1, i] > 0:
                    _join(parent, own, labels[j - 1, i])
                elif corners and i + 1 < nx and labels[j - 1, i + 1] > 0:
                    _join(parent, own, labels[j - 1, i + 1])
    number: cython.int[::1] = np.zeros(runs + 1, np.int32)
    n: cython.int
    pieces: cython.int = 0
    for n in range(1, runs + 1):
        own = _root(parent, n)
        if number[own] == 0:
            pieces += 1
            number[own] = pieces
        number[n] = number[own]
    made = np.zeros((pieces, 6))
    table: cython.double[:, ::1] = made
    for n in range(pieces):
        table[n, 1], table[n, 3], table[n, 5] = ny, nx, 1e30
    for j in range(ny):
        for i in range(nx):
            if labels[j, i] == 0:
                continue
            own = number[labels[j, i]]
            labels[j, i] = own
            own -= 1
            table[own, 0] += 1
            table[own, 1], table[own, 2] = min(table[own, 1], j), max(table[own, 2], j)
            table[own, 3], table[own, 4] = min(table[own, 3], i), max(table[own, 4], i)
            table[own, 5] = min(table[own, 5], surface[j, i])
    return made


def thin(solid: cython.const[cython.uchar][:, ::1], most: cython.double, out: cython.uchar[:, ::1]) -> int:
    """Marks the solid cells of walls thinner than `most` cells with their thickness in eighths of a cell.

    Of a straight wall it is the thickness across it, whichever way it runs: p q / sqrt(p^2 + q^2) of the unbroken
    lengths p along the row and q along the column. A length that ends at the border of the field has no end there.
    Returns the number of marked cells.
    """
    ny: cython.Py_ssize_t = solid.shape[0]
    nx: cython.Py_ssize_t = solid.shape[1]
    if out.shape[0] != ny or out.shape[1] != nx:
        raise ValueError("solid and out must be of one shape")
    if not 0 < most * EIGHTHS < 255:
        raise ValueError("a wall must be thinner than 31 cells to be marked")
    endless: cython.int = 60000
    down: cython.ushort[:, ::1] = np.zeros((ny, nx), np.uint16)
    i: cython.Py_ssize_t
    j: cython.Py_ssize_t
    k: cython.Py_ssize_t
    end: cython.Py_ssize_t
    length: cython.int
    for j in range(ny):
        for i in range(nx):
            if solid[j, i] != 0:
                down[j, i] = endless if j == 0 else min(endless, down[j - 1, i] + 1)
    for i in range(nx):
        if ny > 0 and solid[ny - 1, i] != 0:
            down[ny - 1, i] = endless
    for j in range(ny - 2, -1, -1):  # the length of a whole run stands in its last cell
        for i in range(nx):
            if solid[j, i] != 0 and solid[j + 1, i] != 0:
                down[j, i] = down[j + 1, i]
    marked: cython.int = 0
    p: cython.double
    q: cython.double
    t: cython.double
    for j in range(ny):
        i = 0
        while i < nx:
            if solid[j, i] == 0:
                i += 1
                continue
            end = i
            while end < nx and solid[j, end] != 0:
                end += 1
            length = endless if i == 0 or end == nx else end - i
            for k in range(i, end):
                p, q = length, down[j, k]
                t = p * q / sqrt(p * p + q * q)
                if t < most:
                    out[j, k] = max(1, cython.cast(cython.int, t * EIGHTHS))
                    marked += 1
            i = end
    return marked
