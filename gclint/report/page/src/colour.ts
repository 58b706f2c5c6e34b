// The quantity the path is coloured by: a perceptual scale that stays apart for colour-blind readers.
import { interpolateViridis } from "d3-scale-chromatic";
import { CUT, UNKNOWN, type Model, type Path } from "./data";

export interface Quantity {
  key: string; label: string; about: string;
  at: (path: Path, i: number) => number; // 0..1, NaN where not known
  ticks: [number, string][];
}

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
  const middle = (low + high) / 2;
  return [
    { key: "chip", label: "chip against its window", about: "the slice of one tooth, against what is good",
      at: (p, i) => byte(p.place, i, 240),
      ticks: [[0, "nothing"], [1 / 3, "thinnest good"], [2 / 3, "thickest good"], [1, "twice that"]] },
    { key: "reached", label: "reached over set feed", about: "how much of F the machine really gets to",
      at: (p, i) => byte(p.share, i, 200), ticks: [[0, "0 %"], [0.5, "50 %"], [1, "all of F"]] },
    { key: "depth", label: "depth of cut", about: "how deep the tool cuts at once",
      at: (p, i) => byte(p.depth, i), ticks: [[0, "0"], [0.5, shown(most.depth / 2)], [1, `${shown(most.depth)} ${unit}`]] },
    { key: "force", label: "force", about: "on the tool, the high end of what it may be",
      at: (p, i) => byte(p.force, i), ticks: [[0, "0"], [0.5, String(Number((most.force / 2).toPrecision(2)))],
        [1, `${Number(most.force.toPrecision(2))} N`]] },
    { key: "height", label: "height", about: "Z of the tip of the tool", at: (p, i) => (p.z[i + 1] - low) / (high - low),
      ticks: [[0, shown(low)], [0.5, shown(middle)], [1, `${shown(high)} ${unit}`]] },
  ];
}

// Both ends of the scale would vanish in the ground they are drawn on, so each theme takes its own part of it.
export function shade(t: number, dark: boolean): string {
  return interpolateViridis(dark ? 0.18 + 0.82 * t : 0.9 * t);
}

/** The share of the cuts for which the quantity is known. */
export function known(quantity: Quantity, path: Path): number {
  let cuts = 0, told = 0;
  for (let i = 0; i < path.n; i++) if (path.kind[i] === CUT) { cuts++; if (!Number.isNaN(quantity.at(path, i))) told++; }
  return cuts ? told / cuts : 0;
}
