import type { Shop } from '@tinwright/shop';
import { planned } from '../../shops.js';
import { STRICT, testPart } from '../kit.js';

type Plan = ReturnType<typeof planned>;

/** A rule with a number, and a part that stands at it. */
export interface LimitCase {
  readonly code: string;
  readonly name: string;
  readonly part: (v: number) => Plan;
  readonly shop?: Shop;
  /** The size of the part at which it still passes. */
  readonly at: number;
  /** Past it the rule fails: below it, or above. */
  readonly fails: 'below' | 'above';
  readonly value: number;
  readonly limit: number;
  readonly severity: 'error' | 'warning' | 'note';
  readonly source: RegExp;
}

export const strip = (legs: readonly number[], angles: readonly number[], job: object = {}) =>
  planned({ family: 'bent-strip', width: 80, legs, angles }, job);
export const box = (more: object, job: object = {}) =>
  planned({ family: 'open-box', length: 200, width: 120, height: 50, ...more }, job);
export const holed = (part: object, job: object = {}) =>
  testPart({ family: 'holed-plate', from: 30, hole: 8, ...part }, job);
export const cut = (part: object, job: object = {}) =>
  testPart({ family: 'cut-plate', notch: 6, deep: 10, prong: 30, long: 20, ...part }, job);
export const noTable = { ...STRICT, table: null };
