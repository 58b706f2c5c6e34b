// The charts of one tool: along its run, its entries from the side, its pairs in their operating window.
import * as Plot from "@observablehq/plot";
import type { Entry, Model, Pair, Run, Strip } from "./data";
import { draw, figure, make } from "./dom";

type Pick = (row: number) => void;

export function chartsOf(strip: Strip, model: Model, plan: SVGSVGElement, width: number, pick: Pick): HTMLElement[] {
  const made: HTMLElement[] = [];
  const half = width > 640 ? Math.floor((width - 24) / 2) : width;
  const one = strip.pairs.length === 1;
  made.push(make("div", { class: one ? "side-by-side with-window" : "side-by-side" },
    make("figure", { class: "small-plan" }, plan, make("figcaption", {}, "From above in the blank.")),
    strip.entries.length ? entriesOf(strip, model, pick) : make("div"),
    one ? pairChart(strip.pairs[0], model, Math.min(420, width)) : null));
  if (strip.run) made.push(...runCharts(strip.run, model, width, pick));
  if (strip.pairs.length > 1) made.push(make("div", { class: "pairs" }, ...strip.pairs.map((pair) => pairChart(pair, model, half))));
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

const WIDE = 150, HIGH = 112;

function entriesOf(strip: Strip, model: Model, pick: Pick): HTMLElement {
  const row = make("div", { class: "entries" });
  for (const entry of strip.entries) {
    const button = make("button", { type: "button", class: "plain script-only", "aria-label": `Show line ${entry.line} on the path` }, `line ${entry.line}`);
    button.addEventListener("click", () => pick(entry.row));
    const facts = [
      entry.solid ? `${figure(entry.solid * model.scale)} ${model.unit} of solid` : null,
      entry.slope !== null && entry.kind !== "side" && entry.kind !== "open" ? `${figure(entry.slope)}\u00b0 below level` : null,
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
  const scale = Math.min(WIDE / (s1 - s0), HIGH / (high - low + 2 * room));
  const middle = (s0 + s1) / 2;
  const X = (s: number) => WIDE / 2 + (s - middle) * scale, Y = (v: number) => HIGH / 2 - (v - (low + high) / 2) * scale;
  const svg = draw("svg", { viewBox: `0 0 ${WIDE} ${HIGH}`, class: "side-view", role: "img",
    "aria-label": `${entry.words}, from the side` });
  svg.append(draw("rect", { x: 0, y: Y(top), width: WIDE, height: Math.max(0, HIGH - Y(top)), class: "solid" }));
  svg.append(draw("line", { x1: 0, x2: WIDE, y1: Y(top), y2: Y(top), class: "top" }));
  const width = diameter * scale;
  svg.append(draw("path", { d: outline(X(travel[b]), Y(z[b]), width, strip), class: "tool" }));
  const line = (from: number, to: number, name: string) => {
    let d = "";
    for (let i = Math.max(0, from); i <= Math.min(to, z.length - 1); i++) d += `${d ? "L" : "M"}${X(travel[i]).toFixed(1)} ${Y(z[i]).toFixed(1)}`;
    svg.append(draw("path", { d, class: name }));
  };
  line(0, a, "way before");
  line(b, z.length - 1, "way before");
  line(a, b, "way");
  svg.append(draw("circle", { cx: X(travel[b]), cy: Y(z[b]), r: 2.6, class: "tip" }));
  svg.append(draw("text", { x: 4, y: Math.min(HIGH - 4, Math.max(10, Y(top) - 4)), class: "note" }, entry.top !== null ? `top Z ${figure(top * model.scale, 4)}` : ""));
  svg.append(draw("text", { x: WIDE - 4, y: Math.min(HIGH - 3, Y(z[b]) + 11), class: "note", "text-anchor": "end" }, `Z ${figure(z[b] * model.scale, 4)}`));
  return svg;
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

function pairChart(pair: Pair, model: Model, width: number): HTMLElement {
  const { scale, unit } = model, metres = unit === "mm";
  const area = pair.speeds.map((speed, i) => ({ speed, low: pair.low[i] === null && pair.high[i] === null ? null : (pair.low[i] ?? 0) * scale,
    high: pair.high[i] === null ? null : pair.high[i]! * scale, open: pair.low[i] !== null && pair.high[i] === null }));
  const feed = pair.feed * scale, near = pair.near ? { ...pair.near, feed: pair.near.feed * scale } : null;
  const tops = area.flatMap((d) => [d.low ?? 0, d.high ?? 0]);
  const most = Math.max(feed, near?.feed ?? 0) * 1.35;
  const top = Math.min(Math.max(most, ...tops), most * 2.2);
  const points = [{ speed: pair.speed, feed }];
  const from = Math.min(pair.speeds[0], pair.speed, near?.speed ?? Infinity), to = Math.max(pair.speeds.at(-1)!, pair.speed, near?.speed ?? 0);
  const chart = plain(Plot.plot({
    width, height: 230, marginLeft: 68, marginRight: 16, marginBottom: 38, className: "chart",
    x: { label: "true speed, rev/min", domain: [from, to], ticks: 5 },
    y: { label: `feed, ${unit}/min`, labelAnchor: "center", labelArrow: "none", domain: [0, top], clamp: true, ticks: 5 },
    marks: [
      Plot.areaY(area.map((d) => ({ ...d, high: d.low === null ? null : d.high ?? top })), { x: "speed", y1: "low", y2: "high", className: "band" }),
      Plot.line(area, { x: "speed", y: "low", className: "limit" }),
      Plot.line(area, { x: "speed", y: "high", className: "limit" }),
      Plot.ruleX(pair.marks, { x: "speed", className: "mark-line" }),
      Plot.text(pair.marks, { x: "speed", y: top, text: "mark", dy: -8, className: "mark-text" }),
      near ? Plot.link([near], { x1: pair.speed, y1: feed, x2: "speed", y2: "feed", className: "to-near" }) : null,
      near ? Plot.dot([near], { x: "speed", y: "feed", symbol: "diamond", r: 6, className: "near" }) : null,
      Plot.dot(points, { x: "speed", y: "feed", symbol: pair.inside ? "circle" : "times", r: 6, className: pair.inside ? "pair inside" : "pair outside" }),
      Plot.ruleY([0]),
    ],
  }));
  const words = (f: number) => `F${figure(f, 4)}`;
  chart.setAttribute("role", "img");
  const say = `${words(feed)} at ${figure(pair.speed, 5)} rev/min is ${pair.inside ? "inside every limit that is known" : `outside (${pair.broken.join(", ")})`}`;
  const other = near ? `The nearest good pair: ${words(near.feed)} at ${figure(near.speed, 5)} rev/min${near.mark ? `, dial ${near.mark}` : ""}.`
    : pair.inside ? "" : "No pair near it is inside.";
  chart.setAttribute("aria-label", `Operating window: ${say}. ${other}`);
  const share = `${figure(pair.cut * (metres ? 0.001 : scale / 12))} ${metres ? "m" : "ft"}`;
  return make("figure", { class: "window" }, make("figcaption", {}, make("b", {}, "Operating window"), ` of ${share} of cut. ${say}. `, make("b", {}, other)), chart);
}
