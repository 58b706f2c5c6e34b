"""The setup one program is judged by: everything declared or assumed, resolved to mm, rev/min, N, W, degrees.

Built by `gclint.setup.resolve` from option over job over shop over shipped card over comment: first from what is
declared, then with what the program adds. Nothing here is guessed silently: what was not declared is None, or stands
in `assumed` with the reason.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from msgspec import Struct, field

if TYPE_CHECKING:
    from gclint.tables.material import Material

SHAPES = (
    "flat", "ball", "bull-nose", "v", "tapered-ball", "drill",
    "facing", "burr", "drag", "form", "t-slot", "thread-mill",
)
HELICES = ("up-cut", "down-cut", "compression", "straight")
GRADES = ("halt", "change", "consider")  # worst first
STANDINGS = ("measured", "published", "derived", "practice", "memory")


class Assumed(Struct, frozen=True):
    """Something taken as true without being declared."""

    what: str  # "stock top", "tool 2"
    value: str  # "Z 0.000 mm (work zero)"
    because: str  # "no stock is declared"


class Tool(Struct, frozen=True):
    """A tool as the program numbers it. Lengths in mm; angle: the full included angle of V, taper, drill point.

    stickout: from the nut to the tip; neck: from the tip to where a shank thicker than the tool begins (else the flutes
    end there).
    """

    number: int
    shape: str
    diameter: float
    name: str = ""
    flutes: int | None = None
    flute_length: float | None = None
    stickout: float | None = None
    shank: float | None = None
    corner_radius: float | None = None
    angle: float | None = None
    tip_diameter: float | None = None
    helix: str | None = None
    up_cut_length: float | None = None
    centre_cutting: bool | None = None
    made_of: str | None = None
    edge_radius: float | None = None
    neck: float | None = None
    top_speed: float | None = None  # rev/min
    runout: float | None = None
    declared_in: str = ""  # "shop.toml", "--tool", "comment on line 3"

    @property
    def called(self) -> str:
        """'tool 1 (eighth down-cut)'; 'the tool' where the program calls none."""
        number = f"tool {self.number}" if self.number >= 0 else "the tool"
        return f"{number} ({self.name})" if self.name else number


class DialMark(Struct, frozen=True):
    mark: str
    stated: float  # rev/min
    measured: float | None  # rev/min; None: never measured

    @property
    def true(self) -> float:
        return self.measured if self.measured is not None else self.stated


class Spindle(Struct, frozen=True):
    kind: str = "commanded"  # or "dial"
    low: float | None = None  # rev/min
    high: float | None = None
    dial: tuple[DialMark, ...] = ()
    started: str | None = None  # "by-hand", "program", None = not declared
    power: float | None = None  # W
    power_curve: tuple[tuple[float, float], ...] = ()  # (rev/min, W)
    spin_up: float | None = None  # s


class Axes(Struct, frozen=True):
    x: float | None = None
    y: float | None = None
    z: float | None = None


class Machine(Struct, frozen=True):
    name: str = ""
    travel: Axes | None = None  # mm
    rapid: Axes | None = None  # mm/min
    feed_limit: Axes | None = None  # mm/min
    acceleration: Axes | None = None  # mm/s2
    corner_deviation: float | None = None  # mm
    stiffness: float | None = None  # N/mm
    homes: bool | None = None


class Said(Struct, frozen=True):
    """One entry of a controller card: what it does with these names, and where that is known from."""

    state: str  # "does", "refuses", "ignores"
    names: tuple[str, ...]
    standing: str
    source: str


class Controller(Struct, frozen=True):
    """What a controller does with what it is sent: a card of rules/controllers; 'any' does all, refuses nothing."""

    name: str = "any"
    title: str = "any controller"
    about: str = ""
    tool_change: str = "does"  # "does", "stops" (M6 is a pause), "refuses", "ignores"
    program_stop: str = "stops"  # M0: "stops" (spindle goes on), "stops-spindle", "refuses", "ignores"
    dwell_unit: str = "s"  # or "ms"
    feed_unit: str = "mm/min"  # or "mm/s"
    over_feed: str = "not-known"  # a feed over an axis' limit: "clamps" (slows down), "loses-steps", "not-known"
    arc_known: bool = False  # the card says when it refuses an arc; else these limits follow from `resolution`
    arc_tolerance: float = 0.002  # mm, largest difference of the radii that closes always
    arc_tolerance_inch: float | None = None  # mm, the same where the program speaks inches (with `arc_tolerance_most`)
    arc_tolerance_share: float = 0.0  # of the radius; an arc is refused only when it is over both
    arc_tolerance_most: float = 0.0  # mm; over this it is always refused (0: no such limit)
    rapids: str = "not-known"  # G0 over more than one axis: "straight", "each-axis" (each as fast as it can)
    characters_per_second: float | None = None  # it reads at most; None: not known
    resolution: float = 0.001  # mm
    no_point: str = "as-written"  # X100 is 100 mm; "resolution": 100 x resolution
    line_length: int = 256  # characters; 0: no limit
    axes: tuple[str, ...] | None = None  # None: not known
    end_required: bool = True  # a program must end with M2, M30 or '%'
    arc_centres: str = "incremental"  # when the program does not say (G90.1, G91.1)
    start_state: tuple[str, ...] = ()  # codes that are in force at power-on, e.g. ("G21", "G90", "G94", "G17", "G54")
    canned_cycles: str = "does"  # G81: "does", "refuses", "ignores"
    compensation: str = "does"  # G41 and G42: "does", "refuses", "ignores"
    # "reads-ahead": meets inside corners where the shifted moves cross; "report": refuses them, and what moves zero
    compensation_rules: str = "reads-ahead"
    states: dict[str, str] = field(default_factory=dict)  # "G81", "A" or a habit -> "does", "refuses", "ignores"
    other_codes: str = "does"  # codes that `states` does not name
    said: tuple[Said, ...] = ()  # the card's entries, with their sources
    because: dict[str, tuple[str, str]] = field(default_factory=dict)  # key of the card -> (standing, source)
    standing: str = "memory"
    source: str = ""

    @property
    def dwell_seconds(self) -> float:
        """What 1 of a dwell's P is, s."""
        return 0.001 if self.dwell_unit == "ms" else 1.0

    def state(self, name: str) -> str:
        """What it does with a code ("G81"), a letter ("A") or a habit ("arc-turns")."""
        return self.states.get(name, self.other_codes if name[:1] in "GM" and name[1:2].isdigit() else "does")


