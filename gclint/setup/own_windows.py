"""The chip windows a shop has measured itself: [windows] of its shop file, by the tool numbers the program uses."""

from __future__ import annotations

from gclint.setup.card import Material
from gclint.setup.declare import Declared, File
from gclint.setup.declared import Job, Shop, WindowTable
from gclint.setup.types import Tool, Window

_OWN_WINDOW = "this shop's own test cuts (windows in its shop file)"


def own_windows(
    declared: Declared, shop: Shop, job: Job, material: Material | None, tools: dict[int, Tool]
) -> dict[int, dict[str, Window]]:
    """The shop's own windows for this material, by the program's tool numbers."""
    windows: dict[int, dict[str, Window]] = {}
    names = {material.name if material else None, declared.options.material or job.material}
    replaced = {tool.number for tool in declared.tools}
    to_shop = {int(text): number for text, number in job.tool_map.items() if int(text) not in replaced}
    for name, by_tool in shop.windows.items():
        for text, table in by_tool.items():
            if declared.shop_file:
                _check_window(name, text, table, declared.shop_file, shop)
            if name not in names:
                continue
            for number in tools:
                if to_shop.get(number, number) == int(text) and int(text) not in replaced:
                    windows[number] = _by_operation(table)
            if -1 in tools and tools[-1].number == int(text) and int(text) not in replaced:
                windows[-1] = _by_operation(table)
    return windows


def _check_window(name: str, text: str, table: WindowTable, file: File, shop: Shop) -> None:
    key = ("windows", name, text)
    if not (text.isascii() and text.isdigit() and len(text) <= 5):
        raise file.wrong(key, "the last part is a shop tool's number", True)
    if int(text) not in [tool.number for tool in shop.tool]:
        raise file.wrong(key, f"this shop file has no tool {text}", True)
    for operation, (low, high) in _ranges(table).items():
        if low >= high:
            inner = (operation, "fz") if operation else ("fz",)
            raise file.wrong((*key, *inner), "the low limit is not under the high one")


def _ranges(table: WindowTable) -> dict[str, tuple[float, float]]:
    ranges: dict[str, tuple[float, float]] = {} if table.fz is None else {"": table.fz}
    for operation in ("slot", "side", "finish", "ramp", "plunge", "drill"):
        inner = getattr(table, operation)
        if inner is not None:
            ranges[operation] = inner.fz
    return ranges


def _by_operation(table: WindowTable) -> dict[str, Window]:
    return {
        operation: Window(float(low), float(high), "mm", "measured", _OWN_WINDOW)
        for operation, (low, high) in _ranges(table).items()
    }
