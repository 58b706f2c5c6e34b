"""Lines of the program with the place named."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from gclint.tables.finding import Finding
from gclint.tables.program import Program
from gclint.teach.canvas import Drawing

WHOLE = 16  # a program with no more lines is shown as it is
AROUND = 1  # lines before and after each that is named
MOST = 14
LONGEST = 52
HERE = "HERE"


def listing(program: Program, named: Mapping[int, str]) -> Drawing:
    """The lines that `named` says something about, each with its neighbours; a short program whole."""
    last = program.lines
    if last <= WHOLE:
        shown = list(range(1, last + 1))
    else:
        chosen = sorted({line for line in named if 1 <= line <= last}, key=lambda line: named[line] != HERE)
        shown = sorted({near for line in chosen[: MOST // 3] for near in range(line - AROUND, line + AROUND + 1)})
        shown = [line for line in shown if 1 <= line <= last]
    while shown and not program.line_text(shown[-1]).strip():
        shown.pop()
    wide = len(str(shown[-1])) if shown else 1
    lines = []
    for at, line in enumerate(shown):
        if at and line > shown[at - 1] + 1:
            lines.append(f"{'':4}  {'':{wide}}  ...")
        text = "".join(c if c.isprintable() else " " for c in program.line_text(line).rstrip())
        text = text if len(text) <= LONGEST else f"{text[: LONGEST - 3]}..."
        said = named.get(line, "")
        mark, note = (HERE, said.removeprefix(HERE).lstrip(": ")) if said.startswith(HERE) else ("", said)
        lines.append(f"{mark:4}  {line:>{wide}}  {text:<24}{f'   ({note})' if note else ''}".rstrip())
    return Drawing("The program", tuple(lines))


def named_lines(finding: Finding, others: Sequence[tuple[int, str]] = ()) -> dict[int, str]:
    """What there is to say about lines: where the finding stands, where F, S and T were set."""
    named: dict[int, list[str]] = {}
    for letter, line in finding.set_on.items():
        what = {"F": "feed", "S": "speed", "T": "tool"}[letter]
        named.setdefault(line, []).append(f"{what} set here")
    for line, says in others:
        named.setdefault(line, []).append(says)
    told = {line: ", ".join(dict.fromkeys(says)) for line, says in named.items()}
    if finding.worst_line != finding.line:
        told[finding.line] = f"{HERE}: {told.get(finding.line, 'the word at fault')}"
    told[finding.worst_line] = f"{HERE}: {told[finding.worst_line]}" if finding.worst_line in told else HERE
    return told
