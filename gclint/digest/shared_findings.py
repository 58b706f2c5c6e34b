"""What many programs have in common: findings with one cause told once, with the programs that have them."""

from __future__ import annotations

import os
from collections import Counter
from collections.abc import Sequence
from pathlib import Path

import msgspec

from gclint.digest.sheet_words import is_entry, title_words
from gclint.run import Run
from gclint.tables.finding import Finding
from gclint.tables.setup import GRADES

PLACES_KEPT = 12  # programs of a cause that are named; the others are counted


class Place(msgspec.Struct, frozen=True):
    path: str
    lines: tuple[int, ...]  # the first ones
    count: int  # of all lines


class Cause(msgspec.Struct):
    """One thing that a rule finds, in one grade; `worst` is told in full, from `worst_path`."""

    rule: str
    grade: str
    title: str
    worst: Finding
    worst_path: str
    factor: float  # by which the worst is outside its window
    programs: int = 0
    places: list[Place] = []


class RuleCount(msgspec.Struct):
    """In how many programs a rule finds something, in all and by folder; `grade` is its worst."""

    rule: str
    grade: str
    programs: int = 0
    folders: Counter[str] = msgspec.field(default_factory=Counter)


class Shared:
    """Collects findings program by program; what it keeps grows with the causes, not with the programs."""

    def __init__(self, paths: Sequence[str]) -> None:
        folders = [str(Path(path).parent) for path in paths]
        try:
            self.common = os.path.commonpath(folders) if folders else "."
        except ValueError:  # some paths are absolute, others not
            self.common = ""
        self.several = len({self.whose(path) for path in paths}) > 1  # whether it can be said whose a program is
        self.causes: dict[tuple[str, str, str], Cause] = {}
        self.rules: dict[str, RuleCount] = {}
        self.needs: dict[str, Counter[str]] = {}  # rules by what they need

    def short(self, path: str) -> str:
        """The path as seen from the folder that holds all programs."""
        return path if self.common in ("", ".") else path.removeprefix(self.common).lstrip(os.sep)

    def whose(self, path: str) -> str:
        """The first folder in which this program's place differs from that of others."""
        folder = str(Path(path).parent)
        return self.short(folder).replace(os.sep, "/").partition("/")[0] or "."

    def add(self, run: Run) -> None:
        folder = self.whose(run.checked.path)
        here: dict[tuple[str, str, str], list[Finding]] = {}
        for finding in run.checked.findings:
            if is_entry(finding):
                here.setdefault((finding.rule, finding.grade, finding.cause), []).append(finding)
        for key, findings in here.items():
            self._cause(key, findings, run)
        for rule in {key[0] for key in here}:
            grade = min((key[1] for key in here if key[0] == rule), key=GRADES.index)
            counted = self.rules.setdefault(rule, RuleCount(rule, grade))
            counted.grade = min(counted.grade, grade, key=GRADES.index)
            counted.programs += 1
            counted.folders[folder] += 1
        for needs in {blind.needs for blind in run.checked.not_judged}:
            counter = self.needs.setdefault(needs, Counter())
            counter.update({blind.name for blind in run.checked.not_judged if blind.needs == needs})
            counter[""] += 1

    def _cause(self, key: tuple[str, str, str], findings: list[Finding], run: Run) -> None:
        path = run.checked.path
        worst = max(findings, key=outside)
        factor = outside(worst)
        cause = self.causes.get(key)
        if cause is None:
            cause = self.causes[key] = Cause(key[0], key[1], title_words(key[0], run), worst, path, factor)
        elif factor > cause.factor:
            cause.worst, cause.worst_path, cause.factor = worst, path, factor
        cause.programs += 1
        if len(cause.places) < PLACES_KEPT:
            lines = sorted({line for finding in findings for line in finding.lines})
            cause.places.append(Place(self.short(path), tuple(lines[:4]), len(lines)))

    def in_order(self) -> list[Cause]:
        """The causes by harm, then by how many programs have them."""
        return sorted(self.causes.values(), key=lambda c: (GRADES.index(c.grade), -c.programs, c.rule, c.worst_path))


def outside(finding: Finding) -> float:
    """The factor by which a finding lies outside its window; 0 where there is nothing to compare."""
    found, window = finding.found, finding.window
    if found is None or window is None or not isinstance(found.value, (int, float)):
        return 0.0
    if window.high is not None and found.value > window.high:
        return found.value / window.high if window.high > 0 else 1e9 + found.value
    if window.low is not None and found.value < window.low:
        return window.low / found.value if found.value > 0 else 1e9 - found.value
    return 0.0
