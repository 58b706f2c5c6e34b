"""What a sheet says, the same on the screen and on the page: the head, a finding, the verdict."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from gclint.digest.words import GRADE_WORDS, STANDING_WORDS, Lengths, count, duration, measure, plain_number, span
from gclint.lazy_regex import Later
from gclint.run import Run
from gclint.tables.finding import AssumedOut, Checked, Finding, Limits, SetWord
from gclint.tables.setup import GRADES, Setup

LINES_NAMED = 6
RULES_NAMED = 4  # that wait for one thing
NO_HOUSE_RULES = "No house pack adds a rule, changes a grade or narrows a rule for this program."
NOTHING_ACCEPTED = "Nothing is accepted."
NO_FILES = "No file: what was declared came with the command."
SIGNED_BY = ("made by", "machine", "conditions", "name", "date")
UNIT_WORDS = {
    "mm": "millimetres", "inch": "inches", "mixed": "inches and millimetres", "unstated": "units not stated",
}


def verdict(checked: Checked) -> str:
    """The closing sentences; they never call a program safe."""
    by_grade = {g: sum(f.grade == g and is_entry(f) for f in checked.findings) for g in GRADE_WORDS}
    if any(f.rule == "internal-error" for f in checked.findings):
        first = "gclint itself failed on part of this program, which nobody has judged."
    elif by_grade["halt"]:
        first = f"Do not run this program as it is: {count(by_grade['halt'], 'thing')} to put right first"
        first += f", then {count(by_grade['change'], 'thing')} to change." if by_grade["change"] else "."
    elif by_grade["change"]:
        first = f"Change {count(by_grade['change'], 'thing')} before cutting."
    elif by_grade["consider"]:
        first = f"Nothing must be changed by what could be judged; {count(by_grade['consider'], 'thing')} to consider."
    else:
        first = "Nothing was found by what could be judged."
    known = sum(f.accepted is not None for f in checked.findings)
    if known:
        first += f" {count(known, 'finding')} {'is' if known == 1 else 'are'} known and accepted."
    blind = len({n.rule for n in checked.not_judged})
    second = f" {count(blind, 'rule')} could not be judged; see NOT JUDGED." if blind else ""
    return f"{first}{second} This sheet is no promise: the person at the machine decides."


def is_entry(finding: Finding) -> bool:
    """Whether it is told for itself: accepted by nobody, and no follower of another finding."""
    return finding.accepted is None and finding.follows is None


def open_findings(checked: Checked) -> tuple[Finding, ...]:
    """Entries: findings that nobody has accepted and that follow from no other, in the order of their numbers."""
    return tuple(finding for _, of_grade in by_grade(checked) for finding in of_grade)


def by_grade(checked: Checked) -> Iterator[tuple[str, list[Finding]]]:
    """(grade, its findings that nobody has accepted), worst first, without grades that have none."""
    for grade in GRADES:
        of_grade = [f for f in checked.findings if f.grade == grade and is_entry(f)]
        if of_grade:
            yield grade, of_grade


def fails(finding: Finding, fail_at: str) -> bool:
    """Whether a finding makes a run fail: of that grade or a worse one, and accepted by nobody."""
    return finding.accepted is None and GRADES.index(finding.grade) <= GRADES.index(fail_at)


def failing(checked: Checked, fail_at: str) -> list[Finding]:
    return [finding for finding in checked.findings if fails(finding, fail_at)]


def not_judged_by_need(checked: Checked) -> dict[str, list[str]]:
    """What is needed, each with the rules that wait for it, that for which most of them wait first.

    Keys of one table of a declaration are told together.
    """
    waiting: dict[str, dict[str, None]] = {}
    keys: dict[str, dict[str, None]] = {}
    tools = {row.tool for row in checked.tools}
    for blind in checked.not_judged:
        for need in blind.needs.split("; "):
            table, wanted = _keys_of(need, len(tools) == 1)
            keys.setdefault(table, {}).update(dict.fromkeys(wanted))
            waiting.setdefault(table, {})[blind.name] = None
    told = {table: table.format(", ".join(f"`{key}`" for key in keys[table])) if keys[table] else table
            for table in waiting}  # fmt: skip
    return {told[table]: list(waiting[table]) for table in sorted(waiting, key=lambda each: -len(waiting[each]))}


_OF_TOOL = Later(r"of (the tool|tool \d+) in shop\.toml")
_OF_TABLE = Later(r"\[(machine|spindle)\]")
_BACKTICKED = Later(r"`([^`]+)`")


def _keys_of(need: str, one_tool: bool) -> tuple[str, list[str]]:
    """('{} of the tool in shop.toml', its keys), where keys of a table of shop.toml are needed; else (need, [])."""
    of_tool, of_table = _OF_TOOL.search(need), _OF_TABLE.search(need)
    words = [word.rpartition("] ")[2] for word in _BACKTICKED.findall(need)]
    if of_tool and words:
        return f"{{}} of {'the tool' if one_tool else of_tool[1]} in shop.toml", words
    if of_table and words:
        return f"{{}} of [{of_table[1]}] in shop.toml", words
    return need, []


def assumed_words(checked: Checked) -> list[str]:
    """A sentence or two for all that is taken as given for one reason, and what declaring it would let be judged."""
    taken: dict[tuple[str, str, str], list[AssumedOut]] = {}
    for each in checked.assumed:
        taken.setdefault((each.because, each.declare, each.lets), []).append(each)
    made = []
    for (because, declare, lets), alike in taken.items():
        said = "; ".join(f"{each.what}: {each.value}" for each in alike) + f", because {because}"
        key = "it" if declare in because else declare
        made.append(f"{said}; declare {key}, and gclint also judges {lets}" if declare else said)
    return made


def waiting_words(rules: Sequence[str]) -> str:
    """'chip-too-thin, chip-too-thick', or '35 rules (bores-with-router-bit, ... and 32 more)'."""
    if len(rules) <= RULES_NAMED:
        return ", ".join(rules)
    named = ", ".join(rules[: RULES_NAMED - 1])
    return f"{count(len(rules), 'rule')} ({named} and {len(rules) - RULES_NAMED + 1} more)"


def short_fingerprint(fingerprint: str) -> str:
    """What of "sha256:0123..." people compare by eye."""
    return fingerprint.partition(":")[2][:12]


def material_words(setup: Setup) -> str:
    return setup.material.title if setup.material is not None else "not declared, so no chip is judged"


def outcome_words(run: Run) -> str:
    """What the one who signs is told first: how much of it fails here."""
    if run.failed:
        return "gclint itself failed on part of this program, which nobody has judged"
    grades = GRADES[: GRADES.index(run.fail_at) + 1]
    words = " or ".join(f'"{GRADE_WORDS[grade].lower()}"' for grade in grades)
    found = count(len(failing(run.checked, run.fail_at)), "finding")
    return f"{found} at the grade that fails here ({words}), accepted ones left out"


def sign_words(checked: Checked) -> tuple[str, str, str]:
    """What one signs: what stands before the fingerprint, the fingerprint, and what stands behind it."""
    return (
        "I have looked at this program, at what is accepted, taken as given and not judged, and let it run: the file "
        "with the fingerprint", short_fingerprint(checked.fingerprint),
        "with the declarations above. After any change of either this counts no more.",
    )  # fmt: skip


def signed_words(checked: Checked) -> list[str]:
    """Who has signed this program and when, and whether that still counts."""
    said = []
    for each in checked.signed:
        who = f"signed by {each.by} on {each.on}" if each.by else f"signed on {each.on}, no name given"
        still = "it stands" if each.stands else f"void: {' and '.join(each.changed)} changed since"
        said.append(f"{sentence(who)}: {still}. A note in the job file, no proof of who wrote it")
    return said


def time_words(checked: Checked) -> str:
    if checked.time_s is not None:
        return duration(checked.time_s)
    cuts = [row.cut_time_s for row in checked.tools]
    cutting = sum(seconds for seconds in cuts if seconds is not None)
    known = f"cutting {duration(cutting)}, the rest " if cuts and None not in cuts else ""
    return f"{known}unknown: a rate is not stated ([machine] rapid in shop.toml, or F)"


def reach_words(checked: Checked) -> str:
    lengths = Lengths(checked.units == "inch")
    known = [
        f"{axis} {lengths.place(low)} to {lengths.place(high)}"
        for axis, low, high in zip("XYZ", checked.extent_mm.min, checked.extent_mm.max)
        if low is not None
    ]
    return f"{', '.join(known)} {lengths.unit}" if known else ""


def title_words(rule: str, run: Run) -> str:
    return sentence(run.titles.get(rule) or rule.replace("-", " "))


def sentence(text: str) -> str:
    return text[:1].upper() + text[1:]


# of a finding that a mender answers
MENDS = "gclint mend writes a copy in which this is mended, if it can prove that the copy cuts the same part"


def graded_words(finding: Finding) -> str:
    """Who gave the finding another grade than its rule has, and why; empty where nobody did."""
    if finding.regraded is None:
        return ""
    own = finding.regraded
    return f'"{finding.grade}" by {own.by}, "{own.was}" by the rule itself; because {_reason(own.because)}'


def house_words(checked: Checked) -> list[str]:
    """What house packs change in what is told of this program. A rule that was `halt` and is less is always told."""
    said = []
    for each in checked.house:
        if each.does == "regrades" and (each.count or each.lowers_halt):
            met = f"; {count(each.count, 'finding')} here" if each.count else "; none here"
            said.append(f"{each.rule}: {each.says}, by {each.by}, because {_reason(each.because)}{met}")
        elif each.does == "narrows" and each.count:
            left = f"{count(each.count, 'place')} here left out"
            said.append(f"{each.rule} counts {each.says}, by {each.by}, because {_reason(each.because)}; {left}")
    added: dict[str, list[str]] = {}
    for each in checked.house:
        if each.does == "adds":
            added.setdefault(each.by, []).append(each.rule)
    said += [f"{count(len(rules), 'rule')} more, by {by}: {', '.join(rules)}" for by, rules in added.items()]
    return said


def _reason(because: str) -> str:
    return " ".join(because.split()).rstrip(".")


def tool_name(tool: int, run: Run) -> str:
    row = next((row for row in run.checked.tools if row.tool == tool), None)
    return f"{tool} ({row.name})" if row is not None and row.name else str(tool)


def where_words(finding: Finding) -> str:
    named = list(finding.lines[:LINES_NAMED])
    text = f"line{'' if len(named) == 1 else 's'} {', '.join(str(n) for n in named)}"
    rest = len(finding.lines) - len(named)
    if rest > 0:
        more = f"{rest:,}" if len(finding.lines) < 1000 else f"over {rest:,}"
        text += f" and {more} more, to line {finding.last_line}"
    return f"{text} ({count(finding.count, 'time')})" if finding.count > len(finding.lines) else text


def quoted(line: int, run: Run) -> str:
    text = run.checked.texts.get(line, "").strip()
    return text if len(text) <= 120 else f"{text[:117]}..."


def found_words(finding: Finding) -> str:
    found = finding.found
    assert found is not None
    text = f"{found.name} {measure(found.value, found.unit)}"
    return f"{text}; {window_words(finding.window, True)}" if finding.window else text


def accepted_words(finding: Finding, checked: Checked) -> str:
    """'chip-too-thin (tool 1), lines 5, 12: ran well for years (Maren; job.toml, line 30)'."""
    tool = "" if finding.tool is None else f" (tool {finding.tool})"
    by = next((each.by for each in checked.acceptances if each.where == finding.accepted_in), "")
    behind = "; ".join(part for part in (by, finding.accepted_in) if part)
    halt = "graded halt, " if finding.grade == "halt" else ""
    return f"{finding.rule}{tool}, {halt}{where_words(finding)}: {finding.accepted}{f' ({behind})' if behind else ''}"


def window_words(window: Limits, whence: bool = False) -> str:
    """'good is 0.042 to 0.1 mm (common practice)'; `whence`: of a window of the shop's own also when it was measured,
    and what the card has."""
    standing = STANDING_WORDS.get(window.standing, window.standing)
    if whence and window.standing == "measured":
        standing += ": " + window.source.removeprefix("this shop's ")
    behind = f" ({standing})" if standing else ""
    if window.low is not None and window.high is not None:
        return f"good is {span(window.low, window.high, window.unit)}{behind}"
    if window.high == 0:
        return f"none is good{behind}"
    if window.high is not None:
        return f"at most {measure(window.high, window.unit)} is good{behind}"
    if window.low is not None:
        return f"at least {measure(window.low, window.unit)} is good{behind}"
    return "no limit is known"


def in_units(window: Limits, lengths: Lengths) -> Limits:
    low, high = (None if v is None else v * lengths.scale for v in (window.low, window.high))
    return Limits(low, high, lengths.unit, window.standing, window.source)


def settings_words(words: Sequence[SetWord], elsewhere: str = "--as json lists them all") -> list[str]:
    """'on line 12 set F400 to F1855'; a long list names the first ones and says where the others are."""
    alike: dict[tuple[str, float | None, float], list[int]] = {}
    for word in words:
        alike.setdefault((word.word, word.from_, word.to), []).append(word.line)
    lines, left = [], 0
    for number, ((letter, was, to), on) in enumerate(alike.items()):
        if number >= LINES_NAMED:
            left += len(on)
            continue
        left += max(0, len(on) - LINES_NAMED)
        where = f"line{'' if len(on) == 1 else 's'} {', '.join(str(line) for line in on[:LINES_NAMED])}"
        where += f" and {len(on) - LINES_NAMED} more" if len(on) > LINES_NAMED else ""
        new = f"{letter}{plain_number(to)}"
        lines.append(f"on {where} add {new}" if was is None else f"on {where} set {letter}{plain_number(was)} to {new}")
    if left:
        lines.append(f"({count(left, 'more word')}: {elsewhere})")
    return lines
