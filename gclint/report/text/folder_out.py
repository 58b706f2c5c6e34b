"""The report of many programs: a line each, what they have in common once, whose it is, what was passed over."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence

from rich.text import Text

from gclint.digest.shared_findings import Cause, Place, RuleCount, Shared
from gclint.digest.sheet_words import found_words, is_entry, sentence, settings_words
from gclint.digest.words import GRADE_WORDS, Glossary, count
from gclint.problem import Problem
from gclint.report.text.gauge import gauge
from gclint.report.text.text_sheet import STYLES, TextSheet, clean
from gclint.run import Run
from gclint.tables.finding import Checked, Left

INDENT = 4
STATUS = {"halt": "do not run", "change": "change", "consider": "consider", "": "-", "problem": "not read"}
STATUS_WIDTH = 12
PATH_WIDTH = 44  # to which paths are filled up, so that what follows stands in one column
CAUSES_IN_FULL = 3  # of one rule and grade; the others are told in a line
ALONE_NAMED = 40  # findings of one program each
FOLDERS_NAMED = 6
NEEDS_NAMED = 8
PASSED_NAMED = 3


class FolderSheet:
    """`paths` are those of all programs that will be added, so that it is known in which folder they differ."""

    def __init__(self, paper: TextSheet, version: str, paths: Sequence[str]) -> None:
        self.paper, self.version = paper, version
        self.shared, self.gloss = Shared(paths), Glossary()
        self.lines: list[tuple[str, str, str]] = []  # status, path, what was found
        self.statuses: Counter[str] = Counter()
        self.width = min(PATH_WIDTH, max((len(self.shared.short(path)) for path in paths), default=0))

    def add(self, run: Run) -> None:
        self.shared.add(run)
        grade, said = _in_short(run.checked)
        self._line(grade, run.checked.path, said)

    def not_read(self, problem: Problem) -> None:
        path = problem.path or ""
        self._line("problem", path, str(Problem(problem.says, None, problem.line, problem.column)))

    def _line(self, status: str, path: str, said: str) -> None:
        self.lines.append((status, self.shared.short(path), said))
        self.statuses[status] += 1

    def write(self, left: Sequence[Left], each_passed: bool, cautions: Sequence[str]) -> None:
        """Everything that was added; `left` is what was passed over, `each_passed` names it all."""
        paper = self.paper
        folder = self.shared.common
        paper.ends(f"PROGRAMS in {folder}" if folder not in ("", ".") else "PROGRAMS", f"gclint {self.version}")
        self._programs()
        causes = self.shared.in_order()
        programs = Counter((cause.rule, cause.grade) for cause in causes for _ in range(cause.programs))
        self._common([cause for cause in causes if programs[cause.rule, cause.grade] > 1])
        self._alone([cause for cause in causes if programs[cause.rule, cause.grade] == 1])
        self._by_rule()
        self._needs()
        passed_over(paper, [Left(self.shared.short(one.path), one.because) for one in left], each_passed)
        paper.cautions(cautions)
        paper.blank()
        paper.heading("IN SHORT")
        paper.text_block(self.in_short(len(left)))
        paper.text_block("The whole sheet of one program: gclint check PROGRAM.")
        paper.text_block("This list is no promise: the person at the machine decides.")

    def bare(self) -> str:
        """A line for each program and nothing worked out: where the list itself fails."""
        lines = (f"{STATUS[status]:<{STATUS_WIDTH}}{clean(path)}  {clean(said)}\n" for status, path, said in self.lines)
        return "".join(lines)

    def _programs(self) -> None:
        text = Text()
        for status, path, said in self.lines:
            style = STYLES["halt" if status == "problem" else status or "label"]
            text.append(f"{STATUS[status]:<{STATUS_WIDTH}}", style)
            text.append(f"{clean(path):<{self.width}}  {clean(said)}\n")
        text.rstrip()
        self.paper.console.print(text, soft_wrap=True)

    def _common(self, causes: Sequence[Cause]) -> None:
        told: Counter[tuple[str, str]] = Counter()
        heading = ""
        for number, cause in enumerate(causes, 1):
            if cause.grade != heading:
                heading = cause.grade
                here = sum(each.grade == heading for each in causes)
                self.paper.blank()
                self.paper.heading(f"{GRADE_WORDS[heading].upper()}, IN MORE THAN ONE PROGRAM ({here})", heading)
            told[cause.rule, cause.grade] += 1
            if told[cause.rule, cause.grade] <= CAUSES_IN_FULL:
                self._cause(number, cause, again=told[cause.rule, cause.grade] > 1)
            else:
                self.paper.blank()
                line = f"{number:2}  {cause.rule} in another way, in {count(cause.programs, 'program')}: "
                self.paper.text_block(line + _places(cause))

    def _cause(self, number: int, cause: Cause, again: bool) -> None:
        paper, finding = self.paper, cause.worst
        paper.blank()
        title = Text(f"{number:2}  ", STYLES[cause.grade])
        title.append(clean(cause.title), STYLES["head"])
        paper.console.print(title)
        paper.field("rule", cause.rule, INDENT)
        way = ", in another way" if again else ""
        paper.field("in", f"{count(cause.programs, 'program')}{way}: {_places(cause)}", INDENT)
        label = "worst" if cause.factor or cause.programs == 1 else "such as"
        paper.field(label, f"{self.shared.short(cause.worst_path)}, line {finding.worst_line}", INDENT)
        if finding.found is not None:
            paper.field("found", self.gloss(found_words(finding)), INDENT)
            window = finding.window
            if window and isinstance(finding.found.value, (int, float)) and finding.found.unit == window.unit:
                drawn = gauge(float(finding.found.value), window.low, window.high)
                if drawn:
                    paper.field("", drawn, INDENT)
        paper.field("happens", self.gloss(sentence(finding.happens)), INDENT)
        if finding.change.text:
            paper.field("change", self.gloss(finding.change.text), INDENT, "head")
        for line in settings_words(finding.change.set):
            paper.field("", line, INDENT, "head")

    def _alone(self, causes: Sequence[Cause]) -> None:
        if not causes:
            return
        self.paper.blank()
        self.paper.heading(f"IN ONE PROGRAM EACH ({len(causes)})")
        for cause in causes[:ALONE_NAMED]:
            finding = cause.worst
            found = f": {found_words(finding)}" if finding.found is not None else ""
            where = f"{self.shared.short(cause.worst_path)} {_lines(cause.places[0])}"
            text = f"{cause.rule} ({STATUS[cause.grade]}), {where}{found}"
            self.paper.bullet(text)
        if len(causes) > ALONE_NAMED:
            self.paper.text_block(f"and {len(causes) - ALONE_NAMED:,} more; --as json lists them all")

    def _by_rule(self) -> None:
        rules = sorted(
            self.shared.rules.values(), key=lambda r: (list(GRADE_WORDS).index(r.grade), -r.programs, r.rule)
        )
        if not rules:
            return
        several = self.shared.several
        self.paper.blank()
        self.paper.heading(f"WHICH RULE, HOW MANY PROGRAMS{', WHOSE' if several else ''}")
        rows = [(r.rule, STATUS[r.grade], f"{r.programs:,}", _folders(r) if several else "") for r in rules]
        widths = [max(len(row[n]) for row in rows) for n in range(3)]
        for rule, grade, programs, whose in rows:
            lead = f"{rule:<{widths[0]}}  {grade:<{widths[1]}}  {programs:>{widths[2]}}  "
            self.paper.hanging(lead, whose)

    def _needs(self) -> None:
        needs = sorted(self.shared.needs.items(), key=lambda each: (-each[1][""], each[0]))
        if not needs:
            return
        self.paper.blank()
        self.paper.heading("NOT JUDGED")
        for need, rules in needs[:NEEDS_NAMED]:
            named = len(rules) - 1
            self.paper.bullet(f"{count(rules[''], 'program')}, {count(named, 'rule')}: needs {need}")
        if len(needs) > NEEDS_NAMED:
            self.paper.text_block(f"and for {count(len(needs) - NEEDS_NAMED, 'reason')} more; --as json lists them all")

    def in_short(self, over: int) -> str:
        said = [
            f"{self.statuses[status]:,} {words}"
            for status, words in (
                ("halt", "not to be run as they are"), ("change", "to change before cutting"),
                ("consider", "with something to consider"), ("", "with nothing found by what could be judged"),
                ("problem", "not read or not checked"),
            )
            if self.statuses[status]
        ]
        also = f" {count(over, 'other thing')} {'was' if over == 1 else 'were'} passed over." if over else ""
        return f"{count(len(self.lines), 'program')}: {', '.join(said)}.{also}"


def passed_over(paper: TextSheet, left: Sequence[Left], each: bool) -> None:
    """What folders hold and nobody checks, by why; `each` names it all."""
    by_why: dict[str, list[str]] = {}
    for one in left:
        by_why.setdefault(one.because, []).append(one.path)
    if not left:
        return
    paper.blank()
    paper.heading(f"PASSED OVER ({len(left):,})")
    for because, paths in sorted(by_why.items()):
        if each:
            paper.bullet(f"{because}:")
            for path in paths:
                paper.text_block(path, INDENT)
            continue
        rest = len(paths) - PASSED_NAMED
        more = f" and {rest:,} more (--passed names them all)" if rest > 0 else ""
        paper.bullet(f"{because}: {', '.join(paths[:PASSED_NAMED])}{more}")


def _in_short(checked: Checked) -> tuple[str, str]:
    """(worst open grade, '2 to put right, 3 to change; 4 rules not judged')."""
    open_ = Counter(finding.grade for finding in checked.findings if is_entry(finding))
    words = {"halt": "to put right", "change": "to change", "consider": "to consider"}
    parts = [f"{open_[grade]} {said}" for grade, said in words.items() if open_[grade]]
    blind = len({each.rule for each in checked.not_judged})
    said = ", ".join(parts) or ("nothing found" if blind else "nothing found by what was judged")
    if any(finding.rule == "internal-error" for finding in checked.findings):
        said = f"gclint itself failed on part of it; {said}"
    accepted = sum(finding.accepted is not None for finding in checked.findings)
    said += f", {accepted} accepted" if accepted else ""
    said += f"; {count(blind, 'rule')} not judged" if blind else ""
    return next((grade for grade in words if open_[grade]), ""), said


def _lines(place: Place) -> str:
    named = ", ".join(str(line) for line in place.lines)
    more = f" and {place.count - len(place.lines)} more" if place.count > len(place.lines) else ""
    return f"line{'' if place.count == 1 else 's'} {named}{more}"


def _places(cause: Cause) -> str:
    named = "; ".join(f"{place.path} {_lines(place)}" for place in cause.places)
    rest = cause.programs - len(cause.places)
    return f"{named}; and {count(rest, 'more program')}" if rest > 0 else named


def _folders(rule: RuleCount) -> str:
    ordered = sorted(rule.folders.items(), key=lambda each: (-each[1], each[0]))
    named = ", ".join(f"{folder} {number:,}" for folder, number in ordered[:FOLDERS_NAMED])
    rest = ordered[FOLDERS_NAMED:]
    more = f" and {sum(number for _, number in rest):,} in {count(len(rest), 'more folder')}" if rest else ""
    return f"{named}{more}"
