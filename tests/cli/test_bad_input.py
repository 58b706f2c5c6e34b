"""Every kind of bad input: one sentence on stderr, exit code 2, no traceback, nothing written."""

from __future__ import annotations

import json
import os
import subprocess
import sys
from collections.abc import Callable
from pathlib import Path

import pytest

Gclint = Callable[..., tuple[int, str, str]]
Sentence = Callable[[str], str]
Process = Callable[..., "subprocess.CompletedProcess[str]"]


def programs(here: Path) -> dict[str, tuple[bytes, str]]:
    """name: (content, a word the sentence must hold)"""
    return {
        "empty.nc": (b"", "empty"),
        "blank.nc": (b" \n\r\n\t\n", "empty"),
        "picture.nc": (b"\x89PNG\r\n\x1a\n\x00\x00\x00\rIHDR" + bytes(range(256)), "binary"),
        "printer.gcode": (
            b"G28\nM104 S210\nM140 S60\nM109 S210\nG92 E0\nG1 X10 Y10 E1.5 F1200\nG1 X20 E3\nG1 X30 E4.5\nM84\n", "3D",
        ),
        "wide.nc": ("G21\nG0 X1\n".encode("utf-16"), "UTF-16"),
    }


@pytest.mark.parametrize("name", ["empty.nc", "blank.nc", "picture.nc", "printer.gcode", "wide.nc"])
def test_a_file_that_is_no_program(name: str, here: Path, gclint: Gclint, sentence: Sentence) -> None:
    content, word = programs(here)[name]
    (here / name).write_bytes(content)
    code, out, err = gclint("check", name, "--out", "report.txt")
    assert code == 2
    assert out == ""
    assert name in sentence(err)
    assert word.lower() in err.lower()
    assert sorted(p.name for p in here.iterdir()) == [name]


def test_a_missing_file(here: Path, gclint: Gclint, sentence: Sentence) -> None:
    code, out, err = gclint("check", "nowhere.nc")
    assert (code, out) == (2, "")
    assert "nowhere.nc: cannot be read: no such file" in sentence(err)


def test_a_folder_without_programs(here: Path, gclint: Gclint, sentence: Sentence) -> None:
    (here / "notes").mkdir()
    (here / "notes" / "readme.md").write_text("G1 X1")
    code, out, err = gclint("check", "notes")
    assert (code, out) == (2, "")
    assert "holds no program" in sentence(err)


def test_a_folder_called_like_a_program(here: Path, gclint: Gclint, sentence: Sentence) -> None:
    (here / "part.nc").mkdir()
    for verb, says in (("check", "holds no program"), ("show", "this is a folder")):
        code, out, err = gclint(verb, "part.nc")
        assert (code, out) == (2, "")
        assert says in sentence(err)


def test_a_link_out_of_a_folder_is_passed_over(program: Path, gclint: Gclint) -> None:
    folder = program.parent / "jobs"
    folder.mkdir()
    (folder / "secret.nc").symlink_to(program)
    (folder / "part.nc").write_bytes(program.read_bytes())
    (folder / "same.nc").symlink_to("part.nc")
    code, out, _err = gclint("check", "jobs", "--as", "json")
    assert code != 2
    assert [Path(one["path"]).name for one in json.loads(out)["programs"]] == ["part.nc", "same.nc"]


def test_a_line_as_long_as_a_line_may_be(here: Path, gclint: Gclint) -> None:
    (here / "long.nc").write_text("G21 G90 G0 X1 Y1 Z1\n" + "G1X1F9" * 160_000 + "\nM30\n")
    code, out, _err = gclint("check", "long.nc", "--as", "json")
    assert code == 1
    assert json.loads(out)["programs"][0]["lines"] == 3


@pytest.mark.skipif(not hasattr(os, "geteuid") or os.geteuid() == 0, reason="the super-user may read everything")
def test_a_file_that_may_not_be_read(program: Path, gclint: Gclint, sentence: Sentence) -> None:
    program.chmod(0)
    code, out, err = gclint("check", str(program))
    assert (code, out) == (2, "")
    assert "permission denied" in sentence(err)


@pytest.mark.skipif(not Path("/dev/zero").exists(), reason="no such device here")
def test_an_endless_device(here: Path, gclint: Gclint, sentence: Sentence) -> None:
    code, _out, err = gclint("check", "/dev/zero")
    assert code == 2
    assert "not a file" in sentence(err)


@pytest.mark.parametrize(
    ("args", "words"),
    [
        (("--material", "beach"), ("beach", 'nearest: "beech"')),
        (("--tool", "1: flat"), ("--tool",)),
        (("--tool", "1: flatt 6mm"), ("flatt", "flat")),
        (("--tool", "1: flat 6mm", "--tool", "1: ball 3mm"), ("tool 1", "twice")),
        (("--stock", "12 x 9"), ("--stock",)),
        (("--shop", "none.toml"), ("none.toml",)),
        (("--job", "none.toml"), ("none.toml",)),
        (("--fail-at", "never"), ("never", "consider")),
        (("--as", "telegram"), ("telegram", "json")),
        (("--out", "no/such/folder/x.txt"), ("folder",)),
        (("--matrial", "oak"), ("--matrial", "--material")),
        (("--tool",), ("--tool",)),
    ],
)
def test_a_wrong_option(
    args: tuple[str, ...], words: tuple[str, ...], program: Path, gclint: Gclint, sentence: Sentence
) -> None:
    code, out, err = gclint("check", program.name, *args)
    assert (code, out) == (2, "")
    for word in words:
        assert word in sentence(err)
    assert [p.name for p in program.parent.iterdir()] == [program.name]


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("[machine]\ntravl = 3\n", ("shop.toml:2:1", "travl", "travel")),
        ('[[tool]]\nnumber = 1\nshape = "flat"\ndiameter = "6 kg"\n', ("shop.toml:4", "kg")),
        ('[[tool]]\nnumber = "one"\nshape = "flat"\ndiameter = "6 mm"\n', ("shop.toml:2",)),
        ("[machine\n", ("shop.toml:1",)),
        ('[machine]\ncontroller = "hobby-3-axes"\n', ("hobby-3-axis",)),
    ],
)
def test_a_wrong_declaration_beside_the_program(
    text: str, words: tuple[str, ...], program: Path, gclint: Gclint, sentence: Sentence
) -> None:
    (program.parent / "shop.toml").write_text(text)
    for form in ("text", "json"):
        code, out, err = gclint("check", program.name, "--as", form)
        assert (code, out) == (2, "")
        for word in words:
            assert word in sentence(err)


