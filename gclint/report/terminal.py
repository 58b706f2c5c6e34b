"""The report for people, as a job sheet: what it is about, what to do first, what each tool does, what is not known."""

from __future__ import annotations

import os
from collections.abc import Sequence

from rich.text import Text

from gclint.judge.finding import Checked, Finding, Limits, SetWord
from gclint.report.gauge import gauge
from gclint.report.paper import STYLES, Paper, clean
from gclint.report.show_out import feed_words, load_words, speed_words
from gclint.report.tables import Run
from gclint.report.tool_facts import ToolFacts, tool_facts
from gclint.report.words import (
    ENTRY_WORDS,
    GRADE_WORDS,
    STANDING_WORDS,
    Glossary,
    Lengths,
    count,
    duration,
    measure,
    plain_number,
)
from gclint.setup.card import Material

INDENT = 4
IN_FULL = 3  # findings of one rule, tool and grade; the others are named by their lines
LINES_NAMED = 6
ALIKE_NAMED = 24


def sheet(run: Run, paper: Paper, version: str) -> None:
    """Write one program's sheet."""
    checked, gloss = run.checked, Glossary()
    open_findings = [f for f in checked.findings if f.accepted is None]
    _head(run, paper, version)
    number = 0
    for grade, words in GRADE_WORDS.items():
        of_grade = [f for f in open_findings if f.grade == grade]
        if not of_grade:
            continue
        paper.blank()
        paper.heading(f"{words.upper()} ({len(of_grade)})", grade)
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


def closing(paper: Paper, cautions: Sequence[str], verdicts: Sequence[tuple[str, str]]) -> None:
    """What stands below the sheets of a run: the cautions, and each program's verdict as the last thing read."""
    paper.blank()
    paper.heading("BEFORE YOU PRESS START")
    for caution in cautions:
        paper.bullet(caution)
    paper.blank()
    paper.heading("IN SHORT")
    for path, said in verdicts:
        paper.text_block(said if len(verdicts) == 1 else f"{path}: {said}")


def verdict(checked: Checked) -> str:
    """The closing sentences; they never call a program safe."""
    by_grade = {g: sum(f.grade == g and f.accepted is None for f in checked.findings) for g in GRADE_WORDS}
    if any(f.rule == "internal-error" for f in checked.findings):
        first = "gclint itself failed on part of this program, which nobody has judged."
    elif by_grade["halt"]:
        first = f"Do not run this program as it is: {count(by_grade['halt'], 'thing')} to put right first"
        first += f", then {count(by_grade['change'], 'thing')} to change." if by_grade["change"] else "."
    elif by_grade["change"]:
        first = f"Change {count(by_grade['change'], 'thing')} before cutting."
    elif by_grade["consider"]:
        first = f"Nothing must be changed by what could be judged; {count(by_grade['consider'], 'thing')} to consider."
    else:
        first = "Nothing was found by what could be judged."
    blind = len({n.rule for n in checked.not_judged})
    second = f" {count(blind, 'rule')} could not be judged; see NOT JUDGED." if blind else ""
    return f"{first}{second} This sheet is no promise: the person at the machine decides."


def _head(run: Run, paper: Paper, version: str) -> None:
    checked = run.checked
    unit_words = {
        "mm": "millimetres", "inch": "inches", "mixed": "inches and millimetres", "unstated": "units not stated",
    }
    paper.ends("JOB SHEET", f"gclint {version}")
    paper.field("program", f"{checked.path}, {count(checked.lines, 'line')}, {unit_words[checked.units]}")
    short = checked.fingerprint.partition(":")[2][:12]
    paper.field("read as", f"fingerprint {short} (the file that runs must be this one)")
    if run.tables is not None:
        setup = run.tables.setup
        material = setup.material
        said = material.title if isinstance(material, Material) else "not declared, so no chip is judged"
        paper.field("material", said)
        if setup.sources:
            paper.field("used", ", ".join(os.path.normpath(source) for source in setup.sources))
    reach = _reach(checked)
    if reach:
        paper.field("reach", f"{reach} (tip of the tool, from work zero)")
    paper.field("time", _time(checked))


