"""What happens in the cut, step by step, with the numbers of this program at this place."""

from __future__ import annotations

import math
from collections.abc import Callable

from gclint.digest.sheet_words import sentence
from gclint.digest.words import duration, figure, span
from gclint.motion.along import point_at
from gclint.packs.wording import one_unit
from gclint.tables.motion import RAPID
from gclint.tables.setup import Tool
from gclint.teach.ground import ground
from gclint.teach.place import Place
from gclint.teach.scale import Scale

ALL_OF_IT = 0.98  # share of the tool's disc
Steps = list[str]


def steps(place: Place, scale: Scale) -> Steps:
    """Sentences in the order in which things happen; none where the table has no motion to tell."""
    tell = TELLS.get(place.table)
    if tell is None:
        return []
    return [one_unit(" ".join(said.split())) for said in tell(place, scale)]


def _of_entry(place: Place, scale: Scale) -> Steps:
    c, row = place.context, place.row
    e, m = c.engagement.entries, c.motion
    first, last = int(e.first_move[row]), int(e.last_move[row])
    start, end = point_at(m, first, 0.0), point_at(m, last, 1.0)
    tool = c.tool(int(m.tool[first]))
    solid, slope = float(e.solid[row]), float(e.slope[row])
    fall, travel = float(e.steep_drop[row]), float(e.steep_travel[row])
    under, feed, down = float(e.under[row]), float(e.feed[row]), float(e.z_feed[row])
    made = []
    if math.isfinite(start[2]):
        way = f"from Z {scale.place(start[2])} down to Z {scale.place(end[2])}"
        made.append(f"{sentence(_called(tool))} goes {way}.")
    share = "all" if under >= ALL_OF_IT else f"{figure(100 * under, 2)} %"
    made.append(f"On its way it meets {scale.length(solid)} of solid material, with {share} of its end face over it.")
    if slope > 89:
        made.append("It travels nothing to the side meanwhile, so only the end of the tool cuts, and it cuts worst.")
    else:
        made.append(f"Where it is steepest it goes {scale.length(fall)} down and {scale.length(travel)} to the side: a "
                    f"slope of {figure(slope)} degrees.")  # fmt: skip
    if math.isfinite(down) and down > 0:
        made.append(f"At {scale.feeds(feed, feed)} it goes down at {scale.feeds(down, down)}: it is in solid for "
                    f"{duration(60 * solid / down)}.")  # fmt: skip
        speed = float(c.cutting.true_speed_of[last])
        if tool is not None and tool.flutes and speed > 0:
            made.append(f"At {figure(speed, 5)} turns a minute that is {scale.length(down / speed)} deeper with each "
                        f"turn, {scale.length(down / speed / tool.flutes)} for each tooth.")  # fmt: skip
    return made


def _of_piece(place: Place, scale: Scale) -> Steps:
    c, row = place.context, place.row
    p, loads, m = c.engagement.pieces, c.cutting.loads, c.motion
    move = int(p.move[row])
    if m.kind[move] == RAPID:
        return _of_move(place, scale)
    tool = c.tool(int(m.tool[move]))
    said, reached = float(m.feed[move]), float(loads.feed[row])
    speed, fz, h = float(loads.true_speed[row]), float(loads.fz[row]), float(loads.h_ex[row])
    made = []
    if math.isfinite(said):
        gets = ""
        if math.isfinite(reached) and reached < 0.97 * said:
            gets = f", and gets to {scale.feeds(reached, reached)} at most on so short or tight a move"
        made.append(f"Line {int(m.line[move])} moves {_called(tool)} at {scale.feeds(said, said)}{gets}.")
    if math.isfinite(speed) and speed > 0:
        stated = float(m.speed[move])
        true = f" (the program says {figure(stated, 5)})" if math.isfinite(stated) and abs(stated - speed) > 1 else ""
        turns = f"It turns {figure(speed, 5)} times a minute{true}"
        if tool is not None and tool.flutes and math.isfinite(fz):
            turns += (f": from one of its {_flutes(tool)} to the next it moves on "
                      f"{scale.length(fz)}, the feed per tooth")  # fmt: skip
        made.append(f"{turns}.")
    angle = f", {figure(float(p.angle[row]))} degrees of its rim" if p.angle[row] > 0 else ""
    made.append(
        f"{scale.length(float(p.ae[row]))} of its width and {scale.length(float(p.ap[row]))} of its height are in "
        f"uncut material{angle}."
    )
    if math.isfinite(h) and math.isfinite(fz) and h > 0:
        same = abs(h - fz) < 0.02 * fz
        thin = "thinner than the feed per tooth, as a narrow cut or a round tool spreads it"
        why = "as thick as the feed per tooth" if same else thin
        made.append(f"So the slice of one tooth is {scale.length(h)} thick at its thickest, {why}.")
    edge = float(loads.edge_speed[row])
    if math.isfinite(edge):
        made.append(f"The edge runs past the material at {figure(edge)} m/min.")
    made += _loads(place, tool, scale)
    return made


