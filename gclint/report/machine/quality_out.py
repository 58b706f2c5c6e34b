"""Quality: a JSON list of issues, for the panels in which code hosts show what a change adds and what it mends.

By the open specification of issues for analysis engines (github.com/codeclimate/platform, spec/analyzers/SPEC.md, "Data
types"), in the form that hosts take as an artifact of a job: one list, no null characters between its parts.
"""

from __future__ import annotations

from collections import Counter
from typing import Any

import msgspec

from gclint.clean_text import json_text, plain
from gclint.digest.sheet_words import is_entry
from gclint.problem import Problem
from gclint.report.machine.message import NOT_JUDGED, UNREADABLE, message_of, not_judged_of, one_line_of
from gclint.report.machine.sarif_out import cause_key, hashed
from gclint.report.machine.uri import plain_place
from gclint.run import Run
from gclint.tables.finding import Finding

SEVERITY = {"halt": "blocker", "change": "major", "consider": "minor"}
OTHERS_NAMED = 50  # further lines of one finding
CATEGORY = "Bug Risk"  # of those the specification has, the one that fits


class Quality:
    """Takes runs one by one. What is accepted, or told with its cause, is left away; what was not judged
    is one issue of a program.
    """

    maker = None

    def __init__(self) -> None:
        self.issues: list[dict[str, Any]] = []
        self.seen: Counter[str] = Counter()

    def add(self, run: Run) -> None:
        """One program that was read."""
        checked = run.checked
        for found in checked.findings:
            if is_entry(found):
                key = cause_key(found, checked)
                self._add(checked.path, found.line, found.rule, message_of(found), SEVERITY[found.grade], key, found)
        blind = not_judged_of(checked)
        if blind:
            self._add(checked.path, 1, NOT_JUDGED, "; ".join(blind), "info", NOT_JUDGED)

    def missed(self, problem: Problem) -> None:
        """One program that could not be read."""
        self._add(problem.path or "", problem.line or 1, UNREADABLE, problem.says, "blocker", UNREADABLE)

    def text(self, code: int) -> str:
        """The list, with a line end; the exit code has no place in it."""
        del code
        return json_text(msgspec.json.encode(self.issues), indent=1)

    def _add(
        self, path: str, line: int, name: str, says: str, severity: str, key: str, found: Finding | None = None
    ) -> None:
        """An issue; its fingerprint is of the cause and the file, not of the line, so that it lives through edits."""
        path = plain(plain_place(path)) if path else "."
        key = f"{path}\0{key}"
        self.seen[key] += 1
        issue: dict[str, Any] = {
            "type": "issue",
            "check_name": name,
            "description": one_line_of(says),
            "categories": [CATEGORY],
            "severity": severity,
            "fingerprint": hashed(f"{key}\0{self.seen[key]}"),
            "location": _place(path, line),
        }
        others = [_place(path, each) for each in found.lines[: OTHERS_NAMED + 1] if each != line] if found else []
        if others:
            issue["trace"] = {"locations": others[:OTHERS_NAMED], "stacktrace": False}
        self.issues.append(issue)


def _place(path: str, line: int) -> dict[str, Any]:
    return {"path": path, "lines": {"begin": line, "end": line}}
