"""Turns the rows a rule found into findings: one per cause, with the worst place told."""

from __future__ import annotations

import numpy as np
from msgspec import Struct
from msgspec.structs import replace

from gclint.advice.change import ADVICE, Worst
from gclint.advice.words_at_fault import column_of
from gclint.columns import Column, distinct, numbered
from gclint.facts.context import Context
from gclint.facts.registry import View
from gclint.judge.certainty import rests_on
from gclint.language.evaluate import TRUE, numbers, truth, words
from gclint.language.expression import TEXT
from gclint.packs.pack import Cased, Rule
from gclint.packs.wording import chosen, in_program_units, number_of, say
from gclint.tables.finding import Beside, Change, Finding, Found, Limits, Regraded
from gclint.tables.motion import INCH, INVERSE_TIME, PER_REV
from gclint.tables.setup import GRADES, Accept, Window

MOST_LINES = 1000
EVENT_TABLES = ("changes", "dwells", "waits", "stops", "machine_moves")  # their rows are events
MOST_APART = 100  # places told one by one; those on later lines are told together
MOST_WORDS = 20  # F words (or S words, or texts) of one tool told one by one; if there are more, all are told together
OF_FEEDS = ("chip-feed", "plunge-feed", "within-axes", "reachable-pair")  # advice that names feeds per minute
_LETTERS = {"feed": ("F",), "axis": ("F",), "tool": ("F",), "speed": ("S",), "depth": ("Z",)}


class Group(Struct, frozen=True, eq=False):
    """Rows of one cause, the worst of them, and the grade (index into GRADES)."""

    rows: Column
    worst: int
    grade: int


def findings_of(rule: Rule, view: View, accepted: Column, context: Context) -> list[Finding]:
    """`view` holds the rows found; `accepted` is, for each, the index of its acceptance in the setup, -1 if it has
    none."""
    if view.length == 0:
        return []
    place = place_lines(rule, view)
    made = []
    for group in groups_of(rule, view, place, accepted):
        number = int(accepted[group.worst])
        accept = context.setup.accepts[number] if number >= 0 else None
        made.append(_finding(rule, view, group.rows, group.worst, GRADES[group.grade], accept, place, context))
    return made


def groups_of(rule: Rule, view: View, place: Column, accepted: Column) -> list[Group]:
    """The rows found, one group for each cause; `place` is of `place_lines`."""
    grades = grades_of(rule, view)
    if rule.text.cause == "once":
        grades = np.full(view.length, grades.min())
    key = _groups(rule, view, grades, place, accepted)
    order = np.argsort(key, kind="stable")
    starts = np.flatnonzero(np.concatenate(([True], np.diff(key[order]) != 0)))
    badness = _badness(rule, view)
    made = []
    for start, end in zip(starts.tolist(), [*starts[1:].tolist(), len(order)]):
        rows = order[start:end]
        worst = _worst(rule, view, rows, badness)
        made.append(Group(rows, worst, int(grades[worst])))
    return made


def places_of(rule: Rule, view: View, rows: Column) -> int:
    """In how many places these rows are: of pieces, the moves they belong to."""
    moves = view.column("move")[rows]
    if len(moves) and moves[0] >= 0 and rule.text.looks_at == "pieces":
        return len(distinct(moves))
    return len(rows)


def measured_at(rule: Rule, view: View, row: int, context: Context) -> tuple[Found | None, Limits | None]:
    """What was found in this row, and its window, in the program's units."""
    one = view.choose(np.array([row]))
    return measured(rule, one, _inch(view, row, context), context)


def _inch(view: View, row: int, context: Context) -> bool:
    move = int(view.column("move")[row])
    return bool(context.motion.flags[move] & INCH) if move >= 0 and len(context.motion) else False


def grades_of(rule: Rule, view: View) -> Column:
    """Index into GRADES of each row; a case whose condition is unknown does not count."""
    return _grades(rule.grades, view)


def _grades(cases: tuple[Cased, ...], view: View) -> Column:
    grades = np.full(view.length, GRADES.index(cases[-1].grade))
    for case in reversed(cases[:-1]):
        assert case.when is not None
        grades = np.where(truth(case.when.code, view) == TRUE, GRADES.index(case.grade), grades)
    return grades


def line_of(rule: Rule, view: View) -> Column:
    """Line each row is about."""
    if rule.line is not None:
        return numbers(rule.line.code, view).astype(np.int64)
    return np.broadcast_to(np.asarray(view.value("line")), (view.length,)).astype(np.int64)


