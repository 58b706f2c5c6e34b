"""The few words that a report puts behind the first use of a term: every report needs them, few the whole glossary."""

from __future__ import annotations

from functools import cache

from msgspec import Struct

from gclint.shipped import folder


class Gloss(Struct, frozen=True, forbid_unknown_fields=True):
    said: str  # how reports write the term, as a regular expression
    gloss: str


@cache
def glosses() -> dict[str, Gloss]:
    """By the name of the glossary's entry, the longer terms first. Raises Problem where the file is damaged."""
    from gclint.toml.file import load

    return load(folder() / "model" / "glosses.toml", dict[str, Gloss], "list of glosses")
