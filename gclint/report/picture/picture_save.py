"""A figure as the bytes of a .png or .svg: the same with every run, whatever settings matplotlib is given elsewhere."""

from __future__ import annotations

import io
import logging
from collections.abc import Callable
from typing import TYPE_CHECKING, Any

from gclint.clean_text import plain
from gclint.report.picture.picture_style import printable

if TYPE_CHECKING:
    from matplotlib.figure import Figure

DOTS = 150  # per inch, of a PNG


def saved(draw: Callable[[type[Figure]], Figure], ending: str, title: str) -> bytes:
    """What `draw` makes of the class of figures it is given."""
    logging.getLogger("matplotlib").setLevel(logging.ERROR)  # it tells of its caches
    import matplotlib
    from matplotlib.figure import Figure
    from matplotlib.text import Text

    out = io.BytesIO()
    with matplotlib.rc_context():
        matplotlib.rcdefaults()  # not as somebody's own settings would have it
        matplotlib.rcParams.update({
            "svg.hashsalt": "gclint", "svg.fonttype": "none", "font.size": 8, "text.parse_math": False,
            "axes.linewidth": 0.5, "hatch.linewidth": 0.5, "axes.unicode_minus": False,
        })  # fmt: skip
        told: dict[str, Any] = {"Title": printable(title, 200)}
        told |= {"Date": None, "Creator": "gclint"} if ending == ".svg" else {"Software": "gclint"}
        figure = draw(Figure)
        for text in figure.findobj(Text):  # names come from other people's files
            text.set_text(plain(text.get_text()))
        figure.savefig(out, format=ending[1:], dpi=DOTS, metadata=told)
    return out.getvalue()
