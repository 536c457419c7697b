import type { PartPlan, Point } from '@tinwright/core';
import { distance } from '@tinwright/core/internal';
import type { BendStep, Sequence } from '@tinwright/shop';

/**
 * For each step of an order the first one that is the same stroke on another line, the other hem or the other end: done
 * with the same machine, settings and tools on bends as long and flanges as deep; null where it is the first of its kind.
 */
export function twinsOf({ flat }: PartPlan, { steps }: Pick<Sequence, 'steps'>): readonly (number | null)[] {
  const keys = steps.map((s) => keyOf(s, flat));
  return keys.map((key, i) => {
    const first = keys.indexOf(key);
    return first === i ? null : first;
  });
}

const round = (_: string, v: unknown) => (typeof v === 'number' ? Math.round(v * 100) / 100 : v);

function keyOf(step: BendStep, flat: PartPlan['flat']): string {
  const { bends, held, beside, towards, handling, heading, sight, seconds, touches, ...same } = step;
  const lines = bends
    .map((id) => {
      const bend = flat.bends.find((b) => b.id === id);
      const shape = flat.panels.find((p) => p.id === id)?.shape ?? [];
      return bend === undefined ? [] : [distance(...bend.line), depth(bend.line, shape)];
    })
    .toSorted((a, b) => (a[0] ?? 0) - (b[0] ?? 0));
  return JSON.stringify([same, touches?.by ?? null, towards.roughly, beside.length, lines], round);
}

/** How far a panel reaches from a line. */
function depth([p, q]: readonly [Point, Point], shape: readonly Point[]): number {
  const length = distance(p, q);
  const off = ([x, y]: Point) => Math.abs((q[0] - p[0]) * (y - p[1]) - (q[1] - p[1]) * (x - p[0])) / length;
  return Math.max(0, ...shape.map(off));
}
