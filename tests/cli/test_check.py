"""`gclint check`: exit codes, forms, files, pipes."""

from __future__ import annotations

import json
import re
import stat
import subprocess
import sys
from collections.abc import Callable
from pathlib import Path

import jsonschema
import pytest

from gclint.report.machine.json_out import schema

Gclint = Callable[..., tuple[int, str, str]]
Process = Callable[..., "subprocess.CompletedProcess[str]"]
DECLARED = ("--material", "beech", "--tool", "1: flat 6mm 2fl up-cut", "--stock", "60 x 20 x 9 mm at -10 -10")


def test_exit_code_0_where_nothing_is_at_the_fail_grade(program: Path, gclint: Gclint) -> None:
    code, out, err = gclint("check", program.name, *DECLARED)
    assert err == ""
    assert "DO NOT RUN" not in out
    assert "CHANGE BEFORE CUTTING" not in out
    assert code == 0


def test_exit_code_1_for_a_crash(program: Path, gclint: Gclint) -> None:
    program.write_text(program.read_text().replace("G1 X40 F1800", "G0 X40"))
    code, out, _err = gclint("check", program.name, *DECLARED)
    assert code == 1
    assert "rapid-through-stock" in out
    assert "DO NOT RUN" in out


def test_fail_at_moves_the_bar(program: Path, gclint: Gclint) -> None:
    program.write_text(program.read_text().replace("F200", "F1800"))  # plunge at the cutting feed
    out = gclint("check", program.name, *DECLARED, "--as", "json")[1]
    assert {f["grade"] for f in json.loads(out)["programs"][0]["findings"]} >= {"change"}
    assert gclint("check", program.name, *DECLARED)[0] == 1
    assert gclint("check", program.name, *DECLARED, "--fail-at", "halt")[0] == 0


def test_json_is_one_document_that_fits_the_schema(program: Path, gclint: Gclint) -> None:
    code, out, err = gclint("check", program.name, *DECLARED, "--as", "json")
    assert (code, err) == (0, "")
    document = json.loads(out)
    jsonschema.Draft202012Validator(schema()).validate(document)
    row = document["programs"][0]["tools"][0]
    assert row["tool"] == 1
    assert row["set_feed_mm_min"] == [200, 1800]
    assert row["cut_length_mm"] == pytest.approx(41, abs=0.3)
    assert row["ae_max_mm"] == pytest.approx(6, abs=0.1)
    assert row["removed_mm3"] == pytest.approx(268.3, rel=0.02)  # 40 x 6 plus a disc of 6, 1 mm deep
    assert document["programs"][0]["extent_mm"] == {"min": [0, 0, -1], "max": [40, 0, 5]}
    assert document["programs"][0]["units"] == "mm"


def test_the_fingerprint_is_of_the_bytes(program: Path, gclint: Gclint) -> None:
    import hashlib

    out = gclint("check", program.name, *DECLARED, "--as", "json")[1]
    assert json.loads(out)["programs"][0]["fingerprint"] == f"sha256:{hashlib.sha256(program.read_bytes()).hexdigest()}"


def test_the_same_input_gives_the_same_report(program: Path, gclint: Gclint) -> None:
    assert gclint("check", program.name, *DECLARED) == gclint("check", program.name, *DECLARED)


def test_plain_text_when_piped(program: Path, process: Process) -> None:
    done = process("-m", "gclint", "check", str(program), *DECLARED)
    assert done.stderr == ""
    assert "\x1b" not in done.stdout
    assert max(map(len, done.stdout.splitlines())) <= 80
    assert done.stdout.startswith("JOB SHEET")


def test_standard_input(program: Path, process: Process) -> None:
    done = process("-m", "gclint", "check", "-", *DECLARED, "--as", "json", input=program.read_text())
    assert done.returncode == 0
    assert json.loads(done.stdout)["programs"][0]["path"] == "standard input"


