"""Everything that can be wrong in a rule pack, with its place and what was expected."""

from __future__ import annotations

from pathlib import Path

import pytest

from gclint.packs.load import check_together, compile_pack, load_pack
from gclint.packs.shipped_packs import shipped_packs
from gclint.problem import Problem

HOUSE = """
pack = "lowtide"
about = "What the Lowtide workshop (an invented one) asks."

[[rule]]
name = "left-of-zero"
title = "Something is cut left of the zero"
looks_at = "pieces"
when = "low and removed > 0 mm^3"
grade = [ { grade = "halt", when = "depth > far" }, { grade = "change" } ]
happens = "The tip goes to {depth} here, {depth | in}."
change = [ { text = "Do not go to {depth}.", when = "low" }, { text = "Stay up." } ]
points_at = ["Z"]
found = { name = "depth", value = "depth", unit = "mm" }
window = { of = "limits.floor", high = "floor" }
worst = "depth"
worst_after = "0.1"
why = "A rule of the house."
standing = "practice"
source = "the house"
owner = "the workshop"

[rule.limits]
floor = { value = "2 mm", standing = "practice", source = "the house" }
far = { value = "4 mm", standing = "practice", source = "the house" }

[rule.define]
low = "depth > floor"

[[rule.must_find]]
says = "a cut"
program = '''
G21 G90
G1 X9 Z-1 F100
'''
line = 3

[[rule.must_leave]]
says = "nothing"
program = "M30"
"""


def problem(text: str) -> Problem:
    with pytest.raises(Problem) as caught:
        compile_pack(text, "house.toml")
    return caught.value


def at(text: str, part: str, inside: str = "") -> tuple[int, int]:
    """Line and column of `inside` within the first `part` of `text`."""
    offset = text.index(part) + part.index(inside or part)
    return text.count("\n", 0, offset) + 1, offset - text.rfind("\n", 0, offset)


def test_the_pack_itself_is_in_order() -> None:
    assert [rule.name for rule in compile_pack(HOUSE, "house.toml").rules] == ["left-of-zero"]


