import type { Loop } from '@tinwright/core';
import type { Grain, Rack } from '../stock/sheet.js';

/** A part to be nested: the outline it is cut along, as drawn. mm. */
export interface NestPart {
  readonly part: string;
  readonly material: string;
  readonly thickness: number;
  /** Counter-clockwise. */
  readonly outline: Loop;
  /** Counter-clockwise, inside the outline. */
  readonly holes: readonly Loop[];
  readonly quantity: number;
  readonly grain: Grain;
}

/** What shall be nested, and how close. */
export interface NestAsk {
  readonly parts: readonly NestPart[];
  readonly rack: Rack;
  /** Least distance between two parts, mm, above 0. */
  readonly spacing: number;
  /** Least distance from a part to the edge of the usable sheet, mm, 0 or more. */
  readonly edge: number;
  /** Turns a part may lie at where grain allows, degrees. */
  readonly turns: readonly number[];
}

/** Quarter turns: what grain and a tidy sheet allow. */
export const QUARTER_TURNS: readonly number[] = Object.freeze([0, 90, 180, 270]);

/** The part that a piece is one of. @throws RangeError where it is not among them */
export function partOf(
  parts: readonly NestPart[],
  { part, id }: { readonly part: string; readonly id: string },
): NestPart {
  const found = parts.find((p) => p.part === part);
  if (found === undefined) throw new RangeError(`piece ${id}: no part "${part}" among those nested`);
  return found;
}
