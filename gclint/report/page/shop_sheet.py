"""A shop's bits, materials and dial marks as one page, for one sheet of A4 on its side."""

from __future__ import annotations

from gclint import __version__
from gclint.report.answers.window_all import Row, best_words, good_marks
from gclint.report.page.page_out import ROOM, page_style
from gclint.report.templates import templates
from gclint.report.text.cautions import in_short


def shop_page(rows: list[Row]) -> str:
    """The rows as one HTML page for one sheet of A4 on its side."""
    materials = list(dict.fromkeys(row.material for row in rows))
    none = {row.tool: row.why_not for row in rows if not row.cut}  # bits that no window judges, whatever the material
    judged = {row.tool for row in rows if row.cut}
    bits = [bit for bit in dict.fromkeys(row.tool for row in rows) if bit in judged]
    at = {(row.material, row.tool): row for row in rows}
    titles = {row.tool: row.title for row in reversed(rows) if not row.why_not or row.cut}
    inch = any(row.inch for row in rows)
    return templates(ROOM).get_template("shop_sheet.html.j2").render(
        version=__version__, style=page_style(), bits=[(bit, titles.get(bit, "")) for bit in bits],
        left_out=[(bit, why) for bit, why in none.items() if bit not in judged],
        unit="in/min" if inch else "mm/min", cautions=in_short(()),
        lines=[
            (name, [(best_words(at[name, bit]), good_marks(at[name, bit], ""), at[name, bit].why_not) for bit in bits])
            for name in materials
        ],
    )  # fmt: skip
