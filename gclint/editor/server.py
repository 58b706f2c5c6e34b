"""`gclint editor`: a language server on standard input and output, by the editor protocol (LSP 3.17).

One check at a time and document. A text that changes ends the check of the text before, and the next one begins when
the text has stood still for a moment. What the editor holds of other files counts before what is on disk.
"""

from __future__ import annotations

import asyncio
import threading
import time
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any
from urllib.parse import unquote, urlsplit

from lsprotocol import types
from pygls.exceptions import JsonRpcInternalError
from pygls.lsp.server import LanguageServer
from pygls.uris import from_fs_path, to_fs_path

from gclint import __version__
from gclint.advice.edits import words_on
from gclint.editor import actions, declarations, diagnostics
from gclint.editor.answer import Answer, Superseded, answer_of
from gclint.editor.hover import hover
from gclint.editor.outline import outline
from gclint.editor.text import Text
from gclint.problem import Problem
from gclint.program import ENDINGS
from gclint.stock_store import StockStore

PAUSE = 0.12  # s for which a text stands still before it is checked; less where its check takes less, but at least
SHORT_PAUSE = 0.03  # this, in which a hand that types does not come to the next key
WORKERS = 2
TOML = ".toml"


@dataclass
class Open:
    """A document that is open: its answer, where there is one, and what is being worked out for it."""

    uri: str
    answer: Answer | None = None
    text: Text | None = None
    version: int | None = None
    work: asyncio.Task[None] | None = None
    stop: threading.Event = field(default_factory=threading.Event)
    took: float = PAUSE  # s, the check before
    told: set[str] = field(default_factory=set)  # other files for which it has something to tell


