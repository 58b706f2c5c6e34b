"""Results without the place they were made in: what a check asked and found, told from its program's own folder.

The same program with the same declarations around it, in another folder, checkout or machine, has the same result but
for names of files. So each name is kept as its way from the program's folder, and put in again where it is shown:

    typed folder    "t0" is the folder as it was typed ("jobs/anna"), "t1" the one it is in, as typed
    real folders    "a0" is that folder's absolute name, "a1" the one it is in, and so on up

A result is kept in this way only where every name can be told so, and no other text repeats one. What is asked of every
folder up to the root (is there a job.toml?) is asked anew of the folders that are above the program now.
"""

from __future__ import annotations

import json
import os
import re
from collections.abc import Callable, Iterable
from pathlib import Path
from typing import Any

import msgspec

from gclint.disk import Question
from gclint.folder.outcome import Outcome, Source, Task
from gclint.program import LARGEST
from gclint.setup.declare import JOB_FILE, SHOP_FILE

OPEN, SHUT = "\ue000", "\ue001"  # around the name of a folder; in no text of ours, and a program with them stays put
MARKED = re.compile(f"{OPEN}([atr])(\\d+){SHUT}/?")
NAME_BEFORE, NAME_BEHIND = r"(?<![\w./\\-])", r"(?![\w/\\-]|\.\w)"
UNTOUCHED = "texts"  # of an outcome: lines of the program itself
SEARCH = "search"  # stands for all questions for job.toml and shop.toml in the folders above
MOST_LEVELS = 64


class Home:
    """The folder of a program: as typed, and absolute, each with the folders above it."""

    def __init__(self, source: Source, real: dict[str, list[str]] | None = None) -> None:
        """`real` remembers what lies behind the links of a folder, for the next program in it."""
        typed = Path(source.name).parent
        self.name, self.shown = Path(source.name).name, source.shown
        self.typed = [str(typed), *(str(each) for each in typed.parents if str(each) not in (".", os.sep))]
        absolute = Path(os.path.normpath(typed.absolute()))
        self.absolute = [str(each) for each in (absolute, *absolute.parents)]
        self._real = {} if real is None else real

    @property
    def real(self) -> list[str]:
        """The absolute ones behind every link."""
        own = self.absolute[0]
        if own not in self._real:
            self._real[own] = [os.path.realpath(each) for each in self.absolute]
        return self._real[own]

    def token(self, path: str) -> str | None:
        """A name of a file as its way from here; None where it has none."""
        own = self.typed[:1] if self.typed[0].startswith(os.sep) else self.typed
        for level, folder in enumerate(own):
            if path.startswith(folder + os.sep):
                return f"{OPEN}t{level}{SHUT}/{path[len(folder) + 1 :]}"
        if path.startswith(os.sep):
            for level, folder in enumerate(self.absolute):
                inside = path[len(folder) + 1 :]
                if path.startswith(folder + os.sep) and folder != os.sep and (level == 0 or os.sep not in inside):
                    return f"{OPEN}a{level}{SHUT}/{inside}"
        return None

    def place(self, token: str) -> str | None:
        """The name that a token has here; None where there are not so many folders above."""
        found = MARKED.match(token)
        if found is None:
            return token
        folders = {"t": self.typed, "a": self.absolute}[found[1]]
        level = int(found[2])
        return f"{folders[level]}{os.sep}{token[found.end() :]}" if level < len(folders) else None

    def answer(self, question: Question, said: str) -> str:
        """An answer without the place: only a real name has one."""
        if question[0] == "real":
            for level, folder in enumerate(self.real):
                if said.startswith(folder + os.sep) and folder != os.sep:
                    return f"{OPEN}r{level}{SHUT}/{said[len(folder) + 1 :]}"
        return said

    def searched(self, question: Question) -> bool:
        """Whether it is one of those for a job.toml or shop.toml in the program's folder or above."""
        path = Path(question[1])
        return (
            question[0] == "there" and path.name in (JOB_FILE, SHOP_FILE)
            and str(path.parent) in (self.typed[0], *self.absolute[1:])
        )  # fmt: skip

    def search(self, ask: Callable[[Question], str]) -> tuple[list[Question], str]:
        """The questions of that search, as `declare` asks them, and what came of it."""
        asked: list[Question] = []
        found = {JOB_FILE: "none", SHOP_FILE: "none"}

        def there(folder: str, name: str, level: int) -> None:
            question = ("there", f"{folder}{os.sep}{name}")
            asked.append(question)
            if ask(question) == "True":
                found[name] = str(level)

        for level, folder in enumerate((self.typed[0], *self.absolute[1:])):
            folder = "" if folder == os.sep else folder
            if found[JOB_FILE] == "none":
                there(folder, JOB_FILE, level)
            there(folder, SHOP_FILE, level)
            if found[SHOP_FILE] != "none":
                break
        return asked, f"{found[JOB_FILE]} {found[SHOP_FILE]}"


