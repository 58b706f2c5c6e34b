"""An editor for tests: speaks the protocol to `gclint editor`, a process of its own."""

from __future__ import annotations

import asyncio
import sys
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from pathlib import Path
from typing import Any

from lsprotocol import types
from pygls.lsp.client import LanguageClient

PATIENCE = 30.0  # s for anything; a test that waits so long fails


def ask_first() -> types.ClientCapabilities:
    """An editor that shows an edit to a person before it takes it."""
    support = types.ClientCodeActionResolveOptions(["edit"])
    return types.ClientCapabilities(
        text_document=types.TextDocumentClientCapabilities(
            code_action=types.CodeActionClientCapabilities(data_support=True, resolve_support=support),
            publish_diagnostics=types.PublishDiagnosticsClientCapabilities(related_information=True),
        ),
        workspace=types.WorkspaceClientCapabilities(
            workspace_edit=types.WorkspaceEditClientCapabilities(
                document_changes=True, change_annotation_support=types.ChangeAnnotationsSupportOptions()
            )
        ),
    )


class Editor:
    def __init__(self, client: LanguageClient, home: Path) -> None:
        self.client, self.home = client, home
        self.told: dict[str, types.PublishDiagnosticsParams] = {}
        self.news = asyncio.Condition()
        self.versions: dict[str, int] = {}
        self.texts: dict[str, str] = {}

        @client.feature(types.TEXT_DOCUMENT_PUBLISH_DIAGNOSTICS)
        async def heard(params: types.PublishDiagnosticsParams) -> None:
            async with self.news:
                self.told[params.uri] = params
                self.news.notify_all()

    def uri(self, name: str) -> str:
        return (self.home / name).as_uri()

    def open(self, name: str, text: str | None = None, language: str = "gcode") -> None:
        text = (self.home / name).read_text() if text is None else text
        self.versions[name], self.texts[name] = 1, text
        item = types.TextDocumentItem(self.uri(name), language, 1, text)
        self.client.text_document_did_open(types.DidOpenTextDocumentParams(item))

    def type(self, name: str, old: str, new: str) -> None:
        """Put a text in the place of one that stands there once, as an editor tells it: the lines concerned."""
        before = self.texts[name]
        assert before.count(old) == 1, before.count(old)
        at = before.index(old)

        def place(offset: int) -> types.Position:
            start = before.rfind("\n", 0, offset) + 1
            return types.Position(before.count("\n", 0, offset), len(before[start:offset].encode("utf-16-le")) // 2)

        change = types.TextDocumentContentChangePartial(types.Range(place(at), place(at + len(old))), new)
        self.texts[name] = before.replace(old, new)
        self._changed(name, change)

    def replace(self, name: str, text: str) -> None:
        self.texts[name] = text
        self._changed(name, types.TextDocumentContentChangeWholeDocument(text))

    def _changed(self, name: str, change: Any) -> None:
        self.versions[name] += 1
        document = types.VersionedTextDocumentIdentifier(self.versions[name], self.uri(name))
        self.client.text_document_did_change(types.DidChangeTextDocumentParams(document, [change]))

    def close(self, name: str) -> None:
        document = types.TextDocumentIdentifier(self.uri(name))
        self.client.text_document_did_close(types.DidCloseTextDocumentParams(document))

    async def diagnostics(self, name: str, version: int | None = None) -> list[types.Diagnostic]:
        """Those of the text as it stands."""
        wanted = self.versions.get(name) if version is None else version
        uri = self.uri(name)

        def there() -> bool:
            return uri in self.told and self.told[uri].version == wanted

        async with self.news:
            await asyncio.wait_for(self.news.wait_for(there), PATIENCE)
            return list(self.told[uri].diagnostics)

    async def until(self, name: str, fits: Any) -> list[types.Diagnostic]:
        """Those of a file, as soon as `fits` holds for them."""
        uri = self.uri(name)
        async with self.news:
            ready = self.news.wait_for(lambda: uri in self.told and fits(self.told[uri].diagnostics))
            await asyncio.wait_for(ready, PATIENCE)
            return list(self.told[uri].diagnostics)

    def at(self, name: str, word: str, occurrence: int = 0, behind: int = 0) -> dict[str, Any]:
        """Document and place of a word of the text, for a request."""
        offset = -1
        for _ in range(occurrence + 1):
            offset = self.texts[name].index(word, offset + 1)
        offset += behind
        before = self.texts[name][:offset]
        start = before.rfind("\n") + 1
        position = types.Position(before.count("\n"), len(before[start:].encode("utf-16-le")) // 2)
        return {"text_document": types.TextDocumentIdentifier(self.uri(name)), "position": position}


@asynccontextmanager
async def editing(
    home: Path, capabilities: types.ClientCapabilities | None = None
) -> AsyncIterator[Editor]:
    client = LanguageClient("a test", "1")
    await client.start_io(sys.executable, "-m", "gclint", "editor", cwd=str(home))
    editor = Editor(client, home)
    params = types.InitializeParams(capabilities or ask_first(), root_uri=home.as_uri())
    await asyncio.wait_for(client.initialize_async(params), PATIENCE)
    client.initialized(types.InitializedParams())
    try:
        yield editor
    finally:
        await asyncio.wait_for(client.shutdown_async(None), PATIENCE)
        client.exit(None)
        await asyncio.wait_for(client.stop(), PATIENCE)
