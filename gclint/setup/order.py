"""The order in which the programs of a job cut one blank, and how the blank lies for each of them."""

from __future__ import annotations

from pathlib import Path

from msgspec import Struct
from msgspec.structs import replace

from gclint import disk
from gclint.problem import Problem, nearest
from gclint.setup.declare import Declared, File
from gclint.setup.declared import FlipTable, HoldTable, Job, StockTable
from gclint.toml.file import Key
from gclint.toml.named import program as placed_program


class Step(Struct, frozen=True):
    """One program of the order: where it lies, where the job names it, how the blank is turned before it."""

    path: str
    name: str
    key: Key
    flip: FlipTable | None = None


class Order(Struct, frozen=True):
    """`at` is the place of the program in question."""

    steps: tuple[Step, ...]
    at: int


def steps_of(job: Job, file: File, program_path: str | None) -> tuple[Step, ...]:
    """All programs that cut this blank, in their order. Raises Problem, with its place, for an order that cannot be.

    Where the job names no program, the one that is checked comes behind those of `after`.
    """
    named: list[tuple[Key, str]] = [(("after", n), name) for n, name in enumerate(job.after)]
    if isinstance(job.program, str):
        named.append((("program",), job.program))
    elif job.program is not None:
        named += [(("program", n), name) for n, name in enumerate(job.program)]
    folder = Path(file.path).parent
    steps: list[Step] = []
    seen: dict[str, Key] = {}
    for key, name in named:
        try:
            path = placed_program(folder, name)
        except Problem as problem:
            raise file.wrong(key, problem.says) from None
        same = disk.real(path)
        if same in seen:
            where = "in `after` and in `program`" if seen[same][0] != key[0] else "twice"
            raise file.wrong(key, f'"{name}" would come after itself: it stands {where}')
        seen[same] = key
        steps.append(Step(str(path), name, key))
    if job.program is None and program_path is not None and disk.real(Path(program_path)) not in seen:
        steps.append(Step(program_path, Path(program_path).name, ()))
    return _turned(steps, job, file)


def _turned(steps: list[Step], job: Job, file: File) -> tuple[Step, ...]:
    """With the flips at their places."""
    for n, flip in enumerate(job.flip):
        key: Key = ("flip", n, "before")
        found = [row for row, step in enumerate(steps) if step.name == flip.before]
        if not found:
            if job.program is None:  # another program of this folder
                continue
            known = tuple(step.name for step in steps)
            raise file.wrong(key, f'"{flip.before}" is not among the programs of this job{nearest(flip.before, known)}')
        if steps[found[0]].flip is not None:
            raise file.wrong(key, f'the blank is turned before "{flip.before}" already: once is enough')
        _refuse_wrong(flip, n, file)
        steps[found[0]] = replace(steps[found[0]], flip=flip)
    return tuple(steps)


def _refuse_wrong(flip: FlipTable, n: int, file: File) -> None:
    for m, box in enumerate(flip.keep_out or ()):
        for axis, a, b in zip("XYZ", box.from_, box.to):
            if a >= b:
                says = f"in {axis} it does not lie above the corner named in `from`"
                raise file.wrong(("flip", n, "keep_out", m, "to"), says)


def order_of(declared: Declared) -> Order | None:
    """Where the program that is checked stands in the order; None where nothing says so."""
    job, file, path = declared.job, declared.job_file, declared.program_path
    if job is None or file is None or path is None or not job.one_blank:
        return None
    steps = steps_of(job, file, path)
    here = disk.real(Path(path))
    at = next((n for n, step in enumerate(steps) if disk.real(Path(step.path)) == here), None)
    if at is None or (len(steps) == 1 and steps[0].flip is None):
        return None
    order = Order(steps, at)
    turned = next((step for step in order.steps[: at + 1] if step.flip is not None), None)
    if turned is not None and turned.flip is not None:
        _refuse_unknown_blank(declared, job, file, job.flip.index(turned.flip))
    for step in order.steps[:at]:
        if not disk.is_file(Path(step.path)):
            raise file.wrong(step.key, f'there is no program "{step.name}" in the folder of this job')
    return order


def _refuse_unknown_blank(declared: Declared, job: Job, file: File, n: int) -> None:
    known: tuple[object, object] = (job.stock.size, job.stock.corner) if job.stock is not None else (None, None)
    if declared.stock is not None:
        known = declared.stock
    missing = [key for key, value in zip(("size", "corner"), known) if value is None]
    if missing:
        says = f"a blank can be turned over only where it is known: give [stock] {' and '.join(missing)} as well"
        raise file.wrong(("flip", n, "axis"), says)


def declared_at(declared: Declared, order: Order, place: int) -> Declared:
    """What is declared as it holds for one program of the order: after every flip up to it."""
    job = declared.job
    assert job is not None
    stock = declared.stock
    for step in order.steps[: place + 1]:
        flip = step.flip
        if flip is None:
            continue
        if flip.corner is not None:
            job = replace(job, stock=replace(job.stock or StockTable(), corner=flip.corner))
            stock = (stock[0], flip.corner) if stock is not None else None
        if flip.z_zero is not None:
            job = replace(job, z_zero=flip.z_zero)
        if flip.hold is not None:
            job = replace(job, hold=HoldTable(by=flip.hold) if isinstance(flip.hold, str) else flip.hold)
        if flip.keep_out is not None:
            job = replace(job, keep_out=flip.keep_out)
    earlier = tuple(step.name for step in order.steps[:place])
    turned = order.steps[place].flip is not None
    path = order.steps[place].path if place != order.at else declared.program_path
    return replace(declared, job=job, stock=stock, earlier=earlier, turned=turned, program_path=path)