def place_lines(rule: Rule, view: View) -> Column:
    """Line each row's finding stands on: that of the F, S or Z word at fault, else of the move."""
    lines, moves = line_of(rule, view), view.column("move")
    if rule.text.cause in _LETTERS and len(view.context.motion):
        motion = view.context.motion
        by_cause = {"speed": motion.speed_line, "depth": view.context.depth_line}
        governs = by_cause.get(rule.text.cause, motion.feed_line)[np.maximum(moves, 0)]
        return np.where((moves >= 0) & (governs > 0), governs, lines).astype(np.int64)
    return lines


def _groups(rule: Rule, view: View, grades: Column, place: Column, reason: Column) -> Column:
    """Number of each row's group: one for each cause.

    A governing word counts by what it says: F600 written on forty lines is one cause, not forty.
    """
    moves, motion = view.column("move"), view.context.motion
    cause = rule.text.cause
    if cause == "once":
        return _numbered([reason])
    if cause == "tool":
        return _numbered([view.column("tool"), reason])
    parts = [view.column("tool"), grades, reason]
    if cause == "found" and rule.found is not None:  # one finding for each text found, wherever it stands
        return _together(parts, [np.array(words(rule.found.code, view))])
    if cause == "sort":
        return _numbered([*parts, view.value("sort")[0]])
    if cause == "line" or not len(motion):
        apart = distinct(place)
        each = np.minimum(place, apart[min(MOST_APART, len(apart) - 1)])
        # What is only to consider is one habit of the program, not a mishap of each line.
        return _numbered([*parts, np.where(grades == GRADES.index("consider"), 0, each)])
    if cause == "depth":  # how deep the tool goes has nothing to do with its feed
        return _numbered([*parts, np.where(moves >= 0, 0, place)])
    if cause == "axis":  # what goes level is slowed by its own measure, and what goes down by another
        codes, axes = view.value("axis")
        parts = [*parts, codes == axes.index("Z")]
    said = (motion.speed if cause == "speed" else motion.feed)[np.maximum(moves, 0)]
    return _together(
        parts, [np.where(moves >= 0, np.nan_to_num(said, nan=-1.0), -2.0), np.where(moves >= 0, 0, place)]
    )


def _together(parts: list[Column], words: list[Column]) -> Column:
    """A number for each distinct row of the parts and words; for the parts alone where they have very many words.

    A program whose feed follows the load says another F on every line, and has one fault, not thousands.
    """
    apart = _numbered([*parts, *words])
    if not len(apart) or int(apart.max()) < MOST_WORDS:
        return apart
    base = _numbered(parts)
    of = np.zeros(int(apart.max()) + 1, dtype=np.int64)
    of[apart] = base
    many = np.bincount(of) > MOST_WORDS
    return np.where(many[base], len(of) + base, apart)


def _numbered(parts: list[Column]) -> Column:
    """A number for each distinct row of the parts, 0 upwards."""
    key = np.zeros(len(parts[0]), dtype=np.int64)
    for part in parts:
        values, code = numbered(part)
        key = numbered(key * len(values) + code)[1]
    return key


def _badness(rule: Rule, view: View) -> Column:
    """The larger, the worse: as the rule says, else how far what was found lies outside its window."""
    if rule.worst is not None:
        worst = numbers(rule.worst.code, view)
    elif rule.found is None or rule.found.kind == TEXT:
        return np.zeros(view.length)
    else:
        found = numbers(rule.found.code, view)
        with np.errstate(divide="ignore", invalid="ignore"):
            high = numbers(rule.high.code, view) if rule.high else np.full(view.length, np.nan)
            over = np.where(high == 0, found, found / high)
            under = numbers(rule.low.code, view) / found if rule.low else np.full(view.length, np.nan)
        worst = np.fmax(over, under) if rule.high or rule.low else found
    return np.where(np.isfinite(worst), worst, -np.inf)


def _worst(rule: Rule, view: View, rows: Column, badness: Column) -> int:
    """The worst row; with `worst_after`, the worst that remains when that part of the cut length is passed over."""
    if rule.worst_after is None or view.table.weight is None:
        return int(rows[int(np.argmax(badness[rows]))])
    order = rows[np.argsort(-badness[rows], kind="stable")]
    length = np.cumsum(view.column("weight")[order])
    passed = float(numbers(rule.worst_after.code, view.choose(order[:1]))[0]) * length[-1]
    return int(order[min(int(np.searchsorted(length, passed)), len(order) - 1)])


