"""`gclint trial grade`"""

from __future__ import annotations

import datetime
import sys
from pathlib import Path
from typing import TYPE_CHECKING, Any

import click

if TYPE_CHECKING:
    from gclint.trial.plan import Cut, Plan


@click.command(short_help="Enter what was seen at each cut.")
@click.argument("plan", metavar="PLAN")
@click.argument("words", nargs=-1, metavar="[NAME=WORD]...")
@click.option("--cut", "number", type=int, metavar="NUMBER", help="The cut that the words are about, or to begin with.")
@click.option("--who", metavar="NAME", help="Who grades; stands beside every cut that is graded now.")
@click.option("--wear", metavar="TEXT", help='The tool before these cuts, e.g. "new" or "two sheets of ply".')
@click.option("--left", is_flag=True, help="Only say which cuts are graded and which are left.")
def grade(plan: str, words: tuple[str, ...], number: int | None, who: str | None, wear: str | None, left: bool) -> int:
    """Enter what was seen at each cut of PLAN (plan.toml, or its folder) into grades.toml beside it.

    Without words it asks: the first cut scale by scale, with a drawing of each answer, then a line for each cut, such
    as 1211111 or good. Enter skips a cut until the end, u takes the last one back, ? shows the scales. Every answer is
    saved at once: end with q or Ctrl-C at any point and go on later. The file can be filled in an editor just as well.

    \b
    With words it writes them and ends:
      gclint trial grade . --cut 7 chipping=none dust=chips melting=none
      gclint trial grade . --cut 7 speed=10650 note="loud at the curve" photos=IMG_12.jpg
    A word is taken out again by an empty one: chipping=
    The true speed that was measured in a cut is speed=REV/MIN.
    """
    from gclint.problem import Problem
    from gclint.trial.grading import grades_path, plan_path, said_of
    from gclint.trial.plan_file import read_plan

    path = plan_path(plan)
    planned = read_plan(path)
    target = grades_path(path)
    always = {key: value for key, value in (("who", who), ("wear", wear)) if value is not None}
    if left:
        if words or always:
            raise click.UsageError("--left only says what is left; leave the words away")
        click.echo(_account(planned, target))
        return 0
    if words:
        if number is None:
            raise Problem("say which cut the words are about: --cut NUMBER")
        _save(planned, target, number, {**always, **said_of(words)})
        click.echo(_account(planned, target))
        return 0
    return _ask_all(planned, target, number, always)


def _save(plan: Plan, target: Path, number: int, said: dict[str, Any]) -> None:
    """Into the file as it stands on the disk now, whole or not at all. Raises Problem."""
    from gclint.atomic_file import write_unchanged
    from gclint.trial.grading import added, grades_now

    text, before = grades_now(plan, target)
    made = added(text, target, plan, number, said, datetime.date.today())
    if before is None or made != text:
        write_unchanged(made.encode("utf-8"), target, before)


def _account(plan: Plan, target: Path) -> str:
    from gclint.trial.grading import grades_now, progress

    done, half, left = progress(grades_now(plan, target)[0], target, plan)
    told = [f"{target}: {len(done)} of {len(done) + len(half) + len(left)} cuts graded."]
    for cuts, says in ((half, "Begun"), (left, "Not graded")):
        if cuts:
            told.append(f"{says}: {', '.join(str(cut.number) for cut in cuts)}.")
    return "\n".join(told)


def _ask_all(plan: Plan, target: Path, number: int | None, always: dict[str, Any]) -> int:
    """Every cut that is not graded, from `number` on where one is named; ends with an account."""
    from gclint.problem import Problem
    from gclint.trial.grading import grades_now, progress
    from gclint.trial.plan_file import cut_known

    done, half, left = progress(grades_now(plan, target)[0], target, plan)
    if number is not None and plan.cut_of(number) is None:
        raise Problem(f"the plan has no cut {number}; {cut_known(plan)}", "--cut")
    made = {cut.number for cut in (*done, *half, *left)}
    if number is not None and number not in made:
        raise Problem(f"cut {number} is risky and was not confirmed, so the program does not make it", "--cut")
    finished = {cut.number for cut in done}
    cuts = [cut for cut in plan.cut if cut.number in made and cut.number not in finished]
    if number is not None:
        cuts = [cut for cut in plan.cut if cut.number in made and cut.number >= number]
    if not cuts:
        click.echo(_account(plan, target))
        return 0
    ended = _grade_all(plan, target, cuts, always)
    click.echo("")
    click.echo(_account(plan, target))
    if ended:
        click.echo("All that was answered is in the file; the same command goes on from here.")
    return 0


def _grade_all(plan: Plan, target: Path, cuts: list[Cut], always: dict[str, Any]) -> bool:
    """The first cut scale by scale, then a line for each; what is skipped comes once more at the end. True: the person
    ended before all was asked."""
    from gclint.trial.ask import headline

    before: Cut | None = None
    said, skipped, at = dict(always), set[int](), 0
    undo: list[tuple[int, str, str]] = []  # (place in the queue, the file before, the file after)
    queue = list(cuts)
    while at < len(queue):
        cut = queue[at]
        click.echo(f"\n{headline(plan, cut)}\n")
        first = ["who"] if before is None else []
        if before is None or before.tool != cut.tool:
            first.append("wear")
            said = {name: value for name, value in said.items() if name != "wear" or name in always}
        if not all(_free(name, cut, said) for name in first if name not in always):
            return True
        kept = _text(plan, target)
        did = ("done" if _ask(plan, target, cut, said) else "ended") if before is None else \
            _line(plan, target, cut, said, bool(undo), at == 1)  # fmt: skip
        before = cut
        if did == "ended":
            return True
        if did == "undo":
            at = _undone(plan, target, undo, at)
            continue
        if did == "skipped" and cut.number not in skipped:
            skipped.add(cut.number)
            queue.append(cut)
        if did == "done":
            undo.append((at, kept, _text(plan, target)))
        at += 1
    return False


