// Puts the figures, the charts and the program's text into the sheet and ties them together.
import { chartsOf } from "./charts";
import { known, quantities, type Quantity } from "./colour";
import { BREAK, CRASH, CUT, Columns, type Model, type Path, RAPID, UNKNOWN, inflated } from "./data";
import { figure, make } from "./dom";
import { Levels } from "./levels";
import { Listing } from "./listing";
import { Painter } from "./painter";
import { planOf, type Plan } from "./plan";
import { PathScene, type Shown } from "./scene";
import { isDark, onPaper, onTheme, startTheme } from "./theme";

const PINS = 60;
const STOPS = 60; // of the bar of colours
const PAPER = 660, PLAN_ON_PAPER = 680, TALLEST_ON_PAPER = 420, TALLEST = 520, MAP_ON_PAPER = 380, TALLEST_MAP = 420; // px: how wide charts and the drawing from above are made for paper, whatever the screen

async function start(): Promise<void> {
  document.documentElement.classList.add("scripted");
  startTheme();
  openForPrint();
  if (!document.getElementById("model")) return;
  await breath(true);
  const reader = new TextDecoder();
  const model = JSON.parse(reader.decode(await inflated("model"))) as Model;
  const columns = new Columns(await inflated("columns"));
  await breath();
  const lines = reader.decode(await inflated("text")).split("\n");
  await breath();
  const sheet = new Sheet(model, columns, lines);
  await sheet.build();
  Object.assign(window, sheet.hooks());
  document.documentElement.dataset.ready = "yes";
}

/** Lets the browser do what else it has to do, and show the sheet first if it has not been seen yet. */
function breath(seen = false): Promise<void> {
  return new Promise((done) => {
    if (!seen) { setTimeout(done, 0); return; }
    requestAnimationFrame(() => setTimeout(done, 0));
    setTimeout(done, 300); // a page behind others has no frames
  });
}

/** Paper shows what a screen folds away. */
function openForPrint(): void {
  const closed = () => [...document.querySelectorAll<HTMLDetailsElement>("details:not([open])")];
  let opened: HTMLDetailsElement[] = [];
  addEventListener("beforeprint", () => { opened = closed(); for (const one of opened) one.open = true; });
  addEventListener("afterprint", () => { for (const one of opened) one.open = false; });
}

class Sheet {
  private readonly fine: Path;
  private readonly coarse: Path;
  private readonly levels: Levels;
  private readonly all: Quantity[];
  private quantity: Quantity;
  private shown: Shown = { stock: true, before: false, rapids: true, air: true, tool: null };
  private scene: PathScene | null = null;
  private plan: Plan | null = null;
  private readonly planBox = make("figure", { class: "from-above" });
  private readonly status = make("p", { class: "status", role: "status" });
  private readonly legend = make("div", { class: "legend" });
  private readonly pins = make("div", { class: "pins", "aria-hidden": "true" });
  private readonly marks: HTMLElement[] = [];
  private readonly listing: Listing;
  private readonly lineFindings = new Map<number, number[]>();
  private readonly rowFindings = new Map<number, number[]>();
  private readonly findingRows: Int32Array[] = [];
  private readonly findingLines: Int32Array[] = [];
  private chosen: number | null = null;

  constructor(private readonly model: Model, private readonly columns: Columns, lines: string[]) {
    this.fine = columns.path(model.paths[0]);
    this.coarse = columns.path(model.paths[1]);
    this.levels = new Levels(this.fine, this.coarse);
    this.all = quantities(model, this.fine);
    this.quantity = this.all.find((one) => known(one, this.coarse) > 0.3) ?? this.all[this.all.length - 1];
    model.findings.forEach((finding, k) => {
      this.findingRows.push(finding.rows ? columns.whole(finding.rows) : new Int32Array());
      this.findingLines.push(columns.whole(finding.lines));
      for (const line of this.findingLines[k]) add(this.lineFindings, line, k);
      for (const row of this.findingRows[k]) add(this.rowFindings, row, k);
    });
    const kept = model.kept ? columns.whole(model.kept) : null;
    this.listing = new Listing(lines, kept ? (place) => kept[place] : (place) => place + 1, model.lines, this.lineFindings,
      (line) => this.toLine(line));
    for (const button of document.querySelectorAll<HTMLElement>("[data-show]")) {
      button.addEventListener("click", () => this.toFinding(Number(button.dataset.show), true));
    }
    onTheme((colours) => {
      if (colours) { this.scene?.rebuild(); this.drawLegend(); }
      this.drawPlan();
      this.redrawStrips();
    });
  }

