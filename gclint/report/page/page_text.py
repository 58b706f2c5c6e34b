"""The words of the page as plain values, in the order in which they stand on it."""

from __future__ import annotations

import os
from collections.abc import Sequence
from pathlib import PurePath
from typing import Any

from markupsafe import Markup, escape

from gclint.digest.margin_words import margin_words, mark_words
from gclint.digest.pair_facts import PairFacts, pair_facts, pair_words
from gclint.digest.sheet_words import (
    MENDS,
    NO_FILES,
    NO_HOUSE_RULES,
    NOTHING_ACCEPTED,
    SIGNED_BY,
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
    open_findings,
    outcome_words,
    quoted,
    reach_words,
    sentence,
    settings_words,
    short_fingerprint,
    sign_words,
    signed_words,
    time_words,
    title_words,
    tool_name,
    verdict,
    where_words,
    window_words,
)
from gclint.digest.tool_facts import ToolFacts, tool_facts
from gclint.digest.words import ENTRY_WORDS, GRADE_WORDS, Lengths, count, duration
from gclint.knowledge.glossary import glossary
from gclint.knowledge.glosses import glosses
from gclint.report.page.gauge_bar import gauge_bar
from gclint.report.text.cautions import cautions, in_short
from gclint.report.text.setup_sheet_words import setup_sheet
from gclint.report.text.show_out import depth_words, feed_words, load_words, speed_words
from gclint.run import Run
from gclint.tables.finding import Checked, Finding
from gclint.tables.setup import Setup, Stock

# What the page is called for each reader, and its parts in order.
READERS: dict[str, tuple[str, tuple[str, ...]]] = {
    "author": ("Job sheet", ("path", "found", "tools", "about", "setup_sheet", "lists", "start", "words")),
    "operator": ("Machine sheet", ("setup_sheet", "brief", "lists", "start", "about", "path", "words")),
    "instructor": (
        "Sheet to sign",
        ("sign", "lists", "found", "path", "about", "tools", "setup_sheet", "start", "words"),
    ),
}
LISTED = {"author": "Job sheets", "operator": "Machine sheets", "instructor": "Sheets to sign"}
WAYS = {  # of the parts that people jump to: their place on the page, and what the link says
    "path": ("path", "The path"), "found": ("found", "What was found"), "brief": ("found", "Before it runs"),
    "sign": ("sign", "To sign"), "tools": ("tools", "Each tool"), "setup_sheet": ("setup-sheet", "At the machine"),
    "lists": ("blind", "Taken as given, not judged"), "about": ("about", "What was read"),
    "start": ("start", "Cautions"),
}  # fmt: skip
PROMISE = "Each verdict is of what could be judged, and no promise: the person at the machine decides."
IN_FULL = 1  # findings of one rule, tool and grade; the others are one row each
MOST_ROWS = 200  # of those
GLANCE = 5  # findings that need no list of their own
POINTED = 12  # findings of one rule at a tool
EXCERPT = 2  # lines before and behind
LONGEST = 120  # characters of one of them


