"""`gclint trial grade`: by words and by questions; what is wrong is told, nothing that was entered is lost."""

from __future__ import annotations

import datetime
import io
from collections.abc import Callable
from pathlib import Path

import pytest

from gclint.setup.declared import ToolTable
from gclint.toml.quantity import Feed, Length, Position, Speed
from gclint.trial.plan import FAULTS, Cut, Grade, Plan
from gclint.trial.plan_file import plan_text, read_grades
from gclint.trial.scales import scales

Gclint = Callable[..., tuple[int, str, str]]


def cut(number: int, **other: object) -> Cut:
    values = {
        "number": number, "tool": 1, "feed": Feed(1000), "speed": Speed(12500), "entry": "ramp", "depth": Length(1.2),
        "at": (Position(10), Position(12 * number)), "dial": "B", **other,
    }  # fmt: skip
    return Cut(**values)  # type: ignore[arg-type]


PLAN = Plan(
    plan="hdpe, invented", made=datetime.date(2026, 11, 25), material="hdpe", program="test-cuts.nc",
    coupon=(Length(200), Length(100), Length(18)), corner=(Position(0), Position(0)), field=(Length(40), Length(12)),
    tool=(ToolTable(number=1, shape="flat", diameter=Length(3.175)),),
    cut=(cut(1), cut(2, entry="straight"), cut(3, risky="too deep"), cut(4, risky="too deep", confirmed=True)),
)  # fmt: skip
GOOD = [scales()[fault].words[0] for fault in FAULTS]


@pytest.fixture(autouse=True)
def planned(here: Path) -> Path:
    (here / "plan.toml").write_text(plan_text(PLAN), encoding="utf-8")
    return here


def rows(here: Path) -> dict[int, Grade]:
    return {grade.cut: grade for grade in read_grades(here / "grades.toml", PLAN).grade}


def answers(monkeypatch: pytest.MonkeyPatch, *lines: str) -> None:
    monkeypatch.setattr("sys.stdin", io.StringIO("".join(f"{line}\n" for line in lines)))


def test_words_are_written_for_one_cut(here: Path, gclint: Gclint) -> None:
    code, out, err = gclint("trial", "grade", ".", "--cut", "2", "chipping=bad", "speed=10650 rpm", "--who", "Ada")
    assert (code, err) == (0, "")
    assert "0 of 3 cuts graded" in out
    assert "Begun: 2." in out
    assert "Not graded: 1, 4." in out
    two = rows(here)[2]
    assert (two.chipping, two.measured_speed, two.who) == ("bad", 10650, "Ada")
    assert two.date == datetime.date.today()
    gclint("trial", "grade", "plan.toml", "--cut", "2", "chipping=", "melting=2", "speed=")
    two = rows(here)[2]
    assert (two.chipping, two.melting, two.measured_speed, two.who) == ("", "slight", None, "Ada")


@pytest.mark.parametrize(
    ("args", "says"),
    [
        (("--cut", "9", "chipping=none"), "the plan has no cut 9; it has 1 to 4"),
        (("--cut", "2", "chipping=slite"), 'nearest: "slight"; the scale is: none, slight, clear, bad'),
        (("--cut", "2", "chiping=none"), 'nearest: "chipping"'),
        (("--cut", "2", "none"), "is not of the form NAME=WORD"),
        (("--cut", "2", "speed=fast"), "write the measured rev/min, such as 10650"),
        (("--cut", "2", "speed=-5"), "above zero"),
        (("--cut", "2", "date=yesterday"), "write it as 2026-05-31"),
        (("--cut", "2", "dust=chips", "dust=dust"), '"dust" is said twice'),
        (("chipping=none",), "say which cut the words are about: --cut NUMBER"),
        (("--cut", "3"), "cut 3 is risky and was not confirmed"),
        (("--left", "--cut", "2", "dust=chips"), "--left only says what is left"),
    ],
)
def test_what_is_wrong_is_told_and_nothing_is_written(
    args: tuple[str, ...], says: str, here: Path, gclint: Gclint
) -> None:
    gclint("trial", "grade", ".", "--cut", "1", "chatter=slight")
    before = (here / "grades.toml").read_bytes()
    code, out, err = gclint("trial", "grade", ".", *args)
    assert (code, out) == (2, "")
    assert says in err
    assert err.count("\n") == 1
    assert (here / "grades.toml").read_bytes() == before


def test_a_damaged_file_of_grades_stays_as_it_is_and_is_told_at_its_place(here: Path, gclint: Gclint) -> None:
    gclint("trial", "grade", ".", "--cut", "1", "chatter=slight")
    text = (here / "grades.toml").read_text().replace('chatter = "slight"', 'chatter = "slite"')
    (here / "grades.toml").write_text(text)
    line = next(n for n, each in enumerate(text.splitlines(), 1) if "slite" in each)
    code, _out, err = gclint("trial", "grade", ".", "--cut", "2", "dust=chips")
    assert code == 2
    assert f"grades.toml:{line}:11:" in err
    assert "the scale is: none, slight, clear, bad" in err
    assert (here / "grades.toml").read_text() == text


