// The path from above in the blank, as a drawing that also goes to paper.
import { AIR, BREAK, CRASH, CUT, RAPID, type Model, type Path } from "./data";
import { Form, formOf, type Quantity } from "./colour";
import { draw, figure } from "./dom";
import type { Levels } from "./levels";
import { isDark } from "./theme";

const SHADES = 12; // a third of them within a window
const BROAD: Record<string, number> = { plain: 1, thin: 2, thick: 2, unknown: 0.7 }; // times as wide as a cut within its window
const EDGE = 26;

export interface Plan {
  svg: SVGSVGElement; toMm: (event: MouseEvent) => [number, number] | null; perPixel: () => number; mark: (x: number, y: number) => void;
  toScreen: (x: number, y: number) => [number, number] | null;
}

export function planOf(
  model: Model, levels: Levels, full: Path, quantity: Quantity, width: number, tool: number | null, numbered: boolean, tallest = width * 1.05,
): Plan {
  const path = levels.coarse, mean = levels.means(quantity);
  const [x0, x1, y0, y1] = bounds(model, path);
  const scale = Math.min((width - 2 * EDGE) / (x1 - x0), (tallest - 2 * EDGE) / (y1 - y0));
  const wide = (x1 - x0) * scale + 2 * EDGE, high = (y1 - y0) * scale + 2 * EDGE;
  const left = Math.max(0, (width - wide) / 2);
  const X = (x: number) => (x - x0) * scale + EDGE + left, Y = (y: number) => high - EDGE - (y - y0) * scale;
  const at = (x: number, y: number) => `${X(x).toFixed(1)} ${Y(y).toFixed(1)}`;
  const svg = draw("svg", { viewBox: `0 0 ${width} ${high.toFixed(0)}`, class: "plan", role: "img",
    "aria-label": "The path from above in the blank" }) as SVGSVGElement;
  const box = model.field;
  if (box) {
    svg.append(draw("rect", { x: X(box.x[0]), y: Y(box.y[1]), width: (box.x[1] - box.x[0]) * scale,
      height: (box.y[1] - box.y[0]) * scale, class: box.declared && box.placed ? "blank" : "blank assumed" }));
  }
  for (const keep of model.keep_out) {
    svg.append(draw("rect", { x: X(keep.low[0]), y: Y(keep.high[1]), width: Math.max(1, (keep.high[0] - keep.low[0]) * scale),
      height: Math.max(1, (keep.high[1] - keep.low[1]) * scale), class: "keep-out" }, draw("title", {}, keep.name)));
  }
  const parts = new Map<string, string[]>();
  let last = "", end = -1, long = 0;
  for (let i = 0; i < path.n; i++) {
    if (path.kind[i] === BREAK || (tool !== null && path.tool[i] !== tool)) continue;
    const name = partOf(path, i, mean, quantity);
    let list = parts.get(name);
    if (!list) parts.set(name, list = []);
    if (path.kind[i] === CUT) long += Math.hypot(path.x[i + 1] - path.x[i], path.y[i + 1] - path.y[i]) * scale;
    if (end !== i || last !== name) list.push(`M${at(path.x[i], path.y[i])}`);
    list.push(`L${at(path.x[i + 1], path.y[i + 1])}`);
    last = name; end = i + 1;
  }
  // where passes lie side by side they are drawn as finely as leaves paper between them
  const stroke = Math.min(1.8, Math.max(0.3, 0.3 * (x1 - x0) * (y1 - y0) * scale * scale / Math.max(long, 1)));
  for (const name of [...parts.keys()].sort()) {
    const [, kind, step, form] = name.split(" ");
    const line = draw("path", { d: parts.get(name)!.join(""), class: `line ${kind} ${form ?? ""}`.trim() });
    if (kind === "cut") line.style.strokeWidth = `${(stroke * BROAD[form ?? "unknown"]).toFixed(2)}px`;
    if (step) line.style.stroke = quantity.shade((Number(step) + 0.5) / SHADES, isDark());
    svg.append(line);
  }
  if (X(0) > 0 && X(0) < width && Y(0) > 0 && Y(0) < high) {
    svg.append(draw("circle", { cx: X(0), cy: Y(0), r: 7, class: "zero-ground" }),
      draw("path", { d: `M${X(0)} ${Y(0)}h6a6 6 0 0 1 -6 6zM${X(0)} ${Y(0)}h-6a6 6 0 0 1 6 -6z`, class: "zero-part" }),
      draw("circle", { cx: X(0), cy: Y(0), r: 6, class: "zero" }, draw("title", {}, "work zero")));
  }
  if (box) sides(svg, model, X, Y, high);
  if (numbered) numbers(svg, model, full, X, Y);
  return {
    svg,
    toMm: (event) => {
      const place = svg.getScreenCTM();
      if (!place) return null;
      const p = new DOMPoint(event.clientX, event.clientY).matrixTransform(place.inverse());
      return [(p.x - EDGE - left) / scale + x0, (high - EDGE - p.y) / scale + y0];
    },
    mark: (x, y) => svg.append(draw("g", { class: "here" }, draw("circle", { cx: X(x), cy: Y(y), r: 15, class: "halo" }), draw("circle", { cx: X(x), cy: Y(y), r: 15 }))),
    toScreen: (x, y) => {
      const place = svg.getScreenCTM();
      if (!place) return null;
      const p = new DOMPoint(X(x), Y(y)).matrixTransform(place);
      return [p.x, p.y];
    },
    perPixel: () => 1 / (scale * (svg.getScreenCTM()?.a || 1)),
  };
}

