"""The interpreter kernel: words to moves and events, in the order of execution of NIST RS274/NGC section 3.8.

Compiled by Cython; there is no interpreted twin. One `Interpreter` runs one program; the wrapper is
`gclint.motion.interpret`. Section numbers below are those of the report.

Coordinates: `pos` is the tip in the anchor frame (the first work offset used). A programmed value v on an axis is the
anchor coordinate v + `shift`. `shift` is `rel[system]` (the system's origin in the anchor frame) plus `g92`; each of
them is NaN where it is not known, and then the axis is in a frame of its own (`other`).
"""

from __future__ import annotations

import cython

if not cython.compiled:
    raise ImportError("gclint.motion.interpreter is a kernel and must be compiled")

import numpy as np
from cython.cimports.libc.math import atan2, cos, fabs, floor, hypot, isnan, sin, sqrt

from gclint.faults import CODE
from gclint.tables.motion import EVENT

NAN = cython.declare(cython.double, float("nan"))
PI = cython.declare(cython.double, 3.141592653589793)
FARTHEST = cython.declare(cython.double, 1e6)  # mm; no coordinate of a machine is beyond it
SAME_POINT = cython.declare(cython.double, 1e-6)  # mm; far under any controller's resolution
# How far a peck backs off before it goes on, mm: 0.010 in. From memory; the report only says "a bit".
PECK_CLEARANCE = cython.declare(cython.double, 0.254)

# Modal groups of section 3.4 by G code x 10; 20 stands for its group 0. G90.1 and G91.1 (arc centres) and G96 and G97
# are in no group of the report.
NONMODAL = cython.declare(cython.int, 20)
# Places beside them for codes that go together with others, and for the M groups.
COOLANT = cython.declare(cython.int, 0)
OVERRIDE = cython.declare(cython.int, 9)
COOLANT_OFF = cython.declare(cython.int, 11)
STOP = cython.declare(cython.int, 15)
SPINDLE = cython.declare(cython.int, 16)
CHANGE = cython.declare(cython.int, 17)
CANCEL = cython.declare(cython.int, 18)  # G80 beside another motion code
MACHINE_CODE = cython.declare(cython.int, 19)  # G53
GROUP = cython.declare(cython.uchar[1000])
for _group, _codes in {
    1: (0, 10, 20, 30, 382, 383, 384, 385, 730, 760, 800, 810, 820, 830, 840, 850, 860, 870, 880, 890),
    2: (170, 180, 190),
    3: (900, 910),
    4: (901, 911),
    5: (930, 940, 950),
    6: (200, 210, 700, 710),  # G70 and G71 as ISO 6983-1 has them
    7: (400, 410, 420),
    8: (430, 431, 490),
    10: (980, 990),
    12: (540, 550, 560, 570, 580, 590, 591, 592, 593),
    13: (610, 611, 640),
    14: (960, 970),
    20: (40, 100, 280, 281, 300, 301, 520, 530, 920, 921, 922, 923),
}.items():
    for _code in _codes:
        GROUP[_code] = _group

# Cancels of modes that are never entered here: they change nothing.
CANCELS = cython.declare(object, frozenset((150, 500, 501, 690)))
# Later habits that turn, scale or mirror the frame, or read X and Y as radius and angle, until the cancel of the same
# bit. What of them is followed is in `turn`; the rest puts its moves in a frame of its own.
TURNS = cython.declare(object, {160: 1, 510: 2, 511: 4, 680: 8, 150: 1, 500: 2, 501: 4, 690: 8})

POLAR = cython.declare(cython.int, 1)
SCALED = cython.declare(cython.int, 2)
MIRRORED = cython.declare(cython.int, 4)
ROTATED = cython.declare(cython.int, 8)
THOUSANDTHS = cython.declare(cython.double, 100.0)  # a factor of G51 from this size on counts thousandths

# What a program should have stated before its first motion, as bits of `unstated`.
UNITS = cython.declare(cython.int, 1)
DISTANCE = cython.declare(cython.int, 2)
FEED_MODE = cython.declare(cython.int, 4)
PLANE = cython.declare(cython.int, 8)
OFFSET = cython.declare(cython.int, 16)

# Flags and kinds of gclint.tables.motion as C numbers.
RAPID = cython.declare(cython.int, 0)
LINE = cython.declare(cython.int, 1)
ARC_CW = cython.declare(cython.int, 2)
ARC_CCW = cython.declare(cython.int, 3)
MACHINE = cython.declare(cython.int, 1)
CYCLE = cython.declare(cython.int, 2)
INCH = cython.declare(cython.int, 4)
X_WORD = cython.declare(cython.int, 8)
INVERSE_TIME = cython.declare(cython.int, 64)
PER_REV = cython.declare(cython.int, 128)
COMPENSATED = cython.declare(cython.int, 256)
HOME = cython.declare(cython.int, 512)
OTHER_FRAME = cython.declare(cython.int, 1024)
PROBE = cython.declare(cython.int, 2048)
LIFT_UNKNOWN = cython.declare(cython.int, 4096)
RIGHT = cython.declare(cython.int, 8192)

# Letters as places in the block's table of words.
A = cython.declare(cython.int, 0)
B = cython.declare(cython.int, 1)
C = cython.declare(cython.int, 2)
D = cython.declare(cython.int, 3)
E = cython.declare(cython.int, 4)
F = cython.declare(cython.int, 5)
H = cython.declare(cython.int, 7)
I_ = cython.declare(cython.int, 8)
J = cython.declare(cython.int, 9)
K = cython.declare(cython.int, 10)
L = cython.declare(cython.int, 11)
P = cython.declare(cython.int, 15)
Q = cython.declare(cython.int, 16)
R = cython.declare(cython.int, 17)
S = cython.declare(cython.int, 18)
T = cython.declare(cython.int, 19)
U = cython.declare(cython.int, 20)
V = cython.declare(cython.int, 21)
W = cython.declare(cython.int, 22)
X = cython.declare(cython.int, 23)
Y = cython.declare(cython.int, 24)
Z = cython.declare(cython.int, 25)
AXES = cython.declare(cython.int, 1 << 23 | 1 << 24 | 1 << 25)
OTHER_AXES = cython.declare(cython.int, 1 << 0 | 1 << 1 | 1 << 2 | 1 << 20 | 1 << 21 | 1 << 22)
# Letters that mean something only to the codes that use them: D E H I_ J K L P Q R.
SPARE = cython.declare(cython.int, sum(1 << (ord(letter) - 65) for letter in "DEHIJKLPQR"))

FEED_EVENT = cython.declare(cython.int, EVENT["feed"])
SPEED_EVENT = cython.declare(cython.int, EVENT["speed"])

OF_ARCS = ("cu", "cv", "sweep")
COLUMNS = {
    "line": np.int32, "kind": np.uint8, "plane": np.uint8,
    "x0": np.float64, "y0": np.float64, "z0": np.float64, "x1": np.float64, "y1": np.float64, "z1": np.float64,
    "cu": np.float64, "cv": np.float64, "sweep": np.float64, "length": np.float64,
    "feed": np.float64, "speed": np.float64, "spindle": np.int8, "tool": np.int32, "offset": np.uint16,
    "flags": np.uint16, "cycle": np.uint8, "feed_line": np.int32, "speed_line": np.int32, "tool_line": np.int32,
}  # fmt: skip


@cython.cfunc
@cython.inline
def same(a: cython.double, b: cython.double) -> cython.bint:
    """Equal, or both unknown."""
    return a == b or (isnan(a) and isnan(b))


