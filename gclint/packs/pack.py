"""Rule packs: how they are written in TOML, and the checked form that judging runs.

A pack that ships is a folder: `group.toml` says what it is for, and each rule is a file of its own name. It is compiled
when the package is built (`shipped_packs.py`); house packs (one file) and a source checkout are compiled in memory
(`compile_rule`). Whatever is wrong in a pack is a Problem with file, line, column and what was
expected. The descriptions of the keys are what `gclint pack facts --as markdown` prints.
"""

from __future__ import annotations

from typing import Annotated, Literal

import msgspec
from msgspec import Meta, Struct

from gclint.language.expression import Expression

Grade = Literal["halt", "change", "consider"]
Standing = Literal["measured", "published", "derived", "practice", "memory"]
# What is at fault, and so where a finding stands and what makes one finding of many places.
CAUSES = {
    "move": "the move, on its line; one finding for each value of F in force",
    "feed": "the F word in force, on its line; one finding for each value of F",
    "axis": "the F word in force (of the table moves); one for each value of F, those that Z limits apart",
    "tool": "all F words of the tool together, on the line of the first; one finding for each tool",
    "speed": "the S word in force, on its line; one finding for each value of S",
    "depth": "the Z word in force, on its line; one finding for each tool",
    "line": "each line for itself; one finding for each line, and one for all that is only to consider",
    "found": "what was found; one finding for each text that was found",
    "sort": "each sort of fault (of the table faults); one finding for each `sort`, with its worst line",
    "once": "the program as a whole, on the line of the worst row; one finding",
}
Cause = Literal["move", "feed", "axis", "tool", "speed", "depth", "line", "found", "sort", "once"]
# Where findings of `cause_of` follow from a finding: in the whole program, behind its line, of its tool, or at its
# lines and at those that its words govern. The farthest reaching root counts.
Reach = Literal["program", "behind", "tool", "places"]
REACHES = ("program", "behind", "tool", "places")
# How a place is drawn: Z along the way, the bite from above, a cut across the way, the job from above, what was found
# beside its limits, lines of the program.
View = Literal["side", "bite", "section", "plan", "measure", "listing"]
MAY_BE_ASSUMED = ("", "stock", "spoilboard")  # behind "declared." in a window's `of`
GROUP_FILE = "group.toml"  # in the folder of a pack that ships, beside its rules
CORE = "core"  # looks_at of the rules that gclint's own machinery finds


class Part(Struct, frozen=True, forbid_unknown_fields=True):
    """Every table of a pack: unknown keys are refused."""


def _says(text: str) -> Meta:
    return Meta(description=text)


WhenKey = Annotated[str, _says("the condition under which this case counts; the last case stands without it")]


class Limit(Part, frozen=True):
    """A number a condition uses, by name, with where it comes from."""

    value: Annotated[str | float, _says('the number with its unit in quotes ("3 mm", "20 %"), or a plain number')]
    standing: Annotated[Standing, _says("how well it is known")]
    source: Annotated[str, _says("where it comes from, in words")]
    bounds: Annotated[
        Literal["", "wall", "rough", "stress", "power"],
        _says(
            "what the operating window takes it for, in a shipped rule: the bending of the tip beside a wall (`wall`) "
            "or elsewhere (`rough`), the share of the allowed stress (`stress`) or of the spindle's power (`power`)"
        ),
    ] = ""


class GradeCase(Part, frozen=True):
    grade: Grade
    when: WhenKey = ""


class TextCase(Part, frozen=True):
    text: str
    when: WhenKey = ""


class FoundText(Part, frozen=True):
    name: Annotated[str, _says("what was measured, in words")]
    value: Annotated[str, _says("an expression: the measured value (a number or a text)")]
    unit: Annotated[str, _says("the unit to show it in")] = ""


class WindowText(Part, frozen=True):
    """`of` says where standing and source come from: "limits.NAME", "card.NAME", "chip", or "declared".

    "declared.stock" and "declared.spoilboard" are told as assumed where nobody declared them.
    """

    of: Annotated[
        str,
        _says(
            'where standing and source of the window come from: "limits.NAME" (a limit of this rule), "card.NAME" (a '
            'window of the material\'s card, such as "card.depth_slot"), "chip" (the chip window), "declared", '
            '"declared.stock" or "declared.spoilboard" (what shop and job declare)'
        ),
    ]
    low: Annotated[str, _says("an expression: the least that is good")] = ""
    high: Annotated[str, _says("an expression: the most that is good; 0 where none is good")] = ""


