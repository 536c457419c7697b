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
  {
    family: 'hemmed-channel',
    way: ['hem', 'length'],
    given: 60,
    limit: 52,
    side: 'less',
    why: 'longer than panel "north" of 55 mm has room for',
  },
  // the fold and one thickness to hold
  {
    family: 'hemmed-channel',
    way: ['hem', 'length'],
    given: 1,
    limit: 2,
    side: 'more',
    why: 'a closed hem needs a straight leg past its fold',
  },
  // (60 − 0.5 between them − 1) / 2
  {
    family: 'hemmed-channel',
    way: ['endTabs', 'length'],
    given: 40,
    limit: 29.25,
    side: 'less',
    also: { width: 60, height: 200 },
    why: 'the tabs of both sides would meet across a width of 60 mm',
  },
  // from the hem at 45° and from the mitre, half a millimetre of its far edge left between them
  {
    family: 'hemmed-channel',
    way: ['endTabs', 'length'],
    given: 30,
    limit: 27.57,
    side: 'less',
    why: 'the cuts at the ends of panel "tab-north-west" leave nothing of its far edge',
  },
  {
    family: 'hemmed-channel',
    way: ['endTabs', 'length'],
    given: 2,
    limit: 2.5,
    side: 'more',
    why: 'panel "tab-west" has to reach past its bends',
  },
  // the shortest hem, 2 mm: twice its start 1 + 1 + 0.7 and its 45° end of 2 − 1, and half a millimetre between them
  {
    family: 'hemmed-channel',
    way: ['length'],
    given: 5,
    limit: 7.9,
    side: 'more',
    also: { hem: { type: 'closed', length: 2 } },
    why: 'nothing is left of panel "hem-north"',
  },
  // too short for any hem; with the one given: twice 2.7 and 15 − 1, and half a millimetre
  {
    family: 'hemmed-channel',
    way: ['length'],
    given: 5,
    limit: 33.9,
    side: 'more',
    why: 'nothing is left of panel "hem-north"',
  },
  // a hem of 15 mm on a length of 30: half of what the starts of 2.7 and half a millimetre between them leave, and the sheet
  {
    family: 'hemmed-channel',
    way: ['hem', 'length'],
    given: 15,
    limit: 13.05,
    side: 'less',
    also: { length: 30 },
    why: 'the cuts at the ends of panel "hem-north" leave nothing of its far edge',
  },
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
    why: 'nothing would be left of the lower edge or the sides',
  },
  // both bends, half a millimetre between them, and what the corners with the sides take
  {
    family: 'handle',
    way: ['span'],
    given: 1,
    limit: 5.21,
    side: 'more',
    why: 'panel "base" has to reach past its bends',
  },
  // both bends, and half a millimetre between them
  {
    family: 'handle',
    way: ['width'],
    given: 1,
    limit: 4.5,
    side: 'more',
    why: 'panel "base" has to reach past its bends',
  },
  {
    family: 'handle',
    way: ['sideDepth'],
    given: 2,
    limit: 2.5,
    side: 'more',
    also: { hem: { type: 'none' } },
    why: 'panel "north" has to reach past its bends',
  },
  // 14 − 2 − 1
  {
    family: 'handle',
    way: ['hem', 'length'],
    given: 30,
    limit: 11,
    side: 'less',
    why: 'longer than panel "north" of 14 mm has room for',
  },
  {
    family: 'handle',
    way: ['tabs', 'length'],
    given: 2,
    limit: 2.5,
    side: 'more',
    why: 'panel "tab-west" has to reach past its bends',
  },
  // 60 − 2 − 1
  {
    family: 'open-box',
    way: ['hem', 'length'],
    given: 70,
    limit: 57,
    side: 'less',
    also: { corner: 'open' },
    why: 'longer than panel "north" of 60 mm has room for',
  },
  // half of 220 less the gap
  {
    family: 'open-box',
    way: ['tabs', 'length'],
    given: 200,
    limit: 109.5,
    side: 'less',
    why: 'tabs from both sides would meet across a width of 220 mm',
  },
  {
    family: 'open-box',
    way: ['tabs', 'length'],
    given: 2,
    limit: 2.5,
    side: 'more',
    why: 'panel "tab-north-west" has to reach past its bends',
  },
  // half of 220 less the gap less half a millimetre of the return's edge
  {
    family: 'open-box',
    way: ['flangeReturn'],
    given: 150,
    limit: 109,
    side: 'less',
    why: 'returns from both sides would meet',
  },
  {
    family: 'open-box',
    way: ['flangeReturn'],
    given: 1,
    limit: 2.5,
    side: 'more',
    also: { hem: { type: 'none' } },
    why: 'panel "return-north" has to reach past its bends',
  },
  {
    family: 'open-box',
    way: ['height'],
    given: 1,
    limit: 2.5,
    side: 'more',
    also: { hem: { type: 'none' }, corner: 'open' },
    why: 'panel "north" has to reach past its bends',
  },
  // two bends of 2 mm, and half a millimetre of the leg
  {
    family: 'bent-strip',
    way: ['legs', 1],
    given: 3,
    limit: 4.5,
    side: 'more',
    why: 'panel "leg-2" has to reach past its bends',
  },
  {
    family: 'bent-strip',
    way: ['legs', 0],
    given: 1,
    limit: 2.5,
    side: 'more',
    why: 'panel "leg-1" has to reach past its bends',
  },
  // bend 2, one thickness, and the hem of 8
  {
    family: 'lid',
    way: ['depth'],
    given: 3,
    limit: 11,
    side: 'more',
    why: 'panel "north" is too low for a closed hem on it',
  },
  // 25 less the bend less the hem's own thickness
  {
    family: 'lid',
    way: ['hem', 'length'],
    given: 30,
    limit: 22,
    side: 'less',
    why: 'longer than panel "north" of 25 mm has room for',
  },
  // the fold of 1, the bend of 2, half a millimetre between them, less the thickness the ledge does not count
  {
    family: 'lid',
    way: ['ledge'],
    given: 1,
    limit: 2.5,
    side: 'more',
    also: { fit: 'inside' },
    why: 'panel "ledge-north" has to reach past its bends',
  },
  {
    family: 'divider',
    way: ['tabs', 'length'],
    given: 2,
    limit: 2.5,
    side: 'more',
    why: 'panel "tab-west" has to reach past its bends',
  },
  // setback 2, half the slot of 1.2, half a millimetre
  {
    family: 'divider',
    way: ['slots', 'at', 0],
    given: 2,
    limit: 3.1,
    side: 'more',
    why: 'too near the bend at edge "west"',
  },
  // three quarters round a middle radius of 2, and nine tenths of the wire's radius
  {
    family: 'flared-pan',
    way: ['edge', 'allowance'],
    given: 20,
    limit: 10.77,
    side: 'less',
    why: 'the metal would run on into the wall',
  },
  // half round a middle radius of 2, and half a thickness
  {
    family: 'flared-pan',
    way: ['edge', 'allowance'],
    given: 4,
    limit: 6.79,
    side: 'more',
    why: 'the metal would not reach round the wire',
  },
  // half the hole and half a millimetre of metal
  {
    family: 'tote-end',
    way: ['bar', 'below'],
    given: 10,
    limit: 13.5,
    side: 'more',
    why: 'too little metal would be left to edge "crown"',
  },
];

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
