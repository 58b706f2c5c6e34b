"""The desk in a real browser (Debian's chromium): the whole job by mouse, and again by keyboard on a long program."""

from __future__ import annotations

import tomllib
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest

from tests.desk.conftest import PLATE, running

pytestmark = pytest.mark.slow
PATIENCE = 120_000  # ms; machines that test are busy
FOLLOWED = ".program[data-followed]:not([aria-busy])"


class Hand:
    """What a person does in a window, waiting for the sheet to follow each save."""

    def __init__(self, page: Any) -> None:
        self.page = page
        page.set_default_timeout(PATIENCE)

    def turn(self) -> int:
        return int(self.page.locator(".program").first.get_attribute("data-followed") or 0)

    def followed(self, do: Callable[[], Any]) -> None:
        before = self.turn()
        do()
        for _ in range(600):
            if self.turn() > before and self.page.locator(FOLLOWED).count():
                return
            self.page.wait_for_timeout(100)
        raise AssertionError(f"the sheet did not follow: {self.page.inner_text('#told')}")

    def field(self, key: str) -> Any:
        return self.page.locator(f'[data-key="{key}"]')

    def button(self, name: str) -> Any:
        return self.page.get_by_role("button", name=name, exact=True)

    def part(self, name: str) -> Any:
        return self.page.locator(f"details[data-part={name}]")


def test_the_whole_job_by_mouse(tmp_path: Path, window: Callable[..., Any]) -> None:
    with running(tmp_path) as desk:
        page = window(desk)
        hand = Hand(page)
        page.get_by_text("No program is here yet.").wait_for()
        dropped = {"name": "plate.nc", "mimeType": "text/plain", "buffer": PLATE.encode()}
        page.locator("#chooser").set_input_files([dropped])
        page.wait_for_selector(FOLLOWED)
        assert (tmp_path / "plate.nc").read_text() == PLATE
        hand.followed(lambda: hand.button("Put it there").click())
        hand.followed(lambda: hand.field("job:material").select_option("beech"))
        hand.part("new-bit").locator("summary").click()
        hand.field("new-diameter").fill("6 mm")
        hand.field("new-flutes").fill("2")
        hand.followed(lambda: hand.button("Put it in").click())
        job = tomllib.loads((tmp_path / "job.toml").read_text())
        # at the tip X 0 to 60, Y 0 to 40; how wide the bit is was not said yet
        assert job["stock"] == {"size": ["60 mm", "40 mm", "2 mm"], "corner": ["0 mm", "0 mm"]}

        blank = page.locator(".blank")
        blank.scroll_into_view_if_needed()
        box = page.locator(".blank rect").bounding_box()
        page.mouse.move(box["x"] + 12, box["y"] + 12)
        page.mouse.down()
        page.mouse.move(box["x"] + 12 + box["width"] / 6, box["y"] + 12, steps=4)  # a sixth of 60 mm is 10 mm
        hand.followed(page.mouse.up)
        assert tomllib.loads((tmp_path / "job.toml").read_text())["stock"]["corner"] == ["10 mm", "0 mm"]
        hand.followed(lambda: hand.button("Take back the last save").click())
        assert tomllib.loads((tmp_path / "job.toml").read_text())["stock"]["corner"] == ["0 mm", "0 mm"]

        frame = page.frame_locator("iframe.loaded")
        assert frame.locator("h1").inner_text() == "plate.nc"
        page.get_by_role("link", name="Mend", exact=True).click()
        page.locator(".verdict", has_text="copy").wait_for()


