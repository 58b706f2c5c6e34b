"""Signatures in a job file: which are of a program, whether they still stand, and the text that adds one."""

from __future__ import annotations

import datetime
from pathlib import PurePath

from gclint.problem import Problem
from gclint.setup.used import of_all, unsigned
from gclint.tables.finding import Signature
from gclint.tables.setup import Setup


def signatures(setup: Setup, name: str, fingerprint: str) -> tuple[Signature, ...]:
    """Those of the program `name`, in the order of the file."""
    declared = of_all(setup.used) if setup.signed else ""
    made = []
    for each in setup.signed:
        if PurePath(each.program).name != _plain(name):
            continue
        same = {"the program": fingerprint == each.fingerprint, "a declaration": declared == each.declarations}
        changed = tuple(what for what, is_same in same.items() if not is_same)
        made.append(Signature(each.by, each.on, not changed, changed))
    return tuple(made)


def signed_text(before: str, path: str, setup: Setup, name: str, fingerprint: str, by: str, on: datetime.date) -> str:
    """The job file with one more `[[signed]]` at its end, all else as it was. Raises Problem."""
    import tomlkit

    row = tomlkit.table()
    row.add("program", _plain(name))
    row.add("fingerprint", fingerprint)
    row.add("declarations", of_all(setup.used))
    if by:
        row.add("by", by)
    row.add("on", on)
    rows = tomlkit.aot()
    rows.append(row)
    document = tomlkit.document()
    document.add("signed", rows)
    made = before.rstrip() + "\n\n" + tomlkit.dumps(document)
    if unsigned(made) != unsigned(before):
        raise Problem("the signature cannot be written into this file without changing what it declares", path)
    return made


def _plain(name: str) -> str:
    return PurePath(name.replace("\\", "/")).name
