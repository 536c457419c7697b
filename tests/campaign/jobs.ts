// Random jobs: every family, rule, unit and stock, carriers with joints and measured sizes, and any of them with a value
// pushed to the edge of what can be.
import { FAMILIES, MATERIAL_NAMES, type PartPlan, planJob, readJob } from '@tinwright/core';
import { bendings, paramsOf } from '@tinwright/testing';
import fc from 'fast-check';
import { carriers } from '../kit/carriers.js';
import { cutoutsOf } from '../kit/cutouts.js';
import { edgesOf } from '../kit/edges.js';

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

const part = fc
  .constantFrom(...FAMILIES)
  .chain((family) => paramsOf(family).map((params) => ({ family: family.name, ...params })));

const EXTRAS = FAMILIES.map((f) => {
  const data = { units: 'mm', stock: { material: 'mild-steel', thickness: 1 } };
  const job: unknown = { ...data, parts: [{ name: 'part', family: f.name, ...f.describe.example }] };
  const plan = planJob(readJob(job));
  const made = (plan.parts[0] as PartPlan).part;
  return fc.record({ cutouts: cutoutsOf(made), edges: edgesOf(made) }, { requiredKeys: [] });
});

/** A part with openings and finished edges that suit the example of its family, or that of another. */
const cutPart = fc.tuple(part, fc.oneof(...EXTRAS)).map(([p, extras]) => ({ ...p, ...extras }));

const single = fc
  .record({ sheet, part: fc.oneof(part, cutPart), units: fc.constantFrom('mm', 'in') })
  .map(({ sheet: s, part: p, units }) => ({
    units,
    ...s,
    parts: [{ name: 'part', ...p }],
  }));

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

/** Values that have broken something somewhere. */
const EDGES: readonly unknown[] = [
  0,
  -1,
  1e-9,
  0.01,
  0.1,
  1,
  9999.99,
  10000,
  1e9,
  1e308,
  '',
  ' ',
  '1 1/2 in',
  '0 mm',
  'ten',
  null,
  true,
  [],
  {},
  [0],
  [[[]]],
  { of: 'part.length' },
  { of: 'body.seatWidth' },
  { of: 'nothing.there', plus: 1 },
  '__proto__',
  'constructor',
];

type Path = readonly (string | number)[];

function leaves(value: unknown, path: Path = []): readonly Path[] {
  if (typeof value !== 'object' || value === null) return [path];
  return [
    ...(path.length === 0 ? [] : [path]),
    ...Object.entries(value).flatMap(([k, v]) => leaves(v, [...path, Array.isArray(value) ? Number(k) : k])),
  ];
}

function put(value: unknown, [key, ...rest]: Path, fresh: unknown): unknown {
  if (key === undefined) return fresh;
  if (Array.isArray(value)) return value.map((v, i) => (i === key ? put(v, rest, fresh) : v));
  const entries = Object.entries(value as object).map(
    ([k, v]) => [k, k === key ? put(v, rest, fresh) : v] as const,
  );
  return Object.fromEntries(entries);
}

/** A job with one value pushed to an edge, or scaled to nothing or to far too much. */
const pushed = (jobs: fc.Arbitrary<unknown>) =>
  fc
    .tuple(
      jobs,
      fc.nat(),
      fc.oneof(
        fc.constantFrom(...EDGES),
        fc.constantFrom(1e-3, 0.1, 0.5, 1.9, 5, 50, 1000).map((scale) => ({ scale })),
      ),
    )
    .map(([job, n, edge]) => {
      const paths = leaves(job);
      const path = paths[n % paths.length] as Path;
      const old = path.reduce<unknown>((v, k) => (v as Record<string | number, unknown>)[k], job);
      const scale = (edge as { scale?: number } | null)?.scale;
      return put(job, path, scale === undefined ? edge : typeof old === 'number' ? old * scale : old);
    });

/** A job as a file would hold it. */
export const jobs: fc.Arbitrary<unknown> = fc.oneof(
  { arbitrary: single, weight: 5 },
  { arbitrary: carriers as fc.Arbitrary<unknown>, weight: 2 },
  { arbitrary: measured as fc.Arbitrary<unknown>, weight: 1 },
  { arbitrary: pushed(fc.oneof(single, carriers)), weight: 4 },
);
