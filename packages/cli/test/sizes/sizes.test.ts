import { appendFile, mkdir, readFile, rename, rm, symlink, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { tinwright } from '../host.js';
import { below, emptyFolder } from '../place.js';

const TRAY = `units: mm
stock: { material: galvanised-steel, thickness: 1 }
bending: { rule: k-factor, k: 0.42, insideRadius: 1 }
parts:
  - { name: tray, family: open-box, length: 300, width: 200, height: 50 }
`;

/** A job and a table in a folder; runs `sizes` on them. */
async function place(table: string, name = 'sizes.csv', job = TRAY) {
  const folder = await emptyFolder();
  const at = (path: string) => join(folder, path);
  await writeFile(at('tray.yaml'), job);
  await writeFile(at(name), table);
  const run = (...more: readonly string[]) =>
    tinwright('sizes', at('tray.yaml'), '--table', at(name), '--out', at('out'), ...more);
  const csv = async () => (await readFile(at('out/sizes.csv'), 'utf8')).trim().split('\n');
  return { folder, at, run, csv };
}

describe('a table of sizes', () => {
  test('a folder a row as make writes it, a list and a picture of all', async () => {
    const { at, run, csv } = await place(
      'name,tray.length,width,stock.thickness\nsmall,200,100,\nlarge,"15 1/2 in",300,0.8\n',
    );
    const { exit, out, err } = await run();
    expect({ exit, err }).toEqual({ exit: 0, err: '' });
    expect(out).toBe(`2 sizes in ${at('out')}: 2 made, 0 kept, 0 refused.\n`);
    expect(await below(at('out'))).toEqual([
      'index.svg',
      'large',
      'large/job.json',
      'large/parts',
      'large/parts/tray.dxf',
      'large/parts/tray.svg',
      'sizes.csv',
      'sizes.json',
      'small',
      'small/job.json',
      'small/parts',
      'small/parts/tray.dxf',
      'small/parts/tray.svg',
    ]);
    const [head, small, large] = await csv();
    expect(head).toBe('name,status,hash,findings,message,blanks,mass,files,sheets,price,contents');
    expect(small).toMatch(/^small,made,[0-9a-f]{16},0,,tray 296\.46 x 196\.46,/); // 200 + 2 × (50 less 1.77), 1.77 the deduction at K 0.42
    expect(large).toMatch(/^large,made,/);
    const { parts } = JSON.parse(await readFile(at('out/large/job.json'), 'utf8'));
    expect(parts[0].formed.x).toBeCloseTo(15.5 * 25.4, 6);
    expect(parts[0].thickness).toBe(0.8);
    await writeFile(at('one.yaml'), TRAY.replace('300', '200').replace('width: 200', 'width: 100'));
    await tinwright('make', at('one.yaml'), '--out', at('one'));
    for (const file of ['job.json', 'parts/tray.dxf', 'parts/tray.svg'])
      expect(await readFile(at(`out/small/${file}`), 'utf8')).toBe(await readFile(at(`one/${file}`), 'utf8'));
  });

  test.each([
    ['sizes.tsv', 'name\twidth\na\t100\nb\t120\n'],
    ['sizes.jsonl', '{"name":"a","width":100}\n\n{"name":"b","width":"120 mm"}\n'],
    ['sizes.yaml', '- { name: a, width: 100 }\n- { name: b, width: 120 }\n'],
    ['sizes.csv', '\uFEFFname;width\r\na;100\n\rb;120\r\n'],
  ])('%s is read too', async (name, text) => {
    const { run, csv } = await place(text, name);
    expect((await run()).exit).toBe(0);
    expect((await csv()).map((l) => l.split(',')[5])).toEqual([
      'blanks',
      'tray 396.46 x 196.46',
      'tray 396.46 x 216.46',
    ]);
  });

  test('rows that cannot be made are told with line, column and name, and the others are made', async () => {
    const { at, run, csv } = await place(
      'name,length,width\nok,200,100\n\nbad,abc,100\n"multi",0,"a\nb"\nok,210,110\n-x,200,100\nNul,200,100\n',
    );
    const { exit, err } = await run();
    expect(exit).toBe(1);
    expect(
      err
        .split('\n')
        .map((l) => l.slice(at('sizes.csv').length))
        .filter((l) => l !== ''),
    ).toEqual([
      expect.stringMatching(/^:4:5: bad: part "tray": length: "abc" is not a length/),
      expect.stringMatching(/^:5:9: multi: part "tray": length: 0 mm given/),
      expect.stringMatching(/^:5:11: multi: part "tray": width: /),
      expect.stringMatching(/^:7:1: ok: name: "ok" is taken by the row in line 2/),
      expect.stringMatching(/^:8:1: -x: name: "-x" given/),
      expect.stringMatching(/^:9:1: Nul: name: "Nul" given; some systems keep that name for a device/),
    ]);
    expect((await csv()).slice(1).map((l) => l.split(',')[1])).toEqual([
      'made',
      'refused',
      'refused',
      'refused',
      'refused',
      'refused',
    ]);
    expect((await csv()).at(-2)).toMatch(/^'-x,/); // no formula for who opens it in a spreadsheet
    expect(await below(at('out'))).not.toContain('bad');
  });

  test('--strict stops at the first of them', async () => {
    const { run, at } = await place(`length\n${'0\n'.repeat(20)}${'200\n'.repeat(20)}`);
    const { exit, out } = await run('--strict', '--jobs', '1');
    expect(exit).toBe(1);
    expect(out).toContain('Stopped before the end');
    expect(await below(at('out'))).not.toContain('size-40');
  });

  test.each([
    ['an unknown column', 'name,lenght\na,1\n', '1:6: unknown column "lenght". Did you mean "length"?'],
    ['an unknown part', 'trai.length\n1\n', '1:1: unknown column "trai.length". Did you mean "tray.length"?'],
    ['a column twice', 'length,width,length\n1,2,3\n', '1:14: column "length" stands twice'],
    ['a column without a name', 'length,,width\n1,2,3\n', '1:8: a column without a name'],
    ['a row with more cells than columns', 'length\n1,2\n', '2:3: 2 cells in this row, 1 in the first'],
    ['a quote left open', 'length\n"200\n210\n', 'a quote is open at the end of the file'],
    ['no rows', 'name,length\n', '1:1: the table has no rows'],
    ['nothing', '', '1:1: the table has no rows'],
  ])('%s: exit 2, its place, nothing written', async (_, table, says) => {
    const { run, folder } = await place(table);
    const { exit, out, err } = await run();
    expect({ exit, out }).toEqual({ exit: 2, out: '' });
    expect(err).toContain(says);
    expect(await below(folder)).toEqual(['sizes.csv', 'tray.yaml']);
  });
});

describe('run again', () => {
  const rows = (widths: readonly number[]) => `name,width\n${widths.map((w, i) => `t${i},${w}\n`).join('')}`;

  test('it makes only what changed, and what is gone', async () => {
    const { at, run } = await place(rows([100, 110, 120, 130]));
    await run();
    const before = await readFile(at('out/sizes.csv'), 'utf8');
    expect((await run()).out).toContain('0 made, 4 kept');
    expect(await readFile(at('out/sizes.csv'), 'utf8')).toBe(before);
    await writeFile(at('sizes.csv'), rows([100, 111, 120, 130]));
    await rm(at('out/t3'), { recursive: true });
    expect((await run()).out).toContain('2 made, 2 kept');
    expect((await run('--dxf', 'r12')).out).toContain('4 made, 0 kept');
  });

  test('folders that are no size of the table any more are told', async () => {
    const { at, run } = await place(rows([100, 110, 120, 130]));
    expect((await run()).err).toBe('');
    await writeFile(at('sizes.csv'), rows([100, -1, 120]));
    const { err } = await run();
    expect(err).toContain('still holds 2 sizes of an earlier run that no row makes now');
    expect(await below(at('out'))).toContain('t1/parts/tray.dxf');
  });

  test.each([
    ['is gone', (path: string) => rm(path)],
    ['is empty', (path: string) => writeFile(path, '')],
    ['has bytes more', (path: string) => appendFile(path, '999\nnotes\n')],
    [
      'says another number of as many digits',
      async (path: string) => writeFile(path, (await readFile(path, 'utf8')).replace(/\d(\d*)$/m, '7$1')),
    ],
  ])('a size of which a file %s is made again', async (_, spoil) => {
    const { at, run } = await place(rows([100, 110]));
    await run();
    const whole = await readFile(at('out/t1/parts/tray.dxf'), 'utf8');
    await spoil(at('out/t1/parts/tray.dxf'));
    expect((await run()).out).toContain('1 made, 1 kept');
    expect(await readFile(at('out/t1/parts/tray.dxf'), 'utf8')).toBe(whole);
  });

  test('a set that make left aside as it was cut off comes back, and is not taken for sizes', async () => {
    const { at, run } = await place(rows([100]));
    await tinwright('make', at('tray.yaml'), '--out', at('out'));
    const before = await below(at('out'));
    await rename(at('out'), at('.out.tinwright-old')); // between its two renames
    await mkdir(at('.out.tinwright-new'));
    const { exit, err } = await run();
    expect(exit).toBe(3);
    expect(err).toContain('holds files that are not sizes from tinwright');
    expect(await below(at('out'))).toEqual(before);
    expect(await below(at(''))).toEqual(
      expect.not.arrayContaining(['.out.tinwright-old', '.out.tinwright-new']),
    );
  });

  test('a run that was cut off amid a line goes on behind it', async () => {
    const { at, run } = await place(rows([100, 110, 120, 130]));
    await run();
    const whole = await readFile(at('out/sizes.csv'), 'utf8');
    const lines = whole.split('\n');
    await writeFile(at('out/.sizes.csv.begun'), `${lines.slice(0, 3).join('\n')}\nt2,ma`);
    await rm(at('out/sizes.csv'));
    expect((await run()).out).toContain('2 made, 2 kept');
    expect(await readFile(at('out/sizes.csv'), 'utf8')).toBe(whole);
    expect((await below(at('out'))).filter((n) => n.startsWith('.'))).toEqual([]);
  });

  test.each(['before', 'begun'])('what the disk refuses of its notes is told: .%s', async (note) => {
    const { at, run } = await place('name,length\na,200\n');
    expect((await run()).exit).toBe(0);
    await mkdir(at(`out/.sizes.csv.${note}`)); // where a file has to be
    const { exit, err } = await run();
    expect(exit).toBe(3);
    expect(err).toMatch(/cannot be written: .*What was made before stands/);
    expect(await below(at('out'))).toContain('a/parts/tray.dxf');
  });

  test('a folder with files of somebody else is left alone', async () => {
    const { at, folder } = await place(rows([100]));
    const before = await below(folder);
    const ran = await tinwright('sizes', at('tray.yaml'), '--table', at('sizes.csv'), '--out', folder);
    expect(ran.exit).toBe(3);
    expect(ran.err).toContain('holds files that are not sizes from tinwright');
    expect(await below(folder)).toEqual(before);
  });

  test.each([
    ['a file', 'is a file'],
    ['a link to nowhere', 'is a link that leads nowhere'],
  ])('%s is no folder for them', async (what, told) => {
    const { at, folder } = await place(rows([100]));
    await (what === 'a file' ? writeFile(at('mine'), 'text') : symlink(at('nowhere'), at('mine')));
    const before = await below(folder);
    const ran = await tinwright('sizes', at('tray.yaml'), '--table', at('sizes.csv'), '--out', at('mine'));
    expect(ran).toEqual({
      exit: 3,
      out: '',
      err: `${at('mine')}: ${told}. Choose another folder with --out.\n`,
    });
    expect(await below(folder)).toEqual(before);
  });
});

test('shards, merged, give the bytes of one run', async () => {
  const table = `name,width\n${Array.from({ length: 10 }, (_, i) => `t${i},${100 + i}\n`).join('')}`;
  const { at, run } = await place(table);
  await run();
  for (const n of [1, 2, 3]) {
    const out = at(n === 2 ? 'b' : 'a');
    const ran = await tinwright(
      'sizes',
      at('tray.yaml'),
      '--table',
      at('sizes.csv'),
      '--out',
      out,
      '--shard',
      `${n}/3`,
    );
    expect(ran.exit).toBe(0);
    if (n === 1) expect((await tinwright('sizes', 'merge', out)).err).toContain('shard 2, 3 of 3 is missing');
  }
  const merged = await tinwright('sizes', 'merge', at('a'), at('b'));
  expect(merged.out).toBe(`10 sizes of 3 shards in ${at('a')}.\n`);
  for (const file of ['sizes.csv', 'index.svg', 't4/job.json', 't9/parts/tray.dxf'])
    expect(await readFile(at(`a/${file}`), 'utf8')).toBe(await readFile(at(`out/${file}`), 'utf8'));
});

describe('shards that are not of one run', () => {
  const rows = (count: number, from = 100) =>
    `name,width\n${Array.from({ length: count }, (_, i) => `t${i},${from + i}\n`).join('')}`;

  /** Two shards of ten rows, made in one folder; `shard` makes one of them again. */
  async function twoShards() {
    const placed = await place(rows(10));
    const { at } = placed;
    const shard = (n: number, ...options: readonly string[]) =>
      tinwright(
        ...['sizes', at('tray.yaml'), '--table', at('sizes.csv'), '--out', at('a')],
        ...['--shard', `${n}/2`, ...options],
      );
    for (const n of [1, 2]) expect((await shard(n)).exit).toBe(0);
    return { at, shard, merge: () => tinwright('sizes', 'merge', at('a')) };
  }

  test.each([
    ['more rows', rows(12), 'of another table'],
    ['other values', rows(10, 200), 'of another table'],
    ['another name', rows(10).replace('t9', 'u9'), 'of another table'],
  ])('one of a table with %s: refused, and what it says to do works', async (_, table, says) => {
    const { at, shard, merge } = await twoShards();
    await writeFile(at('sizes.csv'), table);
    expect((await shard(2)).exit).toBe(0);
    const { exit, err } = await merge();
    expect(exit).toBe(2);
    expect(err).toContain(`shard 2 of 2 is ${says} than shard 1. All have to be of one run: run --shard 2/2`);
    expect(await below(at('a'))).not.toContain('sizes.csv');
    expect((await shard(1)).exit).toBe(0);
    expect((await merge()).exit).toBe(0);
    await tinwright('sizes', at('tray.yaml'), '--table', at('sizes.csv'), '--out', at('out'));
    expect(await readFile(at('a/sizes.csv'), 'utf8')).toBe(await readFile(at('out/sizes.csv'), 'utf8'));
  });

  test('one of a job, options or a shop of another kind', async () => {
    const { at, shard, merge } = await twoShards();
    await shard(2, '--dxf', 'r12');
    expect((await merge()).err).toContain('shard 2 of 2 is made with other options than shard 1');
    await shard(2, '--shop', 'default');
    expect((await merge()).err).toContain('shard 2 of 2 is of another shop than shard 1');
    await writeFile(at('tray.yaml'), TRAY.replace('k: 0.4', 'k: 0.45'));
    await shard(2);
    expect((await merge()).err).toContain('shard 2 of 2 is of another job than shard 1');
  });

  test('one that was stopped by a row, or whose lines were taken out', async () => {
    const { at, shard, merge } = await twoShards();
    await writeFile(at('sizes.csv'), rows(10, -5));
    await shard(1, '--strict');
    expect((await merge()).err).toMatch(
      /shard 1 of 2 did not come to its end.* run it again with --shard 1\/2/,
    );
    await writeFile(at('sizes.csv'), rows(10));
    await shard(1);
    const file = at('a/sizes-1-of-2.csv');
    await writeFile(file, (await readFile(file, 'utf8')).split('\n').slice(0, -2).join('\n'));
    expect((await merge()).err).toContain(
      'sizes-1-of-2.csv has 4 lines for 5 rows: run it again with --shard 1/2',
    );
  });

  test('after a run of the whole table none is left to be joined', async () => {
    const { at, merge } = await twoShards();
    await tinwright('sizes', at('tray.yaml'), '--table', at('sizes.csv'), '--out', at('a'));
    expect((await below(at('a'))).filter((f) => f.startsWith('sizes'))).toEqual(['sizes.csv', 'sizes.json']);
    expect((await merge()).err).toContain('no shards here');
  });

  test('shards of other numbers of runs are named', async () => {
    const { at, merge } = await twoShards();
    const table = ['--table', at('sizes.csv'), '--out', at('a'), '--shard', '1/3'];
    await tinwright('sizes', at('tray.yaml'), ...table);
    expect((await merge()).err).toContain('sizes-1-of-2.csv and sizes-1-of-3.csv are of different runs');
  });
});

test('rows within the job: lists and ranges are combined; other verbs pass over them', async () => {
  const own = `${TRAY}sizes:\n  - { name: small, length: 200 }\n  - { name: grid, length: { from: 300, to: 350, step: 25 }, height: [40, 50] }\n`;
  const { at, csv } = await place('', 'none.csv', own);
  const { exit } = await tinwright('sizes', at('tray.yaml'), '--out', at('out'));
  expect(exit).toBe(0);
  const lines = (await csv()).slice(1).map((l) => l.split(','));
  expect(lines.map((l) => l[0])).toEqual([
    'small',
    'grid-1',
    'grid-2',
    'grid-3',
    'grid-4',
    'grid-5',
    'grid-6',
  ]);
  expect(lines.map((l) => l[5]).slice(1, 4)).toEqual([
    'tray 376.46 x 276.46',
    'tray 396.46 x 296.46',
    'tray 401.46 x 276.46',
  ]);
  expect((await tinwright('check', at('tray.yaml'))).exit).toBe(0);
});

test.each([
  ['bare numbers and fractions', '{ from: 12, to: 13, step: 1/2 }', ['12', '12 1/2', '13']],
  ['lengths with units', '{ from: 12 in, to: 330.2 mm, step: 1/2 in }', ['12', '12 1/2', '13']],
])('a range of %s gives every size of it', async (_, range, lengths) => {
  const job = TRAY.replace('units: mm', 'units: in')
    .replace('thickness: 1', 'gauge: 20')
    .replace(', insideRadius: 1', '')
    .replace(/length: \S+, width: \S+, height: \S+/, 'length: 9, width: 7, height: 2');
  const { at, csv } = await place('', 'none.csv', `${job}sizes:\n  - { name: row, length: ${range} }\n`);
  const given = lengths.map(
    (l) => `  - { name: "${l.replace(' ', '_').replace('/', 'o')}", length: "${l}" }\n`,
  );
  expect((await tinwright('sizes', at('tray.yaml'), '--out', at('out'))).exit).toBe(0);
  const blanks = (lines: readonly string[]) => lines.slice(1).map((l) => /[\d.]+ x [\d.]+/.exec(l)?.[0]);
  const ranged = blanks(await csv());
  const listed = await place('', 'none.csv', `${job}sizes:\n${given.join('')}`);
  expect((await tinwright('sizes', listed.at('tray.yaml'), '--out', listed.at('out'))).exit).toBe(0);
  expect(ranged).toEqual(blanks(await listed.csv()));
  expect(new Set(ranged).size).toBe(3);
});

test('ranges whose combinations are too many are refused before any is made', async () => {
  const range = '{ from: 1, to: 2000, step: 1 }';
  const { at } = await place('', 'none.csv', `${TRAY}sizes:\n  - { length: ${range}, width: ${range} }\n`);
  const { exit, err } = await tinwright('sizes', at('tray.yaml'), '--out', at('out'));
  expect(exit).toBe(2);
  expect(err).toContain('4000000 rows in one, up to 2000000 allowed');
});

test('a name that is a range or a list is told at its place', async () => {
  const { at } = await place(
    '',
    'none.csv',
    `${TRAY}sizes:\n  - { name: [low, high], length: [200, 300] }\n`,
  );
  const { exit, err } = await tinwright('sizes', at('tray.yaml'), '--out', at('out'));
  expect(exit).toBe(2);
  expect(err).toContain('name: one text wanted; rows of several values are numbered after it');
});

describe('options that cannot be', () => {
  test.each([
    [['--jobs', '0'], '--jobs: 0 given, a whole number from 1 to 64 allowed'],
    [['--shard', '4/3'], '--shard: "4/3" given; 3/16 is the third of sixteen'],
  ])('%j', async (options, says) => {
    const { run } = await place('length\n1\n');
    const { exit, err } = await run(...options);
    expect(exit).toBe(2);
    expect(err).toContain(says);
  });

  test('no table at all', async () => {
    const { at } = await place('');
    expect((await tinwright('sizes', at('tray.yaml'))).err).toContain(
      'give --table FILE, or sizes: in the job',
    );
  });
});
