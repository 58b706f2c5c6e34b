"""What a worker of the desk does, by name: each takes the desk's folder and plain values, and gives plain values."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING, Any

from gclint.desk.declarations import save, state, take_back
from gclint.desk.names import inside
from gclint.desk.trials import TRIALS
from gclint.problem import Problem

if TYPE_CHECKING:
    from gclint.run import Run, Tables

LARGEST_PROGRAM = 256_000_000  # bytes that are checked at the desk
MOST_LISTED = 2000  # programs of a folder
MOST_PIECES = 6000  # of the path, on the drawing that declarations are made on
NUMBERED = 5  # mm to which a proposed blank is rounded up


def listing(root: Path) -> dict[str, Any]:
    """The folder's programs by name, and what else a person should know of it."""
    import os

    from gclint.folder.find import find

    found = find((str(root),))
    programs, unnamed = [], 0
    for source in found.sources:
        name = os.path.relpath(source.path or source.name, root).replace(os.sep, "/")
        if name.isprintable() and "\\" not in name and _is_text(name):
            programs.append(name)
        else:
            unnamed += 1
    left = [f"{os.path.relpath(each.path, root)}: {each.because}" for each in found.passed if "link" in each.because]
    trials = sorted(
        path.parent.relative_to(root).as_posix() for path in [*root.glob("plan.toml"), *root.glob("*/plan.toml")]
        if path.resolve().is_relative_to(root)
    )  # fmt: skip
    return {
        "programs": programs[:MOST_LISTED], "more": max(0, len(programs) - MOST_LISTED), "unnamed": unnamed,
        "left": [each for each in left if _is_text(each)][:50], "trials": trials[:200],
    }  # fmt: skip


def _is_text(name: str) -> bool:
    try:
        name.encode("utf-8")
    except UnicodeEncodeError:
        return False
    return True


def read(file: Path) -> bytes:
    if file.stat().st_size > LARGEST_PROGRAM:
        says = f"this program is larger than {LARGEST_PROGRAM // 1_000_000} MB; check it with gclint check"
        raise Problem(says)
    return file.read_bytes()


def checked(root: Path, name: str, reader: str, whole: bool) -> dict[str, Any]:
    """One program judged: its row of the list and, where the `whole` is wanted, its page and what the drawing needs.

    `heard` are the questions that were asked of the disk, with their answers: it holds while those stand.
    """
    from gclint import disk

    file = inside(root, name)
    with disk.listening() as heard:
        made = _checked(root, file, name, reader, whole)
        made["heard"] = [[list(question), answer] for question, answer in heard.items()]
    return made


def _checked(root: Path, file: Path, name: str, reader: str, whole: bool) -> dict[str, Any]:
    from gclint import __version__, disk
    from gclint.check import run
    from gclint.report.page.page_out import entry, page
    from gclint.setup.declare import Options

    if file.stat().st_size > LARGEST_PROGRAM:
        raise Problem(f"this program is larger than {LARGEST_PROGRAM // 1_000_000} MB; check it with gclint check")
    data = disk.content(file, LARGEST_PROGRAM)
    done = run(data, name, Options(), str(file))
    row = entry("", done)
    row["name"] = name
    row["mendable"] = sum(each.mendable for each in done.checked.findings)
    made: dict[str, Any] = {"row": row}
    if whole:
        made["page"] = page(done, __version__, reader)  # type: ignore[arg-type]
        made["drawing"] = drawing(done.tables) if done.tables is not None and len(done.tables.motion) else None
        made["asks"] = asks(done)
        made["used"] = [file.path for file in done.checked.used]
    return made


def asks(done: Run) -> dict[str, Any]:
    """What is taken as given and what is not judged, each by the declaration that would say it."""
    from gclint.digest.sheet_words import not_judged_by_need
    from gclint.digest.words import figure

    setup = done.tables.setup if done.tables is not None else None
    tools = []
    for row in done.checked.tools:
        tool = setup.tools.get(row.tool) if setup is not None and row.tool is not None else None
        tools.append({
            "tool": row.tool, "name": row.name, "declared_in": tool.declared_in if tool is not None else "",
            "marks": [
                {"mark": mark.mark, "suits": mark.suits, "speed": figure(mark.true_speed_rpm)} for mark in row.marks
            ],
        })  # fmt: skip
    return {
        "tools": tools,
        "assumed": [[each.what, each.value, each.declare, each.lets] for each in done.checked.assumed],
        "needs": [[need, rules] for need, rules in not_judged_by_need(done.checked).items()],
        "units": done.checked.units,
    }


