// The bends of several parts in one order, against every interleaving of their sequences.

import {
  type BendStep,
  type Brake,
  DEFAULT_COSTS,
  DEFAULT_SHOP,
  type PressSetting,
  type Sequence,
} from '@tinwright/shop';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { batchOf } from '../../src/job/batch.js';
import { changeOf, type SetUp, setUpOf, stood } from '../../src/job/set-up.js';

const STEP: BendStep = {
  action: 'bend',
  bends: ['side'],
  direction: 'up',
  hem: null,
  machine: 'brake',
  machineName: 'brake',
  length: 100,
  clamp: null,
  held: 'base',
  heldSide: 'parent',
  gripped: ['base'],
  beside: ['side'],
  faceUp: 'marked',
  heading: 0,
  towards: { side: 'right', roughly: false },
  handling: { over: null, round: null },
  angle: 90,
  setAngle: 91,
  insideRadius: 1,
  setBack: 2,
  madeRadius: null,
  tools: null,
  sight: null,
  sightOffset: null,
  noseOffset: null,
  stopDistance: null,
  touches: null,
  putIn: null,
  takeOff: null,
  press: null,
  seconds: 0,
};

const sequence = (part: string, steps: readonly Partial<BendStep>[]): Sequence => ({
  part,
  shop: 'shop',
  status: 'optimal',
  proved: true,
  toolsKept: false,
  steps: steps.map((s) => ({ ...STEP, ...s })),
  seconds: 0,
  bound: 0,
  gap: 0,
  reasons: [],
  mends: [],
  expanded: 0,
});

const group = (pieces: readonly number[]) => [{ pieces, from: 0, gap: 0, bare: [0, 0] as const }];

/** Seconds of every way to interleave, by plain recursion. */
function leastOf(sequences: readonly Sequence[]): number {
  const chains = sequences.map((s) => s.steps.map((step) => setUpOf(step, DEFAULT_SHOP)));
  const go = (at: readonly number[], stands: ReadonlyMap<string, SetUp>, machine: string): number => {
    const ways = chains.flatMap((chain, i) => {
      const setUp = chain[at[i] as number];
      if (setUp === undefined) return [];
      const before = stands.get(setUp.machine) ?? null;
      const walk = machine !== '' && machine !== setUp.machine ? DEFAULT_COSTS.walk : 0;
      const next = at.map((n, k) => (k === i ? n + 1 : n));
      const now = new Map(stands).set(setUp.machine, stood(before, setUp));
      return [walk + changeOf(before, setUp, DEFAULT_COSTS).seconds + go(next, now, setUp.machine)];
    });
    return ways.length === 0 ? 0 : Math.min(...ways);
  };
  return go(
    chains.map(() => 0),
    new Map(),
    '',
  );
}

const anyStep = fc.record({
  machine: fc.constantFrom('brake' as const, 'vise' as const),
  setAngle: fc.constantFrom(91, 127, null),
  setBack: fc.constantFrom(2, 3),
  tools: fc.constantFrom(null, group([100, 50]), group([100]), group([75, 25])),
});
const anyJob = fc.array(fc.array(anyStep, { minLength: 1, maxLength: 3 }), { minLength: 1, maxLength: 3 });

test('no interleaving takes less', () => {
  fc.assert(
    fc.property(anyJob, (job) => {
      const sequences = job.map((steps, i) => sequence(`part-${i}`, steps));
      const batch = batchOf(sequences, DEFAULT_SHOP);
      expect(batch.proved).toBe(true);
      expect(batch.seconds).toBeCloseTo(leastOf(sequences), 6);
    }),
  );
});

test('every operation once, those of a part in its own order; never dearer than one part after another', () => {
  fc.assert(
    fc.property(anyJob, (job) => {
      const sequences = job.map((steps, i) => sequence(`part-${i}`, steps));
      const { steps, seconds, apart } = batchOf(sequences, DEFAULT_SHOP);
      for (const { part, steps: own } of sequences)
        expect(steps.filter((s) => s.part === part).map((s) => s.step)).toEqual(own.map((_, i) => i));
      expect(steps.reduce((sum, s) => sum + s.seconds, 0)).toBeCloseTo(seconds, 6);
      expect(seconds).toBeLessThanOrEqual(apart + 1e-9);
    }),
  );
});

describe('by hand', () => {
  const few = group([100]);
  const { tools, tool, walk } = DEFAULT_COSTS;
  const change = tools + tool; // one finger put in or taken out
  /** The brake begins with all its fingers on. */
  const first = tools + tool * ((DEFAULT_SHOP.brake as Brake).fingers.length - 1);
  const many = group([100, 50]);

  test('two trays with the same two set-ups change tools once, not three times', () => {
    const tray = (name: string) => sequence(name, [{ tools: few }, { tools: many }]);
    const { seconds, apart, steps } = batchOf([tray('small'), tray('large')], DEFAULT_SHOP);
    expect(apart).toBe(first + 3 * change);
    expect(seconds).toBe(first + change);
    expect(steps.map((s) => s.changes)).toEqual([['tools'], [], ['tools'], []]);
  });

  test('a press begins with nothing in it: die and punch are mounted once for all parts that they serve', () => {
    const press = { punch: 'straight', die: 'V 8' } as PressSetting;
    const tray = (name: string, die: string) =>
      sequence(name, [{ machine: 'press', press: { ...press, die }, tools: many }]);
    const { seconds, apart } = batchOf([tray('a', 'V 8'), tray('b', 'V 12'), tray('c', 'V 8')], DEFAULT_SHOP);
    const mounted = tools + 3 * tool;
    const die = tools + 2 * tool; // one out, one in; the punch stays
    expect(apart).toBe(mounted + 2 * die);
    expect(seconds).toBe(mounted + die);
  });

  test('tools stay on the brake while a part is bent in the vise', () => {
    const part = sequence('part', [{ tools: few }, { machine: 'vise', setAngle: null, setBack: null }]);
    const { seconds } = batchOf([part, sequence('other', [{ tools: few }])], DEFAULT_SHOP);
    expect(seconds).toBe(first + walk);
  });

  test('many parts: an order all the same, and said not to be proved', () => {
    const wide = Array.from({ length: 9 }, (_, i) =>
      sequence(
        `part-${i}`,
        Array.from({ length: 4 }, (_, k) => ({
          setAngle: 20 + ((7 * i + 3 * k) % 11),
          setBack: 1 + (k % 2),
        })),
      ),
    );
    const batch = batchOf(wide, DEFAULT_SHOP);
    expect(batch.steps).toHaveLength(36);
    expect(batch.proved).toBe(false);
    expect(batch.seconds).toBeLessThan(batch.apart);
  });

  test('a part that cannot be bent is left out', () => {
    const batch = batchOf([sequence('part', [{}]), sequence('other', [])], DEFAULT_SHOP);
    expect(batch.steps.map((s) => s.part)).toEqual(['part']);
  });
});
