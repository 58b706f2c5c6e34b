"""Words that the advice of a finding names: feeds, speeds, each on the line of the word that governs."""

from __future__ import annotations

from gclint.mend.case import Case, Offer, Proposal, Refused
from gclint.mend.put import put_words
from gclint.tables.finding import Finding


def offers(case: Case, finding: Finding) -> list[Offer]:
    lines = tuple(dict.fromkeys((finding.line, finding.worst_line, *finding.lines)))
    if finding.grade == "consider" and finding.rule not in case.asked:
        says = f"it is only to be considered; name it with --only {finding.rule} to have it mended"
        return [Refused(finding.rule, lines, says)]
    sets = finding.change.set
    if not sets:
        return [Refused(finding.rule, lines, f"no word that can be set helps: {finding.change.text}")]
    dial = case.setup.spindle.kind == "dial"
    if dial and any(word.word == "S" for word in sets) and case.setup.dial is not None:
        says = f"the job says that the dial is set to {case.setup.dial}; set another mark in job.toml and run it again"
        return [Refused(finding.rule, lines, says)]
    edits = put_words(case, [(word.line, word.word, word.to) for word in sets])
    if not edits:
        return [Refused(finding.rule, lines, "the words to set are worked out by expressions, or cannot be edited")]
    return [Proposal(finding.rule, "words", lines, edits, finding.change.text, words=True)]
