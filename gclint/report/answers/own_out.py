"""A material's card beside the windows that a shop has measured in it."""

from __future__ import annotations

from gclint.cutting.windows import windows_for
from gclint.digest.words import behind, count, figure
from gclint.report.text.text_sheet import TextSheet
from gclint.setup.declared import MeasuredTable, Shop, ToolTable, WindowTable
from gclint.setup.own_windows import ranges
from gclint.tables.material import Material
from gclint.tables.setup import Tool, Window

ENDS = ("low", "high")


def own_windows(card: Material, tables: dict[str, WindowTable], shop: Shop, paper: TextSheet) -> None:
    """For each tool of the shop with a window of this material: what was measured, how well, and what the card has."""
    paper.blank()
    paper.heading("THIS SHOP'S OWN WINDOWS, BESIDE THE CARD'S")
    if not tables:
        paper.text_block("It has measured none in this material: the card's numbers are used.")
    for number, table in tables.items():
        tool = next((tool for tool in shop.tool if str(tool.number) == number), None)
        if tool is not None:
            _tool(card, tool, table, paper)


def _tool(card: Material, tool: ToolTable, table: WindowTable, paper: TextSheet) -> None:
    name = f" ({tool.name})" if tool.name else ""
    paper.text_block(f"tool {tool.number}{name}: {tool.shape} {figure(float(tool.diameter), 4)} mm", style="head")
    given = windows_for(card, Tool(tool.number, tool.shape, float(tool.diameter)))
    measured = table.measured
    rows = []
    for operation, (low, high) in ranges(table).items():
        theirs = given.chip.get(operation or "slot")
        what = f"chip, {operation}" if operation else "chip"
        rows += _rows(what, "mm", (low, high), "fz", measured if operation in ("", "slot") else None, theirs)
    if table.edge_speed is not None:
        rows += _rows("edge speed", "m/min", table.edge_speed, "edge", measured, given.edge_speed)
    paper.table(("", "", "measured", "interval", "card", ""), rows, left=2)
    if measured is not None:
        part = f"{measured.interval * 100:.0f} %"
        said = f"From {count(measured.cuts, 'test cut')}, {measured.on}; intervals of {part}."
        how = {"ramp": "down a ramp", "straight": "straight down"}.get(measured.entry)
        said += f" They went in {how}." if how else ""
        paper.text_block(said)
    chip = next(iter(given.chip.values()), None)
    if chip is not None:
        paper.text_block(f"The card's chip: {behind(chip.standing, chip.source)}.")


def _rows(
    what: str, unit: str, own: tuple[float, float], key: str, measured: MeasuredTable | None, card: Window | None
) -> list[tuple[str, ...]]:
    """One line for each end."""
    made: list[tuple[str, ...]] = []
    for end, side, value in zip(ENDS, ("from", "to"), own):
        interval = getattr(measured, f"{key}_{end}", None)
        theirs = getattr(card, end) if card is not None else None
        open_ = measured is not None and f"{key}_{end}" in measured.open
        said = "none met" if open_ else "" if interval is None else f"{figure(interval[0])} to {figure(interval[1])}"
        apart = not open_ and _apart(theirs, interval)
        shown = "silent" if card is None else "no limit" if theirs is None else figure(theirs)
        made.append((what if end == "low" else "", side, f"{figure(value)} {unit}", said, shown,
                     "they disagree" if apart else ""))  # fmt: skip
    return made


def _apart(card: float | None, interval: tuple[float, float] | None) -> bool:
    return card is not None and interval is not None and not interval[0] <= card <= interval[1]
