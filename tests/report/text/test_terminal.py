"""The job sheet: what must stand on it, and that it stays plain text of 80 columns."""

from __future__ import annotations

import io
import re
from dataclasses import replace
from typing import Any

import msgspec
import pytest

from gclint.digest.sheet_words import verdict
from gclint.digest.tool_facts import tool_facts
from gclint.digest.words import Lengths
from gclint.report.text.cautions import cautions
from gclint.report.text.show_out import feed_words, load_words
from gclint.report.text.terminal import ALIKE_NAMED, IN_FULL, closing, sheet
from gclint.report.text.text_sheet import TextSheet, text_sheet_for
from gclint.run import Run, Tables
from gclint.tables.finding import Change, Found, Limits, SetWord


def written(run: Run, paper: TextSheet | None = None) -> str:
    paper = paper or TextSheet()
    sheet(run, paper, "0.1.0")
    closing(paper, cautions(), [(run.checked.path, verdict(run.checked))])
    return paper.text


def joined(text: str) -> str:
    """The sheet with its wrapping undone."""
    return " ".join(text.split())


def test_worst_first_in_plain_words(make_run: Any, make_finding: Any) -> None:
    findings = (make_finding("units-unstated", "consider"), make_finding(), make_finding("straight-plunge", "halt"))
    text = written(make_run(*findings))
    assert text.index("DO NOT RUN (1)") < text.index("Straight plunge") < text.index("CHANGE BEFORE CUTTING (1)")
    assert text.index("CHANGE BEFORE CUTTING") < text.index("Chip too thin") < text.index("CONSIDER (1)")


def test_a_finding_says_where_what_why_and_what_to_change(make_run: Any, make_finding: Any) -> None:
    text = joined(written(make_run(make_finding())))
    assert "rule chip-too-thin tool 1 (eighth down-cut) where lines 6, 7" in text
    assert "line 6 reads: G1 X40 F400" in text
    assert "the chip load that is really cut) 0.0075 mm; good is 0.042 to 0.1 mm (common" in text
    assert "..X.........[0.042 ==== 0.1]" in text
    assert "X is this program" in text
    assert "happens The tooth rubs instead of cutting" in text
    assert "change Feed faster. on line 6 set F400 to F2226" in text


def test_a_word_that_is_missing_is_added(make_run: Any, make_finding: Any) -> None:
    text = written(make_run(make_finding(change=Change("Say how fast.", (SetWord(5, "F", None, 200.0),)))))
    assert "on line 5 add F200" in text


def test_what_was_assumed_not_judged_and_accepted_is_listed(make_run: Any, make_finding: Any) -> None:
    text = joined(written(make_run(make_finding(accepted="tried on scrap"))))
    assert "stock top: Z 0 (work zero), because no stock is declared" in text
    assert "cuts-table: needs the blank's thickness" in text
    assert "chip-too-thin (tool 1), lines 6, 7: tried on scrap" in text
    assert "CHANGE BEFORE CUTTING" not in text


def test_the_tool_strip(make_run: Any) -> None:
    text = joined(written(make_run()))
    assert "tool 1: eighth down-cut, flat, 3.175 mm, 2 flutes, down-cut" in text
    assert "S 18000 set, true speed (what the spindle really turns) 26500 rev/min" in text
    assert "dial F (a mark on the router's speed wheel)" in text
    assert "at most 2 mm deep at once, 3 mm wide" in text


def test_an_inch_program_is_told_in_inches(make_run: Any) -> None:
    text = joined(written(make_run(units="inch")))
    assert "reach X 0 to 2.3622" in text
    assert "7.87 to 15.7 in/min set" in text
    assert "mm/min" not in text


@pytest.mark.parametrize(
    ("grades", "says"),
    [
        (("halt", "change", "change"), "Do not run this program as it is: 1 thing to put right first, then 2 things"),
        (("change", "consider"), "Change 1 thing before cutting."),
        (("consider",), "Nothing must be changed by what could be judged; 1 thing to consider."),
        ((), "Nothing was found by what could be judged."),
    ],
)
def test_the_last_lines_never_call_a_program_safe(
    make_run: Any, make_finding: Any, grades: tuple[str, ...], says: str
) -> None:
    run = make_run(*(make_finding(grade=grade) for grade in grades))
    text = written(run)
    assert says in joined(text.rpartition("IN SHORT")[2])
    assert "1 rule could not be judged" in joined(text)
    assert not re.search(r"\bsafe\b|\bclean\b|\bOK\b|all clear", verdict(run.checked), re.IGNORECASE)


