# ruff: noqa: E501
"""Further kinds of fault for the programs of a folder; what names each was written down before it was tried."""

from __future__ import annotations

import random
from collections.abc import Iterator

import numpy as np

from tests.planted.base import Base
from tests.planted.strangers import COORDINATE, Fault, _changed, _draw, _feeds, _lines, _scaled, kind
from tests.planted.strangers import KINDS as KINDS

DEEP = "cuts-table depth-step-suspect too-deep full-width-too-deep straight-plunge plunge-too-fast coordinate-suspect rapid-through-stock tool-breaks"


@kind("coordinate-suspect arc-does-not-close arc-centre-suspect arc-turns-back")
def i_and_j_swapped(base: Base, dice: random.Random) -> Iterator[Fault]:
    for line in _draw(dice, _feeds(base, "I", "J")):
        sheet = base.sheet()
        i, j = sheet.word(line, "I") or 0, sheet.word(line, "J") or 0
        if abs(i - j) * base.unit > 0.2:
            sheet.set(line, "I", j).set(line, "J", i)
            yield Fault(sheet, (sheet.now(line),))


@kind("arc-does-not-close coordinate-suspect")
def radius_shorter_than_half_the_chord(base: Base, dice: random.Random) -> Iterator[Fault]:
    m = base.tables.motion
    for line in _draw(dice, _feeds(base, "R")):
        row = int(np.flatnonzero(m.line == line)[0])
        chord = float(np.hypot(m.x1[row] - m.x0[row], m.y1[row] - m.y0[row]))
        if chord > 1:
            yield _changed(base, line, "R", round(0.3 * chord / base.unit, 3))


@kind(COORDINATE + " " + DEEP + " cuts-only-air steep-ramp hidden-plunge")
def z_typed_for_y(base: Base, dice: random.Random) -> Iterator[Fault]:
    for line in _draw(dice, _feeds(base, "Y")):
        sheet = base.sheet()
        value = sheet.word(line, "Y") or 0
        if (sheet.word(line, "Z") is None and value * base.unit < -8) or value * base.unit > 3:
            spot = next(w for w in sheet.words(line) if w[0] == "Y")
            text = sheet.text(line)
            sheet.write(line, text[: spot[2]] + "Z" + text[spot[2] + 1 :])
            yield Fault(sheet, (sheet.now(line),))


@kind("work-offset-suspect never-cuts cuts-only-air z-zero-suspect")
def zero_set_at_height_in_the_middle(base: Base, dice: random.Random) -> Iterator[Fault]:
    m = base.tables.motion
    later = np.cumsum((base.removed > 0.1)[::-1])[::-1] > 3
    high = (m.z1 > 2) & (m.kind == 0) & later
    for line in _draw(dice, _lines(base, high)):
        sheet = base.sheet().after(line, "G92 Z0")
        yield Fault(sheet, (sheet.now(line) + 1,))


@kind("work-offset-suspect outside-stock")
def shift_typed_and_left_on(base: Base, dice: random.Random) -> Iterator[Fault]:
    m = base.tables.motion
    high = (m.z1 > 0) & (m.kind == 0) & (np.arange(len(m)) > 5) & (np.arange(len(m)) < len(m) * 0.8)
    for line in _draw(dice, _lines(base, high)):
        sheet = base.sheet().after(line, f"G52 X{sheet_number(base, 25)}")
        yield Fault(sheet, (sheet.now(line) + 1,))


def sheet_number(base: Base, mm: float) -> str:
    return f"{mm / base.unit:.3f}".rstrip("0").rstrip(".")


@kind("chip-too-thin feed-unit-suspect feed-suspect feed-never-reached")
def feeds_in_inches_under_millimetres(base: Base, dice: random.Random) -> Iterator[Fault]:
    if base.unit == 1.0 and base.sheet().lines_with("F") and base.tables.cutting.windows:
        yield Fault(_scaled(base, "F", 1 / 25.4), ())


@kind("feed-unit-suspect chip-too-thin")
def feeds_in_millimetres_a_second(base: Base, dice: random.Random) -> Iterator[Fault]:
    if base.sheet().lines_with("F"):
        yield Fault(_scaled(base, "F", 1 / 60), ())


@kind("rapid-through-stock first-move-low home-unknown travel-too-low straight-plunge")
def first_lift_left_out(base: Base, dice: random.Random) -> Iterator[Fault]:
    m = base.tables.motion
    rows = np.flatnonzero((m.kind == 0) & (m.z1 > 0) & np.isfinite(m.z1))
    if len(rows):
        line = int(m.line[rows[0]])
        cut = np.flatnonzero(base.removed > 0.1)
        if base.once(int(rows[0])) and len(cut) and rows[0] < cut[0]:
            yield Fault(base.sheet().drop(line, "Z"), ())


