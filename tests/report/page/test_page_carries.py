"""What stands in the page: nothing of a program is ever markup, every finding has its place, the file stays small."""

from __future__ import annotations

import base64
import hashlib
import html as entities
import re
from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest

from gclint.cli.pages import Pages, page_target
from gclint.folder.outcome import Source
from gclint.problem import Problem
from gclint.report.page import listing as kept_text
from gclint.report.page import model
from gclint.report.page.page_out import contents, entry, page
from gclint.report.page.page_text import Words
from gclint.run import Run
from tests.bench.make_program import finishing_program
from tests.report.page.conftest import Carried

NASTY = "</script><script>alert(1)</script><img src=x onerror=alert(2)>\"'&--><!--"
PLUNGE = """G21 G90 G94 G17
G54
T1 M6
M3 S16000
G0 X0 Y0 Z5
{comment}G1 Z-4 F400
G1 X60 F1500
G0 X90
G0 Z10
M5
M30
"""
EPOXY = {"material": "cured-epoxy", "tools": ("1: flat 6mm 2fl up-cut",), "stock": "120 x 40 x 12 mm at -10 -20"}


def test_text_of_a_program_is_never_markup(page_of: Callable[..., str]) -> None:
    html = page_of(PLUNGE.format(comment=f"({NASTY}) "), NASTY + ".nc", **EPOXY)
    assert "alert(1)</script>" not in html
    assert "<img src=x" not in html
    assert f"<dt>file</dt><dd>{entities.escape(NASTY, quote=False)[:20]}" in html
    assert html.count("<script") == 4  # three of data, one that runs
    assert any("<img src=x onerror=alert" in line for line in Carried(html).lines)


def test_the_policy_lets_only_this_script_and_style_run(sample_page: Callable[[str], str]) -> None:
    html = sample_page("tide-ring")
    script = html.rpartition("<script>")[2].partition("</script>")[0]
    style = html.partition("<style>")[2].partition("</style>")[0]
    policy = re.search(r'http-equiv="Content-Security-Policy" content="([^"]*)"', html)
    assert policy is not None
    said = entities.unescape(policy.group(1))
    for text in (script, style):
        assert f"'sha256-{base64.b64encode(hashlib.sha256(text.encode()).digest()).decode()}'" in said
    assert said.startswith("default-src 'none';")
    assert "unsafe" not in said
    assert not re.search(r"<[^>]+\son[a-z]+=", html.partition("<body>")[2].partition('<script type=')[0])


def test_the_page_is_small_and_fetches_nothing(sample_page: Callable[[str], str]) -> None:
    html = sample_page("tide-ring")
    carried = sum(len(found) for found in re.findall(r'octet-stream" id="[a-z]+">([^<]*)<', html))
    assert len(html) - carried < 3_000_000
    shown = html.partition("<body>")[2].partition('<script type=')[0]
    assert "http" not in re.sub(r"https?://(?=[^\"]*[;)])", "", shown)
    assert not re.search(r"<(link|img|iframe|object|embed)\b", shown)
    assert "url(" not in html.partition("<style>")[2].partition("</style>")[0]


def test_it_never_says_safe(sample_page: Callable[[str], str]) -> None:
    for name in ("tide-ring", "tide-dial"):
        shown = sample_page(name).partition("<body>")[2].partition('<script type=')[0]
        assert not re.search(r"\bsafe\b", shown, re.IGNORECASE)


def test_every_finding_has_its_words_its_place_and_its_line(page_of: Callable[..., str]) -> None:
    html = page_of(PLUNGE.format(comment=""), **EPOXY)
    carried = Carried(html)
    assert {f["rule"] for f in carried.model["findings"]} >= {"straight-plunge", "rapid-through-stock"}
    path = carried.model["paths"][0]
    lines, kind = carried.column(path["line"]), carried.column(path["kind"])
    z = carried.column(path["z"])
    for number, finding in enumerate(carried.model["findings"], 1):
        assert f'id="finding-{number}"' in html
        if finding["rule"] in ("straight-plunge", "rapid-through-stock"):
            assert lines[finding["row"]] == finding["line"]
            assert finding["row"] in carried.column(finding["rows"])
    plunge = next(f for f in carried.model["findings"] if f["rule"] == "straight-plunge")
    assert kind[plunge["row"]] == 2  # a cut
    assert z[plunge["row"] + 1] < z[plunge["row"]]
    crash = next(f for f in carried.model["findings"] if f["rule"] == "rapid-through-stock")
    assert kind[crash["row"]] == 3  # a rapid in material


