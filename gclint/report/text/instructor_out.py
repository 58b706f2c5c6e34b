"""The sheet for the one who signs for others: what counts here, who accepted what, on what it rests, a line to sign."""

from __future__ import annotations

import os
from typing import TYPE_CHECKING

from gclint.digest.sheet_words import (
    NO_FILES,
    NO_HOUSE_RULES,
    NOTHING_ACCEPTED,
    SIGNED_BY,
    assumed_words,
    by_grade,
    found_words,
    graded_words,
    house_words,
    material_words,
    not_judged_by_need,
    outcome_words,
    reach_words,
    short_fingerprint,
    sign_words,
    signed_words,
    time_words,
    title_words,
    tool_name,
    where_words,
)
from gclint.digest.words import GRADE_WORDS, count
from gclint.report.text.terminal import in_short
from gclint.report.text.text_sheet import TextSheet
from gclint.run import Run
from gclint.tables.finding import Acceptance, Checked, Finding

if TYPE_CHECKING:
    from gclint.tables.setup import Setup


def instructor_sheet(run: Run, paper: TextSheet, version: str) -> None:
    """Write one program's sheet."""
    checked = run.checked
    paper.ends("SHEET FOR THE ONE WHO SIGNS", f"gclint {version}")
    paper.field("program", f"{checked.path}, {count(checked.lines, 'line')}")
    paper.field("file", checked.fingerprint)
    if run.tables is not None:
        _setup(run.tables.setup, paper)
    reach = reach_words(checked)
    if reach:
        paper.field("reach", f"{reach} (tip of the tool, from work zero)")
    paper.field("time", time_words(checked))
    paper.field("outcome", outcome_words(run))
    in_short(run, paper)
    _findings(run, paper)
    _house(checked, paper)
    _acceptances(checked, paper)
    _used(checked, paper)
    _taken(checked, paper)
    _to_sign(checked, paper)


def _setup(setup: Setup, paper: TextSheet) -> None:
    paper.field("machine", ", ".join(part for part in (setup.machine.name, setup.controller.title) if part))
    paper.field("material", material_words(setup))
    paper.field("held by", setup.hold.by or "not declared")


def _findings(run: Run, paper: TextSheet) -> None:
    for grade, of_grade in by_grade(run.checked):
        paper.blank()
        paper.heading(f"{GRADE_WORDS[grade].upper()} ({len(of_grade)})", grade)
        for finding in of_grade:
            _finding(finding, run, paper)


def _finding(finding: Finding, run: Run, paper: TextSheet) -> None:
    tool = f", tool {tool_name(finding.tool, run)}" if finding.tool is not None else ""
    parts = [f"{finding.rule}{tool}, {where_words(finding)}: {title_words(finding.rule, run)}."]
    if finding.found is not None:
        parts.append(f"Found: {found_words(finding)}.")
    if finding.rests_on:
        parts.append(f"Rests on what is taken as given: {', '.join(finding.rests_on)}.")
    if finding.regraded is not None:
        parts.append(f"Graded {graded_words(finding)}.")
    paper.bullet(" ".join(parts))


def _house(checked: Checked, paper: TextSheet) -> None:
    paper.blank()
    paper.heading("HOUSE RULES")
    said = house_words(checked)
    for each in said:
        paper.bullet(each)
    if not said:
        paper.text_block(NO_HOUSE_RULES)


def _acceptances(checked: Checked, paper: TextSheet) -> None:
    paper.blank()
    paper.heading(f"ACCEPTED AS KNOWN ({sum(each.covers > 0 for each in checked.acceptances)})")
    if not checked.acceptances:
        paper.text_block(NOTHING_ACCEPTED)
    for each in checked.acceptances:
        paper.bullet(_accepted(each))


def _accepted(each: Acceptance) -> str:
    bounds = [
        f"tool {each.tool}" if each.tool is not None else "",
        f"{count(each.places, 'place')} at most" if each.places is not None else "",
        f"at worst {each.found}" if each.found else "",
        "GRADED DO NOT RUN" if each.grade == "halt" else "",
    ]
    scope = ", ".join(part for part in bounds if part)
    covers = f"covers {count(each.covers, 'place')} here" if each.covers else "covers nothing here: take it out"
    who = each.by or "nobody is named"
    return f"{each.rule}{f' ({scope})' if scope else ''}: {each.because} ({who}; {each.where}); {covers}"


def _used(checked: Checked, paper: TextSheet) -> None:
    paper.blank()
    paper.heading("DECLARATIONS USED")
    if not checked.used:
        paper.text_block(NO_FILES)
    for each in checked.used:
        path = os.path.normpath(each.path)
        paper.bullet(f"{each.what}: {path}, fingerprint {short_fingerprint(each.fingerprint)}")


def _taken(checked: Checked, paper: TextSheet) -> None:
    if checked.assumed:
        paper.blank()
        paper.heading("TAKEN AS GIVEN")
        for said in assumed_words(checked):
            paper.bullet(said)
    if checked.not_judged:
        paper.blank()
        paper.heading("NOT JUDGED")
        for needs, rules in not_judged_by_need(checked).items():
            paper.bullet(f"{', '.join(rules)}: needs {needs}")


def _to_sign(checked: Checked, paper: TextSheet) -> None:
    paper.blank()
    paper.heading("TO SIGN")
    before, short, behind = sign_words(checked)
    paper.text_block(f"{before} {short}, {behind}")
    for said in signed_words(checked):
        paper.bullet(f"{said}.")
    paper.blank()
    for label in SIGNED_BY:
        paper.text_block(f"{label:<12}{'_' * 40}")
