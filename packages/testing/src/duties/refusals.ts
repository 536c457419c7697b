import type { AnyFamily } from '@tinwright/core';
import type { Duty } from '../duty.js';
import { holds } from '../holds.js';
import { problemsOf } from '../plan-one.js';

const BAD = [-1, Number.NaN, Number.POSITIVE_INFINITY, 1e9, null, 'wide'];

/** What a family has to refuse, and how. */
export function refusalDuties(family: AnyFamily): readonly Duty[] {
  const { example } = family.describe;
  return [
    {
      title: 'an unknown parameter is refused with its nearest name',
      check: () => {
        const [first = ''] = Object.keys(example);
        const problems = problemsOf(family, { ...example, [`${first}x`]: 1 });
        const found = problems.find((p) => p.code === 'key-unknown');
        holds(found?.fix.includes(`"${first}"`) ?? false, `not named: ${JSON.stringify(problems)}`);
      },
    },
    {
      title: 'every size of the example at zero, below zero or not a number is refused by its path',
      check: () => {
        const numbers = Object.entries(example).filter(([, v]) => typeof v === 'number');
        for (const [key] of numbers)
          for (const bad of BAD) {
            const named = problemsOf(family, { ...example, [key]: bad }).some((p) => p.path[2] === key);
            holds(named, `${key}: ${bad} is not refused`);
          }
      },
    },
  ];
}
