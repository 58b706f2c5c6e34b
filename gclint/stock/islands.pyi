from typing import Any

from numpy.typing import NDArray

from gclint.columns import Bytes, Floats, Floats32, Ints

ISLAND_COLUMNS: tuple[str, ...]
EIGHTHS: int

def label(solid: Bytes, surface: Floats32 | NDArray[Any], labels: Ints, corners: bool) -> Floats: ...
def thin(solid: Bytes, most: float, out: Bytes) -> int: ...
