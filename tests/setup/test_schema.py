"""The shipped JSON Schemas are the ones the structs make, and say what the reader says."""

from __future__ import annotations

import json
import tomllib
from pathlib import Path

import jsonschema
import pytest

import gclint.setup.schema as made
from gclint.cards.proof import prove
from gclint.problem import Problem

HERE = Path(made.__file__).parent
ROOT = HERE.parents[1]

# the examples of the contract, with invented values of the Lowtide workshop
SHOP = '''
[machine]
name = "bench router"
travel = { x = "600 mm", y = "400 mm", z = "90 mm" }
rapid = { x = "5000 mm/min", y = "5000 mm/min", z = "2000 mm/min" }
feed_limit = { x = "2500 mm/min", y = "100 ipm", z = "800 mm/min" }
acceleration = { x = "200 mm/s^2", y = "200 mm/s^2", z = "150 mm/s^2" }
corner_deviation = "0.02 mm"
stiffness = "300 N/mm"
homes = false
controller = "hobby-3-axis"
[spindle]
kind = "dial"
dial = [ { mark = "A", stated = 9500, measured = 8100 }, { mark = "B", stated = "12500 rpm" } ]
started = "by-hand"
power = "700 W"
power_curve = [[8000, "300 W"], [20000, "700 W"]]
spin_up = "4 s"
[[tool]]
number = 1
name = "eighth down-cut"
shape = "flat"
diameter = "1/8 in"
flutes = 2
flute_length = "12 mm"
stickout = "22 mm"
shank = "6 mm"
helix = "compression"
up_cut_length = "5 mm"
centre_cutting = true
made_of = "carbide"
corner_radius = "0.1 mm"
edge_radius = "5 um"
[windows."cured-epoxy".1]
fz = ["0.042 mm", "0.10 mm"]
slot = { fz = ["0.05 mm", "0.09 mm"] }
'''
JOB = '''
program = ["tide-dial.nc", "tide-ring.nc"]
shop = "shop.toml"
material = "cured-epoxy"
z_zero = { above_table = "10 mm" }
dial = "B"
fail_at = "change"
packs = ["house.toml"]
tool_map = { "3" = 1 }
[stock]
size = ["120 mm", "80 mm", "18 mm"]
measured_thickness = "17.4 mm"
corner = ["-10 mm", "-10 mm"]
[hold]
by = "tabs"
spoilboard = "0.5 mm"
[[keep_out]]
name = "left clamp"
from = ["-40 mm", "0 mm", "0 mm"]
to = ["-12 mm", "30 mm", "25 mm"]
[[accept]]
rule = "straight-plunge"
tool = 1
because = "the holes are drilled by hand first"
'''


@pytest.mark.parametrize("file", sorted(made.FILES))
def test_shipped_schema_is_the_generated_one(file: str) -> None:
    shipped = json.loads((HERE / file).read_text(encoding="utf-8"))
    assert shipped == made.schemas()[file], "run  python -m gclint.setup.schema"


@pytest.mark.parametrize(("file", "text"), [("shop.schema.json", SHOP), ("job.schema.json", JOB)])
def test_contract_examples_fit_the_schema_and_the_reader(file: str, text: str) -> None:
    from gclint.toml.file import decode

    schema = json.loads((HERE / file).read_text(encoding="utf-8"))
    jsonschema.Draft202012Validator.check_schema(schema)
    jsonschema.validate(tomllib.loads(text), schema)
    assert decode(text, made.FILES[file], file)


@pytest.mark.parametrize(
    ("file", "text"),
    [
        ("shop.schema.json", '[machine]\ntravel = { x = "600" }'),
        ("shop.schema.json", '[machine]\ntravle = { x = "600 mm" }'),
        ("shop.schema.json", "[[tool]]\nnumber = 1"),
        ("job.schema.json", 'z_zero = "top"'),
        ("job.schema.json", "program = 3"),
        ("controller.schema.json", 'name = "a"\ntitle = "a"\nsource = "a"\narcs = { tolerance = "0.1" }'),
        ("controller.schema.json", 'name = "a"\ntitle = "a"\nsource = "a"\narcs = { tolerance = "1 mm" }\nunits = 1'),
    ],
)
def test_schema_refuses_what_the_reader_refuses(file: str, text: str) -> None:
    schema = json.loads((HERE / file).read_text(encoding="utf-8"))
    with pytest.raises(jsonschema.ValidationError):
        jsonschema.validate(tomllib.loads(text), schema)


SHIPPED = [
    (file, path)
    for file, folder in (("controller.schema.json", "controllers"), ("material.schema.json", "materials"))
    for path in sorted((ROOT / "rules" / folder).glob("*.toml"))
]


@pytest.mark.parametrize(("file", "path"), SHIPPED, ids=lambda p: p.stem if isinstance(p, Path) else "")
def test_shipped_cards_fit_the_schema(file: str, path: Path) -> None:
    schema = json.loads((HERE / file).read_text(encoding="utf-8"))
    jsonschema.Draft202012Validator.check_schema(schema)
    jsonschema.validate(tomllib.loads(path.read_text(encoding="utf-8")), schema)


@pytest.mark.parametrize(
    ("old", "new"),
    [
        ('low = "0.030 mm"', "low = 0.030"),  # no unit
        ('low = "0.030 mm"', 'low = "0.030 N"'),  # another kind of unit
        ('kind = "wood"', 'kind = "timber"'),
        ("burns = true", "burns = true\nburnt = true"),
        ('title = "beech"', ""),
        (', source = "common practice, no source"', ""),
        ('standing = "practice"', 'standing = "hearsay"'),
        ('policy = "yes"', 'policy = "sometimes"'),
        ("drill = [", "drilling = ["),
    ],
)
def test_a_wrong_material_card_fails_in_the_schema_and_in_the_proof(tmp_path: Path, old: str, new: str) -> None:
    text = (ROOT / "rules" / "materials" / "beech.toml").read_text(encoding="utf-8")
    assert old in text
    path = tmp_path / "card.toml"
    path.write_text(text.replace(old, new, 1), encoding="utf-8")
    schema = json.loads((HERE / "material.schema.json").read_text(encoding="utf-8"))
    with pytest.raises(jsonschema.ValidationError):
        jsonschema.validate(tomllib.loads(path.read_text(encoding="utf-8")), schema)
    with pytest.raises(Problem):
        prove(path)


NEITHER = ("samples.toml", "lowtide-house.toml", "plan.toml", "grades.toml")  # tests/trial holds the last two
SAMPLES = sorted(p for p in (ROOT / "sample_programs").rglob("*.toml") if p.name not in NEITHER)


@pytest.mark.parametrize("path", SAMPLES, ids=lambda p: f"{p.parent.name}/{p.name}")
def test_samples_fit_the_schema(path: Path) -> None:
    file = "job.schema.json" if path.name == "job.toml" else "shop.schema.json"
    schema = json.loads((HERE / file).read_text(encoding="utf-8"))
    jsonschema.validate(tomllib.loads(path.read_text(encoding="utf-8")), schema)
