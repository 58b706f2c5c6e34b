"""What `gclint trial plan` says: the cuts in their order, what is risky and why, what was left out, what to do next."""

from __future__ import annotations

from pathlib import Path

from gclint.report.text.cautions import in_short, of_material
from gclint.report.text.text_sheet import TextSheet
from gclint.trial.levels import Levels
from gclint.trial.make import Made, unlearnable
from gclint.trial.plan import Cut, Plan, listed, risks
from gclint.trial.program import made


def table(told: Made, paper: TextSheet) -> None:
    """The whole plan before anything is written."""
    plan = told.plan
    repeats = sum(cut.repeat_of is not None for cut in plan.cut)
    paper.heading(f"TEST CUTS IN {plan.material}")
    said = f"{len(plan.cut)} cuts, {repeats} of them repeats, in the order of cutting"
    paper.text_block(f"{said}, which is by chance (seed {plan.seed}) where nothing else counts.")
    paper.blank()
    flutes = {tool.number: tool.flutes or 1 for tool in plan.tool}
    rows = [_row(cut, flutes[cut.tool], plan) for cut in plan.cut]
    titles = ("cut", "tool", "speed rev/min", "feed mm/min", "feed/tooth mm", "entry", "depth mm", "")
    paper.table(titles, rows)
    paper.blank()
    for levels in told.levels:
        paper.field("window", _window(levels))
    for note in told.notes:
        paper.field("note", note)
    risky = [cut for cut in plan.cut if cut.risky]
    if risky:
        paper.blank()
        paper.heading(f"RISKY ({len(risky)})")
        paper.text_block("gclint finds something of grade change or halt in these; a person must confirm them.")
        for reason, numbers in risks(risky):
            paper.bullet(f"{reason}: {numbers}")
    paper.cautions(in_short(of_material(told.bench.setup.material)))
    paper.blank()


def _row(cut: Cut, flutes: int, plan: Plan) -> tuple[str, ...]:
    true = float(cut.true_speed or cut.speed)
    speed = f"dial {cut.dial}: {true:.0f}" if cut.dial is not None else f"S{float(cut.speed):g}"
    marks = ["risky"] if cut.risky else []
    marks += [f"= {cut.repeat_of}"] if cut.repeat_of is not None else []
    return (
        str(cut.number), str(cut.tool), speed, f"{float(cut.feed):g}", f"{float(cut.feed) / true / flutes:.3f}",
        "ramp" if cut.entry == "ramp" else "straight", f"{float(cut.depth):g}", " ".join(marks),
    )  # fmt: skip


def _window(levels: Levels) -> str:
    low, high = levels.window
    tried = f"{levels.tool.called}: feeds per tooth from {levels.chip[0]:.3f} to {levels.chip[1]:.3f} mm are tried"
    if low is None and high is None:
        return f"{tried}; no card gives a window"
    ends = " to ".join(f"{end:.3g}" for end in (low, high) if end is not None)
    return f"{tried}; the window is {ends} mm" if low is not None else f"{tried}; the upper limit is {ends} mm"


def after(plan: Plan, folder: Path, paper: TextSheet) -> None:
    """What lies where, and what to do now."""
    left = [cut.number for cut in plan.cut if cut.risky and not cut.confirmed]
    paper.heading("WRITTEN")
    paper.field("program", f"{folder / plan.program}: {len(made(plan))} cuts, for the controller {plan.controller}")
    paper.field("sheet", f"{folder / 'sheet.html'}: print it, it has the map of the blank")
    paper.field("plan", f"{folder / 'plan.toml'}; grades go into grades.toml beside it")
    if left:
        paper.field("left out", f"{listed(left)}: risky and not confirmed. To have some of them made:")
        paper.text_block(f"gclint trial plan {folder} --confirm {left[0]}", 10)
    for said in unlearnable(plan):
        paper.field("too little", f"{said}.")
    paper.field("next", f"gclint check {folder / plan.program}, cut, look, then: gclint trial grade {folder}")
