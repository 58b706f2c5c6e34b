"""Names and comments of other people's files on their way out: nothing in them turns, moves or hides other text."""

from __future__ import annotations

import re
from typing import Any

import msgspec

# Controls (C0 but tab and line ends, DEL, C1), marks that turn the direction of writing or end a line, those that are
# no characters. XML 1.0 has no way to hold some of them; a screen obeys others (Unicode Standard Annex 9, section 2).
HIDDEN = re.compile(
    "[\0-\x08\x0b\x0c\x0e-\x1f\x7f-\x9f\u061c\u200e\u200f\u2028-\u202e\u2066-\u2069\ud800-\udfff\ufeff\ufffe\uffff]"
)
MARK = "\ufffd"


def plain(text: str) -> str:
    """Give the text with a mark in the place of each character that is no text."""
    return HIDDEN.sub(MARK, text)


def plain_all(value: Any) -> Any:
    """Give a value of dicts, lists and texts with every text made plain."""
    if isinstance(value, str):
        return plain(value)
    if isinstance(value, dict):
        return {key: plain_all(each) for key, each in value.items()}
    return [plain_all(each) for each in value] if isinstance(value, (list, tuple)) else value


def json_text(encoded: bytes, indent: int = 2) -> str:
    """Lay encoded JSON out over lines; what is no text is escaped in it, so that it reads back and does nothing."""
    laid = msgspec.json.format(encoded, indent=indent).decode()
    return HIDDEN.sub(lambda found: f"\\u{ord(found[0]):04x}", laid) + "\n"
