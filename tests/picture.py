"""Draws the pictures of README and pages from real runs:  python tests/picture.py  writes .pictures/*.svg anew."""

from __future__ import annotations

import contextlib
from pathlib import Path

ROOT = Path(__file__).parents[1]
SAMPLE = ROOT / "sample_programs" / "float-plate" / "float-plate.nc"
DRAWN = ROOT / "sample_programs" / "sorting-tray" / "sorting-tray.nc"
PICTURE = ROOT / ".pictures" / "check.svg"
PATH_PICTURE = ROOT / ".pictures" / "path.svg"
LEARNED_PICTURE = ROOT / ".pictures" / "learned.svg"
LEARNED = ROOT / "sample_programs" / "epoxy-trial"

# No window, no fonts from anywhere: the reader's own monospaced one.
TEMPLATE = """<svg class="sheet" viewBox="0 0 {width} {height}" xmlns="http://www.w3.org/2000/svg">
<title>The job sheet of one program</title>
<style>
.{unique_id}-matrix {{
  font-family: ui-monospace, Menlo, Consolas, "DejaVu Sans Mono", monospace;
  font-size: {char_height}px;
  line-height: {line_height}px;
}}
{styles}
</style>
<defs>{lines}</defs>
<rect width="{width}" height="{height}" fill="#1b1f24" rx="6"/>
<g transform="translate({terminal_x}, {terminal_y})">
{backgrounds}
<g class="{unique_id}-matrix">
{matrix}
</g>
</g>
</svg>
"""


def draw() -> str:
    """The SVG text of the sample's sheet, cautions left out."""
    from rich.terminal_theme import TerminalTheme

    from gclint import __version__
    from gclint.check import run
    from gclint.report.text.terminal import sheet
    from gclint.report.text.text_sheet import TextSheet
    from gclint.setup.declare import Options

    paper = TextSheet(colour=True, record=True)
    with contextlib.chdir(SAMPLE.parent):  # so that the paths on the sheet are short
        sheet(run(SAMPLE.read_bytes(), SAMPLE.name, Options(), SAMPLE.name), paper, __version__)
    theme = TerminalTheme((27, 31, 36), (225, 228, 232), [(225, 228, 232)] * 8)
    return paper.console.export_svg(code_format=TEMPLATE, theme=theme, unique_id="sheet")


def draw_path() -> bytes:
    """The SVG of another sample's path, as `gclint show --picture` makes it."""
    from gclint.check import run
    from gclint.report.picture.picture import picture
    from gclint.setup.declare import Options

    with contextlib.chdir(DRAWN.parent):
        return picture(run(DRAWN.read_bytes(), DRAWN.name, Options(), DRAWN.name), ".svg")


def draw_learned() -> bytes:
    """The SVG of what the sample's test cuts teach, as `gclint trial learn --picture` makes it."""
    from gclint.digest.words import Lengths
    from gclint.trial.learn import learn
    from gclint.trial.learn_picture import picture_of
    from gclint.trial.seen import read_trial

    return picture_of(learn(read_trial((LEARNED,))), Lengths(False), ".svg")


if __name__ == "__main__":
    import sys

    sys.path.insert(0, str(ROOT))
    PICTURE.parent.mkdir(exist_ok=True)
    PICTURE.write_text(draw(), encoding="utf-8")
    PATH_PICTURE.write_bytes(draw_path())
    LEARNED_PICTURE.write_bytes(draw_learned())
