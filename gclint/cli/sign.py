"""`gclint sign`"""

from __future__ import annotations

import click


@click.command(short_help="Note in the job file that you have looked at a program.")
@click.argument("program", metavar="PROGRAM")
@click.option("--by", default="", metavar="NAME", help="Who has looked at it.")
@click.option("--job", metavar="FILE", help="The job file (usual: the one that check finds).")
def sign(program: str, by: str, job: str | None) -> int:
    """Note in the job file that somebody has looked at PROGRAM, at what is accepted, taken as given and not judged.

    The note holds the fingerprints of the program and of all that is declared in files. It is void as soon as one of
    them changes; `gclint check --for instructor` says whether it stands. Anybody can write it: it is no proof of
    identity. What is graded "Do not run" must be mended or accepted first. The rest of the file stays as it is.

    \b
    An example from the Lowtide workshop (an invented one):
      gclint sign tide-dial.nc --by "R. Okafor"
    """
    import datetime
    from pathlib import Path

    from gclint.atomic_file import write_whole
    from gclint.check import run
    from gclint.cli.options import options_of
    from gclint.digest.sheet_words import short_fingerprint
    from gclint.digest.words import count
    from gclint.folder.source import path_of, read_bytes, shown_as
    from gclint.problem import Problem
    from gclint.setup.signed import signed_text
    from gclint.toml.file import read_text

    by = by.strip()
    if not by.isprintable():
        raise Problem("--by is one line of text that can be printed")
    name = shown_as(program)
    done = run(read_bytes(program), name, options_of(None, (), None, None, job), path_of(program))
    if done.tables is None or done.failed:
        raise Problem("this program could not be checked to its end, so there is nothing to sign", program)
    setup, checked = done.tables.setup, done.checked
    file = next((Path(each.path) for each in setup.used if each.what == "job file"), None)
    if file is None:
        raise Problem("a signature is kept in the job file, and there is none: gclint job new writes one", program)
    if file.is_symlink():
        raise Problem("the job file is a link; name the file itself with --job", str(file))
    halts = [each for each in checked.findings if each.grade == "halt" and each.accepted is None]
    if halts:
        said = f'{count(len(halts), "finding")} graded "Do not run", the first on line {halts[0].worst_line}'
        raise Problem(f"not signed: {said}; mend or accept first what must not run", program)
    before = read_text(file, "job file")
    made = signed_text(before, str(file), setup, name, checked.fingerprint, by, datetime.date.today())
    ends = "\r\n" if b"\r\n" in file.read_bytes() else "\n"  # as the file has them
    write_whole(file, made.replace("\n", ends).encode("utf-8"))
    who = f" by {by}" if by else ""
    click.echo(f"Signed{who}: {name}, fingerprint {short_fingerprint(checked.fingerprint)}, in {file}.")
    open_ = sum(each.accepted is None for each in checked.findings)
    if open_:
        click.echo(f"Open when it was signed: {count(open_, 'finding')}.")
    return 0
