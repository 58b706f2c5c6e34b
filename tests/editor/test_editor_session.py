"""Sessions of an editor with `gclint editor`, over the protocol."""

from __future__ import annotations

import asyncio
import re
import shutil
from collections.abc import Awaitable, Callable
from pathlib import Path
from typing import Any

import pytest

pytest.importorskip("pygls")

from lsprotocol import types

import gclint
from gclint.digest.sheet_words import is_entry
from tests.editor.client import Editor, editing
from tests.folder.shop import JOB, SHOP, program

pytestmark = pytest.mark.slow  # each starts a server of its own

SAMPLES = Path(__file__).parents[2] / "sample_programs"
CALLER = "G21 G90 G94 G17 G54\nT1 M6\nM3 S18000\nG4 P5\nG0 Z5\nG0 X0 Y0\nG1 Z-1 F200\nM98 P100\nG0 Z5\nM5\nM30\n"


def session(home: Path, steps: Callable[[Editor], Awaitable[None]], capabilities: Any = None) -> None:
    async def whole() -> None:
        async with editing(home, capabilities) as editor:
            await steps(editor)

    asyncio.run(whole())


@pytest.fixture
def home(tmp_path: Path) -> Path:
    """The Lowtide workshop's folder: a shop, a job, a program with a feed that is too slow."""
    (tmp_path / "shop.toml").write_text(SHOP)
    (tmp_path / "job.toml").write_text(JOB)
    (tmp_path / "tray.nc").write_text(program(1, 300))
    return tmp_path


def codes(diagnostics: list[types.Diagnostic]) -> list[Any]:
    return [each.code for each in diagnostics if each.code not in (None, "not-judged")]


def rules(made: gclint.Checked) -> list[str]:
    return [finding.rule for finding in made.findings if is_entry(finding)]


def taken(text: str, edits: Any) -> str:
    """The text with an editor's edits made, whose columns are UTF-16."""
    lines = text.split("\n")

    def offset(place: types.Position) -> int:
        before = sum(len(line) + 1 for line in lines[: place.line])
        line = lines[place.line].encode("utf-16-le") if place.line < len(lines) else b""
        return min(before + len(line[: 2 * place.character].decode("utf-16-le")), len(text))

    for edit in sorted(edits, key=lambda each: offset(each.range.start), reverse=True):
        text = text[: offset(edit.range.start)] + edit.new_text + text[offset(edit.range.end) :]
    return text


def test_it_says_what_check_says_of_every_sample(tmp_path: Path) -> None:
    shutil.copytree(SAMPLES, tmp_path / "samples")
    programs = sorted((tmp_path / "samples").rglob("*.nc"), key=lambda path: path.stat().st_size)[:6]

    async def steps(editor: Editor) -> None:
        for path in programs:
            name = path.relative_to(tmp_path).as_posix()
            editor.open(name)
            told = await editor.diagnostics(name)
            checked = gclint.check(path)
            assert codes(told) == rules(checked)
            open_ones = [finding for finding in checked.findings if is_entry(finding)]
            for each, finding in zip(told, open_ones):
                assert each.range.start.line == finding.line - 1
                assert each.severity == {"halt": 1, "change": 2, "consider": 3}[finding.grade]
                assert finding.happens[1:] in each.message
            assert bool(checked.not_judged) == any(each.code == "not-judged" for each in told)

    session(tmp_path, steps)


def test_unsaved_text_counts_and_columns_are_those_of_the_editor(home: Path) -> None:
    async def steps(editor: Editor) -> None:
        editor.open("tray.nc")
        assert "chip-too-thin" in codes(await editor.diagnostics("tray.nc"))
        editor.type("tray.nc", "G1 X40 F300", "(\U0001fa9a é) G1 X40 F300")
        told = await editor.diagnostics("tray.nc")
        place = next(each.range for each in told if each.code == "chip-too-thin")
        line = editor.texts["tray.nc"].split("\n")[place.start.line].encode("utf-16-le")
        assert line[2 * place.start.character : 2 * place.end.character].decode("utf-16-le") == "F300"
        editor.type("tray.nc", "F300", "F1800")
        assert "chip-too-thin" not in codes(await editor.diagnostics("tray.nc"))
        assert (home / "tray.nc").read_text() == program(1, 300)

    session(home, steps)


