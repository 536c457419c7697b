import type { Point, Vec3 } from '@tinwright/core';
import type { Standing } from '@tinwright/core/internal';
import type { Facet, View } from '@tinwright/files/internal';
import { partSurface, type VisibleLine, visibleLines } from '@tinwright/files/internal';

/** From the operator's left: x to the right, z up. */
export const ALONG: View = { across: [1, 0, 0], up: [0, 0, 1], viewer: [0, -1, 0] };

const PAST = 0.05; // mm behind the cut

/** Edges of a part that are seen behind a cut at y, in front of which `cuts` stand: metal and tools. */
export function edgesBeyond(
  standing: Standing,
  y: number,
  cuts: readonly (readonly Point[])[],
): readonly VisibleLine[] {
  const { facets, lines } = partSurface(standing, ALONG);
  const behind = [...lines]
    .filter((l) => l.kind === 'edge')
    .flatMap((l) => {
      const [from, to] = [l.from, l.to].toSorted((a, b) => a[1] - b[1]) as [Vec3, Vec3];
      if (to[1] <= y + PAST) return [];
      return [{ ...l, from: from[1] >= y + PAST ? from : cutAt(from, to, y + PAST), to }];
    });
  const faces = [...facets].flatMap(({ corners, normal, holes }): readonly Facet[] => {
    const left = clipped(corners, y + PAST);
    if (left.length < 3) return [];
    return [{ corners: left, normal, ...(holes && { holes: holes.map((h) => clipped(h, y + PAST)) }) }];
  });
  const front = cuts.map((c): Facet => ({ corners: c.map(([x, z]): Vec3 => [x, y, z]), normal: [0, -1, 0] }));
  return visibleLines({ facets: [...faces, ...front], lines: behind }, ALONG);
}

function cutAt(p: Vec3, q: Vec3, y: number): Vec3 {
  const t = (y - p[1]) / (q[1] - p[1]);
  return [p[0] + (q[0] - p[0]) * t, y, p[2] + (q[2] - p[2]) * t];
}

function clipped(corners: readonly Vec3[], y: number): readonly Vec3[] {
  return corners.flatMap((p, i): readonly Vec3[] => {
    const q = corners[(i + 1) % corners.length] as Vec3;
    const crossing = p[1] >= y !== q[1] >= y ? [cutAt(p, q, y)] : [];
    return p[1] >= y ? [p, ...crossing] : crossing;
  });
}
