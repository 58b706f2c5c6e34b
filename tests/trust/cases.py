# ruff: noqa: E501  (one case is one line where it fits)
"""Small programs that a machinist would stop, or would let run, each with what must and what must not be said.

Lines of a program are separated by `|`. The programs and declarations are invented for the Lowtide workshop; that a
machinist would stop them is common practice and has no published source.
"""

from __future__ import annotations

from dataclasses import dataclass, field

GRADES = ("halt", "change", "consider")


@dataclass(frozen=True)
class Must:
    """A finding of one of `rules`, at least as grave as `grade`, on one of `lines` (any line where empty).

    `says`: words of which one must stand in the finding's text; empty where any text will do.
    """

    rules: str
    grade: str = "consider"
    lines: tuple[int, ...] = ()
    says: tuple[str, ...] = ()


@dataclass(frozen=True)
class Case:
    name: str
    program: str
    must: tuple[Must, ...] = ()
    never: tuple[str, ...] = ()  # rules that must not be found, or "halt", "change", "consider": nothing so grave
    never_says: tuple[str, ...] = ()  # words that stand in no finding
    material: str | None = None
    tools: tuple[str, ...] = ()
    stock: str | None = None
    shop: str | None = None
    job: str | None = None
    files: dict[str, str] = field(default_factory=dict)
    open: str = ""  # why it does not pass yet; it must fail as long as this is written


def lines(text: str) -> str:
    return "\n".join(part.strip() for part in text.split("|")) + "\n"


BLANK = "120 x 80 x 18 mm at 0 0"
PLY = {"material": "birch-plywood", "tools": ("1: flat 6mm 2fl up-cut",), "stock": BLANK}
PLY2 = {"material": "birch-plywood", "tools": ("1: flat 6mm 2fl", "2: flat 3mm 2fl"), "stock": BLANK}
DRILL = {"material": "aluminium-6061", "tools": ("7: drill 6mm 2fl",), "stock": BLANK}
BEECH = {
    "material": "beech",
    "tools": ("1: flat 8mm 2fl", "9: drill 5mm 2fl"),
    "stock": "150 x 90 x 15 mm at 0 0",
}
HEAD = "G21 G90 G94 G17 G40 G49 G80 G54|T1 M6|S16000 M3|G4 P4|G0 Z20|G43 H1 Z20|"
HEAD2 = "|T2 M6|S16000 M3|G4 P4|G43 H2 Z20|"
HEAD7 = "G21 G90 G94 G17 G40 G49 G80 G54|T7 M6|S3000 M3|G4 P4|G0 Z20|G43 H7 Z20|"
INNER = "G0 X20 Y20|G0 Z2|G1 Z0 F400|G1 X60 Z-3 F1200|G1 X20|G1 X60|G0 Z20"
INNER50 = INNER.replace("Y20", "Y50")
END = "|M5|M30"
H = "G21 G90 G94 G17 G54|T1 M6|S14000 M3|G4 P5|G0 Z30|"
CUT = "G0 X40 Y40|G0 Z3|G1 Z0 F400|G1 X80 Z-4 F700|G1 X40 F1500"
ENDS = "|G0 Z30|M5|M30"


def shop(card: str, *more: str) -> str:
    return "\n".join(
        ("[machine]", f'controller = "{card}"', *more, "[[tool]]", "number = 1", 'shape = "flat"', 'diameter = "6 mm"',
         "flutes = 2", "")
    )  # fmt: skip


