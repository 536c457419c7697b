import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { tinwright } from '../host.js';
import { stripJob } from '../jobs.js';
import { below, emptyFolder, jobFile } from '../place.js';

/** Run `page` on the strip, into a folder of its own. */
async function made(...options: readonly string[]) {
  const folder = await emptyFolder();
  const out = join(folder, 'strip.html');
  return {
    ...(await tinwright('page', await jobFile(stripJob()), '--out', out, ...options)),
    folder,
    file: out,
  };
}

test('one file: the job as it was written, nothing loaded from elsewhere', async () => {
  const { exit, out, err, folder, file } = await made();
  expect({ exit, err }).toEqual({ exit: 0, err: '' });
  expect(out).toBe(`${file}: open it in a browser.\n`);
  expect(await below(folder)).toEqual(['strip.html']);
  const html = await readFile(file, 'utf8');
  expect(html).toContain("default-src 'none'");
  expect(html.match(/<(?:script|link|img)[^>]*(?:src|href)=/g)).toBeNull();
  const [, content = ''] = /<script type="application\/json" id="content">(.*?)<\/script>/s.exec(html) ?? [];
  expect(JSON.parse(content)).toMatchObject({ language: 'en', locked: [], worksheet: false });
  expect(JSON.parse(content).text).toContain('bent-strip');
});

test('what a class finds locked, and the language, stand in the file', async () => {
  const { file } = await made(
    '--lock',
    'stock',
    '--lock',
    'parts.bracket.width',
    '--lang',
    'de',
    '--worksheet',
  );
  const html = await readFile(file, 'utf8');
  expect(html).toContain('"language":"de","locked":["stock","parts.bracket.width"],"worksheet":true');
});

test.each([
  ['nothing', 'Known: units'],
  ['stok', 'Did you mean "stock"?'],
  ['bracket.width', 'Known: units'],
  ['stock.thicknes', 'Did you mean "thickness"?'],
  ['parts.braket.width', 'Did you mean "bracket"?'],
  ['parts.bracket.widht', 'Did you mean "width"?'],
  ['parts.bracket.legs.first', 'is no place of the job'],
])('a lock that names nothing of the job is refused, with what is there: %s', async (lock, said) => {
  const { exit, err, folder } = await made('--lock', lock);
  expect({ exit, made: await below(folder) }).toEqual({ exit: 2, made: [] });
  expect(err).toContain(said);
});

test('a lock may name any place that the job has or may have', async () => {
  const places = [
    'units',
    'stock.thickness',
    'cutBy',
    'parts.bracket',
    'parts.bracket.legs.1',
    'parts.bracket.edges',
  ];
  expect((await made(...places.flatMap((p) => ['--lock', p]))).exit).toBe(0);
});

test('a job that cannot be makes no page', async () => {
  const folder = await emptyFolder();
  const out = join(folder, 'page.html');
  const { exit, err } = await tinwright(
    'page',
    await jobFile(stripJob(['width: 40', 'width: -3'])),
    '--out',
    out,
  );
  expect(exit).toBe(2);
  expect(err).toContain('width');
  expect((await below(folder)).filter((f) => f.endsWith('.html'))).toEqual([]);
});

test('a job that a page does not read makes none', async () => {
  const folder = await emptyFolder();
  const job = await jobFile(`${stripJob()}\n${'# and so on\n'.repeat(20_000)}`);
  const { exit, err } = await tinwright('page', job, '--out', join(folder, 'long.html'));
  expect(err).toMatch(/^page: a job of \d+ characters given, a page reads up to 200000\./);
  expect(exit).toBe(2);
  expect(await below(folder)).toEqual([]);
});