def test_of_many_changes_the_last_one_is_told(home: Path) -> None:
    async def steps(editor: Editor) -> None:
        editor.open("tray.nc")
        feeds = [300, 400, 2000, 250, 1700, 300, 1900, 280, 1800]
        for feed in feeds[1:]:
            editor.replace("tray.nc", program(1, feed))
            await asyncio.sleep(0.03)
        told = await editor.diagnostics("tray.nc")
        (home / "last.nc").write_text(program(1, feeds[-1]))
        assert codes(told) == rules(gclint.check(home / "last.nc"))
        await asyncio.sleep(0.5)
        assert editor.told[editor.uri("tray.nc")].version == editor.versions["tray.nc"]

    session(home, steps)


def test_unsaved_declarations_count_and_their_faults_are_told_at_their_place(home: Path) -> None:
    async def steps(editor: Editor) -> None:
        editor.open("tray.nc")
        before = codes(await editor.diagnostics("tray.nc"))
        editor.open("shop.toml", language="toml")
        await editor.until("shop.toml", lambda told: not told)
        editor.type("shop.toml", "flutes = 2", "flutes = 1")
        await editor.until("tray.nc", lambda told: codes(told) != before)
        (home / "other").mkdir()
        for name, text in (("shop.toml", editor.texts["shop.toml"]), ("job.toml", JOB), ("tray.nc", program(1, 300))):
            (home / "other" / name).write_text(text)
        assert codes(editor.told[editor.uri("tray.nc")].diagnostics) == rules(gclint.check(home / "other" / "tray.nc"))
        editor.type("shop.toml", "flutes = 1", 'flutes = "two"')
        [wrong] = await editor.until("shop.toml", lambda told: len(told) == 1)
        assert wrong.range.start == types.Position(SHOP.split("\n").index("flutes = 2"), 9)
        [head] = await editor.until("tray.nc", lambda told: len(told) == 1)
        assert head.severity == types.DiagnosticSeverity.Error
        assert "shop.toml:8:10" in head.message
        editor.type("shop.toml", 'flutes = "two"', "flutes = 2")
        await editor.until("shop.toml", lambda told: not told)
        assert codes(await editor.until("tray.nc", lambda told: codes(told) == before)) == before
        assert (home / "shop.toml").read_text() == SHOP

    session(home, steps)


def test_a_fault_in_a_declaration_that_is_not_open_is_told_there(home: Path) -> None:
    (home / "job.toml").write_text('material = "betch"\n')

    async def steps(editor: Editor) -> None:
        editor.open("tray.nc")
        [head] = await editor.diagnostics("tray.nc")
        assert "job.toml:1:12" in head.message
        [wrong] = await editor.until("job.toml", lambda told: len(told) == 1)
        assert (wrong.range.start.line, wrong.range.start.character) == (0, 11)
        editor.close("tray.nc")
        await editor.until("job.toml", lambda told: not told)
        await editor.until("tray.nc", lambda told: not told)

    session(home, steps)


def test_an_unsaved_subprogram_counts(home: Path) -> None:
    (home / "o100.nc").write_text("O100\nG1 X40 F1800\nM99\n")
    (home / "call.nc").write_text(CALLER)

    async def steps(editor: Editor) -> None:
        editor.open("call.nc")
        before = codes(await editor.diagnostics("call.nc"))
        editor.open("o100.nc")
        editor.type("o100.nc", "F1800", "F100")
        told = await editor.until("call.nc", lambda told: codes(told) != before)
        assert "chip-too-thin" in codes(told)

    session(home, steps)


def test_a_quick_change_does_what_it_says(home: Path) -> None:
    async def steps(editor: Editor) -> None:
        editor.open("tray.nc")
        told = await editor.diagnostics("tray.nc")
        thin = next(each for each in told if each.code == "chip-too-thin")
        document = types.TextDocumentIdentifier(editor.uri("tray.nc"))
        asked = types.CodeActionParams(document, thin.range, types.CodeActionContext([thin]))
        found = await editor.client.text_document_code_action_async(asked)
        change = next(each for each in found or () if isinstance(each, types.CodeAction) and each.edit)
        assert change.diagnostics
        assert change.diagnostics[0].code == "chip-too-thin"
        [of_file] = change.edit.document_changes  # type: ignore[union-attr, misc]
        assert of_file.text_document.version == editor.versions["tray.nc"]
        editor.replace("tray.nc", taken(editor.texts["tray.nc"], of_file.edits))
        assert "chip-too-thin" not in codes(await editor.diagnostics("tray.nc"))

    session(home, steps)


