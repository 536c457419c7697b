import type { PartPlan, Point } from '@tinwright/core';
import { distance } from '@tinwright/core/internal';
import type { BendStep } from '@tinwright/shop';

/**
 * The same text for the same stroke on another line of a part, the other hem or the other end: done with the same machine,
 * settings and tools on bends as long and flanges as deep. A hem under fingers that may stand anywhere is the same stroke
 * on every part of that sheet, however long and deep.
 */
export function strokeKey({ name, flat }: PartPlan, step: BendStep): string {
  const {
    bends,
    held,
    gripped,
    beside,
    towards,
    handling,
    heading,
    sight,
    seconds,
    touches,
    length,
    ...same
  } = step;
  const set = [same, touches?.by ?? null, towards.roughly, flat.thickness];
  const anywhere = (step.action === 'fold' || step.action === 'close') && step.tools === null;
  if (anywhere && step.machine === 'brake') return JSON.stringify(set, round);
  const lines = bends
    .map((id) => {
      const bend = flat.bends.find((b) => b.id === id);
      const shape = flat.panels.find((p) => p.id === id)?.shape ?? [];
      return bend === undefined ? [] : [distance(...bend.line), depth(bend.line, shape)];
    })
    .toSorted((a, b) => (a[0] ?? 0) - (b[0] ?? 0));
  return JSON.stringify([...set, name, length, beside.length, lines], round);
}

const round = (_: string, v: unknown) => (typeof v === 'number' ? Math.round(v * 100) / 100 : v);

/** How far a panel reaches from a line. */
function depth([p, q]: readonly [Point, Point], shape: readonly Point[]): number {
  const length = distance(p, q);
  const off = ([x, y]: Point) => Math.abs((q[0] - p[0]) * (y - p[1]) - (q[1] - p[1]) * (x - p[0])) / length;
  return Math.max(0, ...shape.map(off));
}
