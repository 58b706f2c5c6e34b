"""Which findings `gclint mend` can answer: the rules say by which mender; known without loading one."""

from __future__ import annotations

from collections.abc import Iterable
from functools import cache

from msgspec.structs import replace

from gclint.packs.pack import RuleText
from gclint.packs.shipped_packs import shipped_packs
from gclint.tables.finding import ChangeElsewhere, Finding

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


def mendable(finding: Finding) -> bool:
    """Whether `gclint mend` has something to offer for a finding; whether it can be proved is seen when it is tried."""
    names = menders_of(finding.rule)
    if isinstance(finding.change, ChangeElsewhere) or not names:
        return False
    return BY_WORDS not in names or "laps" in names or bool(finding.change.set)


def marked(findings: Iterable[Finding]) -> tuple[Finding, ...]:
    """Give the findings, each of which says of itself whether it can be mended."""
    return tuple(replace(finding, mendable=True) if mendable(finding) else finding for finding in findings)