@kind("rapid-through-stock cuts-table no-feed-move coordinate-suspect first-move-low")
def sign_of_a_retract_turned(base: Base, dice: random.Random) -> Iterator[Fault]:
    m = base.tables.motion
    rows = (m.kind == 0) & (m.z1 > 1) & (m.z0 < m.z1) & (np.arange(len(m)) > 3)
    for line in _draw(dice, _lines(base, rows)):
        value = base.sheet().word(line, "Z")
        if value is not None:
            yield _changed(base, line, "Z", -value)


@kind("speed-suspect chip-beyond-tool chip-too-thick speed-over-spindle feed-over-machine edge-too-slow feed-suspect speed-not-on-dial")
def speed_and_feed_changed_over(base: Base, dice: random.Random) -> Iterator[Fault]:
    sheet = base.sheet()
    s, f = sheet.lines_with("S"), sheet.lines_with("F")
    if s and f:
        speed, feed = sheet.word(s[0], "S") or 0, sheet.word(f[0], "F") or 0
        if speed > 3 * feed:
            sheet.set(s[0], "S", feed)
            for line in f:
                if sheet.word(line, "F") == feed:
                    sheet.set(line, "F", speed)
            yield Fault(sheet, ())


@kind("tool-not-as-declared chip-too-thick chip-too-thin tool-breaks")
def tool_twice_as_wide(base: Base, dice: random.Random) -> Iterator[Fault]:
    assert base.shop is not None
    tool = base.shop["tool"][0]
    if tool["shape"] == "flat" and "D=" in base.data.decode():
        yield Fault(base.sheet(), (), **base.with_tool(tool["number"], diameter=f"{2 * float(tool['diameter'].split()[0]):g} mm"))


@kind("speed-over-spindle")
def spindle_too_slow_for_s(base: Base, dice: random.Random) -> Iterator[Fault]:
    lines = base.sheet().lines_with("S")
    if lines and (base.sheet().word(lines[0], "S") or 0) > 6000:
        yield Fault(base.sheet(), (), **base.with_shop("spindle", range=[1000, 5500]))


@kind("outside-travel")
def machine_too_small(base: Base, dice: random.Random) -> Iterator[Fault]:
    wide = float(base.job["stock"]["size"][0].split()[0])
    if wide > 60:
        yield Fault(base.sheet(), (), **base.with_shop("machine", travel={"x": f"{0.6 * wide:.1f} mm", "y": "2000 mm", "z": "300 mm"}))


@kind("feed-over-machine plunge-too-fast")
def machine_too_slow(base: Base, dice: random.Random) -> Iterator[Fault]:
    feeds = base.tables.motion.feed[base.removed > 0.1]
    if len(feeds) and float(np.nanmax(feeds)) > 400:
        yield Fault(base.sheet(), (), **base.with_shop("machine", feed_limit={"x": "250 mm/min", "y": "250 mm/min", "z": "120 mm/min"}))


@kind("plunge-too-fast feed-suspect chip-too-thick feed-over-machine straight-plunge")
def plunge_feed_ten_times(base: Base, dice: random.Random) -> Iterator[Fault]:
    m = base.tables.motion
    down = (m.kind == 1) & (m.z0 - m.z1 > 0.8) & (m.x0 == m.x1) & (m.y0 == m.y1) & (base.removed > 1)
    for line in _draw(dice, _lines(base, down)):
        value = base.sheet().word(line, "F")
        if value is not None and value * base.unit > 60:
            yield _changed(base, line, "F", value * 10)


@kind("arc-does-not-close arc-centre-suspect coordinate-suspect")
def centres_written_absolute(base: Base, dice: random.Random) -> Iterator[Fault]:
    sheet, m = base.sheet(), base.tables.motion
    done = 0
    for line in _feeds(base, "I", "J", cutting=False):
        row = int(np.flatnonzero(m.line == line)[0])
        if m.plane[row] == 17 and (abs(m.x0[row]) > 3 or abs(m.y0[row]) > 3):
            sheet.set(line, "I", round(float(m.cu[row]) / base.unit, 4)).set(line, "J", round(float(m.cv[row]) / base.unit, 4))
            done += 1
    if done > 2:
        yield Fault(sheet, ())


