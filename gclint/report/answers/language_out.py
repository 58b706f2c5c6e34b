"""The reference page of the rule language, made from the code that reads packs: `gclint pack facts --as markdown`."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from pathlib import Path
from typing import Any

import msgspec.inspect as inspect
from msgspec import Struct

from gclint.advice.change import ADVICE
from gclint.facts.fact import Fact, Table
from gclint.facts.registry import BESIDE, neighbour_facts, tables
from gclint.facts.setup import SETUP, tool_facts
from gclint.language.dimensions import UNITS, dimension_name
from gclint.language.expression import (
    DEEPEST,
    DEEPEST_CODE,
    FUNCTIONS,
    LONGEST,
    MOST_STEPS,
    NUMBER,
    RESERVED,
    TEXT,
    TRUTH,
)
from gclint.packs.advice_names import ADVICE_ON
from gclint.packs.compile_rule import MOST_RULES, MOST_STEPS_OF_PACK
from gclint.packs.pack import (
    CAUSES,
    Example,
    FoundText,
    GradeCase,
    Limit,
    NarrowText,
    PackText,
    RegradeText,
    RuleText,
    TextCase,
    WindowText,
)
from gclint.toml.file import LARGEST_FILE

EXAMPLE = Path(__file__).with_name("shop_pack_example.toml")

OPERATORS: tuple[tuple[str, str], ...] = (
    ("`-a`", "a number with its sign turned"),
    ("`a * b`, `a / b`", "product and quotient; dimensions multiply and divide; a division by 0 is unknown"),
    ("`a + b`, `a - b`", "sum and difference of two numbers of one dimension"),
    ("`a < b`, `a <= b`, `a > b`, `a >= b`", "order of two numbers of one dimension; `0 mm < a <= b` asks both"),
    ("`a == b`, `a != b`", "whether two numbers, a fact and a text in quotes, or two truths are the same"),
    ("`a in [..]`, `a not in [..]`", "whether a text or a number is one of a list of texts or numbers"),
    ("`not a`", "the opposite of a condition"),
    ("`a and b`", "both conditions"),
    ("`a or b`", "at least one of them"),
)

# table, expression, what it asks; the tests compile each against its table
EXPRESSIONS: tuple[tuple[str, str, str], ...] = (
    ("moves", "rapid and in_contact", "a rapid that removes material"),
    ("moves", "z < -18 mm", "an end below Z -18"),
    ("moves", "not first_of_tool and z < previous.z and length < 2 mm", "a short move down, not the tool's first"),
    ("moves", "arc and next.arc and not rapid", "an arc behind which another arc follows"),
    ("pieces", 'operation == "slot" and ap > 0.5 * tool.diameter', "a full-width cut deeper than half the diameter"),
    ("pieces", "h_ex < chip_low and chip_judged", "a chip thinner than its window, where chips can be judged"),
    ("pieces", 'material.name in ["mdf", "birch-plywood"] and edge_speed > edge_high', "an edge too fast in a board"),
    ("pieces", "run(ae > 0.9 * tool.diameter) >= 20 mm", "full width for 20 mm without a break"),
    ("pieces", "share(climb < 0.5, ap > 1 mm) > 30 %", "over a third of this tool's deep cuts are conventional"),
    ("entries", 'kind == "ramp" and slope > window.ramp_limit', "a ramp steeper than the material's card allows"),
    ("entries", "first_of_tool and under >= 1", "the tool's first entry, with its whole disc on solid material"),
    ("entries", "known(tool.centre_cutting) and not tool.centre_cutting", "a tool known not to cut at its centre"),
    ("passes", "either(spindle.spin_up, 3 s) > waited", "a wait shorter than the spin-up time, or 3 s"),
    ("changes", "not first and tool.number in [1, 4]", "a later change to tool 1 or 4"),
    ("speeds", "abs(set_speed - stated) > 500 rev/min", "an S that is far from its dial mark"),
    ("program", 'time > 45 min and program.name != "long.nc"', "a program of over 45 minutes, but for one"),
)


def page() -> str:
    """The whole page as Markdown."""
    parts = [
        _START, _judged(), "## The keys of a pack\n", *_keys(), _expressions(), _units(), _functions(), _unknown(),
        _names(), _limits(), _texts(), _proof(), _house(), _advice(), _cannot(), _whole(), *_tables(),
    ]  # fmt: skip
    return "\n".join(part.rstrip("\n") + "\n" for part in parts)


_START = """# The rule language

