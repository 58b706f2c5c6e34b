"""What the desk saves: the same files, remarks kept, nobody's change lost."""

from __future__ import annotations

import tomllib
from collections.abc import Iterator
from pathlib import Path

import pytest

from gclint.desk.declarations import Wrong, with_changes
from tests.desk.conftest import PLATE, Running, running

JOB = """# the slip's plate
material = "beech" # from the yard

[stock]
# measured by hand
size = ["80 mm", "60 mm", "12 mm"]

[[accept]]
rule = "cuts-table"
because = "a spoilboard"
"""


@pytest.fixture
def shop(tmp_path: Path) -> Path:
    above = tmp_path / "lowtide"
    jobs = above / "jobs"
    jobs.mkdir(parents=True)
    (above / "shop.toml").write_text('# the bench router\n[[tool]]\nnumber = 1\nshape = "flat"\ndiameter = "6 mm"\n')
    (jobs / "plate.nc").write_text(PLATE)
    return jobs


@pytest.fixture
def desk(shop: Path) -> Iterator[Running]:
    with running(shop) as made:
        yield made


def test_a_save_keeps_every_remark(shop: Path, desk: Running) -> None:
    (shop / "job.toml").write_text(JOB)
    told = desk.save("plate.nc", "job", (["stock", "corner"], ["-5 mm", "-5 mm"]), (["z_zero"], "stock-top"))
    assert told.status_code == 200
    text = (shop / "job.toml").read_text()
    assert [line for line in JOB.splitlines() if line not in text.splitlines()] == []
    read = tomllib.loads(text)
    assert read["stock"]["corner"] == ["-5 mm", "-5 mm"]
    assert read["z_zero"] == "stock-top"
    assert read["accept"][0]["rule"] == "cuts-table"


def test_the_sheet_follows_what_was_saved(desk: Running) -> None:
    before = desk.get("/api/program", name="plate.nc").json()
    assert any("material" in need for need, _ in before["asks"]["needs"])
    blank = before["drawing"]["proposed"]
    size = [*(f"{each} mm" for each in blank["size"]), "12 mm"]
    corner = [f"{each} mm" for each in blank["corner"]]
    desk.save("plate.nc", "job", (["material"], "beech"), (["stock", "size"], size), (["stock", "corner"], corner))
    after = desk.get("/api/program", name="plate.nc").json()
    assert not any(need.startswith("the material:") for need, _ in after["asks"]["needs"])
    assert after["drawing"]["blank"]["x"] == [blank["corner"][0], blank["corner"][0] + blank["size"][0]]
    # plate: centre of the tool X 0 to 60 and Y 0 to 40, radius 3; in steps of 5 mm that is -5 to 65 and -5 to 45
    assert blank == {"corner": [-5, -5], "size": [70, 50], "deep": 2.0}


def test_a_file_that_was_changed_meanwhile_is_not_written_over(shop: Path, desk: Running) -> None:
    (shop / "job.toml").write_text(JOB)
    seen = desk.get("/api/state", name="plate.nc").json()["job"]["fingerprint"]
    theirs = JOB.replace("beech", "mdf")
    (shop / "job.toml").write_text(theirs)
    told = desk.save("plate.nc", "job", (["z_zero"], "table"), seen=seen)
    assert told.status_code == 409
    assert (shop / "job.toml").read_text() == theirs


def test_two_windows_lose_nothing(shop: Path, desk: Running) -> None:
    (shop / "job.toml").write_text(JOB)
    seen = desk.get("/api/state", name="plate.nc").json()["job"]["fingerprint"]
    assert desk.save("plate.nc", "job", (["z_zero"], "table"), seen=seen).status_code == 200
    assert desk.save("plate.nc", "job", (["dial"], "A"), seen=seen).status_code == 409
    assert desk.save("plate.nc", "job", (["dial"], "A")).status_code == 200
    read = tomllib.loads((shop / "job.toml").read_text())
    assert (read["z_zero"], read["dial"]) == ("table", "A")


def test_a_declaration_above_the_folder_is_changed_after_a_yes_alone(shop: Path, desk: Running) -> None:
    state = desk.get("/api/state", name="plate.nc").json()["shop"]
    above = shop.parent / "shop.toml"
    assert state["name"] == str(above)
    assert not state["within"]
    before = above.read_text()
    change = (["tool", 0, "flutes"], 2)
    assert desk.save("plate.nc", "shop", change).status_code == 403
    assert above.read_text() == before
    assert desk.save("plate.nc", "shop", change, yes=True).status_code == 200
    assert above.read_text().startswith("# the bench router\n")
    assert tomllib.loads(above.read_text())["tool"][0]["flutes"] == 2


def test_a_save_is_taken_back(shop: Path, desk: Running) -> None:
    (shop / "job.toml").write_text(JOB)
    made = desk.save("plate.nc", "job", (["material"], "mdf")).json()
    given = {"name": "plate.nc", "which": "job", "file": made["name"], "before": made["before"], "after": made["after"]}
    assert desk.post("/api/back", **given).status_code == 200
    assert (shop / "job.toml").read_text() == JOB
    assert desk.post("/api/back", **given).status_code == 409  # it is not what was saved any more


