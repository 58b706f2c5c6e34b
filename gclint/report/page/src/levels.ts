// Which pieces of the path are drawn where only so many may be: first those a straight line can stand for are merged, then some are left out.
import { Form, formOf, type Quantity } from "./colour";
import { BREAK, CUT, type Path } from "./data";

const TOGETHER = 512; // pieces of the coarse path that one straight line is looked for in
const BESIDE = [0, 1 / 1500, 1 / 500, 1 / 200]; // of the part's radius, that a drawn line may lie beside the path
const LONG = 1 / 3; // of the part's radius: a line that is missed when it is gone
const GOLDEN = (Math.sqrt(5) - 1) / 2; // its multiples fill the numbers from 0 to 1 evenly
const OUTSIDE = 0.1; // of what one line stands for, that lies outside a limit and gives it its colour
const APART = 0.12; // of the scale of colours, between what one line stands for

/** Straight lines of one kind, as points of the fine path, and their place on the scale of colours. */
export interface Drawn { from: Int32Array; to: Int32Array; colour: Float32Array }

export class Levels {
  private readonly at: Int32Array; // for each point of the coarse path the same one of the fine path
  private kept: { key: string; mean: (a: number, b: number) => number } | null = null;
  private readonly matters: Float32Array; // for each point of the coarse path: how far off the path would be without it, mm

  constructor(private readonly fine: Path, readonly coarse: Path) {
    this.at = same(fine, coarse);
    this.matters = weights(coarse);
  }

  /** All pieces of a kind, of one tool or of all. */
  all(kind: number, tool: number | null, quantity: Quantity): Drawn {
    const { fine } = this, rows: number[] = [];
    for (let i = 0; i < fine.n; i++) if (fine.kind[i] === kind && (tool === null || fine.tool[i] === tool)) rows.push(i);
    const from = Int32Array.from(rows), to = from.map((row) => row + 1);
    return { from, to, colour: Float32Array.from(rows, (row) => quantity.at(fine, row)) };
  }

  /** At most so many pieces that stand for all of them. */
  few(kind: number, tool: number | null, quantity: Quantity, most: number, radius: number): Drawn {
    const mean = this.means(quantity);
    let found: [number, number][] = [];
    for (const beside of BESIDE) {
      found = this.merged(kind, tool, beside * radius, mean);
      if (found.length <= most) break;
    }
    if (found.length > most) found = this.thinned(found, most, radius);
    return {
      from: Int32Array.from(found, ([a]) => this.at[a]), to: Int32Array.from(found, ([, b]) => this.at[b]),
      colour: Float32Array.from(found, ([a, b]) => mean(a, b)),
    };
  }

  /** What stands for the fine path between two points of the coarse one: the mean; where a tenth of it or more lies outside
   * the limits of the quantity, the mean of that side, so that what is broken is seen in a drawing of few lines. */
  means(quantity: Quantity): (a: number, b: number) => number {
    if (this.kept?.key === quantity.key) return this.kept.mean;
    const { fine, at } = this, { x, y, z } = fine, sides = 3; // plain, too thin, too thick
    const long = Array.from({ length: sides }, () => new Float64Array(fine.n + 1)), sum = long.map(() => new Float64Array(fine.n + 1));
    for (let i = 0; i < fine.n; i++) {
      const value = fine.kind[i] === CUT ? quantity.at(fine, i) : NaN, form = formOf(quantity, value);
      const step = Math.hypot(x[i + 1] - x[i], y[i + 1] - y[i], z[i + 1] - z[i]) + 1e-9;
      for (let side = 0; side < sides; side++) {
        const told = form === side ? step : 0;
        long[side][i + 1] = long[side][i] + told;
        sum[side][i + 1] = sum[side][i] + (told ? step * value : 0);
      }
    }
    const mean = (a: number, b: number) => {
      const ways = long.map((one) => one[at[b]] - one[at[a]]), all = ways.reduce((one, other) => one + other, 0);
      const worst = ways[Form.Thick] > ways[Form.Thin] ? Form.Thick : Form.Thin;
      const side = ways[worst] >= OUTSIDE * all && ways[worst] > 0 ? worst : Form.Plain;
      return (sum[side][at[b]] - sum[side][at[a]]) / ways[side]; // NaN where nothing is known
    };
    this.kept = { key: quantity.key, mean };
    return mean;
  }

