from gclint.columns import Floats, Ints, Longs

TOOL_COLUMNS: tuple[str, ...]

def lower(
    field: Floats, x_low: float, y_low: float, cell: float, moves: Floats, tool: Ints, tools: Floats, rows: Longs
) -> None: ...