def test_one_bad_program_does_not_hide_the_others(program: Path, gclint: Gclint, sentence: Sentence) -> None:
    (program.parent / "empty.nc").write_bytes(b"")
    code, out, err = gclint("check", "empty.nc", program.name, "--as", "json")
    assert code == 2
    assert [p["path"] for p in json.loads(out)["programs"]] == [program.name]
    assert "empty.nc" in sentence(err)


def test_json_of_nothing_readable_is_still_a_document(here: Path, gclint: Gclint) -> None:
    code, out, _err = gclint("check", "nowhere.nc", "--as", "json")
    assert code == 2
    assert json.loads(out)["programs"] == []


@pytest.mark.parametrize(
    "args", [("chek",), ("check",), ("show",), ("--verzion",), ("material", "beach"), ("why", "plunge-straight")]
)
def test_a_command_line_that_makes_no_sense(
    args: tuple[str, ...], here: Path, gclint: Gclint, sentence: Sentence
) -> None:
    code, out, err = gclint(*args)
    assert (code, out) == (2, "")
    sentence(err)


@pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="no named pipes here")
@pytest.mark.parametrize("verb", ["check", "show"])
def test_a_named_pipe_is_not_waited_for(verb: str, here: Path, process: Process) -> None:
    os.mkfifo(here / "f.nc")
    done = process("-m", "gclint", verb, str(here / "f.nc"))  # ends, or the process is ended and the test fails
    assert done.returncode == 2
    assert "f.nc: this is a named pipe, not a file" in done.stderr


@pytest.mark.skipif(not Path("/dev/fd").exists(), reason="no /dev/fd here")
def test_what_a_shell_pipes_in_by_name_is_read(here: Path, program: Path, process: Process) -> None:
    reading, writing = os.pipe()
    os.write(writing, program.read_bytes())
    os.close(writing)
    done = process("-m", "gclint", "check", f"/dev/fd/{reading}", pass_fds=(reading,))
    os.close(reading)
    assert done.returncode in (0, 1), done.stderr


@pytest.mark.parametrize("name", ["shop.toml", "job.toml"])
def test_a_declaration_that_is_there_and_cannot_be_read(
    name: str, here: Path, program: Path, gclint: Gclint, sentence: Sentence
) -> None:
    (here / name).symlink_to("gone.toml")
    code, out, err = gclint("check", program.name)
    assert (code, out) == (2, "")
    assert f"{name} is there but cannot be read" in sentence(err)


@pytest.mark.parametrize(
    "key",
    ['shop = ""', 'program = ""', 'program = ["tray.nc", ""]', 'program = "."', 'program = "sub/"', 'packs = [""]'],
)
def test_an_empty_name_in_a_job(key: str, here: Path, program: Path, gclint: Gclint, sentence: Sentence) -> None:
    (here / "job.toml").write_text(f'material = "beech"\n{key}\n')
    code, out, err = gclint("check", program.name)
    assert (code, out) == (2, "")
    assert "job.toml:2:" in sentence(err)


@pytest.mark.parametrize(
    ("head", "word"),
    [
        (b"\xff\xfe" + bytes(range(256)) * 20, "binary"),
        (b"".join(n.to_bytes(2, "little") for n in range(0, 4000, 7)), "binary"),  # sound, small whole numbers
        (b"\x01\x00\x02\x00\x00\x00\x03\x00" * 100, "binary"),
        ("\ufeffG21 (\u0434\u0430)\r\nG0 X1\r\n".encode("utf-16-le"), "UTF-16"),
        ("G21 G90\nG0 X1\nM30\n".encode("utf-16-be"), "UTF-16"),
        ("G0\n".encode("utf-16-le"), "UTF-16"),
    ],
)
def test_what_is_called_wide_text_is_wide_text(
    head: bytes, word: str, here: Path, gclint: Gclint, sentence: Sentence
) -> None:
    (here / "a.nc").write_bytes(head)
    code, out, err = gclint("check", "a.nc")
    assert (code, out) == (2, "")
    assert word in sentence(err)


def test_watching_without_its_library_says_so_at_once(
    here: Path, gclint: Gclint, sentence: Sentence, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setitem(sys.modules, "watchfiles", None)
    code, out, err = gclint("watch", ".")
    assert (code, out) == (2, "")
    assert "needs the library watchfiles" in sentence(err)
    assert "watching ." not in err


def test_a_kernel_that_is_not_built_is_told_once(
    here: Path, gclint: Gclint, sentence: Sentence, monkeypatch: pytest.MonkeyPatch
) -> None:
    pack = Path(__file__).parents[2] / "sample_programs" / "lowtide-house.toml"
    monkeypatch.setitem(sys.modules, "gclint.program.scan", None)
    code, _, err = gclint("pack", "check", str(pack))
    assert code == 2
    assert "gclint.program.scan is not built" in sentence(err)
    assert "declarations" not in err
