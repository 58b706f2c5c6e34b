"""How each fault depends on the cut: one regression for each, on the same columns."""

from __future__ import annotations

import math
import zlib

import numpy as np
from msgspec import Struct
from msgspec.structs import replace

from gclint.columns import Column
from gclint.trial.expected import Normal, expected
from gclint.trial.fit import Draws, fit
from gclint.trial.plan import FAULTS
from gclint.trial.scales import scales
from gclint.trial.seen import Seen, Trial

FAR = 50.0  # logits: a chance of nothing
SAME_DEPTH = 0.02  # depths nearer than this share are one


class Columns(Struct, frozen=True):
    """What cuts are told apart by. chip, edge and depth are binary logarithms over the middle of what was cut; the
    others are 1 where they hold: "straight", "tool 3" (against the first tool), "batch B" (against the first). Behind
    them stands a column for each of `tones`: 1 at that tool's edge speed, falling to 0 at the next that it cut at."""

    names: tuple[str, ...]
    chip: float  # mm, the middle
    edge: float  # m/min
    depth: float  # mm
    tones: tuple[tuple[int, float], ...] = ()  # (tool, m/min)

    def place(self, name: str) -> int | None:
        return self.names.index(name) if name in self.names else None

    def rows(self, fz: Column, edge: Column, tool: Column, straight: Column, depth: Column, batch: Column) -> Column:
        """One row of covariates for each cut."""
        known = {"chip": np.log2(fz / self.chip), "edge": np.log2(edge / self.edge),
                 "depth": np.log2(depth / self.depth), "straight": straight.astype(float)}  # fmt: skip
        made = []
        for name in self.names:
            if name in known:
                made.append(known[name])
            elif name.startswith("tool "):
                made.append((tool == int(name[5:])).astype(float))
            else:
                made.append((batch == name[6:]).astype(float))
        made += self._tones(edge, tool)
        return np.column_stack(made) if made else np.zeros((len(fz), 0))

    def _tones(self, edge: Column, tool: Column) -> list[Column]:
        made = []
        for number, _ in dict.fromkeys((number, 0) for number, _ in self.tones):
            knots = np.log2([at for other, at in self.tones if other == number])
            own = tool == number
            made += [own * np.interp(np.log2(edge), knots, row) for row in np.eye(len(knots))]
        return made

    def of(self, cuts: tuple[Seen, ...]) -> Column:
        return self.rows(*(np.array(values) for values in (
            [c.fz for c in cuts], [c.edge for c in cuts], [c.tool for c in cuts],
            [c.entry == "straight" for c in cuts], [c.depth for c in cuts], [c.batch for c in cuts],
        )))  # fmt: skip


class Fitted(Struct, frozen=True):
    """All that was learned of one fault."""

    fault: str
    word: int  # place of the first word that spoils a cut
    cuts: int  # graded for it
    spoilt: int  # of those
    draws: Draws | None  # None: too few graded, or the best word every time
    enough: bool = True  # graded

    def margin(self, x: Column) -> Column:
        """(draw, cut) logits under the limit, FAR where the fault was never seen or is not known."""
        known = expected()
        if self.draws is None:
            return np.full((known.draws, len(x)), FAR)
        return self.draws.margin(x, self.word, known.chance)


def columns_of(trial: Trial) -> Columns:
    """The columns in which the graded cuts differ."""
    cuts = trial.cuts
    fz, edge, depth = (np.array([getattr(c, key) for c in cuts]) for key in ("fz", "edge", "depth"))
    names = ["chip"] if differ(fz) else []
    names += ["edge"] if differ(edge) and len({(round(c.speed), c.tool) for c in cuts}) > len({c.tool for c in cuts}) \
        else []
    names += ["depth"] if differ(depth) else []
    names += ["straight"] if len({c.entry for c in cuts}) > 1 else []
    names += [f"tool {number}" for number in sorted({c.tool for c in cuts})[1:]]
    names += [f"batch {batch}" for batch in sorted({c.batch for c in cuts})[1:]]
    chip, speed, deep = (float(math.exp(np.log(each).mean())) for each in (fz, edge, depth))
    return Columns(tuple(names), chip, speed, deep, _tones_of(cuts))


def _tones_of(cuts: tuple[Seen, ...]) -> tuple[tuple[int, float], ...]:
    """(tool, edge speed) of each speed that a tool cut at, where it cut at more than one."""
    made: list[tuple[int, float]] = []
    for number in sorted({cut.tool for cut in cuts}):
        speeds: list[float] = []
        for edge in sorted(cut.edge for cut in cuts if cut.tool == number):
            if not speeds or edge > speeds[-1] * (1 + SAME_DEPTH):
                speeds.append(edge)
        made += [(number, edge) for edge in speeds] if len(speeds) > 1 else []
    return tuple(made)


def differ(values: Column) -> bool:
    return len(values) > 0 and float(values.max()) > float(values.min()) * (1 + SAME_DEPTH)


def fit_all(trial: Trial, columns: Columns) -> dict[str, Fitted]:
    """A regression for each fault that was graded."""
    made = {}
    for fault in FAULTS:
        cuts = tuple(cut for cut in trial.cuts if fault in cut.level)
        made[fault] = _fitted(fault, cuts, columns)
    return made


def _fitted(fault: str, cuts: tuple[Seen, ...], columns: Columns) -> Fitted:
    known, scale = expected(), scales()[fault]
    levels = np.array([cut.level[fault] for cut in cuts], dtype=int)
    word = scale.index(known.fault[fault].from_)
    spoilt = int((levels >= word).sum())
    enough = len(cuts) >= known.least.cuts
    if not enough or not levels.any():
        return Fitted(fault, word, len(cuts), spoilt, None, enough)
    priors = tuple(_prior(fault, name) for name in columns.names)
    x, tones = columns.of(cuts), len(columns.tones)
    if known.fault[fault].at_speeds:
        priors += (known.prior.speed,) * tones
    else:
        x = x[:, : len(columns.names)]
    seed = zlib.crc32(fault.encode())  # its own, so that faults are not drawn alike
    draws = fit(levels, x, len(scale.words), priors, known.prior.first_step, known.prior.next_step, known.draws, seed,
                known.slip)  # fmt: skip
    if not known.fault[fault].at_speeds:
        draws = replace(draws, slope=np.pad(draws.slope, ((0, 0), (0, tones))))
    return Fitted(fault, word, len(cuts), spoilt, draws)


def _prior(fault: str, name: str) -> Normal:
    known = expected()
    own: Normal | None = getattr(known.fault[fault], name, None)
    if own is not None:
        return own
    general: Normal = getattr(known.prior, name.split(" ")[0])
    return general
