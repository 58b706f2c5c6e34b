"""The desk's addresses: its page, what the page asks for, and the sheets that stand in it."""

from __future__ import annotations

import json
import tempfile
import threading
from collections import OrderedDict
from pathlib import Path
from typing import Any

from starlette.applications import Starlette
from starlette.concurrency import run_in_threadpool
from starlette.requests import Request
from starlette.responses import HTMLResponse, JSONResponse, Response
from starlette.routing import Route

from gclint import __version__
from gclint.desk.guard import Guard, Secrets
from gclint.desk.pool import Failed, Pool
from gclint.report.page.page_out import style as page_style

ROOM = Path(__file__).parent
KEPT = 24  # whole results that are kept
KEPT_ROWS = 4000
CHECK_S, SHORT_S, LONG_S = 180.0, 20.0, 600.0  # bounds on a check, on small work, on a mend or a plan
READERS = ("author", "operator", "instructor")
FILES = {"desk.js": "text/javascript", "draw.js": "text/javascript", "tools.js": "text/javascript",
         "trial.js": "text/javascript", "desk.css": "text/css"}  # fmt: skip
STATUS = {
    "Outside": 403, "Above": 403, "Missing": 404, "Changed": 409, "Wrong": 422, "Late": 504, "Lost": 502, "Busy": 503,
    "Internal": 500, "Disk": 500,
}  # fmt: skip


class Desk:
    """What one run of the desk knows: its folder, its workers, and the results that still hold."""

    def __init__(self, root: Path, held: Secrets) -> None:
        self.root, self.held = root, held
        self.pool = Pool(root)
        self.lock = threading.Lock()
        self.results: OrderedDict[tuple[str, str, bool], dict[str, Any]] = OrderedDict()
        self.pages: OrderedDict[str, str] = OrderedDict()
        self.cards: dict[str, Any] | None = None

    def checked(self, name: str, reader: str = "author", whole: bool = True) -> dict[str, Any]:
        """The result of a program as it stands on the disk now. Raises Failed."""
        key = (name, reader, whole)
        with self.lock:
            kept = self.results.get(key)
        if kept is not None and self.pool.do("still", SHORT_S, heard=kept["heard"]):
            return kept
        made: dict[str, Any] = self.pool.do("checked", CHECK_S, name=name, reader=reader, whole=whole)
        with self.lock:
            self.results[key] = made
            self.results.move_to_end(key)
            for flag, most in ((True, KEPT), (False, KEPT_ROWS)):
                of_kind = [each for each in self.results if each[2] is flag]
                for old in of_kind[: max(0, len(of_kind) - most)]:
                    del self.results[old]
        return made

    def keep(self, page: str) -> str:
        """Under which number a page can be asked for."""
        import secrets

        number = secrets.token_hex(8)
        with self.lock:
            self.pages[number] = page
            while len(self.pages) > KEPT:
                self.pages.popitem(last=False)
        return number


def make(root: Path, held: Secrets, port: int) -> tuple[Guard, Desk]:
    """The guarded application, and what must be ended with it."""
    desk = Desk(root, held)

    def route(path: str, handle: Any, method: str = "GET") -> Route:
        async def endpoint(request: Request) -> Response:
            try:
                given = await _given(request)
            except ValueError:
                return JSONResponse({"problem": "this is not what the desk's page sends"}, 400)
            try:
                answer = await run_in_threadpool(handle, desk, given)
            except Failed as failed:
                return JSONResponse({"problem": failed.says, "kind": failed.kind, **failed.more}, _status(failed))
            except (KeyError, TypeError, ValueError):
                return JSONResponse({"problem": "this is not what the desk's page sends"}, 400)
            return answer if isinstance(answer, Response) else JSONResponse(answer)

        return Route(path, endpoint, methods=[method])

    routes = [
        route("/", _page), route("/own/{file}", _own), route("/api/folder", _folder), route("/api/row", _row),
        route("/api/program", _program), route("/api/state", _state), route("/api/cards", _cards),
        route("/sheet/check", _sheet), route("/sheet/kept", _kept),
        route("/api/save", _save, "POST"), route("/api/back", _back, "POST"), route("/api/drop", _drop, "POST"),
        route("/api/mend", _mend, "POST"), route("/api/compare", _compare, "POST"), route("/api/trial", _trial),
        route("/api/plan", _plan, "POST"), route("/api/grade", _grade, "POST"), route("/api/learn", _learn, "POST"),
        route("/sheet/grading", _grading),
    ]  # fmt: skip
    return Guard(Starlette(routes=routes), held, port), desk


def _status(failed: Failed) -> int:
    return STATUS.get(failed.kind, 422)


async def _given(request: Request) -> dict[str, Any]:
    """What is asked, wherever it stands: in the address, or as JSON."""
    given: dict[str, Any] = {**dict(request.query_params), **request.path_params}
    if request.method == "POST":
        body = await request.body()
        if request.headers.get("content-type", "").partition(";")[0] == "application/octet-stream":
            return {**given, "body": body}
        sent = json.loads(body)
        if not isinstance(sent, dict):
            raise ValueError
        given |= sent
    return given


def _page(desk: Desk, given: dict[str, Any]) -> Response:
    from gclint.report.templates import templates

    shell = templates(ROOM).get_template("desk.html.j2")
    return HTMLResponse(shell.render(token=desk.held.token, version=__version__, folder=str(desk.root)))


