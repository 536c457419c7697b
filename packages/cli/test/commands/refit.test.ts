import { readFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { CARRIER, carrierJob, measuredJob } from '../carrier.js';
import { type Ran, tinwright, tinwrightReading } from '../host.js';
import { below, jobFile } from '../place.js';

// inside of the channel: 160 and 320 mm less two sheets; of the ends: less two inside radii and 0.4
const [INSIDE, LENGTH, END] = [158, 318, 155.6];

interface Refitted extends Ran {
  readonly folder: string;
  readonly files: readonly string[];
}

/** Refit a job's text; the folder is the one that would be written. */
async function refit(text: string, ...options: readonly string[]): Promise<Refitted> {
  const job = await jobFile(text);
  const folder = join(dirname(job), 'again');
  const ran = await tinwright('refit', job, '--out', folder, ...options);
  const all = await below(dirname(job));
  return { ...ran, folder, files: all.filter((f) => f.startsWith('again/')).map((f) => f.slice(6)) };
}

const measured = (text: string) => ['--measured', text];

describe('a channel that came out 0.3 mm narrow', () => {
  test('a table of what changed: part, size, before and after, which was measured; exit 0', async () => {
    const { exit, out, err } = await refit(CARRIER, ...measured(`body.insideWidth=${INSIDE - 0.3}`));
    expect({ exit, err }).toEqual({ exit: 0, err: '' });
    const rows = out.split('\n').map((l) => l.split(/ {2,}/));
    expect(rows).toContainEqual(['body', 'insideWidth', `${INSIDE} -> ${INSIDE - 0.3} mm`, 'measured']);
    expect(rows).toContainEqual(['end', 'width', `${END} -> ${(END - 0.3).toFixed(1)} mm`]);
    expect(rows).toContainEqual(['end', 'blank x', `${END} -> ${(END - 0.3).toFixed(1)} mm`]);
    expect(out).toMatch(/^1 part to cut anew: end\. 3 files in .*again\.\n$/m);
  });

  test('files of the changed part only, with a manifest of their own', async () => {
    const { files, folder } = await refit(CARRIER, ...measured(`body.insideWidth=${INSIDE - 0.3}`));
    expect(files).toEqual(['job.json', 'parts', 'parts/end.dxf', 'parts/end.svg']);
    const manifest = JSON.parse(await readFile(join(folder, 'job.json'), 'utf8'));
    expect(manifest.parts.map((p: { name: string }) => p.name)).toEqual(['end']);
    expect(manifest.parts[0].blank.x).toBeCloseTo(END - 0.3, 6);
    expect(manifest.parts[0].marks.length).toBeGreaterThan(5);
  });

  test('a length with a unit of its own', async () => {
    const { out, exit } = await refit(CARRIER, ...measured('body.insideWidth=6 7/32 in'));
    expect(exit).toBe(0);
    expect(out).toMatch(/^body {2,}insideWidth {2,}158 -> 157\.96 mm {2,}measured$/m);
  });

  test('--json: changes in mm, names of the parts, files', async () => {
    const { out, exit } = await refit(CARRIER, ...measured(`body.insideWidth=${INSIDE - 0.3}`), '--json');
    expect(exit).toBe(0);
    const answer = JSON.parse(out);
    expect(answer.changed).toEqual(['end']);
    expect(answer.files).toEqual(['parts/end.dxf', 'parts/end.svg', 'job.json']);
    expect(answer.changes).toContainEqual({
      part: 'end',
      dimension: 'width',
      before: expect.closeTo(END, 6),
      after: expect.closeTo(END - 0.3, 6),
      measured: false,
    });
  });

  test('--dxf r12 writes R12', async () => {
    const { folder } = await refit(CARRIER, ...measured(`body.insideWidth=${INSIDE - 0.3}`), '--dxf', 'r12');
    expect(await readFile(join(folder, 'parts/end.dxf'), 'latin1')).toContain('AC1009');
  });
});

describe('what does not change', () => {
  test('the computed size: nothing to cut, nothing written', async () => {
    const { exit, out, files } = await refit(CARRIER, ...measured(`body.insideWidth=${INSIDE}`));
    expect(exit).toBe(0);
    expect(out).toBe('No size changes.\nNothing to cut anew.\n');
    expect(files).toEqual([]);
  });

  test('a part given as made: its size stays, it is not written', async () => {
    const { out, files, exit } = await refit(
      CARRIER,
      ...measured(`body.insideLength=${LENGTH - 0.1}`),
      '--made',
      'handle',
    );
    expect(exit).toBe(0);
    expect(out).not.toMatch(/^handle {2,}span/m);
    expect(out).toMatch(/Nothing to cut anew\.\n$/);
    expect(files).toEqual([]);
  });

  test('two measures, two parts made: each may be given again', async () => {
    const { exit, out, files } = await refit(
      CARRIER,
      ...measured(`body.insideWidth=${INSIDE - 0.2}`),
      ...measured(`body.insideLength=${LENGTH - 0.1}`),
      '--made',
      'end',
      '--made',
      'handle',
    );
    expect(exit).toBe(0);
    expect(out).toMatch(/^body {2,}insideWidth/m);
    expect(out).toMatch(/^body {2,}insideLength/m);
    expect(files).toEqual([]);
  });

  test('the job file stays as it was', async () => {
    const job = await jobFile(CARRIER);
    await tinwright('refit', job, '--out', join(dirname(job), 'again'), ...measured('body.insideWidth=157'));
    expect(await readFile(job, 'utf8')).toBe(CARRIER);
  });
});

test('a refit of the job with its measure written in changes nothing more', async () => {
  const first = await refit(CARRIER, ...measured('body.insideWidth=157.7'));
  const second = await refit(measuredJob('body.insideWidth: 157.7'), ...measured('body.insideWidth=157.7'));
  expect(first.out).toContain('1 part to cut anew');
  expect(second.out).toMatch(/^No size changes\./);
  expect(second.files).toEqual([]);
});

test('a made handle that no longer drops in is an error, exit 1', async () => {
  const { exit, out } = await refit(
    CARRIER,
    ...measured(`body.insideLength=${LENGTH - 0.8}`),
    '--made',
    'handle',
  );
  expect(exit).toBe(1);
  expect(out).toMatch(/^error handle: joint grip-east: .* run 0\.6 mm into each other$/m);
});

test('a measure far from the computed one asks to measure again', async () => {
  // ISO 2768-1 class c, over 120 to 400 mm: 1.2 mm
  const { exit, out } = await refit(CARRIER, ...measured(`body.insideWidth=${INSIDE - 2}`));
  expect(exit).toBe(0);
  expect(out).toMatch(/^warning body: insideWidth measured at 156 mm, computed 158 mm: 2 mm apart$/m);
  expect(out).toContain('fix: measure again');
});

test('- reads the job from standard input', async () => {
  const { exit, out } = await tinwrightReading(
    CARRIER,
    'refit',
    '-',
    ...measured(`body.insideWidth=${INSIDE}`),
  );
  expect({ exit, out }).toEqual({ exit: 0, out: 'No size changes.\nNothing to cut anew.\n' });
});

describe('options that cannot be', () => {
  test.each([
    ['none', [], 'give what was measured: --measured PART.SIZE=LENGTH'],
    ['no equals sign', measured('body.insideWidth'), '--measured body.insideWidth: write PART.SIZE=LENGTH'],
    ['no name', measured('=157'), '--measured =157: write PART.SIZE=LENGTH'],
    ['no length', measured('body.insideWidth='), '--measured body.insideWidth=: write PART.SIZE=LENGTH'],
    [
      'one size twice',
      [...measured('body.insideWidth=157'), ...measured('body.insideWidth=156')],
      '--measured body.insideWidth given more than once',
    ],
  ])('%s: told on stderr, exit 2, nothing written', async (_, options, says) => {
    const { exit, out, err, files } = await refit(CARRIER, ...options);
    expect({ exit, out, files }).toEqual({ exit: 2, out: '', files: [] });
    expect(err).toContain(`refit: ${says}`);
  });

  test.each([
    ['an unknown part', measured('bodi.insideWidth=157'), 'there is no part "bodi". Did you mean "body"?'],
    [
      'an unknown size',
      measured('body.insideWidht=157'),
      'there is no size "insideWidht" to measure. Did you mean "insideWidth"?',
    ],
    ['no length', measured('body.insideWidth=wide'), '"wide" is not a length'],
    ['an angle', measured('body.insideWidth=90 deg'), '"90 deg" is not a length'],
    ['a size no such part can have', measured('body.insideWidth=12'), 'no hemmed-channel can measure so'],
    [
      'a made part that is not there',
      [...measured('body.insideWidth=157'), '--made', 'ends'],
      'there is no part "ends" that could be made. Did you mean "end"?',
    ],
  ])('%s: told on stderr, exit 2, nothing written', async (_, options, says) => {
    const { exit, out, err, files } = await refit(CARRIER, ...options);
    expect({ exit, out, files }).toEqual({ exit: 2, out: '', files: [] });
    expect(err.split('\n')[0]).toContain(says);
  });

  test('a job that cannot be read: its problem with its place, exit 2', async () => {
    const { exit, err } = await refit(carrierJob(['height: 50', 'height: 0']), ...measured('body.width=157'));
    expect(exit).toBe(2);
    expect(err).toMatch(/job\.yaml:13:13: part "body": height: 0 mm given/);
  });

  test('a folder that cannot be written: exit 3', async () => {
    const job = await jobFile(CARRIER);
    const ran = await tinwright(
      'refit',
      job,
      '--out',
      join(job, 'again'),
      ...measured('body.insideWidth=157'),
    );
    expect(ran.exit).toBe(3);
  });
});
