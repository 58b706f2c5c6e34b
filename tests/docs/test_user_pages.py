"""The README and the pages in gclint/docs are true: links, commands, files and examples."""

from __future__ import annotations

import json
import os
import re
import shlex
import shutil
import subprocess
import sys
import tomllib
from collections.abc import Callable, Iterator
from itertools import pairwise
from pathlib import Path
from typing import Any

import click
import pytest

from gclint.cli.main import gclint as root

ROOT = Path(__file__).parents[2]
DOCS = ROOT / "gclint" / "docs"
PAGES = sorted(DOCS.glob("*.md"))
TEXTS = [ROOT / "README.md", *PAGES]
LINKED = [*TEXTS, ROOT / "DEVELOPERS.md", ROOT / "CHANGELOG.md"]
Gclint = Callable[..., tuple[int, str, str]]

LINK = re.compile(r"\]\(([^)\s]+)\)")
FENCE = re.compile(r"^```(\w*)\n(.*?)^```", re.MULTILINE | re.DOTALL)
FILE = re.compile(r"<!-- file: (\S+) -->\n```\w*\n(.*?)^```", re.MULTILINE | re.DOTALL)
CODE = re.compile(r"`([^`\n]+)`")
PATHS = re.compile(r"(?:gclint|rules|sample_programs|tests|\.ci|\.pictures)/[\w./-]+")


def name(path: Path) -> str:
    return path.relative_to(ROOT).as_posix()


def without_blocks(text: str) -> str:
    return FENCE.sub("", text)


def links(path: Path) -> list[str]:
    found = LINK.findall(without_blocks(path.read_text(encoding="utf-8")))
    return [link for link in found if not link.startswith(("http:", "https:"))]


def anchors(path: Path) -> set[str]:
    """The names that code hosts give to headings."""
    heads = re.findall(r"^#+ (.+)$", without_blocks(path.read_text(encoding="utf-8")), re.MULTILINE)
    return {re.sub(r"[^\w -]", "", head.lower()).replace(" ", "-") for head in heads}


@pytest.mark.parametrize("path", LINKED, ids=name)
def test_every_link_leads_somewhere(path: Path) -> None:
    for link in links(path):
        file, _, anchor = link.partition("#")
        target = (path.parent / file).resolve() if file else path
        assert target.exists(), link
        assert not anchor or anchor in anchors(target), link


def test_every_page_is_in_the_index_and_the_index_in_the_readme() -> None:
    assert {link for link in links(DOCS / "index.md") if "/" not in link} == {p.name for p in PAGES} - {"index.md"}
    assert "gclint/docs/index.md" in links(ROOT / "README.md")


def test_pages_link_to_files_of_the_package_or_of_the_source_only_as_the_index_says() -> None:
    outside = {link for path in PAGES for link in links(path) if link.startswith("..")}
    assert {link for link in outside if not link.startswith("../../")} == set()


@pytest.mark.parametrize("path", TEXTS, ids=name)
def test_every_file_that_is_named_is_there(path: Path) -> None:
    for code in CODE.findall(without_blocks(path.read_text(encoding="utf-8"))):
        for file in PATHS.findall(code):
            assert (ROOT / file).exists(), file


def test_the_pages_are_in_the_wheel() -> None:
    patterns = tomllib.loads((ROOT / "pyproject.toml").read_text())["tool"]["setuptools"]["package-data"]["gclint"]
    packed = {path for pattern in patterns for path in (ROOT / "gclint").glob(pattern)}
    assert len(PAGES) > 15
    assert {path for path in DOCS.rglob("*") if path.is_file()} <= packed


# commands

def lines_of(block: str) -> Iterator[str]:
    """The commands of a shell block, one by one, with their continuations."""
    for line in block.replace("\\\n", " ").splitlines():
        yield from (part.strip() for part in line.split("&&") if part.strip())


def commands(text: str) -> list[str]:
    """Every command line of gclint in a text, in shell blocks and in running text."""
    shell = [line for kind, block in FENCE.findall(text) if kind == "sh" for line in lines_of(block)]
    told = [code for code in CODE.findall(without_blocks(text)) if code.startswith("gclint ")]
    return [line for line in [*shell, *told] if re.match(r"(\S*/)?gclint\s", line)]


