// What comes to light only when a part is built is said in the unit of the job too.
import { expect, test } from 'vitest';
import { tinwright } from '../host.js';
import { partJob } from '../jobs.js';
import { jobFile, refused } from '../place.js';

const inches = (rule: object) => ({
  units: 'in',
  stock: { material: 'mild-steel', thickness: 0.06 },
  bending: rule,
});
const strip = (rule: object, more: object = {}) =>
  partJob('bent-strip', { width: 1, legs: [2, 2], angles: [120], ...more }, inches(rule));

test('a radius under the range of DIN 6935: 0.05 of 0.06 in', async () => {
  const [problem, ...more] = await refused(strip({ rule: 'din-6935', insideRadius: 0.001 }));
  expect(more).toEqual([]);
  expect(problem).toContain('Use an inside radius of 0.003 in or more, or another rule.');
});

test('constants of the linear rule that leave nothing: v = (2·0.03 + 3·0.06)·120/90', async () => {
  const [problem] = await refused(
    strip({ rule: 'linear', perRadius: 2, perThickness: 3, insideRadius: 0.03 }),
  );
  expect(problem).toContain(
    'v = 0.32 in at 120°, R 0.03 in, T 0.06 in: more than both setbacks (0.18 in) leave.',
  );
});

test('panels in the same place: how deep', async () => {
  const spiral = { legs: [3, 2, 1.2, 0.5, 1.8], angles: [90, 90, 90, 90] };
  const [problem] = await refused(strip({ rule: 'k-factor', insideRadius: 0.06 }, spiral));
  expect(problem).toMatch(/pass through each other, [\d.]+ in deep\. /);
  expect(problem).not.toContain(' mm');
});

test('one bend by itself', async () => {
  const sheet = ['--units', 'in', '--thickness', '0.06', '--radius', '0.001', '--rule', 'din-6935'];
  expect((await tinwright('bend', ...sheet)).err).toContain('Use an inside radius of 0.003 in or more');
});

test('a length given behind an option', async () => {
  const job = await jobFile(strip({ rule: 'k-factor' }));
  for (const [given, told] of [
    ['2', '2 in'],
    ['20 mm', '0.7874 in'],
  ] as const)
    expect((await tinwright('make', job, '--least-edge', given)).err).toBe(
      `make: --least-edge: ${told} given, 0 in to 0.393 in allowed.\n`,
    );
});