def home_of(task: Task, real: dict[str, list[str]] | None = None) -> Home | None:
    """The program's folder, where a result may be kept without it; None where the command line itself names places."""
    name, options = task.source.name, task.options
    typed = str(Path(name).parent)
    of_files = options.shop or options.job or options.windows
    card = options.material or ""
    if os.sep != "/" or of_files or "/" in card or card.endswith(".toml") or task.source.called:
        return None
    if name != os.path.normpath(name) or typed in (".", "/") or typed.startswith("..") or OPEN in name:
        return None
    home = Home(task.source, real)
    return home if len(home.absolute) <= MOST_LEVELS else None


def repeats_its_place(home: Home, name: str, heard: Iterable[Question]) -> bool:
    """Whether the program or a file that its check has read says where it lies: a result may then repeat it."""
    said = (OPEN, f"{home.typed[0]}{os.sep}", home.absolute[0])
    places = [each.encode("utf-8", "surrogateescape") for each in said]
    files = [(name, LARGEST), *((question[1], int(question[2])) for question in heard if question[0] == "content")]
    for path, most in files:
        try:
            with Path(path).open("rb") as file:
                data = file.read(most)
        except (OSError, ValueError):
            continue
        if any(place in data for place in places):
            return True
    return False


def questions_of(home: Home, heard: Iterable[Question]) -> list[Question] | None:
    """The questions of a check without its place; None where one has a name that cannot be told so."""
    made: list[Question] = []
    for question in heard:
        if home.searched(question):
            if (SEARCH,) not in made:
                made.append((SEARCH,))
            continue
        token = home.token(question[1]) if question[0] != "beside" else home.token(f"{question[1]}{os.sep}x")
        if token is None:
            return None
        made.append((question[0], token, *question[2:]))
    return made


def questions_here(home: Home, kept: Iterable[Question], ask: Callable[[Question], str]) -> dict[Question, str] | None:
    """The same questions as they are asked of this place, with their answers now; None where there is no such place."""
    heard: dict[Question, str] = {}
    for question in kept:
        if question == (SEARCH,):
            for each in home.search(ask)[0]:
                heard[each] = ask(each)
            continue
        path = home.place(question[1])
        if path is None:
            return None
        if question[0] == "beside":
            path = path.removesuffix(f"{os.sep}x")
        here = (question[0], path, *question[2:])
        heard[here] = ask(here)
    return heard


def answers_of(home: Home, heard: dict[Question, str]) -> list[str]:
    """Answers without the place, in an order that hangs on no place."""
    ask = heard.get
    made = [
        f"{home.token(question[1] if question[0] != 'beside' else question[1] + os.sep)} {question[0]} "
        f"{' '.join(question[2:])} {home.answer(question, answer)}"
        for question, answer in heard.items() if not home.searched(question)
    ]  # fmt: skip
    if len(made) < len(heard):
        made.append(f"{SEARCH} {home.search(lambda question: ask(question) or 'False')[1]}")
    return sorted(made)


def without_place(home: Home, outcome: Outcome) -> bytes | None:
    """An outcome with each name of a file as its way from the program; None where a text would still say a place."""
    names = {question[1] for question in outcome.asked} | {home.shown}
    names |= {used.path for used in outcome.checked.used} if outcome.checked is not None else set()
    tokens = {name: token for name in names if (token := home.token(name)) is not None}
    if not tokens:
        return None
    any_name = "|".join(map(re.escape, sorted(tokens, key=len, reverse=True)))
    known = re.compile(f"{NAME_BEFORE}(?:{any_name}){NAME_BEHIND}")
    places = (f"{home.typed[0]}{os.sep}", *(folder for folder in home.absolute if folder != os.sep))
    sound = True

    def told(text: str) -> str:
        nonlocal sound
        made = known.sub(lambda found: tokens[found[0]], text)
        sound = sound and OPEN not in text and not any(place in made for place in places)
        return made

    data = msgspec.json.encode(_mapped(msgspec.to_builtins(msgspec.structs.replace(outcome, asked=())), told))
    return data if sound else None


def in_place(home: Home, data: bytes, heard: dict[Question, str]) -> Outcome | None:
    """The outcome with the names that its files have here; None where one has none."""
    sound = True

    def named(found: re.Match[str]) -> str:
        nonlocal sound
        place = home.place(found[0] if found[0].endswith("/") else f"{found[0]}/")
        sound = sound and place is not None
        return json.dumps(place or "", ensure_ascii=False)[1:-1]  # it stands within a text of JSON

    made = MARKED.sub(named, data.decode())
    if not sound:
        return None
    return msgspec.structs.replace(msgspec.json.decode(made, type=Outcome), asked=tuple(sorted(heard)))


def _mapped(value: Any, told: Callable[[str], str]) -> Any:
    """A value of dicts, lists and texts with every text told anew; the lines of the program stay."""
    if isinstance(value, str):
        return told(value)
    if isinstance(value, dict):
        return {key: each if key == UNTOUCHED else _mapped(each, told) for key, each in value.items()}
    return [_mapped(each, told) for each in value] if isinstance(value, (list, tuple)) else value
