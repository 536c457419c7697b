import { nearestSize, passing, stepOf } from '../advice/nearest-size.js';
import { valueAt, withValue } from '../advice/values.js';
import { inWords, type Path, type Refusal, type Say } from '../errors/problem.js';
import { LONGEST } from '../schema/kit.js';
import type { Complaint } from './limits.js';

/** Finds what is wrong with a family's parameters. */
export type Checker = (params: unknown) => readonly Complaint[];

/** Complaints as refusals, each with the nearest size that would work, found by trying it. */
export function advised(params: unknown, check: Checker): readonly Refusal[] {
  return check(params).map((complaint): Refusal => {
    const plain = refused(complaint, params);
    const { path, fix } = complaint;
    if (typeof valueAt(params, path) !== 'number' || fix !== undefined) return plain;
    return {
      ...plain,
      fix: (say) => {
        const near = nearestThatWorks(params, path, say, check);
        if (near === null) return 'No size works here while the others stay as they are';
        return `Use ${say.size(near.found)} or ${near.bound === 'most' ? 'less' : 'more'}`;
      },
    };
  });
}

/** A complaint as a refusal that names the size given, if it is one. */
export function refused({ path, why, fix = '' }: Complaint, params: unknown): Refusal {
  const given = valueAt(params, path);
  const code = 'size-impossible';
  if (typeof given !== 'number' || fix !== '') return { code, path, message: why, fix };
  return { code, path, message: (say) => `${say.size(given)} given, ${inWords(why, say)}`, fix };
}

/** The nearest value with which nothing is complained of, or at least nothing but what others were before. */
function nearestThatWorks(params: unknown, path: Path, { unit }: Say, check: Checker) {
  const given = valueAt(params, path) as number;
  const others = check(params).filter((c) => !samePath(c.path, path));
  const known = (c: Complaint) => others.some((o) => samePath(o.path, c.path));
  const search = (works: (cs: readonly Complaint[]) => boolean) =>
    nearestSize(
      given,
      passing((v) => works(check(withValue(params, path, v)))),
      { step: stepOf(unit), most: LONGEST },
    );
  return search((cs) => cs.length === 0) ?? search((cs) => cs.every(known));
}

const samePath = (a: Path, b: Path) => a.length === b.length && a.every((step, i) => step === b[i]);
