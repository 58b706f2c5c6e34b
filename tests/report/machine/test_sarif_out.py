"""The SARIF log beside the run it tells of."""

from __future__ import annotations

import hashlib
import json
from pathlib import Path
from typing import Any

import pytest

from gclint.check import run
from gclint.problem import Problem
from gclint.program.read import read
from gclint.report.machine.sarif_out import FINGERPRINT, Sarif
from gclint.setup.declare import Options

PROGRAM = """G21 G90 G94 G17 G54
T1 M6
M3 S18000
G4 P5
G0 Z5
G0 X0 Y0
G1 Z-1 F200
G1 X40 F300
G0 Z5
G0 X0 Y10
G1 Z-1 F200
G1 X40 F300
G0 Z5
M5
M30
"""
OPTIONS = Options(material="cured-epoxy", tools=("1: flat 6mm 2fl up-cut",), stock="60 x 40 x 9 mm at -10 -10")


def log_of(*texts: str | bytes, name: str = "plank.nc", options: Options = OPTIONS) -> dict[str, Any]:
    writer = Sarif()
    for text in texts:
        writer.add(run(text.encode() if isinstance(text, str) else text, name, options))
    made: dict[str, Any] = json.loads(writer.text(1))
    return made["runs"][0]  # type: ignore[no-any-return]


def prints(made: dict[str, Any]) -> list[str]:
    return [result["partialFingerprints"][FINGERPRINT] for result in made["results"]]


def repaired(text: str, result: dict[str, Any]) -> str:
    """The program with the first fix of a result made, by the columns of the log (UTF-16 code units)."""
    lines = text.splitlines()
    [change] = result["fixes"][0]["artifactChanges"]
    for replacement in reversed(change["replacements"]):
        region = replacement["deletedRegion"]
        assert region["startLine"] == region["endLine"]
        units = lines[region["startLine"] - 1].encode("utf-16-le")
        start, end = 2 * (region["startColumn"] - 1), 2 * (region["endColumn"] - 1)
        made = units[:start] + replacement["insertedContent"]["text"].encode("utf-16-le") + units[end:]
        lines[region["startLine"] - 1] = made.decode("utf-16-le")
    return "\n".join(lines) + "\n"


def test_every_finding_is_a_result_of_a_known_rule() -> None:
    made = log_of(PROGRAM)
    checked = run(PROGRAM.encode(), "plank.nc", OPTIONS).checked
    assert [result["ruleId"] for result in made["results"]] == [finding.rule for finding in checked.findings]
    assert made["results"]
    rules = made["tool"]["driver"]["rules"]
    for result, finding in zip(made["results"], checked.findings):
        rule = rules[result["ruleIndex"]]
        assert rule["id"] == result["ruleId"]
        assert rule["shortDescription"]["text"]
        assert rule["help"]["markdown"]
        assert {"grade", "standing", "source"} <= set(rule["properties"])
        assert result["level"] == {"halt": "error", "change": "warning", "consider": "note"}[finding.grade]
        assert finding.happens[1:] in result["message"]["text"]
    assert made["artifacts"][0]["hashes"]["sha-256"] == hashlib.sha256(PROGRAM.encode()).hexdigest()
    assert made["artifacts"][0]["location"] == {"uri": "plank.nc", "uriBaseId": "%SRCROOT%"}
    assert made["columnKind"] == "utf16CodeUnits"


def test_columns_count_utf16_code_units() -> None:
    text = PROGRAM.replace("G1 X40 F300", "(\U0001fa9a\U0001fa9a é) G1 X40 F300", 1)
    result = next(r for r in log_of(text)["results"] if r["ruleId"] == "chip-too-thin")
    region = result["locations"][0]["physicalLocation"]["region"]
    line = text.splitlines()[region["startLine"] - 1].encode("utf-16-le")
    assert line[2 * region["startColumn"] - 2 : 2 * region["endColumn"] - 2].decode("utf-16-le") == "F300"
    assert region["snippet"]["text"] == "F300"
    assert region["startColumn"] == "(__ é) G1 X40 F300".index("F") + 1 + 2


def test_a_fix_sets_every_word_of_the_change_and_reads_back() -> None:
    text = PROGRAM.replace("G1 X40 F300", "(\U0001fa9a) G1 X40 F300")
    result = next(r for r in log_of(text)["results"] if r["ruleId"] == "chip-too-thin")
    wanted = {(each["line"], each["word"]): each["to"] for each in result["properties"]["set"]}
    assert len(wanted) >= 2
    mended = repaired(text, result)
    program = read(mended.encode(), "mended.nc")
    for (line, word), to in wanted.items():
        block = program.block_line.tolist().index(line)
        words = slice(int(program.block_word[block]), int(program.block_word[block + 1]))
        values = dict(zip(program.word_letter[words].tolist(), program.word_value[words].tolist()))
        assert values[ord(word)] == pytest.approx(to)
    assert "chip-too-thin" not in [r["ruleId"] for r in log_of(mended)["results"]]


