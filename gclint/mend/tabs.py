"""A proposal (`--tabs`): the last lap that would free a part lifts over tabs. The surface differs at the tabs alone."""

from __future__ import annotations

import math

from gclint.knowledge.numbers import model_number
from gclint.mend.case import Case, Offer, Proposal, Refused
from gclint.mend.draft import Edit
from gclint.mend.style import STAR, NoRoom, numbered, without_number
from gclint.tables.finding import Finding
from gclint.tables.motion import LINE, RAPID

FLOOR = 0.05  # mm; a move so near the underside, or below it, cuts through


def offers(case: Case, finding: Finding) -> list[Offer]:
    made: list[Offer] = []
    try:
        made.append(_tabs(case, finding))
    except (ValueError, NoRoom) as problem:
        made.append(Refused(finding.rule, tuple(finding.lines), str(problem)))
    return made


def _tabs(case: Case, finding: Finding) -> Proposal:
    box, m = case.setup.stock, case.motion
    if box is None or box.bottom is None or box.top is None or not box.declared:
        raise ValueError("where the underside of the blank lies is not declared")
    if not case.straight_through:
        raise ValueError("the program has loops, calls or expressions, and a path is mended only where it runs once")
    row = case.rows_of.get(finding.worst_line, [-1])[0]
    if row < 0:
        raise ValueError("which lap frees the part is not plain")
    first = last = row
    while first > 0 and int(m.kind[first - 1]) != RAPID and _through(case, first - 1):
        first -= 1
    while last + 1 < len(m) and int(m.kind[last + 1]) != RAPID and _through(case, last + 1):
        last += 1
    tool = case.setup.tools.get(int(m.tool[row]))
    if tool is None:
        raise ValueError("the tool has to be declared")
    height = min(model_number("tab_height"), (box.top - box.bottom) / 2)
    bridge = model_number("tab_width") + tool.diameter
    card = case.setup.material
    angle = card.ramp_advised or card.ramp_limit if card is not None else None
    down = height / math.tan(math.radians(angle.value * 0.95)) if angle is not None else height
    need = bridge + down + tool.diameter
    rows = [k for k in range(first, last + 1)
            if int(m.kind[k]) == LINE and abs(float(m.z1[k] - m.z0[k])) < 1e-6 and float(m.length[k]) >= need
            and not STAR.search(case.text(int(m.line[k]))) and len(case.rows_of[int(m.line[k])]) == 1]  # fmt: skip
    if len(rows) < 2 or not case.in_frame(rows):
        raise ValueError(f"fewer than two straight moves of the lap are {need:.0f} mm long, which a tab takes here")
    wanted = int(model_number("tabs"))
    chosen = sorted(sorted(rows, key=lambda k: -float(m.length[k]))[:wanted])
    edits: list[Edit] = []
    boxes: list[tuple[float, float, float, float]] = []
    for k in chosen:
        edits.append(_lifted(case, k, box.bottom + height, bridge, down))
        boxes.append(_place(case, k, bridge, down, tool.diameter / 2))
    because = (
        f"Proposal: {len(chosen)} tabs of {model_number('tab_width'):g} mm, {height:g} mm high, in the lap that would "
        "free the part; look where they lie, and cut them by hand afterwards."
    )
    lines = tuple(sorted({*finding.lines, *(int(m.line[k]) for k in chosen)}))
    return Proposal(finding.rule, "tabs", lines, tuple(edits), because, boxes=tuple(boxes))


def _through(case: Case, row: int) -> bool:
    box, m = case.setup.stock, case.motion
    return box is not None and box.bottom is not None and float(m.z1[row]) <= box.bottom + FLOOR


def _ends(case: Case, row: int, bridge: float, down: float) -> tuple[tuple[float, float], ...]:
    """Where the tool goes up, where it starts down, and where it is down again."""
    m = case.motion
    length = float(m.length[row])
    a, b = (float(m.x0[row]), float(m.y0[row])), (float(m.x1[row]), float(m.y1[row]))
    start = (length - bridge - down) / 2
    return tuple(
        (a[0] + (b[0] - a[0]) * at / length, a[1] + (b[1] - a[1]) * at / length)
        for at in (start, start + bridge, start + bridge + down)
    )


def _place(case: Case, row: int, bridge: float, down: float, radius: float) -> tuple[float, float, float, float]:
    points = _ends(case, row, bridge, down)
    xs, ys = [p[0] for p in points], [p[1] for p in points]
    return min(xs) - radius, max(xs) + radius, min(ys) - radius, max(ys) + radius


def _lifted(case: Case, row: int, top: float, bridge: float, down: float) -> Edit:
    m, style = case.motion, case.style
    line, unit = int(m.line[row]), case.unit(row)
    text = case.text(line)
    up, over, back = _ends(case, row, bridge, down)
    own = without_number(text).lstrip()
    number = text[: len(text) - len(without_number(text))]
    words = case.words(line)
    lead = [style.code("G", 1)] if any(letter == "G" for letter, *_ in words) else []
    feed = [style.word(letter, value) for letter, value, _, _ in words if letter == "F"]
    first = style.line(*lead, style.word("X", up[0] / unit), style.word("Y", up[1] / unit), *feed)
    z = float(m.z0[row])
    own_feed, axes = case.modes.value_at("F", line), case.setup.machine.feed_limit
    most = math.floor(axes.z / unit) if axes is not None and axes.z is not None else math.inf
    slow, usual = ([style.word("F", most)], [style.word("F", own_feed)]) if own_feed > most else ([], [])
    after = (
        style.line(style.word("Z", top / unit), *slow),
        style.line(style.word("X", over[0] / unit), style.word("Y", over[1] / unit), *usual),
        style.line(style.word("X", back[0] / unit), style.word("Y", back[1] / unit), style.word("Z", z / unit)),
        own,
    )
    return Edit(line, text=number + first, after=numbered(style, case.draft, line, after, behind=True))
