"""What people expect of any command: short options, colour, silence, completion, a manual page, UTF-8 for machines."""

from __future__ import annotations

import os
import re
import shutil
import subprocess
from collections.abc import Callable
from pathlib import Path

import click
import pytest

from gclint import __version__
from gclint.cli.main import gclint as root
from gclint.cli.manual import FILE, page

ROOT = Path(__file__).parents[2]
RING = str(ROOT / "sample_programs" / "tide-ring" / "tide-ring.nc")
SHOP = str(ROOT / "sample_programs" / "bench-router.toml")
Called = Callable[..., tuple[int, str, str]]
Process = Callable[..., "subprocess.CompletedProcess[str]"]


def every_command(group: click.Group = root, path: tuple[str, ...] = ()) -> list[tuple[str, ...]]:
    found: list[tuple[str, ...]] = [path]
    context = click.Context(group)
    for name in group.list_commands(context):
        command = group.get_command(context, name)
        found += every_command(command, (*path, name)) if isinstance(command, click.Group) else [(*path, name)]
    return found


@pytest.mark.parametrize("path", every_command(), ids=" ".join)
def test_every_command_has_h_and_colour(path: tuple[str, ...], gclint: Called) -> None:
    code, short, _ = gclint(*path, "-h")
    assert code == 0
    assert (code, short) == gclint(*path, "--help")[:2]
    assert "--color [auto|always|never]" in short


def test_the_version_in_short(gclint: Called) -> None:
    assert gclint("-V") == gclint("--version") == (0, f"gclint {__version__}\n", "")


def test_a_program_in_the_place_of_a_verb_is_told(gclint: Called, here: Path) -> None:
    (here / "tray.nc").write_text("G21\n")
    code, _, said = gclint("tray.nc")
    assert (code, said) == (
        2, 'gclint: there is no "tray.nc" to do; it is a file or a folder: gclint check tray.nc\n'
    )  # fmt: skip


