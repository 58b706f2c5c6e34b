"""The words of the trade, from rules/words/*.toml: what each means, for the screen, the page and the README alike."""

from __future__ import annotations

import re
from functools import cache

from msgspec import Struct

from gclint.problem import Problem, nearest
from gclint.shipped import folder


class Word(Struct, frozen=True, forbid_unknown_fields=True):
    """One entry; all is text to show as it stands, paragraphs of `more` parted by a blank line."""

    term: str  # as people say it: "feed per tooth"
    means: str  # one sentence
    more: str = ""  # longer, with numbers
    also: tuple[str, ...] = ()  # other names for the same thing, by which it is found too
    drawing: str = ""  # plain characters, at most 76 columns
    related: tuple[str, ...] = ()  # names of other entries
    rules: tuple[str, ...] = ()  # names of rules that speak of it
    everyday: bool = False  # so common a word that a text that uses it is not thereby hard to read
    first: int = 0  # place among the words that a beginner needs before all others; 0: not one of them
    standing: str = ""  # where a number or a definition is taken from something: "published", "practice", "memory"
    source: str = ""


class _File(Struct, frozen=True, forbid_unknown_fields=True):
    about: str
    order: int
    word: dict[str, Word]


class Group(Struct, frozen=True):
    """The words of one file, by name."""

    about: str
    words: dict[str, Word]


@cache
def groups() -> tuple[Group, ...]:
    """All entries, in the files' own order. Raises Problem where a file is damaged or a name stands twice."""
    from gclint.toml.file import load

    read = [load(path, _File, "list of words") for path in sorted((folder() / "words").glob("*.toml"))]
    return tuple(Group(each.about, each.word) for each in sorted(read, key=lambda each: each.order))


@cache
def glossary() -> dict[str, Word]:
    """Every entry by its name ("feed-per-tooth"), in alphabetical order."""
    named = {name: word for group in groups() for name, word in group.words.items()}
    return dict(sorted(named.items()))


@cache
def other_names() -> dict[str, str]:
    """Name of the entry by each spelling that finds it: its name, its term and its other names, in plain form."""
    found: dict[str, str] = {}
    for name, word in glossary().items():
        for spelling in word.also:
            found.setdefault(plain(spelling), name)
    for name, word in glossary().items():
        found[plain(word.term)] = found[plain(name)] = name
    return found


def look_up(asked: str) -> str | None:
    """The name of the entry that somebody means by `asked`: any case, hyphens or blanks, one or many."""
    names, wanted = other_names(), plain(asked)
    singular = f"{wanted.removesuffix('ies')}y"
    spellings = (wanted, f"{wanted}s", wanted.removesuffix("s"), wanted.removesuffix("es"), singular)
    return next((names[spelling] for spelling in spellings if spelling in names), None)


def words_in(text: str) -> list[str]:
    """Names of the entries whose words a text uses, in the order of first use; everyday words left out."""
    found = []
    for match in _spellings().finditer(text.lower()):
        name = look_up(match[0])
        if name is not None and name not in found:
            found.append(name)
    return found


@cache
def _spellings() -> re.Pattern[str]:
    hard = [name for name, word in glossary().items() if not word.everyday]
    spellings = {s.lower() for name in hard for s in (glossary()[name].term, *glossary()[name].also)}
    parts = (re.escape(s).replace(r"\ ", "[ -]") for s in sorted(spellings, key=len, reverse=True) if len(s) > 2)
    return re.compile(rf"(?<![\w-])(?:{'|'.join(parts)})(?:s|es)?(?![\w-])")


def entry(asked: str) -> tuple[str, Word]:
    """(name, entry). Raises Problem, with the nearest word, where there is none."""
    name = look_up(asked)
    if name is None:
        guess = nearest(plain(asked)[:60], list(other_names()))
        raise Problem(f'the glossary has no word "{asked[:60]}"{guess}; `gclint word` lists them all')
    return name, glossary()[name]


def plain(spelling: str) -> str:
    """'Chip load', 'chip-load' and 'chip_load' are one."""
    return re.sub(r"[\s_-]+", "-", spelling.strip().lower())
