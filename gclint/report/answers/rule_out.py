"""Rules as text: one in full, or all of them by pack."""

from __future__ import annotations

from collections.abc import Collection, Sequence

from gclint.digest.words import GRADE_WORDS, behind, count, plain_number
from gclint.knowledge.numbers import numbers
from gclint.knowledge.quantities import Quantity, quantities
from gclint.packs.pack import GradeCase, Pack, Rule, TextCase
from gclint.report.text.text_sheet import TextSheet
from gclint.tables.finding import HouseRule

MODEL = "model"
REACH_WORDS = {
    "program": "in the program", "behind": "behind its line", "tool": "of the same tool",
    "places": "at the same places",
}  # fmt: skip
MODELLED = ("pieces", "entries", "passes")  # tables that rest on the model of the stock


def rule_list(packs: Sequence[Pack], paper: TextSheet) -> None:
    """Every rule with its plain title, grouped by pack."""
    paper.ends("RULES", count(sum(len(pack.rules) for pack in packs), "rule"))
    for pack in packs:
        paper.blank()
        paper.heading(pack.name.upper())
        paper.text_block(pack.about)
        paper.table(("rule", "what it finds"), [(rule.name, rule.text.title) for rule in pack.rules], left=2)
    paper.blank()
    paper.heading("WHAT IS RECKONED")
    paper.table(("name", "what it is"), _reckoned(), left=2)
    paper.blank()
    paper.text_block("`gclint why NAME` says more about one of them.")


def _reckoned() -> list[tuple[str, str]]:
    named = [(name, each.title) for name, each in quantities().items()]
    return [*named, (MODEL, "The numbers by which cuts are sorted")]


def quantity_page(name: str, shown: Quantity, rules: Collection[str], paper: TextSheet) -> None:
    """What a figure of the reports means, how it is worked out, and its source; `rules`: those in force."""
    paper.ends(name, "what is calculated")
    paper.text_block(shown.title, style="head")
    paper.blank()
    paper.text_block(" ".join(shown.means.split()))
    paper.blank()
    paper.heading("HOW IT IS WORKED OUT")
    for line in shown.formula:
        paper.bullet(line)
    paper.field("source", behind(shown.standing, shown.source))
    if shown.numbers:
        paper.blank()
        paper.heading("NUMBERS OF THE MODEL")
        _numbers(shown.numbers, paper)
    judging = [rule for rule in shown.rules if rule in rules]
    if judging:
        paper.blank()
        paper.field("rules", f"{', '.join(judging)} (`gclint why RULE`)")


def _numbers(names: Sequence[str], paper: TextSheet) -> None:
    for name in names:
        number = numbers()[name]
        value = f"{plain_number(number.value)} {number.unit}".strip()
        paper.text_block(f"{value}: {number.means} ({behind(number.standing, number.source)})")


def _concerns(number: str, rule: str) -> bool:
    """Whether a number belongs to a quantity that the rule judges by."""
    return any(rule in each.rules and number in each.numbers for each in quantities().values())


def rule_head(rule: Rule, pack: Pack, paper: TextSheet) -> None:
    """What a rule finds, and why that matters."""
    text = rule.text
    paper.ends(text.name, f"pack {pack.name}")
    paper.text_block(text.title, style="head")
    paper.blank()
    paper.text_block(" ".join(text.why.split()))


def rule_terms(rule: Rule, paper: TextSheet) -> None:
    """How it is judged: condition, grades, limits and numbers, each with standing and source."""
    text = rule.text
    paper.blank()
    paper.heading("HOW IT IS JUDGED")
    paper.field("looks at", text.looks_at)
    if text.when:
        paper.field("when", " ".join(text.when.split()))
    for line in _grades(text.grade):
        paper.field("grade", line)
    paper.field("standing", behind(text.standing, text.source))
    for case in _texts(text.happens):
        paper.field("says", case)
    for case in _texts(text.change):
        paper.field("change", case)
    if text.instead_of:
        paper.field("instead", f"where this is found, {', '.join(text.instead_of)} is not reported as well")
    if text.cause_of:
        where = REACH_WORDS[text.reaches]
        paper.field("follows", f"{', '.join(text.cause_of)}: what these find {where} is told with it")
    if text.limits:
        paper.blank()
        paper.heading("LIMITS")
        for name, limit in text.limits.items():
            value = limit.value if isinstance(limit.value, str) else plain_number(limit.value)
            paper.text_block(f"{name} = {value} ({behind(limit.standing, limit.source)})")
    own = [name for name in numbers() if _concerns(name, rule.name)]
    if own:
        paper.blank()
        paper.heading("NUMBERS OF THE MODEL")
        _numbers(own, paper)
    if text.looks_at in MODELLED:
        paper.blank()
        paper.text_block("`gclint why model` lists the numbers by which cuts are sorted before any rule sees them.")


def rule_here(house: Sequence[HouseRule], paper: TextSheet) -> None:
    """What house packs change about it: its grade, and where it counts."""
    if not house:
        return
    paper.blank()
    paper.heading("IN THIS HOUSE")
    for each in house:
        label = "grade" if each.does == "regrades" else "counts"
        paper.field(label, f"{each.says}, by {each.by}, because {' '.join(each.because.split()).rstrip('.')}")


def model_page(paper: TextSheet) -> None:
    """The numbers by which the model sorts what it sees, whatever the rule."""
    paper.ends("model", "what is calculated")
    paper.text_block("The numbers by which the model sorts what it sees, before any rule judges it.", style="head")
    paper.blank()
    _numbers(list(numbers()), paper)


def _grades(grade: str | Sequence[GradeCase]) -> list[str]:
    if isinstance(grade, str):
        return [f"{grade} ({GRADE_WORDS[grade].lower()})"]
    return [
        f"{case.grade} ({GRADE_WORDS[case.grade].lower()})"
        + (f" when {' '.join(case.when.split())}" if case.when else " otherwise" if len(grade) > 1 else "")
        for case in grade
    ]


def _texts(text: str | Sequence[TextCase]) -> list[str]:
    if isinstance(text, str):
        return [text] if text else []
    return [f"{case.text}{f' (when {case.when})' if case.when else ''}" for case in text if case.text]
