// The program's lines in a short window that can be scrolled through all of them; only those in sight are made.
import { make } from "./dom";

const ROW = 22; // px
const TALLEST = 6_000_000; // px; browsers draw no taller element

export class Listing {
  readonly element: HTMLElement;
  private readonly inner: HTMLElement;
  private readonly rows: HTMLElement;
  private chosen = -1;
  private marked = new Set<number>();

  constructor(
    private readonly lines: string[], private readonly numbers: (place: number) => number, private readonly total: number,
    private readonly findings: Map<number, number[]>, private readonly pick: (line: number) => void,
  ) {
    this.rows = make("div", { class: "rows", role: "presentation" });
    this.inner = make("div", { class: "inner", role: "presentation" }, this.rows);
    this.element = make("div", { class: "listing", tabindex: "0", role: "listbox", "aria-label": "Text of the program" }, this.inner);
    this.inner.style.height = `${Math.min(this.lines.length * ROW, TALLEST)}px`;
    this.element.addEventListener("scroll", () => this.refresh());
    this.element.addEventListener("keydown", (event) => this.key(event));
    this.rows.addEventListener("click", (event) => {
      const row = (event.target as HTMLElement).closest<HTMLElement>("[data-line]");
      if (row) this.pick(Number(row.dataset.line));
    });
    new ResizeObserver(() => this.refresh()).observe(this.element);
    this.refresh();
  }

  /** Brings a line into sight and marks it, and the others that belong to it. */
  show(line: number, others: Iterable<number> = []): void {
    this.marked = new Set(others);
    this.chosen = this.placeOf(line);
    const seen = Math.max(1, Math.floor(this.element.clientHeight / ROW));
    const top = Math.max(0, this.chosen - Math.floor(seen / 2));
    this.element.scrollTop = top * this.scale(seen);
    this.refresh();
  }

  private scale(seen: number): number {
    const most = Math.max(1, this.lines.length - seen);
    return this.lines.length * ROW <= TALLEST ? ROW : (TALLEST - seen * ROW) / most;
  }

  private placeOf(line: number): number {
    let low = 0, high = this.lines.length - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if (this.numbers(middle) <= line) low = middle; else high = middle - 1;
    }
    return low;
  }

  private key(event: KeyboardEvent): void {
    const page = Math.max(1, Math.floor(this.element.clientHeight / ROW) - 1);
    const step = { ArrowDown: 1, ArrowUp: -1, PageDown: page, PageUp: -page, Home: -Infinity, End: Infinity }[event.key];
    if (step === undefined) return;
    event.preventDefault();
    const place = Math.min(this.lines.length - 1, Math.max(0, this.chosen + step));
    this.pick(this.numbers(place));
  }

  private refresh(): void {
    const seen = Math.ceil(this.element.clientHeight / ROW) + 1, scale = this.scale(seen);
    const first = Math.max(0, Math.min(this.lines.length - seen + 1, Math.floor(this.element.scrollTop / scale)));
    const made: HTMLElement[] = [];
    for (let place = first; place < Math.min(this.lines.length, first + seen); place++) made.push(this.row(place));
    this.rows.style.transform = `translateY(${scale === ROW ? first * ROW : this.element.scrollTop}px)`;
    this.rows.replaceChildren(...made);
    if (this.chosen >= first && this.chosen < first + seen) this.element.setAttribute("aria-activedescendant", `line-${this.numbers(this.chosen)}`);
    else this.element.removeAttribute("aria-activedescendant");
  }

  private row(place: number): HTMLElement {
    const line = this.numbers(place), here = place === this.chosen;
    const row = make("div", { class: here ? "row here" : this.marked.has(line) ? "row also" : "row", role: "option",
      id: `line-${line}`, "aria-selected": String(here), "data-line": String(line) },
      make("i", {}, line.toLocaleString("en")), make("code", {}, this.lines[place]));
    const gap = place > 0 && this.numbers(place - 1) !== line - 1;
    if (gap) row.classList.add("gap");
    const found = this.findings.get(line);
    if (found) row.append(make("span", { class: "at" }, `finding ${found.slice(0, 3).map((k) => k + 1).join(", ")}`));
    return row;
  }

  get whole(): boolean { return this.lines.length === this.total; }
}
