import type { Horns } from '../../machines/shop.js';
import type { Stretch } from './station.js';

/** Stretches between the horns that stand at either end of them all: what is left for the other pieces. @param most mm that fit the machine */
export const betweenHorns = (
  stretches: readonly Stretch[],
  { widths }: Horns,
  most: number,
): readonly Stretch[] =>
  stretches.map((s, i) => {
    const [left, right] = endsAt(i, stretches.length, widths);
    const both = left + right;
    return {
      ...s,
      from: s.from + left,
      to: s.to - right,
      least: Math.max(0, s.least - both),
      most: Math.min(s.most, most) - both,
      covered: s.covered - both,
    };
  });

/** The same stretches from foot to foot. */
export const withHorns = (stretches: readonly Stretch[], { widths }: Horns): readonly Stretch[] =>
  stretches.map((s, i) => {
    const [left, right] = endsAt(i, stretches.length, widths);
    const both = left + right;
    return {
      ...s,
      from: s.from - left,
      to: s.to + right,
      least: s.least + both,
      most: s.most + both,
      covered: s.covered + both,
    };
  });

/** Pieces of every stretch from left to right, the horns with them. */
export const hornsBeside = (
  pieces: readonly (readonly number[])[],
  { widths: [left, right] }: Horns,
): readonly (readonly number[])[] =>
  pieces.map((p, i) => [...(i === 0 ? [left] : []), ...p, ...(i === pieces.length - 1 ? [right] : [])]);

const endsAt = (i: number, count: number, [left, right]: Horns['widths']) =>
  [i === 0 ? left : 0, i === count - 1 ? right : 0] as const;
