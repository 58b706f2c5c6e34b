"""Takes the README's picture of a page from a real run:  python tests/page_picture.py  writes .pictures/page.jpg anew.

Needs chromium (Debian: apt-get install chromium) and the playwright package.
"""

from __future__ import annotations

import contextlib
import hashlib
import shutil
import sys
import tempfile
from pathlib import Path

ROOT = Path(__file__).parents[1]
SAMPLE = ROOT / "sample_programs" / "float-plate" / "float-plate.nc"
PICTURE = ROOT / ".pictures" / "page.jpg"
AT_REST = ".space[data-drawn=all]"  # all of it, not the part that is drawn while the view moves
DRAWN = ["--no-sandbox", "--use-gl=angle", "--use-angle=swiftshader", "--enable-unsafe-swiftshader"]


def looks() -> bytes:
    """A digest of what gives the page its looks; it stands in the picture, and tells when that is of an older page."""
    room = ROOT / "gclint" / "report" / "page"
    parts = [*sorted(room.glob("*.j2")), room / "built" / "page.css", room / "built" / "page.js"]
    return hashlib.sha256(b"".join(part.read_bytes() for part in parts)).hexdigest().encode()


def with_comment(jpeg: bytes, comment: bytes) -> bytes:
    """The picture with a comment right behind its start."""
    return jpeg[:2] + b"\xff\xfe" + (len(comment) + 2).to_bytes(2, "big") + comment + jpeg[2:]


def take(file: Path) -> bytes:
    """The top of the page down to the end of the first tool's strip, its first finding shown on the path."""
    from playwright.sync_api import sync_playwright

    with sync_playwright() as driver:
        browser = driver.chromium.launch(executable_path=shutil.which("chromium"), args=DRAWN)
        page = browser.new_context(
            viewport={"width": 1180, "height": 1200}, device_scale_factor=0.85, color_scheme="light", offline=True,
            reduced_motion="reduce",
        ).new_page()  # fmt: skip
        page.goto(file.as_uri())
        page.wait_for_selector("html[data-ready]")
        page.wait_for_selector(AT_REST, timeout=150_000)
        page.evaluate("delete document.querySelector('canvas.space').dataset.drawn")
        page.locator(".show").first.click()
        page.wait_for_selector(AT_REST, timeout=150_000)
        end = page.evaluate("document.querySelector('.strip').getBoundingClientRect().bottom + scrollY + 20")
        clip = {"x": 0, "y": 0, "width": 1180, "height": end}
        taken = page.screenshot(full_page=True, clip=clip, type="jpeg", quality=78)
        browser.close()
    return bytes(taken)


def main() -> None:
    sys.path.insert(0, str(ROOT))
    from gclint import __version__
    from gclint.check import run
    from gclint.report.page.page_out import page
    from gclint.setup.declare import Options

    with tempfile.TemporaryDirectory() as folder, contextlib.chdir(SAMPLE.parent):
        file = Path(folder) / "page.html"
        file.write_text(page(run(SAMPLE.read_bytes(), SAMPLE.name, Options(), SAMPLE.name), __version__), "utf-8")
        PICTURE.write_bytes(with_comment(take(file), looks()))


if __name__ == "__main__":
    main()
