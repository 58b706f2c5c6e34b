"""JSON Schema of rule packs, made from the structs; `python -m gclint.packs.schema` writes it."""

from __future__ import annotations

from gclint.json_schema import write
from gclint.packs.pack import PackText
from gclint.setup.schema import schemas

FILES = {"pack.schema.json": PackText}

if __name__ == "__main__":
    write(schemas(FILES), __file__)