def test_taking_back_the_first_save_takes_the_file_away(shop: Path, desk: Running) -> None:
    made = desk.save("plate.nc", "job", (["material"], "mdf")).json()
    given = {"name": "plate.nc", "which": "job", "file": made["name"], "before": made["before"], "after": made["after"]}
    assert made["before"] is None
    assert desk.post("/api/back", **given).status_code == 200
    assert not (shop / "job.toml").exists()


def test_taking_back_names_no_other_file(shop: Path, desk: Running) -> None:
    made = desk.save("plate.nc", "job", (["material"], "mdf")).json()
    other = shop.parent / "shop.toml"
    given = {"name": "plate.nc", "which": "job", "file": str(other), "before": "gone", "after": made["after"]}
    assert desk.post("/api/back", **given).status_code == 409
    assert other.read_text().startswith("# the bench")


def test_every_error_is_told_at_its_field(shop: Path, desk: Running) -> None:
    told = desk.save("plate.nc", "job", (["stock", "measured_thickness"], "thick"), (["hold", "by"], "hope"))
    assert told.status_code == 422
    assert set(told.json()["fields"]) == {"stock.measured_thickness", "hold.by"}
    assert not (shop / "job.toml").exists()


@pytest.mark.parametrize("text", ['material = "beech', "[stock\n", 'material = 3\nz_zero = "up"\n', "\x00", "a." * 200])
def test_a_broken_job_file_is_shown_and_stays(shop: Path, desk: Running, text: str) -> None:
    (shop / "job.toml").write_text(text)
    state = desk.get("/api/state", name="plate.nc").json()["job"]
    assert state["wrong"]
    told = desk.get("/api/program", name="plate.nc")
    assert told.status_code == 422
    assert "Traceback" not in told.text
    assert desk.get("/sheet/check", name="plate.nc").status_code == 422
    told = desk.save("plate.nc", "job", (["dial"], "A"))
    assert told.status_code == 422
    assert (shop / "job.toml").read_text() == text


def test_values_that_were_wrong_before_can_be_put_right(shop: Path, desk: Running) -> None:
    (shop / "job.toml").write_text('material = "beech"\nz_zero = "up" # to ask\n')
    assert desk.get("/api/state", name="plate.nc").json()["job"]["fields"].keys() == {"z_zero"}
    assert desk.save("plate.nc", "job", (["z_zero"], "table")).status_code == 200
    assert desk.get("/api/program", name="plate.nc").status_code == 200


@pytest.mark.parametrize(
    "value", ['x" \n[machine]\nname = "y', "\u202eabc", "a" * 400, {"a": {"b": {"c": {"d": {"e": 1}}}}}, [[[[[1]]]]]]
)
def test_no_value_writes_more_than_itself(value: object) -> None:
    from gclint.problem import Problem

    with pytest.raises(Problem):
        with_changes(b'material = "beech"\n', "job", [{"key": ["dial"], "value": value}], "job.toml")


def test_tables_are_added_changed_and_taken_away() -> None:
    made = with_changes(None, "shop", [
        {"key": ["tool", 0], "value": {"number": 1, "shape": "flat", "diameter": "1/8 in"}},
        {"key": ["tool", 1], "value": {"number": 2, "shape": "v", "diameter": "6 mm", "angle": "60 deg"}},
        {"key": ["spindle", "dial"], "value": [{"mark": "A", "stated": 9500}, {"mark": "B", "stated": 12000}]},
        {"key": ["machine", "travel", "x"], "value": "600 mm"},
    ], "shop.toml")  # fmt: skip
    changes = [{"key": ["tool", 0, "flutes"], "value": 2}, {"key": ["tool", 1], "value": None}]
    again = with_changes(made, "shop", changes, "shop.toml")
    read = tomllib.loads(again.decode())
    assert read["tool"] == [{"number": 1, "shape": "flat", "diameter": "1/8 in", "flutes": 2}]
    assert [row["mark"] for row in read["spindle"]["dial"]] == ["A", "B"]
    assert read["machine"]["travel"] == {"x": "600 mm"}


def test_line_ends_and_the_mark_at_the_front_stay() -> None:
    before = b'\xef\xbb\xbfmaterial = "beech"\r\n[stock]\r\nmeasured_thickness = "12 mm"\r\n'
    made = with_changes(before, "job", [{"key": ["stock", "measured_thickness"], "value": "11.6 mm"}], "job.toml")
    assert made == before.replace(b"12 mm", b"11.6 mm")


def test_two_faults_are_told_at_once() -> None:
    changes = [{"key": ["spindle", "power"], "value": "much"}, {"key": ["machine", "homes"], "value": 3}]
    with pytest.raises(Wrong) as told:
        with_changes(None, "shop", changes, "shop.toml")
    assert set(told.value.fields) == {"spindle.power", "machine.homes"}
