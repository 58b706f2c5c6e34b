"""Runs a text the whole way for the tests of this room."""

from __future__ import annotations

import tempfile
from pathlib import Path

from gclint.check import check
from gclint.setup.declare import Options
from gclint.tables.finding import Checked, Finding


def tried(
    program: str,
    *tools: str,
    material: str | None = None,
    stock: str | None = None,
    shop: str | None = None,
    job: str | None = None,
    house: str | None = None,
) -> Checked:
    with tempfile.TemporaryDirectory() as folder:
        paths: dict[str, str | None] = {"shop": None, "job": None}
        for name, text in (("shop", shop), ("job", job), ("house", house)):
            if text is not None:
                path = Path(folder) / f"{name}.toml"
                path.write_text(text, encoding="utf-8")
                paths[name] = str(path)
        options = Options(material, tools, stock, paths["shop"], paths["job"])
        return check(program.encode(), "try.nc", options, str(Path(folder) / "try.nc"))


def found(checked: Checked, *rules: str) -> list[Finding]:
    return [finding for finding in checked.findings if finding.rule in rules]


def names(checked: Checked, milder: bool = False) -> set[str]:
    """Rules with findings that stop the job (or, with `milder`, all of them)."""
    return {f.rule for f in checked.findings if milder or f.grade != "consider"}
