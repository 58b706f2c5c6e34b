"""The functions that `import gclint` offers: what the commands do, for programs that call it.

Every text means what it means on the command line, with its units: `stock="120 x 80 x 18 mm at 0 0"`. None of these
writes a file, prints or ends the process. All raise `gclint.Problem` for what is declared or asked wrongly, with
`path`, `line` and `column` where they are known, and `gclint.Unreadable`, which is one, for a program that cannot be
read.
"""

from __future__ import annotations

import os
from collections.abc import Sequence
from typing import TYPE_CHECKING, Literal

from msgspec import Struct

if TYPE_CHECKING:
    from gclint.mend.result import Document
    from gclint.report.answers.window_out import WindowOut
    from gclint.setup.declare import Options
    from gclint.tables.finding import Checked, Finding

Program = str | os.PathLike[str] | bytes
Name = str | os.PathLike[str]
Grade = Literal["halt", "change", "consider"]


class Mended(Struct, frozen=True):
    """What `mend` made. `copy` is the corrected program, or None where none was needed or nothing could be proved.

    `report` is the document of `gclint mend --as json`: the changes, their proof, and what was not mended and why.
    """

    copy: bytes | None
    report: Document


def check(
    program: Program, *, beside: Name | None = None, material: str | None = None, tools: Sequence[str] = (),
    stock: str | None = None, shop: Name | None = None, job: Name | None = None, dial: str | None = None,
) -> Checked:  # fmt: skip
    """Judge one program, as `gclint check` does, and return what was found.

    `program` is a file or the bytes of a program; for bytes `beside` names the file that they stand for, which need not
    be there: declarations and subprograms are looked for beside it (without it in the working folder), and the result
    is told by its name. With neither `shop` nor `job` the nearest shop.toml and job.toml are used.

    The result holds the values of `gclint check --as json` under the same names, and is equal for equal input. Lengths
    end in `_mm`, times in `_s`; `findings` are ordered by harm, and those a person accepted have `accepted`. An empty
    `findings` is no promise: see `not_judged` and `assumed`.

    Raises Problem for wrong declarations, and Unreadable for a program that cannot be read. A failure inside gclint is
    no exception but a finding, internal-error.
    """
    from gclint.check import run

    data, name, path = _read(program, beside)
    return run(data, name, _options(material, tools, stock, shop, job, dial), path).checked


def failing(checked: Checked, at: Grade = "change") -> tuple[Finding, ...]:
    """Return the findings for which `gclint check --fail-at` ends with 1: of this grade or graver, not accepted."""
    from gclint.digest.sheet_words import failing as found
    from gclint.problem import Problem
    from gclint.tables.setup import GRADES

    if at not in GRADES:
        raise Problem(f'there is no grade "{at}"; the grades are {", ".join(GRADES)}')
    return tuple(found(checked, at))


def mend(
    program: Program, *, beside: Name | None = None, only: Sequence[str] = (), tabs: bool = False, clip: bool = False,
    material: str | None = None, tools: Sequence[str] = (), stock: str | None = None, shop: Name | None = None,
    job: Name | None = None, dial: str | None = None,
) -> Mended:  # fmt: skip
    """Make a corrected copy of a program, with the proof that it cuts the same part, and return it: nothing is written.

    `only` names the rules whose findings are mended (none: all). `tabs` and `clip` propose tabs, and an end of cuts at
    the underside. The other arguments are those of `check`. A person must look at a copy before it runs.
    """
    from gclint.mend.mend import mend as mended

    data, name, path = _read(program, beside)
    extra = tuple(each for each, asked in (("tabs", tabs), ("clip", clip)) if asked)
    made = mended(data, name, _options(material, tools, stock, shop, job, dial), path, tuple(only), extra)
    return Mended(made.data, made.document)


def window(
    material: str | None = None, tool: str | int | None = None, *, operation: str | None = None, ae: str | None = None,
    ap: str | None = None, shop: Name | None = None, job: Name | None = None, dial: str | None = None,
    speed: str | None = None, feed: str | None = None,
) -> WindowOut:  # fmt: skip
    """Work out which pairs of speed and feed a tool can run in a material, as `gclint window` does.

    `tool` is a text ("flat 6mm 2fl up-cut") or a tool number of the shop file; `operation` is "slot", "side" or
    "finish"; `ae` and `ap` are lengths ("1.5 mm"), `speed` is rev/min and `feed` a feed ("1500 mm/min") to judge. The
    result holds the values of `gclint window --as json`: speeds in rev/min, feeds in mm/min, lengths in mm.

    Raises Problem where material, tool or flutes are not known, or a value cannot be.
    """
    from gclint.report.answers.window_asked import asked_of
    from gclint.report.answers.window_out import answer

    what = None if tool is None else str(tool)
    asked = asked_of(material, what, operation, ae, ap, _text(shop), _text(job), dial, speed, feed, None)
    return answer(asked).out


def _read(program: Program, beside: Name | None) -> tuple[bytes, str, str | None]:
    """(bytes, name that is shown, path that declarations are looked for beside)."""
    from gclint.folder.source import STANDARD_INPUT, path_of, read_bytes, shown_as

    if isinstance(program, bytes):
        where = _text(beside)
        return program, "a program in memory" if where is None else shown_as(where), where
    if beside is not None:
        raise TypeError("beside goes with the bytes of a program")
    name = os.fspath(program)
    if name == STANDARD_INPUT:
        name = f"{os.curdir}{os.sep}{name}"  # a file of that name: standard input belongs to the caller
    return read_bytes(name), shown_as(name), path_of(name)


def _options(
    material: str | None, tools: Sequence[str], stock: str | None, shop: Name | None, job: Name | None, dial: str | None
) -> Options:
    from gclint.setup.declare import Options

    if isinstance(tools, str):
        raise TypeError('tools is a sequence of texts, such as ["1: flat 6mm 2fl"]')
    return Options(material, tuple(tools), stock, _text(shop), _text(job), dial=dial)


def _text(name: Name | None) -> str | None:
    return None if name is None else os.fspath(name)