  private merged(kind: number, tool: number | null, beside: number, mean: (a: number, b: number) => number): [number, number][] {
    const { coarse, matters } = this, found: [number, number][] = [];
    let colour = NaN;
    for (let i = 0; i < coarse.n; i++) {
      if (coarse.kind[i] !== kind || (tool !== null && coarse.tool[i] !== tool)) continue;
      const last = found[found.length - 1], own = mean(i, i + 1);
      const alike = Number.isNaN(colour) ? Number.isNaN(own) : Math.abs(colour - own) <= APART;
      if (last && last[1] === i && matters[i] <= beside && alike) last[1] = i + 1;
      else { found.push([i, i + 1]); colour = own; }
    }
    return found;
  }

  /** Every so many, evenly strewn whatever turn by turn pattern they have; long ones all, where these are few. */
  private thinned(lines: [number, number][], most: number, radius: number): [number, number][] {
    const { x, y, z } = this.coarse;
    const long = lines.map(([a, b]) => Math.hypot(x[b] - x[a], y[b] - y[a], z[b] - z[a]) > radius * LONG);
    const all = long.reduce((sum, one) => sum + Number(one), 0), spare = all <= most / 2 ? all : 0;
    const share = (most - spare) / Math.max(1, lines.length - spare);
    return lines.filter((_, k) => (spare > 0 && long[k]) || (k * GOLDEN) % 1 < share);
  }
}

// The points of the coarse path are some of the fine path's, in the same order.
function same(fine: Path, coarse: Path): Int32Array {
  const at = new Int32Array(coarse.x.length);
  for (let i = 0, j = 0; i < at.length; i++) {
    while (j + 1 < fine.x.length && (fine.x[j] !== coarse.x[i] || fine.y[j] !== coarse.y[i] || fine.z[j] !== coarse.z[i])) j++;
    at[i] = j;
  }
  return at;
}

function weights(path: Path): Float32Array {
  const found = new Float32Array(path.x.length).fill(Infinity);
  let begin = 0;
  for (let i = 1; i <= path.n; i++) {
    if (i < path.n && i - begin < TOGETHER && path.kind[i] !== BREAK && path.kind[i] === path.kind[begin] && path.tool[i] === path.tool[begin]) continue;
    weigh(path, found, begin, i);
    begin = i;
  }
  return found;
}

// Halves a run of points at the one farthest from the straight line between its ends, again and again.
function weigh(path: Path, found: Float32Array, first: number, last: number): void {
  const { x, y, z } = path, waiting: [number, number, number][] = [[first, last, Infinity]];
  for (let next = waiting.pop(); next; next = waiting.pop()) {
    const [a, b, most] = next;
    if (b - a < 2) continue;
    const ux = x[b] - x[a], uy = y[b] - y[a], uz = z[b] - z[a], long = ux * ux + uy * uy + uz * uz;
    let far = -1, at = a + 1;
    for (let i = a + 1; i < b; i++) {
      const vx = x[i] - x[a], vy = y[i] - y[a], vz = z[i] - z[a];
      const t = long > 0 ? Math.min(1, Math.max(0, (vx * ux + vy * uy + vz * uz) / long)) : 0;
      const off = (vx - t * ux) ** 2 + (vy - t * uy) ** 2 + (vz - t * uz) ** 2;
      if (off > far) { far = off; at = i; }
    }
    found[at] = Math.min(most, Math.sqrt(far));
    waiting.push([a, at, found[at]], [at, b, found[at]]);
  }
}
