"""SARIF 2.1.0 (OASIS, errata 01), which code hosts read. One run for all programs; the same input, the same bytes."""

from __future__ import annotations

import hashlib
import json
from collections import Counter
from typing import Any

import msgspec

from gclint import HOME, __version__
from gclint.advice.comments import closed
from gclint.advice.edits import Edit, edits_of, words_on
from gclint.advice.words_at_fault import LONGEST_TEXT
from gclint.clean_text import json_text
from gclint.digest.sheet_words import sentence, title_words
from gclint.judge.grouping import MOST_LINES
from gclint.packs.mendable import WHOLE_LINES, menders_of
from gclint.packs.pack import RuleText
from gclint.problem import Problem
from gclint.report.machine.message import NOT_JUDGED, UNREADABLE, message_of
from gclint.report.machine.rule_help import rule_help
from gclint.report.machine.uri import uri_of
from gclint.run import Run
from gclint.tables.finding import Checked, Finding

SCHEMA = "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json"
ABOUT = "Says what a CNC program will do wrong in this stock on this machine, and what to change."
LEVEL = {"halt": "error", "change": "warning", "consider": "note"}
HOUSE = "house"  # stands for the pack of a shop's own rules
BASE = "%SRCROOT%"
FINGERPRINT = "gclintCause/v1"  # another way to make it takes another number: a host then meets new findings
MOST_RELATED = 50  # lines of one finding that are given places; all of them, up to 1000, stand in its properties
WORD_NAMES = {"F": "feed", "S": "speed", "T": "tool"}

Json = dict[str, Any]


class Sarif:
    """Takes runs one by one and keeps of each only what the log says of it."""

    maker = None

    def __init__(self) -> None:
        self.texts: dict[str, tuple[RuleText, str]] = {}  # of every rule there is, with its pack
        self.rules: list[Json] = []  # those that a result refers to
        self.index: dict[str, int] = {}
        self.results: list[msgspec.Raw] = []
        self.artifacts: list[Json] = []
        self.notes: list[Json] = []
        self.went_wrong = False

    def add(self, run: Run) -> None:
        """One program that was read."""
        if not self.texts:
            from gclint.packs.shipped_packs import shipped_packs

            self.texts = {rule.name: (rule.text, pack.name) for pack in shipped_packs() for rule in pack.rules}
        for text in run.house:
            self.texts.setdefault(text.name, (text, HOUSE))
        checked = run.checked
        self.went_wrong |= run.failed
        self.artifacts.append(_artifact(checked))
        place = _artifact_place(checked.path, len(self.artifacts) - 1)
        seen: Counter[str] = Counter()
        for finding in checked.findings:
            if finding.follows is not None:  # its root is the result, and names it
                continue
            self._know(finding.rule, run)
            self.results.append(_encoded(self._result(finding, checked, place, seen)))
        for blind in checked.not_judged:
            self.notes.append(self._note(NOT_JUDGED, "note", f"{blind.name}: needs {blind.needs}", place, blind.name))

    def missed(self, problem: Problem) -> None:
        """One program that could not be read."""
        self.went_wrong = True
        place = None
        if problem.path:
            self.artifacts.append({"location": _location_of(problem.path), "roles": ["analysisTarget"]})
            place = _artifact_place(problem.path, len(self.artifacts) - 1)
        self.notes.append(self._note(UNREADABLE, "error", str(problem), place))

    def text(self, code: int) -> str:
        """The log, with a line end; `code` is the exit code of the run."""
        invocation: Json = {
            "executionSuccessful": not self.went_wrong,
            "exitCode": code,
            "exitCodeDescription": CODES[code],
        }
        if self.notes:
            for note in self.notes:
                rule = note.get("associatedRule", {}).get("id")
                if rule in self.index:
                    note["associatedRule"]["index"] = self.index[rule]
            invocation["toolExecutionNotifications"] = self.notes
        run: Json = {
            "tool": {
                "driver": {
                    "name": "gclint",
                    "fullName": f"gclint {__version__}",
                    "version": __version__,
                    "informationUri": HOME,
                    "shortDescription": {"text": ABOUT},
                    "language": "en-GB",
                    "rules": self.rules,
                    "notifications": NOTIFICATIONS,
                }
            },
            "automationDetails": {"id": "gclint/check/"},
            "originalUriBaseIds": {BASE: {"description": {"text": "The folder in which gclint was run."}}},
            "columnKind": "utf16CodeUnits",
            "invocations": [_encoded(invocation)],
            "artifacts": _encoded(self.artifacts),
            "results": self.results,
        }
        log = {"$schema": SCHEMA, "version": "2.1.0", "runs": [run]}
        return json_text(msgspec.json.encode(log), indent=1)

    def _know(self, name: str, run: Run) -> None:
        """Take a rule into the log; of one in a pack that is no longer at hand only the name is known."""
        if name not in self.index:
            self.index[name] = len(self.rules)
            known = self.texts.get(name)
            title = {"id": name, "name": _pascal(name), "shortDescription": {"text": title_words(name, run)}}
            self.rules.append(_rule(*known) if known else title | {"fullDescription": title["shortDescription"]})

    def _result(self, finding: Finding, checked: Checked, place: Json, seen: Counter[str]) -> Json:
        key = cause_key(finding, checked)
        seen[key] += 1
        made: Json = {
            "ruleId": finding.rule,
            "ruleIndex": self.index[finding.rule],
            "level": LEVEL[finding.grade],
            "message": {"text": message_of(finding)},
            "locations": [_location(finding, checked, place)],
            "occurrenceCount": max(finding.count, 1),
            "partialFingerprints": {FINGERPRINT: hashed(f"{key}\0{seen[key]}")},
        }
        related = _related(finding, place)
        if related:
            made["relatedLocations"] = related
        fixes = _fixes(finding, checked, place)
        if fixes:
            made["fixes"] = fixes
        if finding.accepted is not None:
            made["suppressions"] = [_suppression(finding, checked)]
        made["properties"] = _properties(finding)
        return made

    def _note(self, kind: str, level: str, text: str, place: Json | None, rule: str | None = None) -> Json:
        made: Json = {"descriptor": {"id": kind}, "level": level, "message": {"text": text}}
        if rule in self.texts:
            made["associatedRule"] = {"id": rule}
        if place is not None:
            made["locations"] = [{"physicalLocation": {"artifactLocation": place}}]
        return made