def sheet_of(run: Run, version: str, reader: str = "author") -> dict[str, Any]:
    """`parts` are the sections in the order in which this reader needs them, each a template of its own."""
    checked, words = run.checked, Words()
    path = _printable(checked.path)
    grades = _grades(run, words)
    kind, parts = READERS[reader]
    brief = _brief(grades)
    return {
        "kind": kind,
        "reader": reader,
        "parts": parts,
        "ways": [(WAYS[part][0], WAYS[part][1]) for part in parts if part in WAYS],
        "line": _line(run),
        "short": short_fingerprint(checked.fingerprint),
        "places": _places(grades),
        "first": [row for row in _places(grades) if row["grade"] != "consider"] if reader == "operator" else [],
        "brief": brief,
        "mild": _mild(checked),
        "sign": _sign(run) if reader == "instructor" else None,
        "version": version,
        "name": PurePath(path.replace("\\", "/")).name or path,
        "head": [("file", path), *_head(run)],
        "verdict": verdict(checked).replace("NOT JUDGED", "Not judged"),
        "counts": _counts(checked),
        "grades": grades,
        "in_short": _in_short(grades, 1 if reader == "instructor" else GLANCE),
        "tools": _tools(run, words) if "tools" in parts else [],
        "assumed": [_keys(words(said)) for said in assumed_words(checked)],
        "not_judged": _not_judged(checked),
        "accepted": [accepted_words(f, checked) for f in checked.findings if f.accepted is not None],
        "house": house_words(checked),
        "setup_sheet": setup_sheet(checked),
        "cautions": cautions(run.material_cautions),
        "in_short_cautions": in_short(run.material_cautions),
        "words": words.used(),
        "fingerprint": checked.fingerprint,
    }  # fmt: skip


def entry_of(file: str, name: str, run: Run) -> dict[str, Any]:
    """A row of the list of pages."""
    checked = run.checked
    return {
        "file": file, "name": _printable(name), "verdict": verdict(checked).replace("NOT JUDGED", "its page"),
        "counts": _counts(checked), "fingerprint": short_fingerprint(checked.fingerprint),
        "time": time_words(checked),
    }  # fmt: skip


def listed(rows: Sequence[dict[str, Any]]) -> dict[str, Any]:
    """The list of pages: the worst first, those alike by name; how many programs have which as their gravest."""
    grades = [*GRADE_WORDS, "blind"]

    def weight(row: dict[str, Any]) -> tuple[Any, ...]:
        counts = {one["grade"]: one["count"] for one in row["counts"]}
        return (*(-counts[grade] for grade in grades), row["name"])

    gravest = [next((one["grade"] for one in row["counts"] if one["count"]), "") for row in rows]
    words = {**{grade: f"with: {said.lower()}" for grade, said in GRADE_WORDS.items()}, "blind": "not judged in full"}
    totals = [{"grade": grade, "words": words[grade], "count": gravest.count(grade)} for grade in grades]
    return {
        "rows": sorted(rows, key=weight),
        "totals": [*totals, {"grade": "clear", "words": "nothing found", "count": gravest.count("")}],
        "titles": [*GRADE_WORDS.values(), "Rules not judged"], "promise": PROMISE,
    }  # fmt: skip


class Words:
    """Marks the first use of each trade word in the page and keeps what it means, as the glossary says it."""

    def __init__(self) -> None:
        self.left = {each.said: name for name, each in glosses().items()}
        self.told: list[tuple[str, str]] = []

    def __call__(self, text: str) -> Markup:
        import re

        for word, name in list(self.left.items()):
            match = re.search(rf"(?<![\w-]){word}(?![\w-])(?! \()", text, re.IGNORECASE)
            if match and word in self.left:
                del self.left[word]
                self.told.append((match.group(0), glossary()[name].means))
                marked = self._marked(len(self.told))
                return self(text[: match.start()]) + marked + self(text[match.end() :])
        return escape(text)

    def _marked(self, number: int) -> Markup:
        word, gloss = self.told[number - 1]
        return Markup(
            '<span class="word"><button type="button" aria-describedby="word-{n}">{word}</button>'
            '<span role="tooltip" id="word-{n}">{gloss}</span></span>'
        ).format(n=number, word=word, gloss=gloss)

    def used(self) -> list[tuple[str, str]]:
        return sorted((word[:1].lower() + word[1:], gloss) for word, gloss in self.told)


def _keys(text: str | Markup) -> Markup:
    """Text in which `keys` of declarations are set as code."""
    import re

    return Markup(re.sub(r"`([^`]+)`", r"<code>\1</code>", str(escape(text))))


def _printable(text: str) -> str:
    return "".join(c if c.isprintable() else "?" for c in text)


