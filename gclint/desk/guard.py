"""Who may speak to the desk: one browser on this machine, and nothing that another site makes it send.

A key in the first address is used once and becomes a cookie. What changes anything also carries a token, which only
the desk's own page has, and comes from the desk's own origin.
"""

from __future__ import annotations

import asyncio
import contextlib
import secrets
from collections.abc import Awaitable, Callable, MutableMapping
from typing import Any
from urllib.parse import parse_qs

Scope = MutableMapping[str, Any]
Message = MutableMapping[str, Any]
Receive = Callable[[], Awaitable[Message]]
Send = Callable[[Message], Awaitable[None]]
App = Callable[[Scope, Receive, Send], Awaitable[None]]

HOST = "127.0.0.1"
LARGEST_UPLOAD = 64_000_000  # bytes of a program that is dropped
LARGEST_ASKED = 1_000_000  # of anything else that is sent
DROPPED_FOR = 10.0  # seconds that the rest of what is too large is read and dropped
LONGEST_QUERY = 8_000
OWN_POLICY = (
    "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; connect-src 'self'; "
    "frame-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'"
)
PRINTED_POLICY = (
    "default-src 'none'; style-src 'unsafe-inline'; img-src data:; base-uri 'none'; form-action 'none'; "
    "frame-ancestors 'self'"
)
SHEET_POLICY = (  # a sheet carries its own script and style, whose digests its own policy names
    "default-src 'none'; script-src 'unsafe-inline'; style-src 'unsafe-inline'; img-src data: blob:; "
    "base-uri 'none'; form-action 'none'; frame-ancestors 'self'"
)
POLICIES = {"/sheet/check": SHEET_POLICY, "/sheet/": PRINTED_POLICY}  # of what stands within the desk's page
UPLOADS = "/api/drop"


class Secrets:
    """What one run of the desk is guarded by."""

    def __init__(self) -> None:
        self.key: str | None = secrets.token_urlsafe(24)
        self.session = secrets.token_urlsafe(32)
        self.token = secrets.token_urlsafe(32)

    def use(self, key: str) -> bool:
        """Whether this is the key, which then opens nothing more."""
        if self.key is None or not secrets.compare_digest(key.encode(), self.key.encode()):
            return False
        self.key = None
        return True


class Guard:
    """Stands before the desk's application; see the top of this file."""

    def __init__(self, app: App, held: Secrets, port: int) -> None:
        self.app, self.held, self.port = app, held, port
        self.origin = f"http://{HOST}:{port}"
        self.cookie = f"gclint-desk-{port}"

    async def __call__(self, scope: Scope, receive: Receive, send: Send) -> None:
        if scope["type"] == "lifespan":
            await self.app(scope, receive, send)
            return
        if scope["type"] == "websocket":
            await send({"type": "websocket.close", "code": 1008})
            return
        headers = _Headers(scope)
        refused = self._refused(scope, headers)
        if refused is not None:
            await _answer(send, *refused)
            return
        if not self._known(headers):
            await self._enter(scope, send)
            return
        if scope["path"] == "/" and b"key=" in scope["query_string"]:  # the address is opened once more
            await _answer(send, 303, "", [(b"location", b"/")])
            return
        if scope["method"] == "POST":
            largest = LARGEST_UPLOAD if scope["path"] == UPLOADS else LARGEST_ASKED
            body = await _body(receive, largest, headers.one(b"content-length"))
            if body is None:
                await _dropped(receive)
                says = f"This is larger than {largest // 1_000_000} MB, the most that is taken here."
                await _answer(send, 413, says, [(b"connection", b"close")])
                return
            receive = _again(body)
        await self.app(scope, receive, _guarded(send, _policy_of(scope["path"])))

    def _refused(self, scope: Scope, headers: _Headers) -> tuple[int, str] | None:
        if headers.all(b"host") != [f"{HOST}:{self.port}".encode()]:
            return 403, f"The desk answers at {self.origin} alone."
        if len(scope["query_string"]) > LONGEST_QUERY:
            return 414, "This address is too long."
        origins = headers.all(b"origin")
        if any(origin != self.origin.encode() for origin in origins):
            return 403, "This comes from another site, and is refused."
        if headers.one(b"sec-fetch-site") in (b"cross-site", b"same-site"):
            return 403, "This comes from another site, and is refused."
        if scope["method"] in ("GET", "HEAD"):
            return None
        if scope["method"] != "POST":
            return 405, "The desk reads and saves; it knows no other way."
        token = headers.one(b"x-desk-token") or b""
        if len(origins) != 1 or not secrets.compare_digest(token, self.held.token.encode()):
            return 403, "Only the desk's own page may change anything. Load the page anew."
        return None

    def _known(self, headers: _Headers) -> bool:
        for line in headers.all(b"cookie"):
            for part in line.split(b";"):
                name, _, value = part.strip().partition(b"=")
                if name == self.cookie.encode() and secrets.compare_digest(value, self.held.session.encode()):
                    return True
        return False

    async def _enter(self, scope: Scope, send: Send) -> None:
        asked = parse_qs(scope["query_string"].decode("latin-1")) if scope["path"] == "/" else {}
        if scope["method"] == "GET" and len(asked.get("key", [])) == 1 and self.held.use(asked["key"][0]):
            cookie = f"{self.cookie}={self.held.session}; HttpOnly; SameSite=Strict; Path=/"
            await _answer(send, 303, "", [(b"location", b"/"), (b"set-cookie", cookie.encode())])
            return
        says = "The desk opens with the address that gclint desk has printed, which works once and in one browser."
        await _answer(send, 403, f"{says} End it with Ctrl-C and start it again for a new one.")


