import { lstat, readFile, symlink, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { tinwright, tinwrightReading } from '../host.js';
import { below, emptyFolder } from '../place.js';

const ASK = ['--material', 'galvanised-steel', '--thickness', '1', '--radius', '1.5'];

// by hand: T 1, R 1.5, setback 2.5. Deductions 2.05, 2.10 and 2.00 give K = ((5 - BD)/(pi/2) - 1.5) = 0.37803, 0.34619,
// 0.40986: mean 0.37803
const measured = (...more: readonly string[]) => `units: mm
name: galvanised, coil 7
material: galvanised-steel
thickness: 1
insideRadius: 1.5
strips:
  - { flat: 100, legs: [51.05, 51], angle: 90, set: 91.5, width: 50 }
  - { flat: 100, legs: [51, 51.1], angle: 90, set: 91.5, width: 50 }
  - { flat: 100, legs: [51, 51], angle: 90, set: 91.5, width: 50 }
${more.join('')}`;

const SHOP = `units: mm  # of this file
name: our shop   # the garden's
brake: { name: brake, length: 600, capacity: [{ material: mild-steel, thickness: 1.5 }], fingers: [25, 50, 100] }
`;

async function files(content: Readonly<Record<string, string>>): Promise<string> {
  const folder = await emptyFolder();
  for (const [name, text] of Object.entries(content)) await writeFile(join(folder, name), text);
  return folder;
}

describe('strip', () => {
  test('writes a strip with its lines, and a file to fill in', async () => {
    const out = join(await emptyFolder(), 'strip');
    const { exit, out: said, err } = await tinwright('strip', ...ASK, '--out', out);
    expect({ exit, err }).toEqual({ exit: 0, err: '' });
    expect(await below(out)).toEqual(['measured.yaml', 'strip.dxf', 'strip.json', 'strip.svg']);
    expect(said).toContain('3 strips of galvanised-steel, 1 mm: 120 mm x 50 mm, two lines 100 mm apart.');
    expect(said).toContain('Caution: ');
    const dxf = await readFile(join(out, 'strip.dxf'), 'utf8');
    for (const layer of ['CUT', 'BEND-UP', 'SCRIBE', 'NOTE']) expect(dxf).toContain(layer);
    // the two witness lines in the picture, 10 from either end
    const svg = await readFile(join(out, 'strip.svg'), 'utf8');
    expect(
      svg.slice(svg.indexOf('SCRIBE'), svg.indexOf('NOTE')).match(/<(line|path)/g)?.length,
    ).toBeGreaterThan(0);
  });

  test('a run again leaves what was measured', async () => {
    const out = join(await emptyFolder(), 'strip');
    await tinwright('strip', ...ASK, '--out', out);
    await writeFile(join(out, 'measured.yaml'), measured());
    expect((await tinwright('strip', ...ASK, '--out', out, '--count', '5')).exit).toBe(0);
    expect(await readFile(join(out, 'measured.yaml'), 'utf8')).toBe(measured());
  });

  test('the file to fill in reads once it is filled in, in inches too', async () => {
    const out = join(await emptyFolder(), 'strip');
    await tinwright(
      'strip',
      '--units',
      'in',
      '--gauge',
      '20',
      '--radius',
      '1/16',
      '--out',
      out,
      '--count',
      '1',
    );
    const start = await readFile(join(out, 'measured.yaml'), 'utf8');
    expect(start).toContain('units: in\n');
    expect(start).toContain('{ flat: 4, legs: [0, 0], angle: 0, set: 0, width: 2 }');
    const [, between] = /flat: ([\d.]+)/.exec(start) ?? [];
    const leg = Number(between) / 2 + 0.035;
    const filled = start
      .replace('legs: [0, 0]', `legs: [${leg}, ${leg}]`)
      .replace('angle: 0,', 'angle: 90,')
      .replace('set: 0', 'set: 91');
    await writeFile(join(out, 'measured.yaml'), filled);
    const {
      exit,
      out: said,
      err,
    } = await tinwright('strip', 'fit', '--measured', join(out, 'measured.yaml'));
    expect({ exit, err }).toEqual({ exit: 0, err: '' });
    expect(said).toMatch(/^deduction +0\.0700 ± |^deduction +0\.07 ± /m);
  });

  test('--json', async () => {
    const out = join(await emptyFolder(), 'strip');
    const { out: said } = await tinwright('strip', ...ASK, '--out', out, '--json');
    expect(JSON.parse(said)).toMatchObject({
      unit: 'mm',
      thickness: 1,
      insideRadius: 1.5,
      between: 100,
      count: 3,
    });
  });

  test.each([
    [['--thickness', '7'], 'strip: --thickness: 7 mm given, 0.1 mm to 6 mm allowed.'],
    [['--thickness', '1', '--material', 'tin'], 'strip: --material: "tin" given. '],
    [[], 'strip: no thickness. Give thickness, or gauge with a material that has gauges.'],
    [['--thickness', '1', '--count', '0'], 'strip: --count: 0 given, whole numbers from 1 to 100 allowed.'],
    [
      ['--thickness', '1', '--count', '2.5'],
      'strip: --count: 2.5 given, whole numbers from 1 to 100 allowed.',
    ],
    [['--replace'], 'strip: --replace is for strip fit with --shop.'],
    [['bend'], 'strip: "bend" given, fit or nothing allowed.'],
    [['fit'], 'strip: give what was measured: --measured FILE.'],
    [['--measured', 'a.yaml'], 'strip: --measured is for strip fit.'],
  ])('%j is refused', async (argv, says) => {
    const { exit, out, err } = await tinwright('strip', ...argv);
    expect({ exit, out }).toEqual({ exit: 2, out: '' });
    expect(err).toContain(says);
  });
});

describe('strip fit', () => {
  test('K, deduction and springback with their errors; nothing is kept without a shop file', async () => {
    const folder = await files({ 'm.yaml': measured() });
    const { exit, out, err } = await tinwright('strip', 'fit', '--measured', join(folder, 'm.yaml'));
    expect({ exit, err }).toEqual({ exit: 0, err: '' });
    expect(out).toMatch(/^K +0\.378 ± 0\.0\d+$/m);
    expect(out).toMatch(/^deduction +2\.05 ± 0\.\d+ mm at 90 deg$/m);
    expect(out).toMatch(/^springback +1\.5 ± 0\.41 deg at 90 deg; factor 0\.9836$/m);
    expect(out).toContain('least squares over the strips');
    expect(out).toContain('To keep it, give --shop FILE');
    expect(await below(folder)).toEqual(['m.yaml']);
  });

  test('kept in the shop file, its text untouched; a job takes it; a second fit takes its place', async () => {
    const job =
      'units: mm\nstock: { material: galvanised-steel, thickness: 1 }\nbending: { rule: test-strip, insideRadius: 1.5 }\nparts:\n  - { name: shelf, family: bent-strip, width: 50, legs: [40, 40], angles: [90] }\n';
    const folder = await files({ 'm.yaml': measured(), 'shop.yaml': SHOP, 'job.yaml': job });
    const at = (name: string) => join(folder, name);
    const fit = () => tinwright('strip', 'fit', '--measured', at('m.yaml'), '--shop', at('shop.yaml'));
    const { exit, out } = await fit();
    expect(exit).toBe(0);
    expect(out).toContain(`Kept as "galvanised, coil 7" in ${at('shop.yaml')}.`);
    const first = await readFile(at('shop.yaml'), 'utf8');
    expect(first.startsWith(`${SHOP}strips:\n  - { name: `)).toBe(true);
    // 40 + 40 less 2.05
    const made = await tinwright('explain', at('job.yaml'), '--shop', at('shop.yaml'));
    expect(made.out).toContain('blank along x: 77.95 mm');
    expect(made.out).toContain('test-strip galvanised, coil 7, K ± 0.');
    expect(
      (await tinwright('make', at('job.yaml'), '--shop', at('shop.yaml'), '--out', at('out'))).exit,
    ).toBe(0);
    const bend = [
      '--rule',
      'test-strip',
      '--material',
      'galvanised-steel',
      '--thickness',
      '1',
      '--radius',
      '1.5',
    ];
    expect((await tinwright('bend', ...bend, '--shop', at('shop.yaml'))).out).toMatch(
      /^deduction +2\.05 mm$/m,
    );
    await writeFile(at('m.yaml'), measured().replace('51], angle', '50.9], angle'));
    expect((await fit()).exit).toBe(0);
    const second = await readFile(at('shop.yaml'), 'utf8');
    expect(second.split('\n').length).toBe(first.split('\n').length);
    expect(second).not.toBe(first);
  });

  test('without the shop file a job that needs a strip is refused where it says so', async () => {
    const job =
      'units: mm\nstock: { material: mild-steel, thickness: 1 }\nbending: { rule: test-strip, insideRadius: 1.5 }\nparts:\n  - { name: shelf, family: bent-strip, width: 50, legs: [40, 40], angles: [90] }\n';
    const folder = await files({ 'shop.yaml': SHOP, 'job.yaml': job });
    const { exit, err } = await tinwright('make', join(folder, 'job.yaml'), '--out', join(folder, 'out'));
    expect(exit).toBe(2);
    expect(err).toBe(
      `${join(folder, 'job.yaml')}:3:44: bending.insideRadius: no test-strip of mild-steel T 1 R 1.5 mm. Known: none; --shop FILE gives them.\n`,
    );
  });

  test('strips that contradict are told with their residual, and nothing is kept', async () => {
    const wrong = '  - { name: last, flat: 100, legs: [51, 51.9], angle: 90 }\n';
    const folder = await files({ 'm.yaml': measured(wrong), 'shop.yaml': SHOP });
    const { exit, out } = await tinwright(
      'strip',
      'fit',
      '--measured',
      join(folder, 'm.yaml'),
      '--shop',
      join(folder, 'shop.yaml'),
    );
    expect(exit).toBe(1);
    expect(out).toContain('error last: contradicts the others: its deduction is 0.85 mm off');
    expect(out).toContain('Not kept: strips contradict each other.');
    expect(await readFile(join(folder, 'shop.yaml'), 'utf8')).toBe(SHOP);
  });

  describe('a row of the same metal, thickness and radius is there', () => {
    const row = (more: string) =>
      `{ name: coil 5, material: galvanised-steel, thickness: 1, insideRadius: 1.5, k: 0.4, ${more} }`;
    const fit = async (old: string, text: string, ...more: readonly string[]) => {
      const before = `${SHOP}strips:\n  - ${old}\n`;
      const folder = await files({ 'm.yaml': text, 'shop.yaml': before });
      const shop = join(folder, 'shop.yaml');
      const answer = await tinwright(
        'strip',
        'fit',
        '--measured',
        join(folder, 'm.yaml'),
        '--shop',
        shop,
        ...more,
      );
      return { ...answer, shop, before, after: await readFile(shop, 'utf8') };
    };
    const unnamed = measured().replace('name: galvanised, coil 7\n', '');
    const WORSE = row('kError: 0.09, strips: 2');
    const BETTER = row('kError: 0.021, strips: 5');

    test('less certain than the new one: replaced, which is said', async () => {
      const { exit, out, shop, after } = await fit(WORSE, measured());
      expect(exit).toBe(0);
      expect(out).toContain('Replaced "coil 5" (K 0.4 ± 0.09 of 2 strips).\n');
      expect(out).toContain(`Kept as "galvanised, coil 7" in ${shop}.`);
      expect(after).toContain('coil 7');
      expect(after).not.toContain('coil 5');
    });

    test('without a name of its own the new one goes by the old name', async () => {
      const { out, shop, after } = await fit(WORSE, unnamed);
      expect(out).toContain(`Kept as "coil 5" in ${shop}.`);
      expect(after).toContain('{ name: coil 5, material: galvanised-steel');
      expect(after).toContain('k: 0.378,');
    });

    test('more certain than the new one: kept, unless --replace is given', async () => {
      const { exit, out, err, shop, before, after } = await fit(BETTER, measured());
      expect({ exit, out }).toEqual({ exit: 2, out: '' });
      expect(err).toMatch(
        /"coil 5" \(K 0\.4 ± 0\.021 of 5 strips\) is there; the new one is less certain: K 0\.378 ± 0\.06\d* of 3 strips\. To take it all the same, give --replace\.\n$/,
      );
      expect(err.startsWith(`strip: ${shop}: `)).toBe(true);
      expect(after).toBe(before);
      const forced = await fit(BETTER, measured(), '--replace');
      expect(forced.exit).toBe(0);
      expect(forced.out).toContain('Replaced "coil 5" (K 0.4 ± 0.021 of 5 strips).\n');
      expect(forced.after).toContain('coil 7');
    });

    test('with springback, which the new one has not: the same', async () => {
      const { exit, err, before, after } = await fit(
        row('kError: 0.09, springback: 1.2, strips: 2'),
        measured().replaceAll('set: 91.5, ', ''),
      );
      expect(exit).toBe(2);
      expect(err).toContain('the new one has no springback. To take it all the same, give --replace.');
      expect(after).toBe(before);
    });

    test('of which nobody said how certain it is: replaced', async () => {
      const { exit, out } = await fit(row('strips: 2'), measured());
      expect(exit).toBe(0);
      expect(out).toContain('Replaced "coil 5" (K 0.4 of 2 strips).\n');
    });

    test('--json gives the row that was replaced', async () => {
      const { out } = await fit(WORSE, unnamed, '--json');
      const { row: kept, replaced } = JSON.parse(out);
      expect(kept.name).toBe('coil 5');
      expect(replaced).toMatchObject({ name: 'coil 5', k: 0.4, kError: 0.09, strips: 2 });
    });
  });

  test('a name that strips of another metal have is refused', async () => {
    const other =
      'strips:\n  - { name: "galvanised, coil 7", material: mild-steel, thickness: 2, insideRadius: 3, k: 0.4 }\n';
    const folder = await files({ 'm.yaml': measured(), 'shop.yaml': `${SHOP}${other}` });
    const argv = ['--measured', join(folder, 'm.yaml'), '--shop', join(folder, 'shop.yaml'), '--replace'];
    const { exit, err } = await tinwright('strip', 'fit', ...argv);
    expect(exit).toBe(2);
    expect(err).toContain(
      '"galvanised, coil 7" is of mild-steel, 2 mm, inside radius 3 mm; give the new strips another name.',
    );
    expect(await readFile(join(folder, 'shop.yaml'), 'utf8')).toBe(`${SHOP}${other}`);
  });

  test('angle and complement mixed up: told, and nothing is kept', async () => {
    const mixed = measured().replaceAll('angle: 90, set: 91.5', 'angle: 98.5, set: 90');
    const folder = await files({ 'm.yaml': mixed, 'shop.yaml': SHOP });
    const argv = ['--measured', join(folder, 'm.yaml'), '--shop', join(folder, 'shop.yaml')];
    const { exit, out } = await tinwright('strip', 'fit', ...argv);
    expect(exit).toBe(1);
    expect(out).toContain(
      'error strip 1: left at 98.5 deg, bent further than the 90 deg it was set to; metal opens again',
    );
    expect(out).toContain('Not kept: strips contradict what they were set to.');
    expect(await readFile(join(folder, 'shop.yaml'), 'utf8')).toBe(SHOP);
  });

  test('what was measured is told where it cannot be', async () => {
    const folder = await files({ 'm.yaml': measured('  - { flat: 100, legs: [51, 51], angle: 200 }\n') });
    const path = join(folder, 'm.yaml');
    const { exit, err } = await tinwright('strip', 'fit', '--measured', path);
    expect(exit).toBe(2);
    expect(err).toBe(`${path}:10:41: strips[3].angle: 200 deg given, 15 to 165 deg allowed.\n`);
  });

  test('a link to a shop file stays a link', async () => {
    const folder = await files({ 'm.yaml': measured(), 'ours.yaml': SHOP });
    await symlink(join(folder, 'ours.yaml'), join(folder, 'shop.yaml'));
    const argv = ['--measured', join(folder, 'm.yaml'), '--shop', join(folder, 'shop.yaml')];
    expect((await tinwright('strip', 'fit', ...argv)).exit).toBe(0);
    expect((await lstat(join(folder, 'shop.yaml'))).isSymbolicLink()).toBe(true);
    expect(await readFile(join(folder, 'ours.yaml'), 'utf8')).toContain('coil 7');
  });

  test('a shop file that cannot be read is left alone', async () => {
    const folder = await files({ 'm.yaml': measured(), 'shop.yaml': 'units: cm\n' });
    const { exit, err } = await tinwright(
      'strip',
      'fit',
      '--measured',
      join(folder, 'm.yaml'),
      '--shop',
      join(folder, 'shop.yaml'),
    );
    expect(exit).toBe(2);
    expect(err).toContain('shop.yaml:1:8: units: "cm" given');
    expect(await readFile(join(folder, 'shop.yaml'), 'utf8')).toBe('units: cm\n');
  });

  test('--json, from standard input', async () => {
    const { exit, out } = await tinwrightReading(measured(), 'strip', 'fit', '--measured', '-', '--json');
    expect(exit).toBe(0);
    const { row, strips, findings, stored } = JSON.parse(out);
    expect(row.k).toBeCloseTo(0.37803, 5);
    expect(strips).toHaveLength(3);
    expect({ findings, stored }).toEqual({ findings: [], stored: null });
  });
});
