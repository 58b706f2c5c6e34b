// The charts of one tool: along its run, its entries from the side, its pairs in their operating window.
import * as Plot from "@observablehq/plot";
import type { Entry, Model, Run, Strip, Windowed } from "./data";
import { draw, figure, make } from "./dom";

type Pick = (row: number) => void;

export function chartsOf(strip: Strip, model: Model, plan: SVGSVGElement, width: number, pick: Pick): HTMLElement[] {
  const made: HTMLElement[] = [];
  const across = width > 980 ? Math.min(3, strip.pairs.length) : width > 640 ? 2 : 1;
  const each = Math.min(520, Math.floor((width - 16 * (across - 1)) / across));
  const one = strip.pairs.length === 1;
  made.push(make("div", { class: one ? "side-by-side with-window" : "side-by-side" },
    make("figure", { class: "small-plan" }, plan, make("figcaption", {}, "From above in the blank.")),
    strip.entries.length ? entriesOf(strip, model, pick) : make("div"),
    one ? pairChart(strip.pairs[0], model, Math.min(380, width)) : null));
  if (strip.run) made.push(...runCharts(strip.run, model, width, pick));
  if (strip.pairs.length > 1) made.push(make("div", { class: "pairs" }, ...strip.pairs.map((pair) => pairChart(pair, model, each))));
  return made;
}

// The library writes a style element into each chart; a strict policy takes none, and the page's own style says the same.
function plain(chart: ReturnType<typeof Plot.plot>): SVGSVGElement {
  for (const style of chart.querySelectorAll("style")) style.remove();
  for (const part of chart.querySelectorAll("[aria-label]")) part.removeAttribute("aria-label"); // the chart is one picture
  return chart as unknown as SVGSVGElement;
}

interface Step { from: number; to: number; low: number | null; high: number | null; left: number | null; right: number | null }

function steps(run: Run, low: (number | null)[], high: (number | null)[], left: (number | null)[] | null,
  right: (number | null)[] | null, scale: number, along: number): Step[] {
  const value = (list: (number | null)[] | null, i: number) => list && list[i] !== null ? list[i]! * scale : null;
  return run.to.map((to, i) => ({ from: (i ? run.to[i - 1] : 0) * along, to: to * along, low: value(low, i), high: value(high, i),
    left: value(left, i), right: value(right, i) }));
}

