import { type AnyFamily, type Problem, problemText } from '@tinwright/core';
import { withValue } from '@tinwright/core/internal';
import fc from 'fast-check';
import type { Duty } from '../duty.js';
import { holds } from '../holds.js';
import { paramsOf } from '../params-of.js';
import { type FamilyPlanner, type Params, plannerOf } from '../plan-one.js';
import { sheets } from '../sheets.js';

/** How many sets of parameters are tried, and where they start from. */
interface Runs {
  readonly numRuns: number;
  readonly seed: number;
}

/** Codes that sizes of a job never give: a pattern that is none is a fault of the family or the kernel. */
const FAULT = /^(flat|bend)-|^form-join/;
/**
 * Of random parts a tenth can be made, or the duties are held by too few: two standard deviations fewer may be chance,
 * which in twenty are all.
 */
const leastMade = (runs: number): number => runs / 10 - 2 * Math.sqrt(runs * 0.1 * 0.9);

/** What holds of random parameters. */
export function randomDuties(family: AnyFamily, runs: Runs): readonly Duty[] {
  const planner = plannerOf(family);
  return [
    {
      title:
        'random parameters make a verified part, or are refused by name with a size that works if there is one',
      check: () => {
        let made = 0;
        fc.assert(
          fc.property(paramsOf(family), sheets, (params, job) => {
            const said = planner.problems(params, { ...job }); // verifyFlat and verifyForm run inside
            if (said.length === 0) made += 1;
            for (const problem of said) {
              holds(problem.message !== '' && !FAULT.test(problem.code), problemText(problem));
              mends(planner, params, { ...job }, problem);
            }
          }),
          runs,
        );
        holds(made > leastMade(runs.numRuns), `${made} of ${runs.numRuns} random parts could be made`);
      },
    },
  ];
}

/** Throw where the size that a problem advises is refused by the same path. */
function mends({ problems }: FamilyPlanner, params: Params, job: Params, { path, fix }: Problem): void {
  const [, size] = /^Use ([\d.]+) mm or (?:less|more)$/.exec(fix) ?? [];
  if (size === undefined) return;
  const mended = withValue(params, path.slice(2), Number(size)) as Params;
  const same = problems(mended, job).find((q) => q.path.join() === path.join());
  holds(same === undefined, `${path.join('.')} of ${size} mm is refused too: ${same?.message}`);
}
