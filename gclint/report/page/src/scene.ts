// The path in space: the blank as it is left, the tool's way through it, and where the findings lie.
import {
  AmbientLight, BoxGeometry, BufferAttribute, BufferGeometry, Color, DirectionalLight, DoubleSide, EdgesGeometry, Group,
  LineBasicMaterial, LineDashedMaterial, LineSegments, type Material, Mesh, MeshLambertMaterial, type Object3D,
  OrthographicCamera, Scene, Vector3,
} from "three";
import { OrbitControls } from "three/addons/controls/OrbitControls.js";
import { LineMaterial } from "three/addons/lines/LineMaterial.js";
import { LineSegments2 } from "three/addons/lines/LineSegments2.js";
import { LineSegmentsGeometry } from "three/addons/lines/LineSegmentsGeometry.js";
import { AIR, BREAK, type Columns, CRASH, CUT, type Model, type Path, RAPID } from "./data";
import { Form, formOf, type Quantity } from "./colour";
import { type Drawn, Levels } from "./levels";
import { Painter } from "./painter";
import { Pace } from "./pace";
import { bounds } from "./plan";
import { facesOf, mostFaces, parted, stepFor, surface } from "./stock";
import { colour, isDark } from "./theme";

const MANY = 60_000; // cuts, or lines of another kind: more are drawn as hairlines
const WIDTH: Record<number, number> = { [RAPID]: 1.3, [AIR]: 1.1, [CUT]: 2.5, [CRASH]: 5 }; // of a line that is no hairline, pixels
const CUTS = { [Form.Plain]: 2.5, [Form.Thin]: 5, [Form.Thick]: 5, [Form.Unknown]: 1.6 }; // of a cut, by its form
const HALO = [16, 11, 4.5]; // a lit piece: ink, paper, its own colour; pixels
const HAIR = 2, BROAD = 8; // what a line costs, in faces of the stock
const PART = 4_000; // faces of one part of the whole picture
const REST = 200; // ms without a wish for another view, until the whole picture is drawn
const LIT_FEW = 200; // pieces lit while the view moves
const NEARER = 1.6; // times the zoom at which all is in sight: what somebody chose is kept up to here when a place is shown
const REACH = 9; // pixels beside the path that a click still counts
// Of what may be drawn while the view moves: for the stock; and of the rest, for lines of each kind.
const FOR_STOCK = 0.45, FOR_KIND: [number, number][] = [[CRASH, 0.15], [RAPID, 0.2], [AIR, 0.15], [CUT, 0.5]];

interface Part { cost: number; form: string; make: () => Object3D } // form: what it is drawn by
interface Few { group: Group; drawn: Drawn[] }

export interface Shown { stock: boolean; before: boolean; rapids: boolean; air: boolean; tool: number | null }

export type View = "corner" | "above" | "front" | "side";

export class PathScene {
  private readonly scene = new Scene();
  private readonly camera = new OrthographicCamera();
  private readonly pace = new Pace();
  private readonly controls: OrbitControls;
  private readonly centre: Vector3;
  private readonly radius: number;
  private readonly box: [Vector3, Vector3]; // corners of what is shown
  private readonly left: Float32Array | null; // depth of each cell of the stock, mm, when the program has run
  private readonly found: Float32Array | null; // and when it begins, where earlier programs have cut it
  private readonly over = new Scene(); // what is lit: over everything else
  private readonly always = new Group(); // what is drawn with every picture
  private readonly whole = new Group(); // everything, made part by part when it is first drawn
  private parts: Part[] = [];
  private readonly ready = new Set<string>(); // forms of parts that can be drawn without waiting
  private few = new Map<number, Few>(); // what is drawn instead while the view moves, by what it may cost
  private shownFew: Drawn[] | null = null; // what is on the canvas, null for everything
  private shownMay = 0;
  private lit: { all: Object3D; few: Object3D } | null = null;
  private rows: number[] = [];
  private asked = false;
  private complete = false; // everything has been drawn as it would be seen now
  private waiting = false;
  private drawnAt = 0; // when the last picture of a moving view was drawn, ms
  private flight = 0;
  private run = 0; // of drawing everything
  private rest = 0;
  private moving = false;
  size = { width: 0, height: 0 }; // of the canvas, CSS pixels
  private fitted: View | null = null; // the view that shows all, until somebody turns or moves it
  onDraw: () => void = () => {};

