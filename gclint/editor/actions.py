"""Quick changes: the words that a finding wants changed, and a mended copy of the whole text to look at first."""

from __future__ import annotations

import difflib
import threading
from collections.abc import Mapping, Sequence

from lsprotocol.types import (
    AnnotatedTextEdit,
    ChangeAnnotation,
    CodeAction,
    CodeActionKind,
    Diagnostic,
    OptionalVersionedTextDocumentIdentifier,
    Position,
    Range,
    TextDocumentEdit,
    TextEdit,
    WorkspaceEdit,
)

from gclint import disk
from gclint.advice.edits import edits_of
from gclint.digest.sheet_words import is_entry
from gclint.editor.answer import Answer, Superseded
from gclint.editor.text import Text
from gclint.mend.registry import WORDS
from gclint.packs.mendable import menders_of
from gclint.problem import Problem
from gclint.setup.declare import Options
from gclint.tables.finding import Checked, Finding

MOST_LINES = 1000  # of one finding that it lists: a change of one with more would leave places out


def actions(
    answer: Answer, text: Text, uri: str, version: int | None, lines: tuple[int, int], shown: Sequence[Diagnostic],
    later: bool, previews: bool,
) -> list[CodeAction]:  # fmt: skip
    """What can be done about findings on these lines (from 1): a change of words, and for the rest a preview.

    `later` says whether the editor takes an edit that is worked out when it is chosen; `previews`, whether it can also
    ask a person before it takes one, as whatever changes the path must be.
    """
    if answer.run is None:
        return []
    made = []
    for finding in answer.run.checked.findings:
        if not is_entry(finding) or not lines[0] <= finding.line <= lines[1]:
            continue
        about = [each for each in shown if each.code == finding.rule and each.range.start.line == finding.line - 1]
        edit = _words(finding, answer.run.checked, text)
        if edit:
            made.append(
                CodeAction(
                    finding.change.text or f"Change the words of {finding.rule}", CodeActionKind.QuickFix, about,
                    is_preferred=True, edit=_edit(uri, version, edit),
                )
            )
        elif finding.mendable and later and (previews or _of_words(finding.rule)):
            words = _of_words(finding.rule)
            title = f"Mend {finding.rule}, with proof{'' if words else ', and look at it first'}"
            data = {"uri": uri, "version": version, "rule": finding.rule, "ask": not words}
            made.append(CodeAction(title, CodeActionKind.QuickFix, about, data=data))
    return made


def _of_words(rule: str) -> bool:
    """Whether the menders that answer a rule touch words alone, never the path."""
    by = menders_of(rule)
    return bool(by) and set(by) <= set(WORDS)


def _words(finding: Finding, checked: Checked, text: Text) -> list[TextEdit]:
    """The edits of all words of a change; none where it could not be made whole, or a dial must be turned as well."""
    dials = checked.paper is not None and any(tool.dial_marks for tool in checked.paper.tools)
    if len(finding.lines) >= MOST_LINES or (dials and any(word.word == "S" for word in finding.change.set)):
        return []
    return [
        TextEdit(text.span(edit.line - 1, edit.column - 1, edit.end_column - 1), edit.text)
        for edit in edits_of(finding.change, checked.texts)
    ]


def _edit(uri: str, version: int | None, edits: Sequence[TextEdit | AnnotatedTextEdit]) -> WorkspaceEdit:
    return WorkspaceEdit(
        document_changes=[TextDocumentEdit(OptionalVersionedTextDocumentIdentifier(uri, version), list(edits))]
    )


def mended(
    answer: Answer, text: Text, uri: str, version: int | None, rule: str, path: str | None, name: str,
    unsaved: Mapping[str, bytes], stop: threading.Event, ask: bool = True,
) -> WorkspaceEdit:  # fmt: skip
    """The edit that makes the text its mended copy, line by line; with `ask` a person confirms it first.

    Raises Problem where nothing could be mended, with the reason, and Superseded when `stop` is set.
    """
    from gclint.mend.mend import mend

    def told(step: str) -> None:
        if stop.is_set():
            raise Superseded

    with disk.unsaved(unsaved):
        made = mend(answer.source.encode("utf-8", "replace"), name, Options(), path, (rule,), (), told)
    if made.data is None:
        because = "; ".join(dict.fromkeys(each.because for each in made.document.not_mended if each.rule == rule))
        raise Problem(f"{rule} was not mended: {because or 'no change could be proved'}")
    new = made.data.decode("utf-8", "replace")
    said = "; ".join(dict.fromkeys(change.because for change in made.document.changes))
    edits = _differences(text, new)
    if not ask:
        return _edit(uri, version, [TextEdit(each.range, each.new_text) for each in edits])
    whole = _edit(uri, version, edits)
    whole.change_annotations = {
        "mend": ChangeAnnotation(f"Mend {rule}", needs_confirmation=True, description=said[:1000])
    }
    return whole


def _differences(text: Text, new: str) -> list[AnnotatedTextEdit]:
    old_lines, new_lines = text.source.splitlines(keepends=True), new.splitlines(keepends=True)
    edits = []
    for what, a, b, c, d in difflib.SequenceMatcher(None, old_lines, new_lines, autojunk=False).get_opcodes():
        if what != "equal":
            place = Range(_start(text, old_lines, a), _start(text, old_lines, b))
            edits.append(AnnotatedTextEdit("mend", place, "".join(new_lines[c:d])))
    return edits


def _start(text: Text, lines: list[str], number: int) -> Position:
    """Where line `number` begins; behind the last one, the end of the text."""
    if number < len(lines) or not lines or lines[-1].endswith(("\n", "\r")):
        return Position(number, 0)
    last = len(text.lines) - 1
    return Position(last, text.units(last, len(text.line(last))))
