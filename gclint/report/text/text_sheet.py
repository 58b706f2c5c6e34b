"""The sheet of text that reports are written on: headings, labelled fields and tables within a fixed width."""

from __future__ import annotations

import io
import os
from collections.abc import Sequence
from typing import Literal, TextIO

from rich.console import Console
from rich.padding import Padding
from rich.table import Table
from rich.text import Text

from gclint.screen import COLOUR

PLAIN_WIDTH = 80
MOST_WIDTH = 120

# Chosen to stay apart for people who see red and green alike; every use also carries a word.
STYLES = {
    "halt": "bold #d55e00",
    "change": "bold #e69f00",
    "consider": "bold #56b4e9",
    "head": "bold",
    "label": "#999999",
    "plain": "",
}
LABEL_WIDTH = 10


def clean(text: str) -> str:
    """Text with nothing in it that could move a cursor or set a colour."""
    return "".join(c if c.isprintable() else " " if c in "\t\n" else "?" for c in text)


class TextSheet:
    """Collects lines; `text` gives them all. Without colour no escape code is ever written."""

    def __init__(self, width: int = PLAIN_WIDTH, colour: bool = False, record: bool = False) -> None:
        self.width = max(40, min(width, MOST_WIDTH))
        self.colour = colour
        self.legend_given = False
        self.cautioned = False  # the cautions stand on it already
        self.console = Console(
            file=io.StringIO(), width=self.width, force_terminal=colour, no_color=not colour,
            color_system="truecolor" if record else _colours() if colour else None, record=record,
            highlight=False, markup=False, emoji=False, legacy_windows=False,
        )

    @property
    def text(self) -> str:
        written = self.console.file.getvalue()  # type: ignore[attr-defined]
        return "\n".join(line.rstrip() for line in written.split("\n"))

    def blank(self) -> None:
        self.console.print()

    def heading(self, title: str, style: str = "head") -> None:
        """A title followed by a rule to the right edge."""
        line = f"{title} {'-' * max(3, self.width - len(title) - 1)}"
        self.console.print(Text(line[: self.width], STYLES[style]))

    def ends(self, left: str, right: str, style: str = "head") -> None:
        """Text at both edges of one line."""
        left, right = clean(left), clean(right)
        room = self.width - len(left) - len(right)
        if room < 1:
            self.text_block(left, 0, style)
            left, room = "", self.width - len(right)
        line = Text(left, STYLES[style])
        line.append(" " * max(0, room) + right)
        self.console.print(line)

    def text_block(self, text: str, indent: int = 0, style: str = "plain") -> None:
        self._row("", 0, Text(clean(text), STYLES[style]), indent)

    def field(self, label: str, text: str | Text, indent: int = 0, style: str = "plain") -> None:
        """A label and its text, which wraps under itself."""
        body = text if isinstance(text, Text) else Text(clean(text), STYLES[style])
        self._row(f"{label:<{LABEL_WIDTH - 1}} ", LABEL_WIDTH, body, indent)

    def bullet(self, text: str) -> None:
        self._row("- ", 2, Text(clean(text)), 0)

    def hanging(self, lead: str, text: str) -> None:
        """A lead of one's own width, the text wrapping under itself."""
        self._row(clean(lead), len(lead), Text(clean(text)), 0)

    def cautions(self, texts: Sequence[str]) -> None:
        """Write a heading and a line for each caution."""
        self.blank()
        self.heading("CAUTIONS")
        for text in texts:
            self.bullet(text)

    def tick(self, text: str, indent: int = 0) -> None:
        """A box to tick, and what it is for."""
        self._row("[ ] ", 4, Text(clean(text)), indent)

    def _row(self, label: str, width: int, body: Text, indent: int) -> None:
        """`body` wrapped beside its label; words longer than the line are folded."""
        lines = body.wrap(self.console, self.width - indent - width, overflow="fold") or [Text("")]
        for number, line in enumerate(lines):
            line.rstrip()
            lead = label if number == 0 else " " * width
            self.console.print(Text(" " * indent).append(lead, STYLES["label"]).append_text(line), soft_wrap=True)

    def table(self, titles: Sequence[str], rows: Sequence[Sequence[str]], indent: int = 0, left: int = 1) -> None:
        """Columns under their titles, the first `left` ones to the left, the others to the right."""
        table = Table(box=None, padding=(0, 2, 0, 0), pad_edge=False, show_edge=False, header_style=STYLES["label"])
        for number, title in enumerate(titles):
            table.add_column(title, justify="left" if number < left else "right", overflow="fold")
        for row in rows:
            table.add_row(*(Text(clean(cell)) for cell in row))
        self.console.print(Padding(table, (0, 0, 0, indent)))


def _colours() -> Literal["auto", "standard"]:
    """What a terminal says that it can; the least where it says nothing, which is asked only with --color always."""
    return "standard" if os.environ.get("TERM", "dumb") in ("dumb", "unknown", "") else "auto"


def text_sheet_for(stream: TextIO) -> TextSheet:
    """Width and colour for a stream: a terminal's own width to 120 columns, else what COLUMNS says or 80.

    Colour goes to a terminal, unless NO_COLOR is set or TERM is "dumb"; --color decides otherwise.
    """
    wanted, dumb = COLOUR.get(), os.environ.get("TERM") == "dumb"
    if not stream.isatty() or dumb:
        said = os.environ.get("COLUMNS", "")
        return TextSheet(int(said) if said.isdecimal() and len(said) < 6 else PLAIN_WIDTH, colour=wanted == "always")
    columns = Console(file=stream).width
    return TextSheet(columns, colour=wanted == "always" or (wanted == "auto" and not os.environ.get("NO_COLOR")))