def test_a_mend_is_a_preview_that_a_person_confirms(tmp_path: Path) -> None:
    shutil.copytree(SAMPLES / "tide-ring", tmp_path / "tide-ring")
    shutil.copy(SAMPLES / "bench-router.toml", tmp_path)
    name = "tide-ring/tide-ring.nc"

    async def steps(editor: Editor) -> None:
        editor.open(name)
        [plunge] = [each for each in await editor.diagnostics(name) if each.code == "straight-plunge"]
        document = types.TextDocumentIdentifier(editor.uri(name))
        asked = types.CodeActionParams(document, plunge.range, types.CodeActionContext([plunge]))
        [action] = await editor.client.text_document_code_action_async(asked) or ()
        assert isinstance(action, types.CodeAction)
        assert action.edit is None
        done = await editor.client.code_action_resolve_async(action)
        assert done.edit is not None
        assert all(each.needs_confirmation for each in (done.edit.change_annotations or {}).values())
        [of_file] = done.edit.document_changes or ()
        made = gclint.mend(tmp_path / name, only=["straight-plunge"]).copy
        assert taken(editor.texts[name], of_file.edits).encode() == made  # type: ignore[union-attr]

    session(tmp_path, steps)


def test_an_editor_that_cannot_ask_gets_no_preview(tmp_path: Path) -> None:
    shutil.copytree(SAMPLES / "tide-ring", tmp_path / "tide-ring")
    shutil.copy(SAMPLES / "bench-router.toml", tmp_path)
    name = "tide-ring/tide-ring.nc"

    async def steps(editor: Editor) -> None:
        editor.open(name)
        [plunge] = [each for each in await editor.diagnostics(name) if each.code == "straight-plunge"]
        document = types.TextDocumentIdentifier(editor.uri(name))
        asked = types.CodeActionParams(document, plunge.range, types.CodeActionContext([plunge]))
        assert not await editor.client.text_document_code_action_async(asked)

    session(tmp_path, steps, types.ClientCapabilities())


def test_a_mender_of_words_needs_no_preview(home: Path) -> None:
    """An editor that works an edit out when it is chosen, and cannot ask before it takes one."""
    support = types.ClientCodeActionResolveOptions(["edit"])
    able = types.ClientCapabilities(
        text_document=types.TextDocumentClientCapabilities(
            code_action=types.CodeActionClientCapabilities(data_support=True, resolve_support=support)
        )
    )
    (home / "tray.nc").write_text(program(1, 1800).replace("G0 Z5\n", "(Pocket (2))\nG0 Z5\n", 1))

    async def steps(editor: Editor) -> None:
        editor.open("tray.nc")
        told = await editor.diagnostics("tray.nc")
        [leak] = [each for each in told if each.code == "comment-leftover"]
        document = types.TextDocumentIdentifier(editor.uri("tray.nc"))
        asked = types.CodeActionParams(document, leak.range, types.CodeActionContext([leak]))
        [action] = await editor.client.text_document_code_action_async(asked) or ()
        assert isinstance(action, types.CodeAction)
        done = await editor.client.code_action_resolve_async(action)
        assert done.edit is not None
        assert not done.edit.change_annotations
        [of_file] = done.edit.document_changes or ()
        editor.replace("tray.nc", taken(editor.texts["tray.nc"], of_file.edits))  # type: ignore[union-attr]
        assert "comment-leftover" not in codes(await editor.diagnostics("tray.nc"))
        assert "(Pocket (2))" not in editor.texts["tray.nc"]

    session(home, steps, able)


