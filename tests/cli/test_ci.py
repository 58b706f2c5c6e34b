"""What stands ready for CI is run: the hooks by their framework, the command lines of the examples as they stand."""

from __future__ import annotations

import json
import os
import re
import shutil
import subprocess
import sys
import tomllib
from pathlib import Path
from typing import Any

import jsonschema
import pytest
import yaml
from lxml import etree

from gclint import __version__
from tests.recipe import copied, steps

ROOT = Path(__file__).parents[2]
EXAMPLES = ROOT / ".ci" / "examples"
SCHEMAS = ROOT / "tests" / "published" / "schemas"
JOBS = ("gauge-board", "net-needle", "tide-ring")  # of the samples; one is not to be run, two are to change

pytestmark = pytest.mark.skipif(sys.platform == "win32", reason="needs sh")


@pytest.fixture
def shell(tmp_path: Path) -> dict[str, str]:
    """An environment in which `gclint` is this very gclint."""
    bin_ = tmp_path / "bin"
    bin_.mkdir()
    script = bin_ / "gclint"
    script.write_text(f"#!{sys.executable}\nfrom gclint.cli.main import main\nmain()\n")
    script.chmod(0o755)
    own = {name: value for name, value in os.environ.items() if not name.startswith("GIT_")}
    return own | {
        "PATH": f"{bin_}{os.pathsep}{os.environ['PATH']}", "PYTHONPATH": str(ROOT), "GCLINT_CACHE": "none",
        "PRE_COMMIT_HOME": str(tmp_path / "pre-commit"), "GIT_CONFIG_GLOBAL": os.devnull,
    }  # fmt: skip


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    """A folder as a code host checks it out: programs below jobs/."""
    home = tmp_path / "checked out"
    (home / "jobs").mkdir(parents=True)
    samples = ROOT / "sample_programs"
    for name in JOBS:
        shutil.copytree(samples / name, home / "jobs" / name)
    for name in ("bench-router.toml", "small-mill.toml", "tool-room-mill.toml"):
        shutil.copy(samples / name, home / "jobs" / name)
    return home


def read(file: Path) -> Any:
    return yaml.safe_load(file.read_text())


def run(line: str, home: Path, environment: dict[str, str]) -> subprocess.CompletedProcess[str]:
    return subprocess.run(
        ["sh", "-ec", line], cwd=home, env=environment, capture_output=True, text=True, check=False, timeout=300
    )


def holds_what_it_names(home: Path, sarif: str, junit: str, pages: str) -> None:
    log = json.loads((home / sarif).read_text())
    schema = json.loads((SCHEMAS / "sarif-2.1.0.json").read_text())
    jsonschema.Draft4Validator(schema, format_checker=jsonschema.FormatChecker()).validate(log)
    [made] = log["runs"]
    places = {
        result["locations"][0]["physicalLocation"]["artifactLocation"]["uri"] for result in made["results"]
    }
    assert places == {f"jobs/{name}/{name}.nc" for name in JOBS}  # as the host knows the files
    assert made["invocations"][0]["exitCode"] == 1
    suites = etree.parse(home / junit)
    etree.XMLSchema(etree.parse(SCHEMAS / "junit-10.xsd")).assertValid(suites)
    assert len(suites.findall("testsuite")) == len(JOBS)
    assert int(suites.getroot().get("failures")) > 0
    listed = (home / pages / "index.html").read_text()
    for name in JOBS:
        assert "figure-root" in (home / pages / f"{name}.html").read_text()
        assert f"{name}.html" in listed


def pinned(install: str, environment: dict[str, Any]) -> None:
    """The line installs the version that this is, and nothing that may be another tomorrow."""
    assert install == 'python -m pip install "$GCLINT"'
    assert environment["GCLINT"] == f"gclint=={__version__}"


@pytest.mark.slow
def test_the_example_for_github(folder: Path, shell: dict[str, str]) -> None:
    made = read(EXAMPLES / "github.yml")
    [job] = made["jobs"].values()
    assert made["permissions"]["security-events"] == "write"
    uses = [step for step in job["steps"] if "uses" in step]
    assert all(re.fullmatch(r"[\w/-]+@v\d+\.\d+\.\d+", step["uses"]) for step in uses)
    install, check = [step["run"] for step in job["steps"] if "run" in step]
    pinned(install, made["env"])
    done = run(check, folder, shell | made["env"])
    assert done.returncode == 1, done.stderr
    assert "DO NOT RUN" in done.stdout  # the log of the step shows it
    sarif = next(step["with"]["sarif_file"] for step in uses if "sarif_file" in step.get("with", {}))
    pages, junit = next(step["with"]["path"].split() for step in uses if "upload-artifact" in step["uses"])
    holds_what_it_names(folder, sarif, junit, pages)
    after = job["steps"][job["steps"].index(next(step for step in job["steps"] if step.get("run") == check)) + 1 :]
    assert after
    assert all(step["if"] == "always()" for step in after)  # also when something was found


