import { type AnyFamily, pathText } from '@tinwright/core';
import { declaredAt, valueAt, withValue } from '@tinwright/core/internal';
import fc from 'fast-check';
import type { Duty } from '../duty.js';
import { holds, near } from '../holds.js';
import { paramsOf } from '../params-of.js';
import { type FamilyPlanner, type Params, plannerOf } from '../plan-one.js';

const MORE = 0.5; // mm

/** What holds of the sizes and sites a family offers to other parts. */
export function sizeDuties(family: AnyFamily): readonly Duty[] {
  const { example } = family.describe;
  const planner = plannerOf(family);
  return [
    {
      title: 'a derived size grows with the parameter it names, one to one or by the rate it says',
      check: () => {
        const { params, sheet } = planner.plan(example);
        for (const { name, value, follows, rate = 1 } of family.derived(params, sheet)) {
          const path = follows.split('.');
          const given = valueAt(params, path);
          holds(typeof given === 'number', `${name} follows ${follows}, which is no size of the example`);
          const more = withValue(params, path, (given as number) + MORE);
          const grown = family.derived(more, sheet).find((s) => s.name === name);
          near(grown?.value, value + rate * MORE, name);
        }
      },
    },
    {
      title: 'every name that the verbs are given, by or asked, is a parameter or a derived size',
      check: () => {
        const random = fc.sample(paramsOf(family), { numRuns: 20, seed: 1 });
        for (const given of [example, ...random])
          for (const name of misnamed(family, planner, given)) holds(false, `there is no parameter ${name}`);
      },
    },
    {
      title: 'sites have names of their own and stand on panels there are',
      check: () => {
        const { sites, panels } = planner.plan(example).part;
        const [names, ids] = [sites.map((s) => s.name), panels.map((p) => p.id)];
        holds(new Set(names).size === names.length, `two sites have one name: ${names.join(', ')}`);
        for (const { name, seat, faces } of sites)
          for (const panel of [seat.panel, ...faces.map((f) => f.panel)])
            holds(ids.includes(panel), `site ${name} stands on ${panel}, which is no panel`);
      },
    },
  ];
}

/** Names the verbs are given that are no parameter and no derived size; none where the part cannot be. */
function misnamed(family: AnyFamily, { plan, problems }: FamilyPlanner, given: Params): readonly string[] {
  if (problems(given).length > 0) return [];
  const { params, sheet } = plan(given);
  const derived = family.derived(params, sheet).map((s) => s.name);
  return family
    .named(params, sheet)
    .filter((path) => declaredAt(family.values, path) === null)
    .map(pathText)
    .filter((name) => !derived.includes(name));
}
