"""From what a person asks to a plan: levels, shape, cells, what gclint finds in each, order, numbers."""

from __future__ import annotations

import datetime
import hashlib
import math
import os
from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING, Any

from msgspec import Struct
from msgspec.structs import replace

from gclint.problem import Problem
from gclint.toml.quantity import Feed, Length, Position
from gclint.toml.quantity import Speed as Set
from gclint.trial.asked import SHOP_FILE, Asked, Bench, bench_of
from gclint.trial.design import Cell, choose, typed
from gclint.trial.groove import fitted
from gclint.trial.judged_cuts import Prover, runs, said
from gclint.trial.layout_numbers import plan_number
from gclint.trial.levels import Levels, levels_of
from gclint.trial.order import Judged, in_order, numbered, with_repeats
from gclint.trial.plan import Cut, Plan, listed
from gclint.trial.plan_file import plain
from gclint.trial.program import made, written

if TYPE_CHECKING:
    from gclint.tables.finding import Finding

CONFIRMED = "a limit is looked for, and a person has confirmed these test cuts:"  # begins an acceptance of ours
TRIES = 5  # at a feed that is reached; and at a program that holds nothing against it


class Made(Struct, frozen=True):
    plan: Plan
    bench: Bench
    levels: tuple[Levels, ...]
    notes: tuple[str, ...]  # what was left out or replaced, a sentence each


def make(asked: Asked, folder: Path, today: datetime.date, told: Callable[[str], None] = lambda step: None) -> Made:
    """The plan for a folder; nothing is written. Raises Problem."""
    bench = bench_of(asked, folder)
    asked, notes = _entries(asked, bench)
    levels = tuple(levels_of(number, bench, asked) for number in bench.tables)
    card = bench.material
    ramp = card.ramp_advised.value if card and card.ramp_advised else plan_number("ramp")
    most, shape, layout = fitted(levels, asked, bench.setup.machine, ramp)
    chosen = choose(levels, asked, most)
    size, corner = asked.blank
    plan = Plan(
        plan=_name(asked, today), made=today, material=asked.material, program=asked.program,
        coupon=(Length(size[0]), Length(size[1]), Length(size[2])), corner=(Position(corner[0]), Position(corner[1])),
        field=(Length(layout.field[0]), Length(layout.field[1])), controller=bench.setup.controller.name,
        batch=asked.batch, shop=shop_from(bench, folder), machine=bench.setup.machine.name, seed=asked.seed,
        like=asked.like, looks=asked.looks, shape=shape,
        tool=tuple(bench.tables.values()),
    )  # fmt: skip
    notes += chosen.notes
    prover = prover_of(plan, bench)
    judged = []
    for n, cell in enumerate(chosen.cells, 1):
        told(f"checking cut {n} of {len(chosen.cells)}")
        judged.append(_judged(cell, prover, layout.at(0), notes))
    cuts = numbered(in_order(with_repeats(judged, chosen.repeats, asked.seed), asked.seed), layout)
    told("checking the program")
    plan = _proved(replace(plan, cut=cuts), prover)
    return Made(plan, bench, levels, tuple(notes))


def _entries(asked: Asked, bench: Bench) -> tuple[Asked, list[str]]:
    """Both entries where none is asked for, but no plunge where the card allows none: nearly all would be risky."""
    if asked.entries:
        return asked, []
    card = bench.material
    if card is not None and card.plunge in ("no", "drill"):
        says = f"all cuts go down a ramp: the card of {card.name} allows no straight plunge (--entry straight tries it)"
        return replace(asked, entries=("ramp",)), [says]
    return replace(asked, entries=("ramp", "straight")), []


def _judged(cell: Cell, prover: Prover, at: tuple[float, float], notes: list[str]) -> Judged:
    """The cell with what gclint finds in it; one whose feed the machine does not get to is cut at one that it does."""
    wanted = cell.feed
    for _ in range(TRIES):
        proof = prover.cut(_alone(cell, at))
        if runs(proof.reached):
            break
        cell = replace(cell, feed=typed(min(cell.feed * proof.reached, cell.feed - 10.0)))
    else:
        raise Problem(f"the machine gets to {wanted:g} mm/min nowhere on the test shape, nor to any slower feed tried")
    if cell.feed != wanted:
        notes.append(f"{wanted:g} mm/min is not reached on the test shape and was replaced by {cell.feed:g}")
    return Judged(cell, proof.risky, proof.halt, proof.minor)


