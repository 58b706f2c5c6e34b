"""Names of codes and of families of codes, as controller cards and rules use them.

A code is written as in a program ("G1", "G59.3", "M6"). Families are what a controller usually has or lacks as a whole.
"""

from __future__ import annotations

from collections.abc import Iterator

CYCLES = ("G73", "G74", "G76", "G81", "G82", "G83", "G84", "G85", "G86", "G87", "G88", "G89")
FAMILIES: dict[str, tuple[str, ...]] = {
    "cycles": CYCLES,
    "compensation": ("G41", "G41.1", "G42", "G42.1"),
    "length": ("G43", "G43.1", "G44"),
    "cancels": ("G15", "G40", "G49", "G50", "G50.1", "G67", "G69", "G80"),
    "inch": ("G20", "G70"),
    "metric": ("G21", "G71"),
    "planes": ("G17", "G18", "G19"),
    "offsets": ("G54", "G55", "G56", "G57", "G58", "G59"),
    "more-offsets": ("G59.1", "G59.2", "G59.3"),
    "shifts": ("G52", "G92", "G92.1", "G92.2", "G92.3"),
    "origins": ("G10",),
    "home": ("G28", "G28.1", "G30", "G30.1"),
    "machine-moves": ("G53",),
    "inverse-time": ("G93",),
    "feed-per-turn": ("G95",),
    "edge-speed": ("G96", "G97"),
    "path-modes": ("G9", "G60", "G61", "G61.1", "G64"),
    "probing": ("G31", "G38.2", "G38.3", "G38.4", "G38.5"),
    "arc-centres": ("G90.1", "G91.1"),
    "turned-frames": ("G16", "G51", "G51.1", "G68"),
    "cycle-returns": ("G98", "G99"),
    "stops": ("M0", "M1"),
    "pallet": ("M60",),
    "ends": ("M2", "M30"),
    "coolant": ("M7", "M8", "M9"),
    "spindle": ("M3", "M4", "M5"),
    "spindle-backward": ("M4",),
    "turn-spindle": ("M19",),
    "overrides": ("M48", "M49"),
    "subprograms": ("M98", "M99"),
    "macro-calls": ("G65", "G66"),
}
# Ways of writing that a controller takes, refuses or passes over.
HABITS: dict[str, str] = {
    "expressions": "parameters and expressions (#1, [2*3])",
    "flow-by-number": "flow by numbered words: calls, loops and branches that begin with O and a number",
    "macro-words": "macro words (IF, WHILE, GOTO)",
    "arc-turns": "P as the number of turns of an arc",
    "arc-radius": "arcs by radius (R)",
    "one-centre-word": "arcs with one centre word",
    "full-circles": "full circles in one block",
    "semicolon-comments": "comments behind a semicolon",
    "nested-brackets": "brackets inside a comment",
    "checksums": "checksums (*33)",
    "block-delete": "the slash that puts a block out of use",
    "program-numbers": "program numbers (O1234, :1234)",
    "percent": "the percent sign as a frame",
}
WORD = "word"  # stands for the letter of a word where a family is asked for
LETTERS = tuple("ABCDEFHIJKLPQRSTUVWXYZ")  # words that are no codes


def spelled(letter: str, tenths: int) -> str:
    """('G', 593) -> "G59.3"."""
    return f"{letter}{tenths // 10}" + (f".{tenths % 10}" if tenths % 10 else "")


def tenths(code: str) -> int:
    """Code number x 10 of "G59.3"; ValueError for what is no code."""
    if code[:1] not in ("G", "M") or not code[1:2].isdigit():
        raise ValueError(code)
    value = float(code[1:]) * 10
    if not 0 <= value < 10000 or abs(value - round(value)) > 1e-6:
        raise ValueError(code)
    return round(value)


def codes_of(name: str) -> Iterator[str]:
    """The codes a name on a card stands for: a family, a code, or a range such as "G54-G59"."""
    if name in FAMILIES:
        yield from FAMILIES[name]
        return
    first, dash, last = name.partition("-")
    low = tenths(first)
    high = tenths(last) if dash else low
    if last[:1] not in ("", first[:1]) or high < low:
        raise ValueError(name)
    for number in range(low, high + 1, 10):
        yield spelled(first[0], number)


def family_of(code: str) -> str:
    """The family a code belongs to, the narrowest first; "" where it belongs to none."""
    found = [name for name, codes in FAMILIES.items() if code in codes]
    return min(found, key=lambda name: len(FAMILIES[name])) if found else ""


KINDS = ("", WORD, *FAMILIES, *HABITS)  # what a fault of the controller's card is about, by number
KIND = {name: number for number, name in enumerate(KINDS)}
