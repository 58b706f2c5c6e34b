"""Comments that leak: brackets inside a comment, and comments that are never closed."""

from __future__ import annotations

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


def closed(text: bytes) -> bytes | None:
    """The line with one comment from its first bracket to its last, and closed; None where code stands behind it."""
    first = text.find(b"(")
    if first < 0:
        return None
    last = text.rfind(b")")
    inner, behind = (text[first + 1 :], b"") if last < first else (text[first + 1 : last], text[last + 1 :])
    if text.count(b"(") > text.count(b")"):  # never closed: all that follows is comment
        inner, behind = text[first + 1 :], b""
    if behind.strip():
        return None
    depth = 0
    for byte in inner:
        depth += (byte == 40) - (byte == 41)
        if depth < 0:  # a second comment, or code between two
            return None
    plain = inner.replace(b"(", b" ").replace(b")", b" ")
    return text[:first] + b"(" + b" ".join(plain.split(b"  ")).rstrip() + b")"
