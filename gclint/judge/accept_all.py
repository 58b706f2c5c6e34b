"""What was found today as acceptances: as narrow as what was found, so that anything new is told again."""

from __future__ import annotations

from collections.abc import Iterable

from msgspec import Struct

from gclint.tables.finding import Checked, Finding

ABOUT_GCLINT = ("internal-error", "acceptance-stale", "acceptance-unknown")


class Known(Struct, frozen=True):
    """An acceptance of all findings of one program that are alike in rule, tool, grade and kind of figure."""

    program: str
    rule: str
    tool: int | None
    grade: str
    places: int
    found: str | None
    lines: tuple[int, ...]


def known(checked: Checked, program: str) -> tuple[tuple[Known, ...], tuple[Finding, ...]]:
    """(what can be accepted, what is left open).

    A finding of grade halt is never accepted together with others: each must be looked at and accepted by hand. Nor is
    what gclint says about itself and about acceptances. `program` is the name that the acceptances give it.
    """
    open_ = [finding for finding in checked.findings if finding.accepted is None]
    left = tuple(finding for finding in open_ if finding.grade == "halt" or finding.rule in ABOUT_GCLINT)
    alike: dict[tuple[object, ...], list[Finding]] = {}
    for finding in open_:
        if finding not in left:
            key = (finding.rule, finding.tool is None, finding.tool or 0, finding.grade, *_kind(finding))
            alike.setdefault(key, []).append(finding)
    return tuple(_known(program, same) for same in alike.values()), left


def _kind(finding: Finding) -> tuple[object, ...]:
    """Text that was found stands for itself; figures are alike by their unit and the side on which they are worse."""
    found = finding.found
    if found is None or found.value is None:
        return ()
    return (found.value,) if isinstance(found.value, str) else (found.unit, _small_is_worse(finding))


def _small_is_worse(finding: Finding) -> bool:
    assert finding.found is not None
    value, window = finding.found.value, finding.window
    if not isinstance(value, float | int) or window is None or window.low is None:
        return False
    return value < window.low and not (window.high is not None and value > window.high)


def _known(program: str, same: list[Finding]) -> Known:
    first = same[0]
    return Known(
        program=program,
        rule=first.rule,
        tool=first.tool,
        grade=first.grade,
        places=sum(finding.count for finding in same),
        found=_worst(same),
        lines=tuple(sorted({line for finding in same for line in (finding.line, *finding.lines[:8])})),
    )


def _worst(same: Iterable[Finding]) -> str | None:
    values = [(finding.found.value, finding.found.unit, finding) for finding in same if finding.found is not None]
    if not values or values[0][0] is None:
        return None
    if isinstance(values[0][0], str):
        return values[0][0]
    pick = min if _small_is_worse(values[0][2]) else max
    worst = pick(float(value) for value, _, _ in values if value is not None and not isinstance(value, str))
    return f"{worst:.6g} {values[0][1]}".rstrip()
