"""JSON Schemas of plan.toml and grades.toml, made from the structs; `python -m gclint.trial.schema` writes them."""

from __future__ import annotations

from pathlib import Path

from gclint.setup.schema import as_text, schema_of
from gclint.trial.plan import Grades, Plan

FILES = {"plan.schema.json": Plan, "grades.schema.json": Grades}


def text_of(file: str) -> str:
    return as_text(schema_of(FILES[file], file))


def main() -> None:
    for file in FILES:
        (Path(__file__).parent / file).write_text(text_of(file), encoding="utf-8")


if __name__ == "__main__":
    main()
