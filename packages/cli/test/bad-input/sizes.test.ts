import { type AnyFamily, FAMILIES } from '@tinwright/core';
import { describe, expect, test } from 'vitest';
import { partJob } from '../jobs.js';
import { make, refused } from '../place.js';

type Values = Readonly<Record<string, unknown>>;
type Way = readonly (string | number)[];

const example = (family: string): Values =>
  (FAMILIES.find((f) => f.name === family) as AnyFamily).describe.example;

/** A copy with the value at the end of the way replaced. */
function put(values: Values, [step, ...rest]: Way, value: unknown): Values {
  if (step === undefined) return values;
  const inner = rest.length === 0 ? value : put((values[step] ?? {}) as Values, rest, value);
  if (!Array.isArray(values)) return { ...values, [step]: inner };
  return values.map((v, i) => (i === step ? inner : v)) as unknown as Values;
}

interface Case {
  readonly family: string;
  readonly way: Way;
  readonly given: number;
  /** The number that the message has to name. */
  readonly limit: number;
  readonly side: 'less' | 'more';
  readonly also?: Values;
  readonly why: string;
}

// 1 mm sheet, inside radius 1 mm: a square bend takes 2 mm of each leg (R + T). Limits by hand.
const CASES: readonly Case[] = [
  // 55 less the bend less the hem's own thickness
  { family: 'hemmed-channel', way: ['hem', 'length'], given: 60, limit: 52, side: 'less', why: 'room' },
  // the fold and one thickness to hold
  {
    family: 'hemmed-channel',
    way: ['hem', 'length'],
    given: 1,
    limit: 2,
    side: 'more',
    why: 'leg past its fold',
  },
  // (60 − 0.5 between them − 1) / 2
  {
    family: 'hemmed-channel',
    way: ['endTabs', 'length'],
    given: 40,
    limit: 29.25,
    side: 'less',
    also: { width: 60, height: 200 },
    why: 'meet across the width of 60 mm',
  },
  // from the hem and from the mitre at 45°, over 55 − 1 (hem) − 1 (sheet) and the bend: (53 − 0.5/√2 + 2) / 2
  {
    family: 'hemmed-channel',
    way: ['endTabs', 'length'],
    given: 30,
    limit: 27.32,
    side: 'less',
    why: 'notches would meet',
  },
  {
    family: 'hemmed-channel',
    way: ['endTabs', 'length'],
    given: 2,
    limit: 3,
    side: 'more',
    why: 'past its own bend',
  },
  // twice: hem start 1 + 1 + 0.5, gap 0.5, bend 2, hem 15, and 1
  { family: 'hemmed-channel', way: ['length'], given: 10, limit: 42, side: 'more', why: 'cut from the ends' },
  {
    family: 'gusset-end',
    way: ['crownWidth'],
    given: 300,
    limit: 197.6,
    side: 'less',
    why: 'wider than the end',
  },
  {
    family: 'gusset-end',
    way: ['shoulderHeight'],
    given: 300,
    limit: 120,
    side: 'less',
    why: 'higher than the end',
  },
  // half a millimetre of the side is kept: 53 − 0.5
  {
    family: 'gusset-end',
    way: ['cornerNip'],
    given: 100,
    limit: 52.5,
    side: 'less',
    why: 'leave nothing of',
  },
  // both bends with the gap beside the tabs, and 1
  { family: 'handle', way: ['span'], given: 1, limit: 6, side: 'more', why: 'the bends of both tabs' },
  // both bends with a hem folded in, and 1
  { family: 'handle', way: ['width'], given: 1, limit: 7, side: 'more', why: 'the sides and their hems' },
  {
    family: 'handle',
    way: ['sideDepth'],
    given: 2,
    limit: 3,
    side: 'more',
    also: { hem: { type: 'none' } },
    why: 'bend',
  },
  // 14 − 2 − 1
  {
    family: 'handle',
    way: ['hem', 'length'],
    given: 30,
    limit: 11,
    side: 'less',
    why: 'longer than the side of 14 mm',
  },
  { family: 'handle', way: ['tabs', 'length'], given: 2, limit: 3, side: 'more', why: 'past its own bend' },
  // 60 − 2 − 1
  {
    family: 'open-box',
    way: ['hem', 'length'],
    given: 70,
    limit: 57,
    side: 'less',
    also: { corner: 'open' },
    why: 'wall of 60 mm',
  },
  // half of 220 less the gap
  {
    family: 'open-box',
    way: ['tabs', 'length'],
    given: 200,
    limit: 109.5,
    side: 'less',
    why: 'meet across the width of 220 mm',
  },
  { family: 'open-box', way: ['tabs', 'length'], given: 2, limit: 3, side: 'more', why: 'past its own bend' },
  // half of 220 less the gap less 1
  {
    family: 'open-box',
    way: ['flangeReturn'],
    given: 150,
    limit: 108.5,
    side: 'less',
    why: 'from both sides would meet',
  },
  {
    family: 'open-box',
    way: ['flangeReturn'],
    given: 1,
    limit: 2.5,
    side: 'more',
    also: { hem: { type: 'none' } },
    why: 'past its own bend',
  },
  {
    family: 'open-box',
    way: ['height'],
    given: 1,
    limit: 2.5,
    side: 'more',
    also: { hem: { type: 'none' }, corner: 'open' },
    why: 'stand clear of its bends',
  },
  // two bends of 2 mm, and half a millimetre of the leg
  { family: 'bent-strip', way: ['legs', 1], given: 3, limit: 4.5, side: 'more', why: 'bends at its ends' },
  { family: 'bent-strip', way: ['legs', 0], given: 1, limit: 2.5, side: 'more', why: 'bends at its ends' },
];

