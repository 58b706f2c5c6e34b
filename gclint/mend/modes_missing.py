"""Modes that a program never states: each as gclint and most machines take it, written at the top."""

from __future__ import annotations

from gclint.mend.case import Case, Offer, Proposal, Refused
from gclint.mend.draft import Edit
from gclint.mend.style import NoRoom, numbered
from gclint.tables.finding import Finding

USUAL = (("distance", 900), ("feed mode", 940), ("plane", 170), ("offset", 540))


def offers(case: Case, finding: Finding) -> list[Offer]:
    card = case.setup.controller
    if card.name == "any":
        says = "no controller is declared, so what it takes at the start is not known"
        return [Refused(finding.rule, (finding.line,), says)]
    p = case.program
    words = []
    for name, code in USUAL:
        never = not (case.modes.word_of(name) >= 0).any()
        spelled = case.style.code("G", code / 10)
        if name == "offset" and case.setup.work_offset not in (None, "G54"):
            continue
        if never and card.state(f"G{code // 10}") == "does":
            words.append(spelled)
    if not words or not len(p.block_line):
        return [Refused(finding.rule, (finding.line,), "a mode is stated too late rather than never")]
    line = first_code_line(case)
    try:
        before = numbered(case.style, case.draft, line, (case.style.line(*words),))
    except NoRoom as problem:
        return [Refused(finding.rule, (finding.line,), str(problem))]
    because = f"{' '.join(words)} at the top: what was taken as given is now said."
    return [Proposal(finding.rule, "modes", (finding.line,), (Edit(line, before=before),), because)]


def first_code_line(case: Case) -> int:
    """The line of the first block that is no program number."""
    p = case.program
    for block in range(min(len(p.block_line), 50)):
        first, last = int(p.block_word[block]), int(p.block_word[block + 1])
        letters = {chr(int(letter)) for letter in p.word_letter[first:last].tolist()}
        if letters and letters != {"O"}:
            return int(p.block_line[block])
    return int(p.block_line[0])
