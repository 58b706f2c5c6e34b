"""`gclint mend` and `gclint compare` as people and programs use them: files, exit codes, the JSON contract."""

from __future__ import annotations

import json
from pathlib import Path

import jsonschema
import pytest

from gclint.cli.main import run
from gclint.mend.result import Made
from gclint.mend.schema import FILES, schema_text
from gclint.mend.text_out import alike_changes

HERE = Path(__file__).resolve().parents[2]
DECLARED = ["--material", "cured-epoxy", "--tool", "1: flat 6mm 2fl down-cut", "--stock", "100 x 60 x 12 mm at 0 0"]
PLUNGE = "G21 G90 G94 G17 G54\nT1 M6\nM3 S9000\nG0 Z15\nX20 Y20\nZ1\nG1 Z0 F200\nZ-1.2\nX60 F1100\nG0 Z15\nM5\nM30\n"


@pytest.fixture
def plunge(tmp_path: Path) -> Path:
    file = tmp_path / "quay.nc"
    file.write_bytes(PLUNGE.encode())
    return file


def told(capsys: pytest.CaptureFixture[str], *args: str) -> tuple[int, str, str]:
    code = run([*args])
    out = capsys.readouterr()
    return code, out.out, out.err


def schema(name: str) -> dict[str, object]:
    made: dict[str, object] = json.loads((HERE / "gclint" / "mend" / name).read_text())
    return made


@pytest.mark.parametrize("name", FILES)
def test_the_shipped_schemas_are_fresh(name: str) -> None:
    assert (HERE / "gclint" / "mend" / name).read_text() == schema_text(name)


def test_a_copy_stands_beside_the_program_which_stays(plunge: Path, capsys: pytest.CaptureFixture[str]) -> None:
    code, out, _ = told(capsys, "mend", str(plunge), *DECLARED, "--as", "json")
    answer = json.loads(out)
    jsonschema.validate(answer, schema("mend.schema.json"))
    assert code == 0
    copy = plunge.with_name("quay.mended.nc")
    assert answer["to"]["path"] == str(copy)
    assert plunge.read_bytes() == PLUNGE.encode()
    assert [each["rule"] for each in answer["changes"]] == ["straight-plunge"]
    assert answer["proof"]["gone"] == [{"rule": "straight-plunge", "grade": "change", "line": 8}]
    assert answer["proof"]["new"] == []
    assert answer["proof"]["surface"]["same"] is True
    assert "mended copy of quay.nc" in copy.read_text().lower()
    checked, text, _ = told(capsys, "check", str(copy), *DECLARED, "--as", "json")
    assert checked == 0
    assert json.loads(text)["programs"][0]["fingerprint"] == answer["to"]["fingerprint"]


def test_a_file_that_exists_is_never_written_over(plunge: Path, capsys: pytest.CaptureFixture[str]) -> None:
    out = plunge.with_name("taken.nc")
    out.write_text("mine")
    code, text, says = told(capsys, "mend", str(plunge), *DECLARED, "--out", str(out))
    assert (code, text, out.read_text()) == (2, "", "mine")
    assert "never writes over" in says
    code, _, _ = told(capsys, "mend", str(plunge), *DECLARED, "--out", str(plunge))
    assert code == 2
    assert plunge.read_bytes() == PLUNGE.encode()


def test_where_nothing_is_wrong_no_file_is_written(plunge: Path, capsys: pytest.CaptureFixture[str]) -> None:
    told(capsys, "mend", str(plunge), *DECLARED)
    copy = plunge.with_name("quay.mended.nc")
    code, out, _ = told(capsys, "mend", str(copy), *DECLARED, "--as", "json")
    assert code == 0
    assert json.loads(out)["to"] is None
    assert sorted(p.name for p in plunge.parent.iterdir()) == ["quay.mended.nc", "quay.nc"]


def test_what_is_left_is_exit_1_and_says_why(plunge: Path, capsys: pytest.CaptureFixture[str]) -> None:
    code, out, _ = told(capsys, "mend", str(plunge), *DECLARED[:4], "--as", "json")
    left = {each["rule"]: each["because"] for each in json.loads(out)["not_mended"]}
    assert code == 1
    assert "blank has to be declared" in left["straight-plunge"]


def test_only_mends_what_is_named(plunge: Path, capsys: pytest.CaptureFixture[str]) -> None:
    code, out, _ = told(capsys, "mend", str(plunge), *DECLARED, "--only", "too-deep", "--as", "json")
    assert code == 1
    assert json.loads(out)["changes"] == []
    code, _, says = told(capsys, "mend", str(plunge), *DECLARED, "--only", "straight-plung")
    assert code == 2
    assert "straight-plunge" in says


