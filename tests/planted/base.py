"""A clean program with its declarations, and what gclint's own tables say of it: where a fault can be planted."""

from __future__ import annotations

import atexit
import copy
import hashlib
import json
import tempfile
import tomllib
from collections.abc import Callable, Iterator
from dataclasses import dataclass, field
from functools import cached_property
from pathlib import Path
from random import Random
from typing import Any

import numpy as np

from gclint.run import Run, Tables
from gclint.tables.engagement import ENTRY_KINDS
from gclint.tables.finding import Finding
from tests.planted.sheet import Sheet

SAMPLES = Path(__file__).resolve().parents[2] / "sample_programs"
Declared = dict[str, Any]

_here: list[tempfile.TemporaryDirectory[str]] = []


def _folder() -> Path:
    """Where declarations are written while this process runs; programs never are."""
    if not _here:
        _here.append(tempfile.TemporaryDirectory(prefix="planted-"))
        atexit.register(_here[0].cleanup)
    return Path(_here[0].name)


def _toml(value: Any) -> str:
    if isinstance(value, dict):
        return "{ " + ", ".join(f"{json.dumps(key)} = {_toml(inner)}" for key, inner in value.items()) + " }"
    if isinstance(value, list):
        return "[" + ", ".join(map(_toml, value)) + "]"
    return json.dumps(value)


def judged(data: bytes, name: str, job: Declared, shop: Declared | None, files: dict[str, str]) -> Run:
    """The program judged with these declarations."""
    from gclint.check import run
    from gclint.setup.declare import Options

    job = {key: value for key, value in job.items() if key != "shop"} | ({"shop": "shop.toml"} if shop else {})
    texts = {"job.toml": job, **({"shop.toml": shop} if shop else {})}
    written = {file: "".join(f"{k} = {_toml(v)}\n" for k, v in told.items()) for file, told in texts.items()} | files
    folder = _folder() / hashlib.sha256(repr(written).encode()).hexdigest()[:16]
    if not folder.exists():
        folder.mkdir()
        for file, text in written.items():
            (folder / file).write_text(text)
    return run(data, name, Options(), str(folder / name))


def _set(table: Declared, keys: Declared) -> None:
    table.update({key: value for key, value in keys.items() if value is not None})
    for key in [key for key, value in keys.items() if value is None]:
        table.pop(key, None)


