"""Says on stderr what a long run is doing, and only to a terminal."""

from __future__ import annotations

import sys
import threading
from types import TracebackType
from typing import Any

from gclint.screen import QUIET

WAIT = 1.0  # s before anything is shown
LARGE = 2_000_000  # bytes of program from which it is shown at once


class Progress:
    """Call it with each step's name; use it as a context so that nothing is left on the screen."""

    def __init__(self) -> None:
        self.shown: Any = None
        self.name = self.text = ""
        self.timer: threading.Timer | None = None
        self.lock = threading.Lock()

    def __enter__(self) -> Progress:
        if sys.stderr.isatty() and not QUIET.get():
            self.timer = threading.Timer(WAIT, self._show)
            self.timer.daemon = True
            self.timer.start()
        return self

    def begin(self, name: str, size: int) -> None:
        """The next program."""
        self.name = name
        self("reading")
        if size >= LARGE and self.timer is not None:
            self._show()

    def __call__(self, step: str) -> None:
        self.text = f"{self.name}: {step}"
        if self.shown is not None:
            from rich.markup import escape

            self.shown.update(escape(self.text))

    def _show(self) -> None:
        with self.lock:
            if self.shown is not None:
                return
            from rich.console import Console
            from rich.markup import escape
            from rich.status import Status

            self.shown = Status(escape(self.text), console=Console(stderr=True))
            self.shown.start()

    def __exit__(
        self, kind: type[BaseException] | None, problem: BaseException | None, trail: TracebackType | None
    ) -> None:
        if self.timer is not None:
            self.timer.cancel()
        with self.lock:
            if self.shown is not None:
                self.shown.stop()
