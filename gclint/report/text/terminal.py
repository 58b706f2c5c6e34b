"""The report for people, as a job sheet: what it is about, what to do first, what each tool does, what is not known."""

from __future__ import annotations

import os
from collections.abc import Sequence

from rich.text import Text

from gclint.digest.margin_words import margin_words, mark_words, nearest_words
from gclint.digest.sheet_words import (
    MENDS,
    UNIT_WORDS,
    accepted_words,
    assumed_words,
    by_grade,
    found_words,
    graded_words,
    house_words,
    in_units,
    is_entry,
    material_words,
    not_judged_by_need,
    quoted,
    reach_words,
    sentence,
    settings_words,
    short_fingerprint,
    time_words,
    title_words,
    tool_name,
    verdict,
    waiting_words,
    where_words,
    window_words,
)
from gclint.digest.tool_facts import ToolFacts, tool_facts
from gclint.digest.words import ENTRY_WORDS, GRADE_WORDS, Glossary, Lengths, count, duration
from gclint.report.text.cautions import SHORTEST
from gclint.report.text.cautions import in_short as short_cautions
from gclint.report.text.gauge import gauge_of
from gclint.report.text.show_out import depth_words, feed_words, load_words, speed_words
from gclint.report.text.text_sheet import STYLES, TextSheet, clean
from gclint.run import Run
from gclint.tables.finding import Checked, Finding

INDENT = 4
# The forms that the grades have on the page and in pictures, as text can draw them: a square, a diamond, a disc.
NUMBERED = {"halt": "[{}]", "change": "<{}>", "consider": "({})"}
IN_FULL = 3  # findings of one rule, tool and grade; the others are named by their lines
ALIKE_NAMED = 24


def sheet(run: Run, paper: TextSheet, version: str) -> None:
    """Write one program's sheet."""
    checked, gloss = run.checked, Glossary()
    _head(run, paper, version)
    number = 0
    for grade, of_grade in by_grade(checked):
        paper.blank()
        paper.heading(f"{GRADE_WORDS[grade].upper()} ({len(of_grade)})", grade)
        alike: dict[tuple[str, int | None], list[Finding]] = {}
        for finding in of_grade:
            alike.setdefault((finding.rule, finding.tool), []).append(finding)
        for same in alike.values():
            for finding in same[:IN_FULL]:
                number += 1
                _finding(number, finding, run, paper, gloss)
            if len(same) > IN_FULL:
                paper.blank()
                _more_alike(same[IN_FULL:], paper)
    _tools(run, paper, gloss)
    _listed(checked, paper, gloss)


def closing(paper: TextSheet, cautions: Sequence[str], verdicts: Sequence[tuple[str, str]]) -> None:
    """What stands below the sheets of a run: the cautions, and each program's verdict as the last thing read."""
    paper.cautions(cautions)
    paper.blank()
    paper.heading("IN SHORT")
    for path, said in verdicts:
        paper.text_block(said if len(verdicts) == 1 else f"{path}: {said}")


def bare(checked: Checked) -> str:
    """Every open finding in a line: where the sheet itself fails."""
    lines = [
        f"{finding.grade}: line {finding.worst_line}: {finding.rule}: {clean(finding.happens)}"
        for finding in checked.findings
        if is_entry(finding)
    ]
    return "\n".join([clean(checked.path), *lines, verdict(checked)]) + "\n"


def _head(run: Run, paper: TextSheet, version: str) -> None:
    checked = run.checked
    paper.ends("JOB SHEET", f"gclint {version}")
    _verdict(run, paper)
    paper.field("program", f"{checked.path}, {count(checked.lines, 'line')}, {UNIT_WORDS[checked.units]}")
    short = short_fingerprint(checked.fingerprint)
    paper.field("read as", f"fingerprint {short} (the file that runs must be this one)")
    if run.tables is not None:
        setup = run.tables.setup
        paper.field("material", material_words(setup))
        if setup.sources:
            paper.field("used", ", ".join(os.path.normpath(source) for source in setup.sources))
    reach = reach_words(checked)
    if reach:
        paper.field("reach", f"{reach} (tip of the tool, from work zero)")
    paper.field("time", time_words(checked))
    _cautions(run, paper)


def in_short(run: Run, paper: TextSheet) -> None:
    """Write the verdict, how near each tool is to its nearest limit, and the cautions in a few lines."""
    _verdict(run, paper)
    _cautions(run, paper)


def _verdict(run: Run, paper: TextSheet) -> None:
    paper.field("in short", verdict(run.checked))
    for number, text in enumerate(nearest_words(run.checked.tools, Lengths(run.checked.units == "inch"))):
        paper.field("" if number else "nearest", text)


def _cautions(run: Run, paper: TextSheet) -> None:
    """In a few lines on the first sheet of a run, in one on those behind it."""
    texts = short_cautions(run.material_cautions) if not paper.cautioned else (SHORTEST,)
    paper.cautioned = True
    for number, text in enumerate(texts):
        paper.field("" if number else "cautions", text)


