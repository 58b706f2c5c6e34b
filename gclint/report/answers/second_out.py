"""What a second reader read differently, as text and as JSON."""

from __future__ import annotations

import msgspec

from gclint import __version__
from gclint.clean_text import json_text
from gclint.digest.words import count
from gclint.motion.second_reader import Compared, Difference, PassedOver
from gclint.report.text.text_sheet import TextSheet

MOST_SHOWN = 50


class SecondReading(msgspec.Struct, frozen=True):
    """The JSON document of `gclint show --second-reader`."""

    gclint: str
    reader: str
    path: str
    blocks: int
    words_compared: int
    moving_blocks: int
    ends_compared: int
    left_out: int
    different: int
    differences: tuple[Difference, ...]  # the first 1000
    words_not_compared: tuple[PassedOver, ...]
    ends_not_compared: tuple[PassedOver, ...]


def to_json(compared: Compared, path: str) -> str:
    shown = SecondReading(
        gclint=__version__, reader=compared.reader, path=path, blocks=compared.blocks, words_compared=compared.words,
        moving_blocks=compared.moving, ends_compared=compared.ends, left_out=compared.left_out,
        different=compared.found, differences=tuple(compared.differences),
        words_not_compared=tuple(compared.words_not_compared.values()),
        ends_not_compared=tuple(compared.ends_not_compared.values()),
    )
    return json_text(msgspec.json.encode(shown))


def to_sheet(compared: Compared, path: str, paper: TextSheet) -> None:
    paper.ends("SECOND READING", f"gclint {__version__}, {compared.reader}")
    paper.field("program", path)
    paper.field("words", f"{compared.words:,} of {count(compared.blocks, 'block')} compared")
    moving = count(compared.moving, "block that moves", "blocks that move")
    paper.field("moves", f"{compared.ends:,} of {moving} compared")
    if compared.left_out:
        paper.field("left out", f"the last {count(compared.left_out, 'block')}: only so many are read again")
    paper.field("different", f"{compared.found:,}" if compared.found else "nothing")
    if compared.differences:
        paper.blank()
        rows = [(f"{d.line:,}", d.what, d.ours, d.theirs) for d in compared.differences[:MOST_SHOWN]]
        paper.table(("line", "what", "gclint", "second reader"), rows, left=4)
        if compared.found > MOST_SHOWN:
            paper.text_block(f"and {compared.found - MOST_SHOWN:,} more; --as json lists the first 1,000")
    for title, kept in (
        ("WORDS NOT COMPARED", compared.words_not_compared),
        ("MOVES NOT COMPARED", compared.ends_not_compared),
    ):
        if kept:
            paper.blank()
            paper.heading(title)
            for one in kept.values():
                paper.bullet(f"{count(one.blocks, 'block')}, first on line {one.first_line:,}: {one.why}")
