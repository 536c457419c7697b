import { sameHeading } from './turns.js';

/** An axis of the flat, and which end of it points to the operator. */
export interface OnAxis {
  readonly axis: number;
  readonly end: 0 | 1;
}

const FULL = 360;

/** The axis and its end by a heading, degrees; headings between which a part need not be turned are one. */
export function axesOf(headings: readonly number[]): ReadonlyMap<number, OnAxis> {
  const sorted = [...new Set(headings)].toSorted((a, b) => a - b);
  const groups: number[][] = [];
  for (const h of sorted) {
    const last = groups.at(-1);
    if (last !== undefined && sameHeading(last.at(-1) as number, h)) last.push(h);
    else groups.push([h]);
  }
  // the last may go on in the first
  const [first, last] = [groups[0], groups.at(-1)];
  if (
    first !== undefined &&
    last !== undefined &&
    first !== last &&
    sameHeading(last.at(-1) as number, first[0] as number)
  )
    first.push(...(groups.pop() as number[]));
  const opposite = groups.map((g) =>
    groups.findIndex((o) => g.some((a) => o.some((b) => sameHeading((a + FULL / 2) % FULL, b)))),
  );
  return new Map(
    groups.flatMap((g, i) => {
      const other = opposite[i] as number;
      const end = other >= 0 && other < i ? 1 : 0;
      return g.map((h) => [h, { axis: end === 1 ? other : i, end }] as const);
    }),
  );
}