  constructor(
    readonly canvas: HTMLCanvasElement, private readonly painter: Painter, private readonly model: Model, private readonly path: Path,
    private readonly levels: Levels, columns: Columns, private quantity: Quantity, private shown: Shown,
  ) {
    const [x0, x1, y0, y1] = bounds(model, path);
    const top = model.field?.top ?? 0, down = Math.max(model.field?.thick ?? 0, model.field?.deepest ?? 0, 1);
    const [lowest, highest] = heights(path), up = Math.min(highest - top, Math.max(x1 - x0, y1 - y0) / 2);
    this.box = [new Vector3(x0, y0, Math.min(top - down, Math.max(lowest, top - down - Math.max(x1 - x0, y1 - y0)))), new Vector3(x1, y1, top + Math.max(up, 0))];
    this.centre = this.box[0].clone().add(this.box[1]).multiplyScalar(0.5);
    this.radius = Math.max(this.box[0].distanceTo(this.box[1]) / 2, 1);
    const told = model.field?.nx && model.field.ny ? model.field : null;
    this.left = told?.cut ? columns.numbers(told.cut) : null;
    this.found = told?.start ? columns.numbers(told.start) : null;
    this.camera.up.set(0, 0, 1);
    this.controls = new OrbitControls(this.camera, canvas);
    this.controls.enableZoom = false; // the wheel scrolls the sheet; see `wheel`
    this.controls.addEventListener("change", () => { this.move(); this.redraw(); });
    this.controls.addEventListener("start", () => {
      this.fitted = null;
      if (!this.complete) { this.move(); this.redraw(); } // drawing everything waits for the hand
    });
    canvas.addEventListener("wheel", (event) => this.wheel(event), { passive: false });
    const sun = new DirectionalLight(0xffffff, 1.6);
    sun.position.set(-0.6, -0.35, 1);
    this.scene.add(new AmbientLight(0xffffff, 1.7), sun, this.always, this.whole);
    this.fitted = "corner";
    this.resize();
    this.rebuild();
  }

  set(quantity: Quantity, shown: Shown): void { this.quantity = quantity; this.shown = shown; this.rebuild(); }

  resize(): void {
    const width = this.canvas.clientWidth, height = this.canvas.clientHeight;
    if (!width || !height) return;
    this.size = { width, height };
    this.painter.size(width, height);
    const half = this.radius * 0.86, ratio = width / height;
    const w = ratio >= 1 ? half * ratio : half, h = ratio >= 1 ? half : half / ratio;
    Object.assign(this.camera, { left: -w, right: w, top: h, bottom: -h, near: -this.radius * 60, far: this.radius * 60 });
    this.camera.updateProjectionMatrix();
    if (this.fitted) this.look(this.fitted, false);
    this.redraw();
  }

  look(from: View, moving = true): void {
    const away = { corner: [-0.55, -1, 0.95], above: [0, -1e-4, 1], front: [0, -1, 0.02], side: [1, 0, 0.02] }[from];
    const to = new Vector3(...away).normalize().multiplyScalar(this.radius * 4);
    this.fly(this.centre.clone(), this.fitting(to), to, moving);
    this.fitted = from;
  }

  /** The zoom at which all corners of the box lie in sight. */
  private fitting(away: Vector3): number {
    const across = new Vector3(0, 0, 1).cross(away).normalize(), up = away.clone().cross(across).normalize();
    let wide = 0, high = 0;
    for (let k = 0; k < 8; k++) {
      const corner = new Vector3(this.box[k & 1].x, this.box[(k >> 1) & 1].y, this.box[k >> 2].z).sub(this.centre);
      wide = Math.max(wide, Math.abs(corner.dot(across)));
      high = Math.max(high, Math.abs(corner.dot(up)));
    }
    return 0.94 * Math.min(this.camera.right / Math.max(wide, 1e-6), this.camera.top / Math.max(high, 1e-6));
  }

