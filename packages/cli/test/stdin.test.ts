import { join } from 'node:path';
import { expect, test } from 'vitest';
import { tinwright, tinwrightReading } from './host.js';
import { stripJob } from './jobs.js';
import { below, emptyFolder, jobFile } from './place.js';

test('make - writes the set of the job on standard input', async () => {
  const out = join(await emptyFolder(), 'out');
  const { exit, err } = await tinwrightReading(stripJob(), 'make', '-', '--out', out);
  expect({ exit, err }).toEqual({ exit: 0, err: '' });
  expect(await below(out)).toEqual(['job.json', 'parts', 'parts/bracket.dxf', 'parts/bracket.svg']);
});

test.each(['check', 'explain'])('%s - says the same as for the file', async (verb) => {
  const file = await tinwright(verb, await jobFile(stripJob()), '--json');
  expect(await tinwrightReading(stripJob(), verb, '-', '--json')).toEqual(file);
  expect(file.exit).toBe(0);
});

test('a problem is placed in (standard input)', async () => {
  const { exit, out, err } = await tinwrightReading(stripJob(['width: 40', 'width: 0']), 'check', '-');
  expect({ exit, out }).toEqual({ exit: 2, out: '' });
  expect(err).toMatch(/^\(standard input\):12:12: part "bracket": width: 0 mm given/);
});

test.each([
  ['nothing at all', '', '1:1: the job file is empty'],
  ['two megabytes', '#'.repeat(2_000_000), '1:1: a job file of 2000000 bytes given, up to 1000000 allowed'],
  ['bytes that are no text', new Uint8Array([0x6e, 0xff, 0x0a]), '1:1: the job file is not UTF-8 text'],
])('%s on standard input is refused', async (_, input, says) => {
  const { exit, err } = await tinwrightReading(input, 'check', '-');
  expect(exit).toBe(2);
  expect(err).toContain(`(standard input):${says}`);
});
