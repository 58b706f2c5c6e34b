// Two ways to put the scene on its canvas: at once with hard edges, or in slices with smooth ones, shown when all is drawn.
import {
  type Camera, Color, Mesh, MeshBasicMaterial, OrthographicCamera, PlaneGeometry, Scene, SRGBColorSpace, WebGLRenderer,
  WebGLRenderTarget,
} from "three";

const FINER = 2; // points of the whole picture to one of the canvas, along a side: much cheaper in software than the samples of one pixel
const FINEST = 3; // of a plain pixel

export class Painter {
  private readonly renderer: WebGLRenderer;
  private readonly whole = new WebGLRenderTarget(1, 1, { colorSpace: SRGBColorSpace });
  private readonly sheet = new Scene();
  private readonly flat = new OrthographicCamera(-1, 1, 1, -1, 0, 1);

  constructor(canvas: HTMLCanvasElement) {
    this.renderer = new WebGLRenderer({ canvas, antialias: false, alpha: false });
    this.renderer.capabilities.getMaxAnisotropy(); // asked for now: once there is much to draw the answer waits for all of it
    this.renderer.initRenderTarget(this.whole);
    const picture = new MeshBasicMaterial({ map: this.whole.texture, depthTest: false, depthWrite: false });
    this.sheet.add(new Mesh(new PlaneGeometry(2, 2), picture));
  }

  size(width: number, height: number): void {
    const ratio = Math.min(fine() * FINER, FINEST);
    this.renderer.setSize(width, height, false);
    this.whole.setSize(Math.max(1, Math.floor(width * ratio)), Math.max(1, Math.floor(height * ratio)));
  }

  ground(colour: string): void { this.renderer.setClearColor(new Color(colour), 1); }

  /** All that is visible, with no more pixels than the screen's plain ones. */
  atOnce(scenes: Scene[], camera: Camera): void {
    this.pixels(Math.min(fine(), 1));
    scenes.forEach((scene, k) => this.render(scene, camera, k === 0));
  }

  /** When slices of the scene can be drawn without waiting: what draws them is made meanwhile. */
  async ready(scene: Scene, camera: Camera): Promise<void> {
    this.renderer.setRenderTarget(this.whole);
    this.renderer.compile(scene, camera);
    this.renderer.setRenderTarget(null);
    await this.drawn();
  }

  /** What is visible, over the slices before it unless it is the first. */
  slice(scene: Scene, camera: Camera, first: boolean): void {
    this.renderer.setRenderTarget(this.whole);
    this.render(scene, camera, first);
    this.renderer.setRenderTarget(null);
  }

  /** Shows what the slices have drawn, and over it what lies over everything. */
  show(over: Scene, camera: Camera): void {
    this.pixels(fine());
    this.render(this.sheet, this.flat, true);
    this.render(over, camera, false);
  }

  /** When everything asked for so far has been drawn. */
  async drawn(): Promise<void> {
    const gl = this.renderer.getContext() as WebGL2RenderingContext, fence = gl.fenceSync(gl.SYNC_GPU_COMMANDS_COMPLETE, 0);
    if (!fence) return;
    gl.flush();
    do await new Promise((done) => setTimeout(done, 0)); while (gl.clientWaitSync(fence, 0, 0) === gl.TIMEOUT_EXPIRED);
    gl.deleteSync(fence);
  }

  private render(scene: Scene, camera: Camera, clear: boolean): void {
    this.renderer.autoClear = clear;
    this.renderer.render(scene, camera);
  }

  private pixels(ratio: number): void {
    if (Math.abs(this.renderer.getPixelRatio() - ratio) > 1e-3) this.renderer.setPixelRatio(ratio);
  }
}

function fine(): number { return Math.min(devicePixelRatio || 1, 2); }
