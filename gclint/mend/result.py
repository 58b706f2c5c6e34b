"""What `gclint mend` and `gclint compare` answer; the JSON contract is these structs encoded as they stand."""

from __future__ import annotations

from msgspec import Struct


class File(Struct, frozen=True):
    path: str
    fingerprint: str


class Made(Struct, frozen=True):
    """One change. `lines` are of the original (where it puts lines in, the line they stand beside); `new_lines` of the
    copy."""

    rule: str
    kind: str
    lines: tuple[int, ...]
    new_lines: tuple[int, ...]
    because: str


class Surface(Struct, frozen=True):
    """`largest_difference_mm` is null where it could not be worked out, and then `same` is false."""

    largest_difference_mm: float | None
    z_tolerance_mm: float
    cell_mm: float
    same: bool


class Place(Struct, frozen=True):
    """A finding; `line` is of the original in `gone`, of the copy in `new` and `left`."""

    rule: str
    grade: str
    line: int


class Proof(Struct, frozen=True):
    surface: Surface
    gone: tuple[Place, ...]
    new: tuple[Place, ...]
    left: tuple[Place, ...]
    time_s: tuple[float | None, float | None]
    untouched_lines: int


class NotMended(Struct, frozen=True):
    rule: str
    lines: tuple[int, ...]
    because: str


class Document(Struct, frozen=True, rename={"from_": "from"}):
    """`to` is null where no copy was written: none was needed, or nothing could be proved."""

    gclint: str
    from_: File
    to: File | None
    changes: tuple[Made, ...]
    proof: Proof
    not_mended: tuple[NotMended, ...]


class Compared(Struct, frozen=True):
    """Two versions of a program: findings gone and new, the surface, the time."""

    gclint: str
    old: File
    new: File
    proof: Proof
