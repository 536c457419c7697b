import type { Path } from '../../errors/problem.js';
import type { Sheet } from '../../fold/draft/tree.js';
import { type Given, value as v } from '../../schema/value.js';
import type { Complaint } from '../limits.js';

const MOST = 60;

/** A strip with parallel bends. Legs outside, to the outer tangent over 90°; mm, degrees. */
export const values = {
  width: v.size('width along the bends', { min: 1 }),
  legs: v.list(
    'outside legs in order, one more than there are bends; over 90° to the outer tangent',
    v.size(''),
    [2, MOST + 1],
  ),
  angles: v.list('bent through from flat, positive up, -180 to 180', v.angle('', -180, 180), [1, MOST]),
  insideRadii: v.maybe(
    v.list("one for all bends, or one each; the sheet's when left out", v.size('', { min: 0, max: 1000 }), [
      1,
      MOST,
    ]),
  ),
};

export type BentStripParams = Given<typeof values>;

/** Inside radius of bend `i`, mm. */
export function radiusAt({ insideRadii }: BentStripParams, i: number, sheet: Sheet): number {
  return insideRadii?.[insideRadii.length === 1 ? 0 : i] ?? sheet.insideRadius;
}

export function check(p: BentStripParams): readonly Complaint[] {
  const bends = p.angles.length;
  const radii = p.insideRadii?.length ?? 1;
  const many = (n: number, one: string, more: string) => `${n} ${n === 1 ? one : more}`;
  const counts: readonly Complaint[] = [
    ...(p.legs.length === bends + 1
      ? []
      : [
          count(
            ['legs'],
            `${many(p.legs.length, 'leg', 'legs')} given with ${many(bends, 'angle', 'angles')}`,
            `Give ${bends + 1} legs`,
          ),
        ]),
    ...(radii === 1 || radii === bends
      ? []
      : [
          count(
            ['insideRadii'],
            `${radii} radii given with ${many(bends, 'angle', 'angles')}`,
            `Give one, or ${bends}`,
          ),
        ]),
    ...p.angles.flatMap((a, i) =>
      a === 0 ? [count(['angles', i], '0 deg given', 'Leave the bend out, or bend it')] : [],
    ),
  ];
  return counts;
}

function count(path: Path, why: string, fix: string): Complaint {
  return { path, why, fix };
}
