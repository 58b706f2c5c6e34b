"""The S word that says what the dial of a hand-set spindle is set to; a stop where the dial has to be turned."""

from __future__ import annotations

from gclint.mend.case import Case, Offer, Proposal, Refused
from gclint.mend.draft import Edit
from gclint.mend.lifted import lifted_at
from gclint.mend.put import put_words
from gclint.mend.style import NoRoom, numbered
from gclint.tables.finding import Finding


def offers(case: Case, finding: Finding) -> list[Offer]:
    return _stop(case, finding) if finding.rule == "dial-change-without-stop" else _word(case, finding)


def _word(case: Case, finding: Finding) -> list[Offer]:
    spindle, lines = case.setup.spindle, tuple(finding.lines)
    mark = next((each for each in spindle.dial if each.mark == case.setup.dial), None)
    if mark is None:
        return [Refused(finding.rule, lines, "which mark is set is for the job to say (`dial`)")]
    sets = [(line, "S", mark.stated) for line in lines]
    edits = put_words(case, sets)
    if not edits:
        return [Refused(finding.rule, lines, "the S word cannot be edited")]
    because = (
        f"The dial is set to {mark.mark}, which says {mark.stated:g}; S is written alike, and nothing else changes."
    )
    return [Proposal(finding.rule, "words", lines, edits, because, words=True)]


def _stop(case: Case, finding: Finding) -> list[Offer]:
    made: list[Offer] = []
    for line in finding.lines:
        speed = case.modes.value_at("S", line)
        mark = next((m for m in case.setup.spindle.dial if abs(m.stated - speed) <= 0.02 * m.stated), None)
        if mark is None:
            made.append(Refused(finding.rule, (line,), "no mark of the dial says this speed"))
            continue
        if case.setup.controller.program_stop not in ("stops", "stops-spindle") or case.setup.controller.name == "any":
            made.append(Refused(finding.rule, (line,), "what M0 does here needs a declared controller"))
            continue
        if not lifted_at(case, line):
            made.append(
                Refused(finding.rule, (line,), "the tool is not above the blank at this line; a stop would rub")
            )
            continue
        note = case.style.comment(f"set the dial to {mark.mark}, {mark.stated:g}")
        try:
            before = numbered(case.style, case.draft, line, (note, case.style.line(case.style.code("M", 0))))
        except NoRoom as problem:
            made.append(Refused(finding.rule, (line,), str(problem)))
            continue
        because = f"A stop before line {line}, so that there is time to set the dial to {mark.mark}."
        made.append(Proposal(finding.rule, "stop", (line,), (Edit(line, before=before),), because))
    return made