  /** Brings a piece of the path into view: the view's direction stays, and all of the part and the path stay in sight. */
  goTo(row: number): void {
    const away = this.camera.position.clone().sub(this.controls.target), there = this.middle(row);
    const fit = this.fitting(away), near = Math.min(this.camera.zoom, fit * NEARER);
    // as near as it was before, and between the middle of all and the place, as far as all still fits
    const zoom = Math.max(near, fit), lean = Math.min(1, Math.max(0, 1 - fit / zoom));
    this.fly(this.centre.clone().lerp(there, lean), zoom, away, true);
  }

  get target(): [number, number, number, number] {
    const { x, y, z } = this.controls.target;
    return [x, y, z, this.camera.zoom];
  }

  turn(across: number, up: number): void {
    this.fitted = null;
    const way = this.camera.position.clone().sub(this.controls.target);
    const length = way.length(), level = Math.atan2(way.y, way.x) + across;
    const height = Math.min(Math.PI / 2 - 1e-4, Math.max(-Math.PI / 2 + 1e-4, Math.asin(way.z / length) + up));
    way.set(Math.cos(height) * Math.cos(level), Math.cos(height) * Math.sin(level), Math.sin(height)).multiplyScalar(length);
    this.camera.position.copy(this.controls.target).add(way);
    this.controls.update();
    this.move();
    this.redraw();
  }

  zoom(times: number): void {
    this.fitted = null;
    this.camera.zoom = Math.min(400, Math.max(0.3, this.camera.zoom * times));
    this.camera.updateProjectionMatrix();
    this.move();
    this.redraw();
  }

  /** Pieces drawn over all others. */
  light(rows: Iterable<number>): void {
    this.rows = [...rows];
    for (const old of this.lit ? [this.lit.all, this.lit.few] : []) { this.over.remove(old); forget(old); }
    this.lit = null;
    if (this.rows.length) {
      const step = Math.ceil(this.rows.length / LIT_FEW);
      const made = (some: number[]) => {
        const group = new Group(), geometry = new LineSegmentsGeometry().setPositions(this.ends(some, some.map((row) => row + 1)));
        const own = new LineSegmentsGeometry().setPositions(this.ends(some, some.map((row) => row + 1)))
          .setColors(this.colours(Float32Array.from(some, (row) => this.path.kind[row] === CUT ? this.quantity.at(this.path, row) : NaN)));
        HALO.forEach((linewidth, k) => {
          const color = new Color(k < 2 ? colour(k ? "paper" : "ink") : 0xffffff);
          const lines = new LineSegments2(k < 2 ? geometry : own, new LineMaterial({ color, linewidth, depthTest: false, vertexColors: k === 2 }));
          lines.renderOrder = 10 + k;
          group.add(lines);
        });
        this.over.add(group);
        return group;
      };
      this.lit = { all: made(this.rows), few: made(this.rows.filter((_, k) => k % step === 0)) };
    }
    this.next();
  }

  /** The piece nearest to a place on the screen, within reach of a finger's or a mouse's aim; of those that are drawn. */
  pick(clientX: number, clientY: number): number | null {
    const frame = this.canvas.getBoundingClientRect();
    const px = clientX - frame.left, py = clientY - frame.top;
    this.camera.updateMatrixWorld();
    const m = this.camera.projectionMatrix.clone().multiply(this.camera.matrixWorldInverse).elements;
    const { x, y, z, n } = this.path;
    const w = frame.width / 2, h = frame.height / 2;
    let best: [number, number] | null = null, least = REACH, depth = Infinity;
    const look = (i: number, j: number) => {
      const ax = (m[0] * x[i] + m[4] * y[i] + m[8] * z[i] + m[12] + 1) * w - px;
      const ay = (1 - m[1] * x[i] - m[5] * y[i] - m[9] * z[i] - m[13]) * h - py;
      const dx = (m[0] * x[j] + m[4] * y[j] + m[8] * z[j] + m[12] + 1) * w - px - ax;
      const dy = (1 - m[1] * x[j] - m[5] * y[j] - m[9] * z[j] - m[13]) * h - py - ay;
      const long = dx * dx + dy * dy;
      const t = long > 0 ? Math.min(1, Math.max(0, -(ax * dx + ay * dy) / long)) : 0;
      const far = Math.hypot(ax + t * dx, ay + t * dy);
      if (far > least + 1.5) return;
      const deep = m[2] * x[i] + m[6] * y[i] + m[10] * z[i];
      if (far < least - 1.5 || deep < depth) { best = [i, j]; least = Math.min(least, far); depth = deep; }
    };
    if (this.shownFew) {
      for (const { from, to } of this.shownFew) for (let k = 0; k < from.length; k++) look(from[k], to[k]);
      const found = best as [number, number] | null; // a line that stands for several pieces: the nearest of these
      best = null; least = Infinity; depth = Infinity;
      if (found) for (let i = found[0]; i < found[1]; i++) look(i, i + 1);
    } else for (let i = 0; i < n; i++) if (this.visible(i)) look(i, i + 1);
    return best ? best[0] : null;
  }

