// Drawings on which things are declared: the path from above with blank, zero and boxes, and a bit from the side.

const NS = "http://www.w3.org/2000/svg";
const s = (tag, given = {}, ...inner) => {
  const made = document.createElementNS(NS, tag);
  for (const [name, value] of Object.entries(given)) if (value !== null && value !== undefined) made.setAttribute(name, value);
  made.append(...inner.flat().filter(Boolean));
  return made;
};

// "120 mm", "1/8 in", '1 1/2"' in mm; null for what is no length.
export function mm(written) {
  if (typeof written !== "string") return typeof written === "number" ? written : null;
  const found = written.trim().match(/^([+-]?)(?:(\d+(?:\.\d*)?|\.\d+)(?![/\d]))?\s*-?\s*(?:(\d+)\/(\d+))?\s*(mm|cm|m|um|in|inch|inches|")?$/i);
  if (!found || (found[2] === undefined && found[3] === undefined)) return null;
  const value = Number(found[2] ?? 0) + (found[3] ? Number(found[3]) / Number(found[4]) : 0);
  const unit = { mm: 1, cm: 10, m: 1000, um: 0.001, in: 25.4, inch: 25.4, inches: 25.4, '"': 25.4 }[(found[5] ?? "mm").toLowerCase()];
  const made = (found[1] === "-" ? -1 : 1) * value * unit;
  return Number.isFinite(made) ? made : null;
}

// A length as it is saved; a number without a unit is mm here, as every field says.
export function text(value) {
  if (typeof value === "number") return `${Number(value.toFixed(3))} mm`;
  return /^[+-]?(\d+(\.\d*)?|\.\d+)$/.test(value) ? `${value} mm` : value;
}

// --- a bit

export function bit(tool) {
  const width = Math.min(40, Math.max(5, 8 * Math.sqrt(mm(tool.diameter) ?? 6) / 1.6));
  const shank = Math.min(40, Math.max(5, tool.shank ? 8 * Math.sqrt(mm(tool.shank) ?? 6) / 1.6 : width));
  const a = 30 - width / 2, b = 30 + width / 2, r = width / 2;
  const slope = Math.min(48, r / Math.tan(((Number.parseFloat(tool.angle) || (tool.shape === "drill" ? 118 : 60)) * Math.PI) / 360));
  const end = {
    flat: `V92 H${b} V40`, facing: `V92 H${b} V40`, burr: `V92 L30 96 L${b} 92 V40`,
    ball: `V${92 - r} A${r} ${r} 0 0 0 ${b} ${92 - r} V40`,
    "bull-nose": `V${92 - r / 3} A${r / 3} ${r / 3} 0 0 0 ${a + r / 3} 92 H${b - r / 3} A${r / 3} ${r / 3} 0 0 0 ${b} ${92 - r / 3} V40`,
    v: `V${92 - slope} L30 92 L${b} ${92 - slope} V40`, drag: `V70 L${a + 2} 92 L${b} 70 V40`, drill: `V${92 - slope} L30 92 L${b} ${92 - slope} V40`,
    "tapered-ball": `L27 88 A3 3 0 0 0 33 88 L${b} 40`, "t-slot": `H26 V78 H${a} V92 H${b} V78 H34 V40 H${b}`,
    "thread-mill": `l-3 4 l3 4 l-3 4 l3 4 l-3 4 l3 4 V92 H${b} V64 l3 -4 l-3 -4 l3 -4 l-3 -4 l3 -4 l-3 -4`,
    form: `V70 Q${a} 92 30 92 Q${b} 92 ${b} 70 V40`,
  }[tool.shape] ?? `V92 H${b} V40`;
  const turns = [];
  const lean = { "up-cut": -8, "down-cut": 8, compression: 0, straight: 0 }[tool.helix] ?? -8;
  if (!["v", "drag", "t-slot", "thread-mill", "form"].includes(tool.shape)) {
    for (let y = 48; y <= 80; y += 12) {
      const way = tool.helix === "compression" ? (y > 64 ? -8 : 8) : lean;
      turns.push(tool.helix === "straight" ? "" : `M${a + 1} ${y - way / 2} L${b - 1} ${y + way / 2}`);
    }
    if (tool.helix === "straight") turns.push("M30 42 V88");
  }
  return s("svg", { class: "bit-drawing", viewBox: "0 0 60 100", "aria-hidden": "true" },
    s("rect", { x: 30 - shank / 2, y: 2, width: shank, height: 38, class: "shank" }),
    s("path", { d: `M${a} 40 ${end} Z`, class: "cutting" }), s("path", { d: turns.join(" "), class: "flute" }));
}

// --- the path from above

export function drawPath(drawing, given) {
  const { size, corner, save, keep, box } = given;
  const placed = size && corner;
  const bounds = { x: [Infinity, -Infinity], y: [Infinity, -Infinity] };
  const reach = (x, y) => { for (const [axis, v] of [["x", x], ["y", y]]) { bounds[axis][0] = Math.min(bounds[axis][0], v); bounds[axis][1] = Math.max(bounds[axis][1], v); } };
  reach(0, 0);
  for (let n = 0; n < drawing.x.length; n++) if (n + 1 < drawing.kind.length ? drawing.kind[n] !== 0 || n === 0 : true) reach(drawing.x[n], drawing.y[n]);
  const blank = placed ? { x: corner[0], y: corner[1], w: size[0], h: size[1] }
    : drawing.proposed ? { x: drawing.proposed.corner[0], y: drawing.proposed.corner[1], w: drawing.proposed.size[0], h: drawing.proposed.size[1] } : null;
  if (blank) { reach(blank.x, blank.y); reach(blank.x + blank.w, blank.y + blank.h); }
  for (const each of keep) if (each.low && each.high && [...each.low, ...each.high].every((v) => v !== null)) { reach(each.low[0], each.low[1]); reach(each.high[0], each.high[1]); }
  const wide = Math.max(bounds.x[1] - bounds.x[0], 10), tall = Math.max(bounds.y[1] - bounds.y[0], 10), pad = 0.09 * Math.max(wide, tall);
  const frame = { x: bounds.x[0] - pad, y: -bounds.y[1] - pad, w: wide + 2 * pad, h: tall + 2 * pad };
  const pen = Math.max(frame.w / 420, frame.h / 420);
  const svg = s("svg", { class: "declare-drawing", viewBox: `${frame.x} ${frame.y} ${frame.w} ${frame.h}`, role: "group", "aria-label": "The path from above, with the blank, zero and what stands in the way" });

  // the blank
  const group = s("g", { class: `blank ${placed ? "" : "proposed"}` });
  const rect = s("rect", { "stroke-width": 1.5 * pen });
  group.append(rect);
  const handles = [];
  function set() {
    for (const [name, value] of [["x", blank.x], ["y", -blank.y - blank.h], ["width", blank.w], ["height", blank.h]]) rect.setAttribute(name, Math.max(value, name === "width" || name === "height" ? 0.1 : -1e9));
    for (const [handle, sx, sy] of handles) { handle.setAttribute("cx", blank.x + sx * blank.w); handle.setAttribute("cy", -blank.y - sy * blank.h); }
    words.textContent = `${placed ? "" : "proposed: "}${round(blank.w)} x ${round(blank.h)} mm, lowest at X ${round(blank.x)}, Y ${round(blank.y)}`;
  }
  const words = s("text", { x: frame.x + pad / 3, y: frame.y + frame.h - pad / 3, "font-size": 11 * pen, class: "words" });

  // the path: each kind one element
  const lines = ["", "", "", "", ""], last = [-1, -1, -1, -1, -1];
  for (let n = 0; n < drawing.kind.length; n++) {
    const kind = drawing.kind[n];
    if (last[kind] !== n) lines[kind] += `M${drawing.x[n]} ${-drawing.y[n]}`;
    lines[kind] += `L${drawing.x[n + 1]} ${-drawing.y[n + 1]}`;
    last[kind] = n + 1;
  }
  const path = s("g", { class: "path", fill: "none", "aria-hidden": "true" },
    [["rapid", 0, 0.8], ["air", 1, 0.8], ["cut", 2, 1.6], ["hit", 3, 2.4]].map(([name, kind, width]) => s("path", { class: name, d: lines[kind], "stroke-width": width * pen, "stroke-dasharray": kind === 0 ? `${3 * pen} ${3 * pen}` : null })));

  const zero = s("g", { class: "zero", tabindex: placed ? 0 : null, role: placed ? "button" : null, "aria-label": placed ? "Work zero; the arrow keys move it on the blank by 1 mm, with Shift by 10 mm" : null },
    s("circle", { r: 7 * pen, "stroke-width": 1.5 * pen }), s("path", { d: `M${-11 * pen} 0H${11 * pen}M0 ${-11 * pen}V${11 * pen}`, "stroke-width": 1.5 * pen }),
    s("path", { class: "axis", d: `M0 0H${26 * pen}M0 0V${-26 * pen}`, "stroke-width": 2 * pen }),
    s("text", { x: 28 * pen, y: 4 * pen, "font-size": 11 * pen }, "X"), s("text", { x: -4 * pen, y: -29 * pen, "font-size": 11 * pen }, "Y"));

  svg.append(group);
  if (blank) {
    svg.append(path);
    if (placed) {
      group.setAttribute("tabindex", "0"); group.setAttribute("role", "button");
      group.setAttribute("aria-label", "The blank; the arrow keys move it by 1 mm, with Shift by 10 mm");
      const start = { ...blank };
      drag(svg, group, (dx, dy) => { blank.x = snap(start.x + dx); blank.y = snap(start.y + dy); set(); }, () => save([blank.x, blank.y], null));
      arrows(group, (dx, dy) => { blank.x += dx; blank.y += dy; set(); }, () => save([blank.x, blank.y], null));
      for (const [sx, sy] of [[0, 0], [1, 0], [0, 1], [1, 1]]) {
        const handle = s("circle", { class: "handle", r: 6 * pen, "stroke-width": 1.5 * pen });
        handles.push([handle, sx, sy]);
        drag(svg, handle, (dx, dy) => {
          const right = start.x + start.w, top = start.y + start.h;
          if (sx) blank.w = Math.max(1, snap(start.w + dx)); else { blank.x = Math.min(snap(start.x + dx), right - 1); blank.w = right - blank.x; }
          if (sy) blank.h = Math.max(1, snap(start.h + dy)); else { blank.y = Math.min(snap(start.y + dy), top - 1); blank.h = top - blank.y; }
          set();
        }, () => save([blank.x, blank.y], [blank.w, blank.h, size[2]]));
      }
      drag(svg, zero, (dx, dy) => { zero.setAttribute("transform", `translate(${snap(dx)} ${-snap(dy)})`); path.setAttribute("transform", `translate(${snap(dx)} ${-snap(dy)})`); words.textContent = `zero moves X ${snap(dx)}, Y ${snap(dy)} on the blank`; },
        (dx, dy) => save([blank.x - snap(dx), blank.y - snap(dy)], null));
      const moved = [0, 0];
      arrows(zero, (dx, dy) => { moved[0] += dx; moved[1] += dy; zero.setAttribute("transform", `translate(${moved[0]} ${-moved[1]})`); path.setAttribute("transform", `translate(${moved[0]} ${-moved[1]})`); },
        () => save([blank.x - moved[0], blank.y - moved[1]], null));
    }
  } else svg.append(path);

  // what stands in the way
  keep.forEach((each, n) => {
    if (!each.low || !each.high || ![...each.low, ...each.high].every((v) => v !== null)) return;
    const low = [...each.low], high = [...each.high];
    const made = s("g", { class: "keep", tabindex: 0, role: "button", "aria-label": `${each.name || `Box ${n + 1}`}; the arrow keys move it by 1 mm, with Shift by 10 mm` });
    const inner = s("rect", { "stroke-width": 1.5 * pen });
    const name = s("text", { "font-size": 11 * pen }, each.name || `box ${n + 1}`);
    const put = () => {
      for (const [key, value] of [["x", low[0]], ["y", -high[1]], ["width", Math.max(0.1, high[0] - low[0])], ["height", Math.max(0.1, high[1] - low[1])]]) inner.setAttribute(key, value);
      name.setAttribute("x", low[0]); name.setAttribute("y", -high[1] - 3 * pen);
    };
    const shift = (dx, dy, from) => { for (const [axis, d] of [[0, dx], [1, dy]]) { low[axis] = snap(from.low[axis] + d); high[axis] = low[axis] + (from.high[axis] - from.low[axis]); } put(); };
    put();
    made.append(inner, name);
    const start = { low: [...low], high: [...high] };
    drag(svg, made, (dx, dy) => shift(dx, dy, start), () => box(n, low, high));
    arrows(made, (dx, dy) => shift(dx, dy, { low: [...low], high: [...high] }), () => box(n, low, high));
    svg.append(made);
  });
  svg.append(zero, ...handles.map(([handle]) => handle), words);
  if (blank) set();

  const out = document.createElement("figure");
  out.className = "drawn";
  out.append(svg, sideView(drawing, given, pen));
  return out;
}

// The blank from the side: its thickness, Z zero, and how deep the program goes.
function sideView(drawing, { thick, zero }) {
  const deep = drawing.proposed?.deep ?? 0, high = Math.max(thick ?? 0, deep, 4);
  const top = zero === "table" ? -(thick ?? 0) : 0, z = (v) => 14 + ((v - Math.min(top, 0)) / Math.max(high, -top + deep)) * 52;
  const bottom = top + (thick ?? deep);
  const svg = s("svg", { class: "side-drawing", viewBox: "0 0 240 84", role: "img", "aria-label": `From the side: ${thick ? `${round(thick)} mm thick` : "thickness not said"}, the program goes ${round(deep)} mm below zero` },
    s("rect", { class: thick ? "side-blank" : "side-blank proposed", x: 20, y: z(top), width: 130, height: Math.max(1, z(bottom) - z(top)) }),
    thick ? s("rect", { class: "side-table", x: 8, y: z(bottom), width: 154, height: 7 }) : null,
    s("path", { class: deep > (thick ?? Infinity) + (zero === "table" ? -top : 0) ? "side-cut deep" : "side-cut", d: `M78 ${z(Math.min(top, 0))}V${z(deep)}H92V${z(Math.min(top, 0))}` }),
    s("path", { class: "side-zero", d: `M8 ${z(0)}H162` }),
    s("text", { x: 168, y: z(0) + 4 }, "Z zero"), s("text", { x: 168, y: Math.max(z(0) + 19, z(deep) + 4) }, `${round(deep)} below`));
  return svg;
}

const round = (value) => String(Number(value.toFixed(2)));
const snap = (value) => Math.round(value);

// Follows a pointer from press to release; `move` and `end` hear how far, in mm, with Y up.
function drag(svg, element, move, end) {
  element.classList.add("draggable");
  element.addEventListener("pointerdown", (event) => {
    if (event.button !== 0) return;
    event.preventDefault();
    event.stopPropagation();
    element.focus?.({ preventScroll: true });
    element.setPointerCapture(event.pointerId);
    const from = place(svg, event);
    let moved = false, far = [0, 0];
    const go = (next) => { const to = place(svg, next); far = [to.x - from.x, -(to.y - from.y)]; moved ||= Math.hypot(...far) > 0.3; if (moved) move(...far); };
    const stop = () => {
      element.removeEventListener("pointermove", go); element.removeEventListener("pointerup", stop); element.removeEventListener("pointercancel", stop);
      if (moved) end(...far);
    };
    element.addEventListener("pointermove", go); element.addEventListener("pointerup", stop); element.addEventListener("pointercancel", stop);
  });
}

function place(svg, event) {
  return new DOMPoint(event.clientX, event.clientY).matrixTransform(svg.getScreenCTM().inverse());
}

// The arrow keys move; a moment after the last one `end` is told.
function arrows(element, move, end) {
  let waiting;
  element.addEventListener("keydown", (event) => {
    const step = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] }[event.key];
    if (!step) return;
    event.preventDefault();
    const far = event.shiftKey ? 10 : 1;
    move(step[0] * far, step[1] * far);
    clearTimeout(waiting);
    waiting = setTimeout(end, 700);
  });
}
