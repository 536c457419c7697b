// Stands for vitest where mutants are tried: tests are collected, and run by whoever asks.
import {
  ASYMMETRIC_MATCHERS_OBJECT,
  JestAsymmetricMatchers,
  JestChaiExpect,
  JestExtend,
  setState,
} from '@vitest/expect';
import * as chai from 'chai';

for (const plugin of [JestExtend, JestChaiExpect, JestAsymmetricMatchers]) chai.use(plugin);

export const expect = Object.assign(
  (value, message) => chai.expect(value, message),
  chai.expect,
  globalThis[ASYMMETRIC_MATCHERS_OBJECT],
  {
    unreachable: (message) => chai.assert.fail(message),
  },
);
setState({ assertionCalls: 0, isExpectingAssertions: false }, expect);

/** Tests as their files gave them, and what has to run before. */
export const collected = [];
export const before = [];
let group = '';

export const beforeAll = (work) => {
  before.push(work);
};

const each = (add) => (rows) => (name, work) => {
  rows.forEach((row, i) => {
    const given = Array.isArray(row) ? row : [row];
    add(`${name} [${i}]`, () => work(...given));
  });
};

const addTest = (name, work) => collected.push({ name: `${group}${name}`, work });
const addGroup = (name, work) => {
  const outer = group;
  group = `${outer}${name} › `;
  work();
  group = outer;
};

export const test = Object.assign((name, work) => addTest(name, work), { each: each(addTest) });
export const it = test;
export const describe = Object.assign((name, work) => addGroup(name, work), { each: each(addGroup) });
