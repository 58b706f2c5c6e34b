"""`gclint check --accept-all-as "reason" --into FILE`: writes today's findings as accepted into a job file."""

from __future__ import annotations

import sys
from collections.abc import Callable
from functools import wraps
from pathlib import Path
from typing import TYPE_CHECKING, Any, NamedTuple

import click

from gclint.problem import Problem

if TYPE_CHECKING:
    from gclint.judge.accept_all import Known
    from gclint.run import Run
    from gclint.setup.declare import Declared, Options
    from gclint.tables.finding import Finding


class Acceptance(NamedTuple):
    """What the options say; `because` None: nothing is to be accepted."""

    because: str | None
    into: str | None
    add: bool
    by: str | None


def acceptance_options(command: Callable[..., Any]) -> Callable[..., Any]:
    """Adds the options and hands them over as one argument, `acceptance`."""

    @wraps(command)
    def gathered(*, accept_because: str | None, into: str | None, add: bool, by: str | None, **rest: Any) -> Any:
        return command(acceptance=Acceptance(accept_because, into, add, by), **rest)

    for option in reversed(
        (
            click.option(
                "--accept-all-as", "accept_because", metavar="REASON",
                help="Accept all that is found today, for this reason; what is graded halt stays open.",
            ),
            click.option("--into", metavar="FILE", help="The job file that --accept-all-as writes."),
            click.option(
                "--add-to-existing", "add", is_flag=True,
                help="The file of --into exists: keep it byte for byte and add the acceptances at its end.",
            ),
            click.option("--by", metavar="NAME", help="Who accepts; stands beside the reason in every report."),
        )
    ):
        gathered = option(gathered)
    return gathered


def accepting(said: Acceptance, options: Options, form: str, out: str | None) -> Accepting | None:
    """The writer of acceptances, None where none are asked for. Raises Problem before anything is checked."""
    if said.because is None:
        for given, name in ((said.into, "--into"), (said.add or None, "--add-to-existing"), (said.by, "--by")):
            if given is not None:
                raise Problem(f"{name} goes with --accept-all-as")
        return None
    if not said.because.strip():
        raise Problem("--accept-all-as needs a reason, such as \"ran well for years\"")
    if said.into is None:
        raise Problem("--accept-all-as needs the job file to write: --into FILE")
    if form != "text" or out is not None:
        raise Problem("--accept-all-as writes a job file and says what it accepted; leave --as, --out and --also away")
    target = Path(said.into)
    if target.suffix != ".toml":
        raise Problem("the name of a job file ends in .toml", said.into)
    if not target.parent.is_dir():
        raise Problem("--into lies in a folder that does not exist", said.into)
    if target.exists() and not target.is_file():
        raise Problem("--into is not a file", said.into)
    if target.is_symlink():
        raise Problem("--into is a link; name the file itself", said.into)
    if target.exists() and not said.add:
        says = "this file exists and stays as it is; --add-to-existing keeps it and adds to its end, or name another"
        raise Problem(says, said.into)
    if said.add and not target.exists():
        raise Problem("there is no such file to add to; leave --add-to-existing away to have it written", said.into)
    return Accepting(said, options, target)


