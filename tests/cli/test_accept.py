"""`gclint check --accept-all-as`: an old folder starts clean and tells only what is new."""

from __future__ import annotations

import json
import os
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest

from gclint import atomic_file as whole_file

Gclint = Callable[..., tuple[int, str, str]]
Sentence = Callable[[str], str]

SHOP = """
[[tool]]
number = 1
shape = "flat"
diameter = "6 mm"
flutes = 2
"""
HEAD = "G21 G90 G94 G17 G54\nT1 M6\nM3 S12000\nG4 P5\nG0 Z5\n"
PLUNGE = "G0 X{} Y40\nG1 Z-{} F100\nG0 Z5\n"
THROUGH = "G0 X20 Y40\nG1 Z-1 F100\nG0 X60\nG0 Z5\n"  # a rapid through the stock: graded halt
TAIL = "M5\nM30\n"
JOB = '# the tide shelf\r\nmaterial = "cured-epoxy"  # cast in May\r\nshop = "shop.toml"\r\n\r\n[stock]\r\n' \
    'size = ["120 mm", "80 mm", "20 mm"]\r\ncorner = ["0 mm", "0 mm"]'  # fmt: skip
MATERIAL = ("--material", "cured-epoxy", "--stock", "120 x 80 x 20 mm at 0 0")
WITH = ("--accept-all-as", "ran well in spring", "--into")


@pytest.fixture
def old(here: Path) -> Path:
    """A folder of two programs and a shop file."""
    folder = here / "old"
    (folder / "deep").mkdir(parents=True)
    (folder / "shop.toml").write_text(SHOP)
    (folder / "a.nc").write_text(HEAD + PLUNGE.format(20, 1) + PLUNGE.format(40, 2) + TAIL)
    (folder / "deep" / "b b.nc").write_text(HEAD + PLUNGE.format(20, 1) + TAIL)
    return folder


def report(gclint: Gclint, *args: str) -> list[dict[str, Any]]:
    _, out, _ = gclint("check", *args, "--as", "json")
    made: list[dict[str, Any]] = json.loads(out)["programs"]
    return made


def still_open(programs: list[dict[str, Any]]) -> set[tuple[str, str]]:
    """(program, rule) of what is neither accepted nor mild."""
    return {
        (Path(each["path"]).name, finding["rule"])
        for each in programs
        for finding in each["findings"]
        if finding["accepted"] is None
    }


def test_a_folder_without_declarations_starts_clean(old: Path, gclint: Gclint) -> None:
    assert gclint("check", "old", *MATERIAL)[0] == 1
    code, out, err = gclint("check", "old", *MATERIAL, *WITH, "old/job.toml", "--by", "Maren")
    assert (code, err) == (0, "")
    assert "2 of 2 programs" in out
    assert "gclint check --job old/job.toml" in out
    assert gclint("job", "check", "old/job.toml")[0] == 0
    assert gclint("check", "--job", "old/job.toml")[0] == 0
    programs = report(gclint, "--job", "old/job.toml")
    assert [Path(each["path"]).name for each in programs] == ["a.nc", "b b.nc"]
    assert still_open(programs) == set()
    for each in programs:
        told = {(row["because"], row["by"], row["covers"] > 0) for row in each["acceptances"]}
        assert told == {("ran well in spring", "Maren", True)}
    sheet = gclint("check", "--job", "old/job.toml")[1]
    assert "KNOWN AND ACCEPTED" in sheet
    assert "ran well in spring (Maren; job.toml, line" in sheet


@pytest.mark.parametrize(
    ("change", "news"),
    [
        (PLUNGE.format(60, 1), {("a.nc", "straight-plunge")}),  # one place more
        (THROUGH, {("a.nc", "rapid-through-stock")}),
    ],
)
def test_only_what_is_new_is_told(old: Path, gclint: Gclint, change: str, news: set[tuple[str, str]]) -> None:
    gclint("check", "old", *MATERIAL, *WITH, "old/job.toml")
    path = old / "a.nc"
    path.write_text(path.read_text().replace(TAIL, change + TAIL))
    assert still_open(report(gclint, "--job", "old/job.toml")) >= news
    assert not any(name == "b b.nc" for name, _ in still_open(report(gclint, "--job", "old/job.toml")))
    assert gclint("check", "--job", "old/job.toml")[0] == 1


def test_a_deeper_plunge_in_the_same_place_is_new(old: Path, gclint: Gclint) -> None:
    gclint("check", "old", *MATERIAL, *WITH, "old/job.toml")
    path = old / "a.nc"
    path.write_text(path.read_text().replace("Z-2", "Z-3.5"))
    assert ("a.nc", "straight-plunge") in still_open(report(gclint, "--job", "old/job.toml"))


