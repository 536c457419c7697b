import { type HemSpec, hemFold, leastHemLength } from '../bending/hem.js';
import { outsideSetback } from '../bending/rule.js';
import type { Problem } from '../errors/problem.js';
import type { Sheet } from '../fold/tree.js';
import { plainNumber } from '../units/format.js';

/** Gap kept at corners when the job gives none, mm. Common practice, no source. */
export const CORNER_GAP = 0.5;

/** Least straight stretch a leg keeps between its bends, mm. Common practice, no source. */
export const LEAST_LEG = 0.5;

/** Setback of a bend of the sheet, mm. */
export function setback(sheet: Sheet, angle = 90, insideRadius: number = sheet.insideRadius): number {
  return outsideSetback({ thickness: sheet.thickness, insideRadius, angle });
}

/** `12.35 mm`, as limits are printed. */
export const mm = (v: number): string => `${plainNumber(v, 2)} mm`;

/** Down, or up, to the hundredth, so that the printed limit is itself allowed. */
export const floor2 = (v: number): number => Math.floor(v * 100 + 1e-6) / 100;
export const ceil2 = (v: number): number => Math.ceil(v * 100 - 1e-6) / 100;

/** A problem when a size is over its limit, saying the size that would work. */
export function atMost(
  path: readonly (string | number)[],
  value: number,
  limit: number,
  why: string,
): readonly Problem[] {
  const allowed = floor2(limit);
  if (value <= limit + 1e-9) return [];
  const fix = allowed > 0 ? `Use ${mm(allowed)} or less` : 'Make the parts beside it larger';
  return [{ code: 'size-too-large', path, message: `${mm(value)} given, ${why}`, fix }];
}

/** A problem when a size is under its limit, saying the size that would work. */
export function atLeast(
  path: readonly (string | number)[],
  value: number,
  limit: number,
  why: string,
): readonly Problem[] {
  if (value >= limit - 1e-9) return [];
  return [
    {
      code: 'size-too-small',
      path,
      message: `${mm(value)} given, ${why}`,
      fix: `Use ${mm(ceil2(limit))} or more`,
    },
  ];
}

/** A hem with a leg to hold, on a wall that leaves room for it beside the wall's own bend. */
export function hemFits(
  path: readonly (string | number)[],
  hem: HemSpec,
  sheet: Sheet,
  wall: { readonly height: number; readonly name: string; readonly bend: number },
): readonly Problem[] {
  const least = leastHemLength(hem, sheet.thickness);
  const most = wall.height - wall.bend - sheet.thickness;
  return [
    ...atLeast(
      [...path, 'length'],
      hem.length,
      least,
      `a ${hem.type} hem needs a straight leg past its fold`,
    ),
    ...atMost(
      [...path, 'length'],
      hem.length,
      most,
      `longer than the ${wall.name} of ${mm(wall.height)} has room for`,
    ),
  ];
}

/** Height of a folded hem over the face it lies on, mm. */
export function hemHeight(hem: HemSpec | null, thickness: number): number {
  return hem === null ? 0 : 2 * hemFold(hem, thickness).insideRadius + thickness;
}