def _counts(checked: Checked) -> list[dict[str, Any]]:
    of = open_findings(checked)
    made = [
        {"grade": grade, "words": words, "count": sum(f.grade == grade for f in of)}
        for grade, words in GRADE_WORDS.items()
    ]
    blind = len({n.name for n in checked.not_judged})
    made.append({"grade": "blind", "words": "Rules not judged", "count": blind})
    return made


# --- head -------------------------------------------------------------------------------------------------------------


def _head(run: Run) -> list[tuple[str, str]]:
    checked = run.checked
    lengths = Lengths(checked.units == "inch")
    rows = [("program", f"{count(checked.lines, 'line')}, {UNIT_WORDS[checked.units]}")]
    if run.tables is not None:
        setup = run.tables.setup
        rows.append(("material", material_words(setup)))
        rows.append(("blank", _blank(run.tables.engagement.box, lengths)))
        rows.append(("machine", _machine(setup)))
        if setup.hold.by:
            rows.append(("held by", setup.hold.by))
        if setup.sources:
            rows.append(("used", ", ".join(os.path.normpath(source) for source in setup.sources)))
    reach = reach_words(checked)
    if reach:
        rows.append(("reach", f"{reach} (tip of the tool, from work zero)"))
    rows.append(("time", time_words(checked)))
    return [(label, _printable(text)) for label, text in rows]


def _line(run: Run) -> list[str]:
    """What a sheet is of, in a line: the facts that a reader looks for before anything else."""
    head = dict(_head(run))
    blank = head.get("blank", "").partition(", its corner")[0]
    told = [head["program"], head.get("material", ""), f"blank {blank}" if blank else "", head["time"]]
    return [text for text in told if text]


def _blank(box: Stock | None, lengths: Lengths) -> str:
    if box is None or box.x is None or box.y is None:
        return "not known"
    sides = [lengths.length(high - low).partition(" ")[0] for low, high in (box.x, box.y)]
    if box.top is not None and box.bottom is not None:
        sides.append(lengths.length(box.top - box.bottom).partition(" ")[0])
    corner = f"its corner at X {lengths.place(box.x[0])} Y {lengths.place(box.y[0])}"
    said = "" if box.declared and box.placed else "; its place is assumed" if box.declared else "; assumed"
    return f"{' x '.join(sides)} {lengths.unit}, {corner}{said}"


def _machine(setup: Setup) -> str:
    parts = [setup.machine.name or "not declared", f"controller: {setup.controller.title}"]
    if setup.spindle.kind == "dial":
        parts.append(f"dial spindle{f', dial {setup.dial}' if setup.dial else ''}")
    return "; ".join(parts)


# --- findings ---------------------------------------------------------------------------------------------------------


def _grades(run: Run, words: Words) -> list[dict[str, Any]]:
    """[{grade, words, count, groups: [{full: [...], rows: [...], rest}]}]"""
    made, number = [], 0
    for grade, of_grade in by_grade(run.checked):
        numbers = {id(f): number + place for place, f in enumerate(of_grade)}
        number += len(of_grade)
        alike: dict[tuple[str, int | None], list[Finding]] = {}
        for finding in of_grade:
            alike.setdefault((finding.rule, finding.tool), []).append(finding)
        groups = []
        for same in alike.values():
            rest = same[IN_FULL:]
            groups.append({
                "full": [_full(numbers[id(f)], f, run, words) for f in same[:IN_FULL]],
                "rows": [_row(numbers[id(f)], f, run) for f in rest[:MOST_ROWS]],
                "more": max(0, len(rest) - MOST_ROWS),
                "times": "once" if len(rest) == 1 else f"{len(rest):,} times",
                "title": title_words(same[0].rule, run),
            })  # fmt: skip
        made.append({"grade": grade, "words": GRADE_WORDS[grade], "count": len(of_grade), "groups": groups})
    return made


