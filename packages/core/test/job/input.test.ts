// What a program says of a job is checked when the program is compiled: a line that expects an error fails the
// type check where there is none.

import * as door from '@tinwright/core';
import {
  bentStrip,
  FAMILIES,
  gussetEnd,
  hemmedChannel,
  JobError,
  type JobInput,
  job,
  jobReader,
  makePart,
  openBox,
  type PartInput,
  planJob,
  readJob,
} from '@tinwright/core';
import { asked, defineFamily, flange, panel, rectangle, value } from '@tinwright/core/family';
import { familyDuties } from '@tinwright/testing';
import { expect, test } from 'vitest';

const STOCK = { material: 'mild-steel', thickness: 1 } as const;

const TRAY = {
  units: 'mm',
  stock: STOCK,
  bending: { rule: 'handbook', group: 'soft' },
  parts: [{ name: 'tray', family: 'open-box', length: 300, width: '8 in', height: '1 1/2 in' }],
} as const satisfies JobInput;

test('a typed job is read as it stands', () => {
  const [tray] = readJob(TRAY).parts;
  expect(tray?.params).toMatchObject({ length: 300, width: 203.2, height: expect.closeTo(38.1, 9) });
});

const thrown = (work: () => unknown): JobError => {
  try {
    work();
  } catch (error) {
    if (error instanceof JobError) return error;
    throw error;
  }
  throw new Error('nothing was thrown');
};

test('keys and words that are none do not compile, and are refused when read', () => {
  const tray = { name: 'tray', family: 'open-box', length: 300, width: 200, height: 50 } as const;
  const read = [
    // @ts-expect-error -- a key that is none
    () => readJob({ units: 'mm', stock: STOCK, parts: [{ ...tray, lenght: 3 }] }),
    // @ts-expect-error -- the key of the family misspelt
    () => readJob({ units: 'mm', stock: STOCK, parts: [{ name: 'tray', famly: 'open-box' }] }),
    // @ts-expect-error -- a family that is none
    () => readJob({ units: 'mm', stock: STOCK, parts: [{ ...tray, family: 'open-bux' }] }),
    // @ts-expect-error -- a length that does not start with a number
    () => readJob({ units: 'mm', stock: STOCK, parts: [{ ...tray, length: 'wide' }] }),
    // @ts-expect-error -- a word that the parameter does not know
    () => readJob({ units: 'mm', stock: STOCK, parts: [{ ...tray, corner: 'opne' }] }),
    // @ts-expect-error -- a parameter of another family
    () => readJob({ units: 'mm', stock: STOCK, parts: [{ ...tray, legs: [20, 20] }] }),
    // @ts-expect-error -- a rule without its constant
    () => readJob({ units: 'mm', stock: STOCK, bending: { rule: 'handbook' }, parts: [tray] }),
    // @ts-expect-error -- thickness and gauge
    () => readJob({ units: 'mm', stock: { ...STOCK, gauge: 20 }, parts: [tray] }),
    // @ts-expect-error -- a unit that is none
    () => readJob({ units: 'cm', stock: STOCK, parts: [tray] }),
  ];
  for (const each of read) expect(thrown(each).problems.length, String(each)).toBeGreaterThan(0);
});

test('what a parser gives is read without types', () => {
  const parsed: unknown = JSON.parse(JSON.stringify(TRAY));
  expect(readJob(parsed).parts).toHaveLength(1);
  const { problems } = thrown(() => readJob(JSON.parse('{"units":"mm","parts":[{"famly":"open-box"}]}')));
  expect(problems.map((p) => p.code)).toContain('key-unknown');
});

test('a part of a job is told by its family', () => {
  const parts: readonly PartInput[] = [
    { name: 'a', family: 'bent-strip', width: 20, legs: [20, '3/4 in'], angles: [90] },
    { name: 'b', family: 'open-box', length: { of: 'a.width', plus: 80 }, width: 60, height: 20 },
  ];
  expect(readJob({ units: 'mm', stock: STOCK, parts }).parts).toHaveLength(2);
});

test('a carrier built step by step is the job as data', () => {
  const carrier = job({ units: 'in', stock: { material: 'galvanised-steel', gauge: 24 } })
    .part('body', hemmedChannel, {
      length: 14,
      width: 7,
      height: 2,
      hem: { type: 'closed', length: '1/2 in' },
      endTabs: { length: '3/4 in' },
    })
    .part('end', gussetEnd, {
      quantity: 2,
      width: { of: 'body.seatWidth', less: '0.4 mm' },
      shoulderHeight: 2.5,
      height: 6,
      crownWidth: 2,
    })
    .joint({ from: 'body.west', to: 'end-1.rim', by: 'spot-weld' })
    .joint({ name: 'east', from: 'body.east', to: 'end-2.rim', by: { 'spot-weld': { count: 10 } } });
  expect(carrier.data.joints?.map((j) => j.name)).toEqual(['joint-1', 'east']);
  const fromData = planJob(jobReader()(structuredClone(carrier.data)));
  const plan = carrier.plan();
  expect(plan.assembly?.fasteners).toHaveLength(fromData.assembly?.fasteners.length ?? 0);
  expect(plan.parts.map((p) => p.flat.blank)).toEqual(fromData.parts.map((p) => p.flat.blank));
});