def _finding(
    rule: Rule, view: View, rows: Column, worst: int, grade: str, accept: Accept | None, place: Column, context: Context
) -> Finding:
    one = view.choose(np.array([worst]))
    lines = distinct(np.concatenate((line_of(rule, view.choose(rows)), distinct(place[rows]))))
    lines = np.maximum(lines, 1)
    worst_move = int(view.column("move")[worst])
    inch = _inch(view, worst, context)
    worst_line = max(int(line_of(rule, one)[0]), 1)
    stands = int(place[rows].min()) if rule.text.cause in _LETTERS else int(lines[0])
    if rule.text.cause == "once":
        stands = worst_line
    stands = max(stands, 1)
    tools = distinct(view.column("tool")[rows])
    tool = tool_number(int(tools[0]), context) if len(tools) == 1 else None
    found, window = measured(rule, one, inch, context)
    case = chosen(rule.happens, one)
    happens = say(case.text, one, inch)
    beside = _beside(one, worst_line, context)
    if beside is not None:
        happens += f" It stands on line {beside.line} of {beside.path}, which line {worst_line} calls."
    return Finding(
        rule=rule.name,
        grade=grade,
        line=stands,
        last_line=max(int(lines[-1]), stands),
        lines=tuple(lines[:MOST_LINES].tolist()),
        worst_line=worst_line,
        column=_column(rule, view, rows, stands, context),
        count=places_of(rule, view, rows),
        tool=tool,
        found=found,
        window=window,
        happens=happens,
        change=_change(rule, one, worst_move, inch, _governing(rule, view, rows, context), _places(view, rows)),
        accepted=accept.because if accept else None,
        beside=beside,
        accepted_in=accept.where if accept else None,
        set_on=_set_on(worst_move, context),
        regraded=_regraded(rule, one, grade),
        rests_on=rests_on(rule, int(tools[0]) if len(tools) else -1, context),
        cause=f"{rule.name} {1 + next(n for n, each in enumerate(rule.happens) if each is case)}",
    )


def _set_on(move: int, context: Context) -> dict[str, int]:
    """Lines of the F, S and T words in force at a move."""
    m = context.motion
    if not 0 <= move < len(m):
        return {}
    governs = {"F": m.feed_line[move], "S": m.speed_line[move], "T": m.tool_line[move]}
    return {letter: int(line) for letter, line in governs.items() if line > 0}


def _regraded(rule: Rule, one: View, grade: str) -> Regraded | None:
    """Where a house pack has changed this finding's grade."""
    if rule.regrade is None:
        return None
    was = GRADES[int(_grades(rule.regrade.was, one)[0])]
    return Regraded(was, rule.regrade.by, rule.regrade.because) if was != grade else None


def _beside(one: View, line: int, context: Context) -> Beside | None:
    """Where the one row stands in a file that `line` calls; None where it stands in the program itself."""
    m = context.motion
    if m.beside is None:
        return None
    move = int(one.column("move")[0])
    if one.table.name == "faults":
        row = int(one.rows[0]) - len(context.program.faults) if one.rows is not None else -1
        place = int(m.beside.fault_line[row]) if row >= 0 else 0
    elif 0 <= move < len(m) and m.line[move] == line and one.table.name not in EVENT_TABLES:
        place = int(m.beside.line[move])
    elif 0 <= move < len(m) and m.feed_line[move] == line:
        place = int(m.beside.feed_line[move])
    elif one.table.name in EVENT_TABLES:
        events = np.flatnonzero(m.event_line == line)
        near = events[np.argsort(np.abs(m.event_move[events] - move), kind="stable")[:1]]
        place = int(m.beside.event_line[near[0]]) if len(near) else 0
    else:
        return None
    found = m.beside.of(place)
    return Beside(*found) if found else None


def tool_number(number: int, context: Context) -> int | None:
    """The tool as people know it: where the program names none, the one that is assumed."""
    known = context.setup.tools.get(number)
    return known.number if known is not None and known.number >= 0 else number if number >= 0 else None


def _column(rule: Rule, view: View, rows: Column, line: int, context: Context) -> int:
    if rule.text.looks_at == "faults":
        at = np.concatenate((context.program.faults.start, context.motion.faults.start))
        own = view.rows[rows] if view.rows is not None else rows
        starts = [int(at[row]) for row in own.tolist()]
        here = [start for start in starts if context.program.place(start)[0] == line]
        return context.program.place(min(here))[1] if here else 1
    return column_of(context.program, line, rule.text.points_at or _LETTERS.get(rule.text.cause, ("Z", "X", "Y")))


