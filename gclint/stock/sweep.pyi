from gclint.columns import Bytes, Floats, Floats32, Ints
from gclint.stock.rim import Rim

TOOL_COLUMNS: tuple[str, ...]
PIECE_COLUMNS: tuple[str, ...]

class Sweeper:
    def __init__(
        self, cut: Floats32, share: Floats32, other: Floats32, x_low: float, y_low: float, cell: float, top: float,
        row_depth: Floats32, merged: int, floor: Floats32,
    ) -> None: ...  # fmt: skip
    @property
    def cells_visited(self) -> float: ...
    def run(
        self, first: int, kind: Bytes, plane: Bytes,
        x0s: Floats, y0s: Floats, z0s: Floats, x1s: Floats, y1s: Floats, z1s: Floats,
        cus: Floats, cvs: Floats, sweeps: Floats,
        tool: Ints, tools: Floats, resolution: float, most_work: float,
        out: Floats32, out_move: Ints, out_profile: Ints, out_bits: Bytes,
        skipped: Bytes, before: Floats32, profiles: Rim,
    ) -> tuple[int, int]: ...  # fmt: skip