def _time(checked: Checked) -> str:
    if checked.time_s is not None:
        return duration(checked.time_s)
    cuts = [row.cut_time_s for row in checked.tools]
    cutting = sum(seconds for seconds in cuts if seconds is not None)
    known = f"cutting {duration(cutting)}, the rest " if cuts and None not in cuts else ""
    return f"{known}unknown: a rate is not stated ([machine] rapid in shop.toml, or F)"


def _reach(checked: Checked) -> str:
    lengths = Lengths(checked.units == "inch")
    known = [
        f"{axis} {lengths.place(low)} to {lengths.place(high)}"
        for axis, low, high in zip("XYZ", checked.extent_mm.min, checked.extent_mm.max)
        if low is not None
    ]
    return f"{', '.join(known)} {lengths.unit}" if known else ""


def _finding(number: int, finding: Finding, run: Run, paper: Paper, gloss: Glossary) -> None:
    paper.blank()
    title = Text(f"{number:2}  ", STYLES[finding.grade])
    title.append(clean(_title(finding.rule, run)), STYLES["head"])
    paper.console.print(title)
    paper.field("rule", finding.rule, INDENT)
    if finding.tool is not None:
        paper.field("tool", _tool_name(finding.tool, run), INDENT)
    paper.field("where", _where(finding), INDENT)
    quoted = _quoted(finding.worst_line, run)
    if quoted:
        paper.field("", f"line {finding.worst_line} reads:  {quoted}", INDENT)
    if finding.found is not None:
        paper.field("found", gloss(_found(finding)), INDENT)
        drawn = _gauge(finding)
        if drawn:
            paper.field("", _coloured(drawn, finding.grade), INDENT)
            if not paper.legend_given:
                paper.legend_given = True
                paper.field("", "X is this program; what is between [ and ] is good", INDENT)
    paper.field("happens", gloss(_sentence(finding.happens)), INDENT)
    paper.field("change", gloss(finding.change.text), INDENT, "head")
    for line in _settings(finding.change.set):
        paper.field("", line, INDENT, "head")


def _more_alike(findings: Sequence[Finding], paper: Paper) -> None:
    lines = ", ".join(str(finding.line) for finding in findings[:ALIKE_NAMED])
    rest = len(findings) - ALIKE_NAMED
    more = f" and {rest:,} more lines" if rest > 0 else ""
    paper.text_block(f"The same again, on line{'s' if len(findings) > 1 else ''} {lines}{more}.", INDENT)
    paper.text_block("Each with its own figures by --as json.", INDENT)


def _title(rule: str, run: Run) -> str:
    return _sentence(run.titles.get(rule) or rule.replace("-", " "))


def _sentence(text: str) -> str:
    return text[:1].upper() + text[1:]


def _tool_name(tool: int, run: Run) -> str:
    row = next((row for row in run.checked.tools if row.tool == tool), None)
    return f"{tool} ({row.name})" if row is not None and row.name else str(tool)


def _where(finding: Finding) -> str:
    named = list(finding.lines[:LINES_NAMED])
    text = f"line{'' if len(named) == 1 else 's'} {', '.join(str(n) for n in named)}"
    rest = len(finding.lines) - len(named)
    if rest > 0:
        more = f"{rest:,}" if len(finding.lines) < 1000 else f"over {rest:,}"
        text += f" and {more} more, to line {finding.last_line}"
    return f"{text} ({count(finding.count, 'time')})" if finding.count > len(finding.lines) else text


def _quoted(line: int, run: Run) -> str:
    if run.tables is None or not 1 <= line <= run.tables.program.lines:
        return ""
    text = run.tables.program.line_text(line).strip()
    return text if len(text) <= 120 else f"{text[:117]}..."


def _found(finding: Finding) -> str:
    found = finding.found
    assert found is not None
    text = f"{found.name} {measure(found.value, found.unit)}"
    return f"{text}; {_window_words(finding.window)}" if finding.window else text


