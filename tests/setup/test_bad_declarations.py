"""Each wrong key, unit or type in a declaration gives one sentence with file, line, column and what to write."""

from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from gclint.problem import Problem
from gclint.setup.declared import Job, Shop
from gclint.toml.file import decode
from tests.strategies import STEADY

TOOL = '[[tool]]\nnumber = 1\nshape = "flat"\ndiameter = "6 mm"\n'

SHOP_FAULTS = [
    ('[machine]\ntravel = { x = "600" }', 2, 16, 'machine.travel.x: "600" has no unit; write "600 mm" or "23.6 in"'),
    ("[machine]\ntravel = { x = 600 }", 2, 16, 'machine.travel.x: 600 has no unit; write "600 mm" or "23.6 in"'),
    ('[machine]\ntravle = { x = "6 mm" }', 2, 1, 'machine.travle: there is no such key; nearest: "travel"'),
    ('[machne]\nname = "x"', 1, 1, 'machne: there is no such key; nearest: "machine"'),
    ('[machine]\nrapid = { x = "500 mm" }', 2, 15, "but a feed is wanted"),
    ('[machine]\nrapid = "500 mm/min"', 2, 9, 'expected a table, got "500 mm/min"'),
    ('[machine]\nacceleration = { z = "200 mm/s" }', 2, 22, "but an acceleration is wanted"),
    ('[machine]\nhomes = "no"', 2, 9, 'machine.homes: expected true or false, got "no"'),
    ('[machine]\nstiffness = "300 N"', 2, 13, "but a stiffness is wanted"),
    ("[machine]\nname = 3", 2, 8, "machine.name: expected text in quotes, got 3"),
    ('[spindle]\nkind = "dail"', 2, 8, '"dail" is none of its values; nearest: "dial"'),
    ("[spindle]\nrange = [8000]", 2, 9, "expected a list of 2, got 1"),
    ('[spindle]\nrange = [8000, "fast"]', 2, 16, '"fast" is not a speed'),
    ('[spindle]\nspin_up = "4 mm"', 2, 11, "but a time is wanted"),
    ('[spindle]\ndial = [ { mark = "A" } ]', 2, 10, 'the key "stated" is missing'),
    ("[spindle]\ndial = 5", 2, 8, "expected a list in square brackets, got 5"),
    (TOOL + "flutes = 0", 5, 10, "tool.flutes: 0 is out of range (1 to 100)"),
    (TOOL + "flutes = 2.5", 5, 10, "tool.flutes: expected a whole number, got 2.5"),
    (TOOL + 'helix = "upcut"', 5, 9, 'nearest: "up-cut"'),
    (TOOL + 'stickout = "-3 mm"', 5, 12, "must be above zero"),
    (TOOL + 'colour = "red"', 5, 1, "tool.colour: there is no such key"),
    (TOOL.replace('"flat"', '"fat"'), 3, 9, 'tool.shape: "fat" is none of its values; nearest: "flat"'),
    ('[[tool]]\nshape = "flat"\ndiameter = "6 mm"', 1, 1, 'tool: the key "number" is missing'),
    ('[windows."mdf".1]\nfz = ["0.1 mm"]', 2, 6, "expected a list of 2, got 1"),
    ('[windows."mdf".1]\nsolt = { fz = ["0.1 mm", "0.2 mm"] }', 2, 1, 'nearest: "slot"'),
    ("[machine]\nname = ", 2, 8, "this is not TOML"),
    ("[machine]\nname = 'x'\nname = 'y'", 3, 11, "this is not TOML"),
]

JOB_FAULTS = [
    ('z_zero = "top"', 1, 10, '"top" is none of its values; nearest: "stock-top"'),
    ("z_zero = { above = 3 }", 1, 12, 'nearest: "above_table"'),
    ('z_zero = { above_table = "3" }', 1, 26, "has no unit"),
    ("program = 3", 1, 11, "expected text in quotes or a list, got 3"),
    ('fail_at = "halts"', 1, 11, 'nearest: "halt"'),
    ("tool_map = { \"3\" = 'one' }", 1, 20, "expected a whole number"),
    ('[stock]\nsize = ["1 mm", "2 mm"]', 2, 8, "expected a list of 3, got 2"),
    ('[stock]\nsize = ["1 mm", "2 mm", "0 mm"]', 2, 25, "must be above zero"),
    ('[hold]\nby = "glue"', 2, 6, "is none of its values"),
    ('[hold]\nspoilboard = "-1 mm"', 2, 14, "must be zero or more"),
    ('[[keep_out]]\nname = "clamp"\nto = ["1 mm", "1 mm", "1 mm"]', 1, 1, 'the key "from" is missing'),
    ('[[accept]]\nrule = "straight-plunge"', 1, 1, 'the key "because" is missing'),
    ("shop = 1979-05-27", 1, 8, "expected text in quotes, got a date"),
]


@pytest.mark.parametrize(("text", "line", "column", "says"), SHOP_FAULTS)
def test_shop_fault(text: str, line: int, column: int, says: str) -> None:
    with pytest.raises(Problem) as caught:
        decode(text, Shop, "shop.toml")
    assert (caught.value.path, caught.value.line, caught.value.column) == ("shop.toml", line, column)
    assert says in caught.value.says


@pytest.mark.parametrize(("text", "line", "column", "says"), JOB_FAULTS)
def test_job_fault(text: str, line: int, column: int, says: str) -> None:
    with pytest.raises(Problem) as caught:
        decode(text, Job, "job.toml")
    assert (caught.value.path, caught.value.line, caught.value.column) == ("job.toml", line, column)
    assert says in caught.value.says


def attempt(text: str, into: type) -> object:
    try:
        return decode(text, into, "f.toml")
    except Problem as problem:
        return problem


_values = st.recursive(
    st.sampled_from(["true", "3", '"6 mm"', '"x"', "1.5", "nan", "-inf", "1979-05-27", '"flat"']),
    lambda inner: st.one_of(
        st.lists(inner, max_size=3).map(lambda items: f"[{', '.join(items)}]"),
        st.dictionaries(st.sampled_from(["x", "fz", "kind", "odd key"]), inner, max_size=2).map(
            lambda table: "{ " + ", ".join(f'"{key}" = {value}' for key, value in table.items()) + " }"
        ),
    ),
    max_leaves=5,
)
_keys = st.sampled_from([*Shop.__struct_fields__, *Job.__struct_fields__, "nothing"])


@settings(deadline=None)
@given(st.dictionaries(_keys, _values, max_size=4), st.sampled_from([Shop, Job]))
def test_any_toml_is_read_or_placed(table: dict[str, str], into: type) -> None:
    text = "\n".join(f"{key} = {value}" for key, value in table.items())
    outcome = attempt(text, into)
    assert isinstance(outcome, into) or (isinstance(outcome, Problem) and outcome.line is not None)


@STEADY
@given(st.text(max_size=60))
def test_any_text_is_read_or_refused(text: str) -> None:
    outcome = attempt(text, Job)
    assert isinstance(outcome, Job) or (isinstance(outcome, Problem) and outcome.path == "f.toml")


def test_deep_nesting_is_refused() -> None:
    with pytest.raises(Problem):
        decode("program = " + "[" * 5000 + "]" * 5000, Job, "job.toml")
