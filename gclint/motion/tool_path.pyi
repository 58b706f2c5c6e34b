from collections.abc import Mapping

from gclint.columns import Column

class Path:
    def __init__(
        self, given: Mapping[str, Column], made: Mapping[str, Column], meets: bool, least: float
    ) -> None: ...
    def follow(self) -> None: ...