This page is made from gclint's own code (`gclint pack facts --as markdown`), so it lists what there is and nothing
else. It is all you need to write rules of your own. `gclint pack facts TABLE` shows one of its tables on the screen,
`gclint why RULE` shows a rule that ships, and the rules that ship (`rules/*/*.toml`) are written in this language. The
keys have a JSON Schema, `pack.schema.json` in `gclint/packs`, by which many editors complete a pack as you type.

## Begin

A **pack** is one TOML file. A **rule** in it looks at the rows of one **table** (moves, entries, tool changes, the
whole program ...) and says by a **condition** which rows are found. This is a whole pack:

```toml
pack = "ours"
about = "What our workshop asks of every program."

[[rule]]
name = "below-the-board"
title = "The tool goes below our boards"
looks_at = "moves"
when = "lowest < floor"
grade = "change"
found = { name = "Z of the tip", value = "lowest", unit = "mm" }
window = { of = "limits.floor", low = "floor" }
happens = "The tip goes to Z {lowest}; our boards end at Z {floor}."
change = "Stop at Z {floor}."
why = "The table below has no board to cut into."
standing = "practice"
source = "our boards are 18 mm thick"
owner = "our workshop"

[rule.limits]
floor = { value = "-18 mm", standing = "practice", source = "the thickness of our boards" }

[[rule.must_find]]
says = "a move to Z-20"
program = '''
G21 G90
G0 X0 Y0 Z-20
M30
'''
line = 2

[[rule.must_leave]]
says = "a move to Z-17"
program = '''
G21 G90
G0 X0 Y0 Z-17
M30
'''
```

Save it as `house.toml` and prove it: `gclint pack check house.toml` reads the pack, checks every expression, and runs
the examples. Then name it in the job, `packs = ["house.toml"]` at the top of `job.toml`, or in `shop.toml` for every
job of the shop (a path seen from that file). `gclint check` now judges by it as by the rules that ship."""


def _judged() -> str:
    causes = _table(("cause", "what is at fault"), [(f"`{name}`", said) for name, said in CAUSES.items()])
    return f"""## How a rule is judged

The condition `when` is worked out for every row of the table at once. Where it is **true**, the row is found. Where
it is **false**, it is not. Where a fact is missing that decides, it is **unknown**: the row is not found, and the
report lists the rule under NOT JUDGED with the declaration that would let it judge.

Found rows with one cause become one finding, which stands on the line of what is at fault, tells the worst place and
lists the others. Rows of different tools or grades are never one finding, but for `once`. `cause` says what is at
fault:

{causes}
The worst row is the one with the largest `worst`; without that key, the one whose `found` value lies farthest outside
its `window`; without those, the first."""


_GROUPS: tuple[tuple[str, type[Struct], str], ...] = (
    ("At the top of the file", PackText, ""),
    ("`[[rule]]`", RuleText, "A rule; `[rule.limits]`, `[[rule.must_find]]` ... belong to the rule above them."),
    ("`grade` as a list of cases", GradeCase, "The first case whose condition is true counts."),
    ("`happens` or `change` as a list of cases", TextCase, "The first case whose condition is true counts."),
    ("`found`", FoundText, ""),
    ("`window`", WindowText, ""),
    ("`[rule.limits]`, for each name", Limit, ""),
    ("`[[rule.must_find]]` and `[[rule.must_leave]]`", Example, ""),
    ("`[[regrade]]`", RegradeText, "Gives a rule of another pack another grade."),
    ("`[[narrow]]`", NarrowText, "Says where a rule of another pack counts. Several keys: all of them must hold."),
)


def _keys() -> Iterable[str]:
    for title, kind, says in _GROUPS:
        info: Any = inspect.type_info(kind)
        rows = []
        for field in info.fields:
            description = getattr(field.type, "extra_json_schema", None) or {}
            needed = "yes" if field.required or (kind is RuleText and field.encode_name == "when") else ""
            rows.append((f"`{field.encode_name}`", _kind_of(field.type), needed, description.get("description", "")))
        lead = f"{says}\n\n" if says else ""
        yield f"### {title}\n\n{lead}" + _table(("key", "holds", "needed", "meaning"), rows)


def _kind_of(kind: Any) -> str:
    name = type(kind).__name__
    if name == "Metadata":
        return _kind_of(kind.type)
    if name == "UnionType":
        return " or ".join(dict.fromkeys(_kind_of(each) for each in kind.types if type(each).__name__ != "NoneType"))
    if name == "LiteralType":
        return "one of " + ", ".join(f'"{value}"' for value in kind.values)
    if name == "VarTupleType":
        inner = _kind_of(kind.item_type)
        return "tables" if inner == "a table" else "a list of texts" if inner == "text" else "a list"
    plain = {"StrType": "text", "IntType": "a whole number", "FloatType": "a number", "StructType": "a table",
             "DictType": "a table"}  # fmt: skip
    return plain[name]


def _expressions() -> str:
    rows = [(f"`{expression}`", table, says) for table, expression, says in EXPRESSIONS]
    words = ", ".join(f"`{word}`" for word in RESERVED)
    return f"""## Expressions

