"""What would have to be declared so that a thing need not be taken as given, and what that lets be judged."""

from __future__ import annotations

from gclint.tables.setup import Assumed

_BLANK = "`[stock]` in job.toml or --stock", "the table, the underside, loose parts and cuts beside the blank"
_TOOL = "`[[tool]]` in shop.toml or --tool", "its cuts as facts, its bending and its reach"
# By the beginning of what is taken; the first that fits counts.
_DECLARED_BY: tuple[tuple[str, tuple[str, str]], ...] = (
    ("stock top", _BLANK),
    ("stock in ", _BLANK),
    ("the blank's corner", ("`corner` of the flip in job.toml", "where cuts lie on the turned blank")),
    ("the blank's edge", _BLANK),
    ("the blank", ("`program` or `after` in job.toml", "cuts on what earlier programs have left")),
    ("Z zero", ("`z_zero` in job.toml", "depths as facts")),
    ("reached feed", ("`[machine] acceleration` in shop.toml", "feeds that are never reached, and the time")),
    ("acceleration of ", ("`[machine] acceleration` in shop.toml", "feeds that are never reached, and the time")),
    ("corner deviation", ("`[machine] corner_deviation` in shop.toml", "the feed that is left in corners")),
    ("dial mark ", ("`measured` of that mark in shop.toml", "chips at the speed that is really turned")),
    ("true speed", ("`[spindle]` in shop.toml", "chips at the speed that is really turned")),
    ("power of the spindle", ("`[spindle] power_curve` in shop.toml", "power at each speed")),
    ("stiffness of the machine", ("`[machine] stiffness` in shop.toml", "how far machine and tool give way together")),
    ("tool in the spindle", ("`tool` in job.toml", "its cuts as facts")),
    ("cutter compensation", ("`diameter_offsets` in shop.toml", "the contour as a fact")),
    ("D", ("`diameter_offsets` in shop.toml", "the contour as a fact")),
    ("tool changes", ("`[machine] controller` in shop.toml", "what T does without M6")),
    ("the tool", _TOOL),
    ("tool ", _TOOL),
)


def declared_by(taken: Assumed) -> tuple[str, str]:
    """('`z_zero` in job.toml', what it lets be judged); ('', '') where the program, not a declaration, would say it."""
    if "point angle" in taken.value:
        return "`angle` of the tool in shop.toml", "the depth of holes"
    if "says so" in taken.because and taken.what == "tool in the spindle":
        return "", ""  # a declaration has said it already
    return next((by for begin, by in _DECLARED_BY if taken.what.startswith(begin)), ("", ""))
