import type { Problem } from '@tinwright/core';
import type { Blank } from './blank.js';

/** Pieces that are laid out at once: beyond it a plan takes minutes and gigabytes. */
const MOST_PIECES_CUT = 100_000;

/** What is wrong with an order of more pieces than are laid out at once; null where all is well. */
export function piecesProblem(blanks: readonly Pick<Blank, 'quantity'>[]): Problem | null {
  const all = blanks.reduce((sum, b) => sum + b.quantity, 0);
  if (all <= MOST_PIECES_CUT) return null;
  return {
    code: 'pieces-many',
    path: [],
    message: `${all} pieces to cut given, up to ${MOST_PIECES_CUT} allowed`,
    fix: 'Cut fewer sets, sizes or jobs at a time',
  };
}

/** @throws RangeError for a blank without a size, for a number of pieces that is none, and for too many of them */
export function checkBlanks(blanks: readonly Blank[]): void {
  for (const { part, x, y, thickness, quantity } of blanks) {
    for (const [name, size] of Object.entries({ x, y, thickness }))
      if (!(size > 0 && size < Infinity))
        throw new RangeError(`blank ${part}: ${name} ${size} mm given, more than 0 allowed`);
    if (!(Number.isInteger(quantity) && quantity >= 1))
      throw new RangeError(`blank ${part}: quantity ${quantity} given, a whole number from 1 allowed`);
  }
  const problem = piecesProblem(blanks);
  if (problem !== null) throw new RangeError(problem.message);
}