def _pascal(name: str) -> str:
    """The name of a rule as the standard's validator wants names: StraightPlunge."""
    return "".join(word[:1].upper() + word[1:] for word in name.split("-"))


CODES = {
    0: "nothing at or above the fail grade; this is no promise that the program does no harm",
    1: "findings at or above the fail grade",
    2: "a program could not be read, or gclint itself failed on one",
}


def _notification(name: str, short: str, full: str) -> Json:
    return {
        "id": name, "name": _pascal(name), "shortDescription": {"text": short}, "fullDescription": {"text": full},
        "help": {"text": full}, "helpUri": f"{HOME}/README.md",
    }  # fmt: skip


NOTIFICATIONS = [
    _notification(
        NOT_JUDGED, "A rule lacks a fact; what would give it is named.",
        "A rule lacks a fact, mostly one that shop.toml or job.toml would declare, so it was not judged. Nothing "
        "that it looks for was looked for there.",
    ),
    _notification(
        UNREADABLE, "A program could not be read, so nothing in it was judged.",
        "A program could not be read, or what is declared for it is wrong, so nothing in it was judged.",
    ),
]  # fmt: skip


def cause_key(finding: Finding, checked: Checked) -> str:
    """What makes a finding the same one after edits elsewhere: rule, tool and what its block says, not where.

    Blanks, letter case, comments and the N word are passed over.
    """
    text = checked.texts.get(finding.line, "")
    said = "".join(text[word.start : word.end] for word in words_on(text)) or text
    return f"{finding.rule}\0{finding.tool}\0{''.join(said.split()).upper()}"


def _encoded(value: Json | list[Json]) -> msgspec.Raw:
    """JSON of a value whose names of files need not be Unicode."""
    return msgspec.Raw(json.dumps(value, ensure_ascii=False).encode("utf-8", "replace"))


def hashed(key: str) -> str:
    return hashlib.sha256(key.encode("utf-8", "replace")).hexdigest()[:32]


def utf16(text: str, column: int) -> int:
    """A column in characters as one in UTF-16 code units, both from 1."""
    before = text[: column - 1]
    return column + sum(character > "\uffff" for character in before)


def _rule(text: RuleText, pack: str) -> Json:
    grade = text.grade if isinstance(text.grade, str) else text.grade[-1].grade
    plain, markdown = rule_help(text)
    made: Json = {
        "id": text.name,
        "name": _pascal(text.name),
        "shortDescription": {"text": sentence(text.title)},
        "fullDescription": {"text": " ".join(text.why.split())},
        "help": {"text": plain, "markdown": markdown},
        "defaultConfiguration": {"level": LEVEL[grade]},
        "properties": {
            "grade": grade, "standing": text.standing, "source": text.source, "pack": pack, "tags": ["cnc", pack],
        },
    }  # fmt: skip
    if pack != HOUSE:
        made["helpUri"] = f"{HOME}/rules/{pack}/{text.name}.toml"
    return made


def _artifact(checked: Checked) -> Json:
    return {
        "location": _location_of(checked.path),
        "roles": ["analysisTarget"],
        "hashes": {"sha-256": checked.fingerprint.removeprefix("sha256:")},
        "properties": {
            "lines": checked.lines,
            "units": checked.units,
            "time_s": checked.time_s,
            "assumed": [f"{taken.what}: {taken.value}, because {taken.because}" for taken in checked.assumed],
        },
    }


def _location_of(path: str) -> Json:
    if path == "standard input":
        return {"description": {"text": "standard input"}}
    uri, relative = uri_of(path)
    return {"uri": uri, "uriBaseId": BASE} if relative else {"uri": uri}