class Server(LanguageServer):
    """What is open, and the threads that check it."""

    def __init__(self) -> None:
        super().__init__("gclint", __version__)
        self.open: dict[str, Open] = {}
        self.shelf = StockStore()
        self.threads = ThreadPoolExecutor(WORKERS, "gclint")
        self.problems: dict[str, dict[str, types.Diagnostic]] = {}  # of a declaration, by the program that met them

    # -- what is open ------------------------------------------------------------------------------------------------

    def text_of(self, uri: str) -> Text:
        return Text(self.workspace.get_text_document(uri).source, self.encoding)

    @property
    def encoding(self) -> str:
        """How the editor counts columns."""
        said = self.workspace.position_encoding
        return str(getattr(said, "value", said) or "utf-16")

    def held(self) -> dict[str, bytes]:
        """What the editor holds of files, by absolute name."""
        made = {}
        for uri, document in self.workspace.text_documents.items():
            path = path_of(uri)
            if path is not None:
                made[path] = document.source.encode("utf-8", "replace")
        return made

    def begin(self, uri: str, at_once: bool = False) -> None:
        """Check a document anew, when it has stood still; what was being worked out for it ends."""
        document = self.open.setdefault(uri, Open(uri))
        self._end(document)
        document.stop = threading.Event()
        pause = 0.0 if at_once else max(SHORT_PAUSE, min(PAUSE, document.took))
        document.work = asyncio.get_running_loop().create_task(self._work(document, pause))

    def begin_users(self, changed: str) -> None:
        """Check anew what may use this document: programs that asked for it, and declarations for another of them."""
        path = path_of(changed)
        for uri, document in list(self.open.items()):
            if uri == changed:
                continue
            if path_of(uri).lower().endswith(TOML):
                concerned = not path or path.lower().endswith(TOML)
            else:
                concerned = not path or document.answer is None or document.answer.uses(path)
            if concerned:
                self.begin(uri)

    def close(self, uri: str) -> None:
        document = self.open.pop(uri, None)
        if document is not None:
            self._end(document)
            self._tell_elsewhere(document, {})
            self.problems.pop(uri, None)
            self._publish(uri, [], None)
        self.begin_users(uri)

    def _end(self, document: Open) -> None:
        document.stop.set()
        if document.work is not None:
            document.work.cancel()

    async def settled(self, uri: str) -> Open | None:
        """The document with the answer to its text as it stands; None where there is none."""
        document = self.open.get(uri)
        while document is not None and document.work is not None and not document.work.done():
            work = document.work
            await asyncio.wait({work})
            if document.work is work:
                break
        return document if document is not None and document.answer is not None else None

    # -- checking ----------------------------------------------------------------------------------------------------

    async def _work(self, document: Open, pause: float) -> None:
        if pause:
            await asyncio.sleep(pause)
        try:
            if path_of(document.uri, "").lower().endswith(TOML):
                await self._declaration(document)
            else:
                await self._program(document)
        except asyncio.CancelledError:
            raise
        except Exception as fault:  # one document must not end the server
            self.window_log_message(types.LogMessageParams(types.MessageType.Error, f"gclint itself failed: {fault!r}"))

    async def _program(self, document: Open) -> None:
        uri, stop = document.uri, document.stop
        version, text = self.workspace.get_text_document(uri).version, self.text_of(uri)
        path, held = path_of(uri) or None, self.held()
        name = Path(path).name if path else unquote(urlsplit(uri).path) or "untitled"
        begun = time.monotonic()
        try:
            answer = await self._in_thread(answer_of, text.source, path, name, held, stop, self.shelf)
        except Superseded:
            return
        if stop.is_set():
            return
        document.answer, document.text, document.version = answer, text, version
        document.took = time.monotonic() - begun
        made, elsewhere = diagnostics.of_program(answer, text, uri), {}
        problem = answer.problem
        if problem is not None and not (answer.none and not _is_surely_a_program(path)):
            if problem.path in (name, path, None):
                made = [diagnostics.of_problem(problem, text)]
            else:
                made = [diagnostics.elsewhere(problem, text)]
                other = from_fs_path(str(Path(problem.path or "").absolute()))
                if other is not None:
                    elsewhere[other] = diagnostics.of_problem(problem, self._text_elsewhere(other))
        self._publish(uri, made, version)
        self._tell_elsewhere(document, elsewhere)

    async def _declaration(self, document: Open) -> None:
        uri, text, path = document.uri, self.text_of(document.uri), path_of(document.uri)
        problem = await self._in_thread(declarations.problem_in, path, text.source, self.held())
        if document.stop.is_set():
            return
        elsewhere = {}
        own: dict[str, types.Diagnostic] = {}
        if problem is not None:
            other = from_fs_path(str(Path(problem.path or path).absolute())) or uri
            if path_of(other) == path:
                own[uri] = diagnostics.of_problem(problem, text)
            else:
                own[uri] = diagnostics.elsewhere(problem, text)
                own[uri].message = str(problem)
                elsewhere[other] = diagnostics.of_problem(problem, self._text_elsewhere(other))
        self.problems.setdefault(uri, {}).pop(uri, None)
        self.problems[uri] |= own
        self._publish_declaration(uri)
        self._tell_elsewhere(document, elsewhere)

    def _text_elsewhere(self, uri: str) -> Text:
        if uri in self.workspace.text_documents:
            return self.text_of(uri)
        try:
            return Text(Path(path_of(uri)).read_text(encoding="utf-8", errors="replace"), self.encoding)
        except OSError:
            return Text("", self.encoding)

    def _tell_elsewhere(self, document: Open, told: dict[str, types.Diagnostic]) -> None:
        """Show what a check met in other files, and no longer what the one before met there."""
        for uri in document.told | set(told):
            of_file = self.problems.setdefault(uri, {})
            of_file.pop(document.uri, None)
            if uri in told:
                of_file[document.uri] = told[uri]
            self._publish_declaration(uri)
        document.told = set(told)

    def _publish_declaration(self, uri: str) -> None:
        """What is wrong with a declaration, said once whoever met it."""
        made: list[types.Diagnostic] = []
        for each in self.problems.get(uri, {}).values():
            if not any(each.range == other.range and each.message == other.message for other in made):
                made.append(each)
        self._publish(uri, made, None)

    def _publish(self, uri: str, made: list[types.Diagnostic], version: int | None) -> None:
        self.text_document_publish_diagnostics(types.PublishDiagnosticsParams(uri, made, version))

    async def _in_thread(self, work: Any, *given: Any) -> Any:
        return await asyncio.get_running_loop().run_in_executor(self.threads, work, *given)


def path_of(uri: str, otherwise: str = "") -> str:
    """The absolute name of the file that a document is; `otherwise` for one that is none."""
    return to_fs_path(uri) or otherwise if uri.startswith("file:") else otherwise


def _is_surely_a_program(path: str | None) -> bool:
    return bool(path) and str(path).lower().endswith(tuple(end for end in ENDINGS if end != ".txt"))


