"""A desk that runs, as its own process, and clients that speak to it over real sockets."""

from __future__ import annotations

import re
import signal
import subprocess
import sys
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

import pytest

httpx = pytest.importorskip("httpx")
pytest.importorskip("starlette")
pytest.importorskip("uvicorn")

PLATE = """(Lowtide workshop, a plate for the slip; invented)
G21 G90 G94 G17 G54
T1 M6
S16000 M3
G0 Z15
G0 X0 Y0
G1 Z-2 F300
G1 X60 F900
G1 Y40
G1 X0
G1 Y0
G0 Z15
M5
M2
"""


class Running:
    """One desk; `client` is let in, and `token` is what its page carries."""

    def __init__(self, folder: Path, *more: str) -> None:
        command = [sys.executable, "-m", "gclint", "desk", str(folder), "--no-browser", *more]
        self.process = subprocess.Popen(command, stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True)
        assert self.process.stdout is not None
        self.address = ""
        for line in self.process.stdout:
            if found := re.search(r"http://\S+", line):
                self.address = found[0]
                break
        self.root = self.address.partition("/?")[0]
        self.port = int(self.root.rpartition(":")[2])
        self.client: Any = None
        self.token = ""

    def enter(self) -> None:
        self.client = httpx.Client(base_url=self.root, follow_redirects=True, timeout=60, trust_env=False)
        page = self.client.get(self.address)
        assert page.status_code == 200
        found = re.search(r'name="desk-token" content="([^"]+)"', page.text)
        assert found is not None
        self.token = found[1]

    @property
    def headers(self) -> dict[str, str]:
        return {"origin": self.root, "x-desk-token": self.token}

    def get(self, path: str, **given: str) -> Any:
        return self.client.get(path, params=given)

    def post(self, path: str, **given: Any) -> Any:
        return self.client.post(path, json=given, headers=self.headers)

    def drop(self, name: str, data: bytes) -> Any:
        kind = {"content-type": "application/octet-stream"}
        return self.client.post("/api/drop", params={"name": name}, content=data, headers=self.headers | kind)

    def save(self, name: str, which: str, *changes: tuple[list[Any], Any], seen: str | None = None, **more: Any) -> Any:
        if seen is None:
            seen = self.get("/api/state", name=name).json()[which]["fingerprint"]
        rows = [{"key": key, "value": value} for key, value in changes]
        return self.post("/api/save", name=name, which=which, seen=seen, changes=rows, **more)

    def end(self) -> int:
        """Ctrl-C."""
        if self.client is not None:
            self.client.close()
        if self.process.poll() is None:
            self.process.send_signal(signal.SIGINT)
        try:
            return self.process.wait(15)
        finally:
            self.process.kill()
            for pipe in (self.process.stdout, self.process.stderr):
                if pipe is not None:
                    pipe.close()


@contextmanager
def running(folder: Path, *more: str) -> Iterator[Running]:
    desk = Running(folder, *more)
    try:
        desk.enter()
        yield desk
    finally:
        desk.end()


@pytest.fixture(scope="module")
def shop(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A folder above the desk's with a shop file, and the desk's own folder in it."""
    above = tmp_path_factory.mktemp("lowtide")
    (above / "secret.nc").write_text(PLATE)
    (above / "shop.toml").write_text('# the bench router\n[[tool]]\nnumber = 1\nshape = "flat"\ndiameter = "6 mm"\n')
    jobs = above / "jobs"
    jobs.mkdir()
    (jobs / "plate.nc").write_text(PLATE)
    return jobs


@pytest.fixture(scope="module")
def desk(shop: Path) -> Iterator[Running]:
    with running(shop) as made:
        yield made


@pytest.fixture
def window(browser: Any) -> Iterator[Callable[..., Any]]:
    """Opens a desk in a window of its own; what its console says must be nothing."""
    contexts, said = [], list[str]()

    def opened(desk: Running, width: int = 1280, theme: str = "light") -> Any:
        if not contexts:
            contexts.append(browser.new_context(viewport={"width": width, "height": 900}, color_scheme=theme))
            name, value = next((c.name, c.value) for c in desk.client.cookies.jar)
            contexts[0].add_cookies([{"name": name, "value": value, "url": desk.root}])
        page = contexts[0].new_page()
        page.on("pageerror", lambda error: said.append(str(error)))
        page.on("request", lambda asked: asked.url.startswith((desk.root, "data:", "blob:")) or said.append(asked.url))
        page.goto(desk.root)
        return page

    yield opened
    for context in contexts:
        context.close()
    assert said == []
