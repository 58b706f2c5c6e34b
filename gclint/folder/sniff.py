"""Whether the head of a file reads like a milling program: a file is one by what is in it, not by its name.

Only files without a program's usual ending are asked; `gclint/program/kind.py` then judges the whole of what passes.
"""

from __future__ import annotations

import re

from gclint.lazy_regex import Later

HEAD = 1 << 16  # bytes that are looked at
MOST_LINES = 400
LONGEST_BLOCK = 400  # bytes; a longer line is no block
LEAST_SHARE = 0.8  # of the lines must read as blocks

# Numbers are matched possessively: a line that is no block must not be tried in every way.
_WORD = rb"[A-Z]\s*+[-+]?\s*+(?>\d++(?:\.\d*+)?|\.\d++)\s*+"
_BLOCK = Later(rb"\s*+/?\s*+(?:" + _WORD + rb")++(?:\*\d++\s*+)?", re.IGNORECASE)
_FLOW = Later(rb"\s*+(?:%|#|O\s*+[<\d]|(?:" + _WORD + rb")*+[A-Z]\s*+[-+]?\s*+[#\[]).*+", re.IGNORECASE)
_COMMENT = Later(rb"\([^()]*+\)|;.*+")
_MOTION = Later(rb"G\s*+0*[0-3](?![\d.])|G\s*+8[1-9](?![\d.])|G\s*+73", re.IGNORECASE)


def reads_as_program(head: bytes, whole: bool) -> bool:
    """`head` is at most HEAD bytes; `whole` says that they are all of the file, so that no last line is cut off."""
    if b"\0" in head:
        return False
    lines = head.replace(b"\r", b"\n").split(b"\n")
    if not whole:
        lines.pop()
    told = blocks = 0
    plain: list[bytes] = []
    for line in lines:
        if told >= MOST_LINES:
            break
        code = _COMMENT.sub(b"", line[: LONGEST_BLOCK + 1]).strip()
        if not code:
            continue
        told += 1
        if len(line) <= LONGEST_BLOCK and (_BLOCK.fullmatch(code) or _FLOW.fullmatch(code)):
            blocks += 1
            plain.append(code)
    if not blocks or blocks < LEAST_SHARE * told:
        return False
    text = b"\n".join(plain).upper()
    return _MOTION.search(text) is not None and b"Z" in text and (b"X" in text or b"Y" in text)