JOB = """material = "birch-plywood"
shop = "shop.toml"
[stock]
size = ["120 mm", "80 mm", "18 mm"]
corner = ["0 mm", "0 mm"]
"""
BENCH_SHOP = """[machine]
controller = "any"
travel = { x = "1200 mm", y = "900 mm", z = "150 mm" }
rapid = { x = "6000 mm/min", y = "6000 mm/min", z = "3000 mm/min" }
feed_limit = { x = "5000 mm/min", y = "5000 mm/min", z = "2500 mm/min" }
homes = true
[spindle]
kind = "commanded"
range = [1000, 24000]
started = "program"
power = "1500 W"
spin_up = "3 s"
[[tool]]
number = 1
shape = "flat"
diameter = "6 mm"
flutes = 2
flute_length = "22 mm"
stickout = "30 mm"
shank = "6 mm"
made_of = "carbide"
centre_cutting = true
[[tool]]
number = 2
shape = "flat"
diameter = "3 mm"
flutes = 2
flute_length = "12 mm"
stickout = "20 mm"
shank = "3 mm"
made_of = "carbide"
centre_cutting = true
[[tool]]
number = 7
shape = "drill"
diameter = "6 mm"
flutes = 2
flute_length = "60 mm"
stickout = "70 mm"
shank = "6 mm"
made_of = "carbide"
"""
BENCH_JOB = """material = "birch-plywood"
shop = "shop.toml"
z_zero = "stock-top"
work_offset = "G54"
[stock]
size = ["120 mm", "80 mm", "18 mm"]
corner = ["0 mm", "0 mm"]
[hold]
by = "clamps"
spoilboard = "1 mm"
"""
BENCH = {"shop": BENCH_SHOP, "job": BENCH_JOB}
G41 = (
    "G0 X60 Y40|G0 Z2|G1 Z-3 F300|G1 G41 {d} X75 Y40 F900|G1 Y55|G3 X70 Y60 R5|G1 X45|G3 X40 Y52 R5|G1 Y30|"
    "G3 X45 Y25 R5|G1 X70|G3 X75 Y30 R5|G1 Y40|G1 G40 X60 Y40|G0 Z20"
)

