"""`gclint check --as sarif` and `--as junit`: exit codes, files, programs that cannot be read."""

from __future__ import annotations

import json
import os
from collections.abc import Callable
from pathlib import Path
from xml.etree import ElementTree as Xml

import pytest

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
        assert json.loads(out)["runs"][0]["invocations"][0]["exitCode"] == expected
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
