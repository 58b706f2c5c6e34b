"""A program's text as lines that can be edited: what nobody edits stays byte for byte what it was.

Lines are those of the reader (LF, CRLF or CR). Every line of a draft knows which line of the original it is.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

import numpy as np
from msgspec import Struct

from gclint.columns import Bools, Ints, Longs
from gclint.program.read import tabulate
from gclint.tables.program import BYTE_ORDER_MARK

MARK = BYTE_ORDER_MARK.encode()


class Edit(Struct, frozen=True):
    """What is done at one line of a draft (from 1): lines put before it, its own new text, lines put behind it.

    Texts are without line ends. `text` None leaves the line as it is; `drop` takes it out.
    """

    line: int
    before: tuple[bytes, ...] = ()
    text: bytes | None = None
    after: tuple[bytes, ...] = ()
    drop: bool = False
    otherwise: bool = False


class Collision(ValueError):
    """Two edits want different texts of one line."""


@dataclass(frozen=True, slots=True, eq=False)
class Draft:
    """`data` are the bytes of the draft; the columns have a row for each of its lines."""

    data: bytes
    start: Longs  # [lines + 1] byte offset of each line's first byte
    origin: Ints  # [lines] its line in the original, from 1; 0: a line that was put in
    anchor: Ints  # [lines] the line of the original it is or stands beside
    changed: Bools  # [lines] whether it was put in or its text differs from the original's
    by: Ints  # [lines] number of the last change that wrote it; 0: none
    dropped: tuple[int, ...] = ()  # lines of the original that were taken out

    @property
    def lines(self) -> int:
        return len(self.start) - 1

    def raw(self, line: int) -> bytes:
        """Bytes of a line (from 1) with its line end."""
        return self.data[int(self.start[line - 1]) : int(self.start[line])]

    def text(self, line: int) -> bytes:
        """Bytes of a line without its line end and without a byte order mark."""
        own = self.raw(line).rstrip(b"\r\n")
        return own.removeprefix(MARK) if line == 1 else own

    def now(self, origin: int) -> int:
        """The line of the draft that is line `origin` of the original; 0 where it was taken out."""
        rows = np.flatnonzero(self.origin == origin)
        return int(rows[0]) + 1 if len(rows) else 0

    def end_of_line(self) -> bytes:
        """The line end that the program uses, told from its first line."""
        for line in (1, 2):
            if line <= self.lines:
                own = self.raw(line)
                end = own[len(own.rstrip(b"\r\n")) :]
                if end:
                    return end
        return b"\n"

    def apply(self, edits: Iterable[tuple[int, Edit]]) -> Draft:
        """The draft with edits made, each given with the number of its change.

        Raises Collision where two edits give one line different texts.
        """
        joined: dict[int, list[tuple[int, Edit]]] = {}
        for number, edit in edits:
            if not 1 <= edit.line <= self.lines:
                raise ValueError(f"there is no line {edit.line}")
            joined.setdefault(edit.line, []).append((number, edit))
        end = self.end_of_line()
        parts: list[bytes] = []
        rows: list[tuple[int, int, bool, int]] = []  # of the lines that edits make
        pieces: list[tuple[int, int] | int] = []  # runs of old rows, or rows of `rows`
        lengths: list[int] = []  # bytes of the lines that edits make
        dropped = list(self.dropped)
        done = 0

        def put(text: bytes, origin: int, anchor: int, changed: bool, by: int) -> None:
            parts.append(text)
            lengths.append(len(text))
            pieces.append(len(rows))
            rows.append((origin, anchor, changed, by))

        for line in sorted(joined):
            if line - 1 > done:
                parts.append(self.data[int(self.start[done]) : int(self.start[line - 1])])
                pieces.append((done, line - 1))
            own, here = self.raw(line), joined[line]
            tail = own[len(own.rstrip(b"\r\n")) :]
            body = own[: len(own) - len(tail)]
            lead = MARK if line == 1 and body.startswith(MARK) else b""
            body = body.removeprefix(lead)
            origin, anchor = int(self.origin[line - 1]), int(self.anchor[line - 1])
            before = [(number, text) for number, edit in here for text in edit.before]
            after = [(number, text) for number, edit in here for text in edit.after]
            texts = {edit.text for _, edit in here if edit.text is not None}
            drop = any(edit.drop for _, edit in here)
            if len(texts) > 1 or (drop and texts):
                raise Collision(f"line {line}")
            for number, text in before:
                put(lead + text + (tail or end), 0, anchor, True, number)
                lead = b""
            if drop:
                if origin:
                    dropped.append(origin)
            else:
                new = next(iter(texts)) if texts else body
                writer = next((number for number, edit in here if edit.text is not None), int(self.by[line - 1]))
                otherwise = any(edit.otherwise for _, edit in here)
                differs = bool(self.changed[line - 1]) or new != body or otherwise
                closing = tail or (end if after else b"")
                put(lead + new + closing, origin, anchor, differs, writer)
            for row, (number, text) in enumerate(after):
                last = row == len(after) - 1
                put(text + (tail if last and not tail else tail or end), 0, anchor, True, number)
            done = line
        if done < self.lines:
            parts.append(self.data[int(self.start[done]) :])
            pieces.append((done, self.lines))
        return self._joined(parts, pieces, rows, lengths, tuple(sorted(dropped)))

    def _joined(self, parts: Sequence[bytes], pieces: Sequence[tuple[int, int] | int],
                rows: Sequence[tuple[int, int, bool, int]], lengths: Sequence[int],
                dropped: tuple[int, ...]) -> Draft:  # fmt: skip
        size = np.diff(self.start)
        columns: tuple[list[np.ndarray], ...] = ([], [], [], [], [])
        for piece in pieces:
            if isinstance(piece, tuple):
                run = slice(*piece)
                for into, column in zip(columns, (size, self.origin, self.anchor, self.changed, self.by)):
                    into.append(column[run])
            else:
                for into, value in zip(columns, (lengths[piece], *rows[piece])):
                    into.append(np.array([value]))
        made = [np.concatenate(each) if each else np.zeros(0) for each in columns]
        start = np.concatenate(([0], np.cumsum(made[0]))).astype(np.int64)
        return Draft(
            b"".join(parts), start, made[1].astype(np.int32), made[2].astype(np.int32), made[3].astype(bool),
            made[4].astype(np.int32), dropped,
        )  # fmt: skip


def draft_of(data: bytes) -> Draft:
    """The draft that is the original itself."""
    program = tabulate(data, "")
    lines = program.lines
    own = np.arange(1, lines + 1, dtype=np.int32)
    return Draft(
        data, np.asarray(program.line_start, np.int64), own, own.copy(), np.zeros(lines, bool),
        np.zeros(lines, np.int32),
    )  # fmt: skip