  /** Where a piece is on the screen, in pixels of the canvas. */
  project(row: number): [number, number] {
    const { x, y, z } = this.middle(row);
    return this.projectPoint(x, y, z);
  }

  projectPoint(x: number, y: number, z: number): [number, number] {
    this.camera.updateMatrixWorld();
    const at = new Vector3(x, y, z).project(this.camera);
    return [(at.x + 1) / 2 * this.size.width, (1 - at.y) / 2 * this.size.height];
  }

  rebuild(): void {
    for (const group of [this.over, this.always, this.whole, ...[...this.few.values()].map((one) => one.group)]) {
      for (const object of [...group.children]) { group.remove(object); forget(object); }
    }
    for (const { group } of this.few.values()) this.scene.remove(group);
    this.few.clear();
    this.lit = null;
    this.painter.ground(colour("figure"));
    if (this.shown.stock && this.model.field) this.addEdges();
    for (const keep of this.model.keep_out) this.addKeepOut(keep.low, keep.high);
    this.addZero();
    this.parts = [...this.stockParts(), ...this.lineParts()];
    this.pace.whole(this.parts.reduce((sum, part) => sum + part.cost, 0));
    this.light(this.rows);
    this.redraw();
  }

  redraw(): void {
    this.asked = true;
    this.complete = false;
    this.run++;
    clearTimeout(this.rest);
    this.rest = window.setTimeout(() => void this.settle(), this.moving ? REST : 0);
    this.next();
  }

  /** From now on the view moves, until nothing has been asked for a while: less is drawn. */
  private move(): void { if (!this.moving) { this.moving = true; this.pace.starts(); } }

  private next(): void {
    if (this.waiting) return;
    this.waiting = true;
    requestAnimationFrame((now) => {
      this.waiting = false;
      if (this.drawnAt && this.moving) this.pace.took(now - this.drawnAt);
      this.drawnAt = 0;
      if (this.asked) {
        this.asked = false;
        const may = this.pace.budget, made = this.whole.children.length === this.parts.length;
        if (made && (may === null || (!this.moving && this.pace.quick))) this.drawWhole(); else this.drawFew(this.pace.some);
        this.onDraw();
        if (!this.moving) return;
        this.drawnAt = now;
        this.next(); // how long this picture takes is seen at the next one
      } else if (this.complete) this.present();
      else if (this.shownFew) this.drawFew(this.shownMay);
    });
  }

  private drawFew(may: number): void {
    const { group, drawn } = this.fewFor(may);
    this.show(group);
    this.painter.atOnce([this.scene, this.over], this.camera);
    this.shownMay = may;
    this.tell(drawn, may);
  }

  private drawWhole(): void {
    this.show(this.whole);
    this.painter.slice(this.scene, this.camera, true);
    this.present();
  }

  private present(): void {
    this.complete = true;
    const stock = this.whole.children.filter((_, k) => this.parts[k].form === "stock") as Mesh[];
    this.canvas.dataset.faces = String(stock.reduce((sum, part) => sum + facesOf(part.geometry), 0));
    this.show(this.whole);
    this.painter.show(this.over, this.camera);
    this.tell(null, this.pace.cost);
  }

