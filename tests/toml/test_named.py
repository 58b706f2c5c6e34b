"""What a declaration may name, and what it may not: nothing outside leads to a traceback, a wait or a file read."""

from __future__ import annotations

import os
from collections.abc import Callable
from pathlib import Path

import pytest

from gclint.check import check
from gclint.problem import Problem
from gclint.rule_proof import findings
from gclint.setup.declare import Options, declare

PROGRAM = b"G21 G90 G94 G17 G54\nT1 M6\nG0 X0 Y0 Z5\nG1 Z-1 F100\nM30\n"


@pytest.fixture
def job(tmp_path: Path) -> Callable[..., Path]:
    """A job's folder with these files, beside a folder that holds a secret."""
    (tmp_path / "away").mkdir()
    (tmp_path / "away" / "secret.nc").write_bytes(PROGRAM)
    (tmp_path / "away" / "secret.txt").write_text('pack = "secret"')

    def make(**files: str) -> Path:
        folder = tmp_path / "job"
        folder.mkdir(exist_ok=True)
        for name, text in files.items():
            (folder / f"{name}.toml").write_text(text)
        (folder / "part.nc").write_bytes(PROGRAM)
        return folder

    return make


def refused(folder: Path, words: str) -> None:
    path = folder / "part.nc"
    with pytest.raises(Problem, match=words) as problem:
        check(path.read_bytes(), "part.nc", Options(), str(path))
    assert problem.value.path is not None
    assert "secret" not in problem.value.says.replace("secret.", "")


@pytest.mark.parametrize("name", ["../away/secret.nc", "/etc/hostname", "../job/../away/secret.nc", "link.nc"])
def test_a_program_outside_the_folder(job: Callable[..., Path], name: str) -> None:
    folder = job(job=f'program = ["part.nc", "{name}"]\n')
    (folder / "link.nc").symlink_to(folder.parent / "away" / "secret.nc")
    refused(folder, "outside the folder of this job")


def test_programs_within_the_folder(job: Callable[..., Path]) -> None:
    folder = job(job='program = ["./part.nc", "sub/../other.nc", "link.nc"]\n')
    (folder / "other.nc").write_bytes(PROGRAM)
    (folder / "third.nc").write_bytes(PROGRAM)
    (folder / "link.nc").symlink_to("third.nc")
    assert len(declare(Options(), str(folder / "part.nc")).programs) == 3


@pytest.mark.parametrize(
    "text", ['packs = ["../away/secret.txt"]', 'shop = "../away/secret.txt"', 'shop = "/etc/passwd"',
             'packs = ["/etc/passwd"]'],
)  # fmt: skip
def test_what_is_no_declaration(job: Callable[..., Path], text: str) -> None:
    refused(job(job=text), "such files end in .toml")


@pytest.mark.parametrize(
    ("job_text", "shop_text"),
    [
        ('packs = ["link.toml"]', ""), ('shop = "link.toml"', ""), ('material = "link.toml"', ""),
        ("", '[machine]\ncontroller = "link.toml"'),
    ],
)  # fmt: skip
def test_a_link_to_what_is_no_declaration(job: Callable[..., Path], job_text: str, shop_text: str) -> None:
    folder = job(job=job_text, shop=shop_text)
    (folder / "link.toml").symlink_to(folder.parent / "away" / "secret.txt")
    refused(folder, "a link to a file that does not end in .toml")


@pytest.mark.parametrize("name", ["job.toml", "shop.toml"])
def test_a_declaration_beside_the_program_that_is_such_a_link(job: Callable[..., Path], name: str) -> None:
    folder = job()
    (folder / name).symlink_to(folder.parent / "away" / "secret.txt")
    refused(folder, "a link to a file that does not end in .toml")


def test_a_link_to_a_declaration_is_followed(job: Callable[..., Path]) -> None:
    folder = job(job='shop = "link.toml"')
    (folder.parent / "away" / "bench.toml").write_text('[machine]\nname = "bench router"\n')
    (folder / "link.toml").symlink_to(folder.parent / "away" / "bench.toml")
    shop = declare(Options(), str(folder / "part.nc")).shop
    assert shop is not None
    assert shop.machine is not None
    assert shop.machine.name == "bench router"


@pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="no named pipes here")
@pytest.mark.parametrize("text", ['packs = ["pipe.toml"]', 'shop = "pipe.toml"', 'material = "pipe.toml"'])
def test_a_pipe_is_not_waited_for(job: Callable[..., Path], text: str) -> None:
    folder = job(job=text)
    os.mkfifo(folder / "pipe.toml")
    refused(folder, "is not a file|there is no shop file")


