// The stock as it is left, as a surface of so many cells.
import { BufferAttribute, BufferGeometry } from "three";
import type { Field } from "./data";

const SIDES = [[1, 0], [-1, 0], [0, 1], [0, -1]];
const AROUND = [...SIDES, [1, 1], [1, -1], [-1, 1], [-1, -1]];

/** Cells of a block side by side that are drawn as one, so that there are at most so many faces. */
export function stepFor(field: Field, faces: number): number {
  let step = 1;
  while (2 * Math.ceil(field.nx! / step) * Math.ceil(field.ny! / step) > faces && Math.min(field.nx!, field.ny!) > 2 * step) step++;
  return step;
}

/** How many faces the surface of all cells has at most: two a cell of the top, and two a cell along each side. */
export function mostFaces(field: Field): number {
  const nx = field.nx! - 1, ny = field.ny! - 1;
  return 2 * nx * ny + 4 * nx + 4 * ny;
}

/** How many faces a geometry has. */
export function facesOf(geometry: BufferGeometry): number { return (geometry.index?.count ?? 0) / 3; }

/** The top as it is left, and the sides down to the bottom; where the cut goes through, nothing. Of a block the deepest cell counts. */
export function surface(field: Field, cut: Float32Array, bottom: number, step: number): BufferGeometry {
  const wide = field.nx!, high = field.ny!, nx = Math.ceil(wide / step), ny = Math.ceil(high / step);
  const deep = new Float32Array(nx * ny);
  for (let j = 0; j < high; j++) for (let i = 0; i < wide; i++) {
    const k = Math.floor(j / step) * nx + Math.floor(i / step);
    deep[k] = Math.max(deep[k], cut[j * wide + i]);
  }
  const around = 2 * (nx - 1) + 2 * (ny - 1);
  const points = new Float32Array((nx * ny + around * 6) * 3), faces = new Uint32Array((nx - 1) * (ny - 1) * 6 + around * 6);
  for (let j = 0; j < ny; j++) for (let i = 0; i < nx; i++) {
    const k = j * nx + i;
    points[k * 3] = field.x[0] + (field.x[1] - field.x[0]) * (i / (nx - 1));
    points[k * 3 + 1] = field.y[0] + (field.y[1] - field.y[0]) * (j / (ny - 1));
    points[k * 3 + 2] = Math.max(field.top - deep[k], bottom);
  }
  if (step === 1) smooth(points, nx, ny, field);
  const through = field.thick === null ? -Infinity : bottom + 1e-3;
  let face = 0, point = nx * ny;
  for (let j = 0; j + 1 < ny; j++) for (let i = 0; i + 1 < nx; i++) {
    const a = j * nx + i, b = a + 1, c = a + nx, d = c + 1;
    if (Math.max(points[a * 3 + 2], points[b * 3 + 2], points[c * 3 + 2], points[d * 3 + 2]) <= through) continue;
    faces.set([a, b, d, a, d, c], face);
    face += 6;
  }
  const wall = (a: number, b: number) => {
    const [ax, ay, az] = points.subarray(a * 3, a * 3 + 3), [bx, by, bz] = points.subarray(b * 3, b * 3 + 3);
    points.set([ax, ay, az, ax, ay, bottom, bx, by, bz, bx, by, bz, ax, ay, bottom, bx, by, bottom], point * 3);
    for (let k = 0; k < 6; k++) faces[face++] = point++;
  };
  for (let i = 0; i + 1 < nx; i++) { wall(i, i + 1); wall((ny - 1) * nx + i, (ny - 1) * nx + i + 1); }
  for (let j = 0; j + 1 < ny; j++) { wall(j * nx, (j + 1) * nx); wall(j * nx + nx - 1, (j + 1) * nx + nx - 1); }
  const geometry = new BufferGeometry().setAttribute("position", new BufferAttribute(points, 3));
  geometry.setIndex(new BufferAttribute(faces.subarray(0, face), 1));
  geometry.computeVertexNormals();
  geometry.computeBoundingSphere();
  return geometry;
}

// Walls run through cells, and cells lie in rows and columns: points on both sides of a wall are moved together until the wall
// is steep, and along with their neighbours on the same side until it is a curve. Heights stay, and no point moves half a cell.
function smooth(points: Float32Array, nx: number, ny: number, field: Field): void {
  const dx = (field.x[1] - field.x[0]) / (nx - 1), dy = (field.y[1] - field.y[0]) / (ny - 1);
  const wall = Math.max(1.2 * Math.max(dx, dy), field.deepest * 0.04); // steeper than about 50 degrees from cell to cell
  const z = (k: number) => points[k * 3 + 2];
  const moved: number[] = [], offset = new Float32Array(nx * ny * 2), edge = new Uint8Array(nx * ny);
  for (let j = 1; j + 1 < ny; j++) for (let i = 1; i + 1 < nx; i++) {
    const k = j * nx + i;
    let sx = 0, sy = 0;
    for (const [across, up] of SIDES) if (Math.abs(z(k) - z(k + up * nx + across)) > wall) { sx += across; sy += up; edge[k] = 1; }
    if (!edge[k]) continue;
    moved.push(k);
    const long = Math.hypot(sx, sy) || 1;
    offset[k * 2] = 0.3 * sx / long; offset[k * 2 + 1] = 0.3 * sy / long;
  }
  let next = offset.slice();
  for (let turn = 0; turn < 8; turn++) {
    for (const k of moved) {
      let x = offset[k * 2], y = offset[k * 2 + 1], n = 1;
      for (const [across, up] of AROUND) {
        const other = k + up * nx + across;
        if (!edge[other] || Math.abs(z(k) - z(other)) > wall) continue;
        x += across + offset[other * 2]; y += up + offset[other * 2 + 1]; n++;
      }
      const most = (value: number) => Math.min(0.45, Math.max(-0.45, value));
      next[k * 2] = most(x / n); next[k * 2 + 1] = most(y / n);
    }
    offset.set(next);
  }
  for (const k of moved) { points[k * 3] += offset[k * 2] * dx; points[k * 3 + 1] += offset[k * 2 + 1] * dy; }
}

/** The same surface in parts of at most so many faces. */
export function parted(geometry: BufferGeometry, most: number): BufferGeometry[] {
  const faces = geometry.index!.array, made = [];
  for (let at = 0; at < faces.length; at += most * 3) {
    const part = new BufferGeometry();
    for (const name of ["position", "normal"]) part.setAttribute(name, geometry.attributes[name]);
    part.setIndex(new BufferAttribute(faces.slice(at, at + most * 3), 1));
    part.boundingSphere = geometry.boundingSphere;
    made.push(part);
  }
  return made;
}