def _artifact_place(path: str, index: int) -> Json:
    return {**_location_of(path), "index": index}


def _location(finding: Finding, checked: Checked, place: Json) -> Json:
    return {
        "physicalLocation": {
            "artifactLocation": place,
            "region": _region(finding.line, finding.column, checked.texts.get(finding.line, "")),
        }
    }


def _region(line: int, column: int, text: str) -> Json:
    """The word that begins at the column; else what the line says from there on."""
    if not 1 <= column <= len(text):
        return {"startLine": line}
    end = next((word.end + 1 for word in words_on(text) if word.start == column - 1), len(text.rstrip()) + 1)
    end = max(end, column + 1)
    return {
        "startLine": line, "startColumn": utf16(text, column), "endLine": line, "endColumn": utf16(text, end),
        "snippet": {"text": text[column - 1 : end - 1]},
    }  # fmt: skip


def _related(finding: Finding, place: Json) -> list[Json]:
    """Other lines of the finding, where its words were set, and the place in a file that the program calls."""
    said: dict[int, list[str]] = {}
    for line in finding.lines[: MOST_RELATED + 1]:
        if line != finding.line:
            said.setdefault(line, []).append("also here")
    if finding.worst_line != finding.line:
        said[finding.worst_line] = ["worst here"]
    for letter, line in finding.set_on.items():
        if line != finding.line:
            said.setdefault(line, []).append(f"{letter} ({WORD_NAMES[letter]}) is set here")
    related: list[Json] = [
        {
            "physicalLocation": {"artifactLocation": place, "region": {"startLine": line}},
            "message": {"text": sentence("; ".join(words))},
        }
        for line, words in sorted(said.items())
    ]
    if finding.beside is not None:
        away = {"artifactLocation": _location_of(finding.beside.path), "region": {"startLine": finding.beside.line}}
        related.append({"physicalLocation": away, "message": {"text": "In the file that the program calls"}})
    return [{"id": number, **each} for number, each in enumerate(related, 1)]


def _fixes(finding: Finding, checked: Checked, place: Json) -> list[Json]:
    """One fix with all replacements of the change together, where each is one word and reads as it should.

    None where the finding has more places than are told of, or where the dial must be turned as well: a fix mends all
    of it or is none.
    """
    edits = _closed_comments(finding, checked) or edits_of(finding.change, checked.texts)
    if not edits or len(finding.lines) >= MOST_LINES or _turns_the_dial(finding, checked):
        return []
    replacements = []
    for edit in edits:
        text = checked.texts[edit.line]
        region = {
            "startLine": edit.line, "startColumn": utf16(text, edit.column),
            "endLine": edit.line, "endColumn": utf16(text, edit.end_column),
        }  # fmt: skip
        replacements.append({"deletedRegion": region, "insertedContent": {"text": edit.text}})
    change = {"artifactLocation": place, "replacements": replacements}
    return [{"description": {"text": finding.change.text}, "artifactChanges": [change]}]


def _closed_comments(finding: Finding, checked: Checked) -> tuple[Edit, ...]:
    """Comments that leak, closed on their own lines; empty where one of them cannot be."""
    if WHOLE_LINES not in menders_of(finding.rule):
        return ()
    made = []
    for line in finding.lines:
        text = checked.texts.get(line, "")
        whole = bool(text) and "*" not in text and len(text) < LONGEST_TEXT
        new = closed(text.encode("utf-8", "surrogateescape")) if whole else None
        if new is None:
            return ()
        made.append(Edit(line, 1, len(text) + 1, new.decode("utf-8", "surrogateescape")))
    return tuple(made)


def _turns_the_dial(finding: Finding, checked: Checked) -> bool:
    dials = checked.paper is not None and any(tool.dial_marks for tool in checked.paper.tools)
    return dials and any(word.word == "S" for word in finding.change.set)


def _suppression(finding: Finding, checked: Checked) -> Json:
    where = finding.accepted_in or ""
    inside = where.startswith(f"{checked.path} line ")
    made: Json = {
        "kind": "inSource" if inside else "external",
        "status": "accepted",
        "justification": finding.accepted,
    }
    if where:
        made["properties"] = {"accepted_in": where}
    return made


def _properties(finding: Finding) -> Json:
    made: Json = {"grade": finding.grade, "lines": list(finding.lines), "count": finding.count}
    if finding.tool is not None:
        made["tool"] = finding.tool
    if finding.found is not None:
        made["found"] = {"name": finding.found.name, "value": finding.found.value, "unit": finding.found.unit}
    if finding.window is not None:
        window = finding.window
        made["window"] = {
            "low": window.low, "high": window.high, "unit": window.unit, "standing": window.standing,
            "source": window.source,
        }  # fmt: skip
    if finding.change.set:
        made["set"] = [_set(word.line, word.word, word.from_, word.to) for word in finding.change.set]
    return made


def _set(line: int, word: str, old: float | None, new: float) -> Json:
    return {"line": line, "word": word, "from": old, "to": new}
