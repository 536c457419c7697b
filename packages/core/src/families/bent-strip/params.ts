import type { Problem } from '../../errors/problem.js';
import type { Sheet } from '../../fold/tree.js';
import type { ParamKit, Shape } from '../kit.js';
import { atLeast, LEAST_LEG, setback } from '../limits.js';

/** A strip with parallel bends. Legs outside, to the outer tangent over 90°; mm, degrees. */
export interface BentStripParams {
  readonly width: number;
  readonly legs: readonly number[];
  readonly angles: readonly number[];
  readonly insideRadii: readonly number[] | null;
}

const MOST = 60;

export function params(k: ParamKit): Shape<BentStripParams> {
  return {
    width: k.size(),
    legs: k.list(k.size(), 2, MOST + 1),
    angles: k.list(k.angle(-180, 180), 1, MOST),
    insideRadii: k.maybe(k.list(k.size({ min: 0, max: 1000 }), 1, MOST)),
  };
}

/** Inside radius of bend `i`, mm. */
export function radiusAt({ insideRadii }: BentStripParams, i: number, sheet: Sheet): number {
  return insideRadii?.[insideRadii.length === 1 ? 0 : i] ?? sheet.insideRadius;
}

export function check(p: BentStripParams, sheet: Sheet): readonly Problem[] {
  const counts = [
    ...(p.legs.length === p.angles.length + 1
      ? []
      : [
          count(
            ['legs'],
            `${p.legs.length} legs given with ${p.angles.length} angles`,
            `Give ${p.angles.length + 1} legs`,
          ),
        ]),
    ...(p.insideRadii === null || [1, p.angles.length].includes(p.insideRadii.length)
      ? []
      : [
          count(
            ['insideRadii'],
            `${p.insideRadii.length} radii given with ${p.angles.length} angles`,
            `Give one, or ${p.angles.length}`,
          ),
        ]),
    ...p.angles.flatMap((a, i) =>
      a === 0 ? [count(['angles', i], '0 deg given', 'Leave the bend out, or bend it')] : [],
    ),
  ];
  return counts.length > 0 ? counts : legProblems(p, sheet);
}

function legProblems(p: BentStripParams, sheet: Sheet): readonly Problem[] {
  const at = (i: number) => {
    const angle = p.angles[i];
    return angle === undefined ? 0 : setback(sheet, Math.abs(angle), radiusAt(p, i, sheet));
  };
  return p.legs.flatMap((leg, i) =>
    atLeast(['legs', i], leg, at(i - 1) + at(i) + LEAST_LEG, 'the bends at its ends take up more'),
  );
}

function count(path: readonly (string | number)[], message: string, fix: string): Problem {
  return { code: 'strip-count', path, message, fix };
}
