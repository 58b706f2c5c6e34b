"""Moves to a home that the machine does not find become a lift in work coordinates."""

from __future__ import annotations

from gclint.mend.case import Case, Offer, Proposal, Refused
from gclint.mend.draft import Edit
from gclint.mend.lifted import top_of_blank
from gclint.mend.style import STAR
from gclint.tables.finding import Finding

HOME_CODES = (28, 30, 53)


def offers(case: Case, finding: Finding) -> list[Offer]:
    made: list[Offer] = []
    safe = case.safe_z()
    known = safe is not None and safe >= top_of_blank(case) + 1.0 and case.straight_through
    for line in finding.lines:
        words, text = case.words(line), case.text(line)
        codes = [value for letter, value, _, _ in words if letter == "G"]
        others = [letter for letter, *_ in words if letter not in "GXYZ"]
        if not known or safe is None:
            made.append(Refused(finding.rule, (line,), "the program itself never lifts, so a safe height is not known"))
        elif others or any(code not in (0, 90, 91, *HOME_CODES) for code in codes) or STAR.search(text):
            made.append(Refused(finding.rule, (line,), "the line says more than to go home"))
        else:
            unit = 25.4 if case.modes.code_at("units", line) in (200, 700) else 1.0
            style = case.style
            absolute = case.modes.code_at("distance", line, 900) == 900 and 91 not in codes
            head = [] if absolute else [style.code("G", 90)]
            new = style.line(*head, style.code("G", 0), style.word("Z", safe / unit))
            new = text[: words[0][2]] + new + text[words[-1][3] :]
            because = (
                f"A lift to Z {safe / unit:g} in work coordinates, since the machine does not find its home; "
                "the tool stays where it is in X and Y."
            )
            made.append(Proposal(finding.rule, "lift", (line,), (Edit(line, text=new),), because))
    return made
