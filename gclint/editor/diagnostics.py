"""Findings and problems as the editor protocol's diagnostics."""

from __future__ import annotations

from lsprotocol.types import (
    CodeDescription,
    Diagnostic,
    DiagnosticRelatedInformation,
    DiagnosticSeverity,
    Location,
    Range,
)

from gclint import HOME
from gclint.digest.sheet_words import is_entry
from gclint.editor.answer import Answer
from gclint.editor.text import Text
from gclint.packs.shipped_packs import shipped_packs
from gclint.problem import Problem
from gclint.report.machine.message import NOT_JUDGED, message_of, not_judged_of, one_line_of
from gclint.tables.finding import Finding

SOURCE = "gclint"
SEVERITY = {
    "halt": DiagnosticSeverity.Error, "change": DiagnosticSeverity.Warning, "consider": DiagnosticSeverity.Information,
}  # fmt: skip
WORDS = {"F": "the feed", "S": "the speed", "T": "the tool"}
MOST_RELATED = 20  # further lines of one finding that are named


def of_program(answer: Answer, text: Text, uri: str) -> list[Diagnostic]:
    """What was found in a program, worst first; what a person has accepted, or is told with its cause, is left away."""
    if answer.run is None:
        return []
    groups = {rule.name: pack.name for pack in shipped_packs() for rule in pack.rules}
    checked = answer.run.checked
    made = [
        _of_finding(finding, groups.get(finding.rule), text, uri)
        for finding in checked.findings if is_entry(finding)
    ]  # fmt: skip
    blind = not_judged_of(checked)
    if blind:
        said = "; ".join(blind)
        made.append(Diagnostic(text.whole_line(0), said, DiagnosticSeverity.Hint, NOT_JUDGED, source=SOURCE))
    return made


def _of_finding(finding: Finding, group: str | None, text: Text, uri: str) -> Diagnostic:
    place = text.word_at(finding.line - 1, finding.column - 1)
    related = dict.fromkeys(finding.lines[: MOST_RELATED + 1], "here as well")
    related |= {line: f"{WORDS.get(letter, letter)} is set here" for letter, line in finding.set_on.items()}
    if finding.worst_line != finding.line:
        related[finding.worst_line] = "worst here"
    related.pop(finding.line, None)
    return Diagnostic(
        place, one_line_of(message_of(finding)), SEVERITY[finding.grade], finding.rule,
        CodeDescription(f"{HOME}/rules/{group}/{finding.rule}.toml") if group else None, SOURCE,
        related_information=[
            DiagnosticRelatedInformation(Location(uri, text.whole_line(line - 1)), said)
            for line, said in sorted(related.items())
        ],
        data={"grade": finding.grade},
    )  # fmt: skip


def of_problem(problem: Problem, text: Text) -> Diagnostic:
    """What is wrong with a file, at its place in it; a program's word, a declaration's line from there on."""
    if problem.line is None:
        place = text.whole_line(0)
    elif problem.column is None:
        place = text.whole_line(problem.line - 1)
    else:
        line = problem.line - 1
        end = len(text.line(line).rstrip())
        place = text.span(line, problem.column - 1, max(end, problem.column))
    return Diagnostic(place, one_line_of(problem.says), DiagnosticSeverity.Error, source=SOURCE)


def elsewhere(problem: Problem, text: Text) -> Diagnostic:
    """At the head of a program: it was not judged, for what stands in another file."""
    said = f"not judged: {one_line_of(str(problem))}"
    return Diagnostic(_head(text), said, DiagnosticSeverity.Error, source=SOURCE)


def _head(text: Text) -> Range:
    return text.whole_line(next((n for n, line in enumerate(text.lines) if line.strip()), 0))
