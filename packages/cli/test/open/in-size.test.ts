import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { tinwright } from '../host.js';
import { emptyFolder } from '../place.js';

const JOB = `units: mm
stock: { material: mild-steel, thickness: 1 }
parts:
  - { name: tray, family: open-box, length: 300, width: 200, height: 50 }
sizes:
  - { name: small, tray.length: 200 }
  - { name: flat, tray.height: 0.5 }
`;

async function job(text = JOB) {
  const folder = await emptyFolder();
  const file = join(folder, 'tray.yaml');
  await writeFile(file, text);
  return { folder, file };
}

test('a size of a job is made, drawn and packed as if the job said its values', async () => {
  const { folder, file } = await job();
  const made = join(folder, 'made');
  expect((await tinwright('make', file, '--size', 'small', '--out', made)).exit).toBe(0);
  const { parts } = JSON.parse(await readFile(join(made, 'job.json'), 'utf8'));
  expect(parts[0].formed.x).toBe(200);
  const packet = await tinwright('packet', file, '--size', 'small', '--out', join(folder, 'p.html'));
  expect(packet.exit).toBe(0);
  const html = await readFile(join(folder, 'p.html'), 'utf8');
  expect(html).not.toContain('396.4');
  expect(html).toContain('Job: small'); // so that sheets of several sizes can be told apart
});

test('a size that no row has is told with those there are, one that cannot be at its row', async () => {
  const { file } = await job();
  const none = await tinwright('plan', file, '--size', 'smal');
  expect([none.exit, none.err]).toEqual([
    2,
    expect.stringContaining('tray.yaml:6:3: sizes: there is no size "smal". Did you mean "small"?'),
  ]);
  const flat = await tinwright('make', file, '--size', 'flat');
  expect([flat.exit, flat.err]).toEqual([2, expect.stringContaining('tray.yaml:7:5: sizes[1]: height')]);
});

test('a row of sizes that names nothing is told at its place, with the nearest name', async () => {
  const { file, folder } = await job(JOB.replace('tray.length: 200', 'tray.lenght: 200'));
  const wrong = 'unknown column "tray.lenght". Did you mean "tray.length"?';
  const made = await tinwright('sizes', file, '--out', join(folder, 's'));
  expect([made.exit, made.err]).toEqual([2, expect.stringContaining(`tray.yaml:6:33: ${wrong}`)]);
  const one = await tinwright('make', file, '--size', 'small');
  expect([one.exit, one.err]).toEqual([2, expect.stringContaining(`tray.yaml:6:5: sizes[0]: ${wrong}`)]);
});

test('what a row leaves missing is told at the row, what the job lacks at the job', async () => {
  const row = '  - { name: soft, stock.material: copper, bending.insideRadius: 2 }\n';
  const { file, folder } = await job(JOB.replace(/.*flat.*\n/, row));
  const missing = 'bending.rule: missing. One of k-factor,';
  for (const argv of [
    ['check', file],
    ['make', file, '--size', 'soft', '--out', join(folder, 'made')],
    ['packet', file, '--sizes', '--out', join(folder, 'packets')],
  ]) {
    const { exit, err } = await tinwright(...argv);
    expect([exit, err]).toEqual([2, expect.stringContaining(`tray.yaml:7:5: sizes[1]: ${missing}`)]);
  }
  const made = await tinwright('sizes', file, '--out', join(folder, 'sizes'));
  expect([made.exit, made.err]).toEqual([1, expect.stringContaining(`${file}:7:5: soft: ${missing}`)]);
  const { file: lacking } = await job(JOB.replace('thickness: 1', 'thicknes: 1'));
  const wrong = await tinwright('make', lacking, '--size', 'small');
  expect(wrong.err).toMatch(/tray\.yaml:2:\d+: stock/);
  expect(wrong.err).not.toContain('sizes[0]');
});

test('a check looks at every row of sizes, and tells one that cannot be at its row', async () => {
  const { file } = await job(JOB.replace(/.*flat.*\n/, '  - { name: deep, tray.height: 160 }\n'));
  const looked = await tinwright('check', file, '--shop', 'default');
  expect(looked.exit).toBe(1);
  expect(looked.out).toMatch(
    /size small: \d+ findings\.\nsize deep: \d+ findings, 1 error\.\n {2}error tray: /,
  );
  const json = JSON.parse((await tinwright('check', file, '--json')).out);
  expect(json.sizes.map((s: { name: string }) => s.name)).toEqual(['small', 'deep']);
  const { file: other } = await job();
  const flat = await tinwright('check', other);
  expect([flat.exit, flat.err]).toEqual([2, expect.stringContaining('tray.yaml:7:5: sizes[1]: height')]);
});