class Example(Part, frozen=True):
    """A small program with its declarations; in must_find, `line` is where the finding stands."""

    says: Annotated[str, _says("what the program is, in words")]
    program: Annotated[str, _says("the program itself; its line 1 is the first line behind the opening quotes")]
    line: Annotated[int | None, _says("in must_find: the line on which the finding must stand")] = None
    grade: Annotated[Grade | None, _says("in must_find: the grade it must have")] = None
    findings: Annotated[int | None, _says("in must_find: how many findings of the rule there must be")] = None
    material: Annotated[str | None, _says("name of a material, as `gclint material` lists them")] = None
    tools: Annotated[tuple[str, ...], _says('one text a tool, as for --tool: "1: flat 6mm 2fl up-cut"')] = ()
    stock: Annotated[str | None, _says('as for --stock: "120 x 80 x 18 mm at 0 0" (size, lowest corner)')] = None
    shop: Annotated[str | None, _says("the text of a shop.toml")] = None
    job: Annotated[str | None, _says("the text of a job.toml")] = None
    files: Annotated[dict[str, str], _says("further .toml files beside the program, such as a material card")] = {}


class RuleText(Part, frozen=True):
    """One rule as its pack writes it."""

    name: Annotated[str, _says("plain words in small letters, joined with hyphens, that name the problem")]
    title: Annotated[str, _says("the problem in one sentence without a full stop")]
    looks_at: Annotated[str, _says("the table whose rows the condition is worked out for")]
    grade: Annotated[
        Grade | tuple[GradeCase, ...],
        _says("halt (do not run this), change (will cut badly or wear) or consider; or a list of cases"),
    ]
    happens: Annotated[str | tuple[TextCase, ...], _says("what will happen at the machine; or a list of cases")]
    why: Annotated[str, _says("why it matters, in a beginner's words")]
    standing: Annotated[Standing, _says("how well the rule itself is known")]
    source: Annotated[str, _says("where the rule comes from, in words")]
    owner: Annotated[str, _says("who answers for the rule")]
    when: Annotated[str, _says("the condition; a row for which it is true is found")] = ""
    cause: Annotated[Cause, _says("what is at fault, so what makes one finding of many rows")] = "move"
    points_at: Annotated[tuple[str, ...], _says("letters of the word at fault, the likeliest first")] = ()
    line: Annotated[str, _says("an expression: the line the finding stands on, where rows have no line")] = ""
    found: Annotated[FoundText | None, _says("the measured value")] = None
    window: Annotated[WindowText | None, _says("what the measured value is held against")] = None
    worst: Annotated[
        str, _says("an expression: of many rows the one with the largest value is told; usually the farthest outside")
    ] = ""
    worst_after: Annotated[
        str, _says("an expression: the share of the cut length that is passed over before the worst place is told")
    ] = ""
    change: Annotated[str | tuple[TextCase, ...], _says("what to change; or a list of cases")] = ""
    advice: Annotated[str, _says("a worked-out change with numbers, put before `change`")] = ""
    instead_of: Annotated[
        tuple[str, ...], _says("rules that are not told as well where this one finds the same cause")
    ] = ()
    instead_when: Annotated[str, _says("a condition: `instead_of` holds only where it is true")] = ""
    cause_of: Annotated[
        tuple[str, ...],
        _says(
            "rules, and packs with all of theirs, whose findings follow from this one: all are told as one entry"
        ),
    ] = ()
    cause_of_found: Annotated[
        dict[str, tuple[str, ...]], _says("further ones of `cause_of`, where the text of `found` begins with this")
    ] = {}
    reaches: Annotated[Reach, _says("which of those findings follow from it")] = "places"
    mended_by: Annotated[
        tuple[str, ...], _says("of a shipped rule: the menders that answer it, files of gclint/mend")
    ] = ()
    left_to: Annotated[str, _says("of a shipped rule that is never mended: what is for a person to say, in words")] = ""
    limits: Annotated[dict[str, Limit], _says("every number the conditions judge by, by name")] = {}
    subject: Annotated[
        str, _says("what it is about, of rules/model/subjects.toml; else what rules on its table are about")
    ] = ""
    drawn_as: Annotated[
        tuple[View, ...], _says("how a place is drawn, where not as its subject says: for `gclint why` and --teach")
    ] = ()
    define: Annotated[
        dict[str, str], _says("names for parts of conditions; each may use those before it")
    ] = {}
    must_find: Annotated[tuple[Example, ...], _says("programs in which it must be found")] = ()
    must_leave: Annotated[tuple[Example, ...], _says("programs it must leave alone")] = ()


