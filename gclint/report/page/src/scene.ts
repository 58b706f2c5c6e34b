// The path in space: the blank as it is left, the tool's way through it, and where the findings lie.
import {
  AmbientLight, BoxGeometry, BufferAttribute, BufferGeometry, Color, DirectionalLight, DoubleSide, EdgesGeometry,
  LineBasicMaterial, LineDashedMaterial, LineSegments, type Material, Mesh, MeshLambertMaterial, type Object3D,
  OrthographicCamera, Scene, Vector3, WebGLRenderer,
} from "three";
import { OrbitControls } from "three/addons/controls/OrbitControls.js";
import { LineMaterial } from "three/addons/lines/LineMaterial.js";
import { LineSegments2 } from "three/addons/lines/LineSegments2.js";
import { LineSegmentsGeometry } from "three/addons/lines/LineSegmentsGeometry.js";
import { AIR, BREAK, type Columns, CRASH, CUT, type Model, type Path, RAPID } from "./data";
import { shade, type Quantity } from "./colour";
import { bounds } from "./plan";
import { colour, isDark } from "./theme";

const MANY = 60_000; // pieces: more are drawn as hairlines
const LONG_FRAME = 42; // ms between two pictures of a moving view: where it takes longer, less is drawn
// What is drawn while the view moves: all of it, the coarse forms, and these with fewer pixels along a side.
const PIXELS = [1, 1, 0.75, 0.55, 0.4];
const FEW_CELLS = 45; // along a side of the coarse stock
const TOGETHER = 4; // pieces of the coarse path that are drawn as one
const REACH = 9; // pixels beside the path that a click still counts

export interface Shown { stock: boolean; rapids: boolean; air: boolean; tool: number | null }

export type View = "corner" | "above" | "front" | "side";

export class PathScene {
  private readonly scene = new Scene();
  private readonly camera = new OrthographicCamera();
  private readonly renderer: WebGLRenderer;
  private readonly controls: OrbitControls;
  private readonly centre: Vector3;
  private readonly radius: number;
  private readonly box: [Vector3, Vector3]; // corners of what is shown
  private drawn: Object3D[] = [];
  private lit: LineSegments2 | null = null;
  private rows: number[] = [];
  private waiting = false;
  private flight = 0;
  private slow: { still: Object3D[]; moving: Object3D[] } = { still: [], moving: [] }; // what is drawn at rest, and while the view moves
  private rest = 0;
  private moving = false;
  private level = 0; // of what is drawn while the view moves: index in PIXELS
  private frames: number[] = []; // when the last pictures of a moving view were drawn, ms
  size = { width: 0, height: 0 }; // of the canvas, CSS pixels
  private fitted: View | null = null; // the view that shows all, until somebody turns or moves it
  onDraw: () => void = () => {};

  constructor(
    readonly canvas: HTMLCanvasElement, private readonly model: Model, private readonly path: Path,
    private readonly coarse: Path,     private readonly columns: Columns, private quantity: Quantity, private shown: Shown,
  ) {
    this.renderer = new WebGLRenderer({ canvas, antialias: true, alpha: true });
    const [x0, x1, y0, y1] = bounds(model, path);
    const top = model.field?.top ?? 0, down = Math.max(model.field?.thick ?? 0, model.field?.deepest ?? 0, 1);
    const up = Math.min(highest(path) - top, Math.max(x1 - x0, y1 - y0) / 4);
    this.box = [new Vector3(x0, y0, top - down), new Vector3(x1, y1, top + Math.max(up, 0))];
    this.centre = this.box[0].clone().add(this.box[1]).multiplyScalar(0.5);
    this.radius = Math.max(this.box[0].distanceTo(this.box[1]) / 2, 1);
    this.camera.up.set(0, 0, 1);
    this.controls = new OrbitControls(this.camera, canvas);
    this.controls.enableZoom = false; // the wheel scrolls the sheet; see `wheel`
    this.controls.addEventListener("change", () => { this.move(); this.redraw(); });
    this.controls.addEventListener("start", () => { this.fitted = null; });
    canvas.addEventListener("wheel", (event) => this.wheel(event), { passive: false });
    this.scene.add(new AmbientLight(0xffffff, 1.7));
    const sun = new DirectionalLight(0xffffff, 1.6);
    sun.position.set(-0.6, -0.35, 1);
    this.scene.add(sun);
    this.fitted = "corner";
    this.resize();
    this.rebuild();
  }

