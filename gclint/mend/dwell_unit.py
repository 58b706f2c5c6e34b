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
    made: list[Offer] = []
    for line in lines:
        words = {letter: value for letter, value, _, _ in case.words(line)}
        if "P" not in words:
            made.append(Refused(finding.rule, (line,), "the wait is not given by P"))
            continue
        to = words["P"] * 1000 if card.dwell_unit == "ms" else words["P"] / 1000
        unit = "milliseconds" if card.dwell_unit == "ms" else "seconds"
        edits = put_words(case, [(line, "P", to)])
        because = f"{card.title} counts waits in {unit}: P{words['P']:g} becomes P{to:g}."
        made.append(Proposal(finding.rule, "words", (line,), edits, because) if edits
                    else Refused(finding.rule, (line,), "the wait is worked out by an expression"))  # fmt: skip
    return made