# what is written instead of what; the part of the new text the place points at, within the new text; what is said
WRONG = [
    # not TOML, not the right keys
    ('looks_at = "pieces"', 'looks_at = "pieces', "", "this is not TOML"),
    ('owner = "the', 'ower = "the', "ower", 'there is no such key; nearest: "owner"'),
    ('why = "A rule of the house."\n', "", None, 'the key "why" is missing'),
    ('when = "low and removed > 0 mm^3"\n', "", None, 'the key "when" is missing'),
    ('when = "low and removed > 0 mm^3"', 'when = "  "', None, 'the key "when" is missing'),
    ('points_at = ["Z"]', 'points_at = "Z"', '"Z"', "expected a list in square brackets"),
    ('points_at = ["Z"]', 'points_at = ["z"]', 'z"', "expected a letter of a word"),
    ('worst = "depth"', "worst = 3", "3", "expected text in quotes, got 3"),
    ('change = [ { text', 'change = [ { txt', "txt", 'there is no such key; nearest: "text"'),
    ('grade = "halt", when', 'grade = "stop", when', '"stop"', 'is none of its values; known: change, consider'),
    ('standing = "practice"\nsource = "the house"\nowner', 'standing = "hearsay"\nsource = "x"\nowner', '"hearsay"',
     "is none of its values; known: derived, measured, memory, practice, published"),
    # words that must mean something
    ('name = "left-of-zero"', 'name = "L01"', "L01", "plain words in small letters"),
    ('name = "left-of-zero"', 'name = "left--of"', "left--of", "plain words in small letters"),
    ('title = "Something is cut left of the zero"', 'title = "  "', '  "', "title: a few words are needed here"),
    ('happens = "The tip goes to {depth} here, {depth | in}."', 'happens = ""', '"\nchange', "happens: a few words"),
    ('looks_at = "pieces"', 'looks_at = "piecs"', "piecs", 'there is no table "piecs"; nearest: "pieces"'),
    ('looks_at = "pieces"', 'looks_at = "core"', "core", 'there is no table "core"'),
    ('worst = "depth"', 'advice = "ramps"\nworst = "depth"', "ramps", 'there is no advice "ramps"; nearest: "ramp"'),
    ('worst = "depth"', 'advice = "ramp"\nworst = "depth"', 'ramp"', '"ramp" is worked out for rows of "entries"'),
    ('points_at = ["Z"]', 'cause = "fed"', '"fed"', '"fed" is none of its values; nearest: "feed"'),
    # expressions
    ('when = "low and removed > 0 mm^3"', 'when = "low and removd > 0 mm^3"', "removd", 'nearest: "removed"'),
    ('when = "low and removed > 0 mm^3"', 'when = "low and removed > 0 mm"', "0 mm", "a volume cannot be compared"),
    ('when = "low and removed > 0 mm^3"', 'when = "low and removed > 0"', '0"', "its unit, such as 0 mm^3"),
    ('when = "low and removed > 0 mm^3"', 'when = "removed"', "removed", "a truth (yes or no) is needed here"),
    ('when = "low and removed > 0 mm^3"', "when = '''\nlow\nand removd'''", "removd", 'there is no fact "removd"'),
    ('when = "low and removed > 0 mm^3"', 'when = "operation == \\"slot\\" and removd"', "removd", "no fact"),
    ('when = "low and removed > 0 mm^3"', 'when = """low \\\n   and removd"""', "removd", "no fact"),
    ('worst = "depth"', 'worst = "low"', "low", "a number is needed here, and this is a truth"),
    ('worst = "depth"', 'line = "depth > floor"', "depth", "a number is needed here"),
    ('worst_after = "0.1"', 'instead_when = "depth"', "depth", "a truth (yes or no) is needed here"),
    ('low = "depth > floor"', 'low = "dept > floor"', "dept", 'nearest: "depth"'),
    ('low = "depth > floor"', 'low = "  "', '  "', "an expression is needed here"),
    ('low = "depth > floor"', 'depth = "depth > floor"', "depth", '"depth" is a fact or a limit already'),
    ('low = "depth > floor"', 'low = "depth > floor"\nmax = "low"', "max", '"max" cannot be a name'),
    ('low = "depth > floor"', 'low = "depth > floor"\nidle = "low"', "idle", 'nothing in this rule uses "idle"'),
    ('when = "depth > far"', 'when = "depth"', "depth", "a truth (yes or no) is needed here"),
    ('when = "low" }, { text', 'when = "lo" }, { text', "lo", 'there is no fact "lo"'),
    # numbers without a source
    ('when = "low and removed > 0 mm^3"', 'when = "low and depth > 3 mm"', "3 mm", "the number 3 mm needs a standing"),
    ('low = "depth > floor"', 'low = "depth > 2 * floor"', "2 *", "the number 2 needs a standing and a source"),
    ('when = "depth > far"', 'when = "depth > 9 mm"', "9 mm", "the number 9 mm needs a standing and a source"),
    # limits
    ('far = { value = "4 mm"', 'far = { value = "4 mn"', "mn", 'there is no unit "mn"; nearest: "min"'),
    ('far = { value = "4 mm"', 'far = { value = "floor"', "floor", "only numbers can stand here"),
    ('far = { value = "4 mm"', 'far = { value = "4 mm + 1 mm"', "4 mm", "a number with its unit is needed here"),
    ('far = { value = "4 mm", standing = "practice", ', 'far = { value = "4 mm", ', "far",
     'the key "standing" is missing'),
    ('far = { value = "4 mm", standing = "practice", source = "the house" }',
     'far = { value = "4 mm", standing = "practice", source = "" }', '" }', "where the number comes from"),
    ("far = {", "depth = {", "depth", '"depth" is a fact already'),
    ("far = {", "Far = {", "Far", '"Far" cannot be a name'),
    ("far = {", 'idle = { value = 1, standing = "practice", source = "x" }\nfar = {', "idle", "nothing in"),
    # what was found and its window
    ('value = "depth", unit = "mm" }', 'value = "depth", unit = "mn" }', "mn", 'there is no unit "mn"'),
    ('value = "depth", unit = "mm" }', 'value = "depth", unit = "N" }', "depth", 'cannot be shown in "N"'),
    ('value = "depth", unit = "mm" }', 'value = "", unit = "mm" }', '", unit', "an expression is needed here"),
    ('of = "limits.floor"', 'of = "limits.flor"', "limits.flor", 'there is no limit "flor"; nearest: "floor"'),
    ('of = "limits.floor"', 'of = "card.depth_slott"', "card.depth_slott", 'nearest: "depth_slot"'),
    ('of = "limits.floor"', 'of = "thumb"', "thumb", 'expected "limits.NAME", "card.NAME"'),
    ('of = "limits.floor"', 'of = "declared.moon"', "declared.moon", 'expected "limits.NAME"'),
    ('of = "limits.floor", high = "floor" }', 'of = "limits.floor" }', "^window = ", 'expected "low", "high" or both'),
    ('high = "floor" }', 'high = "removed" }', "removed", 'a volume, which cannot be shown in "mm"'),
    # cases
    ('{ grade = "change" } ]', '{ grade = "change", when = "low" } ]', '{ grade = "change"', "must stand without"),
    ('when = "depth > far" }', 'when = "" }', '^{ grade = "halt"', 'every case but the last needs a "when"'),
    ('{ text = "Stay up." } ]', '{ text = "Stay up.", when = "low" } ]', '{ text = "Stay', "must stand without"),
    ('grade = [ { grade = "halt", when = "depth > far" }, { grade = "change" } ]', "grade = []", "[]", "at least one"),
    # placeholders
    ("here, {depth | in}", "here, {depth | inch}", "inch", 'there is no unit "inch"; nearest: "in"'),
    ("here, {depth | in}", "here, {depth | s}", "s}", 'cannot be shown in "s"'),
    ("here, {depth | in}", "here, {dept}", "dept", 'there is no fact "dept"'),
    ("here, {depth | in}", "here, {depth here}", "here}", "does not belong here"),
    ("here, {depth | in}.", "here, {depth", "{depth", '"{" is never closed'),
    ("here, {depth | in}", "here, depth}", "}", '"}" has no "{" before it'),
    ("here, {depth | in}", "here, {}", "{", 'expected "{fact}"'),
    ("here, {depth | in}", "here, {depth |}", "{depth |", 'expected "{fact}"'),
    ("here, {depth | in}", "here, {rapid | 0.01}", " 0.01", "is no number, so it has no decimals"),
    ("here, {depth | in}", "here, {depth | 0.02 mm}", "0.02", "unit"),
    ("Do not go to {depth}.", "Do not go to {dept}.", "dept", 'there is no fact "dept"'),
    # examples
    ("line = 3", "line = 30", "30", "the program of this example has 3 lines"),
    ('says = "nothing"\n', "", None, 'the key "says" is missing'),
]  # fmt: skip