def test_trade_words_are_explained_as_the_glossary_does(sample_page: Callable[[str], str]) -> None:
    from gclint.knowledge.glossary import glossary

    html = sample_page("tide-ring")
    means = entities.escape(glossary()["ramp"].means, quote=False).replace('"', "&#34;")
    assert html.count(means) == 2  # at the word, and in the list of words


def test_a_text_with_several_trade_words_stays_as_it_is() -> None:
    text = "At this torque and a true speed of 1 rev/min each tooth takes a chip thickness of 1 mm on the ramp."
    shown = re.sub(r"<[^>]*>", "", re.sub(r'<span role="tooltip".*?</span>', "", str(Words()(text))))
    assert shown == text
    assert str(Words()(text)).count('<span role="tooltip"') > 2


def test_a_failed_run_and_an_empty_program_still_have_a_page(page_of: Callable[..., str], make_run: object) -> None:
    html = page_of("G21\nG90\nM30\n")
    assert "<h1>hatch.nc</h1>" in html
    assert "octet-stream" not in html


def test_a_long_program_keeps_its_findings(page_of: Callable[..., str], monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(kept_text, "WHOLE", 200_000)  # as if 30,000 lines were a million
    monkeypatch.setattr(model, "FINE", 6_000)
    monkeypatch.setattr(model, "COARSE", 1_000)
    # a plunge far inside, which no simplifying may lose
    data = finishing_program(30_000).splitlines(keepends=True)
    data[15_000:15_000] = [b"G0 Z5\n", b"G0 X10 Y10\n", b"G1 Z-9 F200\n", b"G0 Z5\n"]
    carried = Carried(page_of(b"".join(data), "relief.nc", material="cured-epoxy", tools=("1: ball 6mm 2fl",)))
    kept = carried.column(carried.model["kept"]).astype(int)
    assert len(kept) == len(carried.lines)
    assert sum(len(line) for line in carried.lines) <= 200_000
    fine, coarse = (carried.column(path["line"]) for path in carried.model["paths"])
    assert len(fine) <= 6_000
    assert len(coarse) <= 1_000
    assert carried.model["off"] > 0
    found = {f["line"]: f for f in carried.model["findings"] if f["row"] is not None}
    assert 15_003 in found
    for line, finding in found.items():
        assert line in kept
        if finding["rule"] != "never-cuts":
            assert fine[finding["row"]] == line
    assert carried.lines[int(np.flatnonzero(kept == 15_003)[0])] == "G1 Z-9 F200"


def test_a_line_without_end_is_cut_short(page_of: Callable[..., str]) -> None:
    html = page_of("G21 G90 (" + "a" * 50_000 + ")\nG0 X0 Y0 Z5\nG1 X10 F100\nM30\n")
    assert len(Carried(html).lines[0]) == kept_text.LONGEST


def test_a_line_beside_a_finding_says_that_it_is_cut_short(page_of: Callable[..., str]) -> None:
    html = page_of(PLUNGE.format(comment="(" + "very long words " * 60 + ") "), **EPOXY)
    shown = re.findall(r'<li class="here"><i>6</i><code>([^<]*)</code>', html)
    assert shown
    assert all(text.endswith(" ...") for text in shown)


def test_pages_of_several_programs(tmp_path: Path, make_run: Callable[..., object], make_finding: object) -> None:
    target = page_target(str(tmp_path / "pages"), 2)
    assert target == str(tmp_path / "pages" / "index.html")
    runs = (make_run(make_finding(), path="a/tide-dial.nc"), make_run(path="b/tide-dial.nc"))  # type: ignore[operator]
    sources = [Source(run.checked.path) for run in runs]
    pages = Pages(target, "author", sources)
    for source, run in zip(sources, runs):
        pages.add(replace(run, made=(pages.maker.made(source, run, ""),)))
    listed = pages.text(0)
    assert sorted(p.name for p in (tmp_path / "pages").iterdir()) == ["tide-dial-2.html", "tide-dial.html"]
    assert 'href="tide-dial-2.html"' in listed
    assert "b/tide-dial.nc" in listed
    assert "<b>1</b> with: change before cutting" in listed


def test_a_foreign_file_is_never_overwritten(tmp_path: Path, make_run: Callable[..., object]) -> None:
    (tmp_path / "tide-dial.html").write_text("<p>my own notes</p>")
    source = Source("tide-dial.nc")
    pages = Pages(page_target(str(tmp_path), 2), "author", [source])
    with pytest.raises(Problem, match="never overwritten"):
        pages.maker.made(source, make_run(), "")
    assert (tmp_path / "tide-dial.html").read_text() == "<p>my own notes</p>"


def test_several_pages_need_a_folder(tmp_path: Path) -> None:
    with pytest.raises(Problem, match="folder"):
        page_target(None, 2)
    file = tmp_path / "one.html"
    file.write_text("x")
    with pytest.raises(Problem, match="folder"):
        page_target(str(file), 2)
    assert page_target(str(file), 1) == str(file)


def test_the_list_of_pages_escapes_names() -> None:
    assert "<h1>0 programs</h1>" in contents([], "0.0")


def test_the_list_of_pages_is_a_table_with_the_worst_first(sample_run: Callable[[str], Run]) -> None:
    rows = [entry(f"{name}.html", sample_run(name)) for name in ("tide-dial", "float-plate", "porthole", "drift-box")]
    html = contents(rows, "0.0")
    assert html.count("no promise") == 1
    listed = re.findall(r'<th scope="row"><a href="([a-z-]+)\.html"', html)
    counts = {row["file"][:-5]: [one["count"] for one in row["counts"]] for row in rows}
    assert [counts[name] for name in listed] == sorted(counts.values(), reverse=True)
    many = contents([{**rows[0], "name": f"part-{n}.nc"} for n in range(500)], "0.0")
    assert many.count("<tr>") == 501
    assert "Content-Security-Policy" in many


def test_a_dial_mark_keeps_its_case_among_the_words() -> None:
    words = Words()
    words("Dial B, and then a chip.")
    words("Turn it to dial B.")
    assert "dial B" in [word for word, _ in words.used()]


def test_findings_are_listed_by_their_numbers_beside_the_picture(page_of: Callable[..., str]) -> None:
    bad = "X12,5\n(one (two) three)\nG1 X5 F0\nG4 P900000\nG2 X7 Y3 I9 J1\n"
    many = page_of(PLUNGE.format(comment="").replace("M5\n", bad), **EPOXY)
    listed = many.partition('class="places"')[2].partition("</ol>")[0]
    assert listed.count("<li") == many.count('<article class="finding')
    assert 'href="#finding-1"' in listed
    assert 'data-show="0"' in listed
    assert many.index('id="figure-root"') < many.index('class="places"') < many.index('<article class="finding')


def test_feeds_with_the_same_limits_share_one_window(page_of: Callable[..., str]) -> None:
    text = "G21 G90 G94 G17 G54\nT1 M6\nM3 S16000\nG0 X-9 Y0 Z5\n" + "".join(
        f"G0 Y{8 * n - 12}\nG0 Z1\nG1 Z-1 F200\nG1 X100 F{900 + 400 * n}\nG0 Z5\nG0 X-9\n" for n in range(4)
    )  # fmt: skip
    carried = Carried(page_of(text + "M5\nM30\n", **EPOXY))
    windows = carried.model["tools"][0]["pairs"]
    assert len(windows) == 1
    assert {pair["feed"] for pair in windows[0]["pairs"]} == {900.0, 1300.0, 1700.0, 2100.0}
    for pair in windows[0]["pairs"]:
        at = int(np.argmin(np.abs(np.array(windows[0]["speeds"]) - pair["speed"])))
        low, high = windows[0]["low"][at], windows[0]["high"][at]
        assert pair["inside"] == (low * 0.97 <= pair["feed"] <= high * 1.03)
        assert (pair["near"] is None) == pair["inside"]


def test_what_is_accepted_and_what_the_house_changes_stand_on_the_page(sample_page: Callable[[str], str]) -> None:
    html = sample_page("drift-box")
    assert 'id="house"' in html


def parts(html: str) -> list[str]:
    return re.findall(r'<section (?:class="lists"|id="([a-z-]+)")', html)


def test_each_reader_gets_what_is_needed_first(sample_run: Callable[[str], Run]) -> None:
    run = sample_run("float-plate")
    author, operator, instructor = (page(run, "0.0", reader) for reader in ("author", "operator", "instructor"))
    assert parts(author)[:3] == ["path", "found", "tools"]
    assert parts(operator)[:2] == ["setup-sheet", "found"]
    assert parts(instructor)[:2] == ["sign", ""]  # the one without a name: taken as given, not judged
    assert "The chip is too thin" in operator.partition('id="setup-sheet"')[0]  # what must be put right is told at once
    assert "Machine sheet" in operator
    assert "Sheet to sign" in instructor
    for html in (author, operator, instructor):  # what was found is told to each, and at its line
        assert "The chip is too thin" in html
        assert re.search(r'data-finding="0"', html)
        assert 'id="blind"' in html
        assert not re.search(r"\bsafe\b", html.partition("<body>")[2].partition('<script type=')[0], re.IGNORECASE)
    assert 'class="strip"' not in operator
    assert "float-plate" in instructor
    assert "bench-router.toml" in instructor
    assert "Nothing is accepted." in instructor