def _window_words(window: Limits) -> str:
    standing = STANDING_WORDS.get(window.standing, window.standing)
    behind = f" ({standing})" if standing else ""
    if window.low is not None and window.high is not None:
        return f"good is {measure(window.low, '')} to {measure(window.high, window.unit)}{behind}"
    if window.high == 0:
        return f"none is good{behind}"
    if window.high is not None:
        return f"at most {measure(window.high, window.unit)} is good{behind}"
    if window.low is not None:
        return f"at least {measure(window.low, window.unit)} is good{behind}"
    return "no limit is known"


def _gauge(finding: Finding) -> str:
    found, window = finding.found, finding.window
    if found is None or window is None or not isinstance(found.value, (int, float)) or found.unit != window.unit:
        return ""
    return gauge(float(found.value), window.low, window.high)


def _coloured(drawn: str, grade: str) -> Text:
    text = Text(drawn)
    at = drawn.find("X")
    if at >= 0:
        text.stylize(STYLES[grade], at, at + 1)
    return text


def _settings(words: Sequence[SetWord]) -> list[str]:
    """'on line 12 set F400 to F1855'; a long list names the first ones."""
    lines = []
    for word in words[:LINES_NAMED]:
        to = f"{word.word}{plain_number(word.to)}"
        if word.from_ is None:
            lines.append(f"on line {word.line} add {to}")
        else:
            lines.append(f"on line {word.line} set {word.word}{plain_number(word.from_)} to {to}")
    if len(words) > LINES_NAMED:
        lines.append(f"and {count(len(words) - LINES_NAMED, 'more word')}; --as json lists them all")
    return lines


def _tools(run: Run, paper: Paper, gloss: Glossary) -> None:
    if run.tables is None or not run.checked.tools:
        return
    paper.blank()
    paper.heading("WHAT EACH TOOL DOES")
    lengths = Lengths(run.checked.units == "inch")
    for facts in tool_facts(run.tables, run.checked.tools):
        _tool(facts, paper, gloss, lengths)


def _tool(facts: ToolFacts, paper: Paper, gloss: Glossary, lengths: Lengths) -> None:
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
        known = f"; {_window_words(_in_units(window, lengths))}" if window else ""
        most = f" in most {facts.chip_operation} cuts" if facts.chip_usual_mm else ""
        paper.field("chip", gloss(f"chip {lengths.lengths(*usual)}{most}{known}").removeprefix("chip "), INDENT)
    for label, words in load_words(facts, lengths):
        paper.field(label, gloss(words), INDENT)
    if row.ap_max_mm is not None and row.ae_max_mm is not None:
        deepest = f"; tip down to {lengths.length(facts.deepest_mm)} below the top" if facts.deepest_mm else ""
        deep, wide = lengths.length(row.ap_max_mm), lengths.length(row.ae_max_mm)
        paper.field("depth", f"at most {deep} deep at once, {wide} wide{deepest}", INDENT)


def _in_units(window: Limits, lengths: Lengths) -> Limits:
    low, high = (None if v is None else v * lengths.scale for v in (window.low, window.high))
    return Limits(low, high, lengths.unit, window.standing, window.source)


def _listed(checked: Checked, paper: Paper, gloss: Glossary) -> None:
    if checked.assumed:
        paper.blank()
        paper.heading("TAKEN AS GIVEN")
        for taken in checked.assumed:
            paper.bullet(gloss(f"{taken.what}: {taken.value}, because {taken.because}"))
    if checked.not_judged:
        paper.blank()
        paper.heading("NOT JUDGED")
        by_need: dict[str, list[str]] = {}
        for blind in checked.not_judged:
            by_need.setdefault(blind.needs, []).append(blind.rule)
        for needs, rules in by_need.items():
            paper.bullet(f"{', '.join(dict.fromkeys(rules))}: needs {needs}")
    accepted = [f for f in checked.findings if f.accepted is not None]
    if accepted:
        paper.blank()
        paper.heading("KNOWN AND ACCEPTED")
        for finding in accepted:
            paper.bullet(f"{finding.rule}, line {finding.line}: {finding.accepted}")


