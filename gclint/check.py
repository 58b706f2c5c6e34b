"""The whole way, from the bytes of a program to what was found: the one call behind files, standard input and tests."""

from __future__ import annotations

import hashlib
from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING

from gclint.callable_module import make_callable
from gclint.internal_fault import place_of
from gclint.problem import NotBuilt, Problem

if TYPE_CHECKING:
    from gclint.run import Run, Tables
    from gclint.setup.declare import Options
    from gclint.stock_store import StockStore
    from gclint.tables.finding import Checked, Extent, Finding, ToolRow
    from gclint.tables.setup_sheet import SetupSheet

OnProgress = Callable[[str], None]


class Unreadable(Problem):
    """The program itself cannot be read (other programs of the same run still can)."""


class NoProgram(Unreadable):
    """What was given is no milling program: an error where a person named it, passed over where a folder holds it."""


def check(data: bytes, name: str, options: Options, path: str | None = None) -> Checked:
    """Judge one program.

    `name` is shown to people; `path` is where the file lies, None for standard input (declarations are then looked
    for in the working folder). Raises Problem on bad declarations and Unreadable on a program that cannot be read; any
    other failure inside gclint becomes one finding, internal-error.
    """
    return run(data, name, options, path).checked


def run(
    data: bytes, name: str, options: Options, path: str | None = None, progress: OnProgress = lambda step: None,
    store: StockStore | None = None,
) -> Run:  # fmt: skip
    """As `check`, with the tables kept for writers; `told` hears the name of each step as it begins.

    `shelf` is where the stock between the programs of a job may lie already.
    """
    from gclint.run import Run

    fingerprint = "sha256:" + hashlib.sha256(data).hexdigest()
    tables: Tables | None = None
    try:
        tables = trace(data, name, options, path, progress, store)
        return _judged(tables, name, fingerprint, progress, folder_of(path))
    except Problem:
        raise
    except Exception as fault:  # the run goes on with the next program, and the exit code says so
        fail_at = tables.setup.fail_at if tables else "change"
        return Run(_broken(data, name, fingerprint, fault), tables, fail_at, failed=True)


def trace(
    data: bytes, name: str, options: Options, path: str | None = None, progress: OnProgress = lambda step: None,
    store: StockStore | None = None,
) -> Tables:  # fmt: skip
    """Every table from reading to loads, not judged."""
    from msgspec.structs import replace

    from gclint.cutting.load import load
    from gclint.earlier_programs import WHOLE, Earlier, earlier_of
    from gclint.motion.compensate import compensate
    from gclint.motion.feed_planning import plan_feed
    from gclint.motion.interpret import interpret
    from gclint.program import kind
    from gclint.program.read import read
    from gclint.run import Tables
    from gclint.setup.declare import declare
    from gclint.setup.order import declared_at, order_of
    from gclint.setup.resolve import limits_of, shop_setup, with_program
    from gclint.stock.engage import engage
    from gclint.threads import run_both

    declared = declare(options, path)
    order = order_of(declared)
    if order is not None:
        declared = declared_at(declared, order, order.at)
    progress("reading")
    try:
        program = read(data, name)
    except NotBuilt:
        raise
    except Problem as problem:
        unreadable = NoProgram if isinstance(problem, kind.NoProgram) else Unreadable
        raise unreadable(problem.says, problem.path, problem.line, problem.column) from None
    setup = shop_setup(declared)
    motion = interpret(program, setup.controller, limits_of(declared), folder_of(path))
    setup = with_program(setup, declared, program, motion)
    motion = compensate(motion, setup, program)
    progress("cutting the stock")
    earlier = Earlier(assumed=(WHOLE,)) if order is None else earlier_of(declared, order, motion, setup, store)
    setup = replace(setup, used=(*setup.used, *earlier.used)) if earlier.used else setup
    engagement, timing = run_both(
        lambda: engage(motion, setup, earlier.start), lambda: plan_feed(motion, setup), len(motion)
    )
    engagement = earlier.left(engagement, store)
    progress("working out the chips")
    cutting = load(motion, timing, engagement, setup)
    return Tables(program, motion, setup, timing, engagement, cutting)


def folder_of(path: str | None) -> Path | None:
    """The job's folder, where subprograms in files beside the program are looked for; none for standard input."""
    return Path(path).parent if path else None


