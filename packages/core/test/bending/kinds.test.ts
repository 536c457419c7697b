import { RULE_KINDS } from '@tinwright/core';
import { expect, test } from 'vitest';
import * as z from 'zod/mini';

const STOCK = { name: 'mild-steel', k: 0.407, kSource: 'the row of the material' };
const BEND = { thickness: 1, insideRadius: 1, angle: 90 };

const kind = (name: string) => {
  const found = RULE_KINDS.find((k) => k.name === name);
  if (found === undefined) throw new Error(`there is no rule ${name}`);
  return found;
};
const accepts = (name: string, constants: unknown) =>
  z.safeParse(z.strictObject(kind(name).constants), constants).success;
const make = (name: string, constants: object) => kind(name).make(constants as never, STOCK, []);

test.each(['k-factor', 'din-6935', 'handbook', 'linear', 'test-strip', 'nominal'])(
  '%s: a rule of that name can be made',
  (name) => {
    const constants = { group: 'medium', perRadius: 0.5, perThickness: 1.5 };
    expect(make(name, constants).name).toBe(name);
    expect(kind(name).summary).not.toBe('');
  },
);

test('every rule: its name once', () => {
  const names = RULE_KINDS.map((k) => k.name);
  expect(new Set(names).size).toBe(names.length);
});

test('k-factor without k: the k of the material and its source', () => {
  const rule = make('k-factor', {});
  expect(rule.source).toBe('the row of the material');
  expect(rule.terms(BEND).allowance).toBeCloseTo((Math.PI / 2) * 1.407, 12);
});

test('k-factor with k: that k, given in the job', () => {
  const rule = make('k-factor', { k: 0.33 });
  expect(rule.source).toBe('k given in the job');
  expect(rule.terms(BEND).allowance).toBeCloseTo((Math.PI / 2) * 1.33, 12);
});

test('handbook and linear: their constants arrive', () => {
  expect(make('handbook', { group: 'hard' }).terms(BEND).allowance).toBeCloseTo(0.71 + 1.57, 12);
  expect(make('linear', { perRadius: 0.5, perThickness: 1.5 }).terms(BEND).deduction).toBeCloseTo(2, 12);
  expect(make('linear', { perRadius: 0.1, perThickness: 1 }).terms(BEND).deduction).toBeCloseTo(1.1, 12);
});

test.each([
  ['k-factor', {}, true],
  ['k-factor', { k: 0.42 }, true],
  ['k-factor', { k: 1 }, true],
  ['k-factor', { k: 0 }, false],
  ['k-factor', { k: 1.01 }, false],
  ['k-factor', { k: '0.4' }, false],
  ['k-factor', { k: Number.NaN }, false],
  ['din-6935', {}, true],
  ['din-6935', { k: 0.4 }, false],
  ['handbook', { group: 'soft' }, true],
  ['handbook', { group: 'medium' }, true],
  ['handbook', { group: 'hard' }, true],
  ['handbook', { group: 'steel' }, false],
  ['handbook', {}, false],
  ['linear', { perRadius: 0.5, perThickness: 1.5 }, true],
  ['linear', { perRadius: 0.5 }, false],
  ['linear', { perRadius: -0.1, perThickness: 1 }, false],
  ['linear', { perRadius: 2.1, perThickness: 1 }, false],
  ['linear', { perRadius: 1, perThickness: 3.1 }, false],
  ['test-strip', {}, true],
  ['test-strip', { k: 0.4 }, false],
  ['nominal', {}, true],
])('%s with %j: read is %s', (name, constants, read) => {
  expect(accepts(name, constants)).toBe(read);
});