function runCharts(run: Run, model: Model, width: number, pick: Pick): HTMLElement[] {
  const metres = model.unit === "mm", along = metres ? 0.001 : model.scale / 12;
  const length = `cut, ${metres ? "m" : "ft"}`, { unit, scale } = model;
  const chart = (label: string, words: string, data: Step[], last: boolean, band: boolean, set: boolean) => {
    const top = Math.max(...data.flatMap((d) => [d.high ?? 0, set ? d.right ?? 0 : 0]), 0)
      || Math.max(...data.map((d) => d.right ?? 0), 0);
    const limit = band ? Math.max(top * 1.1, Math.min(Math.max(...data.map((d) => d.right ?? 0)), top * 2.2)) : top * 1.1;
    if (!(limit > 0)) return null;
    const bounds = (d: Step) => d.left !== null || d.right !== null;
    const made = plain(Plot.plot({
      width, height: last ? 128 : 108, marginLeft: 62, marginRight: 12, marginTop: 8, marginBottom: last ? 36 : 18,
      className: "chart",
      x: { label: last ? length : null, domain: [0, run.to[run.to.length - 1] * along], ticks: Math.max(3, width / 110), tickFormat: last ? undefined : () => "" },
      y: { label: null, domain: [0, limit], ticks: 4, grid: true, clamp: true },
      marks: [
        band ? Plot.rect(data.filter(bounds), { x1: "from", x2: "to", y1: (d: Step) => d.left ?? 0, y2: (d: Step) => d.right ?? limit,
          className: "band" }) : null,
        ...(band ? (["left", "right"] as const).map((side) => Plot.ruleY(data.filter((d) => d[side] !== null), { x1: "from", x2: "to", y: side, className: "limit" })) : []),
        Plot.rect(data.filter((d) => d.high !== null), { x1: "from", x2: "to", y1: (d: Step) => Math.min(d.low ?? 0, d.high!),
          y2: (d: Step) => Math.max(d.high!, (d.low ?? 0) + limit / 60), className: "values" }),
        set ? Plot.ruleY(data.filter((d) => d.right !== null), { x1: "from", x2: "to", y: "right", className: "set-line" }) : null,
        Plot.ruleY([0]),
      ],
    }));
    made.setAttribute("role", "img");
    made.setAttribute("aria-label", `${label} along the run: ${words}`);
    made.addEventListener("click", (event) => {
      const frame = made.getBoundingClientRect(), x = ((event.clientX - frame.left) / frame.width * width - 62) / (width - 74);
      const end = run.to[run.to.length - 1];
      const i = run.to.findIndex((to) => to >= x * end);
      if (i >= 0 && x >= 0) pick(run.worst[i]);
    });
    return make("figure", { class: "run" }, make("figcaption", {}, make("b", {}, label), ` ${words}`), made);
  };
  const chips = run.chip_high.some((v) => v !== null);
  const window = run.window_low.some((v) => v !== null) || run.window_high.some((v) => v !== null);
  return [
    chips ? chart(`Chip, ${unit}`, window ? "thinnest to thickest; the band is its window" : "thinnest to thickest; no window is known",
      steps(run, run.chip_low, run.chip_high, run.window_low, run.window_high, scale, along), false, window, false) : null,
    chart(`Feed, ${unit}/min`, "what is reached; the line is F",
      steps(run, run.feed_low, run.feed_high, null, run.set, scale, along), false, false, true),
    chart(`Depth, ${unit}`, "deepest cut at once", steps(run, run.depth.map((v) => v === null ? null : 0), run.depth, null, null, scale, along),
      true, false, false),
  ].filter((made): made is HTMLElement => made !== null);
}

// --- entries ---------------------------------------------------------------------------------------------------------

const WIDE = 200, HIGH = 116, GUTTER = 68; // the numbers stand in the gutter, the drawing beside it

function entriesOf(strip: Strip, model: Model, pick: Pick): HTMLElement {
  const row = make("div", { class: "entries" });
  for (const entry of strip.entries) {
    const button = make("button", { type: "button", class: "plain script-only", "aria-label": `Show line ${entry.line} on the path` }, `line ${entry.line}`);
    button.addEventListener("click", () => pick(entry.row));
    const facts = [
      entry.solid ? `${figure(entry.solid * model.scale)} ${model.unit} of solid` : null,
      entry.slope !== null && (entry.kind === "ramp" || entry.kind === "helix") ? `${figure(entry.slope)}\u00b0 below level` : null,
    ].filter(Boolean).join(", ");
    row.append(make("figure", { class: "entry" }, side(entry, strip, strip.diameter ?? 3, model),
      make("figcaption", {}, make("b", {}, `${entry.words}${entry.count > 1 ? ` \u00d7 ${entry.count.toLocaleString("en")}` : ""}`),
        facts ? ` ${facts} ` : " ", button, make("span", { class: "print-only" }, `line ${entry.line}`))));
  }
  return row;
}