def _own(desk: Desk, given: dict[str, Any]) -> Response:
    if given["file"] == "page.css":
        return Response(page_style(), media_type="text/css")
    kind = FILES.get(given["file"])
    if kind is None:
        return Response("There is no such file.", 404, media_type="text/plain")
    return Response((ROOM / given["file"]).read_bytes(), media_type=kind)


def _folder(desk: Desk, given: dict[str, Any]) -> Any:
    return desk.pool.do("listing", SHORT_S)


def _row(desk: Desk, given: dict[str, Any]) -> Any:
    return desk.checked(_text(given, "name"), whole=False)["row"]


def _program(desk: Desk, given: dict[str, Any]) -> Any:
    made = desk.checked(_text(given, "name"))
    return {key: made[key] for key in ("row", "drawing", "asks", "used")}


def _state(desk: Desk, given: dict[str, Any]) -> Any:
    return desk.pool.do("state", SHORT_S, program=_text(given, "name"))


def _cards(desk: Desk, given: dict[str, Any]) -> Any:
    if desk.cards is None:
        desk.cards = desk.pool.do("materials", SHORT_S)
    return desk.cards


def _sheet(desk: Desk, given: dict[str, Any]) -> Response:
    reader = given.get("for", "author")
    if reader not in READERS:
        raise ValueError
    try:
        return HTMLResponse(desk.checked(_text(given, "name"), reader)["page"])
    except Failed as failed:
        place = f"{failed.more.get('path') or given['name']}"
        line = f", line {failed.more['line']}" if failed.more.get("line") else ""
        return HTMLResponse(_note(f"{place}{line}: {failed.says}"), _status(failed))


def _note(says: str) -> str:
    from html import escape

    from gclint.clean_text import plain

    return (
        '<!DOCTYPE html><html lang="en"><head><meta charset="utf-8"><title>Not checked</title>'
        "<style>:root{color-scheme:light dark}body{font:16px/1.5 sans-serif;margin:2em;max-width:40em}</style></head>"
        f"<body><h1>This program is not checked</h1><p>{escape(plain(says))}</p></body></html>"
    )


def _kept(desk: Desk, given: dict[str, Any]) -> Response:
    page = desk.pages.get(_text(given, "number"))
    return HTMLResponse(page or _note("This sheet is no longer kept; make it again."), 200 if page else 404)


def _save(desk: Desk, given: dict[str, Any]) -> Any:
    which = _text(given, "which")
    if which not in ("job", "shop") or not isinstance(given["changes"], list):
        raise ValueError
    return desk.pool.do(
        "save", SHORT_S, program=_text(given, "name"), which=which, seen=_text(given, "seen"),
        changes=given["changes"], yes=given.get("yes") is True,
    )  # fmt: skip


def _back(desk: Desk, given: dict[str, Any]) -> Any:
    before = given["before"]
    if before is not None and not isinstance(before, str):
        raise ValueError
    return desk.pool.do(
        "take_back", SHORT_S, program=_text(given, "name"), which=_text(given, "which"), name=_text(given, "file"),
        before=before, after=_text(given, "after"),
    )  # fmt: skip


def _drop(desk: Desk, given: dict[str, Any]) -> Any:
    body = given["body"]
    if not isinstance(body, bytes):
        raise ValueError
    with tempfile.TemporaryDirectory() as folder:
        file = Path(folder) / "dropped"
        file.write_bytes(body)
        return desk.pool.do("dropped", SHORT_S, name=_text(given, "name"), data_file=str(file))


def _mend(desk: Desk, given: dict[str, Any]) -> Any:
    made = desk.pool.do("mended", LONG_S, name=_text(given, "name"), write=given.get("write") is True)
    return {"number": desk.keep(made["page"]), "copy": made["copy"], "written": made["written"]}


def _compare(desk: Desk, given: dict[str, Any]) -> Any:
    made = desk.pool.do("compared", LONG_S, old=_text(given, "old"), new=_text(given, "new"))
    return {"number": desk.keep(made["page"]), "verdict": made["verdict"]}


def _plan(desk: Desk, given: dict[str, Any]) -> Any:
    texts = {key: _text(given, key) for key in ("folder", "material", "like", "blank", "depth")}
    confirm = given["confirm"]
    if confirm is not None and not all(isinstance(each, int) for each in confirm):
        raise ValueError
    tools = [str(each) for each in given["tools"]]
    return desk.pool.do("plan", LONG_S, **texts, tools=tools, cuts=int(given["cuts"]), confirm=confirm)


def _trial(desk: Desk, given: dict[str, Any]) -> Any:
    return desk.pool.do("cuts", SHORT_S, folder=_text(given, "folder"))


def _grade(desk: Desk, given: dict[str, Any]) -> Any:
    said, seen = given["said"], given.get("seen")
    if not isinstance(said, dict) or not all(isinstance(each, str) for each in said.values()):
        raise ValueError
    return desk.pool.do(
        "grade", SHORT_S, folder=_text(given, "folder"), cut=int(given["cut"]), said=said,
        seen=seen if isinstance(seen, dict) else None,
    )  # fmt: skip


def _grading(desk: Desk, given: dict[str, Any]) -> Response:
    return HTMLResponse(desk.pool.do("grading_sheet", SHORT_S, folder=_text(given, "folder"))["page"])


def _learn(desk: Desk, given: dict[str, Any]) -> Any:
    made = desk.pool.do(
        "learn", LONG_S, folder=_text(given, "folder"), write=given["write"] is True, yes=given["yes"] is True
    )
    return {"number": desk.keep(made.pop("page")), **made}


def _text(given: dict[str, Any], key: str) -> str:
    text = given[key]
    if not isinstance(text, str):
        raise ValueError
    return text