def test_the_example_that_builds_wheels() -> None:
    """It names every kind of system, and builds what pyproject.toml says."""
    made = read(EXAMPLES / "wheels.yml")
    hosts = {host.partition("-")[0] for job in made["jobs"].values() for host in job["strategy"]["matrix"]["os"]}
    assert hosts == {"ubuntu", "windows", "macos"}
    uses = [step["uses"] for job in made["jobs"].values() for step in job["steps"] if "uses" in step]
    assert all(re.fullmatch(r"[\w/-]+@v\d+\.\d+\.\d+", each) for each in uses)
    settings = tomllib.loads((ROOT / "pyproject.toml").read_text())
    oldest = settings["project"]["requires-python"].removeprefix(">=")
    assert oldest in made["jobs"]["test"]["strategy"]["matrix"]["python"]
    assert f"cp{oldest.replace('.', '')}-*" in settings["tool"]["cibuildwheel"]["build"].split()


@pytest.mark.slow
def test_the_example_for_gitlab(folder: Path, shell: dict[str, str]) -> None:
    [job] = read(EXAMPLES / "gitlab.yml").values()
    assert re.fullmatch(r"python:\d+\.\d+\.\d+-[\w-]+", job["image"])
    [install], [check] = job["before_script"], job["script"]
    pinned(install, job["variables"])
    done = run(check, folder, shell | job["variables"])
    assert done.returncode == 1, done.stderr
    kept = job["artifacts"]
    assert kept["when"] == "always"
    pages, sarif = kept["paths"]
    holds_what_it_names(folder, sarif, kept["reports"]["junit"], pages)
    issues = json.loads((folder / kept["reports"]["codequality"]).read_text())
    assert {issue["location"]["path"] for issue in issues} == {f"jobs/{name}/{name}.nc" for name in JOBS}


def test_reports_are_written_where_a_program_cannot_be_read(folder: Path, shell: dict[str, str]) -> None:
    shutil.rmtree(folder / "jobs")
    (folder / "jobs").mkdir()
    (folder / "jobs" / "tray.nc").write_bytes(b"")
    check = read(EXAMPLES / "gitlab.yml")["programs"]["script"][0]
    assert run(check, folder, shell).returncode == 2
    assert json.loads((folder / "gclint.sarif").read_text())["runs"][0]["invocations"][0]["exitCode"] == 2
    assert etree.parse(folder / "gclint.xml").findall("testsuite/testcase/error")


def git(home: Path, environment: dict[str, str], *arguments: str) -> subprocess.CompletedProcess[str]:
    who = ("-c", "user.name=Ida", "-c", "user.email=ida@lowtide.invalid", "-c", "commit.gpgsign=false")
    return subprocess.run(
        ["git", *who, *arguments], cwd=home, env=environment, capture_output=True, text=True, check=False
    )


def hooks(home: Path, environment: dict[str, str], chosen: str) -> None:
    """The folder as one in which the hook is installed, by its definition but in the present environment."""
    [definition] = [hook for hook in read(ROOT / ".pre-commit-hooks.yaml") if hook["id"] == chosen]
    config = {"repos": [{"repo": "local", "hooks": [definition | {"language": "system"}]}]}
    (home / ".pre-commit-config.yaml").write_text(yaml.safe_dump(config))
    assert git(home, environment, "init", "-q").returncode == 0
    install = [sys.executable, "-m", "pre_commit", "install"]
    subprocess.run(install, cwd=home, env=environment, check=True, capture_output=True)


@pytest.mark.slow
@pytest.mark.skipif(shutil.which("git") is None, reason="git is not here")
@pytest.mark.parametrize("chosen", ["gclint", "gclint-folder"])
def test_a_commit_is_stopped_and_let_through(folder: Path, shell: dict[str, str], chosen: str) -> None:
    """The first commit of a new folder, then one that leaves a program and its job as they ought to be."""
    hooks(folder, shell, chosen)
    git(folder, shell, "add", ".pre-commit-config.yaml", "jobs/tide-ring", "jobs/bench-router.toml")
    stopped = git(folder, shell, "commit", "-m", "Add the tide ring")
    assert stopped.returncode == 1, stopped.stderr
    assert "straight-plunge" in stopped.stdout + stopped.stderr
    assert "net-needle" not in stopped.stdout + stopped.stderr  # it is not staged
    accept = '\n[[accept]]\nrule = "straight-plunge"\nbecause = "the holes are drilled by hand first"\n'
    job = folder / "jobs" / "tide-ring" / "job.toml"
    job.write_text(job.read_text() + accept)
    git(folder, shell, "add", "jobs/tide-ring")
    passed = git(folder, shell, "commit", "-m", "Add the tide ring")
    assert passed.returncode == 0, passed.stdout + passed.stderr
    assert "Passed" in passed.stdout + passed.stderr
    if chosen == "gclint-folder":  # a change of the job alone concerns its program
        job.write_text(job.read_text().replace(accept, ""))
        git(folder, shell, "add", "-u")
        assert git(folder, shell, "commit", "-m", "Accept nothing").returncode == 1


