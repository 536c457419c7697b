import { describe, expect, test } from 'vitest';
import { stripJob } from '../jobs.js';
import { make, refused } from '../place.js';

const gauge = (value: string) => ['thickness: 1.0', `gauge: ${value}`] as const;

// galvanised 20 gauge: 0.0396 in; steel 20: 0.0359 in; 30: 0.0157 and 29: 0.0172 in (two charts that agree)
test('a gauge of tinplate, which has no system: refused, with what it means in the systems there are', async () => {
  const [problem, ...more] = await refused(stripJob(gauge('20'), ['galvanised-steel', 'tinplate']));
  expect(more).toEqual([]);
  expect(problem).toContain('4:10: stock.gauge: gauge 20 given for tinplate, which has no gauge system');
  for (const meaning of ['steel 0.912 mm', 'galvanised 1.006 mm', 'aluminium 0.813 mm'])
    expect(problem).toContain(meaning);
});

test('the system named in that message is taken', async () => {
  const { exit } = await make(
    stripJob(gauge('{ system: steel, number: 20 }'), ['galvanised-steel', 'tinplate']),
  );
  expect(exit).toBe(0);
});

describe('a gauge the system does not have', () => {
  test.each([
    ['40', 'gauge 40 given', 'Nearest: 30 (0.399 mm) and 29 (0.437 mm)'],
    ['9', 'gauge 9 given', 'Nearest: 10 (3.51 mm) and 11 (3.132 mm)'],
  ])('%s names its neighbours', async (number, given, nearest) => {
    const [problem, ...more] = await refused(stripJob(gauge(number)));
    expect(more).toEqual([]);
    expect(problem).toContain(
      `4:10: stock.gauge: ${given}, the galvanised system has whole numbers from 10 to 30`,
    );
    expect(problem).toContain(nearest);
  });

  test('the neighbours pass', async () => {
    for (const number of ['30', '29', '10', '11']) {
      const { exit } = await make(stripJob(gauge(number), ['insideRadius: 1.0', 'insideRadius: 4']));
      expect(exit).toBe(0);
    }
  });
});

test.each([
  ['0', 'gauge 0 given, the galvanised system has whole numbers from 10 to 30'],
  ['200', 'gauge 200 given, the galvanised system has whole numbers from 10 to 30'],
  ['-20', 'gauge -20 given, the galvanised system has whole numbers from 10 to 30'],
])('gauge %s is refused, with the range', async (number, says) => {
  expect((await refused(stripJob(gauge(number)))).join()).toContain(`4:10: stock.gauge: ${says}`);
});

test.each(['20.5', 'twenty', '[20]', '{ system: sheet, number: 20 }', '{ system: steel }'])(
  'gauge %s is refused at its place',
  async (value) => {
    const problems = await refused(stripJob(gauge(value)));
    expect(problems.filter((p) => p.startsWith('4:'))).toHaveLength(problems.length);
  },
);

test.each([
  ['20.5', '4:10: stock.gauge: 20.5 given, a whole number allowed.'],
  ['twenty', '4:10: stock.gauge: "twenty" given, a gauge number such as 20, or { system, number }, allowed.'],
  [
    '{ system: galvanized, number: 20 }',
    '4:20: stock.gauge.system: "galvanized" given. Did you mean "galvanised"? Known: ',
  ],
  ['{ system: steel }', '4:10: stock.gauge.number: missing. Give a number.'],
  ['{ system: steel, number: 20.5 }', '4:35: stock.gauge.number: 20.5 given, a whole number allowed.'],
])('gauge %s is told in words of gauges', async (value, says) => {
  const [problem, ...more] = await refused(stripJob(gauge(value)));
  expect(more).toEqual([]);
  expect(problem?.startsWith(says)).toBe(true);
});

test('thickness and gauge together are refused', async () => {
  const [problem, ...more] = await refused(stripJob(['thickness: 1.0', 'thickness: 1.0\n  gauge: 20']));
  expect(more).toEqual([]);
  expect(problem).toContain('5:10: stock.gauge: thickness and gauge given. Give one of the two');
});
