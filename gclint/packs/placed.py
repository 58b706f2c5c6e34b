"""Where in the text of a pack something is wrong."""

from __future__ import annotations

from gclint.problem import Problem


def placed(source: str, path: str, key: tuple[str | int, ...], says: str, at: int = 0, on_key: bool = False) -> Problem:
    """A Problem at character `at` of the value behind a key of a pack's text."""
    from gclint.toml.place import Places, offset_in

    places = Places(source)
    place = places.of(key, on_key)
    named = ".".join(part for part in key if isinstance(part, str) and part != "rule")
    says = f"{named}: {says}" if named else says
    if place is None:
        return Problem(says, path)
    line, column = place
    start = sum(len(row) + 1 for row in source.split("\n")[: line - 1]) + column - 1
    if on_key:
        return Problem(says, path, line, column)
    offset = offset_in(source, start, at)
    return Problem(says, path, source.count("\n", 0, offset) + 1, offset - (source.rfind("\n", 0, offset) + 1) + 1)
