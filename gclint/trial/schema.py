"""JSON Schemas of plan.toml and grades.toml, made from the structs; `python -m gclint.trial.schema` writes them."""

from __future__ import annotations

from gclint.json_schema import write
from gclint.setup.schema import schemas
from gclint.trial.plan import Grades, Plan

FILES = {"plan.schema.json": Plan, "grades.schema.json": Grades}

if __name__ == "__main__":
    write(schemas(FILES), __file__)