def _in_short(grades: list[dict[str, Any]], glance: int) -> list[dict[str, Any]]:
    """A row for each finding that is told in full, where they are too many to be seen at a glance."""
    rows = []
    for grade in grades:
        for group in grade["groups"]:
            for one in group["full"]:
                tool = f"tool {one['tool']}, " if one["tool"] else ""
                alike = f"; again {group['times']}" if group["rows"] else ""
                rows.append({**one, "where": f"{tool}{one['where']}{alike}"})
    return rows if len(rows) > glance else []


def _places(grades: list[dict[str, Any]]) -> list[dict[str, Any]]:
    """A row for each cause, by the number that it has on the path."""
    return [
        {
            "number": one["number"], "index": one["index"], "grade": one["grade"], "words": grade["words"],
            "title": one["title"],
            "where": one["where"] + (f"; again {group['times']}" if group["rows"] else ""),
        }
        for grade in grades for group in grade["groups"] for one in group["full"]
    ]  # fmt: skip


def _brief(grades: list[dict[str, Any]]) -> list[dict[str, Any]]:
    """What must be put right before it runs, one row for each cause."""
    made = []
    for grade in grades:
        if grade["grade"] == "consider":
            continue
        full = [
            {**one, "again": f"the same again {group['times']}" if group["rows"] else ""}
            for group in grade["groups"] for one in group["full"]
        ]  # fmt: skip
        made.append({"grade": grade["grade"], "words": grade["words"], "count": grade["count"], "full": full})
    return made


def _mild(checked: Checked) -> str:
    mild = sum(f.grade == "consider" and is_entry(f) for f in checked.findings)
    return f"{count(mild, 'thing')} to consider: the sheet for the author tells." if mild else ""


def _sign(run: Run) -> dict[str, Any]:
    """What the one who signs must see: the outcome, who accepted what, and on which files it rests."""
    checked = run.checked
    sources = run.tables.setup.sources if run.tables is not None else ()
    before, short, behind = sign_words(checked)
    return {
        "outcome": f"{sentence(outcome_words(run))}.",
        "accepted": [accepted_words(f, checked) for f in checked.findings if f.accepted is not None],
        "used": [os.path.normpath(source) for source in sources],
        "before": before, "short": short, "behind": behind, "by": SIGNED_BY, "signed": signed_words(checked),
        "nothing": {"house": NO_HOUSE_RULES, "accepted": NOTHING_ACCEPTED, "used": NO_FILES},
    }  # fmt: skip


def _full(index: int, finding: Finding, run: Run, words: Words) -> dict[str, Any]:
    return {
        "index": index, "number": index + 1, "grade": finding.grade, "rule": finding.rule,
        "title": title_words(finding.rule, run),
        "tool": tool_name(finding.tool, run) if finding.tool is not None else "",
        "where": where_words(finding),
        "found": words(found_words(finding)) if finding.found is not None else "",
        "gauge": gauge_bar(finding),
        "drawing": None,
        "happens": _keys(words(sentence(finding.happens))),
        "change": _keys(words(finding.change.text)),
        "settings": settings_words(finding.change.set),
        "graded": graded_words(finding),
        "mends": MENDS if finding.mendable and finding.accepted is None else "",
        "excerpt": _excerpt(finding.worst_line, run),
        "beside": finding.beside,
    }  # fmt: skip


def _row(index: int, finding: Finding, run: Run) -> dict[str, Any]:
    return {
        "index": index, "number": index + 1, "line": finding.worst_line, "text": quoted(finding.worst_line, run),
        "found": found_words(finding) if finding.found is not None else "",
        "settings": settings_words(finding.change.set)[:1],
    }  # fmt: skip


def _excerpt(line: int, run: Run) -> list[tuple[int, str, bool]]:
    """(line, its text, whether it is the one)."""
    if run.tables is None:
        return []
    lines = run.tables.program.lines
    near = range(max(1, line - EXCERPT), min(lines, line + EXCERPT) + 1)
    text = run.tables.program.line_text
    return [(n, _printable(_cut_short(text(n).strip())), n == line) for n in near]


