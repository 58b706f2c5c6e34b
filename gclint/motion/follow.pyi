from typing import Any

from gclint.motion.interpreter import Interpreter

class Follower:
    blocks: int
    calls: int
    deepest: int
    def __init__(
        self,
        host: Any,
        interpreter: Interpreter,
        names: int,
        globals_: int,
        loops: int,
        most_calls: int,
        macro_style: bool,
    ) -> None: ...
    def run(self, most_blocks: int, first: int) -> None: ...