class _Headers:
    def __init__(self, scope: Scope) -> None:
        self.pairs: list[tuple[bytes, bytes]] = scope["headers"]

    def all(self, name: bytes) -> list[bytes]:
        return [value for key, value in self.pairs if key == name]

    def one(self, name: bytes) -> bytes | None:
        found = self.all(name)
        return found[0] if found else None


async def _body(receive: Receive, largest: int, told: bytes | None) -> bytes | None:
    """What is sent; None where it is more than `largest` bytes."""
    if told is not None and (not told.isdigit() or int(told) > largest):
        return None
    parts, size = [], 0
    while True:
        message = await receive()
        if message["type"] == "http.disconnect":
            return b""
        part = message.get("body", b"")
        size += len(part)
        if size > largest:
            return None
        parts.append(part)
        if not message.get("more_body"):
            return b"".join(parts)


async def _dropped(receive: Receive) -> None:
    """Read on and keep nothing: a client that is still sending sees no answer. What does not end soon is cut off."""
    left = 4 * LARGEST_UPLOAD
    with contextlib.suppress(TimeoutError):
        async with asyncio.timeout(DROPPED_FOR):
            while left > 0:
                message = await receive()
                left -= len(message.get("body", b""))
                if message["type"] == "http.disconnect" or not message.get("more_body"):
                    return


def _again(body: bytes) -> Receive:
    given = False

    async def receive() -> Message:
        nonlocal given
        if given:
            return {"type": "http.disconnect"}
        given = True
        return {"type": "http.request", "body": body, "more_body": False}

    return receive


def _policy_of(path: str) -> str:
    return next((policy for start, policy in POLICIES.items() if path.startswith(start)), OWN_POLICY)


def _kept(policy: str) -> list[tuple[bytes, bytes]]:
    return [
        (b"content-security-policy", policy.encode()), (b"referrer-policy", b"no-referrer"),
        (b"x-content-type-options", b"nosniff"), (b"cache-control", b"no-store"),
        (b"cross-origin-opener-policy", b"same-origin"), (b"cross-origin-resource-policy", b"same-origin"),
        (b"x-frame-options", b"DENY" if policy == OWN_POLICY else b"SAMEORIGIN"),
    ]  # fmt: skip


def _guarded(send: Send, policy: str) -> Send:
    async def sent(message: Message) -> None:
        if message["type"] == "http.response.start":
            message = {**message, "headers": [*message.get("headers", []), *_kept(policy)]}
        await send(message)

    return sent


async def _answer(send: Send, status: int, says: str, more: list[tuple[bytes, bytes]] | None = None) -> None:
    body = says.encode()
    headers = [(b"content-type", b"text/plain; charset=utf-8"), (b"content-length", str(len(body)).encode())]
    start = {"type": "http.response.start", "status": status, "headers": [*headers, *_kept(OWN_POLICY), *(more or [])]}
    await send(start)
    await send({"type": "http.response.body", "body": body})