def drawing(tables: Tables) -> dict[str, Any]:
    """The path from above, what it reaches, and a blank that would hold it; all in mm."""
    import numpy as np

    from gclint.digest.path import RAPID_AIR, RAPID_CUT, path_of
    from gclint.digest.simplify import simplified

    whole, hidden = path_of(tables)
    path, _ = simplified(whole, np.zeros(len(whole.x), bool), MOST_PIECES)
    kind = np.where(path.drawn, path.kind, 4)
    feeds = ~np.isin(whole.kind, (RAPID_AIR, RAPID_CUT)) & whole.drawn
    reach = None
    if feeds.any():
        rows = np.flatnonzero(feeds)
        ends = np.unique(np.concatenate([rows, np.minimum(rows + 1, len(whole.x) - 1)]))
        z = whole.z[ends]
        low = z < 0
        at = ends[low] if low.any() else ends
        reach = [[round(float(v.min()), 3), round(float(v.max()), 3)] for v in (whole.x[at], whole.y[at], whole.z[at])]
    radius = max((tool.diameter / 2 for tool in tables.setup.tools.values()), default=0.0)
    stock = tables.setup.stock
    return {
        "x": [round(float(v), 2) for v in path.x], "y": [round(float(v), 2) for v in path.y],
        "z": [round(float(v), 2) for v in path.z], "kind": [int(v) for v in kind], "hidden": hidden,
        "reach": reach, "proposed": None if reach is None else _proposed(reach, radius), "radius": round(radius, 3),
        "blank": None if stock is None else {"x": stock.x, "y": stock.y, "top": stock.top, "bottom": stock.bottom},
    }  # fmt: skip


def _proposed(reach: list[list[float]], radius: float) -> dict[str, Any]:
    """A blank in whole steps around all that the tools' rims reach, where Z zero is its top."""
    from math import ceil, floor

    low = [floor(round((axis[0] - radius) / NUMBERED, 6)) * NUMBERED for axis in reach[:2]]
    high = [ceil(round((axis[1] + radius) / NUMBERED, 6)) * NUMBERED for axis in reach[:2]]
    deep = max(0.0, -reach[2][0])
    return {"corner": low, "size": [b - a for a, b in zip(low, high)], "deep": round(deep, 3)}


def materials(root: Path) -> dict[str, Any]:
    """Every shipped card: its name, what it is, and what it warns of."""
    from gclint.cards import controller, material

    cards = []
    for name in material.names():
        card = material.material(name)
        cards.append({"name": name, "title": card.title, "cautions": list(card.cautions)})
    controllers = [{"name": name, "title": controller.controller(name).title} for name in controller.names()]
    return {"materials": cards, "controllers": controllers}


def mended(root: Path, name: str, write: bool) -> dict[str, Any]:
    """A corrected copy with its report; written beside the program, over nothing, where `write` says so."""
    from msgspec.structs import replace

    from gclint.atomic_file import write_unchanged
    from gclint.desk.names import shown
    from gclint.mend.mend import mend
    from gclint.mend.page_out import mend_page
    from gclint.mend.result import File
    from gclint.setup.declare import Options

    file = inside(root, name)
    made = mend(read(file), name, Options(), str(file))
    document, written = made.document, None
    if write and made.data is not None:
        target = _free(file)
        write_unchanged(made.data, target, None)
        written = shown(root, target)
        if document.to is not None:
            document = replace(document, to=File(written, document.to.fingerprint))
    return {"page": mend_page(made, document), "copy": made.data is not None, "written": written}


def compared(root: Path, old: str, new: str) -> dict[str, Any]:
    """The page of two versions of a program."""
    from gclint.mend.compare import compare
    from gclint.mend.page_out import compare_page
    from gclint.setup.declare import Options

    files = [(inside(root, name), name) for name in (old, new)]
    one, other = ((read(file), name, str(file)) for file, name in files)
    made = compare(one, other, Options())
    same = "The same part comes out" if made.surface.same else "Another part comes out"
    return {"page": compare_page(made), "verdict": f"{same}. Below: what is different, line by line."}


def _free(file: Path) -> Path:
    """'ring.mended.nc', or with a number where that is taken."""
    for number in range(1, 1000):
        middle = ".mended" if number == 1 else f".mended-{number}"
        target = file.with_name(f"{file.stem}{middle}{file.suffix}")
        if not target.exists() and not target.is_symlink():
            return target
    raise Problem("there are a thousand mended copies of this program; move some of them away")


def dropped(root: Path, name: str, data_file: str) -> dict[str, Any]:
    """Keep a dropped program under its name, or under one with a number where that is taken by another."""
    from gclint.atomic_file import write_unchanged
    from gclint.desk.names import name_for_drop

    kept = name_for_drop(name)
    data = Path(data_file).read_bytes()
    target = root / kept
    for number in range(2, 1000):
        if not target.exists() and not target.is_symlink():
            write_unchanged(data, target, None)
            return {"name": target.name, "renamed": target.name != kept}
        if target.is_file() and not target.is_symlink() and target.read_bytes() == data:
            return {"name": target.name, "renamed": False}  # the very same bytes are here already
        target = root / f"{Path(kept).stem}-{number}{Path(kept).suffix}"
    raise Problem("a thousand programs of this name are here already")


def still(root: Path, heard: list[list[Any]]) -> bool:
    """Whether every question of a check still has its answer."""
    from gclint import disk

    return all(disk.ask_again(tuple(question)) == answer for question, answer in heard)


WORK: dict[str, Callable[..., Any]] = {
    "listing": listing, "checked": checked, "still": still, "materials": materials, "mended": mended,
    "compared": compared, "dropped": dropped, "state": state, "save": save, "take_back": take_back,
    **TRIALS,
}  # fmt: skip
