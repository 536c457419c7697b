import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { readPdf } from '../../../../tests/kit/read-pdf.js';
import { tinwright } from '../host.js';
import { stripJob } from '../jobs.js';
import { below, emptyFolder, jobFile } from '../place.js';

/** Run `template` on the strip, into a folder of its own. */
async function templated(...options: readonly string[]) {
  const out = join(await emptyFolder(), 'out');
  const ran = await tinwright('template', await jobFile(stripJob()), '--out', out, ...options);
  return { ...ran, folder: out };
}
const pagesOf = async (folder: string) =>
  (await readPdf(new Uint8Array(await readFile(join(folder, 'templates/bracket.pdf'))))).pages;

test('a strip at full size on A4: its bend lines 58.23 mm apart', async () => {
  const { exit, out, err, folder } = await templated();
  expect({ exit, err }).toEqual({ exit: 0, err: '' });
  expect(out).toBe(`bracket  1:1  1 page  templates/bracket.pdf\n2 files in ${folder}.\n`);
  expect(await below(folder)).toEqual(['templates', 'templates.json', 'templates/bracket.pdf']);
  const [page] = await pagesOf(folder);
  const bends = (page?.paths ?? []).filter(
    ([a, b, ...more]) => a && b && more.length === 0 && Math.abs(Math.abs(a[1] - b[1]) - 40) < 0.05,
  );
  // 60 less a deduction of 4 - (pi/2)·1.42
  const [left, right] = bends.map(([a]) => a?.[0] ?? Number.NaN).toSorted((a, b) => a - b);
  expect((right ?? 0) - (left ?? 0)).toBeCloseTo(60 - (4 - (Math.PI / 2) * 1.42), 2);
});

test('from a roll: the page is as wide as the roll', async () => {
  const { folder } = await templated('--roll', '24 in');
  const [page, ...more] = await pagesOf(folder);
  expect(more).toEqual([]);
  expect([page?.width.toFixed(1), page?.height.toFixed(1)]).toContain('609.6');
});

test.each([
  [['--roll', '50'], /^template: --roll: 50 mm given, 150 to 2000 mm allowed\.\n$/],
  [['--roll', 'wide'], /^template: --roll: "wide" is not a length; /],
  [['--roll', '610', '--paper', 'A4'], /^template: --paper and --roll given; one of the two allowed\.\n$/],
  [['--paper', 'A9'], /^template: --paper: "A9" given\. Known: /],
  [['--part', 'racket'], /^template: part "racket" given\. .*"bracket"/],
] as const)('%j is refused, nothing written', async (options, message) => {
  const { exit, err, folder } = await templated(...options);
  expect(exit).toBe(2);
  expect(err).toMatch(message);
  expect(await below(join(folder, '..'))).toEqual([]);
});
