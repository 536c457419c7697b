import { describe, expect, test } from 'vitest';
import { tinwright } from '../host.js';
import { HEAD, STRIP, stripJob } from '../jobs.js';
import { jobFile, refused } from '../place.js';

// a line break, an escape sequence and a mark that turns the writing round
const HIDDEN = '"a\\nb\\e[31m\\u202E"';
const PRINTED = '"aU+000AbU+001B[31mU+202E"';

describe('characters that do not print are told by their number, one problem on one line', () => {
  test.each([
    [
      'a key of the job',
      `${stripJob()}${HIDDEN}: 1\n`,
      `15:1: ${PRINTED.slice(1, -1)}: unknown key ${PRINTED}`,
    ],
    ['a key of a part', `${HEAD}${STRIP}    ${HIDDEN}: 1\n`, `unknown key ${PRINTED}`],
    ['a length', stripJob(['width: 40', `width: ${HIDDEN}`]), `${PRINTED} is not a length`],
    ['a family', stripJob(['bent-strip', HIDDEN]), `family: ${PRINTED} given`],
    ['a material', stripJob(['galvanised-steel', HIDDEN]), `stock.material: ${PRINTED} given`],
    ['a rule', stripJob(['rule: k-factor\n  k: 0.42', `rule: ${HIDDEN}`]), `bending.rule: ${PRINTED} given`],
    ['a list', stripJob(['[90, 90]', HIDDEN]), `${PRINTED} given, a list allowed`],
    ['the whole job', `${HIDDEN}\n`, `${PRINTED} given`],
    ['an alias', stripJob(['width: 40', 'width: *a\u202Eb']), 'there is nothing named &aU+202Eb'],
  ])('%s', async (_, job, says) => {
    const [problem, ...more] = await refused(job);
    expect(more).toEqual([]);
    expect(problem).toContain(says);
    expect(problem).not.toMatch(/[\p{Cc}\p{Cf}]/u);
  });
});

test.each(['check', 'explain', 'make'])(
  '%s of a word with hidden characters: told by their number',
  async (verb) => {
    const { exit, err } = await tinwright(verb, await jobFile(stripJob()), 'a\u001b[31m\u202eb');
    expect(exit).toBe(2);
    expect(err).toBe(`${verb}: "aU+001B[31mU+202Eb" is one argument too many.\n`);
  },
);

test('a long text is cut off where it is quoted', async () => {
  const [problem] = await refused(stripJob(['bent-strip', 'x'.repeat(500)]));
  expect(problem).toContain(`family: "${'x'.repeat(40)}…" given`);
});
