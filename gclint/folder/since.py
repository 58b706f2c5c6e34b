"""Which programs of a git folder a change concerns: their own bytes, their declarations, or what they call."""

from __future__ import annotations

import os
import re
import subprocess
from collections.abc import Sequence
from pathlib import Path

from gclint.folder.outcome import Source
from gclint.folder.source import STANDARD_INPUT, read_bytes
from gclint.problem import Problem
from gclint.setup.declare import Options, declare
from gclint.setup.order import order_of

PATIENCE = 120.0  # s that git may take
LONGEST_SAID = 200  # characters of what git says
# Nothing that a folder configures is run: no watcher of files, no other difference program.
SETTINGS = ("-c", "core.fsmonitor=false", "-c", "core.quotePath=false")
OF_A_HOOK = ("GIT_DIR", "GIT_WORK_TREE", "GIT_INDEX_FILE", "GIT_PREFIX")  # git tells hooks; we find our own way
CALLS = re.compile(rb"M\s*98(?!\d)|G\s*6[56](?!\d)|O\s*<?\w+>?\s*CALL", re.IGNORECASE)


def changed(
    named: Sequence[str], sources: Sequence[Source], revision: str, options: Options, tracked: bool = False
) -> list[Source]:
    """Those of `sources` that a change since `revision` may concern, in their order; `tracked`: of those git keeps.

    That is a program that differs from the revision, is not in it or is not known to git; one that a changed
    declaration belongs to (in its folder or above, or named by its job or shop); and one that calls subprograms, where
    a file of its folder changed. Files that git is told to leave out are not looked at. Raises Problem where there is
    no git, no git folder or no such revision.
    """
    differing: set[str] = set()
    kept: set[str] = set()
    for top in dict.fromkeys(_top(name) for name in named if name != STANDARD_INPUT):
        differing |= _differing(top, revision, tracked)
        kept |= _paths(top, "ls-files", "-z", "--full-name") if tracked else set()
    if tracked:
        sources = [source for source in sources if os.path.realpath(source.name) in kept]
    folders = {str(Path(path).parent) for path in differing}
    declarations = {path for path in differing if path.endswith(".toml")}
    used: dict[Path, bool] = {}
    return [source for source in sources if _concerned(source, differing, folders, declarations, used, options)]


def _concerned(
    source: Source, differing: set[str], folders: set[str], declarations: set[str], used: dict[Path, bool],
    options: Options,
) -> bool:
    if source.name == STANDARD_INPUT:
        return True
    path = Path(os.path.realpath(source.name))
    if str(path) in differing:
        return True
    folder = Path(source.name).parent
    if declarations and folder not in used:
        used[folder] = _declared_in(declarations, source.name, options)
    if used.get(folder, False) or _cut_before(source.name, options, differing):
        return True
    return str(path.parent) in folders and _calls(source.name)


def _declared_in(declarations: set[str], name: str, options: Options) -> bool:
    """Whether one of the files a program's declarations name is among these."""
    from gclint import disk

    with disk.listening() as heard:
        try:
            declared = declare(options, name)
        except Problem:  # the check will say it
            return True
    asked = {os.path.realpath(question[1]) for question in heard}
    files = [file for file in (declared.job_file, declared.shop_file) if file]
    homes = {Path(os.path.realpath(file.path)).parent for file in files}
    named = (declared.job and declared.job.material, declared.shop and declared.shop.machine)
    cards = [each if isinstance(each, str) else each.controller for each in named if each]
    asked |= {os.path.realpath(home / card) for home in homes for card in cards}
    beside = any(Path(path).parent in homes for path in declarations)  # a card of the shop's own
    return beside or not asked.isdisjoint(declarations)


def _cut_before(name: str, options: Options, differing: set[str]) -> bool:
    """Whether a program that cuts the blank before this one is among these."""
    try:
        order = order_of(declare(options, name))
    except Problem:
        return True
    return order is not None and any(os.path.realpath(step.path) in differing for step in order.steps[: order.at])


def _calls(name: str) -> bool:
    try:
        return CALLS.search(read_bytes(name)) is not None
    except Problem:
        return True


def _top(name: str) -> str:
    """The folder of the whole git tree that a file or a folder belongs to."""
    folder = name if Path(name).is_dir() else str(Path(name).parent)
    try:
        done = _git(folder, "rev-parse", "--show-toplevel")
    except FileNotFoundError:
        raise Problem("--differs-from needs the git command, which is not here") from None
    if done.returncode:
        raise Problem(f"--differs-from needs a folder that git keeps: {_said(done)}", name)
    return os.path.realpath(os.fsdecode(done.stdout.rstrip(b"\n")))


def _differing(top: str, revision: str, tracked: bool) -> set[str]:
    """Real paths of what differs from the revision: changed, new, gone, and, unless `tracked`, not known to git."""
    commit = _commit(top, revision)
    paths = _paths(top, "diff", "--name-only", "-z", "--no-renames", "--no-ext-diff", "--no-textconv", commit, "--")
    if tracked:
        return paths
    return paths | _paths(top, "ls-files", "-z", "--others", "--exclude-standard", "--full-name")


def _paths(top: str, *arguments: str) -> set[str]:
    """Real paths of the files that a command of git lists."""
    done = _git(top, *arguments)
    if done.returncode:
        raise Problem(f"git cannot say what has changed: {_said(done)}", top)
    return {os.path.realpath(Path(top) / os.fsdecode(name)) for name in done.stdout.split(b"\0") if name}


def _commit(top: str, revision: str) -> str:
    """What names the revision for git; before the first commit, HEAD is the tree that holds nothing."""
    known = _git(top, "rev-parse", "--verify", "--quiet", "--end-of-options", f"{revision}^{{commit}}")
    if known.returncode and revision == "HEAD":
        known = _git(top, "hash-object", "-t", "tree", "--stdin")
    if known.returncode or not revision:
        raise Problem(f'git knows no revision "{revision[:80]}" in {top}', "--differs-from")
    return os.fsdecode(known.stdout.strip())


def _git(folder: str, *arguments: str) -> subprocess.CompletedProcess[bytes]:
    here = {name: value for name, value in os.environ.items() if name not in OF_A_HOOK}
    quiet = {"GIT_OPTIONAL_LOCKS": "0", "GIT_TERMINAL_PROMPT": "0", "LC_ALL": "C"}
    try:
        return subprocess.run(
            ["git", *SETTINGS, "-C", folder, *arguments], env=here | quiet, stdin=subprocess.DEVNULL,
            capture_output=True, timeout=PATIENCE, check=False,
        )  # fmt: skip
    except subprocess.TimeoutExpired:
        raise Problem(f"git did not answer within {PATIENCE:.0f} s", folder) from None
    except ValueError:  # a NUL in the revision
        raise Problem("this is no name of a revision", "--differs-from") from None


def _said(done: subprocess.CompletedProcess[bytes]) -> str:
    text = done.stderr.decode("utf-8", "replace").strip().removeprefix("fatal: ")
    return text[:LONGEST_SAID] or f"it ended with {done.returncode}"