@pytest.mark.skipif(not Path("/dev/zero").exists(), reason="no such device here")
def test_an_endless_shop_file() -> None:
    with pytest.raises(Problem, match="is not a file"):
        declare(Options(shop="/dev/zero"), None)


def test_a_folder_in_place_of_a_declaration(job: Callable[..., Path]) -> None:
    folder = job(job='packs = ["house.toml"]')
    (folder / "house.toml").mkdir()
    refused(folder, "is not a file")


@pytest.mark.parametrize("name", ["../x.toml", "/tmp/x.toml", "x.sh", "a/b.toml", ""])
def test_an_example_of_a_pack_writes_no_file_elsewhere(name: str, tmp_path: Path) -> None:
    from gclint.packs.pack import Example

    with pytest.raises(Problem, match=r"plain name ends in \.toml"):
        findings(Example(says="x", program="G0 X1\n", files={name: "x"}), (), "x")


@pytest.mark.parametrize(
    "text",
    ["x = " + "[" * 100_000, "x = " + "[" * 400 + "]" * 400, "x = " + "{a=" * 5000, "[" + "a." * 50_000 + "b]\nc=1",
     "[stock]\nsize = " + "[" * 90 + "]" * 90, 'material = "' + "x" * 500_000 + '"', "a" * 500_000 + " = 1",
     "[stock]\nsize = [1e999, " + "9" * 5000 + ", 1]", '["a,b"' + '."c,d"' * 50_000 + "]", "x." * 5000 + "x = 1",
     "a = {" + "b." * 5000 + "c = 1}", "[[a]]\n" * 100_000,
     'shop = "' + "s" * 300 + '.toml"', 'material = "a\\u0000b"'],
    ids=["open lists", "nested lists", "open tables", "long table name", "nested size", "long text", "long key", "big",
         "quoted names", "dotted key", "dotted key inside", "many tables",
         "long name of a file", "no name of a file"],
)  # fmt: skip
def test_text_that_is_nested_or_long_beyond_sense(job: Callable[..., Path], text: str) -> None:
    with pytest.raises(Problem) as problem:
        check(PROGRAM, "part.nc", Options(), str(job(job=text) / "part.nc"))
    assert len(problem.value.says) <= 1000
    assert "\n" not in str(problem.value)


def test_a_message_repeats_no_line_end_and_no_escape(job: Callable[..., Path]) -> None:
    folder = job(job='material = """a\u001b[31m\nb"""\n')
    with pytest.raises(Problem) as problem:
        check(PROGRAM, "part.nc", Options(), str(folder / "part.nc"))
    assert str(problem.value).isprintable()


def unreadable(path: Path, how: str) -> None:
    """Put something of this name there that is no plain file."""
    if how == "folder":
        path.mkdir()
    elif how == "pipe":
        os.mkfifo(path)
    else:
        to = {"nowhere": "gone.toml", "itself": path.name, "endless": "/dev/zero", "a pipe": "away.pipe"}
        path.symlink_to(to[how])
        if how == "a pipe":
            os.mkfifo(path.parent / "away.pipe")


@pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="no named pipes here")
@pytest.mark.parametrize("how", ["nowhere", "itself", "endless", "pipe", "folder", "a pipe"])
@pytest.mark.parametrize("name", ["shop.toml", "job.toml", "our-board.toml"])
def test_what_is_there_and_cannot_be_read_is_never_passed_over(
    job: Callable[..., Path], name: str, how: str
) -> None:
    folder = job(**({"job": 'material = "our-board"'} if name == "our-board.toml" else {}))
    unreadable(folder / name, how)
    refused(folder, f"{name} is there but cannot be read")


@pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="no named pipes here")
def test_test_cuts_do_not_pass_over_a_shop_file_either(tmp_path: Path) -> None:
    from gclint.trial.asked import shop_above

    (tmp_path / "inner").mkdir()
    assert shop_above(tmp_path / "inner", None) is None
    unreadable(tmp_path / "shop.toml", "pipe")
    with pytest.raises(Problem, match=r"shop\.toml is there but cannot be read"):
        shop_above(tmp_path / "inner", None)


def test_a_declaration_above_that_cannot_be_read_is_told_too(job: Callable[..., Path]) -> None:
    folder = job()
    unreadable(folder.parent / "shop.toml", "nowhere")
    refused(folder, r"shop\.toml is there but cannot be read: it is a link that leads nowhere")
