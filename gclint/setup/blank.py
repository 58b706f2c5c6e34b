"""The declared blank as a box in work coordinates."""

from __future__ import annotations

from gclint.setup.declare import Declared
from gclint.setup.declared import AboveTable, Job, StockTable
from gclint.tables.setup import Assumed, Stock


def blank_of(
    declared: Declared, job: Job, cuts_below_zero: bool = False, assumed: list[Assumed] | None = None
) -> tuple[str | float | None, Stock | None]:
    """(where Z zero lies, the blank in work coordinates).

    Where a program cuts below Z0 and nothing says where that is, the top of the stock is put there, and `assumed`
    gets the sentence that says so.
    """
    z_zero: str | float | None = (
        float(job.z_zero.above_table) if isinstance(job.z_zero, AboveTable) else job.z_zero
    )
    size, thickness, corner = _blank(declared, job.stock)
    if size is None and thickness is None:
        return z_zero, None
    if thickness is None and size is not None:
        thickness = size[2]
    where = z_zero
    if where is None and cuts_below_zero:
        where = "stock-top"
        if assumed is not None:
            because = "z_zero is not declared, and the program cuts below Z0"
            assumed.append(Assumed("Z zero", "the stock's top", because))
    top: float | None = None
    bottom: float | None = None
    if thickness is not None and where is not None:
        bottom = {"stock-top": -thickness, "table": 0.0}[where] if isinstance(where, str) else -where
        top = bottom + thickness
    placed = corner is not None and size is not None
    x = (corner[0], corner[0] + size[0]) if corner and size else None
    y = (corner[1], corner[1] + size[1]) if corner and size else None
    across = size[:2] if size else None
    return z_zero, Stock(x=x, y=y, top=top, bottom=bottom, declared=True, placed=placed, size=across)


def _blank(
    declared: Declared, table: StockTable | None
) -> tuple[tuple[float, float, float] | None, float | None, tuple[float, float] | None]:
    """(size, thickness, corner); --stock stands in for the job's blank whole."""
    if declared.stock:
        return declared.stock[0], None, declared.stock[1]
    if table is None:
        return None, None, None
    return table.size, table.measured_thickness, table.corner
