"""Runs the rules over the tables of one program and makes findings: what is wrong, where, how much, what to change."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from pathlib import Path
from typing import Any

import numpy as np
from msgspec import Struct

from gclint.columns import Column, numbered
from gclint.facts.context import Context
from gclint.facts.registry import View, facts_of
from gclint.judge import acceptance
from gclint.judge.by_assumption import entry_of, take_out
from gclint.judge.following import follow, with_ids
from gclint.judge.grouping import findings_of, grades_of, line_of
from gclint.judge.hits import Hits
from gclint.judge.needs import PLACE, true_need
from gclint.judge.set_up_stops import other_set_up
from gclint.language.evaluate import FALSE, TRUE, UNKNOWN, blame, truth
from gclint.packs import shop_pack as house
from gclint.packs.load import check_together, load_pack
from gclint.packs.pack import Pack, Rule
from gclint.tables.assumption import Assumption
from gclint.tables.cutting import Cutting
from gclint.tables.engagement import Engagement
from gclint.tables.finding import Acceptance, Change, Finding, Found, HouseRule, NotJudged
from gclint.tables.motion import Motion
from gclint.tables.program import Program
from gclint.tables.setup import GRADES, STANDINGS, Assumed, Setup
from gclint.tables.timing import Timing

WHOLE = ("program", "rapid_descents", "feed_modes")  # tables of one row, about the program as a whole
MOST_KEPT = 1 << 28  # bytes of the facts of one program, about those of a million moves
LARGE = 1 << 20  # bytes of a column that is worth dropping
PLACES = ("x", "y", "z", "start_x", "start_y", "start_z", "lowest", "highest")  # facts that are known with the place
NEED_STOCK_MODEL = ("pieces", "entries", "passes")

# Faults of text and motion that are nobody's mistake: what they cover is simply not judged.
UNFOLLOWED = {
    "parameter-unset": ("what depends on a parameter that is never set", "a program that sets what it reads"),
    "value-unknown": (
        "what depends on a value known only at the machine",
        "nothing: results of probing and offsets are known only when the program runs",
    ),
    "axis-not-modelled": ("moves of the axes A B C U V W", "nothing: only X, Y and Z are modelled"),
    "frame-turned": (
        "moves in a turned, scaled, mirrored or polar frame (G16, G51, G68) that is not followed",
        "a program whose coordinates are worked out by the exporter",
    ),
    "compensation-unresolved": (
        "cuts under G41 or G42",
        "the diameter that D stands for: a tool of that number, or `diameter_offsets` in shop.toml",
    ),
    "position-unknown": ("moves from a position that is not known", "an absolute position (G90) before them"),
}


class Judged(Struct, frozen=True):
    """What the rules say about one program. Accepted findings are among `findings`, with the reason."""

    findings: tuple[Finding, ...]
    not_judged: tuple[NotJudged, ...]
    house: tuple[HouseRule, ...] = ()
    acceptances: tuple[Acceptance, ...] = ()
    assumed: tuple[Assumed, ...] = ()  # what findings hang on
    plain: Mapping[str, str] = {}  # the text of a change with worked-out numbers -> the same without them


def judge(
    program: Program,
    motion: Motion,
    timing: Timing,
    engagement: Engagement,
    cutting: Cutting,
    setup: Setup,
    packs: Iterable[Pack] | None = None,
    *,
    advise: bool = True,
) -> Judged:
    """Judge one program by the shipped packs and the job's house packs, or by `packs` alone.

    Without `advise` nothing is worked out that could be set: half the time of a small program.

    Raises Problem for a house pack or an acceptance in job.toml that is wrong. A rule that fails becomes one finding
    internal-error, and the others go on.
    """
    context = Context(program, motion, timing, engagement, cutting, setup, advise)
    chosen = tuple(packs) if packs is not None else all_packs(setup)
    rules = house.rules_in_force(chosen)
    narrowed = house.narrowed(chosen)
    left_out: dict[int, int] = {}
    acceptance.check_names(setup, [rule.name for rule in rules])
    hits: list[Hits] = []
    findings: list[Finding] = []
    missing: dict[tuple[str, str], int] = {}
    views: dict[str, View] = {}
    for rule in rules:
        if rule.when is None:
            continue
        try:
            view = views.setdefault(rule.text.looks_at, View.of(rule.text.looks_at, context))
            found = _run(rule, view, missing, narrowed.get(rule.name, ()), left_out)
        except Exception as fault:  # one broken rule must not hide what the others find
            findings.append(_internal_error(rule, fault))
            continue
        if found is not None:
            hits.append(found)
        _forget(views, context)
    _leave_out(hits)
    outcomes = acceptance.apply(hits, context)
    hanging = take_out(hits, _assumptions(context), context)
    for found in hits:
        try:
            findings += findings_of(found.rule, found.view, found.accepted, context)
        except Exception as fault:
            findings.append(_internal_error(found.rule, fault))
    by_name = {rule.name: rule for pack in _entry_packs(chosen, hanging) for rule in pack.rules}
    entries = [entry_of(assumption, mine, by_name, context) for assumption, mine in hanging]
    entries, outcomes = acceptance.cover_entries(entries, outcomes)
    findings += entries
    findings = acceptance.told(outcomes, findings, [rule.name for rule in rules])
    _add_unmodelled(context, rules, missing)
    titles = {rule.name: rule.text.title for rule in rules}
    ranked = follow(with_ids(sorted(findings, key=_rank)), _entry_packs(chosen, hanging))
    ranked = tuple(sorted(ranked, key=_rank))
    house_rules = house.told(chosen, ranked, left_out)
    assumed = tuple(Assumed(each.what, each.value, each.because) for each, _ in hanging)
    return Judged(
        ranked, _not_judged(missing, titles, context), house_rules, acceptance.acceptances(outcomes), assumed,
        context.plain_advice,
    )  # fmt: skip


def _assumptions(context: Context) -> tuple[Assumption, ...]:
    """What may as well be otherwise, the farthest reaching first."""
    stop = other_set_up(context)
    return (*(() if stop is None else (stop,)), *context.engagement.doubts)


def _entry_packs(chosen: tuple[Pack, ...], hanging: list[Any]) -> tuple[Pack, ...]:
    """Packs among which the rules of entries are: where only some packs are judged by, also those that ship."""
    names = {rule.name for pack in chosen for rule in pack.rules}
    return chosen if all(each.entry in names for each, _ in hanging) else _packs(())


def all_packs(setup: Setup) -> tuple[Pack, ...]:
    """The shipped packs and the house packs the job names. Raises Problem."""
    return _packs(setup.packs)


def pack_rules(house: Iterable[str]) -> tuple[str, ...]:
    """Names of all rules: of the shipped packs and of these house packs. Raises Problem."""
    return tuple(rule.name for pack in _packs(house) for rule in pack.rules)


def _packs(house: Iterable[str]) -> tuple[Pack, ...]:
    from gclint.packs.shipped_packs import shipped_packs

    own = tuple(load_pack(Path(path)) for path in house)
    packs = (*shipped_packs(), *own)
    if own:
        check_together(packs)
    return packs


def _run(
    rule: Rule,
    view: View,
    missing: dict[tuple[str, str], int],
    narrows: house.Narrows,
    left_out: dict[int, int],
) -> Hits | None:
    assert rule.when is not None
    if view.length == 0:
        return None
    answer = truth(rule.when.code, view)
    for entry, _ in narrows:
        counts = house.counts(entry, view)
        outside = int(((answer == TRUE) & (counts == FALSE)).sum())
        left_out[id(entry)] = left_out.get(id(entry), 0) + outside
        open_ = int(((answer == TRUE) & (counts == UNKNOWN)).sum())
        if open_:
            missing[rule.name, house.NEEDS_MATERIAL] = missing.get((rule.name, house.NEEDS_MATERIAL), 0) + open_
        answer = np.where(counts == TRUE, answer, FALSE)
    unknown = np.flatnonzero(answer == UNKNOWN)
    if len(unknown):
        _blame(rule, view.choose(unknown), missing)
    rows = np.flatnonzero(answer == TRUE)
    return Hits(rule, view.choose(rows)) if len(rows) else None


def _forget(views: dict[str, View], context: Context) -> None:
    """Drop the columns of facts when they take too much: whoever asks again has them worked out again."""
    if max((view.length for view in views.values()), default=0) * 8 <= LARGE:  # no column is large
        return
    stores: list[dict[Any, Any]] = [*(view.built for view in views.values()), context.kept, context.__dict__]
    large = [(store, key, size) for store in stores for key, made in store.items() if (size := _bytes(made)) > LARGE]
    if sum(size for _, _, size in large) > MOST_KEPT:
        for store, key, _ in large:
            del store[key]


def _bytes(made: Any) -> int:
    """Of the columns in what was worked out; a part of one that is kept elsewhere counts for nothing."""
    if isinstance(made, tuple):
        return sum(_bytes(each) for each in made)
    return made.nbytes if isinstance(made, np.ndarray) and made.base is None else 0


def _blame(rule: Rule, rows: View, missing: dict[tuple[str, str], int]) -> None:
    """One line for each declaration that would let the rule be judged, however many rows lack it."""
    assert rule.when is not None
    facts = facts_of(rule.text.looks_at)
    needs: dict[str, int] = {}
    for name, count in blame(rule.when.code, rows).items():
        fact = facts[name]
        need = fact.needs_here(rows.context) if fact.needs_here else fact.needs
        if not need:
            need = PLACE if name.rpartition(".")[2] in PLACES else f"{fact.meaning} (`{name}`)"
        needs[need] = max(needs.get(need, 0), count)
    for need, count in needs.items():
        missing[rule.name, need] = missing.get((rule.name, need), 0) + count


def _leave_out(hits: list[Hits]) -> None:
    """Where one rule's finding already says it, the same cause is not told again at that place (`instead_of`).

    What a rule on the whole program says is the root of what it names, at all places. Else nothing leaves out what is
    graver than itself.
    """
    by_name = {found.rule.name: found for found in hits}
    for found in hits:
        for name in found.rule.text.instead_of:
            other = by_name.get(name)
            if other is None:
                continue
            telling = found.view
            if found.rule.instead_when is not None:
                telling = telling.choose(np.flatnonzero(truth(found.rule.instead_when.code, telling) == TRUE))
            if not telling.length:
                continue
            by_line = bool((other.view.column("move") < 0).any())
            keys, place = numbered(line_of(found.rule, telling) if by_line else _cause_key(found.rule, telling))
            gravest = np.full(len(keys), len(GRADES))
            np.minimum.at(gravest, place, grades_of(found.rule, telling))
            whole = found.rule.text.looks_at in WHOLE
            theirs = line_of(other.rule, other.view) if by_line else _cause_key(found.rule, other.view)
            at = np.minimum(np.searchsorted(keys, theirs), len(keys) - 1)
            same = (keys[at] == theirs) | whole
            keep = ~(same & (whole | (grades_of(other.rule, other.view) >= gravest[at])))
            other.view = other.view.choose(np.flatnonzero(keep))
            other.accepted = other.accepted[keep]
    hits[:] = [found for found in hits if found.view.length]


def _cause_key(rule: Rule, view: View) -> Column:
    """What the rows of two rules must share to have one cause: the S word, the F word, or the line."""
    motion = view.context.motion
    if not len(motion.line):  # nothing moves: what is found is all about the one program
        return np.zeros(view.length)
    column = {"speed": motion.speed_line, "feed": motion.feed_line}
    return np.asarray(column.get(rule.text.cause, motion.line)[np.maximum(view.column("move"), 0)])


def _add_unmodelled(context: Context, rules: list[Rule], missing: dict[tuple[str, str], int]) -> None:
    """What earlier steps could not model or follow: for one rule that they name, else for all that look at cuts."""
    named = {rule.name for rule in rules}
    for what, needs, count in context.engagement.not_judged:
        for rule in rules:
            if rule.name == what or (rule.text.looks_at in NEED_STOCK_MODEL and what not in named):
                missing[rule.name, needs] = missing.get((rule.name, needs), 0) + count
    for name, needs, count in context.cutting.not_judged:
        missing.setdefault((name, needs), count)
    faults = View.of("faults", context)
    kinds, words = faults.value("kind")
    for kind, (what, needs) in UNFOLLOWED.items():
        count = int((kinds == words.index(kind)).sum())
        if count:
            missing[what, needs] = count
    if context.motion.stopped_at:
        where = f"everything from line {context.motion.stopped_at} on"
        missing[where, context.motion.stopped_because or "a program that can be followed to its end"] = 1


def _not_judged(
    missing: dict[tuple[str, str], int], titles: dict[str, str], context: Context
) -> tuple[NotJudged, ...]:
    """One row per rule; what it needs, joined."""
    rules: dict[str, dict[str, int]] = {}
    for (name, need), count in missing.items():
        told = true_need(need, context)
        rules.setdefault(name, {})[told] = max(count, rules.get(name, {}).get(told, 0))
    return tuple(
        NotJudged(
            name if name in titles else None, titles.get(name, name), "; ".join(sorted(needs)), max(needs.values())
        )
        for name, needs in sorted(rules.items())
    )


def _internal_error(rule: Rule, fault: Exception) -> Finding:
    return Finding(
        rule="internal-error", grade="change", line=1, last_line=1, lines=(1,), worst_line=1, column=1, count=1,
        tool=None,
        found=Found("rule that failed", f"{rule.name}: {type(fault).__name__}: {fault}"[:300], ""), window=None,
        happens=f'gclint itself failed while judging "{rule.name}", so this rule says nothing about the program.',
        change=Change("Nothing to change in the program: please report this, with the program and its fingerprint."),
    )  # fmt: skip


def _rank(finding: Finding) -> tuple[Any, ...]:
    """By harm, then certainty, then place; accepted ones last of their grade. No two findings are alike in all of it.

    What rests on something taken as given is less certain than what rests on what is declared, whatever its limit.
    """
    standing = finding.window.standing if finding.window else ""
    order = ("declared", *STANDINGS, "assumed")
    certainty = order.index(standing) if standing in order else 1
    tool = -2 if finding.tool is None else finding.tool
    place = (finding.line, finding.column, finding.rule, tool)
    rest = (finding.worst_line, finding.last_line, finding.count, finding.happens, finding.accepted or "")
    known, taken = finding.accepted is not None, bool(finding.rests_on)
    return (GRADES.index(finding.grade), known, taken, certainty, *place, *rest)
