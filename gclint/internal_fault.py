"""Faults of gclint's own: where they happened, in words, so that they cost what failed and nothing else."""

from __future__ import annotations

REPORT = "please report this"


def place_of(fault: Exception) -> str:
    """Say where: 'gclint/stock/engage.py line 91: IndexError: ...', the deepest place of our own."""
    place = ""
    trail = fault.__traceback__
    while trail is not None:
        file = trail.tb_frame.f_code.co_filename.replace("\\", "/")
        if "gclint/" in file:
            place = f"gclint/{file.rpartition('gclint/')[2]} line {trail.tb_lineno}: "
        trail = trail.tb_next
    return " ".join(f"{place}{type(fault).__name__}: {fault}"[:300].split())


def left_out(what: str, fault: Exception) -> str:
    """Say in one line what a report lacks and why; all else in it stands."""
    so = f"gclint itself failed on {what}, which is left out here; what was found stands"
    return f"{so} ({place_of(fault)}; {REPORT})."
