"""`gclint check --teach`: the first finding of each kind at length, in the order in which things are put right."""

from __future__ import annotations

from collections.abc import Sequence

from gclint.digest.sheet_words import (
    found_words,
    is_entry,
    quoted,
    sentence,
    settings_words,
    title_words,
    tool_name,
    where_words,
)
from gclint.digest.words import GRADE_WORDS, count
from gclint.facts.context import Context
from gclint.internal_fault import left_out
from gclint.judge.judge import all_packs
from gclint.knowledge.glossary import words_in
from gclint.packs.pack import Rule
from gclint.packs.shipped_packs import shipped_packs
from gclint.report.text.text_sheet import STYLES, TextSheet
from gclint.run import Run
from gclint.tables.finding import Finding
from gclint.tables.material import Material
from gclint.teach.drawings import drawings, scale_of
from gclint.teach.listing import listing, named_lines
from gclint.teach.place import Place, worst_place
from gclint.teach.steps import steps
from gclint.teach.subject import Subject, subject_of, subjects
from gclint.teach.why_out import draw

INDENT = 4
MOST_LESSONS = 30
MOST_WORDS = 8
HEARD_BY_CHIP = ("chip", "heat", "entry")  # subjects whose success is seen in the chips


def lessons(run: Run, paper: TextSheet) -> None:
    """All open findings of one program."""
    checked = run.checked
    paper.ends("WHAT TO PUT RIGHT, IN THIS ORDER", checked.path)
    rules = {rule.name: rule for rule in _rules(run)}
    kinds: dict[str, list[Finding]] = {}
    for finding in checked.findings:
        if is_entry(finding):
            kinds.setdefault(finding.rule, []).append(finding)
    if not kinds:
        paper.text_block("Nothing was found by what could be judged, so there is nothing to put right first. Read what "
                         "was taken as given, and what was not judged: `gclint check` lists both.")  # fmt: skip
        return
    paper.text_block("A cause comes before what follows from it, and a crash before a chip: after each change check "
                     "the program again, since much of what stands below it may be gone.")  # fmt: skip
    explained: set[str] = set()
    told: set[str] = set()
    before: Subject | None = None
    for number, (name, alike) in enumerate(sorted(kinds.items(), key=lambda kind: _turn(kind[1], rules)), 1):
        subject = _subject(name, rules)
        if subject is not before:
            paper.blank()
            paper.heading(subject.title.upper())
            before = subject
        if number > MOST_LESSONS:
            _short(number, alike[0], alike, run, paper)
        else:
            try:
                _lesson(number, alike, rules.get(name), subject, run, paper, explained, told)
            except Exception as fault:
                paper.text_block(left_out("this lesson", fault), INDENT)
                _short(number, alike[0], alike, run, paper)


def _rules(run: Run) -> list[Rule]:
    """The rules in force, as the run judged by them."""
    packs = all_packs(run.tables.setup) if run.tables is not None else shipped_packs()
    return [rule for pack in packs for rule in pack.rules]


def _turn(alike: Sequence[Finding], rules: dict[str, Rule]) -> tuple[bool, int, int]:
    """What must be changed before what may be; then causes before consequences, then the worst grade."""
    worst = min(list(GRADE_WORDS).index(finding.grade) for finding in alike)
    return worst == len(GRADE_WORDS) - 1, _subject(alike[0].rule, rules).order, worst


def _subject(name: str, rules: dict[str, Rule]) -> Subject:
    return subject_of(rules[name].text) if name in rules else subjects()["gclint"]


def _head(number: int, finding: Finding, run: Run, paper: TextSheet) -> None:
    from rich.text import Text

    from gclint.report.text.text_sheet import clean

    paper.blank()
    title = Text(f"{number:2}  ", STYLES[finding.grade])
    title.append(clean(title_words(finding.rule, run)), STYLES["head"])
    paper.console.print(title)
    paper.field("grade", GRADE_WORDS[finding.grade].lower(), INDENT, finding.grade)
    paper.field("rule", f"{finding.rule} (`gclint why {finding.rule}`)", INDENT)
    if finding.tool is not None:
        paper.field("tool", tool_name(finding.tool, run), INDENT)
    paper.field("where", where_words(finding), INDENT)
    text = quoted(finding.worst_line, run)
    if text:
        paper.field("", f"line {finding.worst_line} reads:  {text}", INDENT)


