"""Runs the desk: one address on this machine, until Ctrl-C."""

from __future__ import annotations

import socket
from collections.abc import Callable
from contextlib import suppress
from pathlib import Path

from gclint.desk.guard import HOST, Secrets
from gclint.problem import Problem, reason


def serve(folder: str, port: int, browser: bool, told: Callable[[str], None]) -> None:
    """Serve a folder until it is ended; `told` hears the address. Raises Problem where that cannot be."""
    import uvicorn

    from gclint.desk.app import make

    root = Path(folder)
    if not root.is_dir():
        raise Problem("this is no folder" if root.exists() else "there is no such folder", folder)
    with _listener(port) as listener:
        port = listener.getsockname()[1]
        held = Secrets()
        app, desk = make(root.resolve(), held, port)
        config = uvicorn.Config(
            app, log_config=None, access_log=False, server_header=False, lifespan="off", ws="none", http="h11",
            loop="asyncio", limit_concurrency=64, timeout_keep_alive=5, timeout_graceful_shutdown=1,
            h11_max_incomplete_event_size=32_768, proxy_headers=False,
        )  # fmt: skip
        address = f"http://{HOST}:{port}/?key={held.key}"
        told(address)
        if browser:
            _open(address)
        try:
            with suppress(KeyboardInterrupt):  # this is how it is ended
                uvicorn.Server(config).run(sockets=[listener])
        finally:
            desk.pool.end()


def _listener(port: int) -> socket.socket:
    listener = socket.socket(socket.AF_INET, socket.SOCK_STREAM)
    try:
        if hasattr(socket, "SO_EXCLUSIVEADDRUSE"):
            listener.setsockopt(socket.SOL_SOCKET, socket.SO_EXCLUSIVEADDRUSE, 1)
        else:
            listener.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
        listener.bind((HOST, port))
        listener.listen(64)
    except OSError as problem:
        listener.close()
        raise Problem(f"port {port} cannot be used: {reason(problem)}", "--port") from None
    return listener


def _open(address: str) -> None:
    import webbrowser

    with suppress(webbrowser.Error):  # the address is on the screen
        webbrowser.open(address)