// "order class step": rapids lie under feeds in the air, these under cuts
function partOf(path: Path, i: number, mean: (a: number, b: number) => number, quantity: Quantity): string {
  const kind = path.kind[i];
  if (kind === RAPID) return "0 rapid";
  if (kind === AIR) return "1 air";
  if (kind === CRASH) return "9 crash";
  const t = mean(i, i + 1), form = formOf(quantity, t);
  if (form === Form.Unknown) return "2 cut";
  const step = Math.min(SHADES - 1, Math.floor(t * SHADES));
  return `${form === Form.Plain ? 3 : 4} cut ${String(step).padStart(2, "0")} ${["plain", "thin", "thick"][form]}`;
}

/** What is always in sight: the blank, all of the path and the work zero, unless that lies far off. */
export function bounds(model: Model, path: Path): [number, number, number, number] {
  let [x0, x1, y0, y1] = [Infinity, -Infinity, Infinity, -Infinity];
  if (model.field) [x0, x1, y0, y1] = [...model.field.x, ...model.field.y];
  for (let i = 0; i < path.n; i++) {
    if (path.kind[i] === BREAK) continue;
    for (const j of [i, i + 1]) {
      x0 = Math.min(x0, path.x[j]); x1 = Math.max(x1, path.x[j]);
      y0 = Math.min(y0, path.y[j]); y1 = Math.max(y1, path.y[j]);
    }
  }
  if (!(x1 >= x0)) return [-10, 10, -10, 10];
  const near = Math.max(x1 - x0, y1 - y0);
  if (x0 - near < 0 && x1 + near > 0 && y0 - near < 0 && y1 + near > 0) {
    x0 = Math.min(x0, 0); x1 = Math.max(x1, 0); y0 = Math.min(y0, 0); y1 = Math.max(y1, 0);
  }
  const room = Math.max(x1 - x0, y1 - y0, 1) * 0.04;
  return [x0 - room, x1 + room, y0 - room, y1 + room];
}

function sides(svg: SVGSVGElement, model: Model, X: (x: number) => number, Y: (y: number) => number, high: number): void {
  const box = model.field!, s = model.scale;
  const say = (x: number, y: number, text: string, anchor: string) =>
    svg.append(draw("text", { x, y, class: "side", "text-anchor": anchor }, text));
  say(X(box.x[0]), high - 6, `X ${figure(box.x[0] * s, 4)}`, "start");
  say(X(box.x[1]), high - 6, `X ${figure(box.x[1] * s, 4)} ${model.unit}`, "end");
  say(X(box.x[0]), Y(box.y[1]) - 5, `Y ${figure(box.y[1] * s, 4)}`, "start");
  say(X(box.x[1]), Y(box.y[0]) + 12, `Y ${figure(box.y[0] * s, 4)}`, "end");
}

function numbers(svg: SVGSVGElement, model: Model, full: Path, X: (x: number) => number, Y: (y: number) => number): void {
  const r = model.findings.length > 25 ? 7.5 : 9;
  const taken = new Set<string>();
  model.findings.forEach((finding, k) => {
    if (finding.row === null) return;
    const i = finding.row, x = X((full.x[i] + full.x[i + 1]) / 2), y = Y((full.y[i] + full.y[i + 1]) / 2);
    const cell = `${Math.round(x / 16)} ${Math.round(y / 16)}`;
    if (taken.has(cell)) return; // the first and worst of those that would lie on each other
    taken.add(cell);
    svg.append(draw("g", { class: `pin g-${finding.grade}`, "data-pin": k }, draw("path", { d: badge(finding.grade, x, y, r) }),
      draw("text", { x, y: y + 3.4, "text-anchor": "middle" }, String(k + 1))));
  });
}

/** The form of a grade round a place: a square, a diamond drawn wide, a disc; the same in picture, page and terminal. */
export function badge(grade: string, x: number, y: number, r: number): string {
  if (grade === "halt") return `M${x - r} ${y - r}h${2 * r}v${2 * r}h${-2 * r}z`;
  if (grade === "change") return `M${x - 1.5 * r} ${y}l${0.8 * r} ${-r}h${1.4 * r}l${0.8 * r} ${r}l${-0.8 * r} ${r}h${-1.4 * r}z`;
  return `M${x - r} ${y}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0z`;
}
