import type { Grain } from './sheet.js';

/** A rectangle to be sheared for a part, mm. */
export interface Blank {
  /** Name of the part; its pieces are called `PART-1`, `PART-2`, … */
  readonly part: string;
  /** Name of a row of the materials table. */
  readonly material: string;
  /** mm */
  readonly thickness: number;
  readonly x: number;
  readonly y: number;
  /** How many. */
  readonly quantity: number;
  /** How the rolling lines shall run on the blank; null where it may be turned freely. */
  readonly grain: Grain;
}

/** True when blanks of this part may be cut from that sheet at all: same metal, same thickness. */
export function sameMetal(
  a: { readonly material: string; readonly thickness: number },
  b: { readonly material: string; readonly thickness: number },
): boolean {
  return a.material === b.material && Math.abs(a.thickness - b.thickness) < 1e-6;
}

/** Name of one piece of a part. @param index counted from 0 */
export function pieceId(part: string, index: number): string {
  return `${part}-${index + 1}`;
}
