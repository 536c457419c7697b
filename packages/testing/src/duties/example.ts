import { type AnyFamily, MM_PER_INCH } from '@tinwright/core';
import { declaredAt, sizesIn, withValue } from '@tinwright/core/internal';
import type { Duty } from '../duty.js';
import { holds, near } from '../holds.js';
import { type Params, plannerOf } from '../plan-one.js';
import { bendings } from '../sheets.js';
import { verifyPlan } from '../verify-plan.js';

/** What holds of the example of a family. */
export function exampleDuties(family: AnyFamily): readonly Duty[] {
  const { example, sizes, title, summary } = family.describe;
  const { plan } = plannerOf(family);
  return [
    {
      title: 'every parameter of the example has words, title and summary are there',
      check: () => {
        holds(title !== '' && summary !== '', 'the title or the summary is empty');
        for (const path of pathsIn(example)) holds(path in sizes, `there are no words for ${path}`);
      },
    },
    ...bendings.map((bending) => ({
      title: `the example comes out at the sizes asked under ${JSON.stringify(bending)}`,
      check: () => {
        const made = plan(example, { bending });
        holds(made.part.asked.length > 0, 'no size is asked for: say each with asked(…)');
        const flaws = verifyPlan(made).map((f) => f.message);
        holds(flaws.length === 0, flaws.join('; '));
      },
    })),
    {
      title: 'laid out nominally the example is still a sound pattern',
      check: () => {
        const { flat } = plan(example, { bending: { rule: 'nominal' } });
        holds(
          flat.bends.every(({ terms, zone }) => terms.allowance === 0 && terms.deduction === 0 && zone > 0),
          'the nominal rule adds or takes off something, or no metal bends',
        );
      },
    },
    {
      title: 'same parameters, same result',
      check: () => {
        const text = () => {
          const { flat, formed } = plan(example);
          return JSON.stringify([flat, formed]);
        };
        const [first, second] = [text(), text()];
        holds(first === second, 'two runs differ');
      },
    },
    {
      title: 'in inches the example makes the same part',
      check: () => {
        const mm = plan(example).flat;
        const stock = { material: 'mild-steel', thickness: '1 mm' };
        const inches = plan(inInches(family, example), { units: 'in', stock }).flat;
        near(inches.blank.max[0], mm.blank.max[0], 'length of the blank');
        near(inches.blank.max[1], mm.blank.max[1], 'width of the blank');
        near(inches.area, mm.area, 'area', 1e-3); // default gaps are in mm whatever the unit
      },
    },
  ];
}

/** Paths of all sizes in parameters, `hem.length`, list entries under their list's name. */
function pathsIn(value: unknown, path = ''): readonly string[] {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return [path];
  return Object.entries(value).flatMap(([k, v]) => [
    ...(path === '' ? [] : [path]),
    ...pathsIn(v, path === '' ? k : `${path}.${k}`),
  ]);
}

/** Every length of a family's parameters in inches instead of mm; words, counts and angles stay. */
function inInches({ values }: AnyFamily, params: Params): Params {
  return sizesIn(params)
    .filter(({ path }) => declaredAt(values, path)?.unit === 'mm')
    .reduce<unknown>((p, { path, given }) => withValue(p, path, given / MM_PER_INCH), params) as Params;
}
