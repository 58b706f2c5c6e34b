"""A line for each finding, `file:line:column: grade: rule: text`: what compilers write, and problem matchers read."""

from __future__ import annotations

from gclint.digest.sheet_words import is_entry
from gclint.problem import Problem
from gclint.report.machine.message import NOT_JUDGED, UNREADABLE, message_of, not_judged_of, one_line_of
from gclint.run import Run


class Lines:
    """Takes runs one by one. What is accepted, or told with its cause, is left away; what was not judged
    says so in the place of a grade.
    """

    maker = None

    def __init__(self) -> None:
        self.lines: list[str] = []

    def add(self, run: Run) -> None:
        """One program that was read."""
        checked = run.checked
        for found in checked.findings:
            if is_entry(found):
                self._say(checked.path, found.line, found.column, f"{found.grade}: {found.rule}: {message_of(found)}")
        for says in not_judged_of(checked):
            self._say(checked.path, 1, 1, f"{NOT_JUDGED}: {says}")

    def missed(self, problem: Problem) -> None:
        """One program that could not be read."""
        place = problem.path or "", problem.line or 1, problem.column or 1
        self._say(*place, f"halt: {UNREADABLE}: {problem.says}")

    def text(self, code: int) -> str:
        """All lines; the exit code has no place in them."""
        del code
        return "".join(f"{line}\n" for line in self.lines)

    def _say(self, path: str, line: int, column: int, says: str) -> None:
        self.lines.append(one_line_of(f"{path}:{line}:{column}: {says}"))
