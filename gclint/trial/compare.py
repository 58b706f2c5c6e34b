"""Two tools, two entries or two batches under the same plan: which is better at which fault, and how surely."""

from __future__ import annotations

import numpy as np
from msgspec import Struct

from gclint.problem import Problem, nearest
from gclint.trial.expected import expected
from gclint.trial.fitted import Fitted
from gclint.trial.learn import Lesson, main_entry, too_little
from gclint.trial.seen import Seen

BY = ("tool", "entry", "batch")


class Side(Struct, frozen=True):
    """One of the two: how it is called and how many of its cuts were graded."""

    called: str
    cuts: int


class Better(Struct, frozen=True):
    """One fault. `second_better`: the chance that the second has less of it; shares of spoilt cuts, reckoned over
    the same cuts made with each: the middle, and the stated interval."""

    fault: str
    second_better: float | None  # None: too few graded, or the fault was never seen
    first: float
    second: float
    first_interval: tuple[float, float]
    second_interval: tuple[float, float]


class Comparison(Struct, frozen=True):
    by: str
    first: Side
    second: Side
    faults: tuple[Better, ...]


def kinds(lesson: Lesson, by: str) -> list[str]:
    """The different tools, entries or batches that were cut, in order."""
    cuts = lesson.trial.cuts
    if by == "tool":
        return [str(number) for number in sorted({cut.tool for cut in cuts})]
    values = {cut.entry if by == "entry" else cut.batch for cut in cuts}
    return sorted(values)


def what_differs(lesson: Lesson) -> str:
    """What two of were cut. Raises Problem where nothing or more than one thing comes in twos."""
    twos = [by for by in BY if len(kinds(lesson, by)) > 1]
    if len(twos) == 1:
        return twos[0]
    if not twos:
        raise Problem("these cuts were made with one tool, one entry and in one batch: there is nothing to compare")
    raise Problem(f"these cuts differ in {' and in '.join(twos)}; say which to compare: --by {twos[0]}")


def compare(lesson: Lesson, by: str, pair: tuple[str, str] | None = None) -> Comparison:
    """Raises Problem where there are no two, or too few cuts of one."""
    there = kinds(lesson, by)
    if pair is None:
        if len(there) != 2:
            says = f"there are {len(there)} kinds of {by} here ({', '.join(map(_called, there))})"
            raise Problem(f"{says}; say which two: --between ONE TWO" if len(there) > 2 else f"{says}, not two")
        pair = (there[0], there[1])
    for one in pair:
        if one not in there:
            raise Problem(f'no cut was made with the {by} "{one[:40]}"{nearest(one, there)}')
    if pair[0] == pair[1]:
        raise Problem(f"the two to compare are the same {by}")
    own = [tuple(cut for cut in lesson.trial.cuts if _kind(cut, by) == one) for one in pair]
    for one, cuts in zip(pair, own):
        if len(cuts) * 2 < expected().least.cuts or too_little(lesson.trial.cuts):
            half = (expected().least.cuts + 1) // 2
            raise Problem(f"only {len(cuts)} cuts of {by} {_called(one)} are graded; {half} are the least to compare")
    faults = tuple(_better(lesson, one, by, pair) for one in lesson.fitted.values())
    return Comparison(by, Side(_called(pair[0]), len(own[0])), Side(_called(pair[1]), len(own[1])), faults)


def _called(kind: str) -> str:
    return kind or "no name"


def _kind(cut: Seen, by: str) -> str:
    return str(cut.tool) if by == "tool" else cut.entry if by == "entry" else cut.batch


def _better(lesson: Lesson, one: Fitted, by: str, pair: tuple[str, str]) -> Better:
    """Every cut that was made, as if made with the first, and with the second."""
    if one.draws is None:
        return Better(one.fault, None, 0.0, 0.0, (0.0, 0.0), (0.0, 0.0))
    shares = []
    for kind in pair:
        cuts = tuple(_as(cut, by, kind) for cut in lesson.trial.cuts)
        if by != "entry":  # a plunge would hide what tools or batches do
            ramps = tuple(cut for cut in cuts if cut.entry == main_entry(lesson.trial.cuts))
            cuts = ramps or cuts
        shares.append(one.draws.share(lesson.columns.of(cuts), one.word).mean(axis=1))
    tail = (1 - expected().interval) / 2
    (a, first, b), (c, second, d) = (np.quantile(share, (tail, 0.5, 1 - tail)).tolist() for share in shares)
    return Better(one.fault, float((shares[1] < shares[0]).mean()), first, second, (a, b), (c, d))


def _as(cut: Seen, by: str, kind: str) -> Seen:
    from msgspec.structs import replace

    return replace(cut, **{by: int(kind) if by == "tool" else kind})
