"""plan.toml and grades.toml: what is written reads back, what is wrong is told at its place, nothing is lost."""

from __future__ import annotations

import datetime
import json
import tomllib
from pathlib import Path

import jsonschema
import pytest

from gclint.problem import Problem
from gclint.setup.declared import ToolTable
from gclint.setup.schema import schemas
from gclint.toml.quantity import Feed, Length, Position, Speed
from gclint.trial.plan import FAULTS, Cut, Grade, Plan, begun, graded
from gclint.trial.plan_file import grades_of, grades_text, plan_of, plan_text, read_grades, read_plan, with_grade
from gclint.trial.scales import scales
from gclint.trial.schema import FILES

TOOL = ToolTable(number=1, shape="flat", diameter=Length(3.175), name='eighth "down" cut', flutes=2)


def cut(number: int, **other: object) -> Cut:
    values = {
        "number": number, "tool": 1, "feed": Feed(1200), "speed": Speed(12500), "entry": "ramp", "depth": Length(1.2),
        "at": (Position(10 * number), Position(-5)), "dial": "B", "true_speed": Speed(10700), **other,
    }  # fmt: skip
    return Cut(**values)  # type: ignore[arg-type]


PLAN = Plan(
    plan="cured-epoxy 2026-11-25 4f3a", made=datetime.date(2026, 11, 25), material="cured-epoxy", program="plan.nc",
    coupon=(Length(200), Length(100), Length(18)), corner=(Position(0), Position(0)), field=(Length(40), Length(12)),
    controller="hobby-3-axis", tool=(TOOL,),
    cut=(cut(1), cut(2, feed=Feed(1847.5), entry="straight"), cut(3, repeat_of=1, risky="too deep", dial=None)),
)  # fmt: skip


def placed(text: str, of: str = "plan") -> tuple[str, int | None, int | None]:
    with pytest.raises(Problem) as caught:
        plan_of(text, "plan.toml") if of == "plan" else grades_of(text, "grades.toml", PLAN)
    return caught.value.says, caught.value.line, caught.value.column


def line_of(text: str, part: str) -> int:
    return next(n for n, line in enumerate(text.splitlines(), 1) if part in line)


def test_a_plan_reads_back_as_it_was() -> None:
    text = plan_text(PLAN)
    assert plan_of(text, "plan.toml") == PLAN
    assert plan_text(plan_of(text, "plan.toml")) == text
    assert 'feed = "1847.5 mm/min"' in text
    assert 'at = ["20 mm", "-5 mm"]' in text


def test_both_files_fit_their_schemas() -> None:
    for file, text in (("plan.schema.json", plan_text(PLAN)), ("grades.schema.json", grades_text(PLAN))):
        shipped = Path(__file__).parents[2] / "gclint" / "trial" / file
        schema = schemas(FILES)[file]
        assert json.loads(shipped.read_text(encoding="utf-8")) == schema, "run  python -m gclint.trial.schema"
        jsonschema.Draft202012Validator.check_schema(schema)
        made = json.loads(json.dumps(tomllib.loads(text), default=str))
        jsonschema.Draft202012Validator(schema).validate(made)
    assert set(FILES) == {"plan.schema.json", "grades.schema.json"}


def test_the_sample_fits_the_schemas_and_is_all_graded() -> None:
    folder = Path(__file__).parents[2] / "sample_programs" / "epoxy-trial"
    plan = read_plan(folder / "plan.toml")
    grades = read_grades(folder / "grades.toml", plan)
    assert [grade.cut for grade in grades.grade if graded(grade)] == [cut.number for cut in plan.cut]
    assert all(cut.confirmed == bool(cut.risky) for cut in plan.cut)
    for file, schema in (("plan.toml", "plan.schema.json"), ("grades.toml", "grades.schema.json")):
        made = json.loads(json.dumps(tomllib.loads((folder / file).read_text(encoding="utf-8")), default=str))
        jsonschema.validate(made, schemas(FILES)[schema])


@pytest.mark.parametrize(
    ("old", "new", "says", "at"),
    [
        ("number = 2", "number = 1", "there are two cuts with the number 1", "number = 1"),
        ("repeat_of = 1", "repeat_of = 3", "cut 3 repeats cut 3, which does not stand before it", "repeat_of"),
        ("repeat_of = 1", "repeat_of = 7", "cut 3 repeats cut 7, which does not stand before it", "repeat_of"),
        ('entry = "straight"', 'entry = "stright"', '"stright" is none of its values; nearest: "straight"', "stright"),
        ('feed = "1847.5 mm/min"', "feed = 1847", "needs a unit", "feed = 1847"),
        ('depth = "1.2 mm"', 'deep = "1.2 mm"', 'there is no such key; nearest: "', "deep"),
        ("tool = 1\n", "tool = 4\n", "the plan has no tool 4; it has 1", "tool = 4"),
        ('program = "', 'program = "../', "it names a file beside the plan", "program ="),
    ],
)  # fmt: skip
def test_a_wrong_plan_is_told_at_its_place(old: str, new: str, says: str, at: str) -> None:
    text = plan_text(PLAN)
    before, _, after = text.rpartition(old)
    said, line, column = placed(before + new + after)
    assert says in said or says == "needs a unit"
    assert line is not None
    assert column
    if says != "there are two cuts with the number 1":
        assert line == line_of(before + new + after, at)


