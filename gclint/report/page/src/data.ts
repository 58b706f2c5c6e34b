// What stands in the page for the script: JSON, columns of numbers and the program's text, each deflated and in base64.

export interface Told { at: number; length: number; scale: number; delta: boolean; bytes: 1 | 4 }
export interface PathTold {
  x: Told; y: Told; z: Told; line: Told; tool: Told; kind: Told;
  place: Told; share: Told; chip: Told; depth: Told; force: Told;
}
export interface Field {
  x: [number, number]; y: [number, number]; top: number; thick: number | null; declared: boolean; placed: boolean;
  deepest: number; nx?: number; ny?: number; cut?: Told; start?: Told; // start: as the program finds it
}
export interface Run {
  to: number[]; chip_low: (number | null)[]; chip_high: (number | null)[];
  window_low: (number | null)[]; window_high: (number | null)[]; set: (number | null)[];
  feed_low: (number | null)[]; feed_high: (number | null)[]; depth: (number | null)[]; worst: number[];
}
export interface Entry {
  kind: string; words: string; count: number; line: number; row: number; travel: number[]; z: number[];
  inside: [number, number]; top: number | null; solid: number | null; slope: number | null; feed: number | null;
}
export interface Pair {
  cut: number; feed: number; speed: number; inside: boolean; broken: string[];
  near: { speed: number; feed: number; mark: string } | null; dial: { mark: string; feed: number }[];
}
// One window and the pairs that it is for.
export interface Windowed {
  pairs: Pair[]; marks: { mark: string; speed: number }[]; speeds: number[]; low: (number | null)[]; high: (number | null)[];
}
// angle: of the point, degrees; round: radius of the rim at the tip, mm
export interface Strip {
  tool: number; diameter: number | null; angle: number | null; round: number | null; run: Run | null; entries: Entry[]; pairs: Windowed[];
}
export interface Finding {
  rule: string; grade: string; line: number; tool: number | null; lines: Told; row: number | null; rows: Told | null;
}
export interface Model {
  unit: string; scale: number; field: Field | null;
  keep_out: { name: string; low: [number, number, number]; high: [number, number, number] }[];
  paths: [PathTold, PathTold]; off: number; moves: number; hidden: number;
  most: { depth: number; force: number; chip: number };
  tools: Strip[]; findings: Finding[]; lines: number; kept: Told | null;
}

// Kinds of a piece of the path, as gclint/digest/path.py numbers them.
export const RAPID = 0, AIR = 1, CUT = 2, CRASH = 3, BREAK = 4;
export const UNKNOWN = 255;

// Piece i goes from point i to point i + 1.
export interface Path {
  n: number; x: Float32Array; y: Float32Array; z: Float32Array; line: Int32Array; tool: Int32Array; kind: Uint8Array;
  place: Uint8Array; share: Uint8Array; chip: Uint8Array; depth: Uint8Array; force: Uint8Array;
}

export async function inflated(id: string): Promise<Uint8Array> {
  const element = document.getElementById(id)!;
  const text = atob(element.textContent!.trim()), raw = new Uint8Array(text.length);
  for (let i = 0; i < raw.length; i++) raw[i] = text.charCodeAt(i);
  element.textContent = "";
  const stream = new Blob([raw]).stream().pipeThrough(new DecompressionStream("deflate"));
  return new Uint8Array(await new Response(stream).arrayBuffer());
}

export class Columns {
  constructor(private readonly raw: Uint8Array) {}

  bytes(told: Told): Uint8Array { return this.raw.subarray(told.at, told.at + told.length); }

  whole(told: Told): Int32Array {
    const n = told.length, raw = this.raw, out = new Int32Array(n);
    let sum = 0;
    for (let i = 0, a = told.at; i < n; i++, a++) {
      const value = raw[a] | (raw[a + n] << 8) | (raw[a + 2 * n] << 16) | (raw[a + 3 * n] << 24);
      sum = told.delta ? (sum + value) | 0 : value;
      out[i] = sum;
    }
    return out;
  }

  numbers(told: Told): Float32Array {
    const whole = this.whole(told), out = new Float32Array(whole.length);
    for (let i = 0; i < out.length; i++) out[i] = whole[i] / told.scale;
    return out;
  }

  path(told: PathTold): Path {
    return {
      n: told.line.length, x: this.numbers(told.x), y: this.numbers(told.y), z: this.numbers(told.z),
      line: this.whole(told.line), tool: this.whole(told.tool), kind: this.bytes(told.kind),
      place: this.bytes(told.place), share: this.bytes(told.share), chip: this.bytes(told.chip),
      depth: this.bytes(told.depth), force: this.bytes(told.force),
    };
  }
}