  /** One after the other, so that the sheet stays at hand. */
  async build(): Promise<void> {
    await breath();
    const canvas = this.buildFigure();
    await breath();
    const painter = this.painter(canvas); // a browser may take its time to find out how it can draw
    await breath();
    if (painter) this.buildScene(canvas, painter);
    await breath();
    this.drawPlan();
    this.buildStrips();
  }

  // --- the figure ---

  private buildFigure(): HTMLCanvasElement {
    const canvas = make("canvas", { tabindex: "0", class: "space", role: "img", "aria-describedby": "figure-keys",
      "aria-label": "The path of the tool in space, with the stock as it is left" });
    const stage = make("div", { class: "space-box" }, canvas, this.pins);
    document.getElementById("figure-root")!.append(
      make("figure", { class: "in-space" }, stage, this.views(canvas),
        make("figcaption", { id: "figure-keys" }, "Drag to turn; with the figure in focus: arrows turn, + and - or the wheel zoom, 0 shows all. Click the path for its line.")),
      this.legend, this.controls());
    document.getElementById("figure-more")!.append(this.status,
      make("div", { class: "figures" }, this.planBox,
        make("div", { class: "text-box" }, make("p", { class: "caption" }, this.listing.whole ? "The text of the program; a line in it leads to its place on the path."
          : "The text of the program where something points at it; the rest is left out of this page."), this.listing.element)));
    this.drawLegend();
    this.say(null);
    new ResizeObserver(() => this.fitPlan()).observe(this.planBox);
    return canvas;
  }

  private painter(canvas: HTMLCanvasElement): Painter | null {
    try { return new Painter(canvas); } catch {
      canvas.parentElement!.replaceChildren(make("p", { class: "aside" }, "This browser cannot draw in space (WebGL is off); the drawing from above shows the same path."));
      return null;
    }
  }

  private buildScene(canvas: HTMLCanvasElement, painter: Painter): void {
    const scene = this.scene = new PathScene(canvas, painter, this.model, this.fine, this.levels, this.columns, this.quantity, this.shown);
    scene.onDraw = () => this.placePins();
    this.pins.addEventListener("click", (event) => {
      const pin = Number((event.target as HTMLElement).dataset.pin ?? -1);
      if (pin >= 0) this.toFinding(pin, false);
    });
    new ResizeObserver(() => scene.resize()).observe(canvas);
    this.listen(canvas, scene);
  }

  private listen(canvas: HTMLCanvasElement, scene: PathScene): void {
    let down: [number, number] | null = null;
    canvas.addEventListener("pointerdown", (event) => { down = [event.clientX, event.clientY]; canvas.focus({ preventScroll: true }); });
    canvas.addEventListener("pointerup", (event) => {
      if (!down || Math.hypot(event.clientX - down[0], event.clientY - down[1]) > 4) return;
      const row = scene.pick(event.clientX, event.clientY);
      if (row !== null) this.toRow(row, false);
    });
    canvas.addEventListener("keydown", (event) => {
      const turn = { ArrowLeft: [-0.12, 0], ArrowRight: [0.12, 0], ArrowUp: [0, 0.1], ArrowDown: [0, -0.1] }[event.key];
      if (turn) scene.turn(turn[0], turn[1]);
      else if (event.key === "+" || event.key === "=") scene.zoom(1.25);
      else if (event.key === "-") scene.zoom(0.8);
      else if (event.key === "0" || event.key === "Home") scene.look("corner");
      else return;
      event.preventDefault();
    });
  }