def test_grades_start_empty_and_take_what_is_said(tmp_path: Path) -> None:
    text = grades_text(PLAN)
    empty = grades_of(text, "grades.toml", PLAN)
    assert [grade.cut for grade in empty.grade] == [1, 2, 3]
    assert not any(begun(grade) for grade in empty.grade)
    text = text.replace("[[grade]]\ncut = 2", "# the noisy one\n[[grade]]\ncut = 2")
    said = {fault: scales()[fault].words[n % 4] for n, fault in enumerate(FAULTS)}
    made = with_grade(text, "grades.toml", PLAN, 2, {**said, "date": datetime.date(2026, 11, 26), "who": "Ada & \"B\""})
    two = next(grade for grade in grades_of(made, "grades.toml", PLAN).grade if grade.cut == 2)
    assert {fault: getattr(two, fault) for fault in FAULTS} == said
    assert two.date == datetime.date(2026, 11, 26)
    assert two.who == 'Ada & "B"'
    assert graded(two)
    assert "# the noisy one" in made
    assert len(set(made.splitlines()) ^ set(text.splitlines())) <= 2 * (len(said) + 2)  # it diffs well
    again = with_grade(made, "grades.toml", PLAN, 2, {"measured_speed": 10650, "who": None})
    kept = next(grade for grade in grades_of(again, "grades.toml", PLAN).grade if grade.cut == 2)
    assert (kept.measured_speed, kept.who, kept.chipping) == (10650, "", two.chipping)
    (tmp_path / "plan.toml").write_text(plan_text(PLAN), encoding="utf-8")
    (tmp_path / "grades.toml").write_text(again, encoding="utf-8")
    plan = read_plan(tmp_path / "plan.toml")
    assert read_grades(tmp_path / "grades.toml", plan) == grades_of(again, "grades.toml", PLAN)


def test_a_cut_whose_grade_was_taken_out_can_be_graded() -> None:
    bare = 'plan = "cured-epoxy 2026-11-25 4f3a"\n'
    made = with_grade(bare, "grades.toml", PLAN, 3, {"chipping": "bad"})
    assert [(grade.cut, grade.chipping) for grade in grades_of(made, "grades.toml", PLAN).grade] == [(3, "bad")]


@pytest.mark.parametrize(
    ("old", "new", "says", "at"),
    [
        ("cut = 2 ", "cut = 12 ", "the plan has no cut 12; it has 1 to 3", "cut = 12"),
        ("cut = 2 ", "cut = 3 ", "cut 3 is graded twice in this file", None),
        ('melting = ""', 'melting = "abit"', '"abit" is not on the scale of melting or burning', "abit"),
        ('plan = "cured', 'plan = "oak', "two plans are not mixed", 'plan = "oak'),
        ('dust = ""', 'dust = "dust', "this is not TOML", None),
        ('note = ""', "note = 3", "expected text in quotes, got 3", "note = 3"),
        ('debris = ""', 'debri = ""', 'there is no such key; nearest: "debris"', "debri ="),
    ],
)
def test_wrong_grades_are_told_at_their_place(old: str, new: str, says: str, at: str | None) -> None:
    text = grades_text(PLAN).replace(old, new, 1)
    said, line, column = placed(text, "grades")
    assert says in said
    assert line is not None
    assert column is not None
    if at:
        assert line == line_of(text, at)


def test_a_word_off_the_scale_is_answered_with_the_scale() -> None:
    said, _, _ = placed(grades_text(PLAN).replace('chipping = ""', 'chipping = "awful"', 1), "grades")
    assert said.endswith("the scale is: none, slight, clear, bad")


def test_scales_are_whole() -> None:
    assert tuple(scales()) == FAULTS
    for scale in scales().values():
        assert len(scale.step) == 4
        assert len(set(scale.words)) == 4
        assert scale.asks.endswith("?")
        assert all(step.means and step.drawing.isprintable is not None and step.drawing for step in scale.step)
        assert [scale.index(word) for word in scale.words] == [0, 1, 2, 3]
    with pytest.raises(Problem, match='nearest: "slight"'):
        scales()["chipping"].index("slite")
    assert Grade.__struct_fields__[1:8] == FAULTS
