"""What can be wrong with the text or with the motion it asks for: one numbered kind per fault.

A fault is a row (kind, line, start, end, a, b): the span is a byte range of the program, `a` and `b` are numbers whose
meaning stands beside the kind. Reading and interpreting make faults; rules of `rules/program` judge them.
"""

from __future__ import annotations

from array import array
from math import nan

from msgspec import Struct

from gclint.columns import Bytes, Floats, Ints, Longs

KINDS: tuple[str, ...] = (
    "none",
    # made by reading
    "number-unreadable",  # a word whose number cannot be read (also a letter with no number)
    "comment-unclosed",  # an opening bracket with no closing one on its line
    "comment-leftover",  # text behind a comment that closed early, or a bracket that closes nothing: it is read as code
    "character-unknown",  # a character that belongs to no word (control character, stray sign, non-ASCII in code)
    # the block holds a parameter or an expression: followed, nothing is wrong with it; the first 1,000 of a program
    "expression",
    "flow",  # the block holds an O word, a call, a loop or a jump: followed, nothing is wrong with it
    "line-too-long",  # a = characters
    "block-unmoving",  # block-delete '/' line: read, not executed
    # made by interpreting
    "word-conflict",  # two words of one modal group, or one letter twice, or two codes that both want the axis words
    "word-missing",  # a code that lacks a word it needs (G2 with no centre, G81 with no Z on first use); a = code x 10
    "word-unused",  # a word nothing on the block uses (I J K with G1, P without G4)
    "code-unknown",  # a G or M code gclint does not know; a = code x 10
    "axis-not-modelled",  # an A B C U V W word: its motion is not judged
    "arc-does-not-close",  # a = radius at the start, b = radius at the end, mm
    "arc-radius-impossible",  # R too small for the chord, or R format with end = start; a = R, b = half chord, mm
    "arc-without-plane",  # the arc's words do not fit the plane in force
    "cycle-refused",  # a canned cycle that the report refuses: R below Z, Q <= 0, L < 1, in G93, with compensation
    "feed-missing",  # a cut is asked for while no feed is set, or G93 without its own F
    "units-unstated",  # first motion before any G20 or G21
    "distance-unstated",  # first motion before any G90 or G91
    "feed-mode-unstated",  # first motion before any G93, G94 or G95
    "plane-unstated",  # first arc before any G17, G18 or G19
    "offset-unstated",  # first move in work coordinates before any G54..G59.3
    "position-unknown",  # an incremental or arc move from a position that is not known
    "compensation-unresolved",  # moves under G41 or G42 whose real path is not known: no diameter; a = D (NaN: no D)
    "value-out-of-range",  # negative S or T or dwell, P of G10 outside 1..9, a coordinate beyond 1e6 mm ...
    "feed-zero",  # F0 or a negative F
    # made by following parameters, expressions and flow
    "expression-unreadable",  # a block that holds a parameter, an expression or flow and cannot be read as such
    "expression-impossible",  # a division by zero, a root of a negative number ...: the value is unknown
    "parameter-impossible",  # an index that is no parameter; a = the index, NaN where it is computed
    "parameter-unset",  # read before anything set it; a = its number, NaN where it has a name
    "value-unknown",  # a value that is known only when the program runs; a = the parameter
    "flow-unmatched",  # a call or jump to what is not there, a loop or branch that is not opened or closed
    "bound-reached",  # the program goes on longer than is followed; a = the bound
    "no-motion-mode",  # axis words with no motion mode in force
    "code-refused",  # the controller's card says that it refuses this code, word or habit; the block is not executed
    "code-ignored",  # the card says that it takes this code, word or habit and does nothing
    "arc-centre-suspect",  # as arc-does-not-close, and it closes with centres taken in the other mode
    "point-missing",  # X100 is 0.1 mm here, and only some numbers have a point; a = how many have none
    "checksum-wrong",  # a = the checksum written, b = that of the characters before it
    "frame-turned",  # G16, G51, G51.1 or G68: moves in a frame that is not followed; a = code x 10
    # made by working out cutter compensation
    "compensation-refused",  # a code that the report refuses while compensation is on, or turning it on; a = code x 10
    "contour-too-tight",  # the tool does not go into an inside corner or arc; a = its radius, b = room there is, mm
    "corner-refused",  # an inside corner on a controller that refuses every one; a = the tool's radius, mm
    "arc-plane-suspect",  # as arc-does-not-close, and it closes in another plane; a = that plane (17, 18 or 19)
    "entry-too-short",  # the first move under G41 or G42 is shorter than a, the radius; b = its length, mm
)
CODE = {kind: number for number, kind in enumerate(KINDS)}


class Faults(Struct, frozen=True, eq=False):
    """Columns of one length, in the order of the text."""

    kind: Bytes  # index into KINDS
    line: Ints  # from 1
    start: Longs  # byte offset of the first byte concerned
    end: Longs  # byte offset behind the last one
    a: Floats  # NaN where unused
    b: Floats

    def __len__(self) -> int:
        return len(self.kind)


class FaultRows:
    """Faults while they are being found; kernels call `add`, and `columns` makes the table."""

    def __init__(self) -> None:
        self.kind, self.line = array("B"), array("i")
        self.start, self.end = array("q"), array("q")
        self.a, self.b = array("d"), array("d")

    def add(self, kind: int, line: int, start: int, end: int, a: float = nan, b: float = nan) -> None:
        self.kind.append(kind)
        self.line.append(line)
        self.start.append(start)
        self.end.append(end)
        self.a.append(a)
        self.b.append(b)

    def columns(self) -> Faults:
        import numpy as np

        return Faults(
            kind=np.array(self.kind, np.uint8),
            line=np.array(self.line, np.int32),
            start=np.array(self.start, np.int64),
            end=np.array(self.end, np.int64),
            a=np.array(self.a, np.float64),
            b=np.array(self.b, np.float64),
        )
