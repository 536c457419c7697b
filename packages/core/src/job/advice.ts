import { type SizeAdvice, sizeAdvice } from '../advice/advice.js';
import { type Found, nearestSize, passing, type SearchBudget, stepOf } from '../advice/nearest-size.js';
import { type Leaf, sizesIn, valueAt, withValue } from '../advice/values.js';
import { JobError, type Path, pathText, type Refusal, type Say } from '../errors/problem.js';
import { withGiven } from '../families/refused.js';
import { LONGEST } from '../schema/kit.js';
import { declaredAt } from '../schema/value.js';
import type { Unit } from '../units/length.js';
import type { JobPart } from './job.js';

const MOST_SIZES = 32; // of a part whose sizes are all tried: the larger it is, the longer each try takes

/** Tries a part with other parameters. @throws JobError when it cannot be */
export type Attempt = (part: JobPart) => unknown;

/**
 * Refusals of a part with the nearest size that would work, each found by making the part with it. What nobody could
 * say a parameter for gets the one that has to change least.
 */
export function withAdvice(
  part: JobPart,
  refusals: readonly Refusal[],
  unit: Unit,
  attempt: Attempt,
): readonly Refusal[] {
  const problems = (params: unknown) => problemsOf({ ...part, params, asMade: params }, attempt);
  const budget: SearchBudget = { step: stepOf(unit), most: LONGEST };
  const lengths = sizesIn(part.params).filter(
    ({ path }) => declaredAt(part.family.values, path)?.unit === 'mm',
  );
  const before = (f: Refusal) => refusals.some((r) => r.code === f.code && samePath(r.path, f.path));
  const nearest = ({ path, given }: Leaf<number>) => {
    const search = (works: (found: readonly Refusal[]) => boolean) =>
      nearestSize(
        given,
        passing((v) => works(problems(withValue(part.params, path, v)))),
        budget,
      );
    // where nothing makes all of it right, what was wrong elsewhere may stay so; nothing else may be wrong then
    return (
      search((found) => found.length === 0) ??
      search((found) => found.every((f) => f.path.length > 0 && !samePath(f.path, path) && before(f))) ??
      (problems(withValue(part.params, path, 0)).length === 0 ? ({ found: 0, bound: 'most' } as const) : null)
    );
  };
  // another place for what is refused, else another size of it: whichever changes least
  const inGroup = (group: Path): SizeAdvice | null => {
    const own = lengths.filter((l) => starts(l.path, group));
    const moves = own.filter((l) => l.path.includes('from'));
    const room = (params: unknown) => {
      const found = problems(params);
      return found.length < refusals.length && found.every((f) => before(f) && !starts(f.path, group))
        ? 0
        : null;
    };
    const tried = (list: readonly Leaf<number>[]) => sizeAdvice(part.params, room, () => budget, list)[0];
    return tried(moves) ?? tried(own.filter((l) => !moves.includes(l))) ?? elsewhere(group, room);
  };
  /** A distance from an edge that an opening says nothing of yet. */
  const elsewhere = (group: Path, room: (params: unknown) => 0 | null): SizeAdvice | null => {
    if (group.length !== 2 || group[0] !== 'cutouts') return null;
    const from = [...group, 'from'];
    const given = Object.keys(valueAt(part.params, from) ?? {});
    for (const path of EDGES.filter((e) => !given.includes(e)).map((edge) => [...from, edge])) {
      const at = (v: number) => withValue(part.params, path, v);
      if (problems(at(1)).some((f) => NO_PLACE.includes(f.code))) continue;
      const found = nearestSize(1, (v) => room(at(v)), budget);
      if (found !== null) return { path, given: 1, ...found };
    }
    return null;
  };
  const every = (): SizeAdvice | null => {
    if (lengths.length > MOST_SIZES) return null;
    const room = (params: unknown) => (problems(params).length === 0 ? 0 : null);
    return sizeAdvice(part.params, room, () => budget, lengths)[0] ?? null;
  };
  return refusals.map((refusal): Refusal => {
    if (refusal.fix !== '') return refusal;
    const blamed = lengths.find((l) => samePath(l.path, refusal.path));
    const own = blamed === undefined ? null : nearest(blamed);
    if (own !== null) return { ...refusal, fix: (say) => use(say, '', own) };
    const best = inGroup(refusal.path) ?? (refusals.length === 1 ? every() : null);
    if (best === null) return { ...refusal, fix: STAY_CLEAR.includes(refusal.code) ? CLEAR : NOTHING };
    const { path } = best;
    if (refusal.path.length === 0)
      return {
        ...withGiven({ ...refusal, path }, part.params),
        fix: (say) => use(say, '', best),
      };
    return { ...refusal, fix: (say) => use(say, `${pathText(path)} of `, best) };
  });
}

const EDGES = ['west', 'south', 'east', 'north', 'far'];
const NO_PLACE = ['edge-unknown', 'place-edges'];
const NOTHING = 'No size works here while the others stay as they are';
const STAY_CLEAR = ['form-clash', 'flat-crosses'];
const CLEAR = 'Change the sizes so that they stay clear of each other';
const use = ({ size }: Say, what: string, { found, bound }: Found) =>
  `Use ${what}${size(found)}${found === 0 ? '' : ` or ${bound === 'most' ? 'less' : 'more'}`}`;
/** True for a way that leads through another, which leads somewhere. */
const starts = (path: Path, by: Path) => by.length > 0 && by.every((step, i) => step === path[i]);
const samePath = (a: Path, b: Path) => a.length === b.length && a.every((step, i) => step === b[i]);

function problemsOf(part: JobPart, attempt: Attempt): readonly Refusal[] {
  try {
    attempt(part);
    return [];
  } catch (error) {
    if (!(error instanceof JobError)) throw error;
    return error.refusals;
  }
}