test('every family has sizes that cannot be', () => {
  expect(new Set(CASES.map((c) => c.family))).toEqual(new Set(FAMILIES.map((f) => f.name)));
});

describe.each(CASES)('$family $way of $given mm', ({ family, way, given, limit, side, also, why }) => {
  const values = { ...example(family), ...also };
  const job = (size: number | string) => partJob(family, put(values, way, size));
  const path = way.reduce(
    (text, step) => (typeof step === 'number' ? `${text}[${step}]` : `${text}.${step}`),
    '',
  );

  test(`is refused: ${limit} mm or ${side}`, async () => {
    const problems = await refused(job(given));
    const own = problems.filter((p) => p.includes(`parts[0]${path}: ${given} mm given, `) && p.includes(why));
    expect(own).toHaveLength(1);
    expect(own[0]).toContain(`Use ${limit} mm or ${side}.`);
  });

  test(`${limit} mm passes, two hundredths beyond does not`, async () => {
    expect((await make(job(limit))).exit).toBe(0);
    expect((await make(job(`${limit} mm`))).exit).toBe(0);
    expect((await make(job(limit + (side === 'less' ? 0.02 : -0.02)))).exit).toBe(2);
  });
});

describe('a strip whose numbers do not fit together', () => {
  const strip = { width: 40, legs: [30, 60, 30], angles: [90, 90] };

  test.each([
    ['two legs with two angles', { legs: [30, 60] }, '.legs: 2 legs given with 2 angles. Give 3 legs', {}],
    [
      'three legs with one angle',
      { angles: [90] },
      '.legs: 3 legs given with 1 angles. Give 2 legs',
      { legs: [30, 60] },
    ],
    [
      'three radii with two angles',
      { insideRadii: [1, 2, 3] },
      '.insideRadii: 3 radii given with 2 angles. Give one, or 2',
      { insideRadii: [1, 2] },
    ],
    [
      'a bend of no angle',
      { angles: [90, 0] },
      '.angles[1]: 0 deg given. Leave the bend out',
      { legs: [30, 60], angles: [90] },
    ],
  ])('%s: refused, and what is asked for passes', async (_, change, says, mend) => {
    const legs = Object.keys(mend).length === 0 ? { legs: [30, 60, 30] } : mend;
    const [problem, ...more] = await refused(partJob('bent-strip', { ...strip, ...change }));
    expect(more).toEqual([]);
    expect(problem).toContain(`parts[0]${says}`);
    expect((await make(partJob('bent-strip', { ...strip, ...change, ...legs }))).exit).toBe(0);
  });
});

test('the size that would work can be written into a job in inches as it is printed', async () => {
  const inches = {
    units: 'in',
    stock: { material: 'mild-steel', thickness: '1 mm' },
    bending: { rule: 'k-factor', insideRadius: '1 mm' },
  };
  const channel = (hem: unknown) => ({
    ...{ length: 16, width: 8, height: '55 mm' },
    hem: { type: 'closed', length: hem },
  });
  const [problem] = await refused(partJob('hemmed-channel', channel(3), inches));
  const said = /Use (.*?) or less/.exec(problem ?? '')?.[1];
  expect(said).toBe('52 mm'); // 55 less the bend of 2 less the sheet of 1
  expect((await make(partJob('hemmed-channel', channel(said), inches))).exit).toBe(0);
});
