"""What a rule is about, from rules/model/subjects.toml: how its places are drawn, and when it is put right."""

from __future__ import annotations

from functools import cache

from msgspec import Struct

from gclint.packs.pack import RuleText
from gclint.shipped import folder


class Subject(Struct, frozen=True, forbid_unknown_fields=True):
    order: int  # what comes first is put right first
    title: str
    drawn_as: tuple[str, ...]  # names of gclint.teach.drawings.VIEWS
    tables: tuple[str, ...]  # whose rules are about this where they name no subject
    afterwards: str  # what to look and listen for when it has been put right


@cache
def subjects() -> dict[str, Subject]:
    """By name. Raises Problem where the file is damaged."""
    from gclint.toml.file import load

    return load(folder() / "model" / "subjects.toml", dict[str, Subject], "list of subjects")


def subject_of(rule: RuleText) -> Subject:
    named = subjects().get(rule.subject)
    if named is not None:
        return named
    return next((each for each in subjects().values() if rule.looks_at in each.tables), subjects()["state"])