@kind("program-stop-in-material")
def stop_typed_in_the_cut(base: Base, dice: random.Random) -> Iterator[Fault]:
    m = base.tables.motion
    deep = (m.z1 < -0.5) & (m.kind != 0) & (base.removed > 0.5)
    deep &= np.concatenate((base.removed[1:] > 0.5, [False]))
    for line in _draw(dice, _lines(base, deep)):
        sheet = base.sheet().after(line, "M0")
        yield Fault(sheet, (sheet.now(line) + 1,))


@kind("dwell-in-material")
def wait_typed_in_the_cut(base: Base, dice: random.Random) -> Iterator[Fault]:
    m = base.tables.motion
    deep = (m.z1 < -0.5) & (m.kind != 0) & (base.removed > 0.5)
    deep &= np.concatenate((base.removed[1:] > 0.5, [False]))
    for line in _draw(dice, _lines(base, deep)):
        sheet = base.sheet().after(line, "G4 P8")
        yield Fault(sheet, (sheet.now(line) + 1,))


@kind("depth-step-suspect cuts-only-air " + DEEP)
def depth_of_a_lap_lost(base: Base, dice: random.Random) -> Iterator[Fault]:
    """One of the levels is not gone down to: its lap cuts air, and the next takes two levels."""
    m = base.tables.motion
    down = (m.kind == 1) & (m.z0 - m.z1 > 0.8) & (m.x0 == m.x1) & (m.y0 == m.y1) & (base.removed > 1) & (m.z0 < 0.05)
    for line in _draw(dice, _lines(base, down)):
        if base.sheet().word(line, "Z") is not None:
            yield Fault(base.sheet().drop(line, "Z"), ())


@kind("feed-suspect chip-too-thin feed-never-reached odd-lap-feed")
def feed_behind_the_plunge_lost(base: Base, dice: random.Random) -> Iterator[Fault]:
    m = base.tables.motion
    for line in _draw(dice, _feeds(base, "F", "X")):
        row = int(np.flatnonzero(m.line == line)[0])
        if row and m.z1[row] == m.z0[row] and m.feed[row] > 2.5 * m.feed[row - 1] > 0:
            sheet = base.sheet().drop(line, "F")
            yield Fault(sheet, (sheet.now(line),))


@kind(COORDINATE)
def leading_digit_lost(base: Base, dice: random.Random) -> Iterator[Fault]:
    sheet = base.sheet()
    for line in _draw(dice, _feeds(base)):
        for letter in "XY":
            value = sheet.word(line, letter)
            if value is not None and abs(value) * base.unit >= 100:
                first = 10 ** int(np.log10(abs(value)))
                yield _changed(base, line, letter, float(np.sign(value) * (abs(value) % first)))
                break


@kind(COORDINATE)
def digit_typed_twice(base: Base, dice: random.Random) -> Iterator[Fault]:
    sheet = base.sheet()
    for line in _draw(dice, _feeds(base)):
        for letter in "XY":
            value = sheet.word(line, letter)
            if value is not None and 20 < abs(value) < 100:
                text = f"{abs(value):g}"
                yield _changed(base, line, letter, float(np.sign(value) * float(text[0] + text)))
                break


@kind("straight-plunge too-deep full-width-too-deep edge-too-fast chip-too-thick chip-too-thin plunge-too-fast steep-ramp tool-breaks spindle-stalls tool-bends bores-with-router-bit peck-too-deep hidden-plunge")
def aluminium_under_a_program_for_wood(base: Base, dice: random.Random) -> Iterator[Fault]:
    if float(-np.nanmin(base.tables.motion.z1)) > 3 and base.job["material"] == "birch-plywood":
        yield Fault(base.sheet(), (), **base.with_job(material="aluminium-6061"))


@kind("code-refused code-ignored code-unknown arc-does-not-close arc-centre-suspect outside-stock")
def absolute_centres_turned_on(base: Base, dice: random.Random) -> Iterator[Fault]:
    if (base.tables.motion.kind >= 2).sum() > 2 and base.sheet().lines_with("I"):
        sheet = base.sheet()
        first = sheet.lines_with("G", 90.0)
        if first:
            yield Fault(sheet.after(first[0], "G90.1"), ())


@kind("outside-stock outside-travel coordinate-suspect cuts-table code-refused not-followed full-width-too-deep straight-plunge too-deep")
def scaling_left_on(base: Base, dice: random.Random) -> Iterator[Fault]:
    first = base.sheet().lines_with("G", 90.0)
    if first:
        yield Fault(base.sheet().after(first[0], "G51 P3"), ())