def _loads(place: Place, tool: Tool | None, scale: Scale) -> Steps:
    effort, row = place.context.cutting.loads.effort, place.row
    low, high = float(effort.force_low[row]), float(effort.force_high[row])
    if not (math.isfinite(low) and math.isfinite(high)):
        return []
    made = [f"That pushes the tool aside with {span(low, high, 'N', 2)}"]
    bend = [float(effort.bend(high=end, rows=slice(row, row + 1))[0]) for end in (False, True)]
    if all(math.isfinite(b) for b in bend):
        made[0] += f" and bends its tip by {scale.lengths(*bend)}"
    power = float(effort.power_low[row]), float(effort.power_high[row])
    if all(math.isfinite(w) for w in power):
        made[0] += f"; the spindle gives {span(*power, 'W', 2)} for it"
    return [f"{made[0]}."]


def _of_move(place: Place, scale: Scale) -> Steps:
    c, m = place.context, place.context.motion
    if not 0 <= place.move < len(m):
        return []
    move = place.move
    start, end = point_at(m, move, 0.0), point_at(m, move, 1.0)
    if not all(math.isfinite(v) for v in end):
        return []
    tool = c.tool(int(m.tool[move]))
    how = "as a rapid" if m.kind[move] == RAPID else "at feed"
    where = ", ".join(f"{axis} {scale.place(v)}" for axis, v in zip("XYZ", end))
    made = [f"Line {int(m.line[move])} moves {_called(tool)} {how} to {where}."]
    if all(math.isfinite(v) for v in start):
        came = ", ".join(f"{axis} {scale.place(v)}" for axis, v in zip("XYZ", start))
        made[0] = f"Line {int(m.line[move])} moves {_called(tool)} {how} from {came} to {where}."
    seconds, length = float(c.timing.seconds[move]), float(m.length[move])
    if math.isfinite(seconds) and seconds > 0 and length > 0:
        quick = ": no hand stops it in between" if m.kind[move] == RAPID and seconds < 3 else ""
        made.append(f"It takes {duration(seconds)} for {scale.path(length)}{quick}.")
    met = _met(place)
    if met is not None:
        made.append(f"On its way the tip is up to {scale.length(met)} below the top of what still stands there.")
    elif c.engagement.box is not None and math.isfinite(end[2]):
        low = min(end[2], start[2]) if math.isfinite(start[2]) else end[2]
        made.append(f"Its lowest point is Z {scale.place(low)}; the top of the blank is at Z "
                    f"{scale.place(c.engagement.box.top or 0.0)}.")  # fmt: skip
    return made


def _met(place: Place) -> float | None:
    """How far the tip of a move is below what stands on its line, mm; None where nothing stands higher."""
    import numpy as np

    from gclint.teach.ground import way

    c, move = place.context, place.move
    points = [each for each in way(c, move, 60) if all(math.isfinite(v) for v in each)]
    if not points:
        return None
    x, y, z = (np.array(axis) for axis in zip(*points))
    before = ground(c, move, (float(x.min()) - 1, float(x.max()) + 1, float(y.min()) - 1, float(y.max()) + 1))
    if before is None:
        return None
    deepest = float(np.max(before.height(x, y) - z))
    return deepest if math.isfinite(deepest) and deepest > 0.01 else None


def _called(tool: Tool | None) -> str:
    return tool.called if tool is not None else "the tool"


def _flutes(tool: Tool) -> str:
    return f"{tool.flutes} edges" if tool.flutes != 1 else "1 edge"


TELLS: dict[str, Callable[[Place, Scale], Steps]] = {
    "entries": _of_entry, "pieces": _of_piece, "moves": _of_move,
}
