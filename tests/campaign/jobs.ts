// Random jobs: every family, rule, unit and stock, carriers with joints and measured sizes, and any of them with a value
// pushed to the edge of what can be.
import { FAMILIES, MATERIAL_NAMES, type PartPlan, planJob, readJob } from '@tinwright/core';
import { bendings, paramsOf } from '@tinwright/testing';
import fc from 'fast-check';
import { carriers } from '../kit/carriers.js';
import { cutoutsOf } from '../kit/cutouts.js';
import { edgesOf } from '../kit/edges.js';
import { inInches } from '../kit/in-inches.js';
import { fitted } from './fitted.js';
import { joints } from './joints.js';
import { pushed } from './pushed.js';

const THICKNESSES = [0.1, 0.3, 0.5, 0.7, 1, 1.2, 1.5, 2, 3, 4, 6];
const RATIOS = [0, 0.05, 0.25, 0.5, 1, 1.6, 3, 5, 8];
const RULES = [
  ...bendings,
  { rule: 'nominal' },
  { rule: 'k-factor', k: 1 },
  { rule: 'linear', perRadius: 2, perThickness: 3 },
];

const sheet = fc
  .record({
    material: fc.constantFrom(...MATERIAL_NAMES),
    thickness: fc.constantFrom(...THICKNESSES),
    ratio: fc.constantFrom(...RATIOS),
    rule: fc.constantFrom<object>(...RULES),
  })
  .map(({ material, thickness, ratio, rule }) => ({
    stock: { material, thickness },
    bending: { ...rule, insideRadius: Math.round(thickness * ratio * 1e6) / 1e6 },
  }));

const part = fc.oneof(
  ...FAMILIES.map((family) => paramsOf(family).map((params) => ({ family: family.name, ...params }))),
);

const SHOWN = FAMILIES.map((f) => {
  const data = { units: 'mm', stock: { material: 'mild-steel', thickness: 1 } };
  const { example } = f.describe;
  const job: unknown = { ...data, parts: [{ name: 'part', family: f.name, ...example }] };
  return { family: f.name, example, made: (planJob(readJob(job)).parts[0] as PartPlan).part };
});

const EXTRAS = SHOWN.map(({ made }) =>
  fc.record({ cutouts: cutoutsOf(made), edges: edgesOf(made) }, { requiredKeys: [] }),
);

/** Examples with faces that something may be joined to. */
const SITED = SHOWN.map(({ made, ...shown }) => ({ ...shown, sites: made.sites.map((s) => s.name) })).filter(
  ({ sites }) => sites.length > 0,
);

/** A part with openings and finished edges that suit the example of its family, or one time in six that of any. */
const cutPart = fc.tuple(part, fc.nat(5), fc.oneof(...EXTRAS)).chain(([p, n, other]) => {
  const own = EXTRAS[FAMILIES.findIndex((f) => f.name === p.family)] ?? fc.constant({});
  return (n === 0 ? fc.constant(other) : own).map((extras) => ({ ...p, ...extras }));
});

const single = fc
  .record({ sheet, part: fc.oneof(part, cutPart), units: fc.constantFrom('mm', 'mm', 'in') })
  .map(({ sheet: s, part: p, units }) => {
    if (units === 'mm') return { units, ...s, parts: [{ name: 'part', ...p }] };
    const { stock, bending, ...said } = inInches({ ...s, ...p });
    return { units, stock, bending, parts: [{ name: 'part', ...said }] };
  });

/** Carriers whose sizes were measured a little off. */
const measured = fc
  .tuple(
    carriers,
    fc.constantFrom('body.insideWidth', 'body.height', 'body.length', 'end.height'),
    fc.integer({ min: -40, max: 40 }),
  )
  .map(([job, size, off]) => {
    const [name, key] = size.split('.') as [string, string];
    const parts = (job as { parts?: readonly Record<string, unknown>[] }).parts ?? [];
    const value = parts.find((p) => p.name === name)?.[key === 'insideWidth' ? 'width' : key];
    return typeof value === 'number' ? { ...job, measured: { [size]: value - 2 + off / 10 } } : job;
  });

