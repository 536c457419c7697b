import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { parse } from 'csv-parse/sync';
import { expect, test } from 'vitest';
import { tinwright } from '../host.js';
import { emptyFolder } from '../place.js';

const TRAY = `units: mm
stock: { material: mild-steel, thickness: 1 }
parts:
  - { name: tray, family: open-box, length: 300, width: 200, height: 40, quantity: 3 }
`;
const RACK = `units: mm
sheets:
  - { name: half, material: mild-steel, thickness: 1, size: [1000, 1000], price: 20 }
`;
const TABLE = 'name,length\nshort,250\nlong,330\nno,-1\n';

async function made(...options: readonly string[]) {
  const folder = await emptyFolder();
  const at = (name: string) => join(folder, name);
  await writeFile(at('tray.yaml'), TRAY);
  await writeFile(at('rack.yaml'), RACK);
  await writeFile(at('sizes.csv'), TABLE);
  const run = (...more: readonly string[]) => {
    const rack = options.map((o) => (o === 'rack.yaml' ? at(o) : o));
    const asked = ['--table', at('sizes.csv'), '--out', at('out'), '--jobs', '1', ...rack, ...more];
    return tinwright('sizes', at('tray.yaml'), ...asked);
  };
  return { run, read: (name: string) => readFile(at(join('out', name)), 'utf8') };
}

test('with a rack every size has its cut list, and the run says what all of them take, kept ones too', async () => {
  const { run, read } = await made('--rack', 'rack.yaml');
  const first = await run();
  expect(first.exit).toBe(1); // a length below 0 cannot be made
  const rows = parse(await read('sizes.csv'), { columns: true }) as Readonly<Record<string, string>>[];
  expect(rows.map((r) => [r.name, r.sheets, r.price])).toEqual([
    ['short', '1', '20'],
    ['long', '1', '20'],
    ['no', '', ''],
  ]);
  expect(parse(await read('short/cutlist.csv'), { columns: true })).toHaveLength(3);
  expect(JSON.parse(await read('long/job.json')).cutList).toMatchObject({ sheets: 1, blanks: 3 });
  const again = JSON.parse((await run('--json')).out);
  const mass = rows.reduce((sum, r) => sum + Number(r.mass), 0);
  expect(again).toMatchObject({ made: 0, kept: 2, cut: { sizes: 2, sheets: 2, price: 40 } });
  expect(again.cut.mass).toBeCloseTo(mass, 3);
});

test('a cut list is asked for and nobody says what sheets there are: told, sizes are made all the same', async () => {
  const { run } = await made('--cut-list');
  expect((await run()).out).toContain(
    'No cut lists: neither --rack, job nor shop say what sheets there are.',
  );
});
