"""What was learned from test cuts as JSON, and its schema; `python -m gclint.trial.learn_json` writes the schema."""

from __future__ import annotations

import datetime

import msgspec

from gclint import __version__
from gclint.clean_text import json_text
from gclint.digest.words import Lengths
from gclint.json_schema import schema_of, write
from gclint.trial import learn_words as words
from gclint.trial.into_shop import writable
from gclint.trial.learn import Lesson, Limit, Range, ToolWindow
from gclint.trial.near import spoils
from gclint.trial.next_cuts import next_cuts
from gclint.trial.plan import FAULTS
from gclint.trial.seen import Seen

SCHEMA_NAME = "learn.schema.json"


class LimitOut(msgspec.Struct, frozen=True):
    """An end; `found`: it surely lies within what was cut. `fault` sets it; "" where there is hardly a sign of one."""

    value: float
    low: float  # of the interval
    high: float
    found: bool
    sure: float  # share of the draws in which it lies within what was cut
    fault: str


class RangeOut(msgspec.Struct, frozen=True):
    low: LimitOut
    high: LimitOut
    cut_from: float  # ends of what was cut
    cut_to: float


class NearOut(msgspec.Struct, frozen=True):
    """A graded cut; `spoilt_by` is "" where it was good."""

    plan: str
    cut: int
    entry: str
    speed_rpm: float
    feed_mm_min: float
    chip_mm: float
    spoilt_by: str


class PairOut(msgspec.Struct, frozen=True):
    """Where the limits of the chip are stated for; one to use only where `use` is true.

    `why_not`: "all-spoilt", "near-spoilt", "unlikely" or "". `inside`: share of the draws in which the pair is in the
    window; `no_fault`: chance that no graded fault spoils a cut there. `near`: cuts at this speed and near this chip.
    """

    use: bool
    why_not: str
    says: list[str]
    dial: str | None
    speed_rpm: float
    feed_mm_min: float
    chip_mm: float
    edge_speed_m_min: float
    inside: float
    no_fault: float
    near: list[NearOut]


class NextOut(msgspec.Struct, frozen=True):
    """A cut to make next, and why; `narrows`: share by which the limits' variances shrink."""

    dial: str | None
    speed_rpm: float
    feed_mm_min: float
    chip_mm: float
    entry: str
    depth_mm: float
    beyond: bool
    narrows: float
    why: str


class ToolOut(msgspec.Struct, frozen=True):
    """A tool; `pair`, `chip_mm` and `edge_m_min` are null where too little was graded: `missing` says what.

    `faults_not_known`: too few cuts are graded for them, and nothing here holds for them. `written`: `--write` would
    write this window into the shop file.
    """

    number: int
    called: str
    cuts: int
    spoilt: int | None
    entry: str | None
    depth_mm: float | None
    pair: PairOut | None
    chip_mm: RangeOut | None
    edge_m_min: RangeOut | None
    faults_not_known: list[str]
    missing: list[str]
    next: list[NextOut]
    written: bool


class FaultOut(msgspec.Struct, frozen=True):
    """How a fault was graded; `says`: what makes it likelier."""

    fault: str
    graded: int
    spoilt: int
    says: str


class LearnOut(msgspec.Struct, frozen=True):
    """What graded test cuts teach."""

    version: str
    material: str
    plans: list[str]
    batches: list[str]
    graded: int
    planned: int
    last_graded: datetime.date | None
    interval: float  # share that the intervals hold
    tools: list[ToolOut]
    faults: list[FaultOut]
    does_not_agree: list[str]
    entries: list[str]
    assumed: list[str]
    cautions: list[str]


def learn_out(lesson: Lesson) -> LearnOut:
    """Collect all that the screen says, in mm, m/min, mm/min and rev/min."""
    from gclint.report.text.cautions import in_short
    from gclint.trial.expected import expected

    trial = lesson.trial
    written = {window.tool for window in writable(lesson)[0]}
    said = dict(words.cause_words(lesson))
    return LearnOut(
        __version__, trial.material, list(trial.plans), sorted({cut.batch for cut in trial.cuts} - {""}),
        len(trial.cuts), trial.planned, lesson.date, expected().interval,
        [_tool(lesson, number, number in written) for number in trial.tools],
        [FaultOut(fault, one.cuts, one.spoilt, said[words.NAMES[fault]]) for fault, one in lesson.fitted.items()],
        words.check_words(lesson), words.entry_words(lesson) if lesson.windows else [], list(trial.assumed),
        list(in_short(trial.cautions)),
    )  # fmt: skip


def learn_json(lesson: Lesson) -> str:
    """Give the JSON text."""
    return json_text(msgspec.json.encode(learn_out(lesson)))


def _tool(lesson: Lesson, number: int, written: bool) -> ToolOut:
    lengths = Lengths(False)
    window = lesson.windows.get(number)
    cuts = sum(cut.tool == number for cut in lesson.trial.cuts)
    called = words.tool_words(lesson.trial.tools[number], lengths)
    missing = words.missing_words(lesson, number)
    if window is None:
        return ToolOut(number, called, cuts, None, None, None, None, None, None, list(FAULTS), missing, [], False)
    chip = _range(window.fz)
    edge = None if window.edge is None else _range(window.edge)
    return ToolOut(
        number, called, cuts, window.spoilt, window.entry, window.depth, _pair(window, lengths), chip, edge,
        list(window.not_known), missing,
        [NextOut(one.dial, one.speed, one.feed, one.fz, one.entry, one.depth, one.beyond, one.narrows, one.why)
         for one in next_cuts(lesson, number)],
        written,
    )  # fmt: skip


def _pair(window: ToolWindow, lengths: Lengths) -> PairOut:
    says = [words.odds_words(window), words.only_words(window, lengths)] if window.use else \
        [words.none_words(window, lengths), words.change_words(window)]  # fmt: skip
    return PairOut(
        window.use, window.why_not, says, window.pair_dial, window.pair_speed, window.pair_feed, window.pair_fz,
        window.pair_edge, window.inside, window.pair_good, [_near(cut, window.entry) for cut in window.near],
    )  # fmt: skip


def _near(cut: Seen, entry: str) -> NearOut:
    return NearOut(cut.plan, cut.number, cut.entry, cut.speed, cut.feed, cut.fz, spoils(cut, entry))


def _range(one: Range) -> RangeOut:
    return RangeOut(_limit(one.low), _limit(one.high), *one.ends)


def _limit(one: Limit) -> LimitOut:
    return LimitOut(one.value, one.low, one.high, one.found, one.sure, one.fault)


def schema() -> dict[str, object]:
    """Make the JSON Schema of `gclint trial learn --as json`."""
    return schema_of(LearnOut, "what test cuts teach, as gclint trial learn --as json says it")


if __name__ == "__main__":
    write({SCHEMA_NAME: schema()}, __file__)
