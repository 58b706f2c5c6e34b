"""Small clean programs of kinds that the sample programs lack: a resin, parts held by vacuum, an inside contour."""

from __future__ import annotations

import tomllib

from tests.planted.base import SAMPLES, Base, Declared, ready

KEEL_STRIP = """(keel strip, lowtide workshop)
(t3 1/4 in flat down-cut)
G21
G90 G94 G17
G54
G53 G0 Z0
T3 M6
S9000 M3
G4 P5
G0 X20 Y20
G43 Z15 H3
G0 Z5
X20 Y20
Z1
G1 Z0 F400
X80 Z-2 F1800
X20
Z1 F1800
G0 Z5
X20 Y40
Z1
G1 Z0 F400
X80 Z-2 F1800
X20 Z-4
X80
G0 Z5
X20 Y60
Z1
G1 Z0 F400
X80 Z-2 F1800
X20 Z-4
X80
G0 Z15
M5
G53 G0 Z0
M30
"""

RESIN = """
name = "keel-resin"
title = "a resin whose edges chip at low edge speed (invented)"
kind = "resin"
up_cut_frays_top = true
chip = [ { diameter = "6.35 mm", low = "0.057 mm", high = "0.16 mm", standing = "practice", source = "invented" } ]
edge = [
    { low = "105 m/min", high = "330 m/min", slow_because = "edges chip", standing = "practice", source = "invented" },
]
[seen]
thin = "dust"
thick = "edges that chip out"
fast = "smears"
[thin]
by = { value = 0.1, standing = "practice", source = "invented" }
finish_share = { value = 0.25, standing = "practice", source = "invented" }
"""

HATCH_COVER = """(hatch cover, lowtide workshop)
(t3 1/4 in flat up-cut, vacuum table)
G21
G90 G94 G17
G54
G53 G0 Z0
T3 M6
S16000 M3
G4 P5
G0 X30 Y6.825
G43 Z20 H3
G0 Z5
X30 Y6.825
Z1
G1 Z0 F400
X80 Z-3 F2200
X103.175
Y63.175
X6.825
Y6.825
X80
X103.175
Y63.175
X6.825
Y6.825
X30
X80 Z-6
X103.175
Y63.175
X6.825
Y6.825
X80
X30
X80 Z-9.3
X103.175
Y63.175
X6.825
Y6.825
X80
X30
G0 Z20
M5
G53 G0 Z0
M30
"""

FAIRLEAD = """(fairlead, lowtide workshop)
(t1 6 mm flat 3 flutes, compensated in the controller by d1)
G21 G90 G94 G17 G40 G49 G80
G54
G53 G0 Z0
T1 M6
S16000 M3
G4 P5
G0 X40 Y25
G43 Z15 H1
G0 Z5
X40 Y25
Z1
G1 Z0 F200
G3 X40 Y25 Z-0.5 I-2 J0 F1300
X40 Y25 Z-1 I-2 J0
X40 Y25 I-2 J0
G1 X42 F1440
G3 X42 Y25 I-4 J0
G1 X44
G3 X44 Y25 I-6 J0
G1 X46
G3 X46 Y25 I-8 J0
G1 X38 Y25
G41 D1 X38 Y15 F1440
X45
G3 X50 Y20 I0 J5
G1 Y30
G3 X45 Y35 I-5 J0
G1 X31
G3 X26 Y30 I0 J-5
G1 Y20
G3 X31 Y15 I5 J0
G1 X40
G40 X38 Y25
G0 Z15
M5
G53 G0 Z0
M30
"""


PEG_STRIP = """(peg strip, lowtide workshop)
(t6 3 mm flat up-cut)
G21
G90 G94 G17
G54
G53 G0 Z0
T6 M6
S18000 M3
G4 P5
G0 X15 Y15
G43 Z15 H6
""" + "".join(f"""G0 Z5
X15 Y{y}
Z1
G1 Z0 F300
X65 Z-1.5 F1300
X15 Z-3
X65 Z-4.5
X15 Z-6
X65 Z-7.5
X15
""" for y in (15, 30, 45)) + """G0 Z15
M5
G53 G0 Z0
M30
"""


PIN_RAIL = """(pin rail, lowtide workshop)
(t6 3 mm flat up-cut)
G21
G90 G94 G17
G54
G53 G0 Z0.
T6 M6
S18000 M3
G4 P5000
G0 X15. Y15.
G43 Z15. H6
""" + "".join(f"""G0 Z5.
X15. Y{y}.{speed}
Z1.
G1 Z0. F300.
X65. Z-1.2 F1300.
X15.
X65. Z-2.4
X15.
X65. Z-3.6
X15.
X65. Z-4.8
X15.
X65. Z-6.
X15.
X65. Z-7.2
X15.
""" for y, speed in ((15, ""), (30, " S17500"), (45, " S18000"))) + """G0 Z15.
M5
G53 G0 Z0.
M30
"""


PEG_HOLES = """(peg holes, lowtide workshop)
(t2 4 mm drill)
G21
G90 G94 G17
G54
G53 G0 Z0
T2 M6
S3000 M3
G4 P5
G0 X15 Y15
G43 Z15 H2
G0 Z2
""" + "".join(f"""G0 X{x} Y{y}
G1 Z-5 F240
G0 Z2
""" for y in (15, 35) for x in (15, 30, 45, 60)) + """G0 Z15
M5
G53 G0 Z0
M30
"""


def _oarlock_plate() -> Base:
    """The sample of this name with the slot that opens the cut at a feed of its own."""
    sample = ready("oarlock-plate/oarlock-plate.nc")
    text = sample.data.decode()
    assert "X70. F3400.\n" in text
    text = text.replace("X70. F3400.\n", "X70. F1800.\n").replace("\nY19.6\n", "\nY19.6 F3400.\n", 1)
    return Base(sample.name, text.encode(), sample.job, sample.shop)


def _mill(controller: str = "any", **changed: Declared) -> Declared:
    """The small mill of the workshop, with another controller, or other keys of some tools (`t3 = {...}`)."""
    shop = tomllib.loads((SAMPLES / "small-mill.toml").read_text())
    shop["machine"]["controller"] = controller
    for tool in shop["tool"]:
        tool.update(changed.get(f"t{tool['number']}", {}))
    return shop


def _job(material: str, size: str, by: str, **more: object) -> Declared:
    stock = {"size": [f"{v} mm" for v in size.split()], "corner": ["0 mm", "0 mm"]}
    return {"material": material, "z_zero": "stock-top", "stock": stock, "hold": {"by": by, **more}}


def own_programs() -> list[Base]:
    return [
        Base("keel-strip.nc", KEEL_STRIP.encode(), _job("keel-resin.toml", "100 80 20", "clamps"),
             _mill(t3={"helix": "down-cut"}), {"keel-resin.toml": RESIN}),
        Base("hatch-cover.nc", HATCH_COVER.encode(), _job("mdf", "110 70 9", "vacuum", spoilboard="0.5 mm"), _mill()),
        Base("peg-strip.nc", PEG_STRIP.encode(), _job("beech", "80 60 18", "clamps"), _mill()),
        Base("peg-holes.nc", PEG_HOLES.encode(), _job("beech", "80 60 18", "clamps"), _mill()),
        Base("pin-rail.nc", PIN_RAIL.encode(), _job("beech", "80 60 18", "clamps"), _mill("shop-mill-macros")),
        _oarlock_plate(),
        Base("fairlead.nc", FAIRLEAD.encode(), _job("aluminium-6061", "80 50 12", "clamps"), _mill()),
    ]  # fmt: skip
