"""Which findings `gclint mend` can answer: the rules say by which mender; known without loading one."""

from __future__ import annotations

from collections.abc import Iterable
from functools import cache

from msgspec.structs import replace

from gclint.packs.pack import RuleText
from gclint.packs.shipped_packs import shipped_packs
from gclint.tables.finding import ChangeElsewhere, Finding
from gclint.tables.setup import Setup

# menders that offer nothing without a declared controller, and none without a declared blank
BY_CARD, BY_BLANK = ("stops", "spindle", "dwell_unit", "modes_missing"), ("laps", "pecks", "entries", "clip")
BY_WORDS, WHOLE_LINES = "of_advice", "comments"  # the mender that sets words of a change; the one that writes lines


@cache
def _rules() -> dict[str, RuleText]:
    return {rule.name: rule.text for pack in shipped_packs() for rule in pack.rules}


def menders_of(rule: str) -> tuple[str, ...]:
    """Give the names of the menders that answer a shipped rule, files of gclint/mend; none of a shop's own rule."""
    return _rules()[rule].mended_by if rule in _rules() else ()


def left_to_people(rule: str) -> str:
    """Say why a finding of this rule is never mended: what is for a person to say; empty where nothing is."""
    return _rules()[rule].left_to if rule in _rules() else ""


def mendable(finding: Finding, setup: Setup) -> bool:
    """Whether `gclint mend` has something to offer for a finding; whether it can be proved is seen when it is tried."""
    sets = finding.change.set
    if isinstance(finding.change, ChangeElsewhere):
        return False
    return any(_offers(name, finding.rule, bool(sets), any(word.word == "S" for word in sets), setup)
               for name in menders_of(finding.rule))  # fmt: skip


def _offers(mender: str, rule: str, sets: bool, speed: bool, setup: Setup) -> bool:
    """Whether what is declared suffices for a mender to offer something."""
    spindle = setup.spindle
    if mender == BY_WORDS:
        # where the job names the mark that the dial is set to, no program turns it
        return sets and not (speed and spindle.kind == "dial" and setup.dial is not None)
    if mender in BY_CARD and setup.controller.name == "any":
        return False
    if mender in BY_BLANK and setup.stock is None:
        return False
    if mender in ("dwell_unit", "modes_missing"):
        return sets
    if mender == "dial":
        return setup.dial is not None if rule == "speed-not-on-dial" else setup.controller.name != "any"
    if mender == "spindle":
        return bool(spindle.spin_up) if rule == "no-spin-up-time" else spindle.started == "program"
    return mender != "entries" or setup.material is not None


def marked(findings: Iterable[Finding], setup: Setup) -> tuple[Finding, ...]:
    """Give the findings, each of which says of itself whether it can be mended."""
    return tuple(replace(finding, mendable=True) if mendable(finding, setup) else finding for finding in findings)
