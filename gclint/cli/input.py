"""Finds the programs a command names."""

from __future__ import annotations

from typing import TYPE_CHECKING

from gclint.problem import Problem

if TYPE_CHECKING:
    from gclint.setup.declare import Options


def declared_programs(options: Options) -> tuple[str, ...]:
    """The programs of the job file that --job names. Raises Problem where there are none."""
    from gclint.setup.declare import declare

    programs = declare(options, None).programs if options.job else ()
    if not programs:
        raise Problem("name a program, a folder of programs, - for standard input, or a --job that names programs")
    return programs
