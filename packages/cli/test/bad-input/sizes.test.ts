import { type AnyFamily, FAMILIES } from '@tinwright/core';
import { describe, expect, test } from 'vitest';
import { partJob } from '../jobs.js';
import { make, refused } from '../place.js';
import { BOXES } from './sizes/boxes.js';
import { CHANNELS } from './sizes/channels.js';
import type { Values, Way } from './sizes/size-case.js';

const example = (family: string): Values =>
  (FAMILIES.find((f) => f.name === family) as AnyFamily).describe.example;

/** A copy with the value at the end of the way replaced. */
function put(values: Values, [step, ...rest]: Way, value: unknown): Values {
  if (step === undefined) return values;
  const inner = rest.length === 0 ? value : put((values[step] ?? {}) as Values, rest, value);
  if (!Array.isArray(values)) return { ...values, [step]: inner };
  return values.map((v, i) => (i === step ? inner : v)) as unknown as Values;
}

const CASES = [...CHANNELS, ...BOXES];

test('there are cases of many families', () => {
  expect(new Set(CASES.map((c) => c.family)).size).toBeGreaterThan(8);
});

describe.each(CASES)('$family $way of $given mm', ({ family, way, given, limit, side, also, why }) => {
  const values = { ...example(family), ...also };
  const job = (size: number | string) => partJob(family, put(values, way, size));
  const path = way.reduce(
    (text, step) =>
      typeof step === 'number' ? `${text}[${step}]` : `${text}${text === '' ? '' : '.'}${step}`,
    '',
  );

  test(`is refused: ${limit} mm or ${side}`, async () => {
    const problems = await refused(job(given));
    const own = problems.filter((p) => p.includes(`part "tray": ${path}: ${given} mm given, ${why}`));
    expect(own).toHaveLength(1);
    expect(own[0]).toContain(`Use ${limit} mm or ${side}.`);
  });

  test(`${limit} mm passes, two hundredths beyond does not`, async () => {
    expect((await make(job(limit))).exit).toBe(0);
    expect((await make(job(`${limit} mm`))).exit).toBe(0);
    expect((await make(job(limit + (side === 'less' ? 0.02 : -0.02)))).exit).toBe(2);
  });
});