  /** Everything, in slices short enough that the sheet stays at hand; nothing is seen of it before it is complete. */
  private async settle(): Promise<void> {
    const run = this.run, { parts, whole } = this;
    this.moving = false;
    if (this.complete) return;
    for (let at = 0, first = true; at < parts.length || first; first = false) {
      const began = performance.now(), from = at;
      let cost = 0;
      do {
        if (at >= whole.children.length && at < parts.length) this.make(at);
        cost += parts[at]?.cost ?? 0;
      } while (++at < parts.length && cost + parts[at].cost <= this.pace.slice && performance.now() - began < 40);
      const forms = parts.slice(from, at).map((part) => part.form).filter((form) => !this.ready.has(form));
      if (forms.length) await this.painter.ready(this.scene, this.camera);
      for (const form of forms) this.ready.add(form);
      if (run !== this.run) return;
      this.show(whole, at >= parts.length);
      whole.children.forEach((part, k) => { part.visible = k >= from && k < at; });
      this.painter.slice(this.scene, this.camera, first);
      for (const part of whole.children) part.visible = true;
      if (at >= parts.length) { this.present(); this.onDraw(); }
      await this.painter.drawn();
      if (run !== this.run) return;
      this.pace.sliced(cost, performance.now() - began);
    }
  }

  private make(at: number): void { this.whole.add(this.parts[at].make()); }

  private show(group: Group, last = true): void {
    this.whole.visible = group === this.whole;
    for (const one of this.few.values()) one.group.visible = one.group === group;
    this.always.visible = last;
    if (this.lit) { this.lit.all.visible = this.whole.visible; this.lit.few.visible = !this.whole.visible; }
  }

  private tell(few: Drawn[] | null, cost: number): void {
    this.shownFew = few;
    this.canvas.dataset.drawn = few ? "few" : "all";
    this.canvas.dataset.cost = String(Math.round(cost));
  }

  private fly(target: Vector3, zoom: number, away: Vector3, moving: boolean): void {
    const from = this.controls.target.clone(), was = this.camera.zoom;
    const way = this.camera.position.clone().sub(from), started = performance.now(), flight = ++this.flight;
    const still = !moving || matchMedia("(prefers-reduced-motion: reduce)").matches;
    this.fitted = null;
    const step = () => {
      if (flight !== this.flight) return;
      const t = still ? 1 : Math.min(1, (performance.now() - started) / 350), s = t * t * (3 - 2 * t);
      this.controls.target.lerpVectors(from, target, s);
      this.camera.position.copy(this.controls.target).add(way.clone().lerp(away, s).setLength(this.radius * 4));
      this.camera.zoom = was * Math.pow(zoom / was, s);
      if (t < 1) this.move();
      this.camera.updateProjectionMatrix();
      this.controls.update();
      this.redraw();
      if (t < 1) requestAnimationFrame(step);
    };
    step();
  }

  private wheel(event: WheelEvent): void {
    if (document.activeElement !== this.canvas && !event.ctrlKey) return;
    event.preventDefault();
    this.zoom(Math.exp(-event.deltaY * 0.0015));
  }

  private middle(i: number): Vector3 {
    const { x, y, z } = this.path;
    return new Vector3((x[i] + x[i + 1]) / 2, (y[i] + y[i + 1]) / 2, (z[i] + z[i + 1]) / 2);
  }

  private visible(i: number): boolean {
    const { kind, tool } = this.path;
    if (kind[i] === BREAK || (this.shown.tool !== null && tool[i] !== this.shown.tool)) return false;
    return kind[i] === RAPID ? this.shown.rapids : kind[i] === AIR ? this.shown.air : true;
  }

  private ends(from: ArrayLike<number>, to: ArrayLike<number>): Float32Array {
    const { x, y, z } = this.path, out = new Float32Array(from.length * 6);
    for (let k = 0, at = 0; k < from.length; k++) {
      const a = from[k], b = to[k];
      out[at++] = x[a]; out[at++] = y[a]; out[at++] = z[a];
      out[at++] = x[b]; out[at++] = y[b]; out[at++] = z[b];
    }
    return out;
  }

  private get cut(): Float32Array | null { return this.shown.before && this.found ? this.found : this.left; }

  private shows(kind: number): boolean { return kind === RAPID ? this.shown.rapids : kind === AIR ? this.shown.air : true; }

  // --- everything ---

