from typing import Any

from gclint.columns import Floats

class Boxes:
    def __init__(self, low: Floats, high: Floats) -> None: ...
    def crossed(self, *columns: Any) -> int: ...
