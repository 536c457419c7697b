import type { Path } from '../../errors/problem.js';
import type { Sheet } from '../../fold/tree.js';
import { type Given, value as v } from '../../schema/value.js';
import { type Complaint, LEAST_LEG, need, reaches, setback } from '../limits.js';

const MOST = 60;

/** A strip with parallel bends. Legs outside, to the outer tangent over 90°; mm, degrees. */
export const values = {
  width: v.size('along the bends'),
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

export function check(p: BentStripParams, sheet: Sheet): readonly Complaint[] {
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
  return counts.length > 0 ? counts : legsReach(p, sheet);
}

function legsReach(p: BentStripParams, sheet: Sheet): readonly Complaint[] {
  const at = (i: number) => {
    const angle = p.angles[i];
    return angle === undefined ? 0 : setback(sheet, Math.abs(angle), radiusAt(p, i, sheet));
  };
  return p.legs.flatMap((leg, i) =>
    need(reaches(leg, at(i - 1) + at(i) + LEAST_LEG), ['legs', i], 'the bends at its ends take up more'),
  );
}

function count(path: Path, why: string, fix: string): Complaint {
  return { path, why, fix };
}
