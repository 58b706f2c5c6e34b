"""Tells milling programs from files for other machines; refuses only what is surely something else."""

from __future__ import annotations

from gclint.program.table import Program


def refuse_other_kinds(program: Program) -> None:
    """Raise Problem where the content is that of a 3D printer, a laser, a lathe, or no program at all."""
