"""JSON Schema of rule packs, made from the structs; `python -m gclint.judge.schema` writes it."""

from __future__ import annotations

from gclint.judge.packs import PackText
from gclint.setup.schema import write

FILES = {"pack.schema.json": PackText}

if __name__ == "__main__":
    write(FILES, __file__)
