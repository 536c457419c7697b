import {
  BufferAttribute,
  BufferGeometry,
  Group,
  type LineBasicMaterial,
  LineSegments,
  type Material,
  Matrix4,
  Mesh,
} from 'three';
import type { Chunk, SolidView } from '../protocol.js';

/** A piece to show and where it stands. */
export interface Piece {
  readonly name: string;
  readonly part: string;
  readonly solid: SolidView;
  readonly matrix: readonly number[] | null;
}

/** A piece on the screen: one surface and one set of edges, however many panels and bends it has. */
export interface PieceMesh {
  readonly group: Group;
  readonly piece: Piece;
  /** Light a panel or bend, or nothing. */
  readonly light: (id: string | null) => void;
  /** What a face of the surface belongs to. */
  readonly idOf: (face: number) => string;
  readonly dispose: () => void;
}

/** @param paints that of the sheet and that of what is lit */
export function pieceMesh(
  piece: Piece,
  paints: readonly [Material, Material],
  line: LineBasicMaterial,
): PieceMesh {
  const { chunks } = piece.solid;
  const faces = new BufferGeometry();
  faces.setAttribute('position', joined(chunks, 'positions'));
  faces.setAttribute('normal', joined(chunks, 'normals'));
  const rims = new BufferGeometry();
  rims.setAttribute('position', joined(chunks, 'edges'));
  const group = new Group();
  group.add(new Mesh(faces, [...paints]), new LineSegments(rims, line));
  if (piece.matrix !== null) group.applyMatrix4(new Matrix4().fromArray(piece.matrix));
  return {
    group,
    piece,
    light: (id) => {
      faces.clearGroups();
      let start = 0;
      for (const chunk of chunks) {
        const count = chunk.positions.length / 3;
        const paint = chunk.id === id ? 1 : 0;
        const last = faces.groups.at(-1);
        if (last?.materialIndex === paint) last.count += count;
        else faces.addGroup(start, count, paint);
        start += count;
      }
    },
    idOf: (face) => {
      let left = 3 * face;
      const at = chunks.findIndex((chunk) => {
        left -= chunk.positions.length / 3;
        return left < 0;
      });
      return chunks[at]?.id ?? '';
    },
    dispose: () => {
      faces.dispose();
      rims.dispose();
    },
  };
}

/** One array of all chunks, three floats a corner. */
function joined(chunks: readonly Chunk[], key: 'positions' | 'normals' | 'edges'): BufferAttribute {
  const all = new Float32Array(chunks.reduce((length, chunk) => length + chunk[key].length, 0));
  let at = 0;
  for (const chunk of chunks) {
    all.set(chunk[key], at);
    at += chunk[key].length;
  }
  return new BufferAttribute(all, 3);
}
