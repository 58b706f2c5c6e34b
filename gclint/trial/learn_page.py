"""What was learned from test cuts as one HTML file: the pictures and the sentences of the screen."""

from __future__ import annotations

from pathlib import Path
from typing import Any

from gclint.digest.words import Lengths
from gclint.report.page.page_out import page_style
from gclint.report.templates import templates
from gclint.report.text.cautions import in_short
from gclint.trial import learn_words as words
from gclint.trial.learn import Lesson
from gclint.trial.learn_picture import picture_of


def page(lesson: Lesson, lengths: Lengths) -> str:
    """Self-contained; every text of the plans is escaped."""
    return templates(Path(__file__).parent).get_template("learn.html.j2").render(
        trial=lesson.trial,
        style=page_style(),
        cautions=in_short(lesson.trial.cautions),
        batches=", ".join(sorted({cut.batch for cut in lesson.trial.cuts} - {""})),
        tools=[_tool(lesson, number, lengths) for number in lesson.trial.tools],
        windows=bool(lesson.windows),
        checks=words.check_words(lesson),
        entries=words.entry_words(lesson) if lesson.windows else [],
        causes=words.cause_words(lesson) if lesson.windows else [],
    )


def _tool(lesson: Lesson, number: int, lengths: Lengths) -> dict[str, Any]:
    from markupsafe import Markup

    title = words.tool_words(lesson.trial.tools[number], lengths)
    made: dict[str, Any] = {"title": title, "missing": words.missing_words(lesson, number), "lines": [], "next": []}
    window = lesson.windows.get(number)
    if window is None:
        return made
    svg = picture_of(lesson, lengths, ".svg", (number,)).decode("utf-8")
    return made | {
        "svg": Markup(svg[svg.index("<svg") :]),  # matplotlib escapes what it writes
        "alt": f"{title}: every cut over speed and feed, and where a cut is good",
        "how": words.how_words(window, lengths),
        "lines": words.window_lines(window, lengths),
        "titles": words.next_titles(lengths),
        "next": words.next_rows(lesson, number, lengths),
    }
