import type { AnyFamily } from '@tinwright/core';
import { valueAt, withValue } from '@tinwright/core/internal';
import type { Duty } from '../duty.js';
import { holds, near } from '../holds.js';
import { planOne } from '../plan-one.js';

const MORE = 0.5; // mm

/** What holds of the sizes and sites a family offers to other parts. */
export function sizeDuties(family: AnyFamily): readonly Duty[] {
  const { example } = family.describe;
  return [
    {
      title: 'a derived size grows with the parameter it names, one to one',
      check: () => {
        const { params, sheet } = planOne(family, example);
        for (const { name, value, follows } of family.derived(params, sheet)) {
          const path = follows.split('.');
          const given = valueAt(params, path);
          holds(typeof given === 'number', `${name} follows ${follows}, which is no size of the example`);
          const more = withValue(params, path, (given as number) + MORE);
          const grown = family.derived(more, sheet).find((s) => s.name === name);
          near(grown?.value, value + MORE, name);
        }
      },
    },
    {
      title: 'sites have names of their own and stand on panels there are',
      check: () => {
        const { sites, panels } = planOne(family, example).part;
        const [names, ids] = [sites.map((s) => s.name), panels.map((p) => p.id)];
        holds(new Set(names).size === names.length, `two sites have one name: ${names.join(', ')}`);
        for (const { name, seat, faces } of sites)
          for (const panel of [seat.panel, ...faces.map((f) => f.panel)])
            holds(ids.includes(panel), `site ${name} stands on ${panel}, which is no panel`);
      },
    },
  ];
}
