import { remark } from '../errors/core-findings.js';
import type { Remark } from '../errors/finding.js';
import { COMPUTED } from '../errors/source.js';
import { polygonArea } from '../plane/convex.js';
import { contains, distanceToLoop } from '../plane/inside.js';
import { type Overlap, onFace, type StandingFace, seenOn } from './overlap.js';
import type { Seated } from './types.js';

const LET_PASS = 1; // mm; common practice, no source
const MOSTLY = 0.5; // of a face that lies on the other: less stands out on purpose

/** Said of the face that stands furthest past the other part's edge though most of it lies on it; between walls none does. */
export function overhangRemarks({ sites }: Seated, overlaps: readonly Overlap[]): readonly Remark[] {
  if (sites.every((s) => s.width !== null)) return [];
  const found = overlaps.flatMap(({ from, to, shape }) =>
    [[from, to] as const, [to, from] as const]
      .filter(([face]) => polygonArea(shape) > MOSTLY * Math.abs(polygonArea(face.panel.shape)))
      .map(([face, other]) => ({ face, other, past: pastEdge(face, other) })),
  );
  const worst = found.toSorted((a, b) => b.past - a.past)[0];
  if (worst === undefined || worst.past <= LET_PASS) return [];
  const { face, other, past } = worst;
  return [
    remark('joint-overhang', 'warning', {
      value: past,
      limit: LET_PASS,
      unit: 'mm',
      values: { panel: face.panel.id, piece: face.placed.piece, over: other.placed.piece },
      source: COMPUTED,
    }),
  ];
}

/** How far the outline of a face lies outside the other's, mm. */
function pastEdge(face: StandingFace, other: StandingFace): number {
  const loop = other.panel.shape.map((at) => ({ at, bulge: 0 }));
  const seen = face.panel.shape.map((p) => seenOn(other, onFace(face, p)));
  return Math.max(0, ...seen.filter((p) => !contains(loop, p)).map((p) => distanceToLoop(p, loop)));
}
