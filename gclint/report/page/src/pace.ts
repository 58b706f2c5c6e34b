// How much may be drawn while the view moves, and in one slice of everything: as much as pictures have turned out to take.

const BUDGETS = [3_000, 6_000, 12_000, 24_000, 48_000, 96_000]; // faces (a line counts as some): the first still shows the part
const SMOOTH = 30; // ms from one picture of a moving view to the next
const LONG = 36, SHORT = 20; // ms: pictures that take longer hold less from now on; where all are shorter the next move tries more
const SEEN = 4; // pictures after which this is decided
const HARD_EDGES = 3; // times as quick as smooth ones
const SLICE = 60; // ms that a slice should take
const FIRST = 16_000, LEAST = 8_000; // faces of the first slice, and of any: each has a cost of its own
const ALL = 14; // ms: what takes no longer is drawn whole, also while the view moves

export class Pace {
  cost = 0; // of everything
  slice = FIRST;
  private level = 2;
  private budgets: number[] = [];
  private times: number[] = [];
  private pictures = 0;
  private longest = 0;
  private spent = { cost: 0, ms: 0 };
  private known = false;
  private each = 0; // ms for a face of everything

  /** Everything has another cost from now on. */
  whole(cost: number): void {
    this.cost = cost;
    this.budgets = BUDGETS.filter((_, k) => k === 0 || BUDGETS[k - 1] < cost);
    this.level = Math.min(this.level, this.budgets.length);
  }

  /** What may be drawn now; null for everything. */
  get budget(): number | null { return this.budgets[this.level] ?? null; }

  /** What may be drawn now as long as everything cannot. */
  get some(): number { return this.budget ?? this.budgets[this.budgets.length - 1]; }

  /** Whether everything can be drawn before anybody notices. */
  get quick(): boolean { return this.known && this.cost * this.each <= 2 * ALL; }

  starts(): void {
    if (this.pictures >= SEEN && this.longest < SHORT && this.level < this.budgets.length) this.level++;
    this.times = [];
    this.pictures = this.longest = 0;
  }

  /** ms from one picture of a moving view to the next. */
  took(ms: number): void {
    this.times.push(ms);
    if (this.times.length < SEEN) return;
    const each = this.times.reduce((sum, one) => sum + one, 0) / SEEN;
    this.times = [];
    this.pictures += SEEN;
    this.longest = Math.max(this.longest, each);
    if (each > LONG && this.level > 0) this.level -= each > 2 * LONG && this.level > 1 ? 2 : 1;
  }

  /** A slice of everything has been drawn. */
  sliced(cost: number, ms: number): void {
    if (ms > 1.5 * SLICE) this.slice = Math.max(LEAST, this.slice * (SLICE / ms));
    else if (ms < SLICE / 2 && cost > this.slice / 2) this.slice *= 2;
    if (this.known) return;
    this.spent.cost += cost;
    this.spent.ms += ms;
    if (this.spent.cost < this.cost) return;
    this.known = true; // the first time that everything has been drawn tells where to begin
    this.each = this.spent.ms / Math.max(this.spent.cost, 1);
    const may = (SMOOTH / 2 / this.each) * HARD_EDGES;
    this.level = this.each * this.cost <= ALL ? this.budgets.length : Math.max(0, this.budgets.filter((one) => one <= may).length - 1);
  }
}