def _lesson(
    number: int, alike: Sequence[Finding], rule: Rule | None, subject: Subject, run: Run, paper: TextSheet,
    explained: set[str], told: set[str],
) -> None:  # fmt: skip
    finding = alike[0]
    _head(number, finding, run, paper)
    place = _place(rule, finding, run)
    paper.blank()
    paper.text_block("What happens", INDENT, "head")
    for at, said in enumerate([*(steps(place, scale_of(place)) if place else []), sentence(finding.happens)], 1):
        paper.field(f"{at:>8}.", said, 0)
    if finding.found is not None:
        paper.field("found", found_words(finding), INDENT)
    for drawing in drawings(place, finding, leave=("listing",)):
        paper.blank()
        draw(drawing, paper, explained)
    if run.tables is not None:
        paper.blank()
        draw(listing(run.tables.program, named_lines(finding)), paper, explained)
    if rule is not None:
        paper.blank()
        paper.text_block("Why it matters", INDENT, "head")
        paper.text_block(" ".join(rule.text.why.split()), INDENT)
    paper.blank()
    paper.text_block("What to change first", INDENT, "head")
    paper.text_block(finding.change.text, INDENT)
    for line in settings_words(finding.change.set):
        paper.text_block(line, INDENT + 2, "head")
    paper.blank()
    paper.text_block("What to look and listen for afterwards", INDENT, "head")
    paper.text_block(_afterwards(subject, run), INDENT)
    _words(finding, rule, paper, told)
    if len(alike) > 1:
        paper.blank()
        paper.text_block(f"The same again, {count(len(alike) - 1, 'more place')} told shortly:", INDENT)
        for other in alike[1:12]:
            found = f": {found_words(other)}" if other.found is not None else ""
            tool = f"tool {tool_name(other.tool, run)}, " if other.tool is not None else ""
            paper.text_block(f"- {tool}{where_words(other)}{found}", INDENT)
        if len(alike) > 12:
            paper.text_block(f"- and {len(alike) - 12} more, which `gclint check` lists", INDENT)


def _short(number: int, finding: Finding, alike: Sequence[Finding], run: Run, paper: TextSheet) -> None:
    _head(number, finding, run, paper)
    paper.field("happens", sentence(finding.happens), INDENT)
    paper.field("change", finding.change.text, INDENT)


def _place(rule: Rule | None, finding: Finding, run: Run) -> Place | None:
    t = run.tables
    if rule is None or t is None:
        return None
    return worst_place(rule, finding, Context(t.program, t.motion, t.timing, t.engagement, t.cutting, t.setup))


def _afterwards(subject: Subject, run: Run) -> str:
    material = run.tables.setup.material if run.tables is not None else None
    said = subject.afterwards
    name = next(name for name, each in subjects().items() if each is subject)
    if name in HEARD_BY_CHIP and isinstance(material, Material) and material.good_chip is not None:
        chip = material.good_chip
        said += f" In {material.named} a good chip looks like this: {chip.looks}. It sounds like this: {chip.sounds}."
    return said


def _words(finding: Finding, rule: Rule | None, paper: TextSheet, told: set[str]) -> None:
    """The words of the trade that are used for the first time."""
    about = (rule.text.title, rule.text.why) if rule is not None else ()
    text = " ".join((*about, finding.happens, finding.change.text))
    fresh = [name for name in words_in(text) if name not in told][:MOST_WORDS]
    told |= set(fresh)
    if fresh:
        paper.blank()
        paper.field("words", f"{', '.join(fresh)} (`gclint word TERM`)", INDENT)