def make() -> Server:
    """The server with everything that it answers."""
    server = Server()

    @server.feature(types.TEXT_DOCUMENT_DID_OPEN)
    async def opened(params: types.DidOpenTextDocumentParams) -> None:
        server.begin(params.text_document.uri, at_once=True)
        server.begin_users(params.text_document.uri)

    @server.feature(types.TEXT_DOCUMENT_DID_CHANGE)
    async def changed(params: types.DidChangeTextDocumentParams) -> None:
        server.begin(params.text_document.uri)
        server.begin_users(params.text_document.uri)

    @server.feature(types.TEXT_DOCUMENT_DID_SAVE)
    async def saved(params: types.DidSaveTextDocumentParams) -> None:
        server.begin_users("")

    @server.feature(types.TEXT_DOCUMENT_DID_CLOSE)
    async def closed(params: types.DidCloseTextDocumentParams) -> None:
        server.close(params.text_document.uri)

    @server.feature(types.WORKSPACE_DID_CHANGE_WATCHED_FILES)
    async def touched(params: types.DidChangeWatchedFilesParams) -> None:
        server.begin_users("")

    @server.feature(types.TEXT_DOCUMENT_HOVER)
    async def hovered(params: types.HoverParams) -> types.Hover | None:
        document = await server.settled(params.text_document.uri)
        if document is None or document.answer is None or document.text is None:
            return None
        line, column = params.position.line, document.text.column(params.position)
        said = hover(document.answer, document.text.line(line), line + 1, column)
        if said is None:
            return None
        here = document.text.whole_line(line)
        return types.Hover(types.MarkupContent(types.MarkupKind.Markdown, said), here)

    @server.feature(
        types.TEXT_DOCUMENT_CODE_ACTION,
        types.CodeActionOptions(code_action_kinds=[types.CodeActionKind.QuickFix], resolve_provider=True),
    )
    async def acted(params: types.CodeActionParams) -> list[types.CodeAction]:
        document = await server.settled(params.text_document.uri)
        if document is None or document.answer is None or document.text is None:
            return []
        lines = params.range.start.line + 1, params.range.end.line + 1
        return actions.actions(
            document.answer, document.text, document.uri, document.version, lines, params.context.diagnostics,
            *_can_take(server),
        )  # fmt: skip

    @server.feature(types.CODE_ACTION_RESOLVE)
    async def resolved(action: types.CodeAction) -> types.CodeAction:
        data = action.data if isinstance(action.data, dict) else {}
        document = await server.settled(str(data.get("uri", "")))
        if document is None or document.answer is None or document.text is None:
            return action
        if document.version != data.get("version"):
            raise JsonRpcInternalError("the text has changed since; ask again")
        path = path_of(document.uri) or None
        name = Path(path).name if path else "untitled"
        try:
            action.edit = await server._in_thread(
                actions.mended, document.answer, document.text, document.uri, document.version, str(data["rule"]), path,
                name, server.held(), document.stop, data.get("ask") is not False,
            )  # fmt: skip
        except Superseded:
            raise JsonRpcInternalError("the text has changed since; ask again") from None
        except Problem as problem:
            raise JsonRpcInternalError(problem.says) from None
        return action

    @server.feature(types.TEXT_DOCUMENT_DEFINITION)
    async def defined(params: types.DefinitionParams) -> types.Location | None:
        document = await server.settled(params.text_document.uri)
        if document is None or document.answer is None or document.text is None:
            return None
        column = document.text.column(params.position)
        for word in words_on(document.text.line(params.position.line)):
            if word.letter == "T" and word.start <= column <= word.end and word.value == word.value:
                return declarations.tool_place(document.answer, int(word.value), server.encoding, server.held())
        return None

    @server.feature(types.TEXT_DOCUMENT_DOCUMENT_SYMBOL)
    async def outlined(params: types.DocumentSymbolParams) -> list[types.DocumentSymbol]:
        document = await server.settled(params.text_document.uri)
        if document is None or document.answer is None or document.text is None:
            return []
        return outline(document.answer, document.text)

    @server.feature(types.TEXT_DOCUMENT_COMPLETION, types.CompletionOptions(trigger_characters=['"', "[", "="]))
    async def completed(params: types.CompletionParams) -> list[types.CompletionItem]:
        path = path_of(params.text_document.uri)
        if not path.endswith(TOML):
            return []
        return declarations.complete(path, server.text_of(params.text_document.uri), params.position)

    return server


def _can_take(server: Server) -> tuple[bool, bool]:
    """Whether the editor takes an edit that is worked out later, and whether it also asks a person before."""
    of_text = server.client_capabilities.text_document
    action = of_text.code_action if of_text is not None else None
    support = action.resolve_support if action is not None else None
    later = support is not None and "edit" in support.properties
    workspace = server.client_capabilities.workspace
    edit = workspace.workspace_edit if workspace is not None else None
    return later, later and edit is not None and edit.change_annotation_support is not None