test('a step leaves the job before it as it is, and its names are checked', () => {
  const one = job({ units: 'mm', stock: STOCK }).part('a', bentStrip, {
    width: 20,
    legs: [20, 20],
    angles: [90],
  });
  const two = one.part('b', openBox, { length: 100, width: 60, height: 20 });
  expect(one.data.parts).toHaveLength(1);
  expect(two.data.parts).toHaveLength(2);
  // @ts-expect-error -- there is no part c
  expect(() => two.joint({ from: 'a.leg-1-back', to: 'c.west', by: 'screw' }).plan()).toThrow(/c/);
  // @ts-expect-error -- a fastener that is none
  expect(() => two.joint({ from: 'a.leg-1-back', to: 'b.west', by: 'glue' }).read()).toThrow(/glue/);
});

const flag = defineFamily({
  name: 'flag',
  values: {
    width: value.size('along x'),
    height: value.size('along y'),
    of: value.word('', ['tin', 'zinc']),
  },
  build: ({ width, height }) => [panel('flag', rectangle(width, height), [['width'], ['height']])],
  describe: { title: 'flag', summary: 'A flag.', example: { width: 60, height: 40, of: 'tin' } },
});

test('a family of one’s own is typed as the built-in ones are', () => {
  const plan = job({ units: 'mm', stock: STOCK })
    .part('flag', flag, { width: 60, height: 40, of: 'zinc' })
    .plan();
  expect(plan.parts[0]?.flat.blank.max).toEqual([60, 40]);
  // @ts-expect-error -- its parameters are checked too
  expect(() => job({ units: 'mm', stock: STOCK }).part('f', flag, { width: 1 }).read()).toThrow(/height/);
  const families = [...FAMILIES, flag];
  const parts = [{ name: 'f', family: 'flag', width: 60, height: 40, of: 'tin' }] as const;
  expect(readJob({ units: 'mm', stock: STOCK, parts }, families).parts).toHaveLength(1);
});

test('a part without a job is what a job of it would make', () => {
  const made = makePart(
    openBox,
    { length: 300, width: '8 in', height: '1 1/2 in' },
    { ...STOCK, bending: TRAY.bending },
  );
  const [planned] = planJob(readJob(TRAY)).parts;
  expect(made.flat).toEqual(planned?.flat);
  const gauge = { material: 'galvanised-steel', gauge: 24, units: 'in' } as const;
  const inches = makePart(openBox, { length: 12, width: 8, height: 2 }, gauge);
  expect(inches.part.asked.find((a) => a.name === 'length')?.value).toBeCloseTo(304.8, 6);
});

test('a part that cannot be names its parameter alone, and the size that works', () => {
  const { problems } = thrown(() =>
    makePart(openBox, { length: 300, width: 200, height: 50, hem: { type: 'closed', length: 49 } }, STOCK),
  );
  expect(problems[0]?.path).toEqual(['hem', 'length']);
  expect(problems[0]?.fix).toMatch(/^Use [\d.]+ mm or less$/);
  // @ts-expect-error -- misspelt
  const misspelt = () => makePart(openBox, { lenght: 300, width: 200, height: 50 }, STOCK);
  expect(thrown(misspelt).problems.map((p) => p.path)).toContainEqual(['lenght']);
  const size = { length: 300, width: 200, height: 50 };
  // @ts-expect-error -- a unit that is none, never read as millimetres
  const unit = () => makePart(openBox, size, { ...STOCK, units: 'cm' });
  expect(thrown(unit).problems.map((p) => p.path)).toEqual([['units']]);
  // @ts-expect-error -- a rule is a group of its constants
  const rule = () => makePart(openBox, size, { ...STOCK, bending: null });
  expect(thrown(rule).problems.map((p) => p.path)).toEqual([['bending']]);
});

test('every built-in family is in the door by its own name', () => {
  const exported = new Set<unknown>(Object.values(door));
  expect(FAMILIES.filter((f) => !exported.has(f)).map((f) => f.name)).toEqual([]);
});

test('a family whose verbs misspell a parameter does not compile, and fails its duty', () => {
  const values = {
    width: value.size('of it'),
    rim: value.group('folded up', { height: value.size('over the plate'), at: value.size('from the edge') }),
  };
  const describe = { title: 'a', summary: 'b', example: { width: 60, rim: { height: 12, at: 5 } } };
  const right = defineFamily({
    name: 'right',
    values,
    build: ({ width, rim }) => [
      panel('plate', rectangle(width, 40), [['width'], []]),
      flange('rim', ['plate', 'north'], {
        height: rim.height,
        inset: [rim.at, rim.at],
        by: ['rim', 'height'],
      }),
      asked('width', width, 'x'),
      asked('rim.height', rim.height, 'z'),
      asked('width - 2 rim.at', width - 2 * rim.at, 'x', { edges: [['rim', 'far']] }),
    ],
    describe,
  });
  expect(right.named(describe.example, makePart(right, describe.example, STOCK).sheet)).toContainEqual([
    'rim',
    'at',
  ]);
  const wrong = defineFamily({
    name: 'wrong',
    values,
    build: ({ width, rim }) => [
      // @ts-expect-error -- of `panel`
      panel('plate', rectangle(width, 40), [['widht'], []]),
      // @ts-expect-error -- of `flange`
      flange('rim', ['plate', 'north'], { height: rim.height, by: ['rim', 'hieght'] }),
      // @ts-expect-error -- of `asked`
      asked('with', width, 'x'),
    ],
    describe,
  });
  const duty = familyDuties(wrong).find((d) => d.title.startsWith('every name that the verbs'));
  expect(() => duty?.check()).toThrow(/there is no parameter with/);
});
