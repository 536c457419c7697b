// What can be bent at all, looked at from the end; and a quick look at few states.
import { atOnce } from '@tinwright/core/internal';
import { DEFAULT_SHOP, EXAMPLE_PRESS, type Shop } from '@tinwright/shop';
import { describe, expect, test } from 'vitest';
import { partToBend } from '../../src/sequence/answer/planned-sequence.js';
import { maskOf, within } from '../../src/sequence/part/mask.js';
import { isNext, isOpen } from '../../src/sequence/part/operations.js';
import { setOnMachines } from '../../src/sequence/search/at-machines.js';
import { dive } from '../../src/sequence/search/dive.js';
import { fromEnd } from '../../src/sequence/search/from-end.js';
import { problemOf } from '../../src/sequence/search/problem.js';
import { planned } from '../shops.js';

const all: Shop = { ...DEFAULT_SHOP, press: EXAMPLE_PRESS };
const press: Shop = { ...DEFAULT_SHOP, brake: null, vise: null, press: EXAMPLE_PRESS };
const parts = {
  box: { family: 'open-box', length: 120, width: 90, height: 40 },
  'box too deep': { family: 'open-box', length: 140, width: 90, height: 130 },
  'tabbed box': { family: 'open-box', length: 200, width: 120, height: 40, corner: 'tabbed' },
  'tray with returns': { family: 'tray', length: 200, width: 120, height: 30, rim: { return: 12 } },
  channel: { family: 'bent-strip', width: 60, legs: [60, 20, 60], angles: [90, 90] },
  hat: { family: 'bent-strip', width: 60, legs: [18, 30, 40, 30, 18], angles: [-90, 90, 90, -90] },
} as const;
const shops = { 'the usual shop': DEFAULT_SHOP, 'with a press': all, 'a press alone': press };
const cases = Object.entries(parts).flatMap(([name, part]) =>
  Object.entries(shops).map(([where, shop]) => [name, where, planned(part), shop] as const),
);

describe.each(cases)('%s, %s', (_, __, part, shop) => {
  const given = partToBend(part);
  const problem = problemOf(given, shop);
  const { work, contact, stations } = problem;
  const found = atOnce(fromEnd(problem, work.all, 5000));

  test('from the end there is an order where there is one from the start', () => {
    const { moves, bound } = dive(problem, 5000);
    expect(found === 'none').toBe(moves === null);
    expect(found).not.toBe('unknown');
    if (moves === null) expect(bound).toBe(Infinity);
  });

  test('nothing is in the way of any stroke of the order that is found', () => {
    let done = maskOf([]);
    for (const o of typeof found === 'string' ? [] : found) {
      expect(isOpen(o, done) && isNext(work, o, done)).toBe(true);
      expect(contact(o, done)).toBeNull();
      const goes = stations.some((s) =>
        (['parent', 'child'] as const).some((held) => s.mount(o, held, done).obstacle === null),
      );
      expect(goes).toBe(true);
      done = { low: done.low | o.mask.low, high: done.high | o.mask.high };
    }
    if (typeof found !== 'string') expect(done).toEqual(work.all);
  });

  test('a quick look sees what a whole one sees, in every state of the steps it looks at', () => {
    const { blank, material } = given;
    const some = maskOf(work.steps.filter((s) => s.index % 4 !== 1).map((s) => s.index));
    const shape = { part: part.part, material, longest: Math.max(...blank) };
    const quick = setOnMachines(shape, () => some)(shop, 'near');
    const own = work.operations.filter((o) => within(o.mask, some));
    const states = Array.from({ length: some.low + 1 }, (_, low) => ({ low, high: 0 }));
    const asked = states
      .filter((done) => within(done, some))
      .flatMap((done) => own.filter((o) => isOpen(o, done)).map((o) => ({ o, done })))
      .flatMap((at) => stations.map((station, i) => ({ ...at, station, look: quick.stations[i] })));
    expect(asked.length).toBeGreaterThan(0);
    for (const { o, done, station, look } of asked)
      for (const held of ['parent', 'child'] as const) {
        const [whole, soon] = [station, look].map((s) => s?.mount(o, held, done));
        expect(soon?.obstacle === null).toBe(whole?.obstacle === null);
        if (whole?.obstacle === null) expect(soon).toEqual({ ...whole, operation: soon?.operation });
      }
  });
});

test('it gives up after so many states', () => {
  const problem = problemOf(partToBend(planned(parts.box)), DEFAULT_SHOP);
  expect(atOnce(fromEnd(problem, problem.work.all, 1))).toBe('unknown');
});