def test_the_nearest_job_and_shop_count(home: Path) -> None:
    """A folder within with a job of its own takes the shop above; another shop beside it counts instead."""
    (home / "inner").mkdir()
    (home / "inner" / "tray.nc").write_text(program(1, 300))
    (home / "inner" / "job.toml").write_text(JOB.replace("beech", "cured-epoxy"))

    async def steps(editor: Editor) -> None:
        editor.open("inner/tray.nc")
        told = await editor.diagnostics("inner/tray.nc")
        checked = gclint.check(home / "inner" / "tray.nc")
        assert codes(told) == rules(checked)
        assert any("cured epoxy" in each.message for each in told) == any(
            "cured epoxy" in each.happens for each in checked.findings
        )
        editor.open("inner/shop.toml", SHOP.replace("6 mm", "2 mm"), "toml")
        (home / "as-typed").mkdir()
        for name, text in (("shop.toml", SHOP.replace("6 mm", "2 mm")), ("tray.nc", program(1, 300))):
            (home / "as-typed" / name).write_text(text)
        (home / "as-typed" / "job.toml").write_text(JOB.replace("beech", "cured-epoxy"))
        wanted = rules(gclint.check(home / "as-typed" / "tray.nc"))
        assert wanted != codes(told)
        await editor.until("inner/tray.nc", lambda now: codes(now) == wanted)

    session(home, steps)


def test_hover_tells_the_word_the_tool_the_move_and_the_cut(home: Path) -> None:
    async def hovered(editor: Editor, *at: Any, **more: Any) -> str:
        found = await editor.client.text_document_hover_async(types.HoverParams(**editor.at("tray.nc", *at, **more)))
        return found.contents.value if found else ""  # type: ignore[union-attr]

    async def steps(editor: Editor) -> None:
        editor.open("tray.nc")
        said = await hovered(editor, "X40")
        for part in ("**X**: along X", "**Tool 1**", "flat, 6 mm", "set feed 300 mm/min", "Cuts (slot)", "depth 1 mm"):
            assert part in said
        assert re.search(r"chip 0\.0\d+ mm; good is at least 0\.0\d+ and at most 0\.\d+ mm", said)
        assert re.search(r"\*\*(halt|change|consider)\*\* chip-too-thin: ", said)
        assert "rapid move" in await hovered(editor, "G0 Z5")
        assert "**G94**: feed is a distance a minute" in await hovered(editor, "G94")
        assert "In the air." in await hovered(editor, "G0 X0")

    session(home, steps)


def test_a_tool_word_leads_to_its_declaration(home: Path) -> None:
    async def steps(editor: Editor) -> None:
        editor.open("tray.nc")
        found = await editor.client.text_document_definition_async(types.DefinitionParams(**editor.at("tray.nc", "T1")))
        assert isinstance(found, types.Location)
        assert found.uri == editor.uri("shop.toml")
        assert SHOP.split("\n")[found.range.start.line] == "[[tool]]"
        elsewhere = types.DefinitionParams(**editor.at("tray.nc", "X40"))
        assert await editor.client.text_document_definition_async(elsewhere) is None

    session(home, steps)


def test_the_outline_is_tools_and_their_passes(home: Path) -> None:
    async def steps(editor: Editor) -> None:
        editor.open("tray.nc")
        params = types.DocumentSymbolParams(types.TextDocumentIdentifier(editor.uri("tray.nc")))
        [tool] = await editor.client.text_document_document_symbol_async(params) or (None,)
        assert isinstance(tool, types.DocumentSymbol)
        for part in (tool, *(tool.children or ())):
            assert part.range.start.line <= part.selection_range.start.line
            assert part.selection_range.end.line <= part.range.end.line
        assert tool.name == "tool 1"
        assert tool.selection_range.start.line == 1
        assert [each.name for each in tool.children or ()] == ["slot, to Z -1"]

    session(home, steps)


