"""Draws the picture of a grading sheet from the sample plan: `python tests/sheet_picture.py` (in chromium)."""

from __future__ import annotations

import shutil
import sys
import tempfile
from pathlib import Path

ROOT = Path(__file__).parents[1]
PICTURE = ROOT / ".pictures" / "sheet.png"
SIZE = {"width": 760, "height": 610}  # the head and the map


def main() -> None:
    from playwright.sync_api import sync_playwright

    sys.path.insert(0, str(ROOT))
    from gclint.trial.asked import bench_again
    from gclint.trial.grading_sheet import sheet
    from gclint.trial.plan_file import read_plan

    with tempfile.TemporaryDirectory() as folder, sync_playwright() as play:
        page_file = Path(folder) / "sheet.html"
        folder_of_plan = ROOT / "sample_programs" / "epoxy-trial"
        plan = read_plan(folder_of_plan / "plan.toml")
        bench = bench_again(plan.like or plan.material, plan.tool, folder_of_plan / str(plan.shop))
        page_file.write_text(sheet(plan, bench.setup), encoding="utf-8")
        browser = play.chromium.launch(executable_path=shutil.which("chromium"), args=["--no-sandbox"])
        page = browser.new_page(viewport=SIZE)  # type: ignore[arg-type]
        page.goto(page_file.as_uri())
        page.screenshot(path=PICTURE)
        browser.close()


if __name__ == "__main__":
    main()