  private controls(): HTMLElement {
    const select = make("select", { id: "quantity" });
    for (const one of this.all) {
      const option = make("option", { value: one.key }, one.label + (known(one, this.coarse) > 0 ? "" : " (not known)"));
      option.selected = one === this.quantity;
      select.append(option);
    }
    select.addEventListener("change", () => {
      this.quantity = this.all.find((one) => one.key === select.value)!;
      this.refresh();
    });
    const tools = make("select", { id: "only-tool" }, make("option", { value: "" }, "all tools"));
    this.model.tools.forEach((strip) => tools.append(make("option", { value: String(strip.tool) }, strip.tool < 0 ? "tool not named" : `tool ${strip.tool}`)));
    tools.addEventListener("change", () => { this.shown.tool = tools.value === "" ? null : Number(tools.value); this.refresh(); });
    const box = (key: "stock" | "before" | "rapids" | "air", label: string) => {
      const input = make("input", { type: "checkbox", id: `show-${key}` });
      input.checked = this.shown[key];
      input.addEventListener("change", () => { this.shown[key] = input.checked; this.refresh(); });
      return make("label", {}, input, label);
    };
    return make("div", { class: "controls" },
      make("label", {}, "Coloured by ", select),
      this.model.tools.length > 1 ? make("label", {}, "Show ", tools) : null,
      box("stock", "stock as it is left"), this.model.field?.start ? box("before", "stock as earlier programs left it") : null, box("rapids", "rapids"), box("air", "feeds in the air"));
  }

  private views(canvas: HTMLCanvasElement): HTMLElement {
    const bar = make("div", { class: "views", role: "group", "aria-label": "View of the figure" });
    const button = (label: string, act: (scene: PathScene) => void) => {
      const made = make("button", { type: "button" }, label);
      made.addEventListener("click", () => { if (this.scene) act(this.scene); });
      bar.append(made);
    };
    button("corner", (scene) => scene.look("corner"));
    button("above", (scene) => scene.look("above"));
    button("front", (scene) => scene.look("front"));
    button("right", (scene) => scene.look("side"));
    button("nearer", (scene) => scene.zoom(1.4));
    button("farther", (scene) => scene.zoom(1 / 1.4));
    canvas.dataset.views = "yes";
    return bar;
  }

  private refresh(): void {
    this.scene?.set(this.quantity, this.shown);
    this.drawLegend();
    this.drawPlan();
    this.redrawStrips();
  }

  private drawLegend(): void {
    const dark = isDark(), stops = [];
    for (let k = 0; k <= STOPS; k++) stops.push(this.quantity.shade(k / STOPS, dark));
    const bar = make("div", { class: "bar" });
    bar.style.background = `linear-gradient(to right, ${stops.map((stop, k) => `${stop} ${k * 100 / STOPS}%`).join(",")})`;
    const ticks = make("div", { class: "ticks" });
    for (const [at, text] of this.quantity.ticks) {
      const tick = make("span", {}, text);
      tick.style.left = `${at * 100}%`;
      if (at === 0) tick.classList.add("first");
      if (at === 1) tick.classList.add("last");
      ticks.append(tick);
    }
    for (const at of this.quantity.limits ?? []) bar.append(limit(at));
    const cuts = this.fine.kind.includes(CUT), { limits } = this.quantity;
    const line = (name: string, words: string, t?: number) => {
      const one = make("li", { class: name }, words);
      if (t !== undefined) one.style.setProperty("--own", this.quantity.shade(t, dark));
      return one;
    };
    const forms = limits ? [line("cut good", "within the window", 0.5), line("cut thin", "too thin: broad, dashed", 0.2), line("cut thick", "too thick: broad", 0.85)]
      : [line("cut good", "cut", 0.5)];
    this.legend.replaceChildren(
      !cuts ? make("p", {}, "No cut is known, so nothing has a colour.") : make("div", { class: "scale" }, make("p", {}, make("b", {}, this.quantity.label), `: ${this.quantity.about}`), bar, ticks),
      make("ul", { class: "lines" },
        ...(cuts ? [...forms, line("plain-cut", "cut, not judged or not known")] : []), line("air", "feed in the air"),
        line("rapid", "rapid"), this.fine.kind.includes(CRASH) ? line("crash", "rapid in material") : null));
  }

