from collections.abc import Sequence

from gclint.columns import Bytes, Floats
from gclint.tables.motion import Motion

class Planner:
    def __init__(
        self,
        motion: Motion,
        rest: Bytes,
        entry: Floats,
        bend: Floats,
        seconds: Floats,
        peak: Floats,
        acceleration: Sequence[float] | None,
        feed_limit: Sequence[float],
        rapid_limit: Sequence[float],
        deviation: float,
        span: float,
    ) -> None: ...
    def run(self) -> None: ...
