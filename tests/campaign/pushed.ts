// Anything that is data, with one of its values pushed to the edge of what can be.
import fc from 'fast-check';

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

/** The same with one value pushed to an edge, or scaled to nothing or to far too much. */
export const pushed = (jobs: fc.Arbitrary<unknown>): fc.Arbitrary<unknown> =>
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