def test_the_whole_job_by_keyboard_on_a_long_program(tmp_path: Path, window: Callable[..., Any]) -> None:
    rows = [f"G1 X{60 * (n % 2)} Y{n * 0.004:.3f} F900" for n in range(20_000)]
    head, tail = PLATE.split("G1 X60 F900\n")[0], "G0 Z15\nM5\nM2\n"
    (tmp_path / "long.nc").write_text(head + "\n".join(rows) + "\n" + tail)
    with running(tmp_path) as desk:
        page = window(desk)
        hand = Hand(page)

        def press(locator: Any, *keys: str) -> None:
            locator.focus()
            for key in keys:
                page.keyboard.press(key)

        link = page.get_by_role("link", name="long.nc")
        link.wait_for()
        press(link, "Enter")
        page.wait_for_selector(FOLLOWED)
        hand.followed(lambda: press(hand.button("Put it there"), "Enter"))
        before = tomllib.loads((tmp_path / "job.toml").read_text())["stock"]["corner"]
        hand.followed(lambda: press(page.locator(".blank"), "ArrowLeft", "ArrowLeft", "Shift+ArrowUp"))
        after = tomllib.loads((tmp_path / "job.toml").read_text())["stock"]["corner"]
        assert [float(b.split()[0]) - float(a.split()[0]) for a, b in zip(before, after)] == [-2, 10]

        def typed() -> None:
            hand.field("job:stock.size.2").focus()
            page.keyboard.press("Control+A")
            page.keyboard.type("18")
            page.keyboard.press("Tab")

        hand.followed(typed)
        assert tomllib.loads((tmp_path / "job.toml").read_text())["stock"]["size"][2] == "18 mm"


def test_two_windows_and_an_editor_lose_nothing(tmp_path: Path, window: Callable[..., Any]) -> None:
    (tmp_path / "plate.nc").write_text(PLATE)
    (tmp_path / "job.toml").write_text('# ours\nmaterial = "beech"\n')
    with running(tmp_path) as desk:
        page = window(desk)
        hand = Hand(page)
        page.get_by_role("link", name="plate.nc").click()
        page.wait_for_selector(FOLLOWED)
        hand.field("job:stock.measured_thickness").fill("12 mm")  # typed, not saved yet
        (tmp_path / "job.toml").write_text('# ours\nmaterial = "mdf" # theirs\n')
        page.keyboard.press("Tab")
        page.get_by_role("heading", name="Changed on the disk").wait_for()
        assert tomllib.loads((tmp_path / "job.toml").read_text()) == {"material": "mdf"}
        hand.followed(lambda: hand.button("Make my change in it").click())
        text = (tmp_path / "job.toml").read_text()
        assert tomllib.loads(text) == {"material": "mdf", "stock": {"measured_thickness": "12 mm"}}
        assert text.startswith("# ours\n")
        assert "# theirs" in text
        hand.followed(lambda: (tmp_path / "job.toml").write_text('material = "pine"\n'))
        assert "changed on the disk" in page.inner_text("#told")


def test_a_broken_file_and_a_desk_that_has_ended_are_said(tmp_path: Path, window: Callable[..., Any]) -> None:
    hostile = "<script>alert(1)</script><img src=http://evil.example>"
    (tmp_path / "plate.nc").write_text(PLATE.replace("a plate", hostile))
    (tmp_path / "<b>bold.nc").write_text(PLATE)
    (tmp_path / "job.toml").write_text('material = "beech\n')
    with running(tmp_path) as desk:
        page = window(desk, 390, "dark")
        page.set_default_timeout(PATIENCE)
        page.get_by_role("link", name="<b>bold.nc").wait_for()
        page.wait_for_selector("tbody[data-done]")
        assert page.locator("main script, main img, main b:text-is('bold.nc')").count() == 0
        page.get_by_role("link", name="plate.nc").click()
        page.wait_for_selector(FOLLOWED)
        assert "job.toml, line 1" in page.inner_text(".verdict")
        page.get_by_role("button", name="Declare").click()
        assert "job.toml" in page.locator(".form .wrong").first.inner_text()
        assert page.evaluate("document.documentElement.scrollWidth") <= 390
        desk.end()
        page.get_by_text("The desk does not answer.").wait_for()