def test_no_fix_where_nothing_can_be_set() -> None:
    for result in log_of(PROGRAM)["results"]:
        assert ("fixes" in result) <= bool(result["properties"].get("set"))


@pytest.mark.parametrize(
    "edit",
    [
        lambda text: "(a note)\n\n; another\n" + text,
        lambda text: "".join(f"N{n}0 {line}\n" for n, line in enumerate(text.splitlines(), 1)),
        lambda text: text.lower().replace(" ", "  "),
        lambda text: text.replace("G1 X40 F300", "G1X40F300 (to the end)"),
    ],
)
def test_a_fingerprint_lives_through_edits_elsewhere(edit: Any) -> None:
    before, after = log_of(PROGRAM), log_of(edit(PROGRAM))
    assert sorted(prints(before)) == sorted(prints(after))
    assert before["results"] != after["results"]


def test_fingerprints_differ_by_what_is_found_and_by_each_occurrence() -> None:
    made = log_of(PROGRAM)
    assert len(set(prints(made))) == len(prints(made)) >= 2
    faster = log_of(PROGRAM.replace("G1 Z-1 F200", "G1 Z-1 F210", 1))
    assert set(prints(made)) != set(prints(faster))


def test_the_same_fault_twice_is_two_results_that_keep_apart() -> None:
    text = PROGRAM.replace("G0 X0 Y10\n", "G1 X5 X6\nG0 Z5\ng1 x5 X6 (again)\nG0 X0 Y10\n")
    made = [r for r in log_of(text)["results"] if r["ruleId"] == "word-conflict"]
    keys = [r["partialFingerprints"][FINGERPRINT] for r in made]
    assert len(set(keys)) == len(keys) == 2


def test_acceptances_are_suppressions_with_their_reason(tmp_path: Path) -> None:
    inside = PROGRAM.replace("G1 Z-1 F200", "(gclint accept straight-plunge because the hole is there)\nG1 Z-1 F200", 1)
    (tmp_path / "job.toml").write_text('[[accept]]\nrule = "chip-too-thin"\nbecause = "wax, tried"\n', encoding="utf-8")
    options = Options(OPTIONS.material, OPTIONS.tools, OPTIONS.stock, job=str(tmp_path / "job.toml"))
    made = log_of(inside, options=options)
    found = {r["ruleId"]: r["suppressions"][0] for r in made["results"] if "suppressions" in r}
    assert found["straight-plunge"]["kind"] == "inSource"
    assert found["straight-plunge"]["justification"] == "the hole is there"
    assert found["chip-too-thin"]["kind"] == "external"
    assert found["chip-too-thin"]["justification"] == "wax, tried"
    assert all(s["status"] == "accepted" for s in found.values())
    assert any("suppressions" not in r for r in made["results"])


def test_related_places_tell_where_words_were_set() -> None:
    made = log_of(PROGRAM)
    thin = next(r for r in made["results"] if r["ruleId"] == "chip-too-thin")
    said = {
        place["physicalLocation"]["region"]["startLine"]: place["message"]["text"] for place in thin["relatedLocations"]
    }
    assert said[2] == "T (tool) is set here"
    assert said[3] == "S (speed) is set here"
    assert "lso here" in said[12]
    ids = [place["id"] for place in thin["relatedLocations"]]
    assert len(set(ids)) == len(ids)


def test_what_is_not_judged_and_not_read_is_notified() -> None:
    writer = Sarif()
    writer.add(run(PROGRAM.encode(), "plank.nc", Options(tools=OPTIONS.tools)))
    writer.missed(Problem("this file is empty; there is nothing to check", "sub dir/empty.nc"))
    invocation = json.loads(writer.text(2))["runs"][0]["invocations"][0]
    assert invocation["exitCode"] == 2
    assert invocation["executionSuccessful"] is False
    notes = invocation["toolExecutionNotifications"]
    blind = next(n for n in notes if n.get("associatedRule", {}).get("id") == "chip-too-thin")
    assert blind["level"] == "note"
    assert "material" in blind["message"]["text"]
    [unread] = [n for n in notes if n["level"] == "error"]
    assert unread["locations"][0]["physicalLocation"]["artifactLocation"]["uri"] == "sub%20dir/empty.nc"


def test_the_same_input_gives_the_same_bytes_and_programs_keep_apart() -> None:
    def text() -> str:
        writer = Sarif()
        for name in ("a.nc", "b.nc"):
            writer.add(run(PROGRAM.encode(), name, OPTIONS))
        return writer.text(1)

    assert text() == text()
    made = json.loads(text())["runs"][0]
    half = len(made["results"]) // 2
    assert [r["locations"][0]["physicalLocation"]["artifactLocation"]["index"] for r in made["results"]] == [
        *([0] * half), *([1] * half),
    ]  # fmt: skip
    assert prints(made)[:half] == prints(made)[half:]  # a host tells them apart by the file


def test_standard_input_and_names_that_are_no_unicode() -> None:
    made = log_of(PROGRAM, name="standard input")
    assert "uri" not in made["artifacts"][0]["location"]
    assert log_of(PROGRAM, name="bad\udcff.nc")["artifacts"][0]["location"]["uri"] == "bad%FF.nc"


