"""The page in a real browser (Debian's chromium), from disk, with the network off."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import numpy as np
import pytest

from gclint.report.page.page_out import Reader, page
from gclint.run import Run
from tests.bench.make_program import finishing_program
from tests.page_picture import looks
from tests.report.page.conftest import Carried, Opened
from tests.report.page.test_page_carries import EPOXY, NASTY, PLUNGE

pytestmark = pytest.mark.slow


def test_it_opens_from_disk_and_asks_nobody(opened: Callable[..., Opened], page_of: Callable[..., str]) -> None:
    window = opened(page_of(PLUNGE.format(comment=f"({NASTY}) "), NASTY.replace("/", "-") + ".nc", **EPOXY))
    assert window.errors() == []
    assert len(window.asked) == 1  # the file itself
    assert window.page.locator("canvas.space").bounding_box()["width"] > 300
    assert window.page.locator("script").count() == 4
    assert window.page.locator("img").count() == 0
    window.page.locator(".listing").evaluate("(box) => { box.scrollTop = 88; }")
    assert "onerror=alert(2)" in window.page.locator(".listing").inner_text()


def test_a_finding_leads_to_the_path_and_the_text(opened: Callable[..., Opened], page_of: Callable[..., str]) -> None:
    window = opened(page_of(PLUNGE.format(comment=""), **EPOXY))
    page = window.page
    crash = page.locator("article.finding", has_text="rapid-through-stock")
    crash.locator(".show").click()
    frame = page.locator("canvas.space").bounding_box()
    for corner in ((-10, -20, 0), (110, -20, 0), (-10, 20, 0), (110, 20, 0), (75, 0, -4)):  # the blank, and the place
        x, y = page.evaluate("(at) => window.gclintSpacePoint(...at)", corner)
        assert frame["x"] < x < frame["x"] + frame["width"]
        assert frame["y"] < y < frame["y"] + frame["height"]
    ring = page.locator(".pins .target").bounding_box()
    x, y = page.evaluate("window.gclintSpacePoint(75, 0, -4)")  # half way of the rapid from X60 to X90
    assert (ring["x"] + ring["width"] / 2, ring["y"] + ring["height"] / 2) == pytest.approx((x, y), abs=6)
    assert page.locator(".listing .row.here").get_attribute("data-line") == "8"
    assert page.locator(".status").inner_text().startswith("Line 8: rapid in material")
    assert "chosen" in (crash.get_attribute("class") or "")
    assert window.errors() == []


def test_the_path_leads_to_its_line_and_finding(opened: Callable[..., Opened], page_of: Callable[..., str]) -> None:
    window = opened(page_of(PLUNGE.format(comment=""), **EPOXY))
    page = window.page
    # from above: the middle of the cut along X
    at = page.evaluate("window.gclintPlanPoint(30, 0)")
    page.locator(".from-above").scroll_into_view_if_needed()
    page.mouse.click(*page.evaluate("window.gclintPlanPoint(30, 0)"))
    assert at is not None
    assert page.locator(".listing .row.here").get_attribute("data-line") == "7"
    assert page.locator(".status").inner_text().startswith("Line 7: cut, tool 1, chip 0.04")
    # in space: the same cut, and the rapid in material with its finding
    page.get_by_role("button", name="above", exact=True).click()
    page.locator("canvas.space").evaluate("(canvas) => canvas.scrollIntoView({ block: 'center' })")
    page.mouse.click(*page.evaluate("window.gclintSpacePoint(82, 0, -4)"))
    assert page.locator(".listing .row.here").get_attribute("data-line") == "8"
    assert "rapid-through-stock" in page.locator(".status a").first.inner_text()


def test_a_line_leads_to_the_path_by_keyboard(opened: Callable[..., Opened], page_of: Callable[..., str]) -> None:
    window = opened(page_of(PLUNGE.format(comment=""), **EPOXY))
    page = window.page
    page.locator(".listing").focus()
    for _ in range(7):
        page.keyboard.press("ArrowDown")
    assert page.locator(".listing").get_attribute("aria-activedescendant") == "line-7"
    ring = page.locator(".pins .target").bounding_box()
    x, y = page.evaluate("window.gclintSpacePoint(30, 0, -4)")  # half way from X0 to X60
    assert (ring["x"] + ring["width"] / 2, ring["y"] + ring["height"] / 2) == pytest.approx((x, y), abs=6)
    page.locator("canvas.space").focus()
    before = page.evaluate("window.gclintSpacePoint(60, 0, 0)")
    page.keyboard.press("ArrowLeft")
    assert page.evaluate("window.gclintSpacePoint(60, 0, 0)") != before
    zoom = window.view()[3]
    page.keyboard.press("+")
    assert window.view()[3] > zoom
    page.keyboard.press("0")
    assert window.view()[:2] == pytest.approx([50, 0], abs=1)  # the middle of the blank


def test_the_scale_changes(opened: Callable[..., Opened], page_of: Callable[..., str]) -> None:
    window = opened(page_of(PLUNGE.format(comment=""), **EPOXY))
    page = window.page
    colours = "[...document.querySelectorAll('.from-above .line.cut')].map((line) => line.style.stroke).join(' ')"
    before = page.evaluate(colours)
    assert "thinnest good" in page.locator(".legend").inner_text()
    page.locator("#quantity").select_option("height")
    assert page.evaluate(colours) != before
    assert "thinnest good" not in page.locator(".legend").inner_text()
    page.locator("#theme").select_option("dark")
    assert page.evaluate("getComputedStyle(document.body).backgroundColor") == "rgb(20, 18, 16)"
    assert window.errors() == []


@pytest.mark.parametrize(("width", "theme"), [(1280, "light"), (820, "dark"), (360, "light")])
def test_it_fits_and_is_accessible(
    width: int, theme: str, opened: Callable[..., Opened], sample_page: Callable[[str], str]
) -> None:
    from axe_playwright_python.sync_playwright import Axe

    window = opened(sample_page("float-plate"), width=width, theme=theme)
    assert window.page.evaluate("document.documentElement.scrollWidth") <= width
    found = Axe().run(window.page).response["violations"]
    assert [(f["id"], f["nodes"][0]["html"][:90]) for f in found] == []


@pytest.mark.parametrize("reader", ["operator", "instructor"])
def test_the_pages_for_others_fit_and_are_accessible(
    reader: Reader, opened: Callable[..., Opened], sample_run: Callable[[str], Run]
) -> None:
    from axe_playwright_python.sync_playwright import Axe

    window = opened(page(sample_run("drift-box"), "0.0", reader), width=360, theme="dark")
    assert window.page.evaluate("document.documentElement.scrollWidth") <= 360
    found = Axe().run(window.page).response["violations"]
    assert [(f["id"], f["nodes"][0]["html"][:90]) for f in found] == []
    assert window.errors() == []


@pytest.mark.parametrize("sample", ["drift-box", "tide-dial", "winch-pocket"])
def test_the_operators_sheet_takes_two_pages(
    sample: str, opened: Callable[..., Opened], sample_run: Callable[[str], Run]
) -> None:
    window = opened(page(sample_run(sample), "0.0", "operator"))
    window.page.evaluate("""addEventListener('beforeprint', () => {
        window.mapped = document.querySelectorAll('[data-map] .line.cut').length;
    })""")
    assert window.page.pdf(prefer_css_page_size=True).count(b"/Type /Page\n") == 2
    assert window.page.evaluate("window.mapped") > 0


def test_zoomed_to_twice_its_size_nothing_is_cut_off(
    opened: Callable[..., Opened], sample_page: Callable[[str], str]
) -> None:
    page_ = opened(sample_page("float-plate"), width=640).page  # 1280 at 200 %
    assert page_.evaluate("document.documentElement.scrollWidth") <= 640


def test_a_finding_is_shown_by_keyboard_alone(opened: Callable[..., Opened], page_of: Callable[..., str]) -> None:
    window = opened(page_of(PLUNGE.format(comment=""), **EPOXY))
    page = window.page
    for _ in range(40):
        page.keyboard.press("Tab")
        if page.evaluate("document.activeElement.dataset.show") == "0":
            break
    # where one is can be seen
    assert page.evaluate("getComputedStyle(document.activeElement).outlineStyle") == "solid"
    page.keyboard.press("Enter")
    line = page.locator("article.finding").first.locator(".code .here i").inner_text()
    assert page.locator(".listing .row.here").get_attribute("data-line") == line


def test_a_program_without_cuts_has_a_figure_without_numbers_that_are_none(
    opened: Callable[..., Opened], page_of: Callable[..., str]
) -> None:
    window = opened(page_of("G21 G90\nG53 G0 Z0\nG0 X10 Y10\nG28\nM30\n", stock="40 x 20 x 5 mm at 0 0"), width=360)
    shown = window.page.locator("body").inner_text()
    assert "No cut is known" in shown
    assert "NaN" not in shown
    assert "Infinity" not in shown
    assert window.page.evaluate("document.documentElement.scrollWidth") <= 360
    assert window.errors() == []


@pytest.mark.slow
def test_a_bounded_part_is_drawn_while_the_view_moves_and_all_of_it_at_rest(
    opened: Callable[..., Opened], page_of: Callable[..., str]
) -> None:
    # 6,000 moves are more than software draws before anybody notices, and the browser of this test draws in software
    html = page_of(finishing_program(6_000), "relief.nc", material="beech", tools=("1: ball 6mm 2fl",))
    window = opened(html)
    page = window.page
    canvas = page.locator("canvas.space")
    page.wait_for_selector(".space[data-drawn=all]", timeout=150_000)
    everything = int(canvas.get_attribute("data-cost"))
    line = page.evaluate("window.gclintSpacePoint(20, 4, 0)")
    page.evaluate("""() => {
        window.seen = [];
        const canvas = document.querySelector("canvas.space");
        const look = () => window.seen.push([canvas.dataset.drawn, Number(canvas.dataset.cost)]);
        new MutationObserver(look).observe(canvas, { attributeFilter: ["data-drawn", "data-cost"] });
    }""")
    canvas.scroll_into_view_if_needed()
    frame = canvas.bounding_box()
    page.mouse.move(frame["x"] + 200, frame["y"] + 150)
    page.mouse.down()
    for step in range(30):
        page.mouse.move(frame["x"] + 200 + 4 * step, frame["y"] + 150 + step)
    for _ in range(600):  # the page's policy evaluates no text that waits in it
        if any(drawn == "few" for drawn, _ in page.evaluate("window.seen")):
            break
        page.wait_for_timeout(50)
    page.mouse.up()
    page.wait_for_selector(".space[data-drawn=all]", timeout=150_000)
    assert page.evaluate("window.gclintSpacePoint(20, 4, 0)") != line
    few = [cost for drawn, cost in page.evaluate("window.seen") if drawn == "few"]
    assert few
    assert max(few) <= min(96_000, everything)
    assert int(canvas.get_attribute("data-cost")) == everything
    assert window.errors() == []


def faces_of(carried: Carried) -> int:
    """Triangles of the blank as it is left: two a cell of the top that is not cut through, two a cell of each side."""
    field = carried.model["field"]
    nx, ny = field["nx"], field["ny"]
    cut = carried.column(field["cut"]).reshape(ny, nx)
    top = np.full((ny - 1, nx - 1), True)
    if field["thick"] is not None:
        shallowest = np.minimum.reduce([cut[:-1, :-1], cut[1:, :-1], cut[:-1, 1:], cut[1:, 1:]])
        top = shallowest < field["thick"] - 1e-3
    return 2 * int(top.sum()) + 4 * (nx - 1) + 4 * (ny - 1)


@pytest.mark.parametrize("sample", ["rail-cleat", "float-plate", "tide-ring"])
def test_every_face_of_the_blank_is_drawn(
    opened: Callable[..., Opened], sample_page: Callable[[str], str], sample: str
) -> None:
    html = sample_page(sample)
    page = opened(html).page
    page.wait_for_selector(".space[data-drawn=all]", timeout=150_000)
    assert int(page.locator("canvas.space").get_attribute("data-faces")) == faces_of(Carried(html))


def test_the_readme_shows_a_page() -> None:
    root = Path(__file__).resolve().parents[3]
    assert "](.pictures/page.jpg)" in (root / "README.md").read_text(encoding="utf-8")
    picture = (root / ".pictures" / "page.jpg").read_bytes()
    assert picture[:2] == b"\xff\xd8"
    assert picture[6:70] == looks(), "the page has other looks by now: python tests/page_picture.py"


def test_on_paper_it_is_one_clean_document(opened: Callable[..., Opened], sample_page: Callable[[str], str]) -> None:
    window = opened(sample_page("float-plate"), theme="dark")
    page = window.page
    wide = "Number(document.querySelector('.strip .run svg').getAttribute('width'))"
    page.evaluate(f"addEventListener('beforeprint', () => {{ window.onPaper = {wide}; }})")
    screen = page.evaluate(wide)
    pdf = page.pdf(format="A4")
    assert page.evaluate("window.onPaper") == 660  # as wide as paper asks, not the screen
    assert page.evaluate(wide) == screen != 660
    assert pdf.startswith(b"%PDF")
    assert pdf.count(b"/Type /Page\n") <= 6
    page.emulate_media(media="print")
    for hidden in (".controls", ".in-space", ".listing", ".show", "#theme"):
        assert not page.locator(hidden).first.is_visible()
    for shown in (".from-above svg", ".strip .run svg", ".gauge", "footer"):
        assert page.locator(shown).first.is_visible()
    assert page.evaluate("getComputedStyle(document.body).backgroundColor") == "rgb(255, 255, 255)"
    assert page.evaluate("getComputedStyle(document.body).color") == "rgb(0, 0, 0)"
