"""Every trade term in any output has an entry in the glossary: a beginner can ask `gclint word` what it means.

TRADE and TERMS are what must be explained whatever is printed. LATER are words of the trade that nothing need print;
whoever first uses one in an output gives it an entry in rules/words (or names it under `also` of one).
"""

from __future__ import annotations

import ast
import re
import tomllib
from collections.abc import Iterator
from functools import cache
from pathlib import Path
from typing import Any

import click
import pytest

from gclint.cli.main import VERBS
from gclint.cli.main import gclint as program
from gclint.knowledge.glossary import glossary, look_up

ROOT = Path(__file__).parents[2]
# Words that mean something of their own here.
TRADE = (
    "axis", "blank", "block", "burr", "canned", "chamfer", "chatter", "chip", "climb", "clamp", "collet",
    "compensation", "compression", "contour", "conventional", "coolant", "corner", "crash", "diameter", "drill",
    "dwell", "edge", "engagement", "entry", "exporter", "facing", "feed", "finish", "floor", "flute", "fixture",
    "helix", "home", "island", "keep-out", "lap", "loop", "modal", "move", "neck", "nut", "offset", "parameter",
    "pass", "peck", "plane", "play", "plunge", "pocket", "probe", "ramp", "rapid", "resolution", "roughing",
    "runout", "scallop", "shank", "skin", "slot", "spindle", "spoilboard", "stickout", "stiffness", "stock", "tab",
    "tip", "tool", "torque", "travel", "turn", "wall", "window", "word", "wobble", "zero", "accept", "assumed",
    "finding", "fingerprint", "grade", "halt", "pack", "rule", "standing",
)
# Terms of several words, each of them ordinary by itself.
TERMS = (
    "depth of cut", "width of cut", "feed per tooth", "chip load", "chip thickness", "edge speed", "true speed",
    "set feed", "reached feed", "spindle speed", "specific cutting force", "cutting force", "engagement angle",
    "climb milling", "conventional milling", "work offset", "work zero", "machine coordinates", "tool change",
    "tool length", "canned cycle", "arc centre", "inverse time", "exact stop", "cutter compensation",
    "corner deviation", "edge radius", "flute length", "top of the stock", "clearance height", "program stop",
    "taken as given", "not judged", "material card", "tear-out", "dial mark", "spin-up", "up-cut", "down-cut",
    "centre-cutting", "downward feed", "side cut", "inside corner", "straight plunge", "effective diameter",
    "radial thinning", "bending stress", "power of the cut", "Z zero",
)
LATER = frozenset(
    ("arbor", "backlash", "burnish", "burnishing", "burnished", "chipbreaker", "chuck", "counterbore", "countersink",
     "dogbone", "dovetail", "face-mill", "fin", "fins", "gib", "gibs", "gullet", "headstock", "indexer", "insert",
     "kerf", "kerfs", "knurl", "leadscrew", "quill", "rake", "rapids", "ream", "reamer", "relief", "snipe",
     "spotface", "swarf", "tailstock", "tang", "tapping", "throat", "tram", "trammed", "tramming", "trochoid",
     "trochoidal", "undercut", "vee", "vice", "vise", "wiper"),
)  # fmt: skip
SKIPPED = {
    "must_find", "must_leave", "when", "define", "line", "worst", "worst_after", "points_at", "instead_of",
    "instead_when", "owner", "advice", "looks_at", "cause", "name", "value", "low", "high", "of", "unit",
    "standing", "grade", "source", "subject", "drawn_as", "aliases", "names", "drawing", "related", "rules", "also",
    "tables", "numbers",
}  # expressions and names, not text; sources are quoted as they are


@cache
def explained() -> frozenset[str]:
    said = [text for name, word in glossary().items() for text in (name, word.term, *word.also)]
    return frozenset(part for text in said for part in re.findall(r"[a-z][a-z']*", text.lower()))


