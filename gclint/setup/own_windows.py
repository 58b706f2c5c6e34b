"""The chip windows a shop has measured itself: [windows] of its shop file, by the tool numbers the program uses."""

from __future__ import annotations

from gclint.cards.material import material, names
from gclint.problem import Problem
from gclint.setup.declare import Declared, File
from gclint.setup.declared import Job, OperationWindow, Shop, WindowTable
from gclint.tables.material import Material
from gclint.tables.setup import Tool, Window

EDGE = "edge"  # the place of edge speed among the operations
_OWN_WINDOW = "this shop's own test cuts (windows in its shop file)"


def own_windows(
    declared: Declared, shop: Shop, job: Job, card: Material | None, tools: dict[int, Tool]
) -> dict[int, dict[str, Window]]:
    """The shop's own windows for this material, by the program's tool numbers."""
    windows: dict[int, dict[str, Window]] = {}
    given = declared.options.material or job.material
    replaced = {tool.number for tool in declared.tools}
    to_shop = {int(text): number for text, number in job.tool_map.items() if int(text) not in replaced}
    source, file = declared.windows or (shop, declared.shop_file)
    for name, by_tool in source.windows.items():
        for text, table in by_tool.items():
            if file:
                _check_window(name, text, table, file, source)
            if not _means(name, card, given, file):
                continue
            for number in tools:
                if to_shop.get(number, number) == int(text) and int(text) not in replaced:
                    windows[number] = _by_operation(table)
            if -1 in tools and tools[-1].number == int(text) and int(text) not in replaced:
                windows[-1] = _by_operation(table)
    return windows


def _means(name: str, card: Material | None, given: str | None, file: File | None) -> bool:
    """Whether [windows."name"] speaks of the job's material; a name that looks like a slip is a Problem."""
    if card is not None and name in (card.name, given):
        return True
    if name in names():
        return False
    try:
        return material(name).name == (card.name if card else "")
    except Problem as problem:
        import difflib

        slip = difflib.get_close_matches(name, names(), n=1, cutoff=0.8) or "more than one" in problem.says
        if slip and file:
            raise file.wrong(("windows", name), problem.says, True) from None
        return False  # a card of the shop's own, not this job's


def _check_window(name: str, text: str, table: WindowTable, file: File, shop: Shop) -> None:
    key = ("windows", name, text)
    if not (text.isascii() and text.isdigit() and len(text) <= 5):
        raise file.wrong(key, "the last part is a shop tool's number", True)
    if int(text) not in [tool.number for tool in shop.tool]:
        raise file.wrong(key, f"this shop file has no tool {text}", True)
    for operation, (low, high) in ranges(table).items():
        if low >= high:
            inner = (operation, "fz") if operation else ("fz",)
            raise file.wrong((*key, *inner), "the low limit is not under the high one")
        speeds = [row.edge_speed for row in getattr(table, operation).floor] if operation else []
        if speeds != sorted(set(speeds)):
            raise file.wrong((*key, operation, "floor"), "the edge speeds must rise from row to row")
    if table.edge_speed is not None and table.edge_speed[0] >= table.edge_speed[1]:
        raise file.wrong((*key, "edge_speed"), "the low limit is not under the high one")


def ranges(table: WindowTable) -> dict[str, tuple[float, float]]:
    """The chip windows of a table, mm, by operation; "" holds for all."""
    found: dict[str, tuple[float, float]] = {} if table.fz is None else {"": table.fz}
    for operation in ("slot", "side", "finish", "ramp", "plunge", "drill"):
        inner = getattr(table, operation)
        if inner is not None:
            found[operation] = inner.fz
    return found


def _by_operation(table: WindowTable) -> dict[str, Window]:
    source = source_of(table)
    open_ = table.measured.open if table.measured else ()
    windows = {
        operation: Window(float(low), float(high), "mm", "measured", source, "fz_low" in open_, "fz_high" in open_,
                          _floor(table, operation))
        for operation, (low, high) in ranges(table).items()
    }  # fmt: skip
    if table.edge_speed is not None:
        low, high = table.edge_speed
        ends = "edge_low" in open_, "edge_high" in open_
        windows[EDGE] = Window(float(low), float(high), "m/min", "measured", source, *ends)
    return windows


def _floor(table: WindowTable, operation: str) -> tuple[tuple[float, float], ...]:
    inner: OperationWindow | None = getattr(table, operation) if operation else None
    return tuple((float(row.edge_speed), float(row.low)) for row in inner.floor) if inner else ()


def source_of(table: WindowTable) -> str:
    """Where a window comes from: 'this shop's own test cuts of 2026-11-25 (30 cuts)'."""
    if table.measured is None:
        return _OWN_WINDOW
    return f"this shop's own test cuts of {table.measured.on} ({table.measured.cuts} cuts)"


def windows_in(card: Material, shop: Shop, file: File) -> dict[str, WindowTable]:
    """The windows of a shop file that speak of this material, by tool number. Raises Problem for wrong ones."""
    tables: dict[str, WindowTable] = {}
    for name, by_tool in shop.windows.items():
        for text, table in by_tool.items():
            _check_window(name, text, table, file, shop)
            if _means(name, card, None, file):
                tables[text] = table
    return tables
