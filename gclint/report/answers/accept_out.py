"""What was accepted together and what stays open, as text."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Protocol

from gclint.digest.words import count
from gclint.judge.accept_all import Known
from gclint.report.text.text_sheet import TextSheet
from gclint.tables.finding import Finding


class Said(Protocol):
    """Why and by whom."""

    @property
    def because(self) -> str | None: ...
    @property
    def by(self) -> str | None: ...


def account(
    paper: TextSheet, version: str, path: str, added: bool, said: Said, known: Sequence[Known],
    left: Sequence[tuple[str, Finding]], programs: int, again: str,
) -> None:
    """`added`: to a file that was there; `again`: options that the file cannot hold."""
    paper.ends("ACCEPTED AS KNOWN", f"gclint {version}")
    if known:
        paper.field("file", f"{path} ({'added to its end' if added else 'new'})")
    else:
        paper.field("file", f"{path} is not written: nothing is left to accept")
    paper.field("because", f"{said.because}{f' ({said.by})' if said.by else ''}")
    places = sum(each.places for each in known)
    concerned = len({each.program for each in known})
    paper.field("accepted", f"{count(places, 'place')} in {concerned} of {count(programs, 'program')}")
    for program in dict.fromkeys(each.program for each in known):
        paper.blank()
        paper.text_block(program, style="head")
        for each in known:
            if each.program == program:
                paper.bullet(f"{each.rule}: {extent(each)}")
    if left:
        paper.blank()
        paper.heading(f"LEFT OPEN ({len(left)})")
        for path_, finding in left:
            why = "graded halt: look at it" if finding.grade == "halt" else "about gclint itself"
            paper.bullet(f"{path_}, line {finding.line}: {finding.rule} ({why})")
        if any(finding.grade == "halt" for _, finding in left):
            paper.text_block('What is graded halt is accepted one by one, by hand, with grade = "halt" and a reason.')
    if known:
        paper.blank()
        paper.text_block(
            f"From now on: gclint check --job {path}{f' {again}' if again else ''} tells what is new, and lists what "
            "is accepted. More places, a worse figure, a worse grade or another tool count as new."
        )


def extent(each: Known) -> str:
    parts = [f"tool {each.tool}" if each.tool is not None else "", count(each.places, "place")]
    if each.found is not None:
        parts.append(f"at worst {each.found}" if each.found[:1] in "-0123456789" else each.found)
    return ", ".join(part for part in parts if part)