class Limits(Struct, frozen=True):
    """How far a program with loops and calls is followed before gclint gives up and says so."""

    blocks: int  # executed
    calls: int  # inside each other
    moves: int
    expressions: int = 40_000  # different lines with expressions or flow


class Stock(Struct, frozen=True):
    """The blank as a box in work coordinates, mm. None: unknown."""

    x: tuple[float, float] | None
    y: tuple[float, float] | None
    top: float | None
    bottom: float | None
    declared: bool  # a size was declared (x, y may still be assumed where no corner was given)
    placed: bool  # its corner was declared
    size: tuple[float, float] | None = None  # X and Y as declared, mm


class KeepOut(Struct, frozen=True):
    name: str
    low: tuple[float, float, float]
    high: tuple[float, float, float]


class Hold(Struct, frozen=True):
    by: str | None = None
    spoilboard: float | None = None  # mm the program may cut into the table's sacrificial board


class Accept(Struct, frozen=True):
    """Findings that a person knows and has found fine. With `places` or `found` it covers no more than that."""

    rule: str
    because: str
    tool: int | None = None
    line: int | None = None  # acceptance in a program comment: line of the comment
    where: str = ""  # "job.toml, line 30" or "tide-dial.nc line 12"
    by: str = ""  # who
    grade: str = "change"  # the worst grade it covers
    places: int | None = None  # how many places at most
    found: str | None = None  # the worst figure, "0.0283 mm", or the text found

    @property
    def narrow(self) -> bool:
        return self.places is not None or self.found is not None


class UsedFile(Struct, frozen=True):
    """A declaration file that was used. The fingerprint is of its text, in UTF-8 with plain line ends."""

    what: str  # "job file", "rule pack"
    path: str
    fingerprint: str


class Signed(Struct, frozen=True):
    """That somebody has looked at a program, as a job file notes it: see `[[signed]]`."""

    program: str
    fingerprint: str
    declarations: str
    on: str  # YYYY-MM-DD
    by: str


class Window(Struct, frozen=True):
    """Low and high limit of a quantity; None where that side has no limit.

    open_low, open_high: own test cuts ended there without a fault, so that a card's wider limit holds.
    """

    low: float | None
    high: float | None
    unit: str
    standing: str
    source: str
    open_low: bool = False
    open_high: bool = False
    floor: tuple[tuple[float, float], ...] = ()  # (m/min, mm): how a chip's lower limit rises with edge speed


class Setup(Struct, frozen=True):
    machine: Machine
    spindle: Spindle
    controller: Controller
    tools: dict[int, Tool]  # by the number the program uses
    material: Material | None  # None if not declared
    stock: Stock | None  # None: nothing declared; gclint.stock then assumes a box and says so
    z_zero: str | float | None  # "stock-top", "table", mm above the table, None = not declared
    dial: str | None
    hold: Hold
    keep_out: tuple[KeepOut, ...] = ()
    diameter_offsets: dict[int, float] = field(default_factory=dict)  # D number -> diameter, mm
    work_zero: Axes | None = None  # where work zero lies in the machine's travel
    work_offset: str | None = None  # "G54": the offset that is set at the machine
    tool_order: tuple[int, ...] = ()  # the program's tool numbers in the order in which people put them in
    # [windows] of shop.toml: tool number -> operation ("slot", "side" ..., "" = all, "edge" = edge speed) -> window
    measured_windows: dict[int, dict[str, Window]] = field(default_factory=dict)
    packs: tuple[str, ...] = ()
    accepts: tuple[Accept, ...] = ()
    fail_at: str = "change"
    time_limit: float | None = None  # s the program may take
    earlier: tuple[str, ...] = ()  # programs that have cut this blank before, in their order
    turned: bool = False  # the blank is turned over right before this program
    assumed: tuple[Assumed, ...] = ()
    not_declared: tuple[str, ...] = ()  # keys of DESIGN section 11 that would let more be judged
    sources: tuple[str, ...] = ()  # the declaration files used
    signed: tuple[Signed, ...] = ()
    used: tuple[UsedFile, ...] = ()  # the same and all they name that does not ship, with fingerprints
