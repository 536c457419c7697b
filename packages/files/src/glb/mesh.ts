import type { Formed, Vec3 } from '@tinwright/core';
import { partSurface } from '../picture/part-surface.js';
import { ISOMETRIC } from '../picture/view.js';

/** Triangles of a part with a normal at every corner, metres, +Y up, right-handed. */
export interface Mesh {
  readonly positions: Float32Array<ArrayBuffer>;
  readonly normals: Float32Array<ArrayBuffer>;
}

/** From millimetres with z up to the axes and metres of glTF: (x, y, z) becomes (x, z, −y) / 1000. */
export const toGltf = ([x, y, z]: Vec3): Vec3 => [x / 1000, z / 1000, -y / 1000];

const LEAST_AREA = 1e-9; // mm²; thinner triangles have no normal

/** The surface of a formed part as triangles, real thickness and bend radii; each facet fans out from a corner. */
export function meshOf(formed: Formed): Mesh {
  const positions: number[] = [];
  const normals: number[] = [];
  for (const { corners, normal } of partSurface(formed, ISOMETRIC).facets) {
    const length = Math.hypot(...normal);
    const [nx, ny, nz] = [normal[0] / length, normal[2] / length, -normal[1] / length];
    for (let i = 1; i + 1 < corners.length; i++) {
      const triangle = [corners[0], corners[i], corners[i + 1]] as readonly Vec3[];
      if (doubleArea(triangle) < LEAST_AREA) continue;
      for (const p of triangle) {
        positions.push(...toGltf(p));
        normals.push(nx, ny, nz);
      }
    }
  }
  return { positions: new Float32Array(positions), normals: new Float32Array(normals) };
}

function doubleArea([a, b, c]: readonly Vec3[]): number {
  if (a === undefined || b === undefined || c === undefined) return 0;
  const [u, v] = [
    b.map((x, k) => x - (a[k] as number)),
    c.map((x, k) => x - (a[k] as number)),
  ] as unknown as [Vec3, Vec3];
  return Math.hypot(u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]);
}
