"""Names and comments with controls and marks that turn text around: no form of report passes them on."""

from __future__ import annotations

import base64
import json
import re
import zlib
from collections.abc import Callable
from pathlib import Path
from typing import Any
from xml.etree import ElementTree as Xml

import pytest

# tests of our own list: C0 and C1 controls, DEL, the bidirectional marks of Unicode Standard Annex 9, line separators
EVIL = "\x1b[2J\x07\x7f\x9b\u202e\u2066\u2028"
HIDDEN = re.compile("[\0-\x08\x0b\x0c\x0e-\x1f\x7f-\x9f\u061c\u200e\u200f\u2028-\u202e\u2066-\u2069]")
ESCAPED = "".join(f"\\u{ord(each):04x}" for each in EVIL)
SHOP = f"""
[machine]
name = "bench {ESCAPED} router"
[[tool]]
number = 1
name = "eighth {ESCAPED} down-cut"
shape = "flat"
diameter = "6 mm"
flutes = 2
"""
JOB = f"""
material = "beech"
z_zero = "stock-top"
[stock]
size = ["60 mm", "20 mm", "9 mm"]
corner = ["-10 mm", "-10 mm"]
[[keep_out]]
name = "left {ESCAPED} clamp"
from = ["20 mm", "-5 mm", "-9 mm"]
to = ["30 mm", "5 mm", "12 mm"]
[[accept]]
rule = "straight-plunge"
because = "drilled {ESCAPED} by hand"
"""
PROGRAM = f"""(tray {EVIL.replace(chr(0x2028), "")} invented)
G21 G90 G94 G17 G54
T1 M6 (take {EVIL} the eighth)
M3 S18000
G0 X0 Y0 Z5
G1 Z-2 F200
G1 X40 F1800 {EVIL}
G0 X0
M30
"""
Gclint = Callable[..., tuple[int, str, str]]


def texts(value: Any) -> list[str]:
    """Every text in a JSON value."""
    if isinstance(value, str):
        return [value]
    inner = value.values() if isinstance(value, dict) else value if isinstance(value, list) else ()
    return [text for each in inner for text in texts(each)]


@pytest.fixture
def tray(here: Path) -> str:
    (here / "shop.toml").write_text(SHOP)
    (here / "job.toml").write_text(JOB)
    name = "tray \x1b\u202e.nc"
    (here / name).write_text(PROGRAM, encoding="utf-8")
    return name


def test_no_form_of_a_check_passes_them_on(tray: str, here: Path, gclint: Gclint) -> None:
    forms = {"json": "a.json", "sarif": "a.sarif", "junit": "a.xml", "page": "a.html"}
    also = [part for form, file in forms.items() for part in ("--also", f"{form}={file}")]
    code, out, err = gclint("check", tray, *also)
    assert code == 1, err
    assert not HIDDEN.search(out)
    for file in forms.values():
        assert not HIDDEN.search((here / file).read_text(encoding="utf-8")), file
    checked = json.loads((here / "a.json").read_text(encoding="utf-8"))
    assert checked["programs"][0]["path"] == tray  # escaped, not lost
    assert any(EVIL in text for text in texts(checked))
    json.loads((here / "a.sarif").read_text(encoding="utf-8"))
    Xml.parse(here / "a.xml")


def test_the_script_of_the_page_is_given_none(tray: str, here: Path, gclint: Gclint) -> None:
    gclint("check", tray, "--as", "page", "--out", "a.html")
    page = (here / "a.html").read_text(encoding="utf-8")
    for name in ("model", "text"):
        found = re.search(rf'id="{name}">([^<]*)<', page)
        assert found is not None
        text = zlib.decompress(base64.b64decode(found[1])).decode()
        assert "clamp" in text or "eighth" in text
        assert not any(HIDDEN.search(each) for each in (texts(json.loads(text)) if name == "model" else [text]))


def test_a_picture_is_well_formed(tray: str, here: Path, gclint: Gclint) -> None:
    code, _, err = gclint("show", tray, "--picture", "a.svg")
    assert code == 0, err
    Xml.parse(here / "a.svg")
    text = (here / "a.svg").read_text(encoding="utf-8")
    assert "clamp" in text
    assert not HIDDEN.search(text)


def test_shown_as_json_has_none(tray: str, gclint: Gclint) -> None:
    code, out, _ = gclint("show", tray, "--as", "json")
    assert code == 0
    assert not HIDDEN.search(out)
    assert json.loads(out)["path"] == tray