  private drawPlan(): void {
    const width = onPaper() ? PLAN_ON_PAPER : Math.max(240, Math.min(this.planBox.clientWidth || 380, 760));
    this.plan = planOf(this.model, this.levels, this.fine, this.quantity, width, this.shown.tool, true, onPaper() ? TALLEST_ON_PAPER : TALLEST);
    this.drawMaps();
    const plan = this.plan;
    plan.svg.addEventListener("click", (event) => {
      const pin = (event.target as Element).closest<SVGElement>("[data-pin]");
      if (pin) { this.toFinding(Number(pin.dataset.pin), false); return; }
      const at = plan.toMm(event);
      const row = at && this.nearest(at[0], at[1], 9 * plan.perPixel());
      if (row !== null) this.toRow(row, false);
    });
    const words = ["From above in the blank", this.model.field ? "" : "; no blank is known",
      this.model.hidden ? `; ${this.model.hidden === 1 ? "1 move is not drawn, as its" : `${this.model.hidden.toLocaleString("en")} moves are not drawn, as their`} place in the blank is not known` : "",
      this.model.off > 0 ? `; drawn to within ${figure(this.model.off * this.model.scale)} ${this.model.unit} of the ${this.model.moves.toLocaleString("en")} moves` : ""];
    this.planBox.dataset.width = String(width);
    this.planBox.replaceChildren(plan.svg, make("figcaption", {}, `${words.join("")}.`));
    this.markPlan();
  }

  /** The same drawing where a sheet has it beside what is done at the machine. */
  private drawMaps(): void {
    for (const box of document.querySelectorAll<HTMLElement>("[data-map]")) {
      const width = onPaper() ? MAP_ON_PAPER : Math.max(240, Math.min(box.clientWidth || 380, 640)), tallest = Math.min(TALLEST_MAP, width);
      box.replaceChildren(planOf(this.model, this.levels, this.fine, this.quantity, width, null, true, tallest).svg,
        make("figcaption", {}, "From above: the blank, work zero, the path, and the places of what was found."));
    }
  }

  private fitPlan(): void {
    const width = Math.max(240, Math.min(this.planBox.clientWidth, 760));
    if (this.planBox.clientWidth && Math.abs(width - Number(this.planBox.dataset.width)) > 20) this.drawPlan();
  }

  private nearest(x: number, y: number, reach: number): number | null {
    const p = this.fine;
    let best: number | null = null, least = reach * reach, high = -Infinity;
    for (let i = 0; i < p.n; i++) {
      if (p.kind[i] > CRASH || (p.kind[i] === RAPID && !this.shown.rapids) || (this.shown.tool !== null && p.tool[i] !== this.shown.tool)) continue;
      const dx = p.x[i + 1] - p.x[i], dy = p.y[i + 1] - p.y[i], long = dx * dx + dy * dy;
      const t = long > 0 ? Math.min(1, Math.max(0, ((x - p.x[i]) * dx + (y - p.y[i]) * dy) / long)) : 0;
      const far = (p.x[i] + t * dx - x) ** 2 + (p.y[i] + t * dy - y) ** 2;
      const cut = p.kind[i] === CUT ? 1 : 0;
      if (far < least * 0.98 || (far <= least && cut >= high)) { best = i; least = Math.max(far, 1e-9); high = cut; }
    }
    return best;
  }

  // --- from one to the other ---

  private toFinding(index: number, scroll: boolean): void {
    const finding = this.model.findings[index];
    const article = document.querySelector<HTMLElement>(`[data-finding="${index}"]`);
    for (const other of document.querySelectorAll(".chosen")) other.classList.remove("chosen");
    article?.classList.add("chosen");
    this.listing.show(finding.line, this.findingLines[index]);
    const rows = this.findingRows[index];
    this.scene?.light(rows);
    if (finding.row !== null) this.scene?.goTo(finding.row);
    this.choose(finding.row);
    this.say(finding.row, index);
    if (scroll) document.getElementById("path")!.scrollIntoView({ behavior: motion(), block: "start" });
  }

  private toRow(row: number, fly: boolean): void {
    const found = this.rowFindings.get(row) ?? [];
    for (const other of document.querySelectorAll(".chosen")) other.classList.remove("chosen");
    for (const index of found) document.querySelector(`[data-finding="${index}"]`)?.classList.add("chosen");
    const line = this.fine.line[row];
    this.listing.show(line);
    this.scene?.light(this.rowsOfLine(line, row));
    if (fly) this.scene?.goTo(row);
    this.choose(row);
    this.say(row);
  }

  private toLine(line: number): void {
    const row = this.rowOfLine(line);
    const found = this.lineFindings.get(line) ?? [];
    for (const other of document.querySelectorAll(".chosen")) other.classList.remove("chosen");
    for (const index of found) document.querySelector(`[data-finding="${index}"]`)?.classList.add("chosen");
    this.listing.show(line);
    this.scene?.light(row === null ? [] : this.rowsOfLine(line, row));
    if (row !== null) this.scene?.goTo(row);
    this.choose(row);
    this.say(row, undefined, line);
  }

