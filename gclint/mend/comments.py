"""Comments that leak: brackets inside a comment, and comments that are never closed."""

from __future__ import annotations

from gclint.advice.comments import closed
from gclint.mend.case import Case, Offer, Proposal, Refused
from gclint.mend.draft import Edit
from gclint.tables.finding import Finding


def offers(case: Case, finding: Finding) -> list[Offer]:
    made: list[Offer] = []
    for line in finding.lines:
        text = case.text(line)
        if b"*" in text:
            made.append(Refused(finding.rule, (line,), "the line has a checksum"))
            continue
        new = closed(text)
        if new is None or new == text:
            made.append(
                Refused(finding.rule, (line,), "whether the text behind the bracket is meant to run is not known")
            )
            continue
        because = "Brackets inside the comment are taken out, so that nothing of it is read as code."
        if text.count(b"(") > text.count(b")"):
            because = "The comment is closed on its own line."
        made.append(Proposal(finding.rule, "words", (line,), (Edit(line, text=new),), because))
    return made
