import { lazy } from '@tinwright/core/internal';
import { keptBy, type Mask } from '../part/mask.js';
import type { LineBench } from './bench.js';
import type { Prospect } from './station.js';
import { type Interval, stretchesFor } from './stretches.js';

/** Nothing is known to limit anything. */
export const OPEN: Prospect = { narrow: Infinity, room: Infinity };

/** The prospect of a line on a machine with tools side by side, each state looked at once. */
export function prospectBook(
  bench: () => Pick<LineBench<string>, 'sure' | 'certain'>,
  spans: readonly Interval[],
  gaps: { readonly end: number; readonly inner: number },
  length: number,
): (done: Mask) => Prospect | null {
  let kept: ((done: Mask) => Prospect | null) | null = null;
  return (done) => {
    kept ??= keptBy(bench().sure(), (own) => {
      const { stopped, takes } = bench().certain(own);
      if (stopped) return null;
      if (takes.length === 0) return OPEN;
      const free = stretchesFor(spans, takes, gaps, length);
      if ('bare' in free) return null;
      // what is open to one side may still be parted, and has then more room in all
      const rooms = free.stretches.map(({ from, to, most }) => (to - from < Infinity ? most : Infinity));
      return {
        narrow: Math.max(...free.stretches.map((s) => s.most)),
        room: rooms.reduce((a, b) => a + b, 0),
      };
    });
    return kept(done);
  };
}

/** The prospect of a line worked on by hand, each state looked at once. */
export function unlessStopped(
  bench: () => Pick<LineBench<string>, 'sure' | 'certain'>,
): (done: Mask) => Prospect | null {
  const kept = lazy(() => keptBy(bench().sure(), (own) => (bench().certain(own).stopped ? null : OPEN)));
  return (done) => kept()(done);
}
