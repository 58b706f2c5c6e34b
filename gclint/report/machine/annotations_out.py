"""Annotations: the commands that a code host's runner reads in a job's log, and shows beside the lines they name.

By the runner's own library (github.com/actions/toolkit, packages/core/src/command.ts); other hosts read the same.
"""

from __future__ import annotations

from gclint.digest.sheet_words import is_entry
from gclint.problem import Problem
from gclint.report.machine.message import NOT_JUDGED, UNREADABLE, message_of, not_judged_of, one_line_of
from gclint.report.machine.uri import plain_place
from gclint.run import Run

COMMAND = {"halt": "error", "change": "warning", "consider": "notice"}
# What would end a message or a property early; the per cent sign first, so that none is written twice.
IN_MESSAGE = (("%", "%25"), ("\r", "%0D"), ("\n", "%0A"))
IN_PROPERTY = (*IN_MESSAGE, (":", "%3A"), (",", "%2C"))


class Annotations:
    """Takes runs one by one. What is accepted, or told with its cause, is left away."""

    maker = None

    def __init__(self) -> None:
        self.lines: list[str] = []

    def add(self, run: Run) -> None:
        """One program that was read: a command for each finding, and one for all that was not judged."""
        checked = run.checked
        for found in checked.findings:
            if is_entry(found):
                self._say(
                    COMMAND[found.grade], message_of(found), checked.path, found.line, found.column,
                    f"{found.grade}: {found.rule}",
                )  # fmt: skip
        blind = not_judged_of(checked)
        if blind:
            self._say("notice", "; ".join(blind), checked.path, 1, None, NOT_JUDGED)

    def missed(self, problem: Problem) -> None:
        """One program that could not be read."""
        self._say("error", problem.says, problem.path, problem.line, problem.column, UNREADABLE)

    def text(self, code: int) -> str:
        """All commands, a line each; the exit code has no place in them."""
        del code
        return "".join(f"{line}\n" for line in self.lines)

    def _say(
        self, command: str, says: str, path: str | None, line: int | None, column: int | None, title: str
    ) -> None:
        place = {"file": plain_place(path) if path else "", "line": str(line or ""), "col": str(column or "")}
        said = [f"{name}={_escaped(value, IN_PROPERTY)}" for name, value in (place | {"title": title}).items() if value]
        self.lines.append(f"::{command} {','.join(said)}::{_escaped(says, IN_MESSAGE)}")


def _escaped(text: str, marks: tuple[tuple[str, str], ...]) -> str:
    text = one_line_of(text)
    for mark, escape in marks:
        text = text.replace(mark, escape)
    return text