@pytest.mark.parametrize(("old", "new", "where", "says"), WRONG, ids=[f"{w[1][:40]}-{w[3][:30]}" for w in WRONG])
def test_what_is_wrong_in_a_pack_is_named_with_its_place(old: str, new: str, where: str | None, says: str) -> None:
    assert old in HOUSE
    text = HOUSE.replace(old, new, 1)
    wrong = problem(text)
    assert says in wrong.says
    assert wrong.path == "house.toml"
    if where is None:  # something is missing: the place is the table it is missing from
        table = "[[rule.must_leave]]" if "says" in says else "[[rule]]"
        assert (wrong.line, wrong.column) == at(text, table)
    elif where.startswith("^"):  # stands before what was changed
        assert (wrong.line, wrong.column) == at(text, where[1:])
    elif where:
        assert (wrong.line, wrong.column) == at(text, new + text[text.index(new) + len(new) :], where)


def test_a_window_needs_something_found() -> None:
    text = HOUSE.replace('found = { name = "depth", value = "depth", unit = "mm" }\n', "")
    wrong = problem(text)
    assert "a window needs something found" in wrong.says
    assert (wrong.line, wrong.column) == at(text, "window = ")


def test_a_cause_that_is_what_is_found_needs_something_found() -> None:
    text = HOUSE.replace('found = { name = "depth", value = "depth", unit = "mm" }\n', 'cause = "found"\n')
    assert '"found" needs the key found' in problem(text.replace("window = ", "#")).says


def test_only_pieces_have_a_cut_length() -> None:
    text = HOUSE.replace('looks_at = "pieces"', 'looks_at = "entries"')
    assert "only pieces have a cut length" in problem(text).says


def test_a_rule_stands_once_in_a_pack() -> None:
    text = HOUSE + HOUSE[HOUSE.index("[[rule]]") :]
    wrong = problem(text)
    assert 'the rule "left-of-zero" stands in this pack twice' in wrong.says
    assert wrong.line == text[: text.rindex('name = "left-of-zero"')].count("\n") + 1


