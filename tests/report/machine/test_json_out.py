"""The JSON document against the contract, its schema and itself."""

from __future__ import annotations

import json
from typing import Any

import jsonschema

from gclint.report.machine.json_out import SCHEMA_FILE, schema, to_json
from gclint.report.text.cautions import USUAL, cautions
from gclint.tables.finding import Document


def document(make_run: Any, *findings: Any) -> dict[str, Any]:
    made: dict[str, Any] = json.loads(to_json(Document("0.1.0", (make_run(*findings).checked,), cautions())))
    return made


def test_the_shipped_schema_is_the_one_the_structs_make() -> None:
    shipped = json.loads(SCHEMA_FILE.read_text(encoding="utf-8"))
    assert shipped == schema(), "run  python -m gclint.report.machine.json_out"


def test_a_document_fits_its_schema(make_run: Any, make_finding: Any) -> None:
    made = document(make_run, make_finding(), make_finding(tool=None, found=None, window=None, accepted="tried"))
    jsonschema.Draft202012Validator.check_schema(schema())
    jsonschema.Draft202012Validator(schema()).validate(made)


def test_the_keys_are_those_of_the_contract(make_run: Any, make_finding: Any) -> None:
    made = document(make_run, make_finding())
    assert set(made) == {"gclint", "programs", "cautions", "schema_version", "not_read", "passed_over"}
    program = made["programs"][0]
    assert set(program) == {
        "path", "lines", "findings", "not_judged", "assumed", "tools", "extent_mm", "time_s", "units",
        "fingerprint", "texts", "paper", "house", "acceptances", "used", "signed",
    }
    assert set(program["findings"][0]) >= {
        "rule", "grade", "line", "last_line", "lines", "worst_line", "column", "count", "tool", "found", "window",
        "happens", "change",
    }
    assert program["findings"][0]["change"]["set"] == [{"line": 6, "word": "F", "from": 400, "to": 2226}]
    assert set(program["tools"][0]) == {
        "tool", "name", "passes", "entries", "cut_length_mm", "cut_time_s", "rapid_time_s", "set_feed_mm_min",
        "reached_feed_mm_min", "set_speed_rpm", "true_speed_rpm", "fz_mm", "h_ex_mm", "ap_max_mm", "ae_max_mm",
        "removed_mm3", "force_n", "power_w", "torque_nm", "bend_mm", "stress_n_mm2", "margins", "marks",
    }
    assert program["tools"][1]["fz_mm"] is None


def test_cautions_name_each_danger_and_promise_nothing() -> None:
    text = " ".join(USUAL).lower()
    for danger in ("eye", "dust", "fire", "hands", "held", "not a promise", "supervision"):
        assert danger in text
    assert cautions(("Oak: dust.", "Oak: dust.", ""))[len(USUAL) :] == ("Oak: dust.",)
