import { describe, expect, test } from 'vitest';
import { carrierJob, measuredJob } from '../carrier.js';
import { tinwright } from '../host.js';
import { jobFile, make, refused } from '../place.js';

test.each([
  [
    'a part that is not there: told at the key',
    'bodi.insideWidth: 157',
    '35:3: measured.bodi.insideWidth: there is no part "bodi". Did you mean "body"? Known: body, end, handle.',
  ],
  [
    'a size the part does not have: told at the key',
    'end.widht: 157',
    '35:3: measured.end.widht: there is no size "widht" to measure. Did you mean "width"? Known: width, shoulderHeight, height, crownWidth.',
  ],
  [
    'no size: told at the key',
    'body: 157',
    '35:3: measured.body: "body" given. Write part.size, such as body.insideWidth.',
  ],
])('%s', async (_, line, says) => {
  const [first] = await refused(measuredJob(line));
  expect(first).toBe(says);
});

test.each([
  ['an angle', 'end.height: 90 deg', /^35:15: measured\.end\.height: "90 deg" is not a length/],
  [
    'a comma for a point',
    'end.height: 139,5 mm',
    /^35:15: measured\.end\.height: "139,5 mm" is not a length/,
  ],
  ['two units', 'end.height: 10 cm 5 mm', /^35:15: .*mixes units/],
  ['nothing', 'end.height: 0', /^35:15: measured\.end\.height: 0 mm given, more than 0 to 10000 mm allowed/],
  ['less than nothing', 'end.height: -3', /^35:15: measured\.end\.height: -3 mm given/],
  ['a list', 'end.height: [1]', /^35:15: measured\.end\.height: a list given, a length/],
  ['twice, by two names', 'body.width: 160\n  body.insideWidth: 158', /the same measure taken twice/],
  ['a size no end can have', 'end.height: 30', /no gusset-end can measure so/],
])('a measure that is %s', async (_, line, says) => {
  const [first] = await refused(measuredJob(line));
  expect(first).toMatch(says);
});

test.each([
  ['millimetres', '157.7 mm'],
  ['centimetres', '15.77 cm'],
  ['a plain number in the unit of the job', '157.7'],
])('a measure in %s is taken', async (_, value) => {
  const { exit, out } = await make(measuredJob(`body.insideWidth: ${value}`), '--json');
  expect(exit).toBe(0);
  expect(JSON.parse(out).findings.map((f: { code: string }) => f.code)).not.toContain('measured-far');
});

test('check of a job with a measure tells what is far off', async () => {
  const { exit, out } = await tinwright('check', await jobFile(measuredJob('end.height: 137')));
  expect(exit).toBe(0);
  // ISO 2768-1 class c, over 120 to 400 mm: 1.2 mm
  expect(out).toMatch(/^warning end: height measured at 137 mm, computed 140 mm: 3 mm apart$/m);
});

describe('what is wrong with an option is told at the option', () => {
  test.each([
    ['refit', 'body.insideWidth=-5', '--measured body.insideWidth: -5 mm given, more than 0 to 10000 mm'],
    ['plan', 'bodi.x=3', '--measured bodi.x: there is no part "bodi"'],
    ['packet', 'body.insideWidth=0x10', '--measured body.insideWidth: "0x10" is not a length'],
  ])('%s --measured %s', async (verb, measured, says) => {
    const { exit, err } = await tinwright(verb, await jobFile(carrierJob()), '--measured', measured);
    expect(exit).toBe(2);
    expect(err).toContain(`${verb}: ${says}`);
  });

  test('bend -k', async () => {
    expect((await tinwright('bend', '--thickness', '1', '-k', '5')).err).toMatch(/^bend: -k: 5 given/);
    expect((await tinwright('bend', '--thickness', '1', '-k', '0x1')).err).toMatch(/^bend: -k: "0x1" given/);
  });
});