@dataclass(frozen=True)
class Base:
    """One clean program as a machine would be given it."""

    name: str
    data: bytes
    job: Declared
    shop: Declared | None
    files: dict[str, str] = field(default_factory=dict)  # beside job.toml

    def told(
        self, job: Callable[[Declared], Any] | None = None, shop: Callable[[Declared], Any] | None = None
    ) -> dict[str, Any]:
        """Other declarations, as keyword arguments of Plant."""
        changed: dict[str, Any] = {}
        for key, change, old in (("job", job, self.job), ("shop", shop, self.shop)):
            if change is not None and old is not None:
                changed[key] = copy.deepcopy(old)
                change(changed[key])
        return changed

    def with_tool(self, number: int, **keys: Any) -> dict[str, Any]:
        """Other keys of one tool of the shop, None to leave one out."""
        return self.told(shop=lambda shop: [_set(tool, keys) for tool in shop["tool"] if tool["number"] == number])

    def with_shop(self, table: str, **keys: Any) -> dict[str, Any]:
        """Other keys of the shop's machine or spindle."""
        return self.told(shop=lambda shop: _set(shop.setdefault(table, {}), keys))

    def with_job(self, table: str = "", **keys: Any) -> dict[str, Any]:
        """Other keys of the job, or of one of its tables."""
        return self.told(job=lambda job: _set(job.setdefault(table, {}) if table else job, keys))

    @cached_property
    def run(self) -> Run:
        return judged(self.data, self.name, self.job, self.shop, self.files)

    @property
    def findings(self) -> tuple[Finding, ...]:
        return self.run.checked.findings

    @property
    def tables(self) -> Tables:
        assert self.run.tables is not None
        return self.run.tables

    def sheet(self) -> Sheet:
        return self._text.copy()

    @cached_property
    def _text(self) -> Sheet:
        return Sheet(self.data)

    # ---- what it does

    @cached_property
    def plain(self) -> bool:
        """No loop, call, cycle or incremental move: a line is one move, and says where it ends."""
        m = self.tables.motion
        return m.followed is None

    @cached_property
    def unit(self) -> float:
        """mm in one unit of the program's lengths."""
        return 25.4 if self.run.checked.units == "inch" else 1.0

    @cached_property
    def removed(self) -> Any:
        pieces, m = self.tables.engagement.pieces, self.tables.motion
        return np.bincount(pieces.move, weights=pieces.removed, minlength=len(m))

    def line_of(self, move: int) -> int:
        return int(self.tables.motion.line[move])

    def once(self, move: int) -> bool:
        """Whether the move's line makes this move alone."""
        return bool(self._once[move])

    @cached_property
    def _once(self) -> Any:
        m = self.tables.motion
        return (np.bincount(m.line)[m.line] == 1) & (m.cycle == 0)

    def tool(self, move: int) -> Any:
        """The declared tool that makes the move."""
        return self.tables.setup.tools.get(int(self.tables.motion.tool[move]))

    def tool_of(self, move: int) -> Any:
        tools = self.tables.setup.tools
        found = tools.get(int(self.tables.motion.tool[move]))
        return found if found is not None else (next(iter(tools.values())) if len(tools) == 1 else None)

    def windows(self, move: int) -> Any:
        by_tool = self.tables.cutting.windows
        found = by_tool.get(int(self.tables.motion.tool[move]))
        return found if found is not None else (next(iter(by_tool.values())) if len(by_tool) == 1 else None)

    @cached_property
    def top(self) -> float:
        box = self.tables.engagement.box
        assert box is not None
        assert box.top is not None
        return box.top

    @cached_property
    def bottom(self) -> float | None:
        box = self.tables.engagement.box
        return box.bottom if box else None

    def entries(self, *kinds: str) -> Iterator[int]:
        """Rows of entries of these kinds that go into solid."""
        e = self.tables.engagement.entries
        for row in range(len(e)):
            if ENTRY_KINDS[int(e.kind[row])] in kinds and e.solid[row] > 0.1:
                yield row

    def moves(self, kind: tuple[int, ...], **want: Any) -> Iterator[int]:
        """Moves of these kinds that a line of their own makes; `cutting`, `level`, `least` (mm) narrow the choice."""
        m = self.tables.motion
        for move in range(len(m)):
            if int(m.kind[move]) not in kind or not self.once(move):
                continue
            if "cutting" in want and bool(self.removed[move] > 0.5) != want["cutting"]:
                continue
            if want.get("level") and m.z0[move] != m.z1[move]:
                continue
            if want.get("least") and not m.length[move] >= want["least"]:
                continue
            yield move

    def high(self, move: int) -> bool:
        """Whether the move begins over the stock."""
        z = float(self.tables.motion.z0[move])
        return bool(z > self.top + 0.5) or bool(np.isnan(z))

    @cached_property
    def gaps(self) -> list[int]:
        """Lines of rapid travel over the stock between two cuts: something can be put in before them."""
        m = self.tables.motion
        cutting = np.flatnonzero(self.removed > 0.5)
        if not len(cutting):
            return []
        return [
            self.line_of(move) for move in self.moves((0, 1), cutting=False)
            if cutting[0] < move < cutting[-1] and m.z0[move] == m.z1[move] and self.high(move) and m.length[move] > 1
            and self.removed[move] == 0
        ]  # fmt: skip

    def spots(self, dice: Random, radius: float) -> Iterator[tuple[float, float]]:
        """Places (mm) with untouched stock of this radius around them."""
        box, cut = self.tables.engagement.box, self.tables.engagement.cut
        if box is None or box.x is None or box.y is None or not cut.size:
            return
        ny, nx = cut.shape
        wide, high = box.x[1] - box.x[0], box.y[1] - box.y[0]
        for _ in range(200):
            x, y = dice.uniform(radius, wide - radius), dice.uniform(radius, high - radius)
            columns = slice(int((x - radius) / wide * nx), int((x + radius) / wide * nx) + 1)
            rows = slice(int((y - radius) / high * ny), int((y + radius) / high * ny) + 1)
            if x - radius > 0.5 and y - radius > 0.5 and not cut[rows, columns].any():
                yield box.x[0] + x, box.y[0] + y

    def aside(self, line: int, *texts: str) -> Sheet:
        """A sheet with lines put in before a line of travel in `gaps`, and the tool brought back afterwards."""
        sheet, m = self.sheet(), self.tables.motion
        move = int(np.flatnonzero(m.line == line)[0])
        feeds = [f for f in m.feed[:move].tolist() if f == f]
        x, y, z = (sheet.number(float(v[move]) / self.unit) for v in (m.x0, m.y0, m.z0))
        back = f"F{feeds[-1] / self.unit:.0f}" if feeds else ""
        sheet.before(line, *texts, f"G0 Z{z}", f"G0 X{x} Y{y} {back}".strip())
        return self.explicit(sheet, line)

    def explicit(self, sheet: Sheet, line: int) -> Sheet:
        """The line says its own G0 to G3, so that what stands before it may use another."""
        m = self.tables.motion
        move = int(np.flatnonzero(m.line == line)[0])
        if sheet.has(line) and not {0, 1, 2, 3} & set(sheet.codes(line)):
            number = next((w[3] for w in sheet.words(line) if w[0] == "N"), 0)
            text = sheet.text(line)
            sheet.write(line, f"{text[:number]} G{int(m.kind[move])} {text[number:].strip()}".strip())
        return sheet

    def next_line(self, move: int) -> int | None:
        """The line of the move after this one."""
        m = self.tables.motion
        return int(m.line[move + 1]) if move + 1 < len(m) else None

    @cached_property
    def feed_lines(self) -> dict[int, list[int]]:
        """Pieces (rows) by the line of the F that governs them."""
        loads, rows = self.tables.cutting.loads, {}
        for line in np.unique(loads.governs):
            if line > 0:
                rows[int(line)] = np.flatnonzero(loads.governs == line).tolist()
        return rows


def ready(name: str) -> Base:
    """A program of the workshop with the declarations beside it."""
    path = SAMPLES / name
    job = tomllib.loads(path.with_name("job.toml").read_text())
    shop = tomllib.loads((path.parent / job["shop"]).read_text()) if "shop" in job else None
    return Base(name.rpartition("/")[2], path.read_bytes(), job, shop)


def clean_samples() -> list[Base]:
    """Those of jobs of one program; of a job of several each program needs the others."""
    listed = tomllib.loads((SAMPLES / "samples.toml").read_text())["sample"]
    clean = [ready(sample["program"]) for sample in listed if not sample.get("findings")]
    return [base for base in clean if not isinstance(base.job.get("program"), list)]
