"""What `gclint shop check` and `gclint job check` share: declarations resolved as for a program that says nothing."""

from __future__ import annotations

import sys
from pathlib import Path
from typing import TYPE_CHECKING

from gclint.problem import Problem

if TYPE_CHECKING:
    from gclint.setup.declare import Options

NO_PROGRAM = b"G21 G90\n"


def say_setup(options: Options, file: str, whole_job: bool) -> int:
    """Print what is declared. Raises Problem with file, line and column where something is wrong."""
    from gclint.cli.output import deliver
    from gclint.motion.interpret import interpret
    from gclint.program.read import read
    from gclint.report.paper import paper_for
    from gclint.report.setup_out import setup_sheet
    from gclint.setup.declare import declare
    from gclint.setup.resolve import controller_of, resolve

    declared = declare(options, None)
    for program in declared.programs:
        if not Path(program).is_file():
            says = f'there is no program "{program}"'
            raise declared.job_file.wrong(("program",), says) if declared.job_file else Problem(says, file)
    nothing = read(NO_PROGRAM, file)
    setup = resolve(declared, nothing, interpret(nothing, controller_of(declared)))
    paper = paper_for(sys.stdout)
    setup_sheet(setup, file, paper, whole_job)
    deliver(paper.text, None)
    return 0
