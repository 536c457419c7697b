import type { FormedBend, Vec3 } from '@tinwright/core';
import type { Standing } from '@tinwright/core/internal';
import { bendSurface, panelSurface, piecesOf, type Surface, type View } from '@tinwright/files/internal';
import type { Chunk, SolidView } from '../protocol.js';

/** Panels and bends of a part as it stands, each by itself so that a screen can light it. */
export function solidView(standing: Standing): SolidView {
  return {
    chunks: [
      ...standing.panels.map((p) => chunk(p.id, panelSurface(standing, p))),
      ...standing.bends.map((b) => chunk(b.id, bendSurface(b, along(b)))),
    ],
  };
}

/** Seen along its axis a bend shows no contour, which would be right for one view only. */
const along = ({ frame }: FormedBend): View => ({ across: frame.y, up: frame.z, viewer: frame.x });

function chunk(id: string, { facets, lines }: Surface): Chunk {
  const corners = [...facets].flatMap((facet) =>
    [...piecesOf(facet)].flatMap((c) =>
      c.slice(2).flatMap((p, i): readonly (readonly [Vec3, Vec3])[] => [
        [c[0] as Vec3, facet.normal],
        [c[i + 1] as Vec3, facet.normal],
        [p, facet.normal],
      ]),
    ),
  );
  const edges = [...lines].filter((l) => l.kind === 'edge');
  return {
    id,
    positions: floats(corners.map(([p]) => p)),
    normals: floats(corners.map(([, n]) => n)),
    edges: floats(edges.flatMap((e) => [e.from, e.to])),
  };
}

function floats(points: readonly Vec3[]): Float32Array {
  const all = new Float32Array(points.length * 3);
  for (const [i, p] of points.entries()) all.set(p, 3 * i);
  return all;
}
