"""Line and column of every key and value of a TOML text that tomllib has already accepted (tomllib gives no places)."""

from __future__ import annotations

import re
from functools import lru_cache

Path = tuple[str | int, ...]
Place = tuple[int, int]  # line and column, both from 1

_SPACE = re.compile(r"(?:[ \t\r\n]|#[^\n]*)*")
_BARE = re.compile(r"[A-Za-z0-9_-]+")
_STRING = re.compile(
    r'"""(?:\\.|[^\\])*?"{3,5}|\'\'\'.*?\'{3,5}|"(?:\\.|[^"\\\n])*"|\'[^\'\n]*\'', re.DOTALL
)
_ATOM = re.compile(r"[^,\]}#\r\n]+")


class Places:
    """`keys[path]` and `values[path]` are offsets in the text; array elements are numbered from 0 in a path."""

    def __init__(self, text: str) -> None:
        self.text, self.at = text, 0
        self.keys: dict[Path, int] = {}
        self.values: dict[Path, int] = {}
        self._arrays: dict[Path, int] = {}
        self._document()

    def of(self, path: Path, key: bool = False) -> Place | None:
        """Place of the value (or the key) at `path`, or of the nearest thing around it that has one."""
        while path:
            first, second = (self.keys, self.values) if key else (self.values, self.keys)
            offset = first.get(path, second.get(path))
            if offset is not None:
                return self._line_and_column(offset)
            path, key = path[:-1], True
        return None

    def _line_and_column(self, offset: int) -> Place:
        start = self.text.rfind("\n", 0, offset) + 1
        return self.text.count("\n", 0, offset) + 1, offset - start + 1

    def _skip(self) -> None:
        match = _SPACE.match(self.text, self.at)
        self.at = match.end() if match else self.at

    def _peek(self) -> str:
        return self.text[self.at : self.at + 1]

    def _document(self) -> None:
        table: Path = ()
        while True:
            self._skip()
            if self.at >= len(self.text):
                return
            before = self.at
            if self._peek() == "[":
                table = self._header()
            else:
                self._pair(table)
            if self.at == before:  # not TOML after all: give up, the places so far stand
                return

    def _header(self) -> Path:
        start = self.at
        several = self.text.startswith("[[", self.at)
        self.at += 2 if several else 1
        path: Path = ()
        for name in self._key():
            path = self._into((*path, name))
            self.keys.setdefault(path, start)
        end = self.text.find("]", self.at)
        self.at = len(self.text) if end < 0 else end + (2 if several else 1)
        if several:
            bare = path[:-1] if path and isinstance(path[-1], int) else path
            count = self._arrays.get(bare, 0)
            self._arrays[bare] = count + 1
            self.keys.setdefault(bare, start)
            path = (*bare, count)
        self.keys.setdefault(path, start)
        return path

    def _into(self, path: Path) -> Path:
        """A name that stands for an array of tables means its latest element."""
        return (*path, self._arrays[path] - 1) if path in self._arrays else path

    def _key(self) -> list[str]:
        names: list[str] = []
        while True:
            self._blank()
            match = _STRING.match(self.text, self.at) or _BARE.match(self.text, self.at)
            if match is None:
                return names
            self.at = match.end()
            names.append(_unquote(match[0]))
            self._blank()
            if self._peek() != ".":
                return names
            self.at += 1

    def _blank(self) -> None:
        while self._peek() in (" ", "\t"):
            self.at += 1

    def _pair(self, table: Path) -> None:
        self._skip()
        start = self.at
        path = (*table, *self._key())
        for end in range(len(table) + 1, len(path) + 1):
            self.keys.setdefault(path[:end], start)
        if self._peek() == "=":
            self.at += 1
            self._value(path)

    def _value(self, path: Path) -> None:
        self._skip()
        self.values[path] = self.at
        opening = self._peek()
        if opening in ("[", "{"):
            self.at += 1
            closing, count = "]" if opening == "[" else "}", 0
            while True:
                self._skip()
                before = self.at
                if self._peek() in (closing, ""):
                    self.at += 1
                    return
                if self._peek() == ",":
                    self.at += 1
                    continue
                if opening == "[":
                    self._value((*path, count))
                    count += 1
                else:
                    self._pair(path)
                if self.at == before:
                    return
        match = _STRING.match(self.text, self.at) or _ATOM.match(self.text, self.at)
        self.at = match.end() if match else self.at


@lru_cache(maxsize=2)
def places_of(text: str) -> Places:
    """The places of a text; asked again for the next key of the same file, it is not read again."""
    return Places(text)


def _unquote(name: str) -> str:
    if name[:1] == '"':
        import tomllib

        try:
            return next(iter(tomllib.loads(f"{name} = 0")))
        except tomllib.TOMLDecodeError:
            return name[1:-1]
    return name[1:-1] if name[:1] == "'" else name


_ESCAPE = re.compile(r"\\(?:u[0-9A-Fa-f]{4}|U[0-9A-Fa-f]{8}|[ \t]*\n[ \t\n]*|.)")


def offset_in(text: str, start: int, at: int) -> int:
    """Offset of character `at` (from 0) of the text in quotes that begins at `start`; of another value, `start`."""
    quotes = next((quotes for quotes in ('"""', "'''", '"', "'") if text.startswith(quotes, start)), "")
    if not quotes:
        return start
    offset = start + len(quotes)
    if len(quotes) == 3 and text.startswith("\n", offset):
        offset += 1
    if quotes[0] == "'":
        return offset + at
    while at > 0:
        escape = _ESCAPE.match(text, offset)
        offset = escape.end() if escape else offset + 1
        at -= 0 if escape and escape[0].endswith(("\n", " ", "\t")) and "\n" in escape[0] else 1
    return offset