def test_questions_are_asked_until_all_is_graded(
    here: Path, gclint: Gclint, monkeypatch: pytest.MonkeyPatch
) -> None:
    answers(monkeypatch, "Ada", "1", "awful", "chips", "b", "fine-chips", "", "q")
    code, out, _err = gclint("trial", "grade", ".", "--wear", "new")
    assert code == 0
    assert out.startswith("\nCUT 1 of 4: tool 1, 1000 mm/min, dial B, ramp, 1.2 mm deep")
    assert '"awful" is not on the scale of chips or dust' in out
    assert "the same command goes on from here" in out
    one = rows(here)[1]
    assert (one.chipping, one.dust, one.melting, one.wear, one.who) == ("none", "fine-chips", "", "new", "Ada")
    rest = ["fast", "10650 rpm", "loud at the curve"]
    answers(monkeypatch, "", "", "", "", *GOOD[2:], *rest, "1111111", "q")
    code, out, _err = gclint("trial", "grade", ".")
    assert code == 0
    assert "CUT 3" not in out  # risky and not confirmed: it was never made
    assert "2 of 3 cuts graded." in out
    assert "write the measured rev/min, such as 10650" in out
    one = rows(here)[1]
    assert (one.measured_speed, one.note, one.who, one.wear) == (10650, "loud at the curve", "Ada", "new")
    assert "Not graded: 4." in out
    answers(monkeypatch, "Grace", "two cuts", *["4"] * 7, "q")
    assert "3 of 3 cuts graded." in gclint("trial", "grade", ".", "--cut", "4")[1]
    assert (rows(here)[4].stopped, rows(here)[4].who, rows(here)[4].wear) == ("broke", "Grace", "two cuts")
    assert "3 of 3 cuts graded." in gclint("trial", "grade", ".")[1]


def test_a_file_that_is_broken_while_questions_are_asked_takes_the_answer_once_it_is_mended(
    here: Path, gclint: Gclint, monkeypatch: pytest.MonkeyPatch
) -> None:
    target = here / "grades.toml"

    class Typing(io.StringIO):
        """Somebody saves the file half-way in an editor before the second answer, and mends it after that."""

        count = 0

        def readline(self, *_: object) -> str:  # type: ignore[override]
            self.count += 1
            if self.count == 2:
                self.kept = target.read_text()
                target.write_text(self.kept + "[[grade")
            if self.count == 3:
                target.write_text(self.kept.replace('note = ""', 'note = "from the editor"', 1))
            return ["1\n", "2\n", "\n", "q\n"][self.count - 1]

    monkeypatch.setattr("sys.stdin", Typing())
    code, out, _err = gclint("trial", "grade", ".", "--who", "Ada", "--wear", "new")
    assert code == 0
    assert "Not saved: grades.toml:" in out
    one = rows(here)[1]
    assert (one.chipping, one.dust, one.note) == ("none", "fine-chips", "from the editor")


def test_ctrl_c_keeps_what_was_answered(here: Path, gclint: Gclint, monkeypatch: pytest.MonkeyPatch) -> None:
    class Typing(io.StringIO):
        count = 0

        def readline(self, *_: object) -> str:  # type: ignore[override]
            self.count += 1
            if self.count == 3:
                raise KeyboardInterrupt
            return "2\n"

    monkeypatch.setattr("sys.stdin", Typing())
    code, out, _err = gclint("trial", "grade", ".", "--who", "Ada", "--wear", "new")
    assert code == 0
    assert "Begun: 1." in out
    assert (rows(here)[1].chipping, rows(here)[1].dust, rows(here)[1].melting) == ("slight", "fine-chips", "")


def test_a_line_grades_a_cut_and_can_be_taken_back(here: Path, gclint: Gclint, monkeypatch: pytest.MonkeyPatch) -> None:
    lines = ("?", "12", "u", "dust=2", "", "good", "2 1 1 1 1 - no photo=a.jpg")  # back to 1, then 2, 4 and 2 again
    answers(monkeypatch, *["1"] * 7, "", "", *lines)
    code, out, _err = gclint("trial", "grade", ".", "--who", "Ada", "--wear", "new")
    assert code == 0
    assert "chipping  1 none  2 slight  3 clear  4 bad" in out
    assert "7 grades are wanted" in out
    assert "here are 1" in out
    assert "Taken back." in out
    made = rows(here)
    assert (made[1].chipping, made[1].dust) == ("", "fine-chips")
    assert made[2].chipping == "slight"  # skipped, and asked again behind the others
    assert (made[2].tool, made[2].stopped, made[2].photos) == ("", "no", ("a.jpg",))
    assert made[4].stopped == "no"
    assert made[4].who == "Ada"


@pytest.mark.parametrize(
    ("said", "word"),
    [
        ("chipping=a little", "slight"), ("chipping=no", "none"), ("stopped=none", "no"), ("dust=only dust", "dust"),
        ("tool=A little worn", "a-little-worn"), ("chatter=a lot", "bad"),
    ],
)  # fmt: skip
def test_words_people_use_are_taken(said: str, word: str, here: Path, gclint: Gclint) -> None:
    assert gclint("trial", "grade", ".", "--cut", "2", said)[0] == 0
    assert getattr(rows(here)[2], said.partition("=")[0]) == word


def test_no_saying_stands_for_two_words() -> None:
    for scale in scales().values():
        said = [*scale.words, *(each for step in scale.step for each in step.also)]
        assert len(said) == len(set(said))
