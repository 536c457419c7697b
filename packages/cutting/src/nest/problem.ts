import type { Region } from '../no-fit/ring.js';
import type { Laid } from './floor.js';
import type { NestItem } from './kit.js';

/** Stock of one kind for the kernel: a rectangle from (0, 0) and what it lacks. mm. */
export interface BedKind {
  readonly x: number;
  readonly y: number;
  /** What no piece may lie on. */
  readonly lacks: readonly Region[];
  /** Area that can be used, mm². */
  readonly area: number;
  /** How many there are. */
  readonly count: number;
  /** Offcuts are used first. */
  readonly origin: 'sheet' | 'offcut';
  /** Of one; money or, where nobody said, area. */
  readonly cost: number;
  /** Turns each item may lie at on it; none where it may not. */
  readonly turns: readonly (readonly number[])[];
}

/** A nest of one metal, ready for the kernel. */
export interface NestProblem {
  readonly items: readonly NestItem[];
  /** How many of each item. */
  readonly quantities: readonly number[];
  readonly kinds: readonly BedKind[];
}

/** A bed in use: what lies where. */
export interface FilledBed {
  readonly kind: number;
  readonly laid: readonly Laid[];
}

/** Beds in use, and how many of each item found no room. */
export interface NestLayout {
  readonly beds: readonly FilledBed[];
  readonly left: readonly number[];
}
