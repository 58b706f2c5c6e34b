"""A fault of gclint's own in a drawing, a lesson or a writer: told in one line, and all else is there."""

from __future__ import annotations

import json
from collections.abc import Callable
from pathlib import Path
from typing import Any
from xml.etree import ElementTree as Xml

import pytest

Gclint = Callable[..., tuple[int, str, str]]
DECLARED = ("--material", "beech", "--tool", "1: flat 6mm 2fl up-cut", "--stock", "60 x 20 x 9 mm at -10 -10")
RULE = "plunge-too-fast"
FAILED = "gclint itself failed on"


def fail(*_: Any, **__: Any) -> Any:
    raise RuntimeError("made to fail")


@pytest.fixture
def plunges(program: Path) -> str:
    program.write_text(program.read_text().replace("G1 Z-1 F200", "G1 Z-3 F1800"))
    return program.name


def test_a_lesson_of_a_path_that_is_partly_unknown(here: Path, gclint: Gclint) -> None:
    (here / "shop.toml").write_text('[machine]\ncontroller = "hobby-3-axis"\n')
    (here / "a.nc").write_text(
        "G18 G3 X20 Z-15.2 I0 K0.3\nG0 Z5\nY67.525\nZ-17\nG18 G2 X8.4 Z-5 I0.3 K0 F1000\nG1 X8.7\n"
        "G18 G3 X8.1 Z-9.7 I0 K0.3\nG1 Y3.875\n"
    )
    code, out, err = gclint("check", "a.nc", "--material", "walnut", "--tool", "1: flat 6mm 2fl up-cut", "--teach")
    assert (code, err) == (1, "")
    assert "WHAT TO PUT RIGHT" in out
    assert FAILED not in out


def test_a_drawing(plunges: str, gclint: Gclint, monkeypatch: pytest.MonkeyPatch) -> None:
    from gclint.teach import drawings

    monkeypatch.setattr(drawings, "VIEWS", dict.fromkeys(drawings.VIEWS, fail))
    code, out, err = gclint("check", plunges, *DECLARED, "--teach")
    assert (code, err) == (1, "")
    assert f"{FAILED} this drawing" in " ".join(out.split())
    assert "What to change first" in out
    code, out, _ = gclint("why", "straight-plunge")
    assert code == 0
    assert f"{FAILED} this drawing" in " ".join(out.split())


def test_a_lesson(plunges: str, gclint: Gclint, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("gclint.teach.lesson_out.steps", fail)
    code, out, err = gclint("check", plunges, *DECLARED, "--teach")
    assert (code, err) == (1, "")
    assert f"{FAILED} this lesson" in " ".join(out.split())
    assert RULE in out
    assert "change" in out


@pytest.mark.parametrize(
    ("broken", "more"),
    [
        ("gclint.teach.lesson_out.lessons", ("--teach",)),
        ("gclint.report.text.operator_out.operator_sheet", ("--for", "operator")),
        ("gclint.report.text.instructor_out.instructor_sheet", ("--for", "instructor")),
        ("gclint.report.text.terminal._finding", ()),
        ("gclint.report.text.terminal._finding", ("--teach",)),
    ],
)
def test_a_sheet(plunges: str, gclint: Gclint, monkeypatch: pytest.MonkeyPatch, broken: str, more: Any) -> None:
    monkeypatch.setattr(broken, fail)
    code, out, err = gclint("check", plunges, *DECLARED, *more)
    assert (code, err) == (1, "")
    assert (FAILED in out) is ("_finding" not in broken or not more)
    assert RULE in out


@pytest.mark.parametrize("broken", ["gclint.report.page.model.model_of", "gclint.report.page.page_text.sheet_of"])
def test_a_page(plunges: str, here: Path, gclint: Gclint, monkeypatch: pytest.MonkeyPatch, broken: str) -> None:
    monkeypatch.setattr(broken, fail)
    code, _, err = gclint("check", plunges, *DECLARED, "--as", "page", "--out", "a.html")
    assert (code, err) == (1, "")
    text = (here / "a.html").read_text(encoding="utf-8")
    assert FAILED in text
    assert RULE in text


@pytest.mark.parametrize(
    ("form", "broken"),
    [("json", "gclint.report.machine.json_out.encoded"), ("junit", "gclint.report.machine.junit_out._case"),
     ("sarif", "gclint.report.machine.sarif_out.message_of")],
)  # fmt: skip
def test_a_form_for_machines(
    plunges: str, here: Path, gclint: Gclint, monkeypatch: pytest.MonkeyPatch, form: str, broken: str
) -> None:
    from gclint.report.machine import json_out

    whole = json_out.encoded
    first = [fail, whole]  # of JSON the program fails and the document does not
    monkeypatch.setattr(broken, lambda *a, **k: first.pop(0)(*a, **k) if form == "json" else fail())
    code, out, err = gclint("check", plunges, *DECLARED, "--also", f"{form}=a.out", "--also", "page=a.html")
    assert code == 2
    assert "gclint itself failed on a report of it" in err
    assert err.count("\n") == 1
    assert RULE in out
    assert RULE in (here / "a.html").read_text(encoding="utf-8")
    text = (here / "a.out").read_text(encoding="utf-8")
    assert "gclint itself failed on a report of it" in text
    assert Xml.fromstring(text) is not None if form == "junit" else json.loads(text)


def test_a_form_that_cannot_be_finished(
    plunges: str, here: Path, gclint: Gclint, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("gclint.report.machine.sarif_out.Sarif.text", fail)
    code, out, err = gclint("check", plunges, *DECLARED, "--also", "sarif=a.sarif", "--also", "json=a.json")
    assert code == 2
    assert "a.sarif: gclint itself failed on this report (sarif), which was not written" in err
    assert RULE in out
    assert not (here / "a.sarif").exists()
    assert json.loads((here / "a.json").read_text(encoding="utf-8"))["programs"]


def test_the_list_of_many(plunges: str, here: Path, gclint: Gclint, monkeypatch: pytest.MonkeyPatch) -> None:
    for n in range(5):
        (here / f"p{n}.nc").write_text((here / plunges).read_text())
    monkeypatch.setattr("gclint.report.text.folder_out.FolderSheet._by_rule", fail)
    code, out, err = gclint("check", ".", *DECLARED, "--workers", "1")
    assert (code, err) == (1, "")
    assert f"{FAILED} the rest of this list" in out
    assert out.count("p3.nc") >= 2


def test_the_list_for_the_machine(plunges: str, gclint: Gclint, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("gclint.digest.setup_sheet.setup_sheet_of", fail)
    code, out, _ = gclint("check", plunges, *DECLARED)
    assert code == 2
    assert RULE in out
    assert "internal-error" in out