def awkward(make_run: Any, make_finding: Any) -> Run:
    long = "a" * 200
    findings = [
        make_finding(happens=f"{long} and then some words that go on", change=Change("b" * 100 + " " + "words " * 40)),
        make_finding(found=Found(long, "\x1b[31mred\x07", "mm"), rule="r" * 100),
        make_finding(lines=tuple(range(1, 900)), last_line=100_000, count=10**9, worst_line=99_999),
        make_finding(window=Limits(1e-12, 1e12, "mm", "practice", ""), found=Found("chip", 1e15, "mm")),
        make_finding(happens="工具が材料に当たる" * 20),
    ]
    return make_run(*findings, path="/a/very/long/path/" + "deep/" * 30 + "program.nc")


def test_plain_output_stays_within_80_columns_and_has_no_escapes(make_run: Any, make_finding: Any) -> None:
    from rich.cells import cell_len

    text = written(awkward(make_run, make_finding))
    assert max(cell_len(line) for line in text.split("\n")) <= 80
    assert "\x1b" not in text
    assert "\x07" not in text
    assert not re.search("[\u2500-\u259f]", text), "box drawing turns to garbage in some consoles"


def test_colour_says_nothing_that_words_do_not(make_run: Any, make_finding: Any) -> None:
    run = awkward(make_run, make_finding)
    coloured = written(run, TextSheet(colour=True))
    assert "\x1b[" in coloured
    plain = re.sub(r"\x1b\[[0-9;]*m", "", coloured)
    assert [line.rstrip() for line in plain.split("\n")] == written(run).split("\n")


def test_a_pipe_gets_80_plain_columns() -> None:
    paper = text_sheet_for(io.StringIO())
    assert (paper.width, paper.colour) == (80, False)


def test_many_findings_of_one_rule_are_cut_short(make_run: Any, make_finding: Any) -> None:
    text = written(make_run(*(make_finding("rapid-through-stock", "halt", line=n) for n in range(100, 150))))
    assert text.count("rule      rapid-through-stock") == IN_FULL
    assert f"The same again, on lines {100 + IN_FULL}, {101 + IN_FULL}," in joined(text)
    assert f"and {50 - IN_FULL - ALIKE_NAMED} more lines." in joined(text)
    assert "DO NOT RUN (50)" in text


def test_each_tool_has_its_own_worst_in_full(make_run: Any, make_finding: Any) -> None:
    text = written(make_run(*(make_finding(tool=tool) for tool in (1, 1, 1, 1, 2))))
    assert text.count("rule      chip-too-thin") == IN_FULL + 1
    assert joined(text).count("tool 2") == 2  # in the finding and in the strip


def test_a_failed_run_still_makes_a_sheet(make_run: Any, make_finding: Any) -> None:
    whole = make_run(make_finding("internal-error", tool=None, found=None, window=None))
    text = joined(written(Run(whole.checked, None, "change", failed=True)))
    assert "gclint itself failed on part of this program" in text


def test_a_time_that_is_not_known_says_what_would_tell_it(make_run: Any) -> None:
    run = make_run()
    untimed = replace(run, checked=msgspec.structs.replace(run.checked, time_s=None))
    cutting = sum(row.cut_time_s for row in run.checked.tools)
    assert f"time cutting {cutting:.0f} s, the rest unknown: a rate is not stated" in joined(written(untimed))


def test_the_loads_of_a_tool_are_told_as_ranges_of_two_digits(tables: Tables) -> None:
    facts = tool_facts(tables)
    lines = dict(load_words(facts[0], Lengths(inch=False)))
    assert lines["force"] == "3 to 8 N in the heaviest cut, power 5 to 12 W, torque 0.0018 to 0.0043 N m"
    assert lines["bends"] == "0.004 to 0.014 mm at the tip, stress 30 to 80 N/mm2"
    assert load_words(facts[1], Lengths(inch=False)) == []
    assert "0.00016 to 0.00055 in at the tip" in dict(load_words(facts[0], Lengths(inch=True)))["bends"]


def test_a_feed_that_is_reached_is_said_once(tables: Tables) -> None:
    row = tool_facts(tables)[0].row
    assert feed_words(row, Lengths(inch=False)) == "200 to 400 mm/min set and reached"
    slower = msgspec.structs.replace(row, reached_feed_mm_min=(120.0, 400.0))
    assert feed_words(slower, Lengths(inch=False)) == "200 to 400 mm/min set, 120 to 400 mm/min reached"


def test_where_no_force_is_known_the_line_is_called_power(tables: Tables) -> None:
    facts = tool_facts(tables)[0]
    unforced = msgspec.structs.replace(facts, row=msgspec.structs.replace(facts.row, force_n=None))
    assert dict(load_words(unforced, Lengths(inch=False)))["power"] == "5 to 12 W, torque 0.0018 to 0.0043 N m"