// One entry from the side at one scale in both directions: the stock hatched, the tool where it starts and where it ends.
function side(entry: Entry, strip: Strip, diameter: number, model: Model): SVGElement {
  const [a, b] = entry.inside, { travel, z } = entry;
  const top = entry.top ?? Math.max(...z);
  const s0 = travel[a] - diameter, s1 = travel[b] + diameter;
  const low = Math.min(...z.slice(a, b + 1)), high = Math.min(Math.max(...z.slice(a, b + 1)), top + Math.max(diameter, top - low));
  const room = Math.max((high - low) * 0.18, diameter * 0.3, 0.3);
  const wide = WIDE - GUTTER, scale = Math.min(wide / (s1 - s0), HIGH / (high - low + 2 * room));
  const middle = (s0 + s1) / 2;
  const X = (s: number) => GUTTER + wide / 2 + (s - middle) * scale, Y = (v: number) => HIGH / 2 - (v - (low + high) / 2) * scale;
  const svg = draw("svg", { viewBox: `0 0 ${WIDE} ${HIGH}`, class: "side-view", role: "img",
    "aria-label": `${entry.words}, from the side` });
  const clip = `side-${++drawn}`;
  svg.append(draw("clipPath", { id: clip }, draw("rect", { x: GUTTER, y: 0, width: wide, height: HIGH })));
  const inner = draw("g", { "clip-path": `url(#${clip})` });
  svg.append(inner);
  inner.append(draw("rect", { x: GUTTER, y: Y(top), width: wide, height: Math.max(0, HIGH - Y(top)), class: "solid" }));
  inner.append(draw("line", { x1: GUTTER, x2: WIDE, y1: Y(top), y2: Y(top), class: "top" }));
  const width = diameter * scale;
  inner.append(draw("path", { d: outline(X(travel[b]), Y(z[b]), width, strip), class: "tool" }));
  const line = (from: number, to: number, name: string) => {
    let d = "";
    for (let i = Math.max(0, from); i <= Math.min(to, z.length - 1); i++) d += `${d ? "L" : "M"}${X(travel[i]).toFixed(1)} ${Y(z[i]).toFixed(1)}`;
    inner.append(draw("path", { d, class: name }));
  };
  line(0, a, "way before");
  line(b, z.length - 1, "way before");
  line(a, b, "way");
  inner.append(draw("circle", { cx: X(travel[b]), cy: Y(z[b]), r: 2.6, class: "tip" }));
  heights(svg, [...(entry.top !== null && Y(top) >= 0 ? [{ at: Y(top), text: `top ${figure(top * model.scale, 4)}` }] : []),
    { at: Y(z[b]), text: `Z ${figure(z[b] * model.scale, 4)}` }]);
  return svg;
}

let drawn = 0;

// Numbers in the gutter, each with a tick at its height; those that would lie on each other are pushed apart.
function heights(svg: SVGElement, numbers: { at: number; text: string }[]): void {
  const apart = 12;
  numbers.sort((a, b) => a.at - b.at);
  let last = -Infinity;
  for (const one of numbers) {
    const at = Math.min(HIGH - 3, Math.max(9, one.at + 3, last + apart));
    last = at;
    svg.append(draw("path", { d: `M${GUTTER - 5} ${one.at.toFixed(1)}H${GUTTER}`, class: "top" }),
      draw("text", { x: GUTTER - 7, y: at, class: "note", "text-anchor": "end" }, one.text));
  }
}

// The tool seen from the side, its tip at (x, y), open at the top of the drawing.
function outline(x: number, y: number, width: number, strip: Strip): string {
  const r = Math.max(width / 2, 0.8);
  if (strip.angle !== null && strip.angle < 180) {
    const up = r / Math.tan((strip.angle * Math.PI) / 360);
    return `M${x - r} -2V${y - up}L${x} ${y}L${x + r} ${y - up}V-2`;
  }
  const round = Math.min(strip.round === null ? 0 : (strip.round / (strip.diameter ?? 1)) * width, r);
  return `M${x - r} -2V${y - round}A${round} ${round} 0 0 0 ${x - r + round} ${y}H${x + r - round}A${round} ${round} 0 0 0 ${x + r} ${y - round}V-2`;
}

// --- pairs -----------------------------------------------------------------------------------------------------------

