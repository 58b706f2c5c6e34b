"""What the machine is told to do: moves and events as columns, each row with the line it came from."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from gclint.columns import Bits, Bytes, Column, Floats, Ints, Longs
from gclint.faults import Faults
from gclint.tables.setup import Assumed

# kinds of move
RAPID, LINE, ARC_CW, ARC_CCW = 0, 1, 2, 3

# move flags
MACHINE = 1  # in machine coordinates (G53, second leg of G28 and G30): work position of its axes is unknown after it
CYCLE = 2  # made by a canned cycle
INCH = 4  # the program speaks inches on this line
X_WORD = 8  # the block carries an X word
Y_WORD = 16  # the block carries a Y word
Z_WORD = 32  # the block carries a Z word
INVERSE_TIME = 64  # G93
PER_REV = 128  # G95
COMPENSATED = 256  # under G41 or G42, and the real path is not known (before `compensate`: not worked out yet)
HOME = 512  # one of the legs of G28 or G30
OTHER_FRAME = 1024  # in a work offset whose place relative to the first one is unknown: its coordinates are its own
PROBE = 2048  # G38.x: stops where the probe touches
# Starts from a Z that is unknown because of a machine-coordinate or home move (or a cycle's retract to a height that is
# unknown): taken as coming from above.
LIFT_UNKNOWN = 4096
RIGHT = 8192  # under G42 rather than G41

# kinds of event
EVENTS: tuple[str, ...] = (
    "none",
    "select",  # T; value = tool number
    "change",  # M6; value = tool number now in the spindle
    "spindle-cw",  # M3; value = S in force (NaN if none)
    "spindle-ccw",  # M4
    "spindle-off",  # M5
    "speed",  # S; value = rev/min
    "feed",  # F; value = as programmed
    "stop",  # M0
    "optional-stop",  # M1
    "pallet-stop",  # M60
    "end",  # M2 or M30; value = 2 or 30
    "dwell",  # G4 or a cycle's dwell; value = P as programmed (NaN if missing)
    "coolant-on",  # M7, M8
    "coolant-off",  # M9
    "length-on",  # G43; value = H (NaN if not given)
    "length-off",  # G49
    "compensation-on",  # G41, G42, or a D while they are on; value = D in force (NaN: none, that of the tool)
    "compensation-off",  # G40
    "units",  # G20 -> 25.4, G21 -> 1
    "offset",  # G54..G59.3; value = 54 .. 59.3
    "machine-move",  # a block of G53, G28 or G30; value = 53, 28, 30
    "axis-move",  # a block that moves an axis that is not modelled; value = ASCII code of the letter
    "path-mode",  # G61 (exact path), G61.1 (exact stop), G64 (corners rounded); value = 61, 61.1, 64
)
EVENT = {name: number for number, name in enumerate(EVENTS)}


@dataclass(frozen=True, slots=True)
class Followed:
    """What following a program with parameters, expressions or flow came to."""

    blocks: int  # executed, each time round a loop counted
    calls: int  # of subprograms and macros
    deepest: int  # calls in calls
    files: tuple[str, ...]  # files beside the program that were read


@dataclass(frozen=True, slots=True, eq=False)
class Beside:
    """Where rows stand that were made in files beside the program: the columns of Motion give the line of the call.

    A place up to the first base is a line of the program itself. The lines of a file, as called from one line, have
    places of their own: base + line.
    """

    base: Longs  # [calls of a file from a line] ascending
    call: Longs  # the line of the program that calls
    file: tuple[str, ...]
    line: Ints  # [moves] places
    feed_line: Ints  # [moves] places
    event_line: Ints  # [events] places
    fault_line: Ints  # [faults] places
    fault_text: dict[int, str]  # by row of faults, which has the span of the call: what is wrong in the file

    def of(self, place: int) -> tuple[str, int] | None:
        """(file, its line) of a place; None for a line of the program itself."""
        if place <= self.base[0]:
            return None
        row = int(np.searchsorted(self.base, place)) - 1
        return self.file[row], place - int(self.base[row])

    def calls(self, places: Column) -> Ints:
        """The lines of the program itself that places belong to."""
        rows = np.searchsorted(self.base, places) - 1
        return np.where(rows >= 0, self.call[np.maximum(rows, 0)], places).astype(np.int32)


@dataclass(frozen=True, slots=True, eq=False)
class Motion:
    """Moves in the order of execution; lengths in mm, feeds in mm/min, speeds in rev/min, angles in degrees.

    Positions are tool-tip positions in the coordinates of the first work offset used (later G92, G10 and offset changes
    whose amount is known are folded in, so that one physical point keeps one set of coordinates); NaN where unknown.
    """

    line: Ints  # source line, from 1
    kind: Bytes  # RAPID, LINE, ARC_CW, ARC_CCW
    plane: Bytes  # 17, 18 or 19 (meaningful for arcs)
    x0: Floats  # start
    y0: Floats
    z0: Floats
    x1: Floats  # end
    y1: Floats
    z1: Floats
    cu: Floats  # arc centre on the plane's first axis (X in G17, Z in G18, Y in G19); 0 for lines
    cv: Floats  # arc centre on the plane's second axis (Y in G17, X in G18, Z in G19); 0 for lines
    sweep: Floats  # degrees, positive counter-clockwise seen from the third axis' + end, whole turns included; 0: line
    length: Floats  # along the path (helix included); NaN where a moving axis is unknown at an end
    feed: Floats  # set feed along the path; NaN for rapids and where none is set (G93 and G95 are resolved)
    speed: Floats  # S in force; NaN if none was given
    spindle: Column  # int8: 1 clockwise, -1 counter-clockwise, 0 stopped (M5, or stopped by an M6), 2 never started
    tool: Ints  # program tool number in the spindle; -1 where no T and M6 has been seen
    offset: Bits  # 540 .. 593 = G54 .. G59.3; 0 = none stated
    flags: Bits
    cycle: Bytes  # 73, 76, 81 .. 89 for moves made by a canned cycle, else 0
    feed_line: Ints  # line of the F word in force (0 if none)
    speed_line: Ints  # line of the S word in force (0 if none)
    tool_line: Ints  # line of the T word in force (0 if none)
    event_kind: Bytes  # events in the order of execution
    event_line: Ints
    event_move: Ints  # how many moves were made before the event
    event_value: Floats
    faults: Faults  # faults of interpreting (those of reading stay in Program)
    stopped_at: int  # line at which interpreting gave up (flow words, a bound); 0 if it went to the end
    stopped_because: str  # a sentence, "" if it went to the end
    ended: bool  # an M2, M30 or a closing % was reached
    assumed: tuple[Assumed, ...] = ()
    followed: Followed | None = None  # of a program with parameters, expressions or flow
    beside: Beside | None = None  # of a program that called a file beside it

    def __len__(self) -> int:
        return len(self.line)