def _alone(cell: Cell, at: tuple[float, float]) -> Cut:
    return Cut(
        number=1, tool=cell.tool, feed=Feed(cell.feed), speed=Set(cell.speed.set), dial=cell.speed.mark,
        entry="ramp" if cell.entry == "ramp" else "straight", depth=Length(cell.depth),
        at=(Position(at[0]), Position(at[1])),
    )  # fmt: skip


def _proved(plan: Plan, prover: Prover) -> Plan:
    """Nothing is found in the cuts that are not risky when they are made together. Raises Problem where it is."""
    for _ in range(TRIES):
        program = written(plan, prover.bench.setup, made(plan))
        found = prover.whole(program)
        if not found:
            return plan
        worse: dict[int, str] = {}
        for finding in found:
            numbers = {program.cut_on(line) for line in (finding.worst_line, *finding.lines)} - {None}
            if not numbers:
                says = "the program of these cuts does not pass gclint itself, so nothing is written"
                raise Problem(f"{says}: {said(finding)}: {finding.happens}")
            worse |= {number: said(finding) for number in numbers if number is not None}
        plan = replace(plan, cut=tuple(
            replace(cut, risky=cut.risky or worse[cut.number]) if cut.number in worse else cut for cut in plan.cut
        ))  # fmt: skip
    raise Problem("the program of these cuts does not pass gclint itself, so nothing is written")


class Accepted(Struct, frozen=True):
    """What gclint finds in cuts that a person has confirmed: of one rule and tool, as job.toml accepts it."""

    rule: str
    tool: int | None
    grade: str
    places: int
    because: str


def proved_again(plan: Plan, bench: Bench) -> tuple[Accepted, ...]:
    """What is found in confirmed cuts. Raises Problem where gclint finds something in the whole program that it has not
    found in one of them."""
    program = written(plan, bench.setup, made(plan))
    known = [cut for cut in plan.cut if cut.confirmed]
    alike: dict[tuple[str, int | None], list[Finding]] = {}
    for finding in prover_of(plan, bench).whole(program):
        if not any(finding.rule in cut.risky for cut in known):
            says = "the program with these cuts does not pass gclint itself, so nothing is written"
            raise Problem(f"{says}: {said(finding)}: {finding.happens}")
        alike.setdefault((finding.rule, finding.tool), []).append(finding)
    return tuple(
        Accepted(
            rule, tool, "halt" if any(one.grade == "halt" for one in found) else "change",
            sum(one.count for one in found), f"{CONFIRMED} {listed([c.number for c in known if rule in c.risky])}",
        )
        for (rule, tool), found in alike.items()
    )  # fmt: skip


def confirmed(plan: Plan, numbers: set[int]) -> Plan:
    """The plan with these risky cuts, and no others, to be made."""
    return replace(plan, cut=tuple(
        replace(cut, confirmed=bool(cut.risky) and cut.number in numbers) for cut in plan.cut
    ))  # fmt: skip


def numbers_of(text: str, plan: Plan) -> set[int]:
    """The cuts that "3, 7-9", "all" or "none" names. Raises Problem for one that is not a risky cut of the plan."""
    risky = {cut.number for cut in plan.cut if cut.risky}
    word = text.strip().lower()
    if word in ("all", "none", ""):
        return risky if word == "all" else set()
    found: set[int] = set()
    for part in word.replace(",", " ").split():
        low, dash, high = part.partition("-")
        if not (low.isdigit() and (high.isdigit() if dash else True) and len(part) < 9):
            raise Problem(f'"{part[:20]}" is no cut; write numbers such as 3,7-9, or all, or none', "--confirm")
        found |= set(range(int(low), int(high or low) + 1))
    for number in sorted(found - risky):
        says = "is not risky, and is made anyway" if plan.cut_of(number) else "is none of the plan"
        raise Problem(f"cut {number} {says}; the risky ones are {_list(risky)}", "--confirm")
    return found


def _list(numbers: set[int]) -> str:
    return ", ".join(map(str, sorted(numbers))) or "none"