A condition, a value or a placeholder is an expression. It is made of **names** (facts, limits, definitions),
**numbers with their unit** (`3 mm`, `20 %`, `1500 mm/min`), **texts in quotes** (`"slot"` or `'slot'`), `true` and
`false`, the operators below, functions and round brackets. Line breaks and blanks mean nothing, so a long condition
may stand in `'''` quotes on many lines. In TOML, put a condition that holds `"` into `'` quotes: `when = 'kind ==
"ramp"'`.

Each part has a kind: a number (of some dimension), a truth (yes or no), or a text. `when` must be a truth. Operators,
those that bind tightest first:

{_table(("written", "means"), OPERATORS)}
Reserved words: {words}. Texts may only be compared with texts in quotes, and only with words that the fact can say.
There is no order among texts and truths.

Some conditions, with the table they look at (in a pack, each number in them would be a limit with a name, see below):

{_table(("condition", "table", "asks for"), rows)}"""


def _units() -> str:
    groups: dict[str, list[str]] = {}
    for unit, (_, dimension) in UNITS.items():
        groups.setdefault(dimension_name(dimension), []).append(f"`{unit}`" if unit else "no unit")
    rows = [(name, ", ".join(units)) for name, units in groups.items()]
    return f"""## Units

A number takes its unit along, and both sides of a comparison or a sum must be of one dimension: `ap > 3` is an error
that asks for `3 mm`. Teeth and revolutions are counted without a unit, so `set_feed / (set_speed * tool.flutes)` is a
length.

{_table(("dimension", "units"), rows)}"""


def _functions() -> str:
    rows = [(f"`{function.call}`", function.says) for function in FUNCTIONS.values()]
    return f"""## Functions

{_table(("call", "gives"), rows)}
`share`, `total` and `run` need the table `pieces`, whose rows have a length.
"""


def _unknown() -> str:
    values = {"true": True, "unknown": None, "false": False}
    words = {value: name for name, value in values.items()}

    def both(a: bool | None, b: bool | None) -> bool | None:
        return False if a is False or b is False else None if a is None or b is None else True

    def one(a: bool | None, b: bool | None) -> bool | None:
        return True if a is True or b is True else None if a is None or b is None else False

    rows = [
        (a, b, words[both(values[a], values[b])], words[one(values[a], values[b])]) for a in values for b in values
    ]
    return f"""## Unknown

A fact that nobody declared is unknown, never false and never 0. Whatever is computed from it is unknown too, unless
the rest decides:

{_table(("a", "b", "a and b", "a or b"), rows)}
`not unknown` is unknown. A comparison with an unknown side is unknown. `known(a)` asks whether a fact is known, and
`either(a, b)` takes the first one that is; use them only where not knowing is no reason to stay silent. So put what
decides most first, and ask for no fact you do not need: a rule that asks for the material says nothing to those who
did not declare one."""


def _names() -> str:
    return """## Names

What a condition may name, in this order:

- the **facts of its table** (below), such as `z` or `ap`;
- `previous.NAME` and `next.NAME`: the same facts in the **row before and the row behind of the same tool**, for
tables marked so below. They are unknown where there is no such row; say `not first_of_tool and previous.z > z` (or
`not last_of_tool and next. ...`) so that the end of the row of rows is false and not unknown;
- `first_of_tool`, `last_of_tool`, `first_of_program`, `last_of_program`: truths, for the same tables;
- `tool.NAME`, `window.NAME`: the **row's tool and its windows** in this material, for tables whose rows have a tool;
- `material.NAME`, `machine.NAME`, `spindle.NAME`, `controller.NAME`, `stock.NAME`, `hold.NAME`, `program.NAME`: what
shop and job **declare**, for every table;
- the rule's own **limits** and **definitions**. A definition is a part of a condition with a name, and may use
limits, facts and the definitions before it: `[rule.define]` with `deep = "depth > times * tool.diameter"`, and then
`when = "deep and not rapid"`.