@pytest.mark.parametrize(
    ("file", "text", "offered", "never"),
    [
        ("job.toml", 'material = "be|', {"beech"}, set()),
        ("job.toml", "ma|", {"material", "z_zero", "stock"}, {"travel"}),
        ("job.toml", 'material = "beech"\n|', {"z_zero"}, {"material"}),
        ("job.toml", 'z_zero = "|', {"stock-top", "table"}, set()),
        ("job.toml", "[|", {"stock", "hold", "keep_out", "accept"}, {"material"}),
        ("job.toml", "[[accept]]\nrule = \"str|", {"straight-plunge"}, set()),
        ("job.toml", 'program = "|', {"tray.nc"}, set()),
        ("shop.toml", "[[tool]]\nnumber = 1\n|", {"shape", "diameter", "flutes"}, {"number", "dial"}),
        ("shop.toml", '[[tool]]\nshape = "|', {"flat", "ball", "v"}, set()),
        ("shop.toml", '[machine]\ncontroller = "|', {"hobby-3-axis"}, set()),
        ("shop.toml", "[spindle]\nki|", {"kind", "dial", "range"}, {"shape"}),
        ("house.toml", 'pack = "ours"\nabout = "x"\n[[rule]]\nlooks_at = "m|', set(), {"travel"}),
        ("house.toml", 'pack = "ours"\nabout = "x"\n[[rule]]\n|', {"name", "when", "grade"}, {"diameter"}),
    ],
)
def test_declarations_are_completed(
    file: str, text: str, offered: set[str], never: set[str], home: Path
) -> None:
    from lsprotocol.types import Position

    from gclint.editor.declarations import complete
    from gclint.editor.text import Text

    before = text.partition("|")[0]
    place = Position(before.count("\n"), len(before) - (before.rfind("\n") + 1))
    labels = {each.label for each in complete(str(home / file), Text(text.replace("|", ""), "utf-16"), place)}
    assert offered <= labels
    assert not never & labels


def test_completion_comes_over_the_protocol(home: Path) -> None:
    async def steps(editor: Editor) -> None:
        editor.open("job.toml", 'material = "be"\n', "toml")
        params = types.CompletionParams(**editor.at("job.toml", 'be"', behind=2))
        found = await editor.client.text_document_completion_async(params)
        assert {"beech"} <= {each.label for each in found}  # type: ignore[union-attr]

    session(home, steps)


@pytest.mark.parametrize(
    ("name", "text", "line"),
    [
        ("card.toml", 'name = "x"\ntitle = "x"\nabout = 3\nstanding = "practice"\nsource = ""\n', 2),
        ("house.toml", 'pack = "ours"\nabout = "x"\n[[rule]]\nname = "x"\nwhen = "lowest <"\n', None),
    ],
)
def test_cards_and_packs_are_checked_too(name: str, text: str, line: int | None, home: Path) -> None:
    async def steps(editor: Editor) -> None:
        editor.open(name, text, "toml")
        [wrong] = await editor.until(name, lambda told: len(told) == 1)
        assert wrong.severity == types.DiagnosticSeverity.Error
        if line is not None:
            assert wrong.range.start.line == line

    session(home, steps)


def test_what_is_no_program_is_left_alone_and_what_is_broken_ends_nothing(home: Path) -> None:
    async def steps(editor: Editor) -> None:
        editor.open("notes.txt", "Cut the ring first.\nThen sand it.\n", "plaintext")
        assert await editor.diagnostics("notes.txt") == []
        editor.open("settings.toml", '[tool.other]\nname = "x"\n', "toml")
        await editor.until("settings.toml", lambda told: not told)
        for text in ("", "\x00\x01", "%\n", "G1 X" + "9" * 400, "(\ud7ff\n" * 50, "G1 X1 F100\r\rG1\r\nX2"):
            editor.open("odd.nc", text)
            await editor.diagnostics("odd.nc")
            editor.close("odd.nc")
        editor.open("tray.nc")
        assert codes(await editor.diagnostics("tray.nc"))

    session(home, steps)


def test_a_text_without_a_file_is_checked_as_well(home: Path) -> None:
    async def steps(editor: Editor) -> None:
        item = types.TextDocumentItem("untitled:Untitled-1", "gcode", 1, program(1, 300))
        editor.client.text_document_did_open(types.DidOpenTextDocumentParams(item))
        async with editor.news:
            await asyncio.wait_for(editor.news.wait_for(lambda: "untitled:Untitled-1" in editor.told), 30)
        assert codes(list(editor.told["untitled:Untitled-1"].diagnostics))

    session(home, steps)


def test_without_the_library_it_says_what_to_install(monkeypatch: pytest.MonkeyPatch, gclint: Any) -> None:
    import sys

    for name in [each for each in sys.modules if each.startswith("gclint.editor")]:
        monkeypatch.delitem(sys.modules, name)
    monkeypatch.setitem(sys.modules, "lsprotocol", None)
    code, out, err = gclint("editor")
    assert (code, out) == (2, "")
    assert "gclint[editor]" in err
