import { frozen } from '../units/frozen.js';

/** From and to, mm. */
export type GripSpan = readonly [number, number];

/** A length of blind rivet and the stacks it holds, by diameter. mm */
export interface GripRow {
  readonly length: number;
  readonly spans: Readonly<Partial<Record<GripColumn, GripSpan>>>;
  /** False for a row from memory. */
  readonly read: boolean;
}

/** Diameters the standard gives grips for, mm. */
export type GripColumn = '2.4' | '3.2' | '4' | '4.8' | '6.4';

/**
 * Open blind rivets of aluminium, protruding head: stacks each length holds.
 * Source: ISO 15981; lengths 6 to 12 read in a copy, columns inferred; the others from memory: their greatest stack is
 * the length less 3, 3.5, 4 and 6 mm, as in the rows read.
 */
export const ISO_15981_GRIPS: readonly GripRow[] = frozen([
  { length: 5, read: false, spans: { '3.2': [0.5, 1.5] } },
  {
    length: 6,
    read: true,
    spans: { '2.4': [0.5, 3], '3.2': [1.5, 3.5], '4': [1, 3], '4.8': [1.5, 2.5] },
  },
  { length: 8, read: true, spans: { '3.2': [3.5, 5], '4': [3, 5], '4.8': [2.5, 4] } },
  { length: 10, read: true, spans: { '3.2': [5, 7], '4': [5, 6.5], '4.8': [4, 6] } },
  {
    length: 12,
    read: true,
    spans: { '2.4': [6, 9], '3.2': [7, 9], '4': [6.5, 8.5], '4.8': [6, 8], '6.4': [3, 6] },
  },
  { length: 14, read: false, spans: { '3.2': [9, 11], '4': [8.5, 10.5], '4.8': [8, 10] } },
  { length: 16, read: false, spans: { '3.2': [11, 13], '4': [10.5, 12.5], '4.8': [10, 12], '6.4': [6, 10] } },
  { length: 18, read: false, spans: { '4': [12.5, 14.5], '4.8': [12, 14] } },
  { length: 20, read: false, spans: { '4': [14.5, 16.5], '4.8': [14, 16], '6.4': [10, 14] } },
  { length: 25, read: false, spans: { '4': [16.5, 21.5], '4.8': [16, 21], '6.4': [14, 19] } },
  { length: 30, read: false, spans: { '4.8': [21, 26], '6.4': [19, 24] } },
]);

/** Stacks that some length of a diameter holds: spans with nothing between them. mm */
export function gripsOf(column: GripColumn): readonly GripSpan[] {
  const joined: GripSpan[] = [];
  for (const { spans } of ISO_15981_GRIPS) {
    const [span, last] = [spans[column], joined.at(-1)];
    if (span === undefined) continue;
    if (last !== undefined && span[0] <= last[1])
      joined[joined.length - 1] = [last[0], Math.max(last[1], span[1])];
    else joined.push(span);
  }
  return joined;
}
