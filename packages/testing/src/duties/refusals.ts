import type { AnyFamily } from '@tinwright/core';
import type { Duty } from '../duty.js';
import { holds } from '../holds.js';
import { plannerOf } from '../plan-one.js';

const BAD = [-1, Number.NaN, Number.POSITIVE_INFINITY, 1e9, null, 'wide'];

/** What a family has to refuse, and how. */
export function refusalDuties(family: AnyFamily): readonly Duty[] {
  const { example } = family.describe;
  const { problems } = plannerOf(family);
  return [
    {
      title: 'an unknown parameter is refused with its nearest name',
      check: () => {
        const [first = ''] = Object.keys(example);
        const said = problems({ ...example, [`${first}x`]: 1 });
        const found = said.find((p) => p.code === 'key-unknown');
        holds(found?.fix.includes(`"${first}"`) ?? false, `not named: ${JSON.stringify(said)}`);
      },
    },
    {
      title: 'every size of the example at zero, below zero or not a number is refused by its path',
      check: () => {
        const numbers = Object.entries(example).filter(([, v]) => typeof v === 'number');
        for (const [key] of numbers)
          for (const bad of BAD) {
            const named = problems({ ...example, [key]: bad }).some((p) => p.path[2] === key);
            holds(named, `${key}: ${bad} is not refused`);
          }
      },
    },
  ];
}
