"""The glossary: every entry whole, found by each of its names."""

from __future__ import annotations

import re

import pytest

from gclint.knowledge.glossary import entry, glossary, groups, look_up, plain
from gclint.knowledge.glosses import glosses
from gclint.packs.shipped_packs import shipped_packs
from gclint.problem import Problem
from gclint.teach.words_page import FILE, page


@pytest.mark.parametrize("name", glossary())
def test_an_entry_leads_only_to_what_there_is(name: str) -> None:
    word = glossary()[name]
    rules = {rule.name for pack in shipped_packs() for rule in pack.rules}
    assert not set(word.related) - set(glossary()) - {name}
    assert not set(word.rules) - rules
    assert not word.standing or word.source
    assert all(len(line) <= 76 for line in word.drawing.splitlines())
    assert word.means.strip().endswith(".")


def test_a_name_means_one_entry() -> None:
    assert sum(len(group.words) for group in groups()) == len(glossary())
    named = [{plain(s) for s in (name, word.term, *word.also)} for name, word in glossary().items()]
    spellings = [spelling for names in named for spelling in names]
    assert sorted(spellings) == sorted(set(spellings))


def test_every_gloss_in_a_report_is_of_an_entry_and_stands_before_the_shorter_ones_in_it() -> None:
    said = [each.said for each in glosses().values()]
    assert set(glosses()) <= set(glossary())
    for name, each in glosses().items():
        assert look_up(each.said) == name or re.fullmatch(each.said, "dial C")
    for place, longer in enumerate(said):
        assert not [shorter for shorter in said[:place] if re.search(rf"\b{shorter}\b", longer)]


@pytest.mark.parametrize(
    ("asked", "name"),
    [
        ("chip load", "feed-per-tooth"), ("Chip-Load", "feed-per-tooth"), ("chip_loads", "feed-per-tooth"),
        ("fz", "feed-per-tooth"),
        ("climb milling", "climb"), ("entries", "entry"), ("hex", "chip-thickness"), ("stepover", "width-of-cut"),
        ("passes", "pass"),
    ],
)
def test_other_names_are_found(asked: str, name: str) -> None:
    assert look_up(asked) == name


def test_an_unknown_word_names_the_nearest() -> None:
    with pytest.raises(Problem, match="nearest"):
        entry("chp load")


def test_the_page_of_first_words_is_up_to_date() -> None:
    assert FILE.read_text(encoding="utf-8") == page(), "run  python -m gclint.teach.words_page"
    assert sum(word.first > 0 for word in glossary().values()) == 12