  /** The piece half way along a line's own, or that in which it has been merged. */
  private rowOfLine(line: number): number | null {
    const { line: lines, n, x, y, z } = this.fine, own: number[] = [], ends: number[] = [];
    let before: number | null = null, long = 0;
    for (let i = 0; i < n; i++) {
      if (lines[i] === line && this.fine.kind[i] !== BREAK) {
        long += Math.hypot(x[i + 1] - x[i], y[i + 1] - y[i], z[i + 1] - z[i]);
        own.push(i);
        ends.push(long);
      } else if (lines[i] < line && (before === null || lines[i] >= lines[before])) before = i;
    }
    if (own.length) return own[ends.findIndex((end) => end >= long / 2)];
    return this.model.off > 0 ? before : null;
  }

  private rowsOfLine(line: number, row: number): number[] {
    const rows = [];
    for (let i = 0; i < this.fine.n && rows.length < 4000; i++) if (this.fine.line[i] === line) rows.push(i);
    return rows.length ? rows : [row];
  }

  private choose(row: number | null): void { this.chosen = row; this.markPlan(); this.placePins(); }

  private markPlan(): void {
    const svg = this.plan?.svg;
    if (!svg) return;
    svg.querySelector(".here")?.remove();
    if (this.chosen === null || !this.plan) return;
    const i = this.chosen, p = this.fine;
    this.plan.mark((p.x[i] + p.x[i + 1]) / 2, (p.y[i] + p.y[i + 1]) / 2);
  }

  private say(row: number | null, finding?: number, line?: number): void {
    const parts: (Node | string)[] = [];
    if (row === null && line === undefined && finding === undefined) {
      parts.push("Nothing chosen: pick a finding, the path or a line of the program.");
    } else {
      const number = line ?? (finding !== undefined ? this.model.findings[finding].line : this.fine.line[row!]);
      parts.push(make("b", {}, `Line ${number.toLocaleString("en")}`));
      if (row === null) parts.push(": it moves the tool nowhere that could be drawn");
      else parts.push(`: ${this.facts(row)}`);
      const found = finding !== undefined ? [finding] : line !== undefined ? this.lineFindings.get(line) : this.rowFindings.get(row!);
      for (const index of (found ?? []).slice(0, 6)) {
        parts.push(" \u00b7 ", link(index, this.model.findings[index].rule));
      }
    }
    this.status.replaceChildren(...parts);
  }

  private facts(i: number): string {
    const p = this.fine, { most, scale, unit } = this.model;
    const kind = ["rapid", "feed in the air", "cut", "rapid in material"][p.kind[i]] ?? "";
    const facts = [kind];
    if (p.tool[i] >= 0) facts.push(`tool ${p.tool[i]}`);
    const told = (column: Uint8Array, top: number, label: string, of: string) => {
      if (column[i] !== UNKNOWN) facts.push(`${label} ${figure(column[i] / 254 * top)} ${of}`);
    };
    if (p.kind[i] === CUT) {
      told(p.chip, most.chip * scale, "chip", unit);
      told(p.depth, most.depth * scale, "depth", unit);
      told(p.force, most.force, "force to", "N");
      if (p.share[i] !== UNKNOWN && p.share[i] < 198) facts.push(`${Math.round(p.share[i] / 2)} % of F reached`);
    }
    facts.push(`to X ${figure(p.x[i + 1] * scale, 5)} Y ${figure(p.y[i + 1] * scale, 5)} Z ${figure(p.z[i + 1] * scale, 4)}`);
    return facts.join(", ");
  }

