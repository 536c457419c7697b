import type { Problem, Unit } from '@tinwright/core';
import { quoted, sayIn, stripOf } from '@tinwright/core/internal';
import { impossible } from './impossible.js';
import type { StripRow } from './strip-row.js';

/** Rows of one metal, thickness and radius: a job could not tell which to take. */
export function stripProblems(strips: readonly StripRow[], units: Unit): readonly Problem[] {
  const { size } = sayIn(units);
  return strips.flatMap((row, i): readonly Problem[] => {
    const first = stripOf(strips, row.material, row) as StripRow;
    if (first === row) return [];
    const { material, thickness, insideRadius } = row;
    const message = `${quoted(first.name)} is of ${material}, ${size(thickness)}, inside radius ${size(insideRadius)} too`;
    return [impossible(['strips', i], message, 'Keep the one that jobs shall take')];
  });
}
