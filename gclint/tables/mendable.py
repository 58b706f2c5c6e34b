"""Which findings `gclint mend` can answer, by rule; known without loading a mender."""

from __future__ import annotations

from collections.abc import Iterable

from msgspec.structs import replace

from gclint.tables.finding import Finding
from gclint.tables.setup import Setup

# mender (a file of gclint/mend) -> the rules it answers
MENDERS: dict[str, tuple[str, ...]] = {
    "comments": ("comment-leftover",),
    "modes_missing": ("state-unstated", "units-unstated"),
    "dwell_unit": ("dwell-unit-suspect",),
    "dial": ("speed-not-on-dial", "dial-change-without-stop"),
    "of_advice": (
        "chip-too-thin", "chip-too-thick", "edge-too-fast", "edge-too-slow", "plunge-too-fast",
        "opening-slot-too-fast", "feed-never-reached", "feed-unit-suspect", "tool-bends", "tool-breaks",
        "spindle-stalls", "feed-over-machine",
    ),
    "stops": ("tool-change-without-stop",),
    "spindle": ("no-spin-up-time", "spindle-not-running"),
    "lift": ("first-move-low", "travel-too-low", "end-move-low", "rapid-through-stock"),
    "home": ("home-unknown",),
    "laps": ("too-deep", "full-width-too-deep", "tool-bends", "tool-breaks", "spindle-stalls"),
    "pecks": ("straight-plunge", "bores-with-router-bit", "peck-too-deep"),
    "entries": ("straight-plunge", "hidden-plunge", "steep-ramp", "plunge-without-centre-edge"),
    "arcs": ("arc-does-not-close", "code-refused", "code-ignored"),
    "contours": ("code-refused", "code-ignored", "compensation-refused"),
    "fine_moves": ("reads-too-slowly", "feed-never-reached"),
    "clip": ("cuts-table",),
    "tabs": ("part-comes-loose",),
}  # fmt: skip
# how the advice about a hole as wide as the tool begins where nothing in the program can be changed for the better
HOLE = "It is a hole as wide as the tool: drill it"
ASKED = frozenset({"units-unstated", "feed-unit-suspect"})  # what was meant has to be asked
BY_WORDS = frozenset(MENDERS["of_advice"]) - {"tool-bends", "tool-breaks", "spindle-stalls"}
# what has to be declared, or no mender has anything to offer
CARD = frozenset(rule for name in ("stops", "spindle", "dwell_unit", "modes_missing") for rule in MENDERS[name])
CARD |= {"dial-change-without-stop"}
BLANK = frozenset(rule for name in ("laps", "pecks", "entries") for rule in MENDERS[name]) | {"cuts-table"}
RAMPS = frozenset(MENDERS["entries"])
RULES = frozenset(rule for rules in MENDERS.values() for rule in rules) - ASKED


def mendable(finding: Finding, setup: Setup) -> bool:
    """Whether `gclint mend` has something to offer for a finding; whether it can be proved is seen when it is tried."""
    rule, sets = finding.rule, finding.change.set
    if finding.change.text.startswith(HOLE) or (rule in CARD and setup.controller.name == "any"):
        return False
    if rule in BLANK and not sets and (setup.stock is None or (rule in RAMPS and setup.material is None)):
        return False
    if rule == "no-spin-up-time" and not setup.spindle.spin_up:
        return False
    if rule == "spindle-not-running" and setup.spindle.started != "program":
        return False
    if rule == "speed-not-on-dial" or (setup.spindle.kind == "dial" and any(word.word == "S" for word in sets)):
        # a mark that the job names is not turned by a program, and one that it does not name is not known
        return rule in RULES and (setup.dial is not None) == (rule == "speed-not-on-dial")
    if rule in ("dwell-unit-suspect", "state-unstated"):
        return bool(sets)
    return finding.rule in RULES and (finding.rule not in BY_WORDS or bool(finding.change.set))


def marked(findings: Iterable[Finding], setup: Setup) -> tuple[Finding, ...]:
    """Findings that say of themselves whether they can be mended."""
    return tuple(replace(finding, mendable=True) if mendable(finding, setup) else finding for finding in findings)