class Accepting:
    """A writer as those of reports are: takes each program's result, then writes the job file and says what it did."""

    maker = None

    def __init__(self, said: Acceptance, options: Options, target: Path) -> None:
        from gclint.toml.file import read_text

        self.said, self.options, self.target = said, options, target
        self.before = target.read_bytes() if said.add else None
        if said.add:
            read_text(target, "job file")
        self.known: list[Known] = []
        self.left: list[tuple[str, Finding]] = []
        self.programs: list[str] = []
        self.declared: Declared | None = None
        self.missed_some = False

    def add(self, done: Run) -> None:
        from gclint.judge.accept_all import known

        name = self._named(done.checked.path)
        found, left = known(done.checked, name)
        self.programs.append(name)
        self.known += found
        self.left += [(done.checked.path, finding) for finding in left]

    def missed(self, problem: Problem) -> None:
        self.missed_some = True

    def left_open(self, done: Run) -> Run:
        """The run with what is accepted from now on left out: what the exit code is about."""
        from msgspec.structs import replace

        from gclint.judge.accept_all import known
        from gclint.run import Run

        checked = replace(done.checked, findings=known(done.checked, "")[1])
        return Run(checked, done.tables, done.fail_at, done.failed, done.titles, done.material_cautions)

    def text(self, code: int) -> str:
        if self.known:
            self._write()
        return self._account()

    def _named(self, path: str) -> str:
        """The program as the job file names it. Raises Problem where it cannot."""
        from gclint.setup.accept_text import relative
        from gclint.setup.declare import declare

        if path == "standard input":
            raise Problem("what comes in by standard input has no name to accept it by; give the program as a file")
        name = relative(path, self.target.parent)
        if name.startswith("../") or Path(name).is_absolute():
            raise Problem(f"a job names programs of its own folder, and {path} lies outside it", str(self.target))
        declared = declare(self.options, path)
        if self.declared is None:
            self.declared = declared
            self._suits(declared)
        elif not _same_file(_job_of(declared), _job_of(self.declared)):
            one, other = (_job_of(each) or "no job file" for each in (self.declared, declared))
            says = f"it is judged by {other}, programs before it by {one}; accept them job by job, with --job"
            raise Problem(says, path)
        return name

    def _suits(self, declared: Declared) -> None:
        """Acceptances hold for the declarations the programs were judged by: they must be those of the job file."""
        job = _job_of(declared)
        if self.before is not None and (job is None or not self.target.samefile(job)):
            by = f"by {job}" if job else "without a job file"
            says = f"the programs are judged {by}, not by this file; say --job {self.target} as well"
            raise Problem(says, str(self.target))
        if job and self.before is None and not self.target.parent.samefile(Path(job).parent):
            says = f"the programs are judged by {job}; name a file in its folder (or {job} itself, --add-to-existing)"
            raise Problem(says, str(self.target))

    def _write(self) -> None:
        from gclint.atomic_file import write_unchanged
        from gclint.setup.accept_text import job_text

        assert self.declared is not None
        before = self.before
        if before is None and self.declared.job_file is not None:  # a new job beside the one that was used, by its text
            before = Path(self.declared.job_file.path).read_bytes()
        keys, tables = self._own_keys(self.declared) if before is None else ({}, {})
        made = job_text(
            before, keys, tables, [self._accept(each) for each in self.known], [each.lines for each in self.known],
            str(self.target),
        )
        write_unchanged(made, self.target, self.before)

    def _accept(self, each: Known) -> dict[str, Any]:
        assert self.said.because is not None
        keys = {
            "rule": each.rule,
            "program": each.program,
            "tool": each.tool,
            "grade": None if each.grade == "change" else each.grade,
            "places": each.places,
            "found": each.found,
            "by": self.said.by,
            "because": self.said.because.strip(),
        }
        return {key: value for key, value in keys.items() if value is not None}

    def _own_keys(self, declared: Declared) -> tuple[dict[str, Any], dict[str, dict[str, Any]]]:
        """What a job file that stands alone must say, so that the programs are judged as they were."""
        from gclint.setup.accept_text import relative

        folder = self.target.parent
        programs = sorted(self.programs)
        keys: dict[str, Any] = {"program": programs[0] if len(programs) == 1 else programs}
        if len(programs) > 1:
            keys["one_blank"] = False  # nobody has said that they belong to one part
        tables: dict[str, dict[str, Any]] = {}
        if declared.shop_file is not None:
            keys["shop"] = relative(declared.shop_file.path, folder)
        material = declared.options.material
        if material is not None:
            keys["material"] = relative(material, folder) if material.endswith(".toml") else material
        if declared.options.dial is not None:
            keys["dial"] = declared.options.dial
        if declared.options.fail_at is not None:
            keys["fail_at"] = declared.options.fail_at
        if declared.stock is not None:
            size, corner = declared.stock
            tables["stock"] = {"size": [f"{value:g} mm" for value in size]}
            if corner is not None:
                tables["stock"]["corner"] = [f"{value:g} mm" for value in corner]
        return keys, tables

    def _again(self) -> str:
        """The options that a job file cannot hold, to be given again."""
        import shlex

        options = self.options
        again = [part for tool in options.tools for part in ("--tool", tool)]
        if self.declared is not None and self.declared.job_file is not None:
            for name in ("material", "stock", "shop", "dial"):
                value = getattr(options, name)
                again += [f"--{name}", value] if value else []
        return " ".join(shlex.quote(part) for part in again)

    def _account(self) -> str:
        from gclint import __version__
        from gclint.report.answers.accept_out import account
        from gclint.report.text.text_sheet import text_sheet_for

        paper = text_sheet_for(sys.stdout)
        account(
            paper, __version__, str(self.target), self.before is not None, self.said, self.known, self.left,
            len(self.programs), self._again(),
        )  # fmt: skip
        return paper.text


def _job_of(declared: Declared) -> str | None:
    return declared.job_file.path if declared.job_file else None


def _same_file(one: str | None, other: str | None) -> bool:
    return one == other or (one is not None and other is not None and Path(one).samefile(other))