function pairChart(window: Windowed, model: Model, width: number): HTMLElement {
  const { scale, unit } = model, metres = unit === "mm", { pairs } = window;
  const area = window.speeds.map((speed, i) => ({ speed, low: window.low[i] === null && window.high[i] === null ? null : (window.low[i] ?? 0) * scale,
    high: window.high[i] === null ? null : window.high[i]! * scale }));
  const points = pairs.map((pair) => ({ speed: pair.speed, feed: pair.feed * scale, inside: pair.inside }));
  const nears = pairs.flatMap((pair) => pair.near ? [{ from: pair.speed, at: pair.feed * scale, speed: pair.near.speed, feed: pair.near.feed * scale }] : []);
  const feeds = [...points, ...nears].map((one) => one.feed), speeds = [...points, ...nears].map((one) => one.speed);
  const most = Math.max(...feeds) * 1.35;
  const top = Math.min(Math.max(most, ...area.flatMap((d) => [d.low ?? 0, d.high ?? 0])), most * 2.2);
  const from = Math.min(window.speeds[0], ...speeds), to = Math.max(window.speeds.at(-1)!, ...speeds);
  const chart = plain(Plot.plot({
    width, height: 250, marginLeft: 64, marginRight: 16, marginTop: 26, marginBottom: 38, className: "chart",
    x: { label: "true speed, rev/min", domain: [from, to], ticks: Math.max(3, width / 90) },
    y: { label: `feed, ${unit}/min`, labelAnchor: "center", labelArrow: "none", domain: [0, top], clamp: true, ticks: 5 },
    marks: [
      Plot.areaY(area.map((d) => ({ ...d, high: d.low === null ? null : d.high ?? top })), { x: "speed", y1: "low", y2: "high", className: "band" }),
      Plot.line(area, { x: "speed", y: "low", className: "limit" }),
      Plot.line(area, { x: "speed", y: "high", className: "limit" }),
      Plot.ruleX(window.marks, { x: "speed", className: "mark-line" }),
      Plot.text(window.marks, { x: "speed", y: top, text: "mark", dy: -8, className: "mark-text" }),
      Plot.link(nears, { x1: "from", y1: "at", x2: "speed", y2: "feed", className: "to-near" }),
      Plot.dot(nears, { x: "speed", y: "feed", symbol: "diamond", r: 6, className: "near" }),
      Plot.dot(points.filter((d) => d.inside), { x: "speed", y: "feed", symbol: "circle", r: 5, className: "pair inside" }),
      Plot.dot(points.filter((d) => !d.inside), { x: "speed", y: "feed", symbol: "times", r: 6, className: "pair outside" }),
      Plot.ruleY([0]),
    ],
  }));
  chart.style.maxWidth = `${width}px`; // no larger than it is drawn for
  const words = (f: number) => `F${figure(f * scale, 4)}`;
  const share = (cut: number) => metres ? `${figure(cut * 0.001)} m` : `${figure(cut * scale / 12)} ft`;
  const said: { feeds: string[]; speed: string; cut: number; text: string }[] = [];
  for (const pair of pairs) {
    const { near } = pair, speed = `${figure(pair.speed, 5)} rev/min`;
    const good = near ? `the nearest good pair is ${words(near.feed)} at ${figure(near.speed, 5)} rev/min${near.mark ? `, dial ${near.mark}` : ""}`
      : "no pair near it is inside";
    const dial = pair.dial.length > 1 ? `; on the dial ${pair.dial.map((one) => `${one.mark} ${words(one.feed)}`).join(", ")}` : "";
    const text = pair.inside ? "inside every limit that is known" : `outside (${pair.broken.join(", ")}); ${good}${dial}`;
    const same = said.find((one) => one.speed === speed && one.text === text);
    if (same) { same.feeds.push(words(pair.feed)); same.cut += pair.cut; } else said.push({ feeds: [words(pair.feed)], speed, cut: pair.cut, text });
  }
  const at = (one: (typeof said)[0]) => `${one.feeds.join(", ")} at ${one.speed}`;
  chart.setAttribute("role", "img");
  chart.setAttribute("aria-label", `Operating window: ${said.map((one) => `${at(one)}: ${one.text}`).join(". ")}.`);
  return make("figure", { class: "window" },
    make("figcaption", {}, make("b", {}, "Operating window"), ": the feeds and speeds at which every limit that is known is kept.",
      make("ul", { class: "pair-words" }, ...said.map((one) => make("li", {}, make("b", {}, at(one)), ` (${share(one.cut)}): ${one.text}`)))),
    chart, make("ul", { class: "key" }, pairs.some((pair) => pair.inside) ? make("li", { class: "key-in" }, "in the program, inside") : null,
      pairs.some((pair) => !pair.inside) ? make("li", { class: "key-out" }, "in the program, outside") : null,
      nears.length ? make("li", { class: "key-near" }, "nearest good pair") : null,
      window.marks.length ? make("li", { class: "key-mark" }, "mark of the dial") : null));
}
