import type { Pose } from '@tinwright/core';
import type { Bytes } from '../out-file.js';
import type { Solid } from '../solid.js';
import type { Writer } from '../writer.js';
import { container } from './container.js';
import { type Mesh, meshOf, toGltf } from './mesh.js';

const FLOAT = 5126;
const VERTICES = 34962; // target of a view of vertex attributes
const GREY = 0.72;
const SHEET = {
  name: 'sheet',
  pbrMetallicRoughness: {
    baseColorFactor: [GREY, GREY, GREY, 1],
    metallicFactor: 0.6,
    roughnessFactor: 0.5,
  },
};

/** A mesh and its name. */
interface Named {
  readonly name: string;
  readonly mesh: Mesh;
}

/** A piece of the scene. */
interface Node {
  readonly name: string;
  readonly mesh: number;
  readonly matrix?: readonly number[];
}

/**
 * A solid as binary glTF 2.0: metres, +Y up, a node for every piece, a mesh for every part. Same solid, same bytes.
 */
export function toGlb({ name, pieces }: Solid): Bytes {
  const parts = [...new Map(pieces.map(({ part }) => [part.name, part])).values()];
  const names = parts.map((p) => p.name);
  return glb(
    name,
    parts.map((p) => ({ name: p.name, mesh: meshOf(p.formed) })),
    pieces.map(({ name: piece, part, pose }) => ({
      name: piece,
      mesh: names.indexOf(part.name),
      ...standing(pose),
    })),
  );
}

/** Binary glTF 2.0. */
export const GLB: Writer<Solid> = Object.freeze({
  format: 'glb',
  words: 'glTF',
  extension: 'glb',
  mediaType: 'model/gltf-binary',
  write: toGlb,
});

/** Positions and normals of every mesh one after the other in one buffer; two accessors and views a mesh. */
function glb(scene: string, meshes: readonly Named[], nodes: readonly Node[]): Bytes {
  const arrays = meshes.flatMap(({ mesh }) => [mesh.positions, mesh.normals]);
  const offsets: number[] = [];
  let length = 0;
  for (const { byteLength } of arrays) {
    offsets.push(length);
    length += byteLength;
  }
  const document = {
    asset: { version: '2.0', generator: 'Tinwright' },
    scene: 0,
    scenes: [{ name: scene, nodes: nodes.map((_, i) => i) }],
    nodes,
    meshes: meshes.map(({ name }, i) => ({
      name,
      primitives: [{ attributes: { POSITION: 2 * i, NORMAL: 2 * i + 1 }, material: 0 }],
    })),
    materials: [SHEET],
    accessors: arrays.map((array, i) => ({
      bufferView: i,
      componentType: FLOAT,
      count: array.length / 3,
      type: 'VEC3',
      ...(i % 2 === 0 ? extent(array) : {}),
    })),
    bufferViews: arrays.map((array, i) => ({
      buffer: 0,
      byteOffset: offsets[i],
      byteLength: array.byteLength,
      target: VERTICES,
    })),
    buffers: [{ byteLength: length }],
  };
  return container({ document, arrays });
}

/** Least and greatest of each coordinate, which the format asks of positions. */
function extent(array: Float32Array): { readonly min: readonly number[]; readonly max: readonly number[] } {
  const min = [Infinity, Infinity, Infinity];
  const max = [-Infinity, -Infinity, -Infinity];
  for (const [i, v] of array.entries()) {
    min[i % 3] = Math.min(min[i % 3] as number, v);
    max[i % 3] = Math.max(max[i % 3] as number, v);
  }
  return { min, max };
}

/** A node's matrix; the format wants none that moves nothing. */
function standing(pose: Pose | null): Pick<Node, 'matrix'> {
  const matrix = pose === null ? IDENTITY : matrixOf(pose);
  return matrix.every((v, i) => v === IDENTITY[i]) ? {} : { matrix };
}

const IDENTITY: readonly number[] = [1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1];

/** Column-major. The part's axes and the scene's are both turned: column k is where the turned axis k goes. */
function matrixOf({ x, y, z, origin }: Pose): readonly number[] {
  const unit = (v: readonly [number, number, number]) => toGltf([v[0] * 1000, v[1] * 1000, v[2] * 1000]);
  const [right, up, back] = [unit(x), unit(z), unit([-y[0], -y[1], -y[2]])];
  return [...right, 0, ...up, 0, ...back, 0, ...toGltf(origin), 1];
}
