"""A comment that leaks, closed on its own line."""

from __future__ import annotations


def closed(text: bytes) -> bytes | None:
    """The line with one comment from its first bracket to its last, and closed; None where code stands behind it."""
    first = text.find(b"(")
    if first < 0:
        return None
    last = text.rfind(b")")
    inner, behind = (text[first + 1 :], b"") if last < first else (text[first + 1 : last], text[last + 1 :])
    if text.count(b"(") > text.count(b")"):  # never closed: all that follows is comment
        inner, behind = text[first + 1 :], b""
    if behind.strip():
        return None
    depth = 0
    for byte in inner:
        depth += (byte == 40) - (byte == 41)
        if depth < 0:  # a second comment, or code between two
            return None
    plain = inner.replace(b"(", b" ").replace(b")", b" ")
    return text[:first] + b"(" + b" ".join(plain.split(b"  ")).rstrip() + b")"
