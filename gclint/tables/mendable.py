"""Which findings `gclint mend` can answer, by rule; known without loading a mender."""

from __future__ import annotations

from collections.abc import Iterable

from msgspec.structs import replace

from gclint.tables.finding import Finding

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
RULES = frozenset(rule for rules in MENDERS.values() for rule in rules) - ASKED


def mendable(finding: Finding) -> bool:
    """Whether `gclint mend` has something to offer for a finding; whether it can be proved is seen when it is tried."""
    if finding.change.text.startswith(HOLE):
        return False
    return finding.rule in RULES and (finding.rule not in BY_WORDS or bool(finding.change.set))


def marked(findings: Iterable[Finding]) -> tuple[Finding, ...]:
    """Findings that say of themselves whether they can be mended."""
    return tuple(replace(finding, mendable=True) if mendable(finding) else finding for finding in findings)
