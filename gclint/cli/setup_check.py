"""What `gclint shop check` and `gclint job check` share: declarations resolved without a program."""

from __future__ import annotations

import sys
from pathlib import Path
from typing import TYPE_CHECKING

from gclint.problem import Problem

if TYPE_CHECKING:
    from gclint.setup.declare import Declared, Options


def say_setup(options: Options, file: str, whole_job: bool) -> int:
    """Print what is declared. Raises Problem with file, line and column where something is wrong."""
    from gclint.cli.output import deliver
    from gclint.report.answers.setup_out import setup_sheet
    from gclint.report.text.text_sheet import text_sheet_for
    from gclint.setup.declare import declare
    from gclint.setup.resolve import shop_setup

    declared = declare(options, None)
    for program in declared.programs:
        if not Path(program).is_file():
            says = f'there is no program "{program}"'
            raise declared.job_file.wrong(("program",), says) if declared.job_file else Problem(says, file)
    if whole_job:
        check_acceptances(declared)
    setup = shop_setup(declared)
    paper = text_sheet_for(sys.stdout)
    setup_sheet(setup, file, paper, whole_job, declared.job.accept if declared.job and whole_job else ())
    deliver(paper.text, None)
    return 0


def check_acceptances(declared: Declared) -> None:
    """Raises Problem for an acceptance whose rule, program or reason is not there, at its place in the job file."""
    from gclint.judge.judge import pack_rules
    from gclint.problem import nearest

    job, file = declared.job, declared.job_file
    if job is None or file is None or not job.accept:
        return
    names = pack_rules(declared.packs)
    folder = Path(file.path).parent
    for n, accept in enumerate(job.accept):
        if accept.rule not in names:
            says = f'there is no rule "{accept.rule}"{nearest(accept.rule, names)}'
            raise file.wrong(("accept", n, "rule"), says)
        if not accept.because.strip():
            raise file.wrong(("accept", n, "because"), "an acceptance needs its reason")
        if accept.program is not None and not ("\0" not in accept.program and (folder / accept.program).is_file()):
            raise file.wrong(("accept", n, "program"), f'there is no program "{accept.program}"')