def wrong_in(line: str) -> str | None:
    """What a command line names that there is not: a verb, an option or a word of a choice; None where all is there."""
    words = shlex.split(line, comments=True)[1:]
    words = words[: next((n for n, word in enumerate(words) if word in ("<", ">", "|")), len(words))]
    command: click.Command = root
    while isinstance(command, click.Group) and words and not words[0].startswith("-") and not words[0].isupper():
        found = command.get_command(click.Context(command), words[0])
        if found is None:
            return f"no verb {words[0]}"
        command, words = found, words[1:]
    options = {each: option for option in command.params for each in (*option.opts, *option.secondary_opts)}
    known = set(options) | {"-h", "--help", "--color", "--version", "-V"}
    for word, behind in pairwise([*words, ""]):
        if word.startswith("-") and word != "-":
            if word not in known:
                return f"no option {word}"
            kind = options[word].type if word in options else None
            if isinstance(kind, click.Choice) and not behind.isupper() and behind not in kind.choices:
                return f"no {word} {behind}"
    return None


@pytest.mark.parametrize("path", TEXTS, ids=name)
def test_every_command_that_is_shown_exists(path: Path) -> None:
    shown = commands(path.read_text(encoding="utf-8"))
    assert [(line, wrong_in(line)) for line in shown if wrong_in(line)] == []


def test_commands_are_found_and_wrong_ones_told() -> None:
    assert sum(len(commands(path.read_text(encoding="utf-8"))) for path in TEXTS) > 80
    assert wrong_in("gclint chek a.nc") == "no verb chek"
    assert wrong_in("gclint trial lern a") == "no verb lern"
    assert wrong_in("gclint check a.nc --metal x") == "no option --metal"
    assert wrong_in("gclint check a.nc --as xml") == "no --as xml"
    assert wrong_in(".venv/bin/gclint check - --as lines < a.nc") is None


# examples

@pytest.mark.parametrize("path", TEXTS, ids=name)
def test_every_toml_block_can_be_read(path: Path) -> None:
    for kind, block in FENCE.findall(path.read_text(encoding="utf-8")):
        if kind == "toml":
            tomllib.loads(block)


def write_files(path: Path, folder: Path) -> list[str]:
    """Writes the files that a page shows (`<!-- file: NAME -->`), and gives their names."""
    files = FILE.findall(path.read_text(encoding="utf-8"))
    for file, text in files:
        (folder / file).write_text(text, encoding="utf-8")
    return [file for file, _ in files]


def test_the_declarations_on_the_pages_read_well(here: Path, gclint: Gclint) -> None:
    assert write_files(DOCS / "machine.md", here) == ["shop.toml"]
    assert write_files(DOCS / "job.md", here) == ["job.toml"]
    (here / "tide-ring.nc").write_text("M30\n")
    assert gclint("shop", "check", "shop.toml")[0] == 0
    code, out, err = gclint("job", "check", "job.toml")
    assert code == 0, out + err


def test_the_declarations_in_the_readme_read_well(here: Path, gclint: Gclint) -> None:
    text = (ROOT / "README.md").read_text(encoding="utf-8")
    shop, job = [block for kind, block in FENCE.findall(text) if kind == "toml"]
    (here / "shop.toml").write_text(shop, encoding="utf-8")
    (here / "job.toml").write_text(job, encoding="utf-8")
    shutil.copy(ROOT / "sample_programs" / "tide-ring" / "tide-ring.nc", here)
    code, out, err = gclint("check", "tide-ring.nc")
    assert code == 1, err
    assert "straight-plunge" in out


@pytest.mark.parametrize("page", ["machine.md", "job.md"])
def test_every_key_in_the_tables_is_a_key(page: str) -> None:
    schemas = [json.loads((ROOT / "gclint" / "setup" / f"{n}.schema.json").read_text()) for n in ("shop", "job")]
    keys = {key for schema in schemas for part in schema["$defs"].values() for key in part.get("properties", ())}
    text = without_blocks((DOCS / page).read_text(encoding="utf-8"))
    rows: list[str] = re.findall(r"^\| (`.+?) \|", text, re.MULTILINE)
    named = [word for row in rows for code in CODE.findall(row) for word in re.findall(r"[a-z_]+", code.split("=")[0])]
    assert len(named) > 4
    assert set(named) <= keys