def test_halt_stays_open_and_decides_the_exit_code(old: Path, gclint: Gclint) -> None:
    path = old / "a.nc"
    path.write_text(path.read_text().replace(TAIL, THROUGH + TAIL))
    code, out, _ = gclint("check", "old", *MATERIAL, *WITH, "old/job.toml")
    assert code == 1
    assert "LEFT OPEN" in out
    assert "rapid-through-stock (graded halt" in out
    assert still_open(report(gclint, "--job", "old/job.toml")) == {("a.nc", "rapid-through-stock")}


def test_an_existing_job_is_kept_byte_for_byte_and_only_if_asked(old: Path, gclint: Gclint, sentence: Sentence) -> None:
    job = old / "job.toml"
    job.write_bytes(JOB.encode())
    code, out, err = gclint("check", "old", *WITH, "old/job.toml")
    assert (code, out) == (2, "")
    assert "job.toml" in sentence(err)
    assert "--add-to-existing" in err
    assert job.read_bytes() == JOB.encode()
    job.chmod(0o640)
    assert gclint("check", "old", *WITH, "old/job.toml", "--add-to-existing")[0] == 0
    made = job.read_bytes()
    assert made.startswith(JOB.encode() + b"\r\n")
    assert b"\n" not in made.replace(b"\r\n", b"")
    assert job.stat().st_mode & 0o777 == 0o640
    assert still_open(report(gclint, "old")) == set()
    # nothing is left, so nothing is written
    assert "nothing is left to accept" in gclint("check", "old", *WITH, "old/job.toml", "--add-to-existing")[1]
    assert job.read_bytes() == made


def test_a_new_job_beside_the_one_that_was_used_repeats_it(old: Path, gclint: Gclint) -> None:
    (old / "job.toml").write_bytes(JOB.encode())
    assert gclint("check", "old", *WITH, "old/known.toml")[0] == 0
    assert (old / "job.toml").read_bytes() == JOB.encode()
    assert (old / "known.toml").read_bytes().startswith(JOB.encode())
    assert still_open(report(gclint, "old", "--job", "old/known.toml")) == set()


def test_the_shop_is_named_as_seen_from_the_job(old: Path, gclint: Gclint) -> None:
    assert gclint("check", "old/deep", *MATERIAL, *WITH, "old/deep/job.toml")[0] == 0
    assert 'shop = "../shop.toml"' in (old / "deep" / "job.toml").read_text()
    assert gclint("check", "--job", "old/deep/job.toml")[0] == 0


REFUSED: dict[str, tuple[tuple[str, ...], str]] = {
    "no file named": (("old", "--accept-all-as", "x"), "--into"),
    "no reason": (("old", "--accept-all-as", "  ", "--into", "old/job.toml"), "reason"),
    "into without a reason": (("old", "--into", "old/job.toml"), "--accept-all-as"),
    "who without a reason": (("old", "--by", "Maren"), "--accept-all-as"),
    "no such folder": (("old", *WITH, "new/job.toml"), "does not exist"),
    "a folder": (("old", *WITH, "old/deep"), ".toml"),
    "no toml": (("old", *WITH, "old/a.nc"), ".toml"),
    "as json": (("old", *WITH, "old/job.toml", "--as", "json"), "--as"),
    "outside": (("old", *WITH, "old/deep/job.toml"), "outside"),
    "standard input": (("-", *WITH, "old/job.toml"), "standard input"),
    "nothing to add to": (("old", *WITH, "old/job.toml", "--add-to-existing"), "no such file"),
    "another job": (("old", *WITH, "old/other.toml", "--add-to-existing"), "--job"),
}


@pytest.mark.parametrize("case", REFUSED)
def test_what_cannot_be_done_is_refused_and_nothing_is_written(
    case: str, old: Path, gclint: Gclint, sentence: Sentence, monkeypatch: pytest.MonkeyPatch
) -> None:
    import io
    import sys

    monkeypatch.setattr(sys, "stdin", io.TextIOWrapper(io.BytesIO(HEAD.encode())))
    (old / "other.toml").write_text('material = "beech"\n')
    before = {path: path.read_bytes() for path in old.rglob("*") if path.is_file()}
    args, word = REFUSED[case]
    code, out, err = gclint("check", *args)
    assert (code, out) == (2, "")
    assert word in sentence(err)
    assert {path: path.read_bytes() for path in old.rglob("*") if path.is_file()} == before


def test_programs_of_several_jobs_are_accepted_job_by_job(old: Path, gclint: Gclint, sentence: Sentence) -> None:
    (old / "deep" / "job.toml").write_text('shop = "../shop.toml"\nmaterial = "oak"\n')
    code, _, err = gclint("check", "old", *WITH, "old/job.toml")
    assert code == 2
    assert "job by job" in sentence(err)
    assert not (old / "job.toml").exists()


