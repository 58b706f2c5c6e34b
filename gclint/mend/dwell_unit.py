"""A wait whose P counts in the other unit than the declared card's: 2 for milliseconds, 2000 for seconds."""

from __future__ import annotations

from gclint.mend.case import Case, Offer, Proposal, Refused
from gclint.mend.put import put_words
from gclint.tables.finding import Finding


def offers(case: Case, finding: Finding) -> list[Offer]:
    card = case.setup.controller
    lines = tuple(finding.lines)
    if card.name == "any":
        return [Refused(finding.rule, lines, "no controller is declared, so the unit of its waits is not known")]
    if not finding.change.set:
        return [Refused(finding.rule, lines, "a wait is not given by P, or is worked out by an expression")]
    unit = "milliseconds" if card.dwell_unit == "ms" else "seconds"
    made: list[Offer] = []
    for word in finding.change.set:
        edits = put_words(case, [(word.line, word.word, word.to)])
        because = f"{card.title} counts waits in {unit}: P{word.from_:g} becomes P{word.to:g}."
        made.append(Proposal(finding.rule, "words", (word.line,), edits, because) if edits
                    else Refused(finding.rule, (word.line,), "the word cannot be edited"))  # fmt: skip
    return made
