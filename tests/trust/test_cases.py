"""Each small program is told what it must be told, and nothing that a machinist would call false."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest

from gclint.check import check
from gclint.setup.declare import Options
from tests.trust.cases import CASES, GRADES, Case, lines


def marked(case: Case) -> Any:
    """The case; one that is open must fail, so that its reason is taken out once it passes."""
    marks = [pytest.mark.xfail(reason=case.open, strict=True, raises=AssertionError)] if case.open else []
    return pytest.param(case, marks=marks, id=case.name)


@pytest.mark.parametrize("case", [marked(case) for case in CASES])
def test_the_machinist_agrees(case: Case, tmp_path: Path) -> None:
    for name, text in {"shop.toml": case.shop, "job.toml": case.job, **case.files}.items():
        if text is not None:
            (tmp_path / name).write_text(text, encoding="utf-8")
    given = {name: str(tmp_path / f"{name}.toml") if getattr(case, name) else None for name in ("shop", "job")}
    options = Options(case.material, case.tools, case.stock, given["shop"], given["job"])
    findings = check(lines(case.program).encode(), "try.nc", options, str(tmp_path / "try.nc")).findings
    told = [(f.rule, f.grade, f.line, f.happens) for f in findings]
    for must in case.must:
        grades = GRADES[: GRADES.index(must.grade) + 1]
        assert any(
            f.rule in must.rules.split() and f.grade in grades
            and (not must.lines or {f.line, *f.lines} & set(must.lines))
            and (not must.says or any(word in f.happens + f.change.text for word in must.says))
            for f in findings
        ), f"not told: {must}\nbut: {told}"  # fmt: skip
    for never in case.never:
        wrong = [t for t in told if t[0] == never or (never in GRADES and t[1] in GRADES[: GRADES.index(never) + 1])]
        assert not wrong, f"told wrongly: {wrong}"
    for words in case.never_says:
        wrong = [t for t in told if words in t[3]] + [f.change.text for f in findings if words in f.change.text]
        assert not wrong, f"says {words!r}: {wrong}"