def test_colour_where_it_is_asked_for_and_nowhere_else(gclint: Called, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.delenv("NO_COLOR", raising=False)
    plain = gclint("check", RING)[1]
    assert "\x1b[" not in plain
    coloured = gclint("check", RING, "--color", "always")[1]
    assert "\x1b[" in coloured
    assert gclint("--color", "always", "check", RING)[1] == coloured
    assert gclint("check", RING, "--color", "never")[1] == plain
    assert gclint("check", RING)[1] == plain  # nothing is left of it
    monkeypatch.setenv("NO_COLOR", "1")
    assert gclint("check", RING, "--color", "always")[1] == coloured
    monkeypatch.setenv("TERM", "dumb")
    assert "\x1b[" in gclint("check", RING, "--color", "always")[1]


def test_a_pipe_is_as_wide_as_columns_says(gclint: Called, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("COLUMNS", "100")
    assert max(map(len, gclint("check", RING)[1].splitlines())) == 100
    for unset in ("", "wide", "99999999999999999999"):
        monkeypatch.setenv("COLUMNS", unset)
        assert max(map(len, gclint("check", RING)[1].splitlines())) == 80


def test_quiet_leaves_the_exit_code_and_what_machines_read(gclint: Called, here: Path) -> None:
    loud = gclint("check", RING)[0]
    assert loud == 1
    assert gclint("check", RING, "-q") == (1, "", "")
    assert gclint("check", RING, "--quiet", "--as", "json") == gclint("check", RING, "--as", "json")
    assert gclint("check", RING, "-q", "--out", "sheet.txt") == (1, "", "")
    assert "straight-plunge" in (here / "sheet.txt").read_text()
    code, out, err = gclint("check", "not there.nc", "-q")
    assert (code, out) == (2, "")
    assert "not there.nc" in err
    assert gclint("shop", "check", SHOP, "-q") == (0, "", "")
    assert gclint("material", "check", "not there.toml", "-q")[:2] == (2, "")
    assert gclint("check", RING)[1] != ""  # nothing is left of it


MACHINE = (
    ("check", RING, "--as", "json"), ("check", RING, "--as", "sarif"), ("check", RING, "--as", "junit"),
    ("show", RING, "--as", "json"), ("compare", RING, RING, "--as", "json"),
    ("window", "--shop", SHOP, "--tool", "1", "--material", "cured-epoxy", "--as", "json"),
)  # fmt: skip


@pytest.mark.slow
@pytest.mark.parametrize("args", MACHINE, ids=lambda args: f"{args[0]} {args[-1]}")
def test_forms_for_machines_are_utf8_whatever_the_terminal_is(args: tuple[str, ...], process: Process) -> None:
    done = {}
    for encoding in ("utf-8", "latin-1"):
        environment = os.environ | {"PYTHONIOENCODING": encoding, "PYTHONUTF8": "0", "GCLINT_CACHE": "none"}
        done[encoding] = process("-m", "gclint", *args, env=environment, encoding="utf-8")
    assert done["latin-1"].stdout == done["utf-8"].stdout
    assert len(done["utf-8"].stdout) > 100


def completed(process: Process, *words: str) -> list[str]:
    """What a shell is given for the last of the words."""
    environment = os.environ | {
        "COMP_WORDS": " ".join(("gclint", *words)), "COMP_CWORD": str(len(words)), "_GCLINT_COMPLETE": "bash_complete",
    }  # fmt: skip
    done = process("-m", "gclint", env=environment)
    assert (done.returncode, done.stderr) == (0, "")
    return done.stdout.split()


@pytest.mark.parametrize(
    ("words", "offered"),
    [
        (("check", "--material", "cured"), ["plain,cured-epoxy"]),
        (("check", "tr"), ["file,tr"]),
        (("check", "--shop", "s"), ["file,s"]),
        (("watch", "jo"), ["dir,jo"]),
        (("why", "straight-pl"), ["plain,straight-plunge"]),
        (("mend", "a.nc", "--only", "straight-pl"), ["plain,straight-plunge"]),
        (("window", "--shop", SHOP, "--tool", "1"), ["plain,1"]),
        (("window", "--shop", SHOP, "--dial", "2"), ["plain,2"]),
        (("window", "--shop", "not-there.toml", "--tool", "1"), []),
        (("material", "cured"), ["plain,cured-epoxy"]),
        (("material", "check", "our"), ["file,our"]),
        (("controller", "hobby-3"), ["plain,hobby-3-axis"]),
        (("word", "rubb"), ["plain,rubbing"]),
        (("pack", "facts", "entr"), ["plain,entries"]),
        (("check", "--as", "sa"), ["plain,sarif"]),
    ],
    ids=lambda value: " ".join(value)[-30:],
)
def test_shells_complete_names_and_files(words: tuple[str, ...], offered: list[str], process: Process) -> None:
    assert completed(process, *words) == offered


@pytest.mark.skipif(shutil.which("bash") is None, reason="needs bash")
def test_the_script_for_bash_is_one_that_bash_takes(process: Process) -> None:
    done = process("-m", "gclint", env=os.environ | {"_GCLINT_COMPLETE": "bash_source"})
    assert done.returncode == 0
    bash = shutil.which("bash") or "bash"
    script = f"{done.stdout}\ncomplete -p gclint"
    told = subprocess.run([bash, "-c", script], capture_output=True, text=True, check=False)
    assert "gclint" in told.stdout


def test_the_manual_page_is_that_of_these_commands() -> None:
    assert FILE.read_text(encoding="utf-8") == page(), "run  python -m gclint.cli.manual"


@pytest.mark.skipif(shutil.which("groff") is None, reason="needs groff")
def test_the_manual_page_is_sound() -> None:
    groff = shutil.which("groff") or "groff"
    done = subprocess.run(
        [groff, "-man", "-Tascii", "-ww", "-P-c", str(FILE)], capture_output=True, text=True, check=False
    )
    assert (done.returncode, done.stderr) == (0, "")
    text = re.sub(".\b", "", done.stdout)  # what is bold stands there twice
    for path in every_command():
        assert f"gclint {' '.join(path)}".rstrip() in text
    assert "--material NAME" in text
