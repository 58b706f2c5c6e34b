"""What a run found, as frozen values; the JSON contract is these structs encoded as they stand."""

from __future__ import annotations

import msgspec

from gclint.tables.setup import UsedFile
from gclint.tables.setup_sheet import SetupSheet

SCHEMA_VERSION = "1.6"


class Found(msgspec.Struct, frozen=True):
    """The measured value at the worst place, in the unit of the program where it is a length or a feed."""

    name: str
    value: float | str | None
    unit: str


class Limits(msgspec.Struct, frozen=True):
    low: float | None
    high: float | None
    unit: str
    standing: str
    source: str


class SetWord(msgspec.Struct, frozen=True, rename={"from_": "from"}):
    """One word to change: on `line`, the number behind `word`, in the program's own units."""

    line: int
    word: str
    from_: float | None
    to: float


class Change(msgspec.Struct, frozen=True):
    text: str
    set: tuple[SetWord, ...] = ()


class ChangeElsewhere(Change, frozen=True):
    """What no edit of this program brings about, such as another tool."""


class Beside(msgspec.Struct, frozen=True):
    """A line of a file that the program calls."""

    path: str
    line: int


class Regraded(msgspec.Struct, frozen=True):
    """The grade the rule's own pack gives, and the house pack that gives another, with its reason."""

    was: str
    by: str
    because: str


class Finding(msgspec.Struct, frozen=True):
    """`beside` is set where the worst place lies in a file that `worst_line` calls.

    `set_on` gives the lines on which the F, S and T words stand that are in force at the worst place.
    """

    rule: str
    grade: str
    line: int
    last_line: int
    lines: tuple[int, ...]
    worst_line: int
    column: int
    count: int
    tool: int | None
    found: Found | None
    window: Limits | None
    happens: str
    change: Change
    accepted: str | None = None  # the reason, where an acceptance covers it
    beside: Beside | None = None
    accepted_in: str | None = None  # "tide-dial.nc line 12", "job.toml line 30": where that acceptance is written
    set_on: dict[str, int] = {}
    regraded: Regraded | None = None
    rests_on: tuple[str, ...] = ()  # what was taken as given (`what` of `assumed`) that this finding rests on
    mendable: bool = False  # `gclint mend` has something to offer for it
    id: str = ""  # its name in this report: "cuts-table@41"
    follows: str | None = None  # the `id` of the finding that is its cause, with which it is one entry
    cause: str = ""  # which of the things its rule finds, alike in all programs: "code-refused 2"


class Acceptance(msgspec.Struct, frozen=True):
    """What a person has declared known and fine, and in how many places it covers something: 0 is stale."""

    rule: str
    tool: int | None
    because: str
    by: str  # who, "" where it does not say
    where: str  # "job.toml, line 30"
    grade: str  # the worst grade it covers
    places: int | None  # at most so many
    found: str | None  # at worst this
    covers: int


class NotJudged(msgspec.Struct, frozen=True):
    """`rule`: the one that could not be judged, None where it is more than rules; `what`: that in words."""

    rule: str | None
    what: str
    needs: str
    count: int

    @property
    def name(self) -> str:
        return self.rule or self.what


class AssumedOut(msgspec.Struct, frozen=True):
    """`declare`: what would say it, and `lets`: what that lets be judged; both empty where only the program could."""

    what: str
    value: str
    because: str
    declare: str = ""
    lets: str = ""


class HouseRule(msgspec.Struct, frozen=True):
    """What a house pack does: `does` is "adds", "regrades" or "narrows", `says` how, `because` its reason (of a rule it
    adds, the source); `count`: findings of the rule it adds, findings with another grade, places left out."""

    rule: str
    does: str
    says: str
    by: str
    because: str
    count: int

    @property
    def lowers_halt(self) -> bool:
        """Whether it makes less of what the rule itself says not to run."""
        return self.does == "regrades" and " halt" in self.says


Range = tuple[float, float]


class Margin(msgspec.Struct, frozen=True):
    """How near a limit is: `side` "least" or "most"; `room` is the share by which what was found keeps to it, under 0
    where it does not. `line`: where it was found."""

    what: str
    side: str
    found: float
    limit: float
    unit: str
    room: float
    line: int
    standing: str
    source: str


class Mark(msgspec.Struct, frozen=True):
    """A mark of the dial: whether the program's feeds suit it, the limits that they break there, a feed that does."""

    mark: str
    true_speed_rpm: float
    suits: bool
    breaks: tuple[str, ...]
    feed_mm_min: float | None


class ToolRow(msgspec.Struct, frozen=True):
    """Ranges are over pieces in material; the last five are of the heaviest cut, from the low to the high end of it."""

    tool: int | None
    name: str
    passes: int
    entries: dict[str, int]
    cut_length_mm: float
    cut_time_s: float | None
    rapid_time_s: float | None
    set_feed_mm_min: Range | None
    reached_feed_mm_min: Range | None
    set_speed_rpm: Range | None
    true_speed_rpm: Range | None
    fz_mm: Range | None
    h_ex_mm: Range | None
    ap_max_mm: float | None
    ae_max_mm: float | None
    removed_mm3: float | None
    force_n: Range | None = None
    power_w: Range | None = None
    torque_nm: Range | None = None
    bend_mm: Range | None = None
    stress_n_mm2: Range | None = None
    margins: tuple[Margin, ...] = ()
    marks: tuple[Mark, ...] = ()  # of a dial-set spindle, where it is not known which is set


class Extent(msgspec.Struct, frozen=True):
    min: tuple[float | None, float | None, float | None]
    max: tuple[float | None, float | None, float | None]


class Signature(msgspec.Struct, frozen=True):
    """A note in the job file that somebody has looked at this program; no proof of who it was.

    `stands` is false where the program or a declaration has changed since.
    """

    by: str
    on: str  # YYYY-MM-DD
    stands: bool
    changed: tuple[str, ...] = ()  # "the program", "a declaration"


class Checked(msgspec.Struct, frozen=True):
    """One program's result. `units` is "mm", "inch", "mixed" or "unstated".

    `texts` holds, by line, the text of every line on which a finding stands, is worst or sets a word. `paper` is None
    where a step failed.
    """

    path: str
    lines: int
    findings: tuple[Finding, ...]
    not_judged: tuple[NotJudged, ...]
    assumed: tuple[AssumedOut, ...]
    tools: tuple[ToolRow, ...]
    extent_mm: Extent
    time_s: float | None
    units: str
    fingerprint: str
    texts: dict[int, str] = {}
    paper: SetupSheet | None = None
    house: tuple[HouseRule, ...] = ()
    acceptances: tuple[Acceptance, ...] = ()
    used: tuple[UsedFile, ...] = ()
    signed: tuple[Signature, ...] = ()


class Left(msgspec.Struct, frozen=True):
    """A file or folder that was not checked, and why."""

    path: str
    because: str


class Document(msgspec.Struct, frozen=True):
    """`schema_version` is "MAJOR.MINOR": a key that is added raises the second, one that goes or changes the first."""

    gclint: str
    programs: tuple[Checked, ...]
    cautions: tuple[str, ...]
    schema_version: str = SCHEMA_VERSION
    not_read: tuple[Left, ...] = ()  # programs that could not be read or checked: the exit code is 2
    passed_over: tuple[Left, ...] = ()  # what else the named folders hold