def test_a_pack_has_its_bounds() -> None:
    rule = HOUSE[HOUSE.index("[[rule]]") :]
    named = [rule.replace("left-of-zero", f"rule-{chr(97 + n // 26)}{chr(97 + n % 26)}") for n in range(301)]
    text = HOUSE[: HOUSE.index("[[rule]]")] + "".join(named)
    assert "a pack may hold 300 rules; this one holds 301" in problem(text).says
    long = HOUSE.replace('low = "depth > floor"', 'low = "' + " or ".join(["depth > floor"] * 220) + '"')
    head, rule = long[: long.index("[[rule]]")], long[long.index("[[rule]]") :]
    named = [rule.replace("left-of-zero", f"rule-{chr(97 + n)}") for n in range(16)]
    assert "come to more than 10000 steps" in problem(head + "".join(named)).says


def test_an_empty_pack_says_so() -> None:
    assert "this pack says nothing" in problem('pack = "a"\nabout = "b"\n').says


REGRADE = '\n[[regrade]]\nrule = "steep-ramp"\ngrade = "consider"\nbecause = "our ramps are short"\n'
NARROW = '\n[[narrow]]\nrule = "steep-ramp"\nexcept_tool = [3, "ball"]\nbecause = "it is a ball"\n'


@pytest.mark.parametrize(
    ("old", "new", "where", "says"),
    [
        ('because = "our ramps are short"\n', "", "[[regrade]]", 'the key "because" is missing'),
        ('because = "our ramps are short"\n', 'because = "  "\n', '  "', "a reason is needed here"),
        ('because = "it is a ball"\n', 'because = ""\n', '"\n', "a reason is needed here"),
        ('grade = "consider"', 'grade = "none"', '"none"', "is none of its values"),
        ('except_tool = [3, "ball"]\n', "", "[[narrow]]", "expected where the rule counts: tool, material, program"),
        ('except_tool = [3, "ball"]', "except_tol = 3", "except_tol", 'nearest: "except_tool"'),
        ('except_tool = [3, "ball"]', "except_tool = 3.5", "3.5", "expected text in quotes or a whole number"),
        ('rule = "steep-ramp"\ngrade', 'rule = "step-ramp"\ngrade', "step-ramp", 'nearest: "steep-ramp"'),
        ('rule = "steep-ramp"\nexcept', 'rule = "xyz"\nexcept', "xyz", "`gclint why` lists them"),
        ('rule = "steep-ramp"\ngrade', 'rule = "left-of-zero"\ngrade', "left-of-zero", "stands in this very pack"),
        ('rule = "steep-ramp"\ngrade', 'rule = "internal-error"\ngrade', "internal-error", "no pack changes it"),
        ('rule = "steep-ramp"\nexcept', 'rule = "units-unstated"\nexcept', "^[3, ", "belongs to no tool"),
        ('worst = "depth"', 'instead_of = ["steep-rampp"]', "steep-rampp", 'there is no rule "steep-rampp"'),
        ('name = "left-of-zero"', 'name = "steep-ramp"', "steep-ramp", "also stands in rules/entries/steep-ramp.toml"),
    ],
)
def test_what_a_pack_says_about_other_rules_must_make_sense(
    tmp_path: Path, old: str, new: str, where: str, says: str
) -> None:
    before = HOUSE + REGRADE + NARROW
    assert old in before
    text = before.replace(old, new, 1)
    (tmp_path / "house.toml").write_text(text)
    with pytest.raises(Problem) as caught:
        check_together((*shipped_packs(), load_pack(tmp_path / "house.toml")))
    assert says in caught.value.says
    place = at(text, where.removeprefix("^")) if where.startswith(("[[", "^")) else at(text, new, where)
    assert (caught.value.line, caught.value.column) == place


def test_two_packs_do_not_grade_one_rule(tmp_path: Path) -> None:
    for name in ("a", "b"):
        (tmp_path / f"{name}.toml").write_text(f'pack = "{name}"\nabout = "x"\n{REGRADE}')
    packs = [load_pack(tmp_path / f"{name}.toml") for name in ("a", "b")]
    with pytest.raises(Problem, match=r'"steep-ramp" has a grade already, from .*a\.toml; one pack') as caught:
        check_together((*shipped_packs(), *packs))
    assert (caught.value.line, caught.value.column) == (5, 9)