  private stockParts(): Part[] {
    const { field } = this.model;
    if (!this.shown.stock || !field) return [];
    if (!this.cut) return [{ cost: 12, form: "stock", make: () => new Mesh(this.block(), this.ground()) }];
    const ground = this.ground();
    let made: BufferGeometry[] | null = null; // made at once, drawn part by part
    return Array.from({ length: Math.ceil(mostFaces(field) / PART) }, (_, k) => ({ cost: PART, form: "stock", make: () => {
      made ??= parted(surface(field, this.cut!, this.bottom(), 1), PART);
      return new Mesh(made[k] ?? new BufferGeometry(), ground);
    } }));
  }

  private lineParts(): Part[] {
    const parts: Part[] = [];
    for (const kind of [RAPID, AIR, CUT, CRASH].filter((one) => this.shows(one))) {
      const all = this.levels.all(kind, this.shown.tool, this.quantity), n = all.from.length;
      const broad = kind === CRASH || n <= MANY, each = broad ? BROAD : HAIR, most = Math.floor(PART / each);
      for (let at = 0; at < n; at += most) {
        const end = Math.min(n, at + most);
        parts.push({ cost: (end - at) * each, form: `${kind} ${broad} ${kind === CUT}`, make: () => this.lines(kind, { from: all.from.subarray(at, end), to: all.to.subarray(at, end),
          colour: all.colour.subarray(at, end) }, broad) });
      }
    }
    return parts;
  }

  // --- some of it ---

  private fewFor(may: number): Few {
    const old = this.few.get(may);
    if (old) return old;
    const group = new Group(), drawn: Drawn[] = [], { field } = this.model;
    let left = may;
    if (this.shown.stock && field && !this.cut) group.add(new Mesh(this.block(), this.ground()));
    if (this.shown.stock && field && this.cut) {
      group.add(new Mesh(surface(field, this.cut, this.bottom(), stepFor(field, may * FOR_STOCK)), this.ground()));
      left -= may * FOR_STOCK;
    }
    for (const [kind, share] of FOR_KIND.filter(([one]) => this.shows(one))) {
      const lines = this.levels.few(kind, this.shown.tool, this.quantity, Math.floor((left * share) / (kind === CRASH ? BROAD : HAIR)), this.radius);
      if (!lines.from.length) continue;
      drawn.push(lines);
      group.add(this.lines(kind, lines, kind === CRASH || lines.from.length * BROAD <= left * share));
    }
    this.scene.add(group);
    this.few.set(may, { group, drawn });
    return this.few.get(may)!;
  }

  private lines(kind: number, lines: Drawn, broad: boolean): Object3D {
    const ends = this.ends(lines.from, lines.to), dash = this.radius / (kind === CRASH ? 110 : 45), dashed = kind === RAPID || kind === CRASH;
    const color = new Color(kind === CUT ? 0xffffff : colour(kind === RAPID ? "rapid" : kind === AIR ? "air" : "crash"));
    const colours = kind === CUT ? this.colours(lines.colour) : null, vertexColors = kind === CUT;
    if (broad && kind === CUT) return this.cuts(lines);
    if (broad) {
      const geometry = new LineSegmentsGeometry().setPositions(ends);
      const made = new LineSegments2(geometry, new LineMaterial({ color, linewidth: WIDTH[kind], dashed, dashSize: dash, gapSize: dash,
        depthTest: kind !== CRASH }));
      made.renderOrder = kind === CRASH ? 3 : 0; // seen through the stock: it is a finding
      return dashed ? made.computeLineDistances() : made;
    }
    const geometry = new BufferGeometry().setAttribute("position", new BufferAttribute(ends, 3));
    if (colours) geometry.setAttribute("color", new BufferAttribute(colours, 3));
    const made = new LineSegments(geometry, dashed ? new LineDashedMaterial({ color, dashSize: dash, gapSize: dash })
      : new LineBasicMaterial({ color, vertexColors }));
    return dashed ? made.computeLineDistances() : made;
  }