A row's line is its fact `line`; tool numbers are those of the program.
"""


def _limits() -> str:
    standings = (
        ("`measured`", "this shop's own test cuts or measurements"),
        ("`published`", "a source that anybody can look up"),
        ("`derived`", "arithmetic or geometry, which needs no source"),
        ("`practice`", "common practice or a rule of the house"),
        ("`memory`", "from memory, to be looked up"),
    )
    return f"""## Limits

A number by which a rule judges never stands in the condition itself. It stands under `[rule.limits]` with a name, its
value, its standing and its source, and the condition uses the name:

```toml
when = "ap > times * tool.diameter"

[rule.limits]
times = {{ value = 2, standing = "practice", source = "a rule of our house" }}
```

A value with a unit is a text (`"3 mm"`), a plain number is one (`2`, `0.5`). Free in conditions are 0 of any unit, 1,
and what stands in a list (`tool.number in [1, 4]`), since that names things and measures none. Names are small
letters, digits and `_`. A limit that nothing uses is an error. `standing` is one of these:

{_table(("standing", "means"), standings)}
A limit may hold a negative value. `window` shows the limits beside the value that was found, with standing and source.
"""


def _texts() -> str:
    return """## Texts

`happens` says what will happen at the machine, `change` what to do about it, in whole sentences that a beginner
understands. In both, `{...}` is a placeholder: an expression, worked out for the worst row. A number is shown with
its unit, and in inches where the program speaks inches; `{set_feed | m/min}` shows it in another unit of the same
dimension, `{depth | 0.01 mm}` with two decimals, noughts too. A truth is shown as yes, no or unknown. So: `"Tool
{tool.number} goes {depth} deep, {depth / tool.diameter} times its diameter."` A number of one's own in a placeholder
needs no limit. A text may be a list of cases: `[ { when = "rapid", text = "..." }, { text = "..." } ]`.

`advice` puts a change worked out by gclint before `change`, with the words to set; see below for what there is.
"""


def _proof() -> str:
    return """## Proof

A rule without examples is a guess. Give at least one program that must be found and one that must be left alone,
better two of each, and among the second kind the program that a careless condition would shout at: just under the
limit, another tool, the air above the blank. Each example is a program with what the rule needs to know:

```toml
[[rule.must_find]]
says = "a slot of 8 mm with a 3 mm tool"
program = '''
G21 G90 G94 G17 G54
T1 M6
M3 S16000
G0 Z5
G0 X10 Y10
G1 Z-8 F200
G1 X50 F900
G0 Z5
M5
M30
'''
tools = ["1: flat 3mm 2fl up-cut"]
material = "softwood"
stock = "80 x 40 x 18 mm at 0 0"
line = 6
grade = "change"
```

`tools`, `material` and `stock` are written as on the command line (`NUMBER: SHAPE DIAMETER [FLUTESfl] [HELIX]`; size
and lowest corner); `shop` and `job` hold whole declarations as text. Tables that rest on the model of the stock
(pieces, entries, passes) are empty without a `tools`. The finding of a `pieces` or `moves` rule stands on the line of
the move, unless its `cause` is a word. `gclint pack check house.toml` says for each rule whether it is proved, and
which example did not come out as written. Exit code 0: all proved; 1: one is not; 2: the pack is faulty, with file,
line, column and what was expected."""


def _house() -> str:
    return """## Rules of other packs

A house pack may change what ships, never silently: each change needs its reason, and every report shows the change
where it matters, with the file and the reason (HOUSE RULES on the sheet, `house` and `regraded` in JSON). A rule that
said `halt` and says less is shown always.

```toml
[[regrade]]
rule = "up-cut-on-brittle-top"
grade = "change"
because = "our boards are sold with their edges as they come from the machine"

[[narrow]]
rule = "straight-plunge"
except_tool = [4, "spot drill"]
except_program = "test-*"
because = "tool 4 is ground to plunge, and test pieces are thrown away"
```

One pack may hold rules, regrades and narrows together. A rule that does not exist, a missing reason and a rule that
two packs grade differently are errors. What is fine in one job only is no house rule: accept it there (`[[accept]]`
in `job.toml`)."""


def _advice() -> str:
    rows = [(f"`{name}`", ADVICE_ON[name], _first_sentence(made)) for name, made in ADVICE.items()]
    return f"""## Advice

