// The quantity the path is coloured by. Every shade stands at least 3:1 on the stock of its theme (WCAG 2.2, 1.4.11), and what
// must be told apart stays apart for colour-blind readers; tests/report/page/test_page_colours.py measures both.
import { interpolatePlasma } from "d3-scale-chromatic";
import { CUT, UNKNOWN, type Model, type Path } from "./data";

/** How a cut is drawn beside its colour: a broken limit has a form of its own. */
export const enum Form { Plain, Thin, Thick, Unknown }

export interface Quantity {
  key: string; label: string; about: string;
  at: (path: Path, i: number) => number; // 0..1, NaN where not known
  shade: (t: number, dark: boolean) => string;
  limits: [number, number] | null; // of a window, on the same scale: what lies outside has a form of its own
  ticks: [number, string][];
}

// Of the chip: far too thin, just too thin, within its window, just too thick, far too thick.
const TWO_ENDED = {
  light: ["#0a2f86", "#2b62c4", "#766e60", "#a8480f", "#6b1405"],
  dark: ["#bcd8ff", "#6aa9f5", "#968d7e", "#f08a45", "#ffc48f"],
};
// Both ends of the even scale would vanish in the stock, so each theme takes its own part of it.
const EVEN = { light: [0, 0.48], dark: [0.6, 1] };
const LOW = 1 / 3, HIGH = 2 / 3;

export function quantities(model: Model, path: Path): Quantity[] {
  const { unit, scale, most } = model;
  const shown = (value: number, digits = 3) => String(Number((value * scale).toPrecision(digits)));
  let low = Infinity, high = -Infinity;
  for (let i = 0; i < path.n; i++) if (path.kind[i] === CUT) {
    low = Math.min(low, path.z[i + 1]); high = Math.max(high, path.z[i + 1]);
  }
  if (low > high) low = high = 0; // nothing is cut
  if (low === high) { low -= 0.5; high += 0.5; }
  const byte = (column: Uint8Array, i: number, top = 254) => column[i] === UNKNOWN ? NaN : Math.min(column[i] / top, 1);
  const middle = (low + high) / 2, even = { shade: evenly, limits: null };
  return [
    { key: "chip", label: "chip against its window", about: "the slice of one tooth, against what is good",
      at: (p, i) => byte(p.place, i, 240), shade: twoEnded, limits: [LOW, HIGH],
      ticks: [[0, "nothing"], [LOW, "thinnest good"], [HIGH, "thickest good"], [1, "twice that"]] },
    { ...even, key: "reached", label: "reached over set feed", about: "how much of F the machine really gets to",
      at: (p, i) => byte(p.share, i, 200), ticks: [[0, "0 %"], [0.5, "50 %"], [1, "all of F"]] },
    { ...even, key: "depth", label: "depth of cut", about: "how deep the tool cuts at once",
      at: (p, i) => byte(p.depth, i), ticks: [[0, "0"], [0.5, shown(most.depth / 2)], [1, `${shown(most.depth)} ${unit}`]] },
    { ...even, key: "force", label: "force", about: "on the tool, the high end of what it may be",
      at: (p, i) => byte(p.force, i), ticks: [[0, "0"], [0.5, String(Number((most.force / 2).toPrecision(2)))],
        [1, `${Number(most.force.toPrecision(2))} N`]] },
    { ...even, key: "height", label: "height", about: "Z of the tip of the tool", at: (p, i) => (p.z[i + 1] - low) / (high - low),
      ticks: [[0, shown(low)], [0.5, shown(middle)], [1, `${shown(high)} ${unit}`]] },
  ];
}

/** The form of a cut at a place on the scale; the last step of the byte that carries a limit still lies within it. */
export function formOf(quantity: Quantity, t: number): Form {
  if (Number.isNaN(t)) return Form.Unknown;
  if (!quantity.limits) return Form.Plain;
  return t < quantity.limits[0] - 0.003 ? Form.Thin : t > quantity.limits[1] + 0.003 ? Form.Thick : Form.Plain;
}

function evenly(t: number, dark: boolean): string {
  const [from, to] = EVEN[dark ? "dark" : "light"];
  return interpolatePlasma(from + (to - from) * t);
}

function twoEnded(t: number, dark: boolean): string {
  const [far, thin, good, thick, thickest] = TWO_ENDED[dark ? "dark" : "light"];
  if (t < LOW - 0.003) return mixed(far, thin, t / LOW);
  return t > HIGH + 0.003 ? mixed(thick, thickest, (t - HIGH) / (1 - HIGH)) : good;
}

function mixed(from: string, to: string, t: number): string {
  const part = (text: string, k: number) => parseInt(text.slice(1 + 2 * k, 3 + 2 * k), 16);
  return `#${[0, 1, 2].map((k) => Math.round(part(from, k) + (part(to, k) - part(from, k)) * t).toString(16).padStart(2, "0")).join("")}`;
}

/** The share of the cuts for which the quantity is known. */
export function known(quantity: Quantity, path: Path): number {
  let cuts = 0, told = 0;
  for (let i = 0; i < path.n; i++) if (path.kind[i] === CUT) { cuts++; if (!Number.isNaN(quantity.at(path, i))) told++; }
  return cuts ? told / cuts : 0;
}
