"""Gives the facts that work-offset-suspect alone looks at."""

from __future__ import annotations

import numpy as np

from gclint.columns import one_of
from gclint.facts.context import Context, once
from gclint.facts.fact import Table, number, text, texts, truth
from gclint.tables.motion import EVENT
from gclint.tables.program import BEHIND_END, BROKEN, DELETED

SELECTS = {**{540 + 10 * n: f"G{54 + n}" for n in range(6)}, 591: "G59.1", 592: "G59.2", 593: "G59.3"}


SETS = {100: "G10", 520: "G52", 920: "G92"}


CLEARS = (921, 922)


KINDS = ("selects", "sets-origin", "shifts")


@once
def _settings(context: Context) -> list[tuple[int, str, str, bool]]:
    """(line, kind, code, whether a shift is taken back later) of each word in force, in the order of the text."""
    p = context.program
    codes, blocks = context.offset_words
    chosen = one_of(codes, (*SELECTS, *SETS, *CLEARS))
    codes, blocks = codes[chosen], blocks[chosen]
    rows: list[tuple[int, str, str, bool]] = []
    m = context.motion
    ends = m.event_line[m.event_kind == EVENT["end"]]
    last = int(ends[0]) if len(ends) else p.lines
    cleared = 0
    if m.followed is not None:  # subprograms stand behind the end, and what is executed later may stand further up
        last = max(last, int(m.line.max(initial=0)), int(m.event_line.max(initial=0)))
        cleared = p.lines + 1 if one_of(codes, CLEARS).any() else 0
    for code, block in zip(codes.tolist(), blocks.tolist()):
        if code in CLEARS:
            cleared = max(cleared, int(p.block_line[block]))
    for code, block in zip(codes.tolist(), blocks.tolist()):
        line = int(p.block_line[block])
        if p.block_flags[block] & (DELETED | BROKEN | BEHIND_END) or line > last or code in CLEARS:
            continue
        own = range(int(p.block_word[block]), int(p.block_word[block + 1]))
        said = {chr(int(p.word_letter[w])): float(p.word_value[w]) for w in own}
        if code in SELECTS:
            rows.append((line, "selects", SELECTS[code], False))
        elif code == 100:
            if said.get("L") in (2.0, 20.0):
                rows.append((line, "sets-origin", "G10", False))
        elif code == 520 and not any(said.get(axis) for axis in "XYZ"):
            cleared = max(cleared, line)
            rows = [(*row[:3], True) if row[2] == "G52" else row for row in rows]
        elif set(said) & set("XYZ"):
            rows.append((line, "shifts", SETS[code], cleared > line))
    return rows


OFFSETS = Table(
    "offsets",
    "words that choose, set or shift a work offset",
    {
        "line": number("", "line of the program", lambda c: np.array([row[0] for row in _settings(c)], dtype=np.int64)),
        "does": text("what the word does", lambda c: texts([row[1] for row in _settings(c)]), "", KINDS),
        "code": text("the word", lambda c: texts([row[2] for row in _settings(c)])),
        "taken_back": truth("whether a shift is cleared later in the program",
                            lambda c: np.array([row[3] for row in _settings(c)], dtype=bool)),
        "offset_is_declared": truth("whether the job says which work offset is set at the machine",
                                    lambda c: c.setup.work_offset is not None),
        "as_declared": truth("whether it is the work offset that the job names",
                             lambda c: np.array([row[2] == c.setup.work_offset for row in _settings(c)], dtype=bool)),
        "declared_offset": text("the work offset that is set at the machine", lambda c: c.setup.work_offset,
                                "`work_offset` in job.toml"),
    },
    lambda c: len(_settings(c)),
)  # fmt: skip

TABLES = (OFFSETS,)