def _finding(number: int, finding: Finding, run: Run, paper: TextSheet, gloss: Glossary) -> None:
    paper.blank()
    title = Text(f"{NUMBERED[finding.grade].format(number)} ", STYLES[finding.grade])
    title.append(clean(title_words(finding.rule, run)), STYLES["head"])
    paper.console.print(title)
    paper.field("rule", finding.rule, INDENT)
    if finding.regraded is not None:
        paper.field("graded", graded_words(finding), INDENT)
    if finding.tool is not None:
        paper.field("tool", tool_name(finding.tool, run), INDENT)
    paper.field("where", where_words(finding), INDENT)
    text = quoted(finding.worst_line, run)
    if text:
        paper.field("", f"line {finding.worst_line} reads:  {text}", INDENT)
    if finding.found is not None:
        paper.field("found", gloss(found_words(finding)), INDENT)
        drawn = gauge_of(finding)
        if drawn:
            paper.field("", _coloured(drawn, finding.grade), INDENT)
            if not paper.legend_given:
                paper.legend_given = True
                paper.field("", "X is this program; what is between [ and ] is good", INDENT)
    if finding.rests_on:
        paper.field("rests on", f"{', '.join(finding.rests_on)}: taken as given, see below", INDENT)
    paper.field("happens", gloss(sentence(finding.happens)), INDENT)
    if finding.change.text:
        paper.field("change", gloss(finding.change.text), INDENT, "head")
    for line in settings_words(finding.change.set):
        paper.field("", line, INDENT, "head")
    if finding.mendable and is_entry(finding):
        paper.field("mend", MENDS, INDENT)


def _more_alike(findings: Sequence[Finding], paper: TextSheet) -> None:
    lines = ", ".join(str(finding.line) for finding in findings[:ALIKE_NAMED])
    rest = len(findings) - ALIKE_NAMED
    more = f" and {rest:,} more lines" if rest > 0 else ""
    paper.text_block(f"The same again, on line{'s' if len(findings) > 1 else ''} {lines}{more}.", INDENT)
    paper.text_block("Each with its own figures by --as json.", INDENT)


def _coloured(drawn: str, grade: str) -> Text:
    text = Text(drawn)
    at = drawn.find("X")
    if at >= 0:
        text.stylize(STYLES[grade], at, at + 1)
    return text


def _tools(run: Run, paper: TextSheet, gloss: Glossary) -> None:
    if run.tables is None or not run.checked.tools:
        return
    paper.blank()
    paper.heading("WHAT EACH TOOL DOES")
    lengths = Lengths(run.checked.units == "inch")
    for facts in tool_facts(run.tables, run.checked.tools):
        _tool(facts, paper, gloss, lengths)


def _tool(facts: ToolFacts, paper: TextSheet, gloss: Glossary, lengths: Lengths) -> None:
    row = facts.row
    label = "tool not named" if row.tool is None else f"tool {row.tool}"
    paper.text_block(f"{label}: {', '.join(part for part in (row.name, facts.described) if part)}", 0, "head")
    if not row.passes:
        paper.text_block("met no material, or what it met could not be modelled", INDENT)
        return
    passes = count(row.passes, "pass", "passes")
    paper.field("cuts", f"{lengths.path(row.cut_length_mm)} in {passes}, {duration(row.cut_time_s)}", INDENT)
    kinds = ", ".join(f"{n:,} {ENTRY_WORDS[kind]}" for kind, n in row.entries.items() if n)
    if kinds:
        paper.field("entries", gloss(kinds), INDENT)
    paper.field("speed", gloss(speed_words(facts)), INDENT)
    if row.set_feed_mm_min:
        paper.field("feed", feed_words(row, lengths), INDENT)
    usual = facts.chip_usual_mm or row.h_ex_mm
    if usual:
        window = facts.chip_window
        known = f"; {window_words(in_units(window, lengths))}" if window else ""
        most = f" in most {facts.chip_operation} cuts" if facts.chip_usual_mm else ""
        paper.field("chip", gloss(f"chip {lengths.lengths(*usual)}{most}{known}").removeprefix("chip "), INDENT)
    for label, words in load_words(facts, lengths):
        paper.field(label, gloss(words), INDENT)
    if depth := depth_words(facts, lengths):
        paper.field("depth", depth, INDENT)
    if marks := mark_words(row.marks, lengths):
        paper.field("dial", f"which mark is set is not said (--dial): {marks}", INDENT)
    for number, said in enumerate(margin_words(row, lengths)):
        paper.field("" if number else "margins", said, INDENT)


def _listed(checked: Checked, paper: TextSheet, gloss: Glossary) -> None:
    if checked.assumed:
        paper.blank()
        paper.heading("TAKEN AS GIVEN")
        for said in assumed_words(checked):
            paper.bullet(gloss(said))
    if checked.not_judged:
        paper.blank()
        paper.heading("NOT JUDGED")
        for needs, rules in not_judged_by_need(checked).items():
            paper.bullet(f"{waiting_words(rules)}: needs {needs}")
    house = house_words(checked)
    if house:
        paper.blank()
        paper.heading("HOUSE RULES")
        for said in house:
            paper.bullet(said)
    accepted = [f for f in checked.findings if f.accepted is not None]
    if accepted:
        paper.blank()
        paper.heading("KNOWN AND ACCEPTED")
        for finding in accepted:
            paper.bullet(accepted_words(finding, checked))
