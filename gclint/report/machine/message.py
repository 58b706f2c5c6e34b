"""What forms for machines say of a finding in running text, and of what was not judged."""

from __future__ import annotations

from gclint.clean_text import plain
from gclint.digest.sheet_words import found_words, not_judged_by_need, sentence, settings_words, waiting_words
from gclint.tables.finding import Checked, Finding

UNREADABLE, NOT_JUDGED = "program-unreadable", "not-judged"  # stand where a rule's name does


def message_of(finding: Finding) -> str:
    """What happens, what was found and what to change, in sentences."""
    parts = [sentence(finding.happens)]
    if finding.found is not None:
        parts.append(f"Found: {found_words(finding)}.")
    if finding.change.text:
        parts.append(f"Change: {finding.change.text}")
    if finding.change.set:
        parts.append(f"{sentence('; '.join(settings_words(finding.change.set, 'the properties list them all')))}.")
    return " ".join(parts)


def not_judged_of(checked: Checked) -> list[str]:
    """What could not be judged, by what it needs: "cuts-table, not-cut-through: need the blank's thickness"."""
    return [f"{waiting_words(rules)}: not judged without {need}" for need, rules in not_judged_by_need(checked).items()]


def one_line_of(text: str) -> str:
    """Text on one line, with nothing in it that turns or hides other text."""
    return " ".join(plain(text).split())