Which = str | int | tuple[str | int, ...]


class RegradeText(Part, frozen=True):
    """Another grade for a rule of another pack."""

    rule: Annotated[str, _says("the rule's name")]
    grade: Annotated[Grade, _says("the grade its findings have from now on")]
    because: Annotated[str, _says("the reason, which every report shows")]


class NarrowText(Part, frozen=True):
    """Where a rule of another pack counts. Several keys: all of them must hold."""

    rule: Annotated[str, _says("the rule's name")]
    because: Annotated[str, _says("the reason, which every report shows")]
    tool: Annotated[Which, _says("it counts for these tools only: numbers in the program, or names of shop.toml")] = ()
    material: Annotated[str | tuple[str, ...], _says("it counts in these materials only: names of cards")] = ()
    program: Annotated[
        str | tuple[str, ...], _says('it counts in these programs only: file names, "sign-*" for many')
    ] = ()
    except_tool: Annotated[Which, _says("it counts for all tools but these")] = ()
    except_material: Annotated[str | tuple[str, ...], _says("it counts in all materials but these")] = ()
    except_program: Annotated[str | tuple[str, ...], _says("it counts in all programs but these")] = ()


SCOPES = ("tool", "material", "program", "except_tool", "except_material", "except_program")  # of NarrowText


class PackText(Part, frozen=True):
    pack: Annotated[str, _says("the pack's name")]
    about: Annotated[str, _says("what it is for, in one sentence")]
    rule: Annotated[tuple[RuleText, ...], _says("its rules, each under [[rule]]")] = ()
    regrade: Annotated[tuple[RegradeText, ...], _says("other grades for rules of other packs")] = ()
    narrow: Annotated[tuple[NarrowText, ...], _says("where rules of other packs count")] = ()


class GroupText(Part, frozen=True):
    """The file `group.toml` of a pack whose rules are files beside it."""

    pack: str
    about: str


class RuleFile(Part, frozen=True):
    """The file of one rule beside a `group.toml`."""

    rule: tuple[RuleText, ...]


Template = list[str | Expression]


class Cased(Struct, frozen=True):
    """One case of a grade or a text; the first whose condition holds counts."""

    when: Expression | None
    grade: str = ""
    text: Template = []


class Regrade(Struct, frozen=True):
    """The grades a rule had before a house pack changed them, with the file and the reason."""

    was: tuple[Cased, ...]
    by: str
    because: str


class Rule(Struct, frozen=True):
    """A rule in its checked form, with its text beside it."""

    text: RuleText
    grades: tuple[Cased, ...]
    happens: tuple[Cased, ...]
    change: tuple[Cased, ...]
    when: Expression | None = None
    line: Expression | None = None
    found: Expression | None = None
    low: Expression | None = None
    high: Expression | None = None
    worst: Expression | None = None
    worst_after: Expression | None = None
    instead_when: Expression | None = None
    regrade: Regrade | None = None

    @property
    def name(self) -> str:
        return self.text.name


class Pack(Struct, frozen=True):
    name: str
    about: str
    path: str
    rules: tuple[Rule, ...]
    regrades: tuple[RegradeText, ...] = ()
    narrows: tuple[NarrowText, ...] = ()
    house: bool = False
    split: bool = False  # `path` is a folder, and each rule a file in it

    def file_of(self, rule: str) -> str:
        """The file a rule of this pack is written in."""
        return f"{self.path}/{rule}.toml" if self.split else self.path


def as_json(packs: tuple[Pack, ...], fingerprint: str) -> bytes:
    return msgspec.json.encode(Shipped(fingerprint, packs))


class Shipped(Struct, frozen=True):
    """The packs that ship, as the build wrote them; `fingerprint` is of the TOML texts and of the facts."""

    fingerprint: str
    packs: tuple[Pack, ...]