def test_acceptances_that_stand_in_a_list_cannot_be_added_to(old: Path, gclint: Gclint, sentence: Sentence) -> None:
    text = JOB.replace("\r\n\r\n", '\r\naccept = [ { rule = "steep-ramp", because = "known" } ]\r\n\r\n')
    (old / "job.toml").write_bytes(text.encode())
    code, _, err = gclint("check", "old", *WITH, "old/job.toml", "--add-to-existing")
    assert code == 2
    assert "[[accept]]" in sentence(err)
    assert (old / "job.toml").read_bytes() == text.encode()


@pytest.mark.parametrize("add", [False, True])
def test_killed_half_way_nothing_is_lost(
    add: bool, old: Path, gclint: Gclint, monkeypatch: pytest.MonkeyPatch
) -> None:
    job = old / "job.toml"
    if add:
        job.write_bytes(JOB.encode())

    def killed(*_: Any, **__: Any) -> None:
        raise KeyboardInterrupt

    monkeypatch.setattr(Path, "replace", killed)
    monkeypatch.setattr(os, "link", killed)
    gclint("check", "old", *([] if add else MATERIAL), *WITH, "old/job.toml", *(["--add-to-existing"] if add else []))
    assert (job.read_bytes() == JOB.encode()) if add else not job.exists()
    assert sorted(path.name for path in old.iterdir() if path.name.startswith(".")) == []


def test_a_job_that_somebody_writes_meanwhile_stays_as_it_is(tmp_path: Path) -> None:
    from gclint.problem import Problem

    job = tmp_path / "job.toml"
    job.write_text("theirs")
    with pytest.raises(Problem, match="come into being"):
        whole_file.write_unchanged(b"ours", job, None)
    with pytest.raises(Problem, match="changed during the run"):
        whole_file.write_unchanged(b"ours", job, b"as it was read")
    assert job.read_text() == "theirs"
    assert [path.name for path in tmp_path.iterdir()] == ["job.toml"]
    whole_file.write_unchanged(b"ours", job, b"theirs")
    assert job.read_text() == "ours"


def test_a_disk_without_links_writes_a_new_job_all_the_same(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    def refuses(*_: Any) -> None:
        raise PermissionError(1, "no links here")

    monkeypatch.setattr(os, "link", refuses)
    whole_file.write_unchanged(b"ours", tmp_path / "job.toml", None)
    assert (tmp_path / "job.toml").read_text() == "ours"


@pytest.mark.skipif(os.geteuid() == 0, reason="root may write everywhere")
def test_a_folder_that_cannot_be_written_to(old: Path, gclint: Gclint, sentence: Sentence) -> None:
    old.chmod(0o555)
    try:
        code, _, err = gclint("check", "old", *MATERIAL, *WITH, "old/job.toml")
    finally:
        old.chmod(0o755)
    assert code == 2
    assert "cannot be written" in sentence(err)


def test_a_folder_that_refuses_a_file(old: Path, gclint: Gclint, sentence: Sentence, monkeypatch: Any) -> None:
    def refuses(*_: Any, **__: Any) -> None:
        raise PermissionError(13, "Permission denied")

    monkeypatch.setattr(whole_file.tempfile, "mkstemp", refuses)
    code, _, err = gclint("check", "old", *MATERIAL, *WITH, "old/job.toml")
    assert code == 2
    assert "cannot be written" in sentence(err)
    assert not (old / "job.toml").exists()


def test_words_that_would_break_the_file_are_written_so_that_they_read_back(old: Path, gclint: Gclint) -> None:
    reason = 'said "fine"\n[[accept]]\nrule = \\ \x1b'
    assert gclint("check", "old", *MATERIAL, "--accept-all-as", reason, "--into", "old/job.toml")[0] == 0
    (first, *_) = report(gclint, "--job", "old/job.toml")
    assert {each["because"] for each in first["acceptances"]} == {reason.strip()}


@pytest.mark.parametrize(
    ("key", "word"), [("rule", 'no rule "steep-rampp"; nearest: "steep-ramp"'), ("program", 'no program "gone.nc"')]
)
def test_job_check_names_an_acceptance_whose_rule_or_program_is_not_there(
    key: str, word: str, old: Path, gclint: Gclint, sentence: Sentence
) -> None:
    rule, program = ("steep-rampp", "a.nc") if key == "rule" else ("steep-ramp", "gone.nc")
    (old / "job.toml").write_text(f'[[accept]]\nrule = "{rule}"\nprogram = "{program}"\nbecause = "known"\n')
    code, _, err = gclint("job", "check", "old/job.toml")
    assert code == 2
    assert word in sentence(err)
    assert f"job.toml, line {2 if key == 'rule' else 3}" in err or f"job.toml:{2 if key == 'rule' else 3}" in err
