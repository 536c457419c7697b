import type { Loop, Point, Segment } from '@tinwright/core';
import { distanceToLoop, meetings } from '@tinwright/core/internal';
import { between, middleOf, shareAt } from './run.js';
import { roundOf, type Shifted } from './shifted.js';

/** Rounding of distances, and the shortest piece that counts, mm. */
const ROUNDING = 1e-6;

/**
 * The border of all that is nearer to a loop than the distance, from sides that cross in any way: every moved side and
 * a round at every corner are cut where they meet, the pieces that keep the distance are joined again.
 */
export function untangled(loop: Loop, shifts: readonly Shifted[], by: number): readonly Loop[] {
  const runs = shifts.flatMap(({ side, moved, corner }, i): readonly Segment[] => {
    const next = shifts[(i + 1) % shifts.length]?.moved ?? null;
    const round =
      corner === 'opens' && moved !== null && next !== null
        ? [roundOf(side.to, moved.to, next.from, by)]
        : [];
    return [...(moved === null ? [] : [moved]), ...round];
  });
  const pieces = runs.flatMap((run, i) =>
    cutUp(
      run,
      runs.filter((_, j) => j !== i),
    ),
  );
  const kept = pieces.filter((p) => distanceToLoop(middleOf(p), loop) >= Math.abs(by) - ROUNDING);
  return joined(kept);
}

function cutUp(run: Segment, others: readonly Segment[]): readonly Segment[] {
  const points = others.flatMap((o) => meetings(run, o));
  const stops = points
    .map((p) => ({ p, share: shareAt(run, p) }))
    .filter(({ share }) => share > 0 && share < 1)
    .sort((a, b) => a.share - b.share);
  const all = [run.from, ...stops.map((s) => s.p), run.to];
  return all.slice(1).flatMap((to, i) => {
    const from = all[i] as Point;
    return far(from, to) < ROUNDING ? [] : [between(run, from, to)];
  });
}

const far = (a: Point, b: Point) => Math.sqrt((a[0] - b[0]) ** 2 + (a[1] - b[1]) ** 2);

/** Pieces joined end to end; what does not close is left out. */
function joined(pieces: readonly Segment[]): readonly Loop[] {
  const left = new Set(pieces);
  const loops: Loop[] = [];
  for (const first of pieces) {
    if (!left.has(first)) continue;
    const chain = [first];
    left.delete(first);
    for (let end = first.to; far(end, first.from) > 1e-4; ) {
      const next = nearest(left, end);
      if (next === undefined) break;
      left.delete(next);
      chain.push(next);
      end = next.to;
    }
    if (far((chain.at(-1) as Segment).to, first.from) <= 1e-4 && chain.length > 1)
      loops.push(chain.map((s) => ({ at: s.from, bulge: s.bulge })));
  }
  return loops;
}

function nearest(pieces: ReadonlySet<Segment>, end: Point): Segment | undefined {
  let best: Segment | undefined;
  for (const p of pieces)
    if (far(p.from, end) <= 1e-4 && (best === undefined || far(p.from, end) < far(best.from, end))) best = p;
  return best;
}