  /** Cuts as lines of their forms: what breaks a limit is broad, and dashed where it is too thin. */
  private cuts(lines: Drawn): Object3D {
    const group = new Group();
    for (const form of [Form.Unknown, Form.Plain, Form.Thin, Form.Thick] as const) {
      const rows: number[] = [];
      for (let k = 0; k < lines.from.length; k++) if (formOf(this.quantity, lines.colour[k]) === form) rows.push(k);
      if (!rows.length) continue;
      const geometry = new LineSegmentsGeometry().setPositions(this.ends(rows.map((k) => lines.from[k]), rows.map((k) => lines.to[k])))
        .setColors(this.colours(Float32Array.from(rows, (k) => lines.colour[k])));
      const dashed = form === Form.Thin, dash = this.radius / 60;
      const made = new LineSegments2(geometry, new LineMaterial({ vertexColors: true, linewidth: CUTS[form], dashed, dashSize: dash, gapSize: dash * 0.6 }));
      group.add(dashed ? made.computeLineDistances() : made);
    }
    return group;
  }

  private colours(places: Float32Array): Float32Array {
    const dark = isDark(), table: Color[] = [], plain = new Color(colour("plain-cut")), out = new Float32Array(places.length * 6);
    for (let k = 0; k < 256; k++) table.push(new Color(this.quantity.shade(k / 255, dark)));
    for (let k = 0, at = 0; k < places.length; k++) {
      const t = places[k], { r, g, b } = Number.isNaN(t) ? plain : table[Math.round(Math.min(1, Math.max(0, t)) * 255)];
      out[at++] = r; out[at++] = g; out[at++] = b;
      out[at++] = r; out[at++] = g; out[at++] = b;
    }
    return out;
  }

  private add<T extends Object3D>(object: T): T { this.always.add(object); return object; }

  private bottom(): number {
    const field = this.model.field!;
    return field.top - (field.thick ?? Math.max(field.deepest * 1.15, this.radius / 30));
  }

  private ground(): MeshLambertMaterial {
    return new MeshLambertMaterial({ color: new Color(colour("stock")), side: DoubleSide, flatShading: true, polygonOffset: true, polygonOffsetFactor: 1.5,
      polygonOffsetUnits: 2 });
  }

  /** The blank before anything is cut. */
  private block(): BufferGeometry {
    const field = this.model.field!, bottom = this.bottom();
    return new BoxGeometry(field.x[1] - field.x[0], field.y[1] - field.y[0], field.top - bottom)
      .translate((field.x[0] + field.x[1]) / 2, (field.y[0] + field.y[1]) / 2, (field.top + bottom) / 2);
  }

  private addEdges(): void {
    this.add(new LineSegments(new EdgesGeometry(this.block()), new LineBasicMaterial({ color: new Color(colour("edge")) })));
  }

  private addKeepOut(low: number[], high: number[]): void {
    const box = new BoxGeometry(high[0] - low[0], high[1] - low[1], high[2] - low[2]);
    box.translate((low[0] + high[0]) / 2, (low[1] + high[1]) / 2, (low[2] + high[2]) / 2);
    this.add(new Mesh(box, new MeshLambertMaterial({ color: new Color(colour("keep-out")), transparent: true, opacity: 0.45 })));
    this.add(new LineSegments(new EdgesGeometry(box), new LineBasicMaterial({ color: new Color(colour("halt")) })));
  }

  private addZero(): void {
    const r = this.radius / 9, geometry = new BufferGeometry();
    geometry.setAttribute("position", new BufferAttribute(new Float32Array([0, 0, 0, r, 0, 0, 0, 0, 0, 0, r, 0, 0, 0, 0, 0, 0, r]), 3));
    const axes = this.add(new LineSegments(geometry, new LineBasicMaterial({ color: new Color(colour("ink")), depthTest: false })));
    axes.renderOrder = 4;
  }

  get axis(): number { return this.radius / 9; }
}

function heights(path: Path): [number, number] {
  let low = Infinity, high = -Infinity;
  for (let i = 0; i < path.n; i++) if (path.kind[i] !== BREAK) {
    low = Math.min(low, path.z[i], path.z[i + 1]); high = Math.max(high, path.z[i], path.z[i + 1]);
  }
  return high < low ? [0, 0] : [low, high];
}

function forget(object: Object3D): void {
  for (const child of object.children) forget(child);
  const { geometry, material } = object as Mesh;
  geometry?.dispose();
  (material as Material)?.dispose();
}