def test_the_hooks_are_well_defined() -> None:
    from pre_commit.clientlib import load_manifest

    defined = load_manifest(ROOT / ".pre-commit-hooks.yaml")
    assert {hook["id"] for hook in defined} == {"gclint", "gclint-folder"}
    [repo] = read(EXAMPLES / "pre-commit-config.yaml")["repos"]
    assert repo["rev"] == f"v{__version__}"
    assert {hook["id"] for hook in repo["hooks"]} <= {hook["id"] for hook in defined}
    files = next(hook["files"] for hook in defined if hook["id"] == "gclint")
    from gclint.folder.find import SURE_ENDINGS

    assert all(re.search(files, f"jobs/part{ending}") for ending in SURE_ENDINGS)
    assert not re.search(files, "jobs/notes.txt")


def test_the_container_recipe_copies_what_the_build_needs(tmp_path: Path) -> None:
    """The gate runs its steps (tests/recipe.py); here, that what it copies is whole and starts gclint."""
    build, last = steps()
    copied(build, tmp_path)
    project = tomllib.loads((tmp_path / "pyproject.toml").read_text())
    folders = {"gclint", project["tool"]["setuptools"]["package-dir"]["gclint.rules"]}
    assert folders == {"gclint", "rules"}
    for folder in folders:  # every package of it: setup.py looks for them
        inner = {path.parent.relative_to(ROOT) for path in (ROOT / folder).rglob("__init__.py")}
        assert all((tmp_path / each).is_dir() for each in {*inner, Path(folder)})
    assert all((tmp_path / name).is_file() for name in ["README.md", "LICENSE", "setup.py"])
    assert dict(last)["ENTRYPOINT"] == '["gclint"]'
    assert project["project"]["scripts"]["gclint"] == "gclint.cli.main:main"
    assert dict(last)["USER"] != "root"
    assert all(re.match(r"python:\d+\.\d+\.\d+-", dict(stage)["FROM"]) for stage in (build, last))
    kept = [line[1:] for line in (ROOT / ".dockerignore").read_text().splitlines() if line.startswith("!")]
    named = [name for word, rest in build if word == "COPY" for name in rest.split()[:-1]]
    assert sorted(kept) == sorted(named)


@pytest.mark.slow
def test_one_run_tells_more_than_one_form(folder: Path, shell: dict[str, str]) -> None:
    both = run("gclint check jobs --also json=all.json --also text=all.txt --as sarif", folder, shell)
    alone = {form: run(f"gclint check jobs --as {form}", folder, shell).stdout for form in ("json", "text", "sarif")}
    assert (folder / "all.json").read_text() == alone["json"]
    assert (folder / "all.txt").read_text() == alone["text"]
    assert both.stdout == alone["sarif"]


@pytest.mark.parametrize(
    ("also", "says"),
    [
        ("pdf=x", "write a form"), ("sarif=", "write a form"), ("json=nowhere/x", "does not exist"),
        ("page=jobs/bench-router.toml", "need a folder"), ("json=jobs/tide-ring/tide-ring.nc", "never overwritten"),
        ("json=x --also sarif=./x", "two reports"), ("json=x --accept-all-as so --into x.toml", "--also"),
    ],
)  # fmt: skip
def test_what_cannot_be_told_as_well(folder: Path, shell: dict[str, str], also: str, says: str) -> None:
    done = run(f"gclint check jobs --also {also}", folder, shell)
    assert done.returncode == 2
    assert says in done.stderr
    assert len(done.stderr.splitlines()) == 1
    assert done.stdout == ""


@pytest.mark.skipif(shutil.which("git") is None, reason="git is not here")
def test_reports_are_written_where_nothing_is_concerned(folder: Path, shell: dict[str, str]) -> None:
    git(folder, shell, "init", "-q")
    git(folder, shell, "add", "-A")
    assert git(folder, shell, "commit", "-qm", "As it was").returncode == 0
    line = "gclint check jobs --differs-from HEAD --also json=all.json --also page=pages/ --also junit=all.xml"
    done = run(line, folder, shell)
    assert done.returncode == 0, done.stderr
    assert json.loads((folder / "all.json").read_text())["programs"] == []
    assert (folder / "pages" / "index.html").exists()
    assert etree.parse(folder / "all.xml").findall("testsuite") == []