  set(quantity: Quantity, shown: Shown): void { this.quantity = quantity; this.shown = shown; this.rebuild(); }

  resize(): void {
    const width = this.canvas.clientWidth, height = this.canvas.clientHeight;
    if (!width || !height) return;
    this.size = { width, height };
    this.renderer.setPixelRatio(this.pixels());
    this.renderer.setSize(width, height, false);
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

  /** Moves the view to a piece of the path; the view's direction stays. */
  goTo(row: number, span: number): void {
    const there = this.middle(row);
    const zoom = Math.min(40, Math.max(1, this.radius / Math.max(span, this.radius / 40)));
    this.fly(there, zoom, this.camera.position.clone().sub(this.controls.target), true);
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
    if (this.lit) { this.scene.remove(this.lit); this.lit.geometry.dispose(); this.lit = null; }
    if (this.rows.length) {
      const geometry = new LineSegmentsGeometry().setPositions(this.ends(this.rows));
      const material = new LineMaterial({ color: new Color(colour("lit")), linewidth: 5, depthTest: false, transparent: true,
        opacity: 0.9 });
      this.lit = new LineSegments2(geometry, material);
      this.lit.renderOrder = 5;
      this.scene.add(this.lit);
    }
    this.redraw();
  }

  /** The piece nearest to a place on the screen, within reach of a finger's or a mouse's aim. */
  pick(clientX: number, clientY: number): number | null {
    const frame = this.canvas.getBoundingClientRect();
    const px = clientX - frame.left, py = clientY - frame.top;
    this.camera.updateMatrixWorld();
    const m = this.camera.projectionMatrix.clone().multiply(this.camera.matrixWorldInverse).elements;
    const { x, y, z, n } = this.path;
    const w = frame.width / 2, h = frame.height / 2;
    let best: number | null = null, least = REACH, depth = Infinity;
    for (let i = 0; i < n; i++) {
      if (!this.visible(i)) continue;
      const ax = (m[0] * x[i] + m[4] * y[i] + m[8] * z[i] + m[12] + 1) * w - px;
      const ay = (1 - m[1] * x[i] - m[5] * y[i] - m[9] * z[i] - m[13]) * h - py;
      const j = i + 1;
      const dx = (m[0] * x[j] + m[4] * y[j] + m[8] * z[j] + m[12] + 1) * w - px - ax;
      const dy = (1 - m[1] * x[j] - m[5] * y[j] - m[9] * z[j] - m[13]) * h - py - ay;
      const long = dx * dx + dy * dy;
      const t = long > 0 ? Math.min(1, Math.max(0, -(ax * dx + ay * dy) / long)) : 0;
      const far = Math.hypot(ax + t * dx, ay + t * dy);
      if (far > least + 1.5) continue;
      const deep = m[2] * x[i] + m[6] * y[i] + m[10] * z[i];
      if (far < least - 1.5 || deep < depth) { best = i; least = Math.min(least, far); depth = deep; }
    }
    return best;
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
    for (const object of this.drawn) {
      this.scene.remove(object);
      const mesh = object as Mesh;
      mesh.geometry?.dispose();
      (mesh.material as Material)?.dispose();
    }
    this.drawn = [];
    this.slow = { still: [], moving: [] };
    if (this.shown.stock && this.model.field) this.addStock();
    for (const keep of this.model.keep_out) this.addKeepOut(keep.low, keep.high);
    this.addLines();
    this.addZero();
    this.applyLevel();
    this.light(this.rows);
  }

  redraw(): void {
    clearTimeout(this.rest);
    this.rest = window.setTimeout(() => this.settle(), 250);
    if (this.waiting) return;
    this.waiting = true;
    requestAnimationFrame((now) => {
      this.waiting = false;
      if (this.moving) this.watch(now);
      this.draw();
      this.onDraw();
    });
  }

  /** From now on the view moves, until nothing has been asked for a while: less is drawn. */
  private move(): void {
    if (this.moving) return;
    this.moving = true;
    this.frames = [];
    this.applyLevel();
  }

  private settle(): void {
    if (!this.moving) return;
    this.moving = false;
    this.applyLevel();
    this.draw();
  }

  private draw(): void { this.renderer.render(this.scene, this.camera); }

  /** Where pictures come too slowly, the next ones hold less. */
  private watch(now: number): void {
    this.frames.push(now);
    if (this.frames.length < 5) return;
    const each = (now - this.frames[0]) / (this.frames.length - 1);
    this.frames = [now];
    if (each < LONG_FRAME || this.level + 1 >= PIXELS.length) return;
    this.level++;
    this.applyLevel();
  }

  private applyLevel(): void {
    const coarse = this.moving && this.level > 0;
    for (const object of this.slow.still) object.visible = !coarse;
    for (const object of this.slow.moving) object.visible = coarse;
    const pixels = this.pixels();
    if (Math.abs(this.renderer.getPixelRatio() - pixels) > 1e-3) this.renderer.setPixelRatio(pixels);
  }

  private pixels(): number { return Math.min(devicePixelRatio || 1, 2) * (this.moving ? PIXELS[this.level] : 1); }

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

  private ends(rows: number[], path: Path = this.path): Float32Array {
    const { x, y, z } = path, out = new Float32Array(rows.length * 6);
    rows.forEach((i, k) => out.set([x[i], y[i], z[i], x[i + 1], y[i + 1], z[i + 1]], k * 6));
    return out;
  }

  private addLines(): void {
    const rows: number[][] = [[], [], [], []];
    for (let i = 0; i < this.path.n; i++) if (this.visible(i)) rows[this.path.kind[i]].push(i);
    const dash = this.radius / 45;
    this.addHair(rows[RAPID], new LineDashedMaterial({ color: new Color(colour("rapid")), dashSize: dash, gapSize: dash }));
    this.addHair(rows[AIR], new LineBasicMaterial({ color: new Color(colour("air")) }));
    this.addCuts(rows[CUT]);
    if (rows[CRASH].length) {
      const geometry = new LineSegmentsGeometry().setPositions(this.ends(rows[CRASH]));
      const material = new LineMaterial({ color: new Color(colour("halt")), linewidth: 5, dashed: true, dashSize: dash / 2,
        gapSize: dash / 3 });
      this.add(new LineSegments2(geometry, material)).computeLineDistances();
    }
  }

  private addHair(rows: number[], material: LineBasicMaterial): void {
    if (!rows.length) return;
    const geometry = new BufferGeometry().setAttribute("position", new BufferAttribute(this.ends(rows), 3));
    const lines = this.add(new LineSegments(geometry, material));
    if (material instanceof LineDashedMaterial) lines.computeLineDistances();
  }

  private addCuts(rows: number[]): void {
    if (!rows.length) return;
    const few: number[] = [];
    for (let i = 0; i < this.coarse.n; i++) {
      if (this.coarse.kind[i] === CUT && (this.shown.tool === null || this.coarse.tool[i] === this.shown.tool)) few.push(i);
    }
    this.slow.moving.push(this.hairs(few, this.coarse, few.length > MANY / 20 ? TOGETHER : 1));
    if (rows.length > MANY) {
      this.level = Math.max(this.level, 1);
      this.slow.still.push(this.hairs(rows, this.path, 1));
      return;
    }
    const colours = this.colours(rows, this.path);
    const geometry = new LineSegmentsGeometry().setPositions(this.ends(rows)).setColors(colours);
    this.slow.still.push(this.add(new LineSegments2(geometry, new LineMaterial({ vertexColors: true, linewidth: 2.5 }))));
  }

  /** Hairlines; up to `together` pieces that follow each other are drawn as one, from its start to the last one's end. */
  private hairs(rows: number[], path: Path, together: number): Object3D {
    const firsts: number[] = [], lasts: number[] = [];
    for (const i of rows) {
      const open = firsts.length - 1;
      if (open >= 0 && lasts[open] === i - 1 && i - firsts[open] < together && path.tool[i] === path.tool[firsts[open]]) lasts[open] = i;
      else { firsts.push(i); lasts.push(i); }
    }
    const ends = this.ends(firsts, path);
    lasts.forEach((i, k) => ends.set([path.x[i + 1], path.y[i + 1], path.z[i + 1]], k * 6 + 3));
    const geometry = new BufferGeometry().setAttribute("position", new BufferAttribute(ends, 3))
      .setAttribute("color", new BufferAttribute(this.colours(firsts, path), 3));
    return this.add(new LineSegments(geometry, new LineBasicMaterial({ vertexColors: true })));
  }

  private colours(rows: number[], path: Path): Float32Array {
    const dark = isDark(), table: [number, number, number][] = [];
    for (let k = 0; k < 256; k++) {
      const c = new Color(shade(k / 255, dark));
      table.push([c.r, c.g, c.b]);
    }
    const plain = new Color(colour("plain-cut")), out = new Float32Array(rows.length * 6);
    rows.forEach((i, k) => {
      const t = this.quantity.at(path, i);
      const [r, g, b] = Number.isNaN(t) ? [plain.r, plain.g, plain.b] : table[Math.round(Math.min(1, Math.max(0, t)) * 255)];
      out.set([r, g, b, r, g, b], k * 6);
    });
    return out;
  }

  private add<T extends Object3D>(object: T): T { this.scene.add(object); this.drawn.push(object); return object; }

  private addStock(): void {
    const field = this.model.field!;
    const bottom = field.top - (field.thick ?? Math.max(field.deepest * 1.15, this.radius / 30));
    const ground = new MeshLambertMaterial({ color: new Color(colour("stock")), side: DoubleSide, polygonOffset: true,
      polygonOffsetFactor: 1.5, polygonOffsetUnits: 2 });
    if (field.cut && field.nx && field.ny) {
      const whole = this.add(new Mesh(this.surface(field.nx, field.ny, bottom, 1), ground));
      const step = Math.ceil(Math.max(field.nx, field.ny) / FEW_CELLS);
      if (step > 1 && Math.min(field.nx, field.ny) > 2 * step) {
        this.slow.still.push(whole);
        this.slow.moving.push(this.add(new Mesh(this.surface(field.nx, field.ny, bottom, step), ground.clone())));
      }
    }
    const [w, h, d] = [field.x[1] - field.x[0], field.y[1] - field.y[0], field.top - bottom];
    const edges = new EdgesGeometry(new BoxGeometry(w, h, d));
    edges.translate((field.x[0] + field.x[1]) / 2, (field.y[0] + field.y[1]) / 2, (field.top + bottom) / 2);
    this.add(new LineSegments(edges, new LineBasicMaterial({ color: new Color(colour("edge")) })));
  }

  /** The top as it is left, and the sides down to the bottom; where the cut goes through, nothing. */
  private surface(wide: number, high: number, bottom: number, step: number): BufferGeometry {
    const field = this.model.field!, cut = this.columns.numbers(field.cut!);
    const nx = Math.ceil(wide / step), ny = Math.ceil(high / step);
    const at = (i: number, j: number) => Math.max(field.top - cut[j * step * wide + i * step], bottom);
    const X = (i: number) => field.x[0] + (field.x[1] - field.x[0]) * (i / (nx - 1));
    const Y = (j: number) => field.y[0] + (field.y[1] - field.y[0]) * (j / (ny - 1));
    const points = new Float32Array(nx * ny * 3), faces: number[] = [];
    for (let j = 0; j < ny; j++) for (let i = 0; i < nx; i++) points.set([X(i), Y(j), at(i, j)], (j * nx + i) * 3);
    const through = field.thick === null ? -Infinity : bottom + 1e-3;
    for (let j = 0; j + 1 < ny; j++) for (let i = 0; i + 1 < nx; i++) {
      const a = j * nx + i, b = a + 1, c = a + nx, d = c + 1;
      if (Math.max(points[a * 3 + 2], points[b * 3 + 2], points[c * 3 + 2], points[d * 3 + 2]) <= through) continue;
      faces.push(a, b, d, a, d, c);
    }
    const walls: number[] = [];
    const wall = (i: number, j: number, k: number, l: number) => {
      const p = [X(i), Y(j), at(i, j)], q = [X(k), Y(l), at(k, l)];
      walls.push(...p, p[0], p[1], bottom, ...q, ...q, p[0], p[1], bottom, q[0], q[1], bottom);
    };
    for (let i = 0; i + 1 < nx; i++) { wall(i, 0, i + 1, 0); wall(i, ny - 1, i + 1, ny - 1); }
    for (let j = 0; j + 1 < ny; j++) { wall(0, j, 0, j + 1); wall(nx - 1, j, nx - 1, j + 1); }
    const all = new Float32Array(points.length + walls.length);
    all.set(points); all.set(walls, points.length);
    for (let k = points.length / 3; k < all.length / 3; k++) faces.push(k);
    const geometry = new BufferGeometry().setAttribute("position", new BufferAttribute(all, 3));
    geometry.setIndex(faces);
    geometry.computeVertexNormals();
    return geometry;
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

function highest(path: Path): number {
  let high = -Infinity;
  for (let i = 0; i < path.n; i++) if (path.kind[i] !== BREAK) high = Math.max(high, path.z[i], path.z[i + 1]);
  return high;
}