CASES = (
    # what must be told
    Case("a drill is dragged sideways", HEAD7 + "G0 X20 Y20|G1 Z-10 F150|X60|G0 Z20" + END,
         (Must("drill-dragged-sideways", "halt", (9,)),), **DRILL),
    Case("a drill goes straight down", HEAD7 + "G0 X20 Y20|G0 Z2|G1 Z-10 F150|G0 Z20" + END,
         never=("drill-dragged-sideways",), **DRILL),
    Case("a drill moves between holes above the blank",
         HEAD7 + "G0 X20 Y20|G0 Z2|G1 Z-10 F150|G1 Z1|G1 X60 F900|G1 Z-10 F150|G0 Z20" + END,
         never=("drill-dragged-sideways",), **DRILL),
    Case("a hole beside the blank",
         HEAD7 + "G0 X20 Y20|G0 Z2|G1 Z-10 F150|G0 Z2|G0 X300|G1 Z-10 F150|G0 Z2|G80|G0 Z20" + END,
         (Must("outside-stock", "change", (12,)),), **DRILL),
    Case("a cut that begins in the blank and leaves it far",
         HEAD + "G0 X20 Y20|G0 Z2|G1 Z0 F400|G1 X60 Z-3 F1200|G1 X600|G1 X60|G0 Z20" + END,
         (Must("outside-stock", "change", (11,)),), **PLY2),
    Case("one hole of several beside the blank, in a cycle",
         "G21 G90 G94 G17 G54|T9 M6|S3000 M3|G4 P5|G0 Z30|G81 X40 Y40 Z-6 R2 F200|X400 Y40|X80 Y40|G80" + ENDS,
         (Must("outside-stock", "change", (7,)),), **BEECH),
    Case("a hole that goes up",
         HEAD7 + "G0 X20 Y20|G0 Z2|G1 Z-10 F150|G0 Z2|G0 X40|G1 Z10 F150|G0 Z2|G80|G0 Z20" + END,
         (Must("cuts-only-air never-cuts coordinate-suspect", "consider", (12,)),), **DRILL),
    Case("an arc turned round",
         HEAD + "G0 X30 Y20|G0 Z2|G1 Z0 F400|G1 X60 Z-3 F1200|G1 X30|G1 X80|G2 X90 Y30 I0 J10|G1 Y50|G3 X80 Y60 R10|"
         "G1 X30|G3 X20 Y50 R10|G1 Y30|G3 X30 Y20 R10|G0 Z20" + END,
         (Must("arc-turns-back", "consider", (13,)),), **PLY2),
    Case("arcs that join their neighbours",
         HEAD + "G0 X30 Y20|G0 Z2|G1 Z0 F400|G1 X60 Z-3 F1200|G1 X30|G1 X80|G3 X90 Y30 I0 J10|G1 Y50|G3 X80 Y60 R10|"
         "G1 X30|G3 X20 Y50 R10|G1 Y30|G3 X30 Y20 R10|G0 Z20" + END,
         never=("arc-turns-back",), **PLY2),
    Case("relief arcs at corners, and a scallop that turns back on purpose",
         HEAD + "G0 X30 Y20|G0 Z2|G1 Z0 F400|G1 X60 Z-3 F1200|G1 X30|G1 X40|G2 X60 R10|G1 X70|G2 X90 R10|G1 X100|G0 Z20"
         + END, never=("arc-turns-back",), **PLY2),
    Case("G91 for G90", HEAD.replace("G90", "G91") + INNER + END,
         (Must("not-followed", "change"),), **PLY2),
    Case("G91 left on after a lift", H + "G91 G30 Z0|G0 X40 Y40|G0 Z-20|G1 Z-15 F400|G1 X40 F1500|G0 Z40|M5|M30",
         (Must("not-followed", "change"),), **BEECH),
    Case("an unset parameter", H + "G0 X40 Y40|G0 Z3|G1 Z0 F400|G1 X80 Z[0-#12] F700|G1 X40 F1500" + ENDS,
         (Must("not-followed parameter-unset", "change", (9,)),), **BEECH),
    Case("an inch program under G21",
         HEAD + "G0 X1 Y1|G0 Z0.2|G1 Z0 F15|G1 X3 Z-0.12 F45|G1 X1|G1 X3|G0 Z1" + END,
         (Must("units-suspect", "consider"),), **PLY2),
    Case("an inch program under G21 on a whole bench",
         "G21 G90 G94 G17 G40 G49 G80 G54|T1 M6|S16000 M3|G4 P4|G0 Z20|G43 H1 Z20|"
         "G0 X1 Y1|G0 Z0.2|G1 Z0 F15|G1 X3 Z-0.12 F45|G1 X1|G1 X3|G0 Z1" + END,
         (Must("units-suspect", "consider"),), **BENCH),
    Case("a small part in millimetres",
         "G21 G90 G94 G17 G54|T2 M6|S16000 M3|G4 P4|G0 Z20|G43 H2 Z20|G0 X20 Y20|G0 Z2|G1 Z0 F300|G1 X26 Z-1 F600|G1 X20|"
         "G1 X26|G0 Z20" + END, never=("units-suspect",), **PLY2),
    Case("H of no known tool", HEAD + INNER + "|T2 M6|S16000 M3|G4 P4|G43 H7 Z20|" + INNER50 + END,
         (Must("tool-length-not-set", "consider", (14, 15, 16, 17, 18, 19)),), **PLY2),
    Case("H of another tool", HEAD.replace("H1", "H2") + INNER + END,
         (Must("tool-length-not-set", "consider"),), **PLY2),
    Case("G41 without D", HEAD + G41.format(d="") + END,
         (Must("compensation-without-radius", "change", (10,)),), shop=shop("iso-6983"), job=JOB),
    Case("G41 without D, no card", HEAD + G41.format(d="") + END,
         (Must("compensation-without-radius", "change", (10,)),), **PLY2),
    Case("G41 with another tool's D", HEAD + G41.format(d="D2") + END,
         (Must("compensation-of-another-tool compensation-without-radius", "change", (10,)),), **PLY2),
    Case("G41 with its own D", HEAD + G41.format(d="D1") + END,
         never=("compensation-of-another-tool", "compensation-without-radius"), **PLY2),
    Case("every point is missing",
         HEAD.replace("P4", "P4000") + INNER + END, (Must("points-all-missing", "change"),),
         shop=shop("shop-mill-macros"), job=JOB),
    Case("every point is there",
         "G21 G90 G94 G17 G40 G49 G80 G54|T1 M6|S16000 M3|G4 P4000|G0 Z20.|G43 H1 Z20.|G0 X20. Y20.|G0 Z2.|G1 Z0. F400.|"
         "G1 X60. Z-3. F1200.|G1 X20.|G1 X60.|G0 Z20." + END, never=("point-missing", "points-all-missing"),
         shop=shop("shop-mill-macros"), job=JOB),
    Case("the tool is changed in the cut",
         HEAD + INNER.removesuffix("|G0 Z20") + HEAD2 + INNER50 + END,
         (Must("tool-changed-in-cut", "consider", (13,)),), **PLY2),
    Case("the tool is changed above the blank", HEAD + INNER + HEAD2 + INNER50 + END,
         never=("tool-changed-in-cut",), **PLY2),
    Case("a milder finding elsewhere",
         "G21 G90 G94 G17 G54|T5 M6|S24000 M3|G0 Z26|G0 X100 Y100|G1 Z-25 F333|G1 X200 F5000|G0 Z26|G0 X300 Y100|"
         "G98 G83 X300 Y100 Z-58 R5 Q15 F333|G80|G0 Z26|M30",
         (Must("straight-plunge", "change", (6,)), Must("bores-with-router-bit", "consider", (10,))),
         material="pvc-foam-board", tools=("5: flat 12mm 2fl up-cut",), stock="400 x 200 x 60 mm at 0 0"),
    Case("a plunge beside a hole",
         "G21 G90 G94 G17 G54|T1 M6|S12000 M3|G0 Z5|G0 X20 Y20|G1 Z-12 F200|G1 X60 F1800|G0 Z5|G0 X80 Y45|G1 Z-15 F200|"
         "G0 Z5|M30", (Must("straight-plunge", "change", (6,)),), **PLY),
    Case("down by rapids alone, no blank declared", "G21 G90 G94 G17 G54|T1 M6|S12000 M3|G0 Z5|G0 X20 Y20|G0 Z-4 F50|G0 Z5|M30",
         (Must("no-feed-move", "change", (6,)),), material="cast-acrylic", tools=("1: drill 3mm 2fl",)),
    Case("down by rapids alone, many holes",
         "G21 G90 G94 G17 G54|T1 M6|S12000 M3|G0 Z5|" + "|".join(f"G0 X{x} Y20|G0 Z-4 F50|G0 Z5" for x in range(10, 100, 5))
         + "|M30", (Must("no-feed-move", "halt"),), material="cast-acrylic", tools=("1: drill 3mm 2fl",), stock=BLANK),
    Case("a rapid down inside a finished pocket",
         HEAD + INNER + "|G0 X40 Y20|G0 Z-2.9|G1 X50 F1200|G0 Z20" + END, never=("no-feed-move", "halt"), **PLY2),
    Case("G93 left on", HEAD + "G93|" + INNER + END,
         (Must("feed-mode-left-on", "change", (7, 10)),), never_says=("F21179",), **PLY2),
    Case("G95 left on", HEAD + "G95|" + INNER + END,
         (Must("feed-mode-left-on", "change", (7, 10)),), never_says=("F33426",), **PLY2),
    Case("the plane word is missing",
         "G21 G90 G94 G17 G54|T1 M6|S16000 M3|G4 P4|G0 X20 Y20 Z20|G0 Z2|G1 Z-2 F300|G2 X21 Z-3 I1 K0 F1200|G1 X60|G0 Z20"
         + END, (Must("plane-suspect arc-does-not-close", "change", (8,), ("G18",)),), **PLY2),
    Case("a part is cut free, hold not declared",
         "G21 G90 G94 G17 G54|T1 M6|S16000 M3|G4 P4|G0 X20 Y20 Z20|G0 Z2|G1 X80 Z-3 F1200|G1 Y60|G1 X20|G1 Y20|"
         "G1 X80 Z-6 F1200|G1 Y60|G1 X20|G1 Y20|G1 X80|G0 Z20" + END,
         (Must("part-comes-loose", "consider"),), material="birch-plywood", tools=("1: flat 6mm 2fl",),
         stock="120 x 80 x 6 mm at 0 0"),
    Case("M3 without any S",
         "G21 G90 G94 G17 G54|G0 Z5|M3|G0 X20 Y20|G1 Z-2 F300|G1 X80 F1500|G0 Z5" + END,
         (Must("spindle-speed-missing spindle-not-running", "consider"),), **PLY),
    Case("a rapid that rises through the work", H + CUT + "|G0 X100 Y70 Z-3.9" + ENDS,
         (Must("rapid-through-stock", "halt", (11,)),), **BEECH),
    Case("the way point of G28 goes through a clamp",
         H + "G0 X60 Y40|G0 Z3|G1 Z0 F400|G1 X90 Z-4 F700|G1 X60 F1500|G0 Z6|G28 X12 Y10|M5|M30",
         (Must("cuts-fixture travel-too-low", "halt", (12,)),),
         shop=shop("any").replace("6 mm", "8 mm"),
         job='material = "beech"\nshop = "shop.toml"\n[stock]\nsize = ["150 mm", "90 mm", "15 mm"]\n'
         'corner = ["0 mm", "0 mm"]\n[[keep_out]]\nname = "clamp"\nfrom = ["0 mm", "0 mm", "0 mm"]\n'
         'to = ["25 mm", "20 mm", "12 mm"]\n'),
    Case("T that only selects",
         H + "G43 H1 Z30|" + CUT + "|G0 Z30|M5|T2|S18000 M3|G4 P5|G43 H2 Z30|G0 X40 Y70|G0 Z3|G1 Z0 F300|G1 X80 Z-2 F500"
         + ENDS, (Must("tool-only-selected", "consider", (13, 14, 15, 16, 17, 18, 19, 20)),),
         shop=shop("rs274ngc").replace("6 mm", "8 mm") + '[[tool]]\nnumber = 2\nshape = "flat"\ndiameter = "4 mm"\nflutes = 2\n',
         job='material = "beech"\nshop = "shop.toml"\n[stock]\nsize = ["150 mm", "90 mm", "15 mm"]\ncorner = ["0 mm", "0 mm"]\n'),
    Case("a subprogram without M99",
         H + "G0 X40 Y40|G0 Z3|M98 P77 L2|G0 Z30|M5|M30|O77|G1 Z0 F400|G1 X80 Z-3 F700|G1 X40 F1500",
         (Must("subprogram-without-end", "consider"),),
         shop=shop("shop-3-axis").replace("6 mm", "8 mm"), job=JOB.replace("birch-plywood", "beech")),
    Case("cut short while it leaves the blank", "%|" + H + CUT + "|G1 X-30",
         (Must("program-cut-short", "change"),), **BEECH),
    Case("blocks behind an early end", H + CUT + "|G0 Z30|M30|G0 X40 Y70|G0 Z3|G1 Z0 F400|G1 X80 Z-4 F700" + ENDS,
         (Must("blocks-behind-end", "consider"),), **BEECH),
    Case("G49 in the line that lifts", H + "G43 H1 Z30|" + CUT + "|G49 Z30|G0 X60 Y70|M5|M30",
         (Must("length-cancelled-low", "consider", (12,)),), **BEECH),
    Case("no wait after M3", "G21 G90 G94 G17 G54|T1 M6|S14000 M3|G0 Z5|" + CUT + ENDS,
         (Must("no-spin-up-time", "consider"),),
         shop=BENCH_SHOP.replace("6 mm", "8 mm", 1), job=BENCH_JOB.replace("birch-plywood", "beech")),
    Case("a rapid at engraving depth", H + "G0 X40 Y40|G0 Z3|G1 Z-0.06 F400|G0 X100|G1 X110 F1500" + ENDS,
         (Must("rapid-through-stock", "change", (9,)),), **BEECH),
    Case("a stepover wider than the tool leaves fins",
         H + "G0 X30 Y20|G0 Z3|G1 Z0 F400|G1 X70 Z-4 F700|G1 X30 F1500|G1 X100|G1 Y29.5|G1 X30" + ENDS,
         (Must("stepover-leaves-fin", "consider"),), **BEECH),
    Case("a whole operation repeats in the air", H + CUT + "|G0 Z30|" + CUT + ENDS,
         (Must("cuts-only-air", "consider"),), **BEECH),
    Case("held by tabs, and nothing is cut through",
         H + "G0 X40 Y30|G0 Z3|G1 Z0 F400|G1 X80 Z-4 F700|G1 X40 F1500|G1 X110|G1 Y70|G1 X40|G1 Y30" + ENDS,
         (Must("tabs-hold-nothing not-cut-through", "consider"),),
         shop=shop("any").replace("6 mm", "8 mm"),
         job='material = "beech"\nshop = "shop.toml"\n[stock]\nsize = ["150 mm", "90 mm", "15 mm"]\n'
         'corner = ["0 mm", "0 mm"]\n[hold]\nby = "tabs"\n'),
    Case("a path tolerance of millimetres", H + "G64 P8|" + CUT + "|G1 Y60|G1 X90" + ENDS,
         (Must("path-tolerance-wide", "consider", (6,)),), **BEECH),
    Case("a thin tool breaks whatever the force law",
         "G21 G90 G94 G17 G54|T1 M6|S14000 M3|G4 P5|G0 Z30|G0 X20 Y40|G0 Z3|G1 Z0 F200|G1 X20.5 Z-12 F100|G1 X140 F1200"
         + ENDS, (Must("tool-breaks", "change"),),
         shop='[[tool]]\nnumber = 1\nshape = "flat"\ndiameter = "3.2 mm"\nflutes = 2\nflute_length = "14 mm"\n'
         'stickout = "22 mm"\nshank = "3.2 mm"\nmade_of = "carbide"\n',
         job='material = "aluminium-6061"\nshop = "shop.toml"\n[stock]\nsize = ["150 mm", "90 mm", "15 mm"]\n'
         'corner = ["0 mm", "0 mm"]\n'),
    Case("an operation turned by G68 is followed",
         H + "G68 X20 Y20 R45|G0 X40 Y40|G0 Z3|G1 Z-9 F400|G1 X80 F1500" + ENDS,
         (Must("straight-plunge", "change", (9,)),), never=("not-followed",), **BEECH),
    Case("only one fault: all in G91 with M3 before M6",
         "G21 G91 G94 G17 G54|S3000 M3|M6 T1|G0 X20 Y20|G1 Z-6 F100|G1 X30|G1 Z6|M5|M30",
         (Must("spindle-off-unseen", "change"),), material="softwood", tools=("1: flat 6mm 2fl",)),
    # what must be left alone
    Case("the length of a tool that only touches Z0",
         HEAD + "G0 X20 Y20|G1 Z0 F300|G1 X60|G0 Z20" + HEAD2.replace("|T2", "|T2") + INNER + END,
         never=("tool-length-not-set",), **PLY2),
    Case("a skim over a thin floor along a thin wall",
         HEAD + "G0 X20 Y20|G0 Z2|G1 Z0 F400|G1 X80 Z-3 F1200|G1 X20|G1 X80 Z-6 F1200|G1 X20|G1 X80 Z-9 F1200|G1 X20|"
         "G1 X80 Z-12 F1200|G1 X20|G1 X80 Z-15 F1200|G1 X20|G1 X80 Z-17.5 F1200|G1 X20|G1 Z-18 F300|G1 X45 Y20.2 F1200|"
         "G1 X80 F1200|G0 Z20" + END, never=("full-width-too-deep", "change"), **PLY2),
    Case("a sliver beside a finished slot",
         "G21 G90 G94 G17 G54|T1 M6|M3 S12000|G4 P4|G0 Z5|G0 X20 Y20|G1 X60 Z-5 F600|G1 X20|G1 X60 Z-10|G1 X20|G1 X60|G0 Z5|"
         "G0 X40 Y20.15|G1 Z-10 F1200|G1 X50|G0 Z5" + END, never=("plunge-too-fast",),
         material="birch-plywood", tools=("1: flat 6mm 2fl up-cut",), stock="120 x 80 x 20 mm at 0 0"),
    Case("M13 starts the spindle on some machines", HEAD.replace("M3|", "M13|") + INNER + END,
         never=("halt", "change"), **PLY2),
    Case("what one line does",
         "G21 G90 G94 G17 G54|T1 M6|S12000 M3|G4 P4|G0 Z5|G0 X20 Y20|G1 Z-5.5 F300|G0 Z5|G0 Z-8|G1 Z-8.5 F300|G0 Z5|M30",
         (Must("rapid-through-stock", "halt", (9,)),),
         never_says=("8.5 mm",), material="birch-plywood", tools=("1: flat 6mm 2fl up-cut",),
         stock="120 x 80 x 20 mm at 0 0"),
    Case("another set-up behind a stop",
         HEAD + "G0 X20 Y20|G0 Z2|G1 Z0 F400|G1 X60 Z-3 F1200|G1 X20|G0 Z20|M5|M0 (FLIP PART, SET G54 ANEW)|S16000 M3|G4 P4|"
         "G0 X-40 Y30|G0 Z-3|G1 X90 F1200|G0 Z20|G0 X60 Y45|G0 Z-4|G1 X70|G0 Z20" + END,
         never=("halt",), **PLY),
    Case("without S the plunge feed has a floor",
         "G21 G90 G94 G17 G54|M3|G0 Z5|G0 X20 Y20|G1 Z-1 F60|G1 X80|G0 Z5" + END, never_says=("F18",),
         material="oak", tools=("1: flat 6mm 2fl",), stock="120 x 60 x 18 mm at 0 0"),
    Case("a V tool rides down into a corner",
         HEAD + "G0 X20 Y20|G0 Z2|G1 Z-2 F100|G1 X40 F500|G1 X40.2 Y20.2 Z-2.7|G1 X40.4 Y20.4 Z-3.7|G1 X40 Y20 Z-2|G1 Y40|"
         "G0 Z20" + END, never=("steep-ramp",), material="walnut", tools=("1: v 3mm 15deg 1fl",),
         stock="120 x 60 x 18 mm at 0 0"),
    Case("a rising lead-out",
         HEAD + "G0 X20 Y20|G0 Z2|G18|G1 Z0 F800|G1 X35 Z-3.1|G1 X20|G1 X60 F1200|G2 X68 Z4.9 I0 K8|G0 Z2|G0 X20|G1 Z-3.1 F800|"
         "G1 X35 Z-6.2|G1 X20|G1 X60 F1200|G2 X68 Z1.8 I0 K8|G0 Z2|G0 X20|G1 Z-6.2 F800|G1 X35 Z-9.3|G1 X20|G1 X60 F1200|"
         "G2 X68 Z-1.3 I0 K8|G17|G0 Z20" + END, never_says=("4.2", "4.3"), material="birch-plywood",
         tools=("1: flat 3.175mm 2fl",), stock="120 x 60 x 18 mm at 0 0"),
    Case("the parts of an entry are not summed",
         HEAD + "G0 X20 Y20|G0 Z2|G1 Z-5.5 F200|G18 G2 X21.5 Z-7 I1.5 K0 F1800|G17|G1 X60|G0 Z20" + END,
         never_says=("drops 7 mm", "232"), **PLY),
    Case("a deep graze", HEAD + "G0 X20 Y20|G0 Z2|G1 Z0 F400|G1 X60 Z-4 F1200|G1 X20|G1 X60|G0 Z2|G0 X40 Y20.1|G0 Z-4|"
         "G1 X50 F1200|G0 Z20" + END, never=("halt",), **PLY),
    Case("a ball goes down its own groove",
         HEAD + "G0 X20 Y20|G0 Z2|G1 Z0 F400|G1 X60 Z-3 F1200|G1 X20|G1 X60|G0 Z2|G0 X40 Y20.005|G1 Z-3 F1200|G1 X50|G0 Z20"
         + END, never=("plunge-too-fast", "straight-plunge", "hidden-plunge"), material="birch-plywood",
         tools=("1: ball 6mm 2fl",), stock="120 x 60 x 18 mm at 0 0"),
    Case("a large facing cutter in aluminium",
         "G20 G90 G94 G17 G40 G49 G80 G54|T10 M6|S6000 M3|G4 P4|G0 Z1|G43 H10 Z1|G0 X-1.5 Y0.5|G0 Z0.1|G1 Z-0.02 F40|"
         "G1 X6.5|G0 Z1" + END, never_says=("weld",), never=("halt",), material="aluminium-6061",
         tools=("10: facing 2in 5fl",), stock="5in x 1in x 0.75in at 0 0"),
    Case("a lead-in that starts in air beside the cuts, no blank declared",
         HEAD + "G0 X-6 Y20|G0 Z-3|G1 X60 F1200|G0 Z20" + END, never=("halt",), material="birch-plywood",
         tools=("1: flat 6mm 2fl", "2: flat 3mm 2fl")),
    Case("nothing is judged behind a line that cannot be read",
         HEAD + "WH[#1LE3]DO1|G0 X20 Y20|G0 Z2|G1 Z0 F400|G1 X60 Z-3 F1200|END1|G0 X80 Y60|G0 Z-2|G1 X90|M5|M30",
         never=("halt",), **PLY2),
    Case("a last lap repeated is a spring pass", H + "G0 X40 Y30|G0 Z3|G1 Z0 F400|G1 X80 Z-4 F700|G1 X40 F1500|G1 X110|"
         "G1 Y70|G1 X40|G1 Y30|G1 X110|G1 Y70|G1 X40|G1 Y30" + ENDS, never=("cuts-only-air",), **BEECH),
    Case("two grooves, both cut", HEAD + INNER + "|" + INNER50 + END,
         never=("cuts-only-air", "halt", "change"), **PLY2),
    Case("the second groove of a shifted pattern is never cut",
         HEAD + INNER + "|G91|G1 X5 F1200|" + INNER50.replace("Y50", "Y50") + END,
         (Must("not-followed distance-mode-left-on cuts-only-air", "consider"),), **PLY2),
    Case("steep, then gentle",
         "G21 G90 G94 G17 G54|T1 M6|S12000 M3|G4 P4|G0 Z5|G0 X20 Y20|G1 Z0 F400|G1 X21.192 Z-1 F1200|G1 X78.192 Z-1.995|G0 Z5"
         + END, (Must("steep-ramp", "change", (8,)),), material="cured-epoxy", tools=("1: flat 3.175mm 2fl",), stock=BLANK),
    Case("gentle all the way",
         "G21 G90 G94 G17 G54|T1 M6|S12000 M3|G4 P4|G0 Z5|G0 X20 Y20|G1 Z0 F400|G1 X78.192 Z-1.995 F1200|G0 Z5"
         + END, never=("steep-ramp",), material="cured-epoxy", tools=("1: flat 3.175mm 2fl",), stock=BLANK),
)