def measured(rule: Rule, one: View, inch: bool, context: Context) -> tuple[Found | None, Limits | None]:
    """What a rule measures in one row, and the window it is held against, in the program's units."""
    written = rule.text.found
    if written is None or rule.found is None:
        return None, None
    if rule.found.kind == TEXT:
        return Found(written.name, words(rule.found.code, one)[0], ""), None
    value, unit = in_program_units(number_of(rule.found, one), rule.found.unit, inch)
    found = Found(written.name, value, unit)
    if rule.text.window is None:
        return found, None
    low, high = (in_program_units(number_of(side, one), rule.found.unit, inch)[0] if side else None
                 for side in (rule.low, rule.high))  # fmt: skip
    standing, source = _origin(rule, one, context)
    return found, Limits(low, high, unit, standing, source)


def _origin(rule: Rule, one: View, context: Context) -> tuple[str, str]:
    """Standing and source of the window a finding is held against."""
    assert rule.text.window is not None
    kind, _, name = rule.text.window.of.partition(".")
    if kind == "limits":
        return rule.text.limits[name].standing, rule.text.limits[name].source
    if kind == "declared":
        return _declared(name, context)
    windows = context.windows(int(one.column("tool")[0]))
    window: Window | None = None
    if windows is not None and kind == "chip":
        operation = words(["fact", "operation", 1], one)[0] if "operation" in one.facts else None
        window = windows.chip.get(operation or "") or windows.chip.get("") or next(iter(windows.chip.values()), None)
    elif windows is not None:
        value = getattr(windows, name, None)
        if isinstance(value, str):  # the policy on plunges
            material = context.setup.material
            return getattr(material, "plunge_standing", rule.text.standing), getattr(
                material, "plunge_source", rule.text.source
            )
        window = value
    return (window.standing, window.source) if window else (rule.text.standing, rule.text.source)


def _declared(name: str, context: Context) -> tuple[str, str]:
    """Standing of a limit that shop and job give; "assumed" where they leave it to what was taken as given."""
    setup = context.setup
    taken = {each.what for each in (*setup.assumed, *context.engagement.assumed)}
    if name == "stock" and taken & {"Z zero", "stock top"}:
        return "assumed", "the stock's top is taken as given, not declared"
    if name == "spoilboard" and setup.hold.spoilboard is None:
        return "assumed", "no spoilboard is declared, so the table itself is the limit"
    return "declared", "the declarations of shop and job"


def _governing(rule: Rule, view: View, rows: Column, context: Context) -> tuple[int, ...]:
    """Lines of the F words that govern the rows of a finding."""
    moves = view.column("move")[rows]
    if rule.text.cause not in ("feed", "axis", "speed", "tool") or not len(context.motion) or moves[0] < 0:
        return ()
    lines = distinct(context.motion.feed_line[moves])
    return tuple(lines[lines > 0][:MOST_LINES].tolist())


def _places(view: View, rows: Column) -> tuple[int, ...]:
    """The rows of their own table that a finding is about; the first ones of very many."""
    own = view.rows[rows] if view.rows is not None else rows
    return tuple(own[:MOST_LINES].tolist())


def _change(
    rule: Rule, one: View, move: int, inch: bool, governing: tuple[int, ...], places: tuple[int, ...]
) -> Change:
    if not one.context.advises:
        return Change("")
    text = plain = say(chosen(rule.change, one).text, one, inch)
    if not rule.text.advice or (move < 0 and rule.text.looks_at not in ("waits", "program")):
        return Change(text)
    high = number_of(rule.high, one) if rule.high else None
    context = one.context
    if rule.text.advice in OF_FEEDS and int(context.motion.flags[move]) & (INVERSE_TIME | PER_REV):
        return Change(f"Set feed per minute (G94) first, and check again. {text}".strip())
    made = ADVICE[rule.text.advice](Worst(one, move, inch, np.nan if high is None else high, governing, places))
    if made is None:
        return Change(text)
    if context.setup.controller.feed_unit == "mm/s":
        made = _per_second(made)
    text = f"{made.text} {text}".strip()
    away = context.motion.beside
    sets = [each for each in made.set if away is None or each.line not in away.call]
    if away is not None and len(sets) < len(made.set):
        # a word in a file that is called: no line of this program can be set
        place = away.of(int(away.feed_line[move])) or away.of(int(away.line[move]))
        if place:
            text += f" The word to change is in {place[0]}: line {place[1]}."
        sets = []  # all words of a change go together
    if sets:
        context.plain_advice[text] = plain
    return replace(made, text=text, set=tuple(sets))


def _per_second(made: Change) -> Change:
    """Advice for a controller whose F counts mm/s: the words to write, with the text saying what its figures are."""
    pairs = tuple(replace(pair, to=round(pair.to / 60, 3)) if pair.word == "F" else pair for pair in made.set)
    return Change(f"{made.text} (These feeds are per minute: F counts mm/s here, so write a sixtieth.)", pairs)