  private placePins(): void {
    const scene = this.scene;
    if (!scene) return;
    const { width, height } = scene.size;
    let n = 0; // marks in use; those of the last picture are moved rather than made anew
    const pin = (x: number, y: number, text: string, name: string, finding = -1) => {
      if (x < -20 || y < -20 || x > width + 20 || y > height + 20) return;
      const mark = this.marks[n] ?? (this.marks[n] = this.pins.appendChild(make("span")));
      n++;
      if (mark.className !== name) mark.className = name;
      if (mark.textContent !== text) mark.textContent = text;
      mark.dataset.pin = String(finding);
      mark.style.transform = `translate(${x.toFixed(1)}px, ${y.toFixed(1)}px)`;
      mark.style.zIndex = String(PINS + 9 - n); // the worst lies on top
    };
    const r = scene.axis * 1.15;
    pin(...scene.projectPoint(r, 0, 0), "X", "axis");
    pin(...scene.projectPoint(0, r, 0), "Y", "axis");
    pin(...scene.projectPoint(0, 0, r), "Z", "axis");
    const taken = new Set<string>();
    this.model.findings.forEach((finding, k) => {
      if (finding.row === null || n > PINS) return;
      if (this.shown.tool !== null && finding.tool !== null && finding.tool !== this.shown.tool) return;
      const [x, y] = scene.project(finding.row), cell = `${Math.round(x / 22)} ${Math.round(y / 22)}`;
      if (taken.has(cell)) return;
      taken.add(cell);
      pin(x, y, String(k + 1), `pin badge g-${finding.grade}`, k);
    });
    if (this.chosen !== null) pin(...scene.project(this.chosen), "", "target");
    for (const mark of this.marks.splice(n)) mark.remove();
  }

  /** What the tests ask: where the view is, and where a place in the blank is on the screen. */
  hooks(): Record<string, unknown> {
    return {
      gclintView: () => this.scene?.target ?? null,
      gclintSpacePoint: (x: number, y: number, z: number) => {
        const frame = this.scene!.canvas.getBoundingClientRect(), [px, py] = this.scene!.projectPoint(x, y, z);
        return [frame.left + px, frame.top + py];
      },
      gclintShade: (key: string, t: number, dark: boolean) => this.all.find((one) => one.key === key)!.shade(t, dark),
      gclintPlanPoint: (x: number, y: number) => this.plan!.toScreen(x, y),
    };
  }

  // --- the strips ---

  private buildStrips(): void {
    const waiting = [...document.querySelectorAll<HTMLElement>("[data-tool]")];
    const fill = () => { const box = waiting.shift(); if (box) this.fillStrip(box); };
    const next = () => { fill(); if (waiting.length) setTimeout(next, 0); }; // one at a time: the sheet stays at hand
    setTimeout(next, 0);
    addEventListener("beforeprint", () => { while (waiting.length) fill(); });
    let timer = 0;
    addEventListener("resize", () => { clearTimeout(timer); timer = window.setTimeout(() => this.redrawStrips(), 200); });
  }

  private redrawStrips(): void {
    for (const box of document.querySelectorAll<HTMLElement>("[data-tool]")) if (box.childElementCount) this.fillStrip(box);
  }

  private fillStrip(box: HTMLElement): void {
    const strip = this.model.tools[Number(box.dataset.tool)];
    const width = onPaper() ? PAPER : Math.max(280, Math.min(box.clientWidth || 640, 1100));
    const plan = planOf(this.model, this.levels, this.fine, this.quantity, 300, strip.tool, false).svg;
    box.replaceChildren(...chartsOf(strip, this.model, plan, width, (row) => {
      this.toRow(row, true);
      document.getElementById("path")!.scrollIntoView({ behavior: motion(), block: "start" });
    }));
  }
}

/** Where a limit lies on the bar of colours. */
function limit(at: number): HTMLElement {
  const mark = make("span", { class: "limit" });
  mark.style.left = `${at * 100}%`;
  return mark;
}

function add(map: Map<number, number[]>, key: number, value: number): void {
  const list = map.get(key);
  if (list) list.push(value); else map.set(key, [value]);
}

/** Back to a finding on the sheet, which may be folded away. */
function link(index: number, rule: string): HTMLElement {
  const made = make("a", { href: `#finding-${index + 1}` }, `finding ${index + 1}: ${rule}`);
  made.addEventListener("click", () => {
    const folded = document.getElementById(`finding-${index + 1}`)?.closest("details");
    if (folded) folded.open = true;
  });
  return made;
}

function motion(): ScrollBehavior {
  return matchMedia("(prefers-reduced-motion: reduce)").matches ? "instant" : "smooth";
}

start().catch((problem: unknown) => {
  const root = document.getElementById("figure-root");
  root?.append(make("p", { class: "aside" }, `The figures could not be drawn: ${String(problem)}`));
  console.error(problem);
});