@cython.cclass
class Interpreter:
    """State of the machine while one program is read; `run` fills the tables."""

    # the program
    block_line: cython.int[::1]
    block_word: cython.int[::1]
    block_flags: cython.uchar[::1]
    word_letter: cython.uchar[::1]
    word_value: cython.double[::1]
    word_start: cython.int[::1]
    word_end: cython.int[::1]

    blocks: cython.Py_ssize_t
    from_place: cython.int  # added to the lines of a file beside; 0 in the program itself

    # what comes out
    executed = cython.declare(cython.Py_ssize_t, visibility="public")
    most = cython.declare(cython.Py_ssize_t, visibility="public")  # moves
    most_blocks = cython.declare(cython.Py_ssize_t, visibility="public")
    table = cython.declare(dict, visibility="readonly")
    event_table = cython.declare(dict, visibility="readonly")
    faults = cython.declare(object, visibility="readonly")
    moves = cython.declare(cython.Py_ssize_t, visibility="readonly")
    events = cython.declare(cython.Py_ssize_t, visibility="readonly")
    stopped_at = cython.declare(cython.int, visibility="public")
    stopped_because = cython.declare(str, visibility="public")
    ended = cython.declare(cython.bint, visibility="public")
    frames_used = cython.declare(cython.int, visibility="readonly")  # bits of TURNS that stood anywhere in the program
    room: cython.Py_ssize_t
    event_room: cython.Py_ssize_t
    line: cython.int[::1]
    kind: cython.uchar[::1]
    plane_: cython.uchar[::1]
    x0: cython.double[::1]
    y0: cython.double[::1]
    z0: cython.double[::1]
    x1: cython.double[::1]
    y1: cython.double[::1]
    z1: cython.double[::1]
    cu: cython.double[::1]
    cv: cython.double[::1]
    sweep: cython.double[::1]
    length: cython.double[::1]
    feed_: cython.double[::1]
    speed_: cython.double[::1]
    spindle_: cython.schar[::1]
    tool_: cython.int[::1]
    offset_: cython.ushort[::1]
    flags_: cython.ushort[::1]
    cycle_: cython.uchar[::1]
    feed_line_: cython.int[::1]
    speed_line_: cython.int[::1]
    tool_line_: cython.int[::1]
    event_kind: cython.uchar[::1]
    event_line: cython.int[::1]
    event_move: cython.int[::1]
    event_value: cython.double[::1]

    # the controller and the program as a whole
    arc_tolerance: cython.double
    feed_unit: cython.double  # mm/min in one of the feed's unit
    arc_inch: cython.double  # by how much more is taken where the program speaks inches
    arc_share: cython.double
    arc_most: cython.double
    change_ignored: cython.bint
    stop_stops_spindle: cython.bint
    tool_by_t: cython.bint

    # the modal state
    motion: cython.int  # G code x 10; -1: none yet; 800: cancelled
    plane: cython.int
    incremental: cython.bint
    arc_absolute: cython.bint
    feed_mode: cython.int
    scale = cython.declare(cython.double, visibility="readonly")  # mm per program unit
    compensated: cython.int  # 0: off; 410, 420
    diameter_index: cython.double  # the last D word; NaN: none since the tool came
    length_code: cython.int  # 0 none stated, 430, 431, 490
    length_index: cython.double
    retract_to_r: cython.bint
    feed: cython.double  # as programmed; NaN: none
    feed_line: cython.int
    speed: cython.double
    speed_line: cython.int
    edge_speed: cython.bint  # G96: S is the speed of the edge
    spindle: cython.int
    selected: cython.int
    selected_line: cython.int
    tool: cython.int
    tool_line: cython.int
    offset: cython.int  # 540 .. 593, 0 none stated
    unstated: cython.int
    rotary: cython.double[26]  # last value of A B C U V W words

    # where the tip is
    pos: cython.double[3]
    shift: cython.double[3]
    other: cython.bint[3]
    anchored: cython.bint[3]
    z_lifted: cython.bint  # Z became unknown by a machine-coordinate or home move
    loss_told: cython.bint  # the reader knows why the position is unknown
    feed_told: cython.bint
    system: cython.int  # 0 .. 8
    rel: cython.double[27]
    origin: cython.double[27]
    base: cython.double[3]  # machine coordinate of the anchor frame's zero
    g92: cython.double[3]
    turned: cython.int  # bits of TURNS in force
    lost_frame: cython.bint  # one of them is not followed
    factor: cython.double[3]  # of G51, by axis
    fixed: cython.double[3]  # its centre, work coordinates
    mirror: cython.double[3]  # of G51.1: the plane of an axis; NaN where it is not mirrored
    cosine: cython.double  # of G68
    sine: cython.double
    centre_x: cython.double
    centre_y: cython.double
    turn_code: cython.int  # on the block at hand; 0: none
    turn_word: cython.int
    may_start: cython.bint  # an M code that is not known stands beside an S on the block
    straightened: cython.int  # bits of TURNS that the block cancels
    g92_kept: cython.double[3]

    # sticky words of a canned cycle
    cycle_code: cython.int  # 0: no cycle in force
    sticky: cython.double[26]
    cycle_z0: cython.double  # Z (or the plane's third axis) before the series began

    # the block at hand
    block: cython.int
    at_line: cython.int
    span_start: cython.int
    span_end: cython.int
    stamp: cython.int[26]
    val: cython.double[26]
    word: cython.int[26]
    used: cython.int  # bits of letters that something on the block uses
    present: cython.int
    group: cython.int[21]
    group_word: cython.int[21]
    block_feed: cython.bint  # F stands on this block
    base_flags: cython.int

    def __init__(self, program, controller, start_codes, tool_by_t: bool, faults) -> None:
        self.use(program)
        self.tell_from(0)
        self.faults = faults
        self.executed, self.most_blocks = 0, 1 << 62
        blocks: cython.Py_ssize_t = self.blocks
        self.room, self.event_room = blocks + 64, 256
        self.most = min(50_000_000, 2_000_000 + 4 * blocks)
        # Of arcs alone: pages of zeros that nothing is written to are not there.
        self.table = {
            name: np.zeros(self.room, kind) if name in OF_ARCS else np.empty(self.room, kind)
            for name, kind in COLUMNS.items()
        }
        self.event_table = {
            "event_kind": np.empty(self.event_room, np.uint8),
            "event_line": np.empty(self.event_room, np.int32),
            "event_move": np.empty(self.event_room, np.int32),
            "event_value": np.empty(self.event_room, np.float64),
        }
        self.view()
        self.moves = self.events = 0
        self.stopped_at, self.stopped_because, self.ended = 0, "", False

        self.arc_tolerance = controller.arc_tolerance
        self.feed_unit = 60.0 if controller.feed_unit == "mm/s" else 1.0
        inch = controller.arc_tolerance_inch
        self.arc_inch = inch / self.arc_tolerance if inch is not None and self.arc_tolerance > 0 else 1.0
        self.arc_share = controller.arc_tolerance_share
        self.arc_most = controller.arc_tolerance_most
        self.arc_absolute = controller.arc_centres == "absolute"
        self.change_ignored = controller.tool_change == "ignores"
        self.stop_stops_spindle = controller.program_stop == "stops-spindle"
        self.tool_by_t = tool_by_t

        # What is taken where nothing is stated: mm, absolute, feed per minute, XY plane, the first offset.
        self.motion, self.plane, self.incremental = -1, 17, False
        self.feed_mode, self.scale, self.compensated, self.diameter_index = 940, 1.0, 0, NAN
        self.length_code, self.length_index, self.retract_to_r = 0, NAN, False
        self.feed = self.speed = NAN
        self.edge_speed = False
        self.feed_line = self.speed_line = self.selected_line = self.tool_line = 0
        self.spindle, self.selected, self.tool, self.offset = 2, -1, -1, 0
        self.unstated = UNITS | DISTANCE | FEED_MODE | PLANE | OFFSET
        self.z_lifted = self.loss_told = self.feed_told = False
        self.system, self.block, self.cycle_code = 0, 0, 0
        self.cycle_z0 = NAN
        self.turned = self.turn_code = self.turn_word = self.straightened = self.frames_used = 0
        self.lost_frame = False
        n: cython.int
        for n in range(3):
            self.pos[n], self.shift[n], self.other[n], self.anchored[n] = NAN, 0.0, False, False
            self.base[n], self.g92[n], self.g92_kept[n] = NAN, 0.0, 0.0
            self.factor[n], self.fixed[n], self.mirror[n] = 1.0, 0.0, NAN
        self.cosine, self.sine, self.centre_x, self.centre_y = 1.0, 0.0, 0.0, 0.0
        for n in range(27):
            self.rel[n], self.origin[n] = NAN if n >= 3 else 0.0, NAN
        for n in range(26):
            self.stamp[n], self.rotary[n], self.sticky[n] = -1, NAN, NAN
        for code in start_codes:
            self.set_mode(GROUP[code], code)

    # -- tables ------------------------------------------------------------------------------------------------

    @cython.cfunc
    def view(self) -> cython.int:
        t = self.table
        self.line, self.kind, self.plane_ = t["line"], t["kind"], t["plane"]
        self.x0, self.y0, self.z0 = t["x0"], t["y0"], t["z0"]
        self.x1, self.y1, self.z1 = t["x1"], t["y1"], t["z1"]
        self.cu, self.cv, self.sweep, self.length = t["cu"], t["cv"], t["sweep"], t["length"]
        self.feed_, self.speed_, self.spindle_, self.tool_ = t["feed"], t["speed"], t["spindle"], t["tool"]
        self.offset_, self.flags_, self.cycle_ = t["offset"], t["flags"], t["cycle"]
        self.feed_line_, self.speed_line_, self.tool_line_ = t["feed_line"], t["speed_line"], t["tool_line"]
        e = self.event_table
        self.event_kind, self.event_line = e["event_kind"], e["event_line"]
        self.event_move, self.event_value = e["event_move"], e["event_value"]
        return 0

    @cython.cfunc
    def grow(self, table: dict, filled: cython.Py_ssize_t, room: cython.Py_ssize_t) -> cython.int:
        for name in table:
            larger = np.zeros(room, table[name].dtype)
            larger[:filled] = table[name][:filled]
            table[name] = larger
        return self.view()

    @cython.cfunc
    def event(self, kind: cython.int, value: cython.double) -> cython.int:
        n: cython.Py_ssize_t = self.events
        if n == self.event_room:
            self.event_room = 2 * n
            self.grow(self.event_table, n, self.event_room)
        self.event_kind[n], self.event_line[n] = kind, self.at_line
        self.event_move[n], self.event_value[n] = self.moves, value
        self.events = n + 1
        return 0

    @cython.cfunc
    def fault(self, kind: str, word: cython.int, a: cython.double = NAN, b: cython.double = NAN) -> cython.int:
        """A fault of this block; its span is that of the word, or of the whole block where word < 0."""
        if word < 0:
            self.faults.add(CODE[kind], self.at_line, self.span_start, self.span_end, a, b)
        else:
            self.faults.add(CODE[kind], self.at_line, self.word_start[word], self.word_end[word], a, b)
        return 0

    @cython.cfunc
    def move(
        self,
        kind: cython.int,
        x: cython.double,
        y: cython.double,
        z: cython.double,
        feed: cython.double,
        flags: cython.int,
        cycle: cython.int,
        moving: cython.int,
    ) -> cython.int:
        """One row from `pos` to x y z, which becomes `pos`; the caller sets centre, sweep and length of an arc."""
        n: cython.Py_ssize_t = self.moves
        dx: cython.double
        dy: cython.double
        dz: cython.double
        k: cython.int
        if n == self.room:
            self.room = 2 * n
            self.grow(self.table, n, self.room)
        if self.unstated:
            self.tell_unstated(kind, flags)
        self.line[n] = self.at_line
        self.kind[n] = kind
        self.plane_[n] = self.plane
        self.x0[n], self.y0[n], self.z0[n] = self.pos[0], self.pos[1], self.pos[2]
        self.x1[n], self.y1[n], self.z1[n] = x, y, z
        # An axis that is unknown and does not move adds nothing to the length.
        dx, dy, dz = x - self.pos[0], y - self.pos[1], z - self.pos[2]
        if not moving & (1 << X) and isnan(x):
            dx = 0.0
        if not moving & (1 << Y) and isnan(y):
            dy = 0.0
        if not moving & (1 << Z) and isnan(z):
            dz = 0.0
        self.length[n] = sqrt(dx * dx + dy * dy + dz * dz)
        self.feed_[n] = feed
        self.speed_[n] = self.speed
        self.spindle_[n] = self.spindle
        self.tool_[n] = self.tool
        self.offset_[n] = self.offset
        flags |= self.base_flags
        if self.other[0] or self.other[1] or self.other[2]:
            flags |= OTHER_FRAME
        if self.z_lifted and isnan(self.pos[2]):
            flags |= LIFT_UNKNOWN
        self.flags_[n] = flags
        self.cycle_[n] = cycle
        self.feed_line_[n], self.speed_line_[n], self.tool_line_[n] = self.feed_line, self.speed_line, self.tool_line
        self.pos[0], self.pos[1], self.pos[2] = x, y, z
        for k in range(3):
            if not isnan(self.pos[k]):
                self.anchored[k] = True
        if self.loss_told and not (isnan(x) or isnan(y) or isnan(z)):
            self.loss_told = False
        self.moves = n + 1
        if self.moves >= self.most and not self.stopped_at:
            self.stopped_at = self.at_line
            self.stopped_because = f"an end within {self.most:,} moves (`[limits] moves` in shop.toml raises it)"
            self.fault("bound-reached", -1, self.most)
        return 0

    @cython.cfunc
    def tell_unstated(self, kind: cython.int, flags: cython.int) -> cython.int:
        """The faults of a first motion; machine-coordinate moves use no work offset."""
        due: cython.int = self.unstated & (UNITS | DISTANCE)
        if not flags & MACHINE:
            due |= self.unstated & OFFSET
        if kind != RAPID:
            due |= self.unstated & FEED_MODE
        if kind >= ARC_CW:
            due |= self.unstated & PLANE
        self.unstated &= ~due
        if due & UNITS:
            self.fault("units-unstated", -1)
        if due & DISTANCE:
            self.fault("distance-unstated", -1)
        if due & FEED_MODE:
            self.fault("feed-mode-unstated", -1)
        if due & PLANE:
            self.fault("plane-unstated", -1)
        if due & OFFSET:
            self.fault("offset-unstated", -1)
        return 0

    # -- one program, one block --------------------------------------------------------------------------------

    def run(self) -> None:
        """Execute every block until the program ends or interpreting gives up."""
        self.run_plain(0)

    def run_plain(self, b: cython.Py_ssize_t) -> cython.Py_ssize_t:
        """Execute blocks from b on; returns the first that holds an expression or flow, or the number of blocks.

        Also returns, with `ended` or `stopped_at` set, at the program's end or where interpreting gives up.
        """
        flags: cython.int
        while b < self.blocks:
            flags = self.block_flags[b]
            if flags & 16:  # behind the closing %
                self.ended = True
                return b
            if flags & 1:  # block delete
                b += 1
                continue
            if flags & (2 | 4) and not flags & 8:
                return b
            self.executed += 1
            self.at_line = self.block_line[b] + self.from_place
            self.collect(b)
            if flags & 8:  # text that cannot be read: not executed
                self.lose_named()
            elif self.sort_words(b):
                self.execute()
            else:
                self.lose_named()
            b += 1
            if self.ended or self.stopped_at:
                return b
            if self.executed >= self.most_blocks:
                return b
        return b

    def step(self, line: cython.int, words: cython.int) -> cython.bint:
        """Execute one block of `words` words that the caller wrote behind the program's own (see `use`).

        True where the program has ended or goes no further.
        """
        b: cython.Py_ssize_t = self.blocks
        self.at_line = line + self.from_place
        self.block_word[b + 1] = self.block_word[b] + words
        self.collect(b)
        if self.sort_words(b):
            self.execute()
        else:
            self.lose_named()
        return self.ended or self.stopped_at != 0

    def lose(self, line: cython.int, words: cython.int) -> None:
        """As `step`, for a block that is not executed: its axes are unknown from here on."""
        self.at_line = line + self.from_place
        self.block_word[self.blocks + 1] = self.block_word[self.blocks] + words
        self.collect(self.blocks)
        self.lose_named()

    def use(self, table) -> None:
        """Read blocks from the columns of `table`, a Program or a table with room for one more block."""
        self.block_line, self.block_word = table.block_line, table.block_word
        self.block_flags, self.blocks = table.block_flags, len(table.block_flags)
        self.word_letter, self.word_value = table.word_letter, table.word_value
        self.word_start, self.word_end = table.word_start, table.word_end

    def tell_from(self, place: cython.int) -> None:
        """Lines of blocks count from `place` on, in a file beside; 0 in the program itself."""
        self.from_place = place

    def state(self, number: cython.int) -> cython.double:
        """A position-dependent parameter of section 3.2.1, in the units in force; NaN where it is not known.

        5061.. and 5161.. are never known before the run. 5420.. (present position) is a later habit, and so are
        5001.. and 5041.. of bracketed macros (from memory).
        """
        k: cython.int
        if number == 5220:
            return self.system + 1
        if 5211 <= number <= 5213:
            return self.g92[number - 5211] / self.scale
        if 5221 <= number <= 5383 and (number - 5221) % 20 < 3:
            return self.origin[3 * ((number - 5221) // 20) + (number - 5221) % 20] / self.scale
        if 5420 <= number <= 5422:
            k = number - 5420
        elif 5001 <= number <= 5003:
            k = number - 5001
        elif 5041 <= number <= 5043:
            k = number - 5041
        else:
            return NAN
        if self.other[k] or self.turned:
            return NAN
        return (self.pos[k] - self.shift[k]) / self.scale

    def unknown(self, letter: cython.int) -> None:
        """F (70) or S (83) is set to a value that is not known before the run."""
        if letter == 70:
            self.feed, self.feed_told = NAN, True
        else:
            self.speed = NAN

    def forget(self) -> None:
        """What the machine did is not known: neither is where it stands."""
        k: cython.int
        for k in range(3):
            self.pos[k] = NAN
        self.loss_told = True

    @cython.cfunc
    def collect(self, b: cython.Py_ssize_t) -> cython.int:
        """Letters present on the block, with the value and the word of the first of each."""
        w: cython.int
        k: cython.int
        first: cython.int = self.block_word[b]
        last: cython.int = self.block_word[b + 1]
        self.block = cython.cast(cython.int, b)
        self.present = 0
        if last > first:
            self.span_start, self.span_end = self.word_start[first], self.word_end[last - 1]
        for w in range(first, last):
            k = self.word_letter[w] - 65
            if 0 <= k < 26 and not self.present & (1 << k):
                self.present |= 1 << k
                self.val[k] = self.word_value[w]
                self.word[k] = w
        return 0

    @cython.cfunc
    def sort_words(self, b: cython.Py_ssize_t) -> cython.bint:
        """Put the codes into their modal groups; False where the block must not be executed (section 3.3.5)."""
        w: cython.int
        k: cython.int
        g: cython.int
        code: cython.int
        value: cython.double
        letter: cython.uchar
        good: cython.bint = True
        for g in range(21):
            self.group[g] = -1
        self.used = self.turn_code = self.straightened = 0
        self.may_start = False
        for w in range(self.block_word[b], self.block_word[b + 1]):
            letter = self.word_letter[w]
            value = self.word_value[w]
            if letter == 71:  # G
                code = cython.cast(cython.int, value * 10 + 0.5) if 0 <= value < 99.95 else -1
                if code in TURNS and fabs(value * 10 - code) <= 0.001:
                    if code in CANCELS:
                        self.straightened |= TURNS[code]
                    else:
                        self.turn_code, self.turn_word = code, w
                    continue
                if code < 0 or fabs(value * 10 - code) > 0.001 or (GROUP[code] == 0 and code not in CANCELS):
                    self.fault("code-unknown", w, value * 10)
                    self.used = -1
                    if self.present & AXES:
                        good = False  # what the axis words mean is unknown
                    continue
                g = GROUP[code]
                if g == 0:
                    continue
                if code == 530:
                    g = MACHINE_CODE  # goes with a motion code
                elif g == 1 and code == 800:
                    g = CANCEL
                if self.group[g] >= 0:
                    if good:  # one conflict per block is enough
                        self.fault("word-conflict", w)
                    good = False
                    continue
                self.group[g] = code
                self.group_word[g] = w
            elif letter == 77:  # M
                if not self.sort_m_word(w, value):
                    good = False
            else:
                k = letter - 65
                if self.word[k] != w:
                    if good:
                        self.fault("word-conflict", w)
                    good = False
        # group 0 and group 1 both want the axis words; G0 with a home move is the same motion twice
        code = self.group[NONMODAL]
        if (
            self.group[1] >= 0
            and self.present & AXES
            and (code == 100 or code == 520 or code == 920 or ((code == 280 or code == 300) and self.group[1] != 0))
        ):
            self.fault("word-conflict", self.group_word[NONMODAL])
            good = False
        for k in range(X, X + 3):
            if self.present & (1 << k) and fabs(self.val[k] * self.scale) > FARTHEST:  # NaN: not known before the run
                self.fault("value-out-of-range", self.word[k])
                good = False
        return good

    @cython.cfunc
    def sort_m_word(self, w: cython.int, value: cython.double) -> cython.bint:
        """Put an M code into its slot of `group`; False where another of its group stands on the block."""
        code: cython.int = cython.cast(cython.int, value + 0.5) if 0 <= value < 1000 else -1
        slot: cython.int
        if fabs(value - code) > 0.0001:
            code = -1
        if code in (0, 1, 2, 30, 60):
            slot = STOP
        elif 3 <= code <= 5:
            slot = SPINDLE
        elif code == 6:
            slot = CHANGE
        elif 7 <= code <= 8:
            slot = COOLANT
        elif code == 9:
            slot = COOLANT_OFF
        elif 48 <= code <= 49:
            slot = OVERRIDE
        else:
            self.fault("code-unknown", w, value * 10)
            self.used = -1
            if self.present & (1 << S):
                self.may_start = True
            return True
        # M7 and M8 may both be on
        if self.group[slot] >= 0 and slot != COOLANT:
            self.fault("word-conflict", w)
            return False
        self.group[slot] = code
        self.group_word[slot] = w
        if self.group[COOLANT] >= 0 and self.group[COOLANT_OFF] >= 0:
            self.fault("word-conflict", w)
            return False
        return True

    @cython.cfunc
    def lose_named(self) -> cython.int:
        """The block is not executed: where its axes stand is unknown until they are set absolutely."""
        k: cython.int
        for k in range(3):
            if self.present & (1 << (X + k)):
                self.pos[k] = NAN
                self.loss_told = True
                if k == 2:
                    self.z_lifted = False
        return 0

    @cython.cfunc
    def set_mode(self, group: cython.int, code: cython.int) -> cython.int:
        """One code of a modal group comes into force."""
        if group == 1:
            self.motion = code
        elif group == 2:
            self.plane = code // 10
            self.unstated &= ~PLANE
        elif group == 3:
            self.incremental = code == 910
            self.unstated &= ~DISTANCE
        elif group == 4:
            self.arc_absolute = code == 901
        elif group == 5:
            if code != self.feed_mode:
                self.feed = NAN  # a feed in another unit
                self.feed_told = False
            self.feed_mode = code
            self.unstated &= ~FEED_MODE
        elif group == 6:
            self.scale = 25.4 if code == 200 or code == 700 else 1.0
            self.unstated &= ~UNITS
        elif group == 10:
            self.retract_to_r = code == 990
        elif group == 12:
            self.enter_system(code // 10 - 54 + code % 10)
            self.offset = code
            self.unstated &= ~OFFSET
        return 0

    @cython.cfunc
    def execute(self) -> cython.int:
        """The order of section 3.8, whatever the order of writing."""
        k: cython.int
        code: cython.int
        value: cython.double
        axes: cython.int = self.present & AXES
        nonmodal: cython.int = self.group[NONMODAL]

        if self.group[5] >= 0:
            self.set_mode(5, self.group[5])
        self.block_feed = False
        if self.present & (1 << F):
            self.set_feed()
        if self.group[14] >= 0:
            self.set_edge_speed(self.group[14] == 960)
        if self.present & (1 << S):
            value = self.val[S]
            if nonmodal == 40 and not self.present & (1 << P):
                pass
            elif self.edge_speed:
                self.speed_line = self.at_line
            elif value < 0:
                self.fault("value-out-of-range", self.word[S], value)
            else:
                self.speed, self.speed_line = value, self.at_line
                self.event(SPEED_EVENT, value)
        if self.present & (1 << T):
            self.select_tool()
        if self.group[CHANGE] >= 0:
            self.change_tool()
        if self.group[SPINDLE] >= 0:
            code = self.group[SPINDLE]
            self.spindle = 1 if code == 3 else (-1 if code == 4 else 0)
            self.event(EVENT["spindle-cw"] + code - 3, self.speed if code != 5 else NAN)
        elif self.may_start and self.spindle != 1:
            self.spindle = 1  # an M code that is not known stands beside S: nobody can say that the spindle stands
        if self.group[COOLANT] >= 0:
            self.event(EVENT["coolant-on"], self.group[COOLANT])
        if self.group[COOLANT_OFF] >= 0:
            self.event(EVENT["coolant-off"], 9)
        if nonmodal == 40:
            axes = self.dwell(axes)
        if self.group[2] >= 0:
            self.set_mode(2, self.group[2])
        if self.turn_code or self.straightened & self.turned:
            self.turn()
            axes &= self.present
        if self.group[6] >= 0:
            if self.compensated and (self.group[6] == 200) != (self.scale != 1.0):
                self.fault("compensation-refused", self.group_word[6], self.group[6])
            self.set_mode(6, self.group[6])
            self.event(EVENT["units"], self.scale)
        if self.present & (1 << D):
            self.set_diameter()
        if self.group[7] >= 0:
            self.set_compensation(self.group[7])
        if self.compensated and self.plane != 17 and (self.group[2] >= 0 or self.group[7] >= 0):
            self.fault("compensation-refused", -1, self.plane * 10)
        if self.group[8] >= 0:
            self.set_length(self.group[8])
        if self.group[12] >= 0:
            if self.compensated and self.group[12] != self.offset:
                self.fault("compensation-refused", self.group_word[12], self.group[12])
            self.set_mode(12, self.group[12])
            self.event(EVENT["offset"], self.group[12] / 10.0)
        if self.group[13] >= 0:
            self.used |= (1 << P) | (1 << Q)
            self.event(EVENT["path-mode"], self.group[13] / 10.0)
        if self.group[3] >= 0:
            self.set_mode(3, self.group[3])
        if self.group[4] >= 0:
            self.set_mode(4, self.group[4])
        if self.group[10] >= 0:
            self.set_mode(10, self.group[10])

        self.base_flags = axes >> (X - 3)
        if self.scale != 1.0:
            self.base_flags |= INCH
        if self.feed_mode != 940:
            self.base_flags |= INVERSE_TIME if self.feed_mode == 930 else PER_REV
        if self.compensated:
            self.base_flags |= COMPENSATED if (self.compensated == 410) != self.mirrored() else COMPENSATED | RIGHT

        if self.present & OTHER_AXES:
            self.other_axes()
        if self.group[CANCEL] >= 0:
            self.motion = 800
        if self.group[1] >= 0:
            self.motion = self.group[1]
        if self.motion < 730 or self.motion == 800:
            self.cycle_code = 0
        if self.turned and not self.lost_frame and (axes or self.centre_alone()):
            if nonmodal >= 0 and nonmodal != 40 and nonmodal != 280 and nonmodal != 300:
                self.lose_frame()  # an origin set in a frame
            elif self.group[MACHINE_CODE] < 0:
                axes = self.frame_words(axes)
        if self.compensated and (nonmodal >= 100 or self.group[MACHINE_CODE] >= 0 or 380 < self.group[1] < 390):
            k = NONMODAL if nonmodal >= 100 else (MACHINE_CODE if self.group[MACHINE_CODE] >= 0 else 1)
            self.fault("compensation-refused", self.group_word[k], self.group[k])
            if nonmodal == 100 or nonmodal == 520 or nonmodal == 920:  # set from where the tool stands: beside it
                for k in range(2):
                    if axes & (1 << (X + k)):
                        self.pos[k] = NAN
                        self.loss_told = True
        if nonmodal >= 0 and nonmodal != 40:
            self.do_nonmodal(nonmodal, axes)
        elif self.group[MACHINE_CODE] >= 0:
            self.machine_move(axes)
        elif axes or self.group[1] >= 730 or self.centre_alone():
            self.do_motion(axes)

        if self.group[STOP] >= 0:
            self.do_stop(self.group[STOP])
        if self.present & ~self.used & SPARE:
            for k in (D, E, H, I_, J, K, L, P, Q, R):
                if self.present & ~self.used & (1 << k):
                    self.fault("word-unused", self.word[k])
        return 0

    @cython.cfunc
    def centre_alone(self) -> cython.bint:
        """G2 I5: a full circle that names no end."""
        return (self.motion == 20 or self.motion == 30) and self.present & ((1 << I_) | (1 << J) | (1 << K)) != 0

    # -- words that set something --------------------------------------------------------------------------------

    @cython.cfunc
    def set_feed(self) -> cython.int:
        value: cython.double = self.val[F]
        self.feed_line = self.at_line
        self.feed_told = False
        self.block_feed = True
        self.event(FEED_EVENT, value)
        if value <= 0:
            self.fault("feed-zero", self.word[F], value)
            value = NAN
            self.feed_told = True
        self.feed = value
        return 0

    @cython.cfunc
    def set_edge_speed(self, on: cython.bint) -> cython.int:
        """G96 and G97, a later habit: under G96 the spindle's own speed is known only at the machine."""
        if on:
            self.used |= 1 << D  # the highest speed
            self.fault("value-unknown", self.group_word[14])
        if on or self.edge_speed:
            self.speed = NAN
        self.edge_speed = on
        return 0

    @cython.cfunc
    def select_tool(self) -> cython.int:
        value: cython.double = self.val[T]
        if value < 0 or value != floor(value) or value > 1e9:
            self.fault("value-out-of-range", self.word[T], value)
            return 0
        self.selected, self.selected_line = cython.cast(cython.int, value), self.at_line
        self.event(EVENT["select"], value)
        if self.tool_by_t:
            self.tool, self.tool_line = self.selected, self.at_line
        return 0

    @cython.cfunc
    def change_tool(self) -> cython.int:
        """M6 stops the spindle (3.6.3). Where it is ignored the first tool, put in by hand, stays."""
        if not self.change_ignored or self.tool == -1:
            self.tool, self.tool_line = self.selected, self.selected_line
            self.diameter_index = NAN
        if not self.change_ignored and self.spindle != 2:
            self.spindle = 0
        self.event(EVENT["change"], self.tool)
        return 0

    @cython.cfunc
    def dwell(self, axes: cython.int) -> cython.int:
        """G4; X or U alone is the dwell word of some dialects. Returns the axis words that are left for a motion."""
        k: cython.int = P
        self.used |= 1 << P
        if not self.present & (1 << P) and self.group[1] < 0:
            if axes == 1 << X:
                k, axes = X, 0
            elif self.present & (1 << U) and not axes:
                k = U
                self.present &= ~(1 << U)
            elif self.present & (1 << S):
                k = S
        if not self.present & (1 << k) and k != U:
            self.fault("word-missing", self.group_word[NONMODAL], 40)
            self.event(EVENT["dwell"], NAN)
        elif self.val[k] < 0:
            self.fault("value-out-of-range", self.word[k], self.val[k])
        else:
            self.event(EVENT["dwell"], self.val[k])
        return axes

    @cython.cfunc
    def set_compensation(self, code: cython.int) -> cython.int:
        if code == 400:
            self.compensated = 0
            self.event(EVENT["compensation-off"], NAN)
            return 0
        self.used |= 1 << D
        if self.compensated:
            self.fault("compensation-refused", self.group_word[7], code)
        self.compensated = code
        self.event(EVENT["compensation-on"], self.diameter_index)
        return 0

    @cython.cfunc
    def set_diameter(self) -> cython.int:
        """D: which diameter G41 and G42 use. It is kept until the tool is changed: a later habit, as is D alone."""
        value: cython.double = self.val[D]
        if value < 0 or value != floor(value) or value > 1e9:
            self.fault("value-out-of-range", self.word[D], value)
            value = NAN
        self.diameter_index = value
        if self.compensated and self.group[7] < 0:
            self.used |= 1 << D
            self.event(EVENT["compensation-on"], value)
        return 0

    @cython.cfunc
    def set_length(self, code: cython.int) -> cython.int:
        """A new length offset moves nothing and changes what Z reads by a length that is not known."""
        index: cython.double = NAN
        if code == 490:
            self.event(EVENT["length-off"], NAN)
            if self.length_code == 0 or self.length_code == 490:
                self.length_code = 490
                return 0
        else:
            self.used |= 1 << H
            if self.present & (1 << H):
                index = self.val[H]
                if index < 0 or index != floor(index):
                    self.fault("value-out-of-range", self.word[H], index)
            if code == 431:  # the words give the offset itself
                index = NAN
                self.present &= ~AXES
            self.event(EVENT["length-on"], index)
            if self.length_code == code and same(self.length_index, index):
                return 0
        self.length_code, self.length_index = code, index
        self.pos[2] = NAN
        self.loss_told = True
        return 0

    @cython.cfunc
    def other_axes(self) -> cython.int:
        """A B C U V W: told when they move, never followed."""
        k: cython.int
        for k in (A, B, C, U, V, W):
            if self.present & (1 << k) and (self.incremental or self.val[k] != self.rotary[k]):
                if self.incremental and self.val[k] == 0:
                    continue
                self.rotary[k] = self.val[k]
                self.fault("axis-not-modelled", self.word[k])
                self.event(EVENT["axis-move"], 65 + k)
        return 0

    @cython.cfunc
    def do_stop(self, code: cython.int) -> cython.int:
        if code == 2 or code == 30:
            self.event(EVENT["end"], code)
            self.ended = True
        elif code == 1:
            self.event(EVENT["optional-stop"], 1)
        else:
            self.event(EVENT["stop" if code == 0 else "pallet-stop"], code)
            if self.stop_stops_spindle and self.spindle != 2:
                self.spindle = 0
        return 0

    # -- offsets -------------------------------------------------------------------------------------------------

    @cython.cfunc
    def reframe(self, k: cython.int, shift: cython.double) -> cython.int:
        """Axis k is programmed with another shift from here on; NaN: in a frame of its own."""
        if isnan(shift) or (self.lost_frame and (k != 2 or self.turned & (SCALED | MIRRORED))):
            self.other[k] = True
            self.shift[k] = 0.0
            self.pos[k] = NAN
            self.loss_told = True
        else:
            if self.other[k]:
                self.other[k] = False
                self.pos[k] = NAN
                self.loss_told = True
            self.shift[k] = shift
        return 0

    @cython.cfunc
    def turn(self) -> cython.int:
        """G16, G51, G51.1 and G68, and their cancels (from memory, no source).

        Followed in the XY plane and absolute: the words are read as radius and angle, mirrored, scaled, turned, in this
        order. What is not followed is a fault, and its moves have a place of their own until it is cancelled.
        """
        k: cython.int
        self.turned &= ~self.straightened
        if self.straightened & MIRRORED:  # G50.1 names the axes that it sets back
            self.present &= ~AXES
        if not self.turned:
            self.lost_frame = False
        if self.turn_code:
            self.turned |= TURNS[self.turn_code]
            way: cython.bint = self.incremental if self.group[3] < 0 else self.group[3] == 910
            if self.plane != 17 or way or not self.take_frame():
                self.lost_frame = True
                self.fault("frame-turned", self.turn_word, self.turn_code)
            if self.turn_code != 160:  # the words are the centre, the angle or the scale
                self.used = -1
                self.present &= ~AXES
        self.frames_used |= self.turned
        for k in range(3):
            self.reframe(k, self.rel[3 * self.system + k] + self.g92[k])
        return 0

    @cython.cfunc
    def take_frame(self) -> cython.bint:
        """Keeps what the words of the block at hand say of its frame; False where they do not say enough."""
        k: cython.int
        angle: cython.double
        if self.turn_code == 160:
            return True
        if self.turn_code == 680:
            if not self.present & (1 << R) or self.present & ((1 << I_) | (1 << J) | (1 << K) | (1 << Z)):
                return False
            angle = self.val[R] * PI / 180
            self.cosine, self.sine = cos(angle), sin(angle)
            self.centre_x, self.centre_y = self.fixed_point(0), self.fixed_point(1)
            return not (isnan(self.centre_x) or isnan(self.centre_y))
        if self.turn_code == 511:
            for k in range(3):
                self.mirror[k] = self.val[X + k] * self.scale if self.present & (1 << (X + k)) else NAN
            return self.present & AXES != 0
        for k in range(3):
            self.factor[k] = 1.0
            if self.present & (1 << P):
                self.factor[k] = self.val[P]
            elif self.present & (1 << (I_ + k)):
                self.factor[k] = self.val[I_ + k]
            if fabs(self.factor[k]) >= THOUSANDTHS:
                self.factor[k] /= 1000
            self.fixed[k] = self.fixed_point(k)
            if (isnan(self.fixed[k]) and self.factor[k] != 1.0) or self.factor[k] == 0.0:
                return False
            if isnan(self.fixed[k]):
                self.fixed[k] = 0.0
        return True

    @cython.cfunc
    def fixed_point(self, k: cython.int) -> cython.double:
        """The centre that a frame's words name on axis k, in work coordinates; where it names none, the tip's place."""
        if self.present & (1 << (X + k)):
            return self.val[X + k] * self.scale
        return self.pos[k] - self.shift[k]

    @cython.cfunc
    def lose_frame(self) -> cython.int:
        """From here on the frame in force is not followed."""
        k: cython.int
        if not self.lost_frame:
            self.lost_frame = True
            for k in (680, 510, 511, 160):
                if self.turned & cython.cast(cython.int, TURNS[k]):
                    break
            self.fault("frame-turned", -1, k)
            for k in range(3):
                self.reframe(k, self.rel[3 * self.system + k] + self.g92[k])
        return 0

    @cython.cfunc
    def frame_words(self, axes: cython.int) -> cython.int:
        """Writes the words of the block at hand as they would stand without the frame in force.

        Returns the axis words that a motion then has. In an incremental block the words are a way, not a place.
        """
        k: cython.int
        way: cython.bint = self.incremental
        at = cython.declare(cython.double[3])
        to = cython.declare(cython.double[3])
        flat: cython.bint
        if (self.turned & POLAR and (way or self.plane != 17)) or (self.turned & ROTATED and self.plane != 17):
            self.lose_frame()
            return axes
        flat = fabs(self.factor[0]) == fabs(self.factor[1])
        flat = flat and (self.plane == 17 or fabs(self.factor[0]) == fabs(self.factor[2]))
        if self.turned & SCALED and ((self.motion >= 730 and self.motion != 800) or (self.motion >= 20 and not flat)):
            self.lose_frame()  # a cycle's own heights, or an arc that becomes an ellipse
            return axes
        for k in range(3):
            at[k] = 0.0 if way else self.pos[k] - self.shift[k]
        if not way:
            self.unframe(at)
        for k in range(3):
            if axes & (1 << (X + k)):
                at[k] = self.val[X + k] * self.scale
        if self.turned & POLAR and axes & ((1 << X) | (1 << Y)):
            self.from_polar(at, axes)
        to[0], to[1], to[2] = at[0], at[1], at[2]
        self.frame(to, way)
        if axes & ((1 << X) | (1 << Y)):
            for k in range(2):
                if self.turned & (ROTATED | POLAR) or axes & (1 << (X + k)):
                    self.val[X + k] = to[k] / self.scale
                    axes |= 1 << (X + k)
        if axes & (1 << Z):
            self.val[Z] = to[2] / self.scale
        self.present |= axes
        self.frame_centre()
        return axes

    @cython.cfunc
    def frame_centre(self) -> cython.int:
        """I, J, K and R of an arc, as they would stand without the frame in force."""
        k: cython.int
        bits: cython.int = (1 << I_) | (1 << J) | (1 << K)
        to = cython.declare(cython.double[3])
        if self.motion != 20 and self.motion != 30:
            return 0
        if self.present & (1 << R) and self.turned & SCALED:
            self.val[R] *= fabs(self.factor[0])
        if not self.present & bits:
            return 0
        for k in range(3):
            to[k] = self.val[I_ + k] * self.scale if self.present & (1 << (I_ + k)) else 0.0
        self.frame(to, not self.arc_absolute)
        for k in range(2 if self.plane == 17 else 3):
            if (self.turned & ROTATED and k < 2) or self.present & (1 << (I_ + k)):
                self.val[I_ + k] = to[k] / self.scale
                self.present |= 1 << (I_ + k)
        return 0

    @cython.cfunc
    def from_polar(self, at: cython.double[3], axes: cython.int) -> cython.int:
        """`at` holds radius and angle where the block names them; what it does not name stays as it is."""
        place = cython.declare(cython.double[3])
        k: cython.int
        for k in range(3):
            place[k] = self.pos[k] - self.shift[k]
        self.unframe(place)
        radius: cython.double = at[0] if axes & (1 << X) else hypot(place[0], place[1])
        angle: cython.double = self.val[Y] * PI / 180 if axes & (1 << Y) else atan2(place[1], place[0])
        at[0], at[1] = radius * cos(angle), radius * sin(angle)
        return 0

    @cython.cfunc
    def frame(self, at: cython.double[3], way: cython.bint) -> cython.int:
        """The place (or the way) `at` of the frame's words, mm, becomes that in work coordinates."""
        k: cython.int
        x: cython.double
        y: cython.double
        for k in range(3):
            if self.turned & MIRRORED and not isnan(self.mirror[k]):
                at[k] = -at[k] if way else 2 * self.mirror[k] - at[k]
            if self.turned & SCALED:
                at[k] = self.factor[k] * (at[k] if way else at[k] - self.fixed[k]) + (0.0 if way else self.fixed[k])
        if self.turned & ROTATED:
            x = at[0] - (0.0 if way else self.centre_x)
            y = at[1] - (0.0 if way else self.centre_y)
            at[0] = x * self.cosine - y * self.sine + (0.0 if way else self.centre_x)
            at[1] = x * self.sine + y * self.cosine + (0.0 if way else self.centre_y)
        return 0

    @cython.cfunc
    def unframe(self, at: cython.double[3]) -> cython.int:
        """The place `at` in work coordinates becomes what the frame's words would say."""
        k: cython.int
        x: cython.double
        y: cython.double
        if self.turned & ROTATED:
            x, y = at[0] - self.centre_x, at[1] - self.centre_y
            at[0] = x * self.cosine + y * self.sine + self.centre_x
            at[1] = y * self.cosine - x * self.sine + self.centre_y
        for k in range(3):
            if self.turned & SCALED:
                at[k] = (at[k] - self.fixed[k]) / self.factor[k] + self.fixed[k]
            if self.turned & MIRRORED and not isnan(self.mirror[k]):
                at[k] = 2 * self.mirror[k] - at[k]
        return 0

    @cython.cfunc
    def mirrored(self) -> cython.bint:
        """Whether the frame in force turns left to right in the plane in force."""
        u: cython.int = (self.plane - 17) * 2 % 3
        v: cython.int = (u + 1) % 3
        odd: cython.bint = False
        k: cython.int
        if not self.turned or self.lost_frame:
            return False
        for k in (u, v):
            if self.turned & MIRRORED and not isnan(self.mirror[k]):
                odd = not odd
            if self.turned & SCALED and self.factor[k] < 0:
                odd = not odd
        return odd

    @cython.cfunc
    def enter_system(self, s: cython.int) -> cython.int:
        """G54 .. G59.3 by number 0 .. 8. Before any move, the system becomes the anchor."""
        k: cython.int
        t: cython.int
        if s == self.system:
            return 0
        self.system = s
        for k in range(3):
            if self.moves:
                self.reframe(k, self.rel[3 * s + k] + self.g92[k])
                continue
            self.pos[k], self.shift[k], self.other[k] = NAN, 0.0, False
            self.base[k] = self.origin[3 * s + k] + self.g92[k]
            for t in range(9):
                self.rel[3 * t + k] = self.origin[3 * t + k] - self.base[k]
            self.rel[3 * s + k] = -self.g92[k]
        return 0

    @cython.cfunc
    def set_g92(self, k: cython.int, value: cython.double) -> cython.int:
        """From here on, the present place reads `value` (mm) on axis k; all systems are shifted."""
        t: cython.int
        if isnan(self.pos[k]):
            if self.anchored[k] or self.other[k]:
                self.other[k] = True
                self.shift[k] = 0.0
                self.pos[k] = value
            else:  # nothing was known before, so this is where the axis is anchored
                self.pos[k] = value + self.shift[k]
                for t in range(9):
                    self.rel[3 * t + k] = NAN
                self.base[k] = NAN
            self.g92[k] = NAN
        else:
            self.g92[k] += self.pos[k] - value - self.shift[k]
            self.shift[k] = self.pos[k] - value
        return 0

    @cython.cfunc
    def drop_g92(self, k: cython.int, value: cython.double) -> cython.int:
        """G92.1, G92.2 (0) and G92.3 (the kept offset)."""
        if self.g92[k] != value:
            self.g92[k] = value
            self.reframe(k, self.rel[3 * self.system + k] + value)
        return 0

    @cython.cfunc
    def set_origin(self) -> cython.int:
        """G10 L2: the named axes' origins in machine coordinates; L20: so that the present place reads the words."""
        k: cython.int
        t: cython.int
        n: cython.int
        s: cython.int
        value: cython.double
        how: cython.double = self.val[L] if self.present & (1 << L) else NAN
        self.used = -1
        if how == 1 or how == 10 or how == 11:
            return 0  # the tool table: lengths and radii are not modelled
        if how != 2 and how != 20:
            self.fault("value-out-of-range", self.word[L] if self.present & (1 << L) else -1, how)
            return 0
        value = self.val[P] if self.present & (1 << P) else 0.0
        if value < 0 or value > 9 or value != floor(value):
            self.fault("value-out-of-range", self.word[P], value)
            return 0
        s = self.system if value == 0 else cython.cast(cython.int, value) - 1
        for k in range(3):
            if not self.present & (1 << (X + k)):
                continue
            value = self.val[X + k] * self.scale
            n = 3 * s + k
            if how == 20:
                self.set_origin_here(s, k, value)
                continue
            if not isnan(self.origin[n]) and not isnan(self.rel[n]):
                self.rel[n] += value - self.origin[n]
            elif not isnan(self.base[k]):
                self.rel[n] = value - self.base[k]
            elif s == self.system and not self.moves and self.rel[n] == 0:
                self.base[k] = value
                for t in range(9):
                    if t != s and not isnan(self.origin[3 * t + k]):
                        self.rel[3 * t + k] = self.origin[3 * t + k] - value
            else:
                self.rel[n] = NAN
            self.origin[n] = value
            if s == self.system:
                self.reframe(k, self.rel[n] + self.g92[k])
        return 0

    @cython.cfunc
    def set_origin_here(self, s: cython.int, k: cython.int, value: cython.double) -> cython.int:
        n: cython.int = 3 * s + k
        if not isnan(self.pos[k]) and not self.other[k]:
            self.rel[n] = self.pos[k] - value - self.g92[k]
            self.origin[n] = self.base[k] + self.rel[n]
            if s == self.system:
                self.reframe(k, self.rel[n] + self.g92[k])
            return 0
        self.origin[n] = NAN
        if s != self.system or self.anchored[k] or self.other[k]:
            self.rel[n] = NAN
            if s == self.system:
                self.reframe(k, NAN)
                self.pos[k] = value
        else:
            self.pos[k] = value + self.shift[k]
        return 0

    # -- motion ----------------------------------------------------------------------------------------------------

    @cython.cfunc
    def target(self, k: cython.int) -> cython.double:
        """Where axis k (0 X, 1 Y, 2 Z) is told to go, anchor frame."""
        if not self.present & (1 << (X + k)):
            return self.pos[k]
        if self.incremental:
            return self.pos[k] + self.val[X + k] * self.scale
        return self.val[X + k] * self.scale + self.shift[k]

    @cython.cfunc
    def set_feed_of(self, length: cython.double) -> cython.double:
        """mm/min of a cut of this length; the F number itself does not change with the units (4.3.3.2)."""
        if self.feed_mode == 930:
            if not self.block_feed or isnan(self.feed):
                self.fault("feed-missing", -1)
                return NAN
            return self.feed * length
        if isnan(self.feed):
            if not self.feed_told:
                self.fault("feed-missing", -1)
                self.feed_told = True
            return NAN
        if self.feed_mode == 950:
            return self.feed * self.scale * self.speed
        return self.feed * self.scale * self.feed_unit

    @cython.cfunc
    def tell_position_unknown(self) -> cython.int:
        if not self.loss_told:
            self.fault("position-unknown", -1)
            self.loss_told = True
        return 0

    @cython.cfunc
    def do_motion(self, axes: cython.int) -> cython.int:
        code: cython.int = self.motion
        if code == 0 or code == 10:
            self.straight(code)
        elif code == 20 or code == 30:
            self.arc((code == 30) != self.mirrored())
        elif code < 0 or code == 800:
            self.fault("no-motion-mode", -1)
            self.lose_named()
        elif code < 400:  # probing: where it stops is not known
            self.used |= 1 << P
            self.move(
                LINE,
                NAN if axes & (1 << X) else self.pos[0],
                NAN if axes & (1 << Y) else self.pos[1],
                NAN if axes & (1 << Z) else self.pos[2],
                self.set_feed_of(NAN),
                PROBE,
                0,
                axes,
            )
            self.loss_told = True
        else:
            self.cycle(code)
        return 0

    @cython.cfunc
    def straight(self, code: cython.int) -> cython.int:
        x: cython.double = self.target(0)
        y: cython.double = self.target(1)
        z: cython.double = self.target(2)
        n: cython.Py_ssize_t
        if self.incremental and (
            (self.present & (1 << X) and isnan(x))
            or (self.present & (1 << Y) and isnan(y))
            or (self.present & (1 << Z) and isnan(z))
        ):
            self.tell_position_unknown()
        self.move(RAPID if code == 0 else LINE, x, y, z, NAN, 0, 0, self.present)
        if code == 10:
            n = self.moves - 1
            self.feed_[n] = self.set_feed_of(self.length[n])
        return 0

    @cython.cfunc
    def machine_move(self, axes: cython.int) -> cython.int:
        """G53 goes with G0 or G1 (3.5.12); where its axes stand in work coordinates is unknown after it."""
        if self.motion != 0 and self.motion != 10:
            self.fault("no-motion-mode", self.group_word[MACHINE_CODE])
            self.lose_named()
            return 0
        self.event(EVENT["machine-move"], 53)
        if axes:
            self.leave(axes, RAPID if self.motion == 0 else LINE, MACHINE)
        return 0

    @cython.cfunc
    def leave(self, axes: cython.int, kind: cython.int, flags: cython.int) -> cython.int:
        """A move of these axes to a place that is unknown in work coordinates."""
        self.move(
            kind,
            NAN if axes & (1 << X) else self.pos[0],
            NAN if axes & (1 << Y) else self.pos[1],
            NAN if axes & (1 << Z) else self.pos[2],
            NAN if kind == RAPID else self.set_feed_of(NAN),
            flags,
            0,
            axes,
        )
        self.loss_told = True
        if axes & (1 << Z):
            self.z_lifted = True
        return 0

    @cython.cfunc
    def do_nonmodal(self, code: cython.int, axes: cython.int) -> cython.int:
        k: cython.int
        if code == 100:
            self.set_origin()
        elif code == 280 or code == 300:
            self.event(EVENT["machine-move"], code // 10)
            if axes:
                self.move(RAPID, self.target(0), self.target(1), self.target(2), NAN, HOME, 0, axes)
            else:
                axes = AXES
            self.leave(axes, RAPID, HOME | MACHINE)
        elif code == 520:  # a later habit: a shift of all offsets, kept where G92 keeps its own
            for k in range(3):
                if axes & (1 << (X + k)):
                    self.drop_g92(k, self.val[X + k] * self.scale)
        elif code == 920:
            if not axes and not self.present & OTHER_AXES:
                self.fault("word-missing", self.group_word[NONMODAL], 920)
            for k in range(3):
                if axes & (1 << (X + k)):
                    self.set_g92(k, self.val[X + k] * self.scale)
        elif code == 921 or code == 922:
            for k in range(3):
                self.g92_kept[k] = 0.0 if code == 921 else self.g92[k]
                self.drop_g92(k, 0.0)
        elif code == 923:
            for k in range(3):
                self.drop_g92(k, self.g92_kept[k])
        return 0

    # -- arcs ------------------------------------------------------------------------------------------------------

    @cython.cfunc
    def refuse(self, kind: str, word: cython.int, a: cython.double = NAN, b: cython.double = NAN) -> cython.int:
        self.fault(kind, word, a, b)
        self.lose_named()
        return 0

    @cython.cfunc
    def arc(self, counter_clockwise: cython.bint) -> cython.int:
        """Section 3.5.3. u, v, w are the plane's first, second and third axis: XYZ in G17, ZXY in G18, YZX in G19."""
        u: cython.int = (self.plane - 17) * 2 % 3
        v: cython.int = (u + 1) % 3
        w: cython.int = (u + 2) % 3
        su: cython.double = self.pos[u]
        sv: cython.double = self.pos[v]
        end = cython.declare(cython.double[3])
        eu: cython.double
        ev: cython.double
        cu: cython.double
        cv: cython.double
        r0: cython.double
        r1: cython.double
        off: cython.double
        chord: cython.double
        half: cython.double
        sweep: cython.double
        flat: cython.double
        rise: cython.double
        k: cython.int
        n: cython.Py_ssize_t
        kind: cython.int = ARC_CCW if counter_clockwise else ARC_CW
        centre_bits: cython.int = (1 << (I_ + u)) | (1 << (I_ + v))
        whole: cython.bint = False
        turns: cython.double = 0.0
        slack: cython.double = 1.0 if self.scale == 1.0 else self.arc_inch
        code: cython.double = 30 if counter_clockwise else 20

        self.used |= (1 << P) | centre_bits
        for k in range(3):
            end[k] = self.target(k)
        eu, ev = end[u], end[v]
        if self.present & (1 << R):
            self.used |= 1 << R
            if self.present & centre_bits:
                return self.refuse("word-conflict", self.word[R])
        elif not self.present & centre_bits:
            if self.present & (1 << (I_ + w)):
                self.used |= 1 << (I_ + w)
                if self.plane_that_closes(end):
                    return self.refuse("arc-plane-suspect", self.word[I_ + w], self.plane_that_closes(end))
                return self.refuse("arc-without-plane", self.word[I_ + w])
            return self.refuse("word-missing", -1, code)
        if self.present & (1 << (I_ + w)) and self.val[I_ + w] == 0:
            self.used |= 1 << (I_ + w)  # a zero on the third axis says nothing

        if isnan(su) or isnan(sv) or isnan(eu) or isnan(ev):
            self.tell_position_unknown()
            self.move(kind, end[0], end[1], end[2], self.set_feed_of(NAN), 0, 0, self.present)
            n = self.moves - 1
            self.cu[n] = self.cv[n] = self.sweep[n] = self.length[n] = NAN
            return 0

        chord = hypot(eu - su, ev - sv)
        if self.present & (1 << R):
            r0 = fabs(self.val[R]) * self.scale
            half = chord / 2
            if chord < SAME_POINT or half - r0 > self.arc_tolerance * slack:
                return self.refuse("arc-radius-impossible", self.word[R], self.val[R] * self.scale, half)
            off = sqrt(r0 * r0 - half * half) if r0 > half else 0.0
            # The centre of a short counter-clockwise arc lies to the left of the chord.
            if counter_clockwise == (self.val[R] < 0):
                off = -off
            cu = (su + eu) / 2 - off * (ev - sv) / chord
            cv = (sv + ev) / 2 + off * (eu - su) / chord
            r0 = r1 = hypot(su - cu, sv - cv)
        else:
            cu = self.centre(u, su)
            cv = self.centre(v, sv)
            r0 = hypot(su - cu, sv - cv)
            r1 = hypot(eu - cu, ev - cv)
            off = fabs(r1 - r0)
            if off > self.arc_tolerance * slack and (
                off > self.arc_share * r0 or (self.arc_most > 0 and off > self.arc_most * slack)
            ):
                if self.plane_that_closes(end):
                    self.used |= (1 << I_) | (1 << J) | (1 << K)
                    return self.refuse("arc-plane-suspect", -1, self.plane_that_closes(end))
                return self.refuse(
                    "arc-centre-suspect" if self.closes_otherwise(u, v, eu, ev) else "arc-does-not-close", -1, r0, r1
                )
            whole = chord < SAME_POINT
        if whole:
            sweep = 2 * PI
        else:
            # from the start's direction to the end's
            sweep = atan2(
                (su - cu) * (ev - cv) - (sv - cv) * (eu - cu),
                (su - cu) * (eu - cu) + (sv - cv) * (ev - cv),
            )
            if not counter_clockwise:
                sweep = -sweep
            if sweep <= 0:
                sweep += 2 * PI
        if self.present & (1 << P):  # a later habit: the number of turns, the last of which may be a part
            turns = self.val[P]
            if turns >= 1 and turns == floor(turns) and turns < 1e6:
                sweep += 2 * PI * (turns - 1)
            else:
                self.fault("value-out-of-range", self.word[P], turns)
        rise = end[w] - self.pos[w]
        if isnan(rise) and not self.present & (1 << (X + w)):
            rise = 0.0
        flat = sweep * (r0 + r1) / 2
        if r0 < SAME_POINT and r1 < SAME_POINT:
            kind = LINE  # a circle of no radius is a straight move
        flat = sqrt(flat * flat + rise * rise)
        self.move(kind, end[0], end[1], end[2], self.set_feed_of(flat), 0, 0, self.present)
        if kind != LINE:
            n = self.moves - 1
            self.cu[n] = cu
            self.cv[n] = cv
            self.sweep[n] = (sweep if counter_clockwise else -sweep) * 180 / PI
            self.length[n] = flat
        return 0

    @cython.cfunc
    def plane_that_closes(self, end: cython.double[3]) -> cython.int:
        """Another plane (17, 18, 19) whose centre words these are, and in which the arc closes; 0 if there is none."""
        plane: cython.int
        u: cython.int
        v: cython.int
        r0: cython.double
        off: cython.double
        most: cython.double = self.arc_tolerance if self.scale == 1.0 else self.arc_tolerance * self.arc_inch
        named: cython.int = self.present & ((1 << I_) | (1 << J) | (1 << K))
        for plane in range(17, 20):
            if plane == self.plane:
                continue
            u = (plane - 17) * 2 % 3
            v = (u + 1) % 3
            if not named or named & ~((1 << (I_ + u)) | (1 << (I_ + v))):
                continue
            r0 = hypot(self.pos[u] - self.centre(u, self.pos[u]), self.pos[v] - self.centre(v, self.pos[v]))
            off = fabs(hypot(end[u] - self.centre(u, self.pos[u]), end[v] - self.centre(v, self.pos[v])) - r0)
            if r0 > most and (off <= most or off <= self.arc_share * r0):
                return plane
        return 0

    @cython.cfunc
    def closes_otherwise(
        self, u: cython.int, v: cython.int, eu: cython.double, ev: cython.double
    ) -> cython.bint:
        """Whether the arc at hand closes when its centre is taken in the other mode (absolute or incremental)."""
        self.arc_absolute = not self.arc_absolute
        cu: cython.double = self.centre(u, self.pos[u])
        cv: cython.double = self.centre(v, self.pos[v])
        self.arc_absolute = not self.arc_absolute
        r0: cython.double = hypot(self.pos[u] - cu, self.pos[v] - cv)
        off: cython.double = fabs(hypot(eu - cu, ev - cv) - r0)
        most: cython.double = self.arc_tolerance if self.scale == 1.0 else self.arc_tolerance * self.arc_inch
        return r0 > most and (off <= most or off <= self.arc_share * r0)

    @cython.cfunc
    def centre(self, k: cython.int, start: cython.double) -> cython.double:
        """The arc's centre on axis k; a missing word counts as no distance."""
        if not self.present & (1 << (I_ + k)):
            return start
        if self.arc_absolute:
            return self.val[I_ + k] * self.scale + self.shift[k]
        return start + self.val[I_ + k] * self.scale

    # -- canned cycles ---------------------------------------------------------------------------------------------

    @cython.cfunc
    def cycle(self, code: cython.int) -> cython.int:
        """Section 3.5.16, with G73 (peck without leaving the hole) and G76 (as G86) of later habit."""
        u: cython.int = (self.plane - 17) * 2 % 3
        v: cython.int = (u + 1) % 3
        w: cython.int = (u + 2) % 3
        k: cython.int
        repeats: cython.double = 1.0
        r: cython.double
        bottom: cython.double

        self.used |= (1 << L) | (1 << P) | (1 << Q) | (1 << R) | (1 << I_) | (1 << J) | (1 << K)
        if self.present & (1 << L):
            repeats = self.val[L]
        elif self.present & (1 << K) and code != 870:  # a later habit: K counts, and 0 keeps the words for later holes
            repeats = self.val[K]
        # Sticky words are kept as written, and G91 reads them again as increments; R outlives a change of cycle.
        if self.cycle_code != code:
            for k in range(26):
                if k != R or not self.cycle_code:
                    self.sticky[k] = NAN
        if not self.cycle_code:
            self.cycle_z0 = self.pos[w]
        self.cycle_code = code
        for k in (I_, J, K, P, Q, R, X + w):
            if self.present & (1 << k):
                self.sticky[k] = self.val[k]

        if not self.present & AXES or self.feed_mode == 930 or self.compensated:
            return self.refuse_cycle("cycle-refused", -1, w)
        k = L if self.present & (1 << L) else K
        if repeats < (1 if k == L else 0) or repeats != floor(repeats):
            return self.refuse_cycle("cycle-refused", self.word[k], w)
        if isnan(self.sticky[R]) or isnan(self.sticky[X + w]):
            return self.refuse_cycle("word-missing", -1, w)
        if code == 830 or code == 730:
            if isnan(self.sticky[Q]):
                return self.refuse_cycle("word-missing", -1, w)
            if self.sticky[Q] <= 0:
                return self.refuse_cycle("cycle-refused", self.word[Q], w)
        if self.sticky[P] < 0:
            return self.refuse_cycle("cycle-refused", self.word[P], w)
        if code == 870 and (isnan(self.sticky[I_ + u]) or isnan(self.sticky[I_ + v]) or isnan(self.sticky[I_ + w])):
            return self.refuse_cycle("word-missing", -1, w)
        if (code == 840 and self.spindle != 1 and self.spindle != 2) or (code == 860 and self.spindle == 0):
            return self.refuse_cycle("cycle-refused", -1, w)
        if (code == 820 or code == 890) and isnan(self.sticky[P]):
            self.fault("word-missing", -1, code)

        if self.incremental:
            if isnan(self.pos[w]):
                self.tell_position_unknown()
                return self.lose_named()
            r = self.pos[w] + self.sticky[R] * self.scale
            bottom = r + self.sticky[X + w] * self.scale
        else:
            r = self.sticky[R] * self.scale + self.shift[w]
            bottom = self.sticky[X + w] * self.scale + self.shift[w]
        if bottom > r + SAME_POINT:
            return self.refuse_cycle("cycle-refused", -1, w)
        return self.holes(code, u, v, w, r, bottom, repeats)

    @cython.cfunc
    def refuse_cycle(self, kind: str, word: cython.int, w: cython.int) -> cython.int:
        self.fault(kind, word, self.motion)
        self.lose_named()
        self.pos[w] = NAN
        return 0

    @cython.cfunc
    def holes(
        self,
        code: cython.int,
        u: cython.int,
        v: cython.int,
        w: cython.int,
        r: cython.double,
        bottom: cython.double,
        repeats: cython.double,
    ) -> cython.int:
        """Every hole of one block: over it, down to R, the cycle's own motions, out to the clear height."""
        clear: cython.double = r
        n: cython.double = 0.0
        if not self.retract_to_r and not self.cycle_z0 <= r:
            clear = self.cycle_z0  # NaN where it is not known
            if isnan(clear):
                self.z_lifted = self.z_lifted or w == 2  # at least as high as R
                self.loss_told = True
        if self.pos[w] < r:
            self.along(RAPID, w, r)
        while n < repeats and not self.stopped_at:
            if n == 0 or self.incremental:
                self.across(u, v, self.target(u), self.target(v))
            self.along(RAPID, w, r)
            if code == 730 or code == 830:
                self.peck(code, w, r, bottom, clear)
            elif code == 870:
                self.back_bore(u, v, w, bottom, clear)
            else:
                self.along(LINE, w, bottom)
                if code != 810 and code != 840 and code != 850 and not isnan(self.sticky[P]):
                    self.event(EVENT["dwell"], self.sticky[P])
                self.get_out(code, w, r, clear)
            n += 1
        return 0

    @cython.cfunc
    def get_out(self, code: cython.int, w: cython.int, r: cython.double, clear: cython.double) -> cython.int:
        spindle: cython.int = self.spindle
        if code == 840:  # tapping: out with the spindle reversed
            if spindle != 2:
                self.spindle = -spindle
            self.along(LINE, w, r)
        elif code == 850 or code == 890:
            self.along(LINE, w, r)
        elif code == 760 or code == 860 or code == 880:  # out with the spindle stopped
            if code == 880:
                self.event(EVENT["stop"], 88)  # the operator takes the tool out
            if spindle != 2:
                self.spindle = 0
        self.along(RAPID, w, clear)
        self.spindle = spindle
        return 0

    @cython.cfunc
    def peck(
        self, code: cython.int, w: cython.int, r: cython.double, bottom: cython.double, clear: cython.double
    ) -> cython.int:
        step: cython.double = self.sticky[Q] * self.scale
        depth: cython.double = r
        n: cython.double = 0.0
        while not self.stopped_at:
            n += 1
            depth = r - n * step
            if depth <= bottom + SAME_POINT:
                self.along(LINE, w, bottom)
                break
            self.along(LINE, w, depth)
            if code == 830:
                self.along(RAPID, w, r if isnan(clear) else clear)
            self.along(RAPID, w, min(depth + PECK_CLEARANCE, r))
        self.along(RAPID, w, clear)
        return 0

    @cython.cfunc
    def back_bore(
        self, u: cython.int, v: cython.int, w: cython.int, bottom: cython.double, clear: cython.double
    ) -> cython.int:
        """G87, 3.5.16.8: down beside the hole with the spindle stopped, then the feed goes up to K."""
        spindle: cython.int = self.spindle
        hu: cython.double = self.pos[u]
        hv: cython.double = self.pos[v]
        bu: cython.double = hu + self.sticky[I_ + u] * self.scale
        bv: cython.double = hv + self.sticky[I_ + v] * self.scale
        top: cython.double = self.sticky[I_ + w] * self.scale + (bottom if self.incremental else self.shift[w])
        stopped: cython.int = spindle if spindle == 2 else 0
        self.across(u, v, bu, bv)
        self.spindle = stopped
        self.along(RAPID, w, bottom)
        self.across(u, v, hu, hv)
        self.spindle = spindle
        self.along(LINE, w, top)
        self.along(LINE, w, bottom)
        self.spindle = stopped
        self.across(u, v, bu, bv)
        self.along(RAPID, w, clear)
        self.across(u, v, hu, hv)
        self.spindle = spindle
        return 0

    @cython.cfunc
    def along(self, kind: cython.int, w: cython.int, to: cython.double) -> cython.int:
        """One motion of a cycle along the plane's third axis; none where it is there already."""
        end = cython.declare(cython.double[3])
        if fabs(to - self.pos[w]) < SAME_POINT:
            return 0
        end[0], end[1], end[2] = self.pos[0], self.pos[1], self.pos[2]
        end[w] = to
        return self.move(
            kind,
            end[0],
            end[1],
            end[2],
            NAN if kind == RAPID else self.set_feed_of(NAN),
            CYCLE,
            self.cycle_code // 10,
            1 << (X + w),
        )

    @cython.cfunc
    def across(self, u: cython.int, v: cython.int, to_u: cython.double, to_v: cython.double) -> cython.int:
        """One rapid of a cycle in the plane."""
        end = cython.declare(cython.double[3])
        if fabs(to_u - self.pos[u]) < SAME_POINT and fabs(to_v - self.pos[v]) < SAME_POINT:
            return 0
        if isnan(to_u) and isnan(to_v) and not self.present & ((1 << (X + u)) | (1 << (X + v))):
            return 0
        end[0], end[1], end[2] = self.pos[0], self.pos[1], self.pos[2]
        end[u], end[v] = to_u, to_v
        return self.move(
            RAPID, end[0], end[1], end[2], NAN, CYCLE, self.cycle_code // 10, (1 << (X + u)) | (1 << (X + v))
        )
