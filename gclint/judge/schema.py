"""JSON Schema of rule packs, made from the structs; `python -m gclint.judge.schema` writes it."""

from __future__ import annotations

from pathlib import Path

from gclint.judge.packs import PackText
from gclint.setup.schema import as_text, schema_of

FILES = {"pack.schema.json": PackText}


def text_of(file: str) -> str:
    return as_text(schema_of(FILES[file], file))


def main() -> None:
    for file in FILES:
        (Path(__file__).parent / file).write_text(text_of(file), encoding="utf-8")


if __name__ == "__main__":
    main()
