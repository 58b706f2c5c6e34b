"""`gclint check --as sarif` and `--as junit`: exit codes, files, programs that cannot be read."""

from __future__ import annotations

import json
import os
import subprocess
import sys
from collections.abc import Callable
from pathlib import Path
from xml.etree import ElementTree as Xml

import pytest

ROOT = Path(__file__).parents[2]
Gclint = Callable[..., tuple[int, str, str]]
DECLARED = ("--material", "beech", "--tool", "1: flat 6mm 2fl up-cut", "--stock", "60 x 20 x 9 mm at -10 -10")


@pytest.mark.parametrize("form", ["sarif", "junit"])
@pytest.mark.parametrize(("more", "expected"), [((), 1), (("--fail-at", "halt"), 0)])
def test_the_exit_code_is_that_of_the_other_forms(
    program: Path, gclint: Gclint, form: str, more: tuple[str, ...], expected: int
) -> None:
    program.write_text(program.read_text().replace("F200", "F1800"))  # plunge at the cutting feed
    code, out, err = gclint("check", program.name, *DECLARED, *more, "--as", form)
    assert (code, err) == (expected, "")
    assert code == gclint("check", program.name, *DECLARED, *more)[0]
    if form == "sarif":
        said = json.loads(out)["runs"][0]["invocations"][0]["exitCode"]
        assert said == expected
        assert type(said) is int
    else:
        assert Xml.fromstring(out).get("failures") == str(expected)


@pytest.mark.parametrize("form", ["sarif", "junit"])
def test_a_run_in_which_nothing_can_be_read_is_reported_all_the_same(here: Path, gclint: Gclint, form: str) -> None:
    (here / "empty.nc").write_bytes(b"")
    code, out, err = gclint("check", "empty.nc", *DECLARED, "--as", form, "--out", "report")
    assert (code, out) == (2, "")
    assert "empty.nc: this file is empty" in err
    text = (here / "report").read_text(encoding="utf-8")
    if form == "sarif":
        [note] = json.loads(text)["runs"][0]["invocations"][0]["toolExecutionNotifications"]
        assert note["level"] == "error"
    else:
        assert Xml.fromstring(text).get("errors") == "1"


@pytest.mark.parametrize("form", ["text", "json", "sarif", "junit"])
def test_a_name_that_is_no_unicode_stops_no_form(program: Path, gclint: Gclint, form: str) -> None:
    odd = os.fsdecode(b"bad\xff.nc")
    try:
        program.rename(odd)
    except OSError:
        pytest.skip("this file system takes no such name")
    code, _out, err = gclint("check", odd, *DECLARED, "--as", form, "--out", "report")
    assert (code, err) == (0, "")
    assert Path("report").stat().st_size > 100


READERS = {"author": "Job sheet", "operator": "Machine sheet", "instructor": "Sheet to sign"}


def kicker(page: Path) -> str:
    """What a page calls itself."""
    return page.read_text(encoding="utf-8").partition('<div class="kicker"><span>')[2].partition("</span>")[0]


@pytest.mark.parametrize(("reader", "called"), READERS.items())
def test_a_page_is_made_for_its_reader(program: Path, gclint: Gclint, reader: str, called: str) -> None:
    read = (*DECLARED, "--for", reader)
    code, out, err = gclint("check", program.name, *read, "--as", "page", "--out", "own.html")
    assert (code, out, err) == (0, "", "")
    code, _out, err = gclint("check", program.name, *read, "--as", "json", "--also", "page=also.html")
    assert (code, err) == (0, "")
    (program.parent / "second.nc").write_text(program.read_text())
    code, _out, err = gclint("check", ".", *read, "--as", "page", "--out", "pages", "--cache", "none")
    assert (code, err) == (0, "")
    for name in ("own.html", "also.html", "pages/tray.html", "pages/second.html"):
        assert kicker(Path(name)) == called
    text = Path("own.html").read_text(encoding="utf-8")
    assert ('id="sign"' in text) == (reader == "instructor")
    assert ('id="tools"' in text) == (reader != "operator")


@pytest.mark.parametrize("form", ["json", "sarif", "junit"])
def test_a_reader_needs_a_form_that_is_read(program: Path, gclint: Gclint, form: str) -> None:
    code, out, err = gclint("check", program.name, *DECLARED, "--for", "operator", "--as", form)
    assert (code, out) == (2, "")
    assert f"not --as {form}" in err


@pytest.mark.parametrize(
    ("form", "encoding"), [("json", "cp1252"), ("junit", "ascii"), ("sarif", "utf-16"), ("page", "cp1252")]
)
def test_forms_for_machines_are_utf8_whatever_the_terminal_is(
    form: str, encoding: str, here: Path, program: Path
) -> None:
    named = here / "u \u00fc \u2300.nc"
    program.rename(named)
    made = subprocess.run(
        [sys.executable, "-m", "gclint", "check", named.name, "--as", form], cwd=here, capture_output=True,
        timeout=120, check=False, env={**os.environ, "PYTHONIOENCODING": encoding, "PYTHONPATH": str(ROOT)},
    ).stdout
    assert "\u00fc \u2300".encode() in made or form == "sarif"  # its URIs are escaped
    if form == "junit":
        Xml.fromstring(made)
    made.decode("utf-8")
    assert b"\r\n" not in made