def test_no_fix_where_the_dial_must_be_turned_as_well(tmp_path: Path) -> None:
    dial = '[spindle]\nkind = "dial"\ndial = [{ mark = "A", stated = 9000 }, { mark = "B", stated = 26000 }]\n'
    (tmp_path / "shop.toml").write_text(dial, encoding="utf-8")
    options = Options(OPTIONS.material, OPTIONS.tools, OPTIONS.stock, shop=str(tmp_path / "shop.toml"))
    made = log_of(PROGRAM.replace("S18000", "S26000"), options=options)
    turned = [r for r in made["results"] if "S" in {each["word"] for each in r["properties"].get("set", ())}]
    assert turned
    assert all("fixes" not in r for r in turned)


def test_one_fix_mends_every_place_of_its_finding() -> None:
    text = PROGRAM.replace("G1 Z-1 F200", "G1 Z-1 F1800").replace("F300", "F1800")
    options = Options("birch-plywood", OPTIONS.tools, OPTIONS.stock)
    result = next(r for r in log_of(text, options=options)["results"] if r["ruleId"] == "plunge-too-fast")
    assert len(result["properties"]["lines"]) == 2
    assert "plunge-too-fast" not in [r["ruleId"] for r in log_of(repaired(text, result), options=options)["results"]]


def test_the_log_describes_the_rules_it_refers_to_and_no_others() -> None:
    made = log_of(PROGRAM, options=Options(tools=OPTIONS.tools))
    rules = made["tool"]["driver"]["rules"]
    assert [rule["id"] for rule in rules] == list(dict.fromkeys(result["ruleId"] for result in made["results"]))
    notes = made["invocations"][0]["toolExecutionNotifications"]
    blind = {note["associatedRule"]["id"] for note in notes if "associatedRule" in note}
    assert blind - {rule["id"] for rule in rules}
    for note in notes:
        if "index" in note.get("associatedRule", {}):
            assert rules[note["associatedRule"]["index"]]["id"] == note["associatedRule"]["id"]


def test_rules_and_notifications_have_all_that_hosts_ask_for() -> None:
    """What the validator of the standard asks for in its rules SARIF1001, SARIF2005, SARIF2012 and GH2012."""
    driver = log_of(PROGRAM)["tool"]["driver"]
    assert driver["informationUri"].startswith("https://")
    assert driver["fullName"].startswith("gclint ")
    for each in (*driver["rules"], *driver["notifications"]):
        assert each["fullDescription"]["text"].endswith(".")
        assert each["help"]["text"]
        assert each["name"].isalpha()
        assert each["name"].lower() != each["id"].lower()
        assert each["helpUri"].startswith(driver["informationUri"])


def test_links_lead_to_files_of_the_source() -> None:
    driver = log_of(PROGRAM)["tool"]["driver"]
    root = Path(__file__).parents[3]
    for each in (*driver["rules"], *driver["notifications"]):
        assert (root / each["helpUri"].removeprefix(driver["informationUri"] + "/")).is_file()


def test_a_comment_that_leaks_has_a_fix() -> None:
    text = "(Pocket (2) north)\n" + PROGRAM
    [result] = [each for each in log_of(text)["results"] if each["ruleId"] == "comment-leftover"]
    mended = repaired(text, result)
    assert mended.splitlines()[0] == "(Pocket  2  north)".replace("  ", " ")
    assert mended.splitlines()[1:] == PROGRAM.splitlines()
    assert "comment-leftover" not in {each["ruleId"] for each in log_of(mended)["results"]}


def test_a_wait_in_the_other_unit_and_modes_that_are_never_stated_have_a_fix(tmp_path: Path) -> None:
    (tmp_path / "shop.toml").write_text('[machine]\ncontroller = "rs274ngc"\n')
    text = "G21 G94 G54\nM3 S16000\nG4 P2000\nG0 Z5\nG0 X0 Y0\nG1 Z-1 F300\nG2 X10 Y10 I10 J0 F1500\nG0 Z5\nM30\n"
    options = Options(tools=OPTIONS.tools, stock=OPTIONS.stock, shop=str(tmp_path / "shop.toml"))
    found = {result["ruleId"]: result for result in log_of(text, options=options)["results"]}
    wait, modes = found["dwell-unit-suspect"], found["state-unstated"]
    assert "G4 P2\n" in repaired(text, wait)
    assert "G0 Z5 G90 G17\n" in repaired(text, modes)
    for rule, result in (("dwell-unit-suspect", wait), ("state-unstated", modes)):
        assert rule not in [each["ruleId"] for each in log_of(repaired(text, result), options=options)["results"]]
    blind = Options(tools=OPTIONS.tools, stock=OPTIONS.stock)  # what an undeclared controller counts is not known
    assert not any("fixes" in each for each in log_of(text, options=blind)["results"]
                   if each["ruleId"] in ("dwell-unit-suspect", "state-unstated"))  # fmt: skip
