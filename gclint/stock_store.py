"""Where the stock between the programs of a job is laid, so that no program is cut again for the one behind it."""

from __future__ import annotations

import threading
from collections import OrderedDict
from collections.abc import Callable
from dataclasses import dataclass
from typing import TYPE_CHECKING

from gclint import disk

if TYPE_CHECKING:
    from gclint.tables.field import Field
    from gclint.tables.setup import Stock

MOST_KNOWN = 256  # programs of which is remembered what the sweep needs to know first
MOST_HELD = 160 << 20  # bytes of fields that are held in memory

Read = Callable[[str], "bytes | None"]
Write = Callable[[str, bytes], None]


@dataclass(frozen=True, slots=True, eq=False)
class Known:
    """What must be known of a program before any field is swept."""

    name: str
    digest: str  # of all that its sweep depends on, but the field and its cells
    content: str  # digest of its bytes
    box: Stock | None
    wanted: float | None  # cell, mm; None where it cuts nothing
    unclear: str  # why it is not known in full what it cuts; "" where it is
    moves: int


class StockStore:
    """The fields laid down last in memory; and, where there is a cache on disk, every one that is not too large.

    A field is asked for by the name of all that made it (`gclint.earlier_programs`), so that none is ever out of
    date. Threads may share one.
    """

    def __init__(self, read: Read | None = None, write: Write | None = None) -> None:
        self.read, self.write = read, write
        self.held: OrderedDict[str, Field] = OrderedDict()
        self.known: OrderedDict[str, tuple[Known, dict[disk.Question, str]]] = OrderedDict()
        self.lock = threading.Lock()  # of both; never held while the disk is asked

    def take(self, name: str, shape: tuple[int, int]) -> Field | None:
        """The field of that name; None where it is not here."""
        with self.lock:
            held = self.held.get(name)
            if held is not None and held.shape == shape:
                self.held.move_to_end(name)
                return held
        if self.read is None:
            return None
        from gclint.tables.field import Field

        data = self.read(name)
        return None if data is None else Field.unpack(data, shape)

    def lay(self, name: str, field: Field) -> None:
        """Keep a field; one that is there already is not written again."""
        with self.lock:
            self.held[name] = field
            while self.held and sum(each.size for each in self.held.values()) > MOST_HELD:
                self.held.popitem(last=False)
        if self.write is not None and self.read is not None and self.read(name) is None:
            packed = field.pack()
            if packed is not None:
                self.write(name, packed)

    def remember(self, name: str, known: Known, asked: dict[disk.Question, str]) -> None:
        """Keep what was found out about a program, with what was asked of the disk for it."""
        with self.lock:
            self.known[name] = known, dict(asked)
            while len(self.known) > MOST_KNOWN:
                self.known.popitem(last=False)

    def recall(self, name: str) -> Known | None:
        """It, where the disk still gives the same answers."""
        with self.lock:
            there = self.known.get(name)
        if there is None:
            return None
        known, asked = there
        with disk.overhearing() as now:
            for question in asked:
                now[question] = disk.ask_again(question)
            return known if all(now[question] == answer for question, answer in asked.items()) else None