def unlearnable(plan: Plan) -> list[str]:
    """A sentence for each tool whose cuts in the program are too few or too alike for a window to be learned from them,
    with the risky cuts that would make up for it."""
    from gclint.trial.expected import expected

    least, said = expected().least, []
    for tool in plan.tool:
        cuts = [cut for cut in plan.cut if cut.tool == tool.number]
        there = [cut for cut in cuts if cut.confirmed or not cut.risky]
        feeds = {_chip(cut, tool.flutes or 1) for cut in there}
        if len(there) >= least.cuts and len(feeds) >= least.chips:
            continue
        left = [cut for cut in cuts if cut not in there]
        needs = f"{least.cuts} cuts at {least.chips} feeds per tooth are the least"
        text = f"tool {tool.number} makes {len(there)} cuts at {len(feeds)} feeds per tooth, and {needs} to learn from"
        enough = len(cuts) >= least.cuts and len({_chip(cut, tool.flutes or 1) for cut in cuts}) >= least.chips
        said.append(f"{text}; confirm some of {listed([cut.number for cut in left])}" if left and enough else
                    f"{text}; plan more cuts (--cuts) or wider feeds (--feed)")  # fmt: skip
    return said


def _chip(cut: Cut, flutes: int) -> int:
    """The feed per tooth in steps of a twentieth."""
    return round(math.log(float(cut.feed) / (float(cut.true_speed or cut.speed) * flutes)) / 0.05)


# --- the files beside the plan ----------------------------------------------------------------------------------------


def shop_from(bench: Bench, folder: Path) -> str:
    """The shop file as a declaration in `folder` names it."""
    if bench.shop is None:
        return SHOP_FILE
    return os.path.relpath(os.path.realpath(bench.shop), os.path.realpath(folder)).replace(os.sep, "/")


def prover_of(plan: Plan, bench: Bench) -> Prover:
    shop = SHOP_FILE if bench.shop is None else os.path.realpath(bench.shop)
    return Prover(plan, bench, job_text(plan, bench.card, shop), shop_text(bench) if bench.shop is None else "")


def job_text(plan: Plan, card: str, shop: str, accepted: tuple[Accepted, ...] = ()) -> str:
    """job.toml, so that `gclint check` judges the plan's program by the same declarations."""
    import tomlkit

    document = tomlkit.document()
    document.add(tomlkit.comment(f"For the test cuts of {plan.plan}."))
    document.add("program", tomlkit.item(plan.program))
    document.add("shop", tomlkit.item(shop))
    if card:
        document.add("material", tomlkit.item(card))
    document.add("z_zero", tomlkit.item("stock-top"))
    stock = tomlkit.table()
    stock.add("size", [f"{float(each):.6g} mm" for each in plan.coupon])
    stock.add("corner", [f"{float(each):.6g} mm" for each in plan.corner])
    document.add("stock", stock)
    return with_accepted(tomlkit.dumps(document), plan, accepted)


def with_accepted(text: str, plan: Plan, accepted: tuple[Accepted, ...]) -> str:
    """The text of job.toml with these acceptances in the place of those that were there for confirmed cuts.

    Raises Problem where it is no TOML.
    """
    import tomlkit
    from tomlkit.exceptions import TOMLKitError

    try:
        document = tomlkit.parse(text)
        before = document.get("accept", [])
        kept = [row for row in before if not str(row.get("because", "")).startswith(CONFIRMED)]
        if len(kept) == len(before) and not accepted:
            return text
        rows = tomlkit.aot()
        for row in kept:
            rows.append(row)
        for one in accepted:
            own = tomlkit.table()
            own["rule"], own["program"] = one.rule, plan.program
            if one.tool is not None:
                own["tool"] = one.tool
            own["grade"], own["places"], own["because"] = one.grade, one.places, one.because
            rows.append(own)
        document.pop("accept", None)
        if rows:
            document["accept"] = rows
        return tomlkit.dumps(document)
    except (TOMLKitError, ValueError, TypeError, AttributeError) as problem:
        raise Problem(f"the acceptances cannot be written into job.toml: {problem}") from None


def shop_text(bench: Bench) -> str:
    """A shop file that declares the tools, where there is none."""
    import tomlkit

    document = tomlkit.document()
    document.add(tomlkit.comment("The tools of the test cuts; machine, spindle and controller may be declared too."))
    rows = tomlkit.aot()
    for table in bench.tables.values():
        row = tomlkit.table()
        row.update(plain(table))
        rows.append(row)
    document.add("tool", rows)
    return tomlkit.dumps(document)


def _name(asked: Asked, today: datetime.date) -> str:
    told: Any = repr(asked).encode("utf-8", "replace")
    return f"{asked.material} {today.isoformat()} {hashlib.sha256(told).hexdigest()[:4]}"