def texts_of_toml(value: Any) -> Iterator[str]:
    if isinstance(value, str):
        yield value
    elif isinstance(value, list):
        for part in value:
            yield from texts_of_toml(part)
    elif isinstance(value, dict):
        for key, part in value.items():
            if key not in SKIPPED:
                yield from texts_of_toml(part)


def texts_of_code(file: Path) -> Iterator[str]:
    """Sentences and labels in strings, without docstrings and what stands in braces."""
    tree = ast.parse(file.read_text(encoding="utf-8"))
    inside = {id(part) for node in ast.walk(tree) if isinstance(node, ast.JoinedStr) for part in node.values}
    documents = {
        id(node.body[0].value)
        for node in ast.walk(tree)
        if isinstance(node, (ast.Module, ast.ClassDef, ast.FunctionDef)) and isinstance(node.body[0], ast.Expr)
    }
    for node in ast.walk(tree):
        text = node.value if isinstance(node, ast.Constant) and id(node) not in documents else None
        told = isinstance(text, str) and (" " in text.strip() or id(node) in inside)
        if told and not re.search(r"[{}\\[\]<>=]", str(text)):
            yield str(text)


def sources() -> Iterator[tuple[str, str]]:
    for file in sorted((ROOT / "rules").rglob("*.toml")):
        for text in texts_of_toml(tomllib.loads(file.read_text(encoding="utf-8"))):
            yield file.relative_to(ROOT).as_posix(), text
    for folder in ("report", "teach", "judge", "cutting", "stock", "trial"):
        for file in sorted((ROOT / "gclint" / folder).glob("*.py")):
            if file.name not in {"facts.py", "language.py", "packs.py", "evaluate.py"}:  # speak to writers of packs
                for text in texts_of_code(file):
                    yield file.relative_to(ROOT).as_posix(), text
    for verb in VERBS:
        root = click.Context(program, **program.context_settings)  # a command keeps the help option it first has
        command = program.get_command(root, verb)
        assert command is not None
        yield f"gclint {verb} --help", command.get_help(click.Context(command, root, info_name=verb))
        for step in command.list_commands(click.Context(command, root)) if isinstance(command, click.Group) else ():
            inner = command.get_command(click.Context(command, root), step)
            assert inner is not None
            yield f"gclint {verb} {step} --help", inner.get_help(click.Context(inner, root, info_name=step))


def words_of(text: str) -> Iterator[str]:
    """Plain words; what is code, a name in backquotes, a file or a placeholder is left out."""
    text = re.sub(r"`[^`]*`|\{[^}]*\}|\"[^\"]*\"|\S*[_/\\.#=@]\S*\w|--\S+|\b\w*\d\w*\b|\b[A-Z]{2,}\b", " ", text)
    for word in re.findall(r"[A-Za-z][A-Za-z']+(?:-[A-Za-z]+)*", text):
        yield from word.lower().split("-")


def unexplained(text: str) -> set[str]:
    """The words of the trade in a text that have no entry."""
    return {word for word in words_of(text) if word in LATER and word not in explained() and not look_up(word)}


def test_every_word_of_the_trade_in_an_output_is_explained() -> None:
    strange = {word: place for place, text in sources() for word in unexplained(text)}
    told = [f"{word} ({place}): give it an entry in rules/words" for word, place in strange.items()]
    assert not strange, "\n".join(told)


@pytest.mark.parametrize("term", [*TRADE, *TERMS])
def test_what_means_something_of_its_own_here_is_explained(term: str) -> None:
    assert look_up(term), term


def test_a_new_term_would_be_noticed() -> None:
    assert unexplained("Tighten the gib, then tram the head; see `kerf`") == {"gib", "tram"}
    assert not unexplained("A plunge leaves burrs at the edge of the blank")
    assert set(words_of("The tool grinds at `F900` on a Gib, see shop.toml")) >= {"gib", "tool"}
