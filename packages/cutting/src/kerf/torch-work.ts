import { type Segment, segments } from '@tinwright/core';
import { distance, segmentLength } from '@tinwright/core/internal';
import type { Contour } from './contour.js';
import { type TorchRates, torchMinutes } from './torch-minutes.js';

/** What a torch has to do. mm, minutes by rates */
export interface TorchWork {
  /** Length cut, ways in and out with it, micro-joints without. */
  readonly length: number;
  /** Length that cuts common to two parts spare. */
  readonly spared: number;
  /** Starts in whole metal, and in a cut that is there already. */
  readonly pierces: number;
  readonly starts: number;
  readonly minutes: number;
}

/** Sum up cuts; a start in a cut counts as long as a pierce. */
export function torchWork(contours: readonly Contour[], rates: TorchRates): TorchWork {
  const sum = (of: (c: Contour) => number) => contours.reduce((all, c) => all + of(c), 0);
  const far = (sides: readonly (Segment | null)[]) =>
    sides.reduce((all, s) => all + (s === null ? 0 : segmentLength(s)), 0);
  const spared = sum(({ loop, runs }) => (runs === undefined ? 0 : far(segments(loop)) - far(runs.flat())));
  const length = sum(
    ({ loop, runs, leadIn, leadOut, ties }) =>
      far(runs?.flat() ?? segments(loop)) +
      far([leadIn, leadOut]) -
      ties.reduce((gaps, [a, b]) => gaps + distance(a, b), 0),
  );
  const pierces = contours.filter((c) => c.runs === undefined).length;
  const starts = sum((c) => c.runs?.length ?? 0);
  const minutes = torchMinutes(length, pierces + starts, rates);
  return { length, spared, pierces, starts, minutes };
}