def _cut_short(text: str) -> str:
    return text if len(text) <= LONGEST else f"{text[: LONGEST - 4]} ..."


# --- tools ------------------------------------------------------------------------------------------------------------


def _tools(run: Run, words: Words) -> list[dict[str, Any]]:
    if run.tables is None or not run.checked.tools:
        return []
    lengths = Lengths(run.checked.units == "inch")
    pairs = pair_facts(run.tables)
    found = open_findings(run.checked)
    made = []
    for place, facts in enumerate(tool_facts(run.tables, run.checked.tools)):
        row = facts.row
        made.append({
            "place": place,
            "title": "Tool not named" if row.tool is None else f"Tool {row.tool}",
            "described": ", ".join(part for part in (row.name, facts.described) if part),
            "first_line": facts.first_line,
            "rows": _tool_rows(facts, [p for p in pairs if p.tool == row.tool], lengths, words),
            "cuts": bool(row.passes),
            "findings": _pointers([(n, f) for n, f in enumerate(found) if f.tool == row.tool is not None], run),
        })  # fmt: skip
    return made


def _pointers(found: list[tuple[int, Finding]], run: Run) -> list[dict[str, Any]]:
    """Findings of one tool by their rule: what it is, and the numbers of the first ones."""
    alike: dict[tuple[str, str], list[int]] = {}
    for index, finding in found:
        alike.setdefault((finding.grade, finding.rule), []).append(index + 1)
    return [
        {"grade": grade, "words": GRADE_WORDS[grade], "title": title_words(rule, run), "numbers": numbers[:POINTED],
         "more": max(0, len(numbers) - POINTED)}
        for (grade, rule), numbers in alike.items()
    ]  # fmt: skip


def _tool_rows(
    facts: ToolFacts, pairs: list[PairFacts], lengths: Lengths, words: Words
) -> list[tuple[str, list[Markup]]]:
    row = facts.row
    if not row.passes:
        return [("cuts", [escape("It met no material, or what it met could not be modelled.")])]
    passes = count(row.passes, "pass", "passes")
    rows = [("cuts", [f"{lengths.path(row.cut_length_mm)} in {passes}, {duration(row.cut_time_s)}"])]
    kinds = ", ".join(f"{n:,} {ENTRY_WORDS[kind]}" for kind, n in row.entries.items() if n)
    if kinds:
        rows.append(("entries", [kinds]))
    rows.append(("speed", [speed_words(facts)]))
    if row.set_feed_mm_min:
        rows.append(("feed", [feed_words(row, lengths)]))
    usual = facts.chip_usual_mm or row.h_ex_mm
    if usual:
        known = f"; {window_words(in_units(facts.chip_window, lengths))}" if facts.chip_window else ""
        most = f" (most {facts.chip_operation} cuts)" if facts.chip_usual_mm else ""
        rows.append(("chip", [f"{lengths.lengths(*usual)}{most}{known}"]))
    rows += [(label, [said]) for label, said in load_words(facts, lengths)]
    if depth := depth_words(facts, lengths):
        rows.append(("depth", [depth]))
    if marks := mark_words(row.marks, lengths):
        rows.append(("dial", [f"which mark is set is not said (--dial): {marks}"]))
    if margins := margin_words(row, lengths):
        rows.append(("margins", margins))
    if pairs:
        rows.append(("pairs", [pair_words(pair, lengths) for pair in pairs]))
    return [(label, [words(text) for text in texts]) for label, texts in rows]


def _not_judged(checked: Checked) -> list[tuple[Markup, list[str]]]:
    """(what is needed, the rules that wait for it)."""
    return [(_keys(needs), rules) for needs, rules in not_judged_by_need(checked).items()]