def test_several_programs_and_a_folder(program: Path, gclint: Gclint) -> None:
    more = program.parent / "more"
    more.mkdir()
    (more / ".hidden").mkdir()
    for name in ("b.NC", "a.tap", "notes.md", ".hidden/c.nc"):
        (more / name).write_text("The tray, as Ida wants it.\n" if name == "notes.md" else program.read_text())
    made = json.loads(gclint("check", program.name, "more", *DECLARED, "--as", "json")[1])
    assert [p["path"] for p in made["programs"]] == [program.name, str(Path("more/a.tap")), str(Path("more/b.NC"))]
    assert [p["path"] for p in made["passed_over"]] == [str(Path("more/.hidden")), str(Path("more/notes.md"))]
    text = gclint("check", program.name, "more", *DECLARED)[1]
    assert text.count("JOB SHEET") == 3
    assert text.count("CAUTIONS ---") == 1
    assert re.search(r"IN SHORT -+\ntray\.nc: ", text)


def test_out_writes_a_whole_file_and_nothing_to_the_screen(program: Path, gclint: Gclint) -> None:
    code, out, err = gclint("check", program.name, *DECLARED, "--as", "json", "--out", "report.json")
    assert (code, out, err) == (0, "", "")
    report = program.parent / "report.json"
    assert json.loads(report.read_text())["programs"][0]["path"] == program.name
    assert sorted(p.name for p in program.parent.iterdir()) == ["report.json", "tray.nc"]
    assert stat.S_IMODE(report.stat().st_mode) == stat.S_IMODE(program.stat().st_mode)


def test_out_never_overwrites_what_is_read(program: Path, gclint: Gclint) -> None:
    before = program.read_bytes()
    (program.parent / "shop.toml").write_text("[machine]\n")
    (program.parent / "same.nc").symlink_to(program)
    for name in (program.name, "same.nc", "./tray.nc"):
        code, out, err = gclint("check", program.name, *DECLARED, "--out", name)
        assert (code, out) == (2, "")
        assert "never overwritten" in err
    code, _out, err = gclint("check", program.name, "--shop", "shop.toml", "--out", "shop.toml")
    assert code == 2
    assert program.read_bytes() == before
    assert (program.parent / "shop.toml").read_text() == "[machine]\n"


def test_a_failing_room_is_one_finding_and_exit_code_2(
    program: Path, gclint: Gclint, monkeypatch: pytest.MonkeyPatch
) -> None:
    from gclint.motion import feed_planning

    def broken(*_: object) -> None:
        raise IndexError("row 7")

    (program.parent / "other.nc").write_text(program.read_text())
    monkeypatch.setattr(feed_planning, "plan_feed", broken)
    code, out, err = gclint("check", program.name, "other.nc", *DECLARED, "--as", "json")
    assert (code, err) == (2, "")
    documents = json.loads(out)["programs"]
    assert [[f["rule"] for f in d["findings"]] for d in documents] == [["internal-error"], ["internal-error"]]
    assert "IndexError: row 7" in documents[0]["findings"][0]["found"]["value"]
    assert gclint("check", program.name, *DECLARED)[0] == 2


def test_a_reader_that_goes_away_is_no_error(program: Path) -> None:
    script = f"{sys.executable} -m gclint check {program} {program} | head -c 10"
    root = Path(__file__).parents[2]
    done = subprocess.run(["sh", "-c", script], cwd=root, capture_output=True, text=True, timeout=120, check=False)
    assert "Traceback" not in done.stderr
    assert "Broken" not in done.stderr


def test_words_of_the_program_cannot_steer_the_screen(program: Path, gclint: Gclint) -> None:
    program.write_text(program.read_text().replace("G1 X40 F1800", "G0 X40 (\x1b[2J\x1b]0;gone\x07)"))
    out = gclint("check", program.name, *DECLARED)[1]
    assert "\x1b" not in out
    assert "\x07" not in out


def test_the_programs_of_a_job_need_not_be_named(program: Path, gclint: Gclint) -> None:
    (program.parent / "job.toml").write_text(f'program = "{program.name}"\nmaterial = "beech"\n')
    code, out, _err = gclint("check", "--job", "job.toml", "--tool", "1: flat 6mm 2fl", "--as", "json")
    assert code in (0, 1)
    assert [p["path"] for p in json.loads(out)["programs"]] == [program.name]