def test_the_worked_example_of_a_rule_does_what_the_page_says(here: Path, gclint: Gclint) -> None:
    assert write_files(DOCS / "shop-packs.md", here) == ["ours.toml", "job.toml", "gull.nc", "changes.toml"]
    assert gclint("pack", "check", "ours.toml")[0] == 0
    assert gclint("pack", "check", "changes.toml")[0] == 0
    code, out, _ = gclint("check", "gull.nc", "--as", "lines")
    assert code == 1
    (line,) = [line for line in out.splitlines() if "rapid-below-clamps" in line]
    assert line.startswith("gull.nc:9:")
    assert "Lift to Z 15 mm before it." in line
    code, out, _ = gclint("why", "rapid-below-clamps", "--pack", "ours.toml")
    assert code == 0
    assert "A bit that meets a clamp" in " ".join(out.split())


def test_a_rule_that_its_examples_contradict_is_refused(here: Path, gclint: Gclint) -> None:
    write_files(DOCS / "shop-packs.md", here)
    pack = here / "ours.toml"
    pack.write_text(pack.read_text().replace('value = "15 mm"', 'value = "16 mm"'))
    assert gclint("pack", "check", "ours.toml")[0] == 1


def test_the_readme_shows_what_its_first_command_prints(
    gclint: Gclint, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(ROOT)
    monkeypatch.setenv("COLUMNS", "80")
    text = (ROOT / "README.md").read_text(encoding="utf-8")
    (shown,) = [block for kind, block in FENCE.findall(text) if kind == "text"]
    assert shown in gclint("check", "sample_programs/tide-ring/tide-ring.nc")[1]


NOT_RUN = {"watch": "goes on until it is stopped", "editor": "waits for an editor"}
OF_ITS_OWN = {"test-cuts.md": "tests/trial/test_tutorial.py runs it"}


def workshop(folder: Path) -> None:
    """The folders and files that the pages take for granted, in a git folder with a revision to differ from."""
    samples = ROOT / "sample_programs"
    shutil.copytree(samples, folder / "sample_programs")
    for each in ("jobs", "old"):
        (folder / each).mkdir()
        shutil.copy(samples / "bench-router.toml", folder / each / "shop.toml")
        shutil.copy(samples / "bollard-row" / "bollard-row.nc", folder / each)  # has findings without a material
    shutil.copy(samples / "tide-ring" / "tide-ring.nc", folder / "sign.nc")
    run = ["git", "-c", "user.name=Maren", "-c", "user.email=maren@lowtide.invalid"]
    for words in (["init", "-q"], ["add", "-A"], ["commit", "-qm", "As it is"],
                  ["update-ref", "refs/remotes/origin/main", "HEAD"]):  # fmt: skip
        subprocess.run([*run, *words], cwd=folder, check=True, capture_output=True)
    shutil.copy(samples / "tide-ring" / "tide-ring.nc", folder / "jobs")  # differs from the revision
    (folder / "bin").mkdir()
    script = folder / "bin" / "gclint"
    script.write_text(f'#!/bin/sh\nexec "{sys.executable}" -m gclint "$@"\n')
    script.chmod(0o755)


@pytest.mark.slow
@pytest.mark.skipif(not shutil.which("bash") or not shutil.which("git"), reason="needs bash and git")
@pytest.mark.parametrize("path", [path for path in TEXTS if path.name not in OF_ITS_OWN], ids=name)
def test_every_command_of_a_page_runs(path: Path, tmp_path: Path) -> None:
    workshop(tmp_path)
    write_files(path, tmp_path)
    text = re.sub(r"<!-- command: \w+ -->\s*```sh.*?```", "", path.read_text(encoding="utf-8"), flags=re.DOTALL)
    blocks = [line for kind, block in FENCE.findall(text) if kind == "sh" for line in lines_of(block)]
    path_of = f"{tmp_path / 'bin'}{os.pathsep}{os.environ['PATH']}"
    environment = {**os.environ, "PATH": path_of, "PYTHONPATH": str(ROOT)}
    where: dict[str, Any] = {"cwd": tmp_path, "env": environment, "timeout": 120}
    for line in blocks:
        if line.startswith("cp "):
            subprocess.run(["bash", "-c", line], check=True, **where)
        if not line.startswith("gclint ") or line.split()[1] in NOT_RUN:
            continue
        done = subprocess.run(["bash", "-c", line], capture_output=True, text=True, check=False, **where)
        assert done.returncode in (0, 1), f"{line}\n{done.stderr}"
        assert done.stdout or done.stderr or "--out" in line, line
    for kind, block in FENCE.findall(text):
        if kind == "python":
            subprocess.run([sys.executable, "-c", block], check=True, capture_output=True, **where)