def _judged(tables: Tables, name: str, fingerprint: str, progress: OnProgress, folder: Path | None) -> Run:
    from gclint.advice.words_at_fault import texts_of
    from gclint.digest import summary
    from gclint.digest.assumed_words import declared_by
    from gclint.judge.advice_proof import Case, with_proof
    from gclint.judge.judge import all_packs, judge
    from gclint.packs.mendable import marked
    from gclint.packs.wording import in_inches
    from gclint.report.text.cautions import of_material
    from gclint.run import Run
    from gclint.setup.signed import signatures
    from gclint.tables.finding import AssumedOut, Checked
    from gclint.threads import run_both

    progress("judging")
    packs = all_packs(tables.setup)
    judged, (rows, extent, paper) = run_both(
        lambda: judge(
            tables.program, tables.motion, tables.timing, tables.engagement, tables.cutting, tables.setup, packs
        ),
        lambda: _shown(tables),
        len(tables.motion),
    )
    progress("proving what it advises")
    t = tables
    judged = with_proof(
        judged, Case(t.program, t.motion, t.timing, t.engagement, t.cutting, t.setup, packs, folder)
    )
    taken = (
        *tables.motion.assumed, *tables.setup.assumed, *tables.timing.assumed, *tables.engagement.assumed,
        *tables.cutting.assumed, *judged.assumed,
    )
    findings, fault = judged.findings, paper if isinstance(paper, Exception) else None
    if fault is not None:  # the list for the machine is missing, loudly; what was found stands
        findings = (*findings, _internal("the list of what to do at the machine is left out; all else stands.", fault))
    units = summary.units(tables.motion)
    told_in = in_inches if units == "inch" else str
    checked = Checked(
        path=name,
        lines=tables.program.lines,
        findings=marked(findings, tables.setup),
        not_judged=judged.not_judged,
        assumed=tuple(AssumedOut(a.what, told_in(a.value), a.because, *declared_by(a)) for a in dict.fromkeys(taken)),
        tools=rows,
        extent_mm=extent,
        time_s=summary.total_time(tables.motion, tables.timing),
        units=units,
        fingerprint=fingerprint,
        texts=texts_of(tables.program, findings),
        paper=None if isinstance(paper, Exception) else paper,
        house=judged.house,
        used=tables.setup.used,
        signed=signatures(tables.setup, name, fingerprint),
        acceptances=judged.acceptances,
    )
    titles = {rule.name: rule.text.title for pack in packs for rule in pack.rules}
    failed = any(finding.rule == "internal-error" for finding in findings)
    house = tuple(rule.text for pack in packs if pack.path in tables.setup.packs for rule in pack.rules)
    return Run(checked, tables, tables.setup.fail_at, failed, titles, of_material(tables.setup.material), house)


def _shown(tables: Tables) -> tuple[tuple[ToolRow, ...], Extent, SetupSheet | Exception]:
    from functools import cache

    from msgspec.structs import replace

    from gclint.digest import summary
    from gclint.digest.margins import at_middle_mark, margins_of, marks_of
    from gclint.digest.setup_sheet import setup_sheet_of

    rows, extent = summary.tool_rows(tables), summary.extent(tables.motion)
    tools = summary.order_of_use(tables.motion)
    turned = cache(lambda: at_middle_mark(tables))  # worked out once for all tools, and only where a mark is open
    rows = tuple(
        replace(row, margins=margins_of(tables, tool), marks=marks_of(tables, tool, turned))
        for tool, row in zip(tools, rows)
    )
    try:
        return rows, extent, setup_sheet_of(tables, rows, extent)
    except Exception as fault:
        return rows, extent, fault


def _internal(so: str, fault: Exception) -> Finding:
    from gclint.tables.finding import Change, Finding, Found

    return Finding(
        rule="internal-error", grade="change", line=1, last_line=1, lines=(1,), worst_line=1, column=1, count=1,
        tool=None, found=Found("failure inside gclint", place_of(fault), ""), window=None,
        happens=f"gclint itself failed on this program, so {so}",
        change=Change("Nothing to change in the program: please report this, with the program and its fingerprint."),
    )


def _broken(data: bytes, name: str, fingerprint: str, fault: Exception) -> Checked:
    from gclint.tables.finding import Checked, Extent

    finding = _internal("nothing in it was judged.", fault)
    nowhere = (None, None, None)
    return Checked(
        path=name, lines=data.count(b"\n") + 1, findings=(finding,), not_judged=(), assumed=(), tools=(),
        extent_mm=Extent(min=nowhere, max=nowhere), time_s=None, units="unstated", fingerprint=fingerprint,
    )


make_callable(__name__)  # gclint.check("tide-ring.nc"): see gclint/library.py