def _text(plan: Plan, target: Path) -> str:
    from gclint.trial.grading import grades_now

    return grades_now(plan, target)[0]


def _undone(plan: Plan, target: Path, undo: list[tuple[int, str, str]], at: int) -> int:
    """Put the file back as it was before the last cut was graded; the cut to go on from."""
    from gclint.atomic_file import write_unchanged
    from gclint.trial.grading import grades_now

    place, kept, after = undo.pop()
    text, held = grades_now(plan, target)
    if text != after:
        click.echo("The file was changed meanwhile, so nothing is taken back.")
        return at
    write_unchanged(kept.encode("utf-8"), target, held)
    click.echo("Taken back.")
    return place


def _line(plan: Plan, target: Path, cut: Cut, always: dict[str, Any], can_undo: bool, explain: bool) -> str:
    """A cut's grades in one line: "done", "skipped", "undo" or "ended"."""
    from gclint.problem import Problem
    from gclint.trial.ask import HELP, legend, line_prompt, short_prompt
    from gclint.trial.grading import grade_of, line_of

    grade = grade_of(_text(plan, target), target, plan, cut.number)
    click.echo(line_prompt(grade) if explain else short_prompt(grade))
    while True:
        answer = _answer()
        word = (answer or "").lower()
        if answer is None or word in ("q", "quit"):
            return "ended"
        if word in ("", "s", "skip"):
            return "skipped"
        if word in HELP:
            click.echo(f"{legend()}\n{line_prompt(grade)}")
        elif word in ("u", "undo"):
            if can_undo:
                return "undo"
            click.echo("Nothing was graded yet that could be taken back.")
        elif word == "each":
            return "done" if _ask(plan, target, cut, always) else "ended"
        else:
            try:
                said = line_of(answer)
            except Problem as problem:
                click.echo(problem.says)
                continue
            return "done" if _saved(plan, target, cut.number, {**always, **said}) else "ended"


def _ask(plan: Plan, target: Path, cut: Cut, always: dict[str, Any]) -> bool:
    """The scales of one cut, one by one; False: the person ends for today."""
    from gclint.problem import Problem
    from gclint.trial.ask import HELP, prompt, question
    from gclint.trial.grading import grade_of, grades_now, value_of
    from gclint.trial.plan import FAULTS
    from gclint.trial.scales import scales

    at = 0
    while at < len(FAULTS):
        fault = FAULTS[at]
        given = getattr(grade_of(grades_now(plan, target)[0], target, plan, cut.number), fault)
        click.echo(question(scales()[fault], given))
        while True:
            answer = _answer()
            if answer is None or answer.lower() in ("q", "quit"):
                return False
            if answer.lower() in ("b", "back"):
                at = max(0, at - 1)
                break
            if not answer:
                at += 1
                break
            if answer.lower() in HELP:
                click.echo(question(scales()[fault], given))
                continue
            try:
                word = value_of(fault, answer)
            except Problem as problem:
                click.echo(f"{problem}\n{prompt(given)}")
                continue
            if not _saved(plan, target, cut.number, {**always, fault: word}):
                return False
            at += 1
            break
        click.echo("")
    last: dict[str, Any] = {}
    asked = _free("speed", cut, last) and _free("note", cut, last)
    if last and not _saved(plan, target, cut.number, last):
        return False
    return asked


def _free(name: str, cut: Cut, said: dict[str, Any]) -> bool:
    """One thing that is on no scale, into `said`; nothing where the answer is empty. False: the person ends."""
    from gclint.problem import Problem
    from gclint.trial.ask import FREE
    from gclint.trial.grading import value_of

    while True:
        click.echo(FREE[name].format(tool=cut.tool))
        answer = _answer()
        if answer is None or answer.lower() in ("q", "quit"):
            return False
        if not answer:
            return True
        try:
            said["measured_speed" if name == "speed" else name] = value_of(name, answer)
        except Problem as problem:
            click.echo(str(problem))
        else:
            return True


def _saved(plan: Plan, target: Path, number: int, said: dict[str, Any]) -> bool:
    """Saves an answer; where somebody has broken the file meanwhile, says where and tries again when asked to."""
    from gclint.problem import Problem

    while True:
        try:
            _save(plan, target, number, said)
        except Problem as problem:
            click.echo(f"Not saved: {problem}\nMend it and press Enter to save this answer, or q to end without it:")
            answer = _answer()
            if answer is None or answer.lower() in ("q", "quit"):
                return False
        else:
            return True


def _answer() -> str | None:
    """A line from the keyboard; None at its end or at Ctrl-C."""
    click.echo("> ", nl=False)
    sys.stdout.flush()
    try:
        line = sys.stdin.readline()
    except KeyboardInterrupt:
        click.echo("")
        return None
    if not line:
        click.echo("")
        return None
    return line.strip()
