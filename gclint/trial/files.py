"""The files of a plan in their folder: written once, whole, and never over anything else."""

from __future__ import annotations

from pathlib import Path

from gclint.atomic_file import write_unchanged
from gclint.problem import Problem, reason
from gclint.toml.file import read_text
from gclint.toml.named import declaration
from gclint.trial.asked import SHOP_FILE, Bench, bench_again
from gclint.trial.grading import PLAN_FILE
from gclint.trial.grading_sheet import sheet
from gclint.trial.make import job_text, proved_again, shop_from, shop_text, with_accepted
from gclint.trial.plan import Plan
from gclint.trial.plan_file import GRADES_FILE, grades_text, plan_text, with_confirmed
from gclint.trial.program import made, written

JOB_FILE = "job.toml"
SHEET_FILE = "sheet.html"


class Files:
    """The plan last: where it lies, all the others do."""

    def __init__(self, folder: Path, program: str) -> None:
        self.folder, self.program = folder, program

    def refuse_existing(self) -> None:
        """Raises Problem where one of the files is there already, or the folder cannot be made."""
        if self.folder.exists() and not self.folder.is_dir():
            raise Problem("this is not a folder", str(self.folder))
        if not self.folder.parent.is_dir():
            raise Problem("it lies in a folder that does not exist", str(self.folder))
        for name in (PLAN_FILE, self.program, SHEET_FILE, GRADES_FILE, JOB_FILE):
            if (self.folder / name).exists():
                says = "this file is there already, and nothing is written over it; plan into another folder"
                raise Problem(says, str(self.folder / name))

    def write(self, plan: Plan, bench: Bench) -> None:
        self.refuse_existing()
        accepted = proved_again(plan, bench)
        try:
            self.folder.mkdir(exist_ok=True)
        except OSError as problem:
            raise Problem(f"cannot be made: {reason(problem)}", str(self.folder)) from None
        texts = {self.program: written(plan, bench.setup, made(plan)).text, SHEET_FILE: sheet(plan, bench.setup)}
        job = job_text(plan, bench.card, shop_from(bench, self.folder), accepted)
        texts |= {GRADES_FILE: grades_text(plan), JOB_FILE: job}
        if bench.shop is None:
            texts[SHOP_FILE] = shop_text(bench)
        for name, text in {**texts, PLAN_FILE: plan_text(plan)}.items():
            write_unchanged(text.encode("utf-8"), self.folder / name, None)

    def write_again(self, before: Plan, plan: Plan) -> None:
        """Program, sheet and plan with other cuts confirmed. Raises Problem where program or sheet is not as gclint
        wrote it; what a person has added to the plan stays."""
        if before.shape is None or before.shop is None:
            raise Problem("this plan does not say how its program was made", str(self.folder / PLAN_FILE))
        bench = bench_again(before.like or before.material, before.tool, declaration(self.folder, before.shop))
        old = {self.program: written(before, bench.setup, made(before)).text, SHEET_FILE: sheet(before, bench.setup)}
        new = {self.program: written(plan, bench.setup, made(plan)).text, SHEET_FILE: sheet(plan, bench.setup)}
        there: dict[str, bytes] = {}
        for name, text in old.items():
            path = self.folder / name
            there[name] = path.read_bytes() if path.is_file() else b""
            if there[name] not in (text.encode("utf-8"), new[name].encode("utf-8")):  # new: an earlier try broke off
                says = "this file is not as gclint trial plan wrote it (it, the plan or the shop file was changed)"
                raise Problem(f"{says}; it stays as it is; plan into another folder", str(path))
        planned = self.folder / PLAN_FILE
        before_bytes = planned.read_bytes()
        accepted = proved_again(plan, bench)
        job = self.folder / JOB_FILE
        if job.is_file():  # where somebody has taken it away, it is not needed
            there[JOB_FILE] = job.read_bytes()
            new[JOB_FILE] = with_accepted(read_text(job, "job file"), plan, accepted)
        for name, text in new.items():
            write_unchanged(text.encode("utf-8"), self.folder / name, there[name])
        text = with_confirmed(before_bytes.decode("utf-8-sig").replace("\r\n", "\n"), plan)
        write_unchanged(text.encode("utf-8"), planned, before_bytes)
