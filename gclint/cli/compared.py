"""`gclint check --compare-with OLD_SHOP`: which programs change their verdict with other windows."""

from __future__ import annotations

import sys
from collections.abc import Sequence
from typing import TYPE_CHECKING

from msgspec.structs import replace

from gclint.problem import Problem

if TYPE_CHECKING:
    from gclint.cli.many import Many
    from gclint.folder.find import Found
    from gclint.folder.outcome import Outcome, Source
    from gclint.report.text.text_sheet import TextSheet
    from gclint.setup.declare import Options
    from gclint.tables.finding import Finding

LINES_NAMED = 6


def compared(found: Found, options: Options, many: Many, old_shop: str, form: str, out: str | None) -> int:
    """Check every program with its own windows and with those of `old_shop`, and tell what differs. The exit code is
    that of the present windows."""
    from gclint.cli.many import ManyProgress, crew_of, tell
    from gclint.cli.output import deliver
    from gclint.folder.cache import cache_of
    from gclint.folder.outcome import Task
    from gclint.folder.run import outcomes
    from gclint.report.text.text_sheet import text_sheet_for
    from gclint.setup.declare import declare

    if form != "text":
        raise Problem("--compare-with answers in text only")
    declare(replace(options, windows=old_shop), found.sources[0].name if found.sources else None)  # both files are good
    cache = cache_of(many.cache, tell)
    both = (replace(options, windows=old_shop), options)
    tasks = [Task(source, each) for source in found.sources for each in both]
    paper = text_sheet_for(sys.stdout)
    with ManyProgress(len(tasks)) as progress:
        results = list(outcomes(tasks, cache, many.workers, many.seconds, progress, crew=crew_of(many, cache)))
    code = _sheet(found, list(zip(found.sources, results[::2], results[1::2])), old_shop, paper)
    deliver(paper.text, out)
    return code


def _sheet(found: Found, rows: list[tuple[Source, Outcome, Outcome]], old_shop: str, paper: TextSheet) -> int:
    from gclint import __version__
    from gclint.digest.sheet_words import by_grade, failing, open_findings
    from gclint.digest.words import GRADE_WORDS, count

    paper.ends("WHAT OTHER WINDOWS CHANGE", f"gclint {__version__}")
    paper.field("then", f"the windows of {old_shop}")
    paper.field("now", "the windows of each program's own shop file")
    code = same = changed = 0
    for source, then, now in rows:
        if now.kind == "skipped":
            continue
        if now.checked is None:
            code = 2
            paper.blank()
            paper.field("not read", f"{source.shown}: {now.says}")
            continue
        if then.checked is None:
            raise Problem(then.says)  # the old shop file cannot be used
        code = max(code, 2 if now.failed else int(bool(failing(now.checked, now.fail_at))))
        gone, new = _differ(open_findings(then.checked), open_findings(now.checked))
        if not gone and not new:
            same += 1
            continue
        changed += 1
        worst = [next((grade for grade, _ in by_grade(one)), "") for one in (then.checked, now.checked)]
        was, is_ = (GRADE_WORDS.get(grade, "Nothing found") for grade in worst)
        paper.blank()
        paper.text_block(source.shown, style="head")
        paper.field("verdict", f"{is_} (then: {was})" if is_ != was else f"{is_}, as then; but:", indent=2)
        for label, findings in (("gone", gone), ("new", new)):
            for finding in findings:
                paper.field(label, _said(finding), indent=2)
    paper.blank()
    if not found.sources:
        raise Problem("no program was found to compare")
    paper.text_block(f"{count(changed, 'program')} with another verdict or other findings, {same} as before.")
    return code


def _differ(then: Sequence[Finding], now: Sequence[Finding]) -> tuple[list[Finding], list[Finding]]:
    """(what is no longer found, what is found now): by rule, grade, tool and lines."""
    keys = [{(f.rule, f.grade, f.tool, tuple(f.lines)) for f in each} for each in (then, now)]
    gone = [f for f in then if (f.rule, f.grade, f.tool, tuple(f.lines)) not in keys[1]]
    return gone, [f for f in now if (f.rule, f.grade, f.tool, tuple(f.lines)) not in keys[0]]


def _said(finding: Finding) -> str:
    """'chip-too-thin, change before cutting, tool 1, lines 8, 12: feed per tooth 0.03 mm against 0.0408 to 0.108 mm
    (measured in this shop; ...)'."""
    from gclint.digest.words import GRADE_WORDS, behind, figure, measure

    tool = f", tool {finding.tool}" if finding.tool is not None else ""
    lines = ", ".join(map(str, finding.lines[:LINES_NAMED])) + (" ..." if len(finding.lines) > LINES_NAMED else "")
    word = "lines" if len(finding.lines) > 1 else "line"
    said = f"{finding.rule}, {GRADE_WORDS[finding.grade].lower()}{tool}, {word} {lines}"
    if finding.found is not None and finding.window is not None:
        window = finding.window
        ends = [figure(end) for end in (window.low, window.high) if isinstance(end, float)]
        held = f" against {' to '.join(ends)} {window.unit}" if ends else ""
        said += f": {finding.found.name} {measure(finding.found.value, finding.found.unit)}{held}"
        said += f" ({behind(window.standing, window.source)})"
    return said
