import type { Formed, Vec3 } from '@tinwright/core';
import { cross3, sub3 } from '@tinwright/core/internal';
import { partSurface } from '../picture/part-surface.js';
import { piecesOf } from '../picture/surface.js';
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
  const { facets } = partSurface(formed, ISOMETRIC);
  let most = 0;
  for (const facet of facets) for (const corners of piecesOf(facet)) most += 9 * (corners.length - 2);
  const positions = new Float32Array(most);
  const normals = new Float32Array(most);
  let count = 0;
  for (const facet of facets) {
    const { normal } = facet;
    const length = Math.hypot(...normal);
    const upright: Vec3 = [normal[0] / length, normal[2] / length, -normal[1] / length];
    for (const corners of piecesOf(facet))
      for (const triangle of fan(corners)) {
        if (doubleArea(triangle) < LEAST_AREA) continue;
        for (const p of triangle) {
          positions.set(toGltf(p), count);
          normals.set(upright, count);
          count += 3;
        }
      }
  }
  return { positions: positions.subarray(0, count), normals: normals.subarray(0, count) };
}

type Triangle = readonly [Vec3, Vec3, Vec3];

const fan = (corners: readonly Vec3[]): readonly Triangle[] =>
  corners.slice(2).map((c, i) => [corners[0] as Vec3, corners[i + 1] as Vec3, c]);

const doubleArea = ([a, b, c]: Triangle) => Math.hypot(...cross3(sub3(b, a), sub3(c, a)));