{_table(("advice", "for the table", "works out"), rows)}"""


def _first_sentence(made: Any) -> str:
    return " ".join((made.__doc__ or "").split("\n\n")[0].split())


def _cannot() -> str:
    return f"""## What a pack cannot do

It cannot run code, loop, read files, reach a network or change a program. Its bounds: {LARGEST_FILE // 1_000_000} MB
of text, {MOST_RULES} rules, {LONGEST} characters, {DEEPEST} brackets within each other and {MOST_STEPS} steps
({DEEPEST_CODE} within each other) for one expression with its definitions written out, and {MOST_STEPS_OF_PACK} steps
for all conditions of a pack. Names of columns are worked out only when a rule that is in force asks for them."""


def _whole() -> str:
    return f"""## A whole house pack

The Lowtide workshop (an invented one) asks two things: no tool under 3 mm goes deeper than twice its diameter, and M0
stands before every tool change. It also wants the edge of its boards whole. `sample_programs/lowtide-house.toml` is
this file, and `sample_programs/drift-box` is a job that it judges.

```toml
{EXAMPLE.read_text(encoding="utf-8").strip()}
```
"""


def _tables() -> Iterable[str]:
    yield "## Tables and facts\n"
    rows = [
        (f"`{table.name}`", table.meaning, "yes" if table.tool else "", "yes" if table.neighbours else "")
        for table in tables().values()
    ]
    yield _table(("table", "its rows are", "has a tool", "has neighbours"), rows)
    for table in tables().values():
        yield table_part(table)
    yield "### The row's tool and its windows\n\n" + _fact_table(tool_facts(lambda context: None))
    yield "### Shop, job, material, machine and controller\n\n" + _fact_table(SETUP)


def table_part(table: Table) -> str:
    """One table and its own facts."""
    sides = ", ".join(f"`{side}.NAME` ({which} of the same tool)" for side, which in BESIDE.items())
    besides = f"\nBesides: {sides}.\n" if table.neighbours else ""
    return f"### `{table.name}`: {table.meaning}\n\n{_fact_table(_own(table))}{besides}"


def fact_lists(chosen: str | None) -> Iterable[tuple[str, list[tuple[str, str, str]]]]:
    """(title, rows of name, kind, meaning) of every table, or of all that rules on the chosen one can use."""
    every = tables()
    for table in [every[chosen]] if chosen else every.values():
        rows = _rows(_own(table))
        if table.neighbours:
            rows += [(f"{side}.NAME", "as NAME", f"NAME in {which} of the same tool") for side, which in BESIDE.items()]
        yield table.name.upper(), rows
    if chosen is None or every[chosen].tool is not None:
        yield "THE ROW'S TOOL AND ITS WINDOWS", _rows(tool_facts(lambda context: None))
    yield "SHOP, JOB, MATERIAL, MACHINE AND CONTROLLER", _rows(SETUP)


def _rows(facts: dict[str, Fact]) -> list[tuple[str, str, str]]:
    return [(name, fact.unit or ("yes or no" if fact.kind == TRUTH else fact.kind), fact.meaning)
            for name, fact in facts.items()]  # fmt: skip


def _own(table: Table) -> dict[str, Fact]:
    """The table's facts, and those of its place among its neighbours."""
    return {**table.facts, **{name: fact for name, fact in neighbour_facts(table).items() if not fact.beside}}


def _fact_table(facts: dict[str, Fact]) -> str:
    rows = [(f"`{name}`", kind_words(fact), fact.meaning, fact.needs) for name, fact in facts.items()]
    return _table(("name", "kind", "meaning", "unknown without"), rows)


def kind_words(fact: Fact) -> str:
    """What a fact holds: its unit, yes or no, or the words it may say."""
    if fact.kind == TRUTH:
        return "yes or no"
    if fact.kind == TEXT:
        return "text: " + ", ".join(word or '""' for word in fact.words) if fact.words else "text"
    assert fact.kind == NUMBER
    return fact.unit or "number"


def _table(titles: Sequence[str], rows: Iterable[Sequence[str]]) -> str:
    lines = [titles, ["---"] * len(titles), *rows]
    return "\n".join("| " + " | ".join(cell.replace("|", "\\|") for cell in line) + " |" for line in lines) + "\n"