def test_compare_tells_two_versions_apart(plunge: Path, capsys: pytest.CaptureFixture[str]) -> None:
    told(capsys, "mend", str(plunge), *DECLARED)
    copy = plunge.with_name("quay.mended.nc")
    code, out, _ = told(capsys, "compare", str(plunge), str(copy), *DECLARED, "--as", "json")
    answer = json.loads(out)
    jsonschema.validate(answer, schema("compare.schema.json"))
    assert code == 0
    assert [each["rule"] for each in answer["proof"]["gone"]] == ["straight-plunge"]
    code, out, _ = told(capsys, "compare", str(copy), str(plunge), *DECLARED, "--as", "json")
    assert code == 1
    assert [each["rule"] for each in json.loads(out)["proof"]["new"]] == ["straight-plunge"]


def test_compare_sees_another_part(plunge: Path, capsys: pytest.CaptureFixture[str]) -> None:
    other = plunge.with_name("longer.nc")
    other.write_text(PLUNGE.replace("X60", "X60.3"))
    code, out, _ = told(capsys, "compare", str(plunge), str(other), *DECLARED, "--as", "json")
    surface = json.loads(out)["proof"]["surface"]
    assert code == 1
    assert surface["same"] is False
    assert surface["largest_difference_mm"] > 1


def test_text_shows_old_and_new_lines(plunge: Path, capsys: pytest.CaptureFixture[str]) -> None:
    code, out, _ = told(capsys, "mend", str(plunge), *DECLARED)
    assert code == 0
    assert "MENDED COPY" in out
    assert "Z-1.2" in out
    assert "byte for byte" in out


def test_a_folder_or_one_file_for_copy_and_page_is_refused(plunge: Path, capsys: pytest.CaptureFixture[str]) -> None:
    code, text, says = told(capsys, "mend", str(plunge.parent), *DECLARED)
    assert (code, text) == (2, "")
    assert "one program at a time" in says
    out = str(plunge.with_name("ramped.nc"))
    code, text, says = told(capsys, "mend", str(plunge), *DECLARED, "--out", out, "--page", out)
    assert (code, text) == (2, "")
    assert sorted(p.name for p in plunge.parent.iterdir()) == ["quay.nc"]


def test_a_folder_that_cannot_be_written_to_is_said(
    plunge: Path, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    import tempfile

    def refuse(*_: object, **__: object) -> None:
        raise PermissionError(13, "Permission denied")

    for name in ("mkstemp", "NamedTemporaryFile"):
        monkeypatch.setattr(tempfile, name, refuse)
    monkeypatch.setattr(Path, "write_bytes", refuse)
    monkeypatch.setattr(Path, "open", refuse)
    monkeypatch.setattr("os.open", refuse)
    code, _, says = told(capsys, "mend", str(plunge), *DECLARED)
    assert code == 2
    assert "Traceback" not in says


def test_the_page_shows_paths_changes_and_proof(plunge: Path, capsys: pytest.CaptureFixture[str]) -> None:
    page = plunge.with_name("page.html")
    code, _, _ = told(capsys, "mend", str(plunge), *DECLARED, "--page", str(page))
    assert code == 0
    html = page.read_text()
    for said in (
        "Both paths over the blank",
        "What was changed, and why",
        "What was proved",
        "byte for byte",
        "<polyline",
    ):
        assert said in html
    assert "e+0" not in html
    other = plunge.with_name("other.html")
    told(capsys, "compare", str(plunge), str(plunge.with_name("quay.mended.nc")), *DECLARED, "--as", "page", "--out",
         str(other))  # fmt: skip
    assert "Lines that differ" in other.read_text()


def test_where_only_one_version_cuts_there_is_no_number(plunge: Path, capsys: pytest.CaptureFixture[str]) -> None:
    other = plunge.with_name("longer.nc")
    other.write_text(PLUNGE.replace("X60", "X66"))
    code, out, _ = told(capsys, "compare", str(plunge), str(other), *DECLARED)
    assert code == 1
    assert "in places only one of the two cuts" in out


def test_like_changes_are_told_together() -> None:
    made = [Made("straight-plunge", "entry", (n,), (n,), why) for n, why in ((9, "a"), (4, "b"), (2, "a"))]
    assert [[each.lines for each in alike] for alike in alike_changes(made)] == [[(2,), (9,)], [(4,)]]


@pytest.mark.parametrize(("out", "says"), [("", "needs the name of a file"), ("FOLDER", "names a folder")])
def test_a_copy_has_the_name_of_a_file(
    out: str, says: str, plunge: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    target = str(plunge.parent) if out else ""
    code, shown, problem = told(capsys, "mend", str(plunge), *DECLARED, "--out", target)
    assert (code, shown) == (2, "")
    assert says in problem
    assert plunge.read_bytes() == PLUNGE.encode()
