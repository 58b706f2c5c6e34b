"""Finds and reads what people declare: the options, job.toml, shop.toml."""

from __future__ import annotations

import os
from collections.abc import Callable
from pathlib import Path
from typing import TypeVar

from msgspec import Struct

from gclint import disk
from gclint.problem import Problem
from gclint.setup.declared import Job, Shop
from gclint.setup.tool_text import stock_from_text, tool_from_text
from gclint.tables.setup import Assumed, Tool
from gclint.toml.file import Key, decode, problem_at, read_text
from gclint.toml.named import declaration, program, readable

JOB_FILE, SHOP_FILE = "job.toml", "shop.toml"


class Options(Struct, frozen=True):
    """What the command line gives; texts as typed."""

    material: str | None = None
    tools: tuple[str, ...] = ()
    stock: str | None = None
    shop: str | None = None
    job: str | None = None
    fail_at: str | None = None
    dial: str | None = None  # the mark that is set, over the job's
    windows: str | None = None  # a shop file whose [windows] stand in for those of the shop


class File(Struct, frozen=True):
    """A declaration file with its text, so that later steps can point into it."""

    path: str
    text: str

    def wrong(self, key: tuple[str | int, ...], says: str, on_key: bool = False) -> Problem:
        return problem_at(self.text, self.path, key, says, on_key)

    def line_of(self, key: tuple[str | int, ...]) -> str:
        """'job.toml, line 12': where a declared value stands."""
        line = self.wrong(key, "").line
        return f"{Path(self.path).name}, line {line}" if line else Path(self.path).name


class Declared(Struct, frozen=True):
    """Everything declared, not combined yet. Paths are as the user can open them."""

    options: Options
    tools: tuple[Tool, ...] = ()  # from the command line
    stock: tuple[tuple[float, float, float], tuple[float, float] | None] | None = None  # from the command line
    shop: Shop | None = None
    job: Job | None = None
    shop_file: File | None = None
    job_file: File | None = None
    programs: tuple[str, ...] = ()  # the job's programs, in their order
    packs: tuple[str, ...] = ()
    assumed: tuple[Assumed, ...] = ()
    program_path: str | None = None
    earlier: tuple[str, ...] = ()  # names of the programs that cut the blank before this one
    turned: bool = False  # the blank is turned over right before it
    windows: tuple[Shop, File] | None = None  # whose [windows] are used, where it is not the shop


def declare(options: Options, program_path: str | None) -> Declared:
    """Reads the options and the files they (or, with neither --shop nor --job, the folders around the program) name.

    `program_path` None: standard input or no program yet; the working folder is searched. Raises Problem.
    """
    assumed: list[Assumed] = []
    job_path = Path(options.job) if options.job else None
    shop_path = Path(options.shop) if options.shop else None
    searched = job_path is None and shop_path is None
    if searched:
        job_path, shop_path = files_around(program_path)
    job, job_file = (None, None) if job_path is None else _read(job_path, Job, "job file")
    named = shop_path is not None and not searched
    if job and job_file and job_path and job.shop is not None and not named:
        shop_path = placed(job_file, ("shop",), declaration, job.shop)
        if not disk.is_file(shop_path):
            raise job_file.wrong(("shop",), f'there is no shop file "{job.shop}" in the folder of this job')
    shop, shop_file = (None, None) if shop_path is None else _read(shop_path, Shop, "shop file")
    if searched:
        because = "it lies beside the program or in a folder above, and neither --shop nor --job was given"
        files = (("job file", job_file, True), ("shop file", shop_file, not (job and job.shop is not None)))
        assumed += [Assumed(what, file.path, because) for what, file, found in files if file and found]
    programs, packs = _named(job, job_file)
    packs = tuple(dict.fromkeys((*_packs(shop, shop_file), *packs)))
    before = () if job is None or job_file is None else tuple(str(Path(job_file.path).parent / n) for n in job.after)
    if searched and job_file and program_path and programs and not _among(program_path, (*programs, *before)):
        because = f"it names {programs[0]}, and is used for this program all the same"
        assumed.append(Assumed("job", job_file.path, because))
    return Declared(
        options=options,
        tools=_tools(options),
        stock=None if options.stock is None else stock_from_text(options.stock),
        shop=shop,
        job=job,
        shop_file=shop_file,
        job_file=job_file,
        programs=programs,
        packs=packs,
        assumed=tuple(assumed),
        program_path=program_path,
        windows=_read(Path(options.windows), Shop, "shop file") if options.windows else None,
    )


def refuse_wrong(options: Options) -> None:
    """Raise Problem for options that no program can be checked with: before many programs say so."""
    _tools(options)
    if options.stock is not None:
        stock_from_text(options.stock)
    if options.job or options.shop:
        declare(options, None)


def files_around(program_path: str | None) -> tuple[Path | None, Path | None]:
    """(job file, shop file) of the nearest folder that has one; a job without a shop beside it takes one from above."""
    start = Path(program_path).parent if program_path else Path()
    job: Path | None = None
    for folder in (start, *disk.absolute(start).parents):
        if job is None and disk.there(folder / JOB_FILE):
            job = readable(folder / JOB_FILE)
        if disk.there(folder / SHOP_FILE):
            return job, readable(folder / SHOP_FILE)
    return job, None


T = TypeVar("T")


def _read(path: Path, into: type[T], called: str) -> tuple[T, File]:
    text = read_text(path, called)
    return decode(text, into, str(path)), File(str(path), text)


def _named(job: Job | None, file: File | None) -> tuple[tuple[str, ...], tuple[str, ...]]:
    """(programs, packs) of the job, as paths."""
    if job is None or file is None:
        return (), ()
    names = (job.program,) if isinstance(job.program, str) else job.program or ()
    places: list[Key] = [("program",)] if isinstance(job.program, str) else [("program", n) for n in range(len(names))]
    programs = tuple(str(placed(file, key, program, name)) for key, name in zip(places, names))
    return programs, _packs(job, file)


def _packs(table: Job | Shop | None, file: File | None) -> tuple[str, ...]:
    """House packs that a job or a shop names, as paths without detours."""
    if table is None or file is None:
        return ()
    found = []
    for n, name in enumerate(table.packs):
        path = placed(file, ("packs", n), declaration, name)
        if not disk.exists(path):
            raise file.wrong(("packs", n), f'there is no rule pack "{name}" in the folder of this file')
        found.append(os.path.normpath(path))
    return tuple(found)


def placed(file: File, key: Key, find: Callable[[Path, str], Path], name: str) -> Path:
    """The file that `file` names under `key`. Raises Problem at that key."""
    try:
        return find(Path(file.path).parent, name)
    except Problem as problem:
        raise file.wrong(key, problem.says) from None


def _among(program_path: str, programs: tuple[str, ...]) -> bool:
    here = disk.absolute(Path(program_path))
    return any(disk.absolute(Path(name)) == here or disk.real(Path(name)) == disk.real(here) for name in programs)


def _tools(options: Options) -> tuple[Tool, ...]:
    tools = tuple(tool_from_text(text) for text in options.tools)
    numbers = [tool.number for tool in tools]
    for number in numbers:
        if numbers.count(number) > 1:
            raise Problem(f"tool {number} is given twice", "--tool")
    return tools