/** What a job may say beside its sizes. */
const remarks = fc.record(
  {
    name: fc.constantFrom('bin', 'Samenkiste 7', '=1+1', '</title>'),
    note: fc.constantFrom('for the potting shed', ''),
    cutBy: fc.constantFrom<unknown>(
      'hand',
      'table',
      { table: { leastEdge: '0.4 mm' } },
      { table: { leastEdge: '20 mm' } },
    ),
  },
  { requiredKeys: [] },
);

/** Sheets by gauge, materials of one's own, and stock a job says it is cut from. */
const stocks = fc.constantFrom<object>(
  { stock: { material: 'mild-steel', gauge: 20 } },
  { stock: { material: 'galvanised-steel', gauge: { system: 'galvanised', number: 28 } } },
  { stock: { material: 'aluminium-5052-h32', gauge: 14 }, bending: { rule: 'handbook', group: 'soft' } },
  {
    materials: [
      { name: 'roofing', like: 'mild-steel', k: 0.31, leastRadius: [{ thickness: '1 mm', radius: '2 mm' }] },
    ],
    stock: { material: 'roofing', thickness: '0.7 mm' },
  },
  {
    stock: {
      material: 'mild-steel',
      thickness: '1 mm',
      sheets: [['1 m', '50 cm'], { size: ['2 m', '1 m'], count: 2, price: 30, trim: { west: '5 mm' } }],
      offcuts: [{ size: ['400 mm', '300 mm'] }],
      kerf: '1.3 mm',
    },
  },
);

/** One part, with whatever a job and a part may say of it. */
const told = fc
  .tuple(
    single,
    remarks,
    fc.option(stocks, { nil: {}, freq: 3 }),
    fc.record(
      {
        quantity: fc.constantFrom(1, 2, 10_000),
        grain: fc.constantFrom('x', 'y', 'any'),
        note: fc.constant('n'),
      },
      { requiredKeys: [] },
    ),
  )
  .map(([job, more, stock, said]) => ({
    ...job,
    ...more,
    ...stock,
    parts: job.parts.map((p) => ({ ...p, ...said })),
  }));

/** Two parts of any families, held together at any of their faces. */
const joined = fc
  .tuple(sheet, fc.constantFrom(...SITED), fc.constantFrom(...SITED), joints)
  .chain(([s, a, b, joint]) =>
    fc
      .tuple(fc.constantFrom(...a.sites), fc.constantFrom(...b.sites), fc.integer({ min: 1, max: 3 }))
      .map(([from, to, quantity]) => ({
        units: 'mm',
        ...s,
        parts: [
          { name: 'a', family: a.family, ...a.example },
          { name: 'b', family: b.family, quantity, ...b.example },
        ],
        joints: [{ name: 'j', from: `a.${from}`, to: `b${quantity > 1 ? '-1' : ''}.${to}`, ...joint }],
      })),
  );

const assembled: fc.Arbitrary<unknown> = fc.oneof(
  { arbitrary: carriers as fc.Arbitrary<unknown>, weight: 2 },
  { arbitrary: measured as fc.Arbitrary<unknown>, weight: 1 },
  { arbitrary: joined as fc.Arbitrary<unknown>, weight: 2 },
  { arbitrary: fitted, weight: 2 },
);

/** A job as a file would hold it. */
export const jobs: fc.Arbitrary<unknown> = fc.oneof(
  { arbitrary: single, weight: 5 },
  { arbitrary: assembled, weight: 3 },
  { arbitrary: pushed(fc.oneof(single, assembled)), weight: 4 },
);

/** The same, mostly of one part: a hundred thousand an hour. */
export const leanJobs: fc.Arbitrary<unknown> = fc.oneof(
  { arbitrary: told, weight: 16 },
  { arbitrary: assembled, weight: 1 },
  {
    arbitrary: pushed(fc.oneof({ arbitrary: told, weight: 12 }, { arbitrary: assembled, weight: 1 })),
    weight: 5,
  },
);
