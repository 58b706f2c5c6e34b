"""Runs a rule's examples, and finds the place in each that is worth a drawing."""

from __future__ import annotations

from dataclasses import dataclass

from gclint.facts.context import Context
from gclint.packs.pack import Example, Pack, Rule
from gclint.tables.finding import Finding
from gclint.teach.place import Place, nearest_place, worst_place


@dataclass(frozen=True, slots=True, eq=False)
class Shown:
    """An example that has been run: what was found (None in a good one) and the place to draw (None: nothing moves)."""

    example: Example
    context: Context
    finding: Finding | None
    place: Place | None


def shown(rule: Rule, example: Example, packs: tuple[Pack, ...]) -> Shown:
    """Raises Problem on a faulty example."""
    from gclint.rule_proof import judged

    tables, found = judged(example, packs, rule.name)
    context = Context(
        tables.program, tables.motion, tables.timing, tables.engagement, tables.cutting, tables.setup
    )
    if found:
        told = next((f for f in found if f.line == example.line), found[0])
        return Shown(example, context, told, worst_place(rule, told, context))
    return Shown(example, context, None, nearest_place(rule, context))


def pair(rule: Rule) -> tuple[Example | None, Example | None]:
    """The first bad example, and of the first two good ones that which differs from it less.

    Those behind hold the bounds of the condition: they are good by a hair, and teach little.
    """
    bad = rule.text.must_find[0] if rule.text.must_find else None
    if bad is None or not rule.text.must_leave:
        return bad, rule.text.must_leave[0] if rule.text.must_leave else None
    return bad, max(rule.text.must_leave[:2], key=lambda good: _alike(bad, good))


def _alike(bad: Example, good: Example) -> tuple[int, int]:
    same = sum(
        getattr(bad, key) == getattr(good, key) for key in ("material", "tools", "stock", "shop", "job")
    )
    lines = set(bad.program.splitlines())
    return same, len(lines & set(good.program.splitlines()))
