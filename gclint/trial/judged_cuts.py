"""What gclint itself finds in test cuts: each cut alone, then the whole program; and whether the feeds are reached."""

from __future__ import annotations

import tempfile
from functools import cache
from pathlib import Path
from typing import TYPE_CHECKING

import numpy as np
from msgspec import Struct

from gclint.problem import Problem
from gclint.trial.asked import Bench
from gclint.trial.layout_numbers import plan_number
from gclint.trial.plan import Cut, Plan
from gclint.trial.program import Written, written

if TYPE_CHECKING:
    from gclint.run import Run
    from gclint.tables.finding import Finding

SERIOUS = ("halt", "change")
FRAME = ("collisions", "program", "core")  # packs


class Proof(Struct, frozen=True):
    """Of one cut: why it is risky ("" where nothing of grade change or above was found), whether that is a halt, how
    many findings there are to consider, and the share of the set feed that its graded part runs at."""

    risky: str
    halt: bool
    minor: int
    reached: float


class Prover:
    """Checks programs of a plan with the very job file that will lie beside them."""

    def __init__(self, plan: Plan, bench: Bench, job: str, shop: str) -> None:
        self.plan, self.bench, self.job, self.shop = plan, bench, job, shop

    def cut(self, cut: Cut) -> Proof:
        program = written(self.plan, self.bench.setup, (cut,))
        run = self._run(program.text)
        found = _serious(run)
        return Proof(
            "; ".join(dict.fromkeys(said(finding) for finding in found)),
            any(finding.grade == "halt" for finding in found),
            sum(finding.grade == "consider" for finding in run.checked.findings),
            _reached(run, program, cut),
        )

    def whole(self, program: Written) -> list[Finding]:
        """Everything of grade change or above in the whole program."""
        return _serious(self._run(program.text))

    def _run(self, text: str) -> Run:
        from gclint.check import run
        from gclint.setup.declare import Options

        with tempfile.TemporaryDirectory(prefix="gclint-") as name:
            folder = Path(name)
            path = folder / self.plan.program
            for file, holds in (("job.toml", self.job), ("shop.toml", self.shop), (path.name, text)):
                if holds:
                    (folder / file).write_text(holds, encoding="utf-8")
            made = run(text.encode("ascii"), path.name, Options(job=str(folder / "job.toml")), str(path))
        if made.failed:
            raise Problem(f"gclint itself failed on a test cut: {made.checked.findings[0].happens}")
        return made


@cache
def _frame() -> frozenset[str]:
    """Rules of what no test cut looks for: a program or a machine that cannot make any cut."""
    from gclint.packs.shipped_packs import shipped_packs

    return frozenset(rule.name for pack in shipped_packs() if pack.name in FRAME for rule in pack.rules)


def _serious(run: Run) -> list[Finding]:
    """What is found of grade change or above. Raises Problem for what is no risk of a cut."""
    found = [finding for finding in run.checked.findings if finding.grade in SERIOUS and not finding.accepted]
    for finding in found:
        if finding.rule in _frame():
            raise Problem(f"these cuts cannot be made here: {said(finding)}: {finding.happens}")
    return found


def said(finding: Finding) -> str:
    """'straight-plunge (depth of solid material 1.2 mm)': rule, what was found, and its limits."""
    found = finding.found
    if found is None or found.value is None:
        return finding.rule
    value = f"{found.value:.3g}" if isinstance(found.value, float) else str(found.value)
    text = f"{found.name} {value} {found.unit}".rstrip()
    window = finding.window
    if window is not None:
        ends = [f"from {window.low:.3g}"] if window.low is not None else []
        ends += [f"to {window.high:.3g}"] if window.high else []
        good = f"good {' '.join(ends)} {window.unit}".rstrip() if ends else "none is good"
        text += f", {good}" if ends or window.high == 0 else ""
    return f"{finding.rule} ({text})"


def _reached(run: Run, program: Written, cut: Cut) -> float:
    assert run.tables is not None
    motion, timing = run.tables.motion, run.tables.timing
    rows = np.isin(np.asarray(motion.line), program.graded[cut.number])
    return float(np.nanmin(np.asarray(timing.reached)[rows] / float(cut.feed))) if rows.any() else 0.0


def runs(share: float) -> bool:
    """Whether that share of the set feed counts as the set feed."""
    return share >= plan_number("same_feed")

