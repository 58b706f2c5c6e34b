from typing import Any

from gclint.faults import FaultRows
from gclint.program.table import Program
from gclint.setup.types import Controller

class Interpreter:
    table: dict[str, Any]
    event_table: dict[str, Any]
    moves: int
    events: int
    stopped_at: int
    stopped_because: str
    ended: bool
    def __init__(
        self, program: Program, controller: Controller, start_codes: list[int], tool_by_t: bool, faults: FaultRows
    ) -> None: ...
    def run(self) -> None: ...
