import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { DEFAULT_SHOP, readShop } from '@tinwright/shop';
import { SHOP_WORDS } from '@tinwright/shop/internal';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { tinwright, tinwrightReading } from '../host.js';
import { emptyFolder } from '../place.js';

const GARDEN = fileURLToPath(new URL('../../../../examples/garden-shop.yaml', import.meta.url));
const garden = await readFile(GARDEN, 'utf8');

async function shopFile(content: string): Promise<string> {
  const path = join(await emptyFolder(), 'shop.yaml');
  await writeFile(path, content);
  return path;
}

/** Problems of the example with some of its text replaced, the file's path taken off. */
async function refused(
  ...changes: readonly (readonly [from: string, to: string])[]
): Promise<readonly string[]> {
  const text = changes.reduce((t, [from, to]) => {
    if (!t.includes(from)) throw new Error(`"${from}" is not in the shop`);
    return t.replace(from, () => to);
  }, garden);
  const path = await shopFile(text);
  const { exit, out, err } = await tinwright('shop', path);
  expect({ exit, out }).toEqual({ exit: 2, out: '' });
  const lines = err.trimEnd().split('\n');
  for (const line of lines) expect(line.startsWith(`${path}:`)).toBe(true);
  return lines.map((l) => l.slice(path.length + 1));
}

describe('shop', () => {
  test('without a file: the default shop, invented and said to be', async () => {
    const { exit, out, err } = await tinwright('shop');
    expect({ exit, err }).toEqual({ exit: 0, err: '' });
    expect(out).toContain('school workshop (invented)');
    expect(out).toMatch(/^ {2}clearHeight +100 mm +under the beam/m);
    expect(out).toContain('not in this shop: press brake');
  });

  test('the example: machines, tools, strips', async () => {
    const { exit, out } = await tinwright('shop', GARDEN);
    expect(exit).toBe(0);
    expect(out).toMatch(/^ {2}capacity +mild-steel 1\.2 mm, stainless-304 0\.8 mm/m);
    expect(out).toMatch(/^ {2}punches +straight, gooseneck /m);
    expect(out).toMatch(/^ {2}force +250 kN /m);
    expect(out).toMatch(
      /galvanised 1 mm +galvanised-steel +T 1 mm +R 1\.5 mm +K 0\.395 ± 0\.021 +opens 1\.6 ± 0\.2 deg +5 strips/,
    );
    expect(out).not.toMatch(/^ {2}(clearHeight|leaf.width) .* assumed /m);
    expect(out).toMatch(/^ {2}bend +8 s +assumed /m);
  });

  test('what the file leaves out is marked as assumed', async () => {
    const path = await shopFile(
      'units: in\nbrake: { length: 24, capacity: [{ material: mild-steel, thickness: 0.048 }], fingers: [1, 2, 3] }\n',
    );
    const { out } = await tinwright('shop', path);
    expect(out).toMatch(/^ {2}fingers +1, 2, 3 in +widths/m);
    expect(out).toMatch(/^ {2}leaf\.stop +135 deg +assumed +/m);
    expect(out).toMatch(/^ {2}clearHeight +2\.9528 in +assumed +/m); // 75 mm
    expect(out).toContain('Values marked assumed are usual ones, by judgement or from memory');
  });

  test('--json holds it in mm', async () => {
    const { out } = await tinwright('shop', GARDEN, '--json');
    const shop = JSON.parse(out);
    expect(shop).toMatchObject({ unit: 'mm', brake: { length: 1000 } });
    expect(shop.assumed).toContain('costs');
  });

  test('- reads it from standard input', async () => {
    const { exit, out } = await tinwrightReading(garden, 'shop', '-');
    expect(exit).toBe(0);
    expect(out).toContain('community garden workshop (invented)');
  });

  test('inches and millimetres may be mixed where a length says so', async () => {
    const path = await shopFile(garden.replace('length: 1000\n', 'length: 40 in\n'));
    const { out } = await tinwright('shop', path, '--json');
    expect(JSON.parse(out).brake.length).toBeCloseTo(1016, 10);
  });
});

describe('a shop that cannot be is refused at its place', () => {
  test.each([
    [
      'a finger without width',
      [['fingers: [20,', 'fingers: [0,']],
      ['16:13: brake.fingers[0]: 0 mm given, more than 0 to 3000 mm allowed.'],
    ],
    [
      'a finger wider than the brake: units mixed',
      [['length: 1000', 'length: 39']],
      [
        '16:60: brake.fingers[11]: 250 mm given, the brake bends up to 39 mm. Check the units: a length may carry its own, such as "24 in".',
      ],
    ],
    [
      'an alloy nobody knows',
      [['mild-steel, thickness: 1.2', 'mild-stel, thickness: 1.2']],
      [/^13:19: brake\.capacity\[0\]\.material: "mild-stel" given\. Did you mean "mild-steel"\? Known: /],
    ],
    [
      'a metal twice',
      [['stainless-304, thickness: 0.8', 'mild-steel, thickness: 0.8']],
      ['14:19: brake.capacity[1].material: "mild-steel" stands in number 1 already. Keep one of the two.'],
    ],
    [
      'a key misspelt',
      [['clearHeight', 'clearHight']],
      [/^18:3: brake\.clearHight: unknown key "clearHight"\. Did you mean "clearHeight"\? Known: /],
    ],
    [
      'an angle over 180',
      [['stop: 135', 'stop: 190']],
      ['21:29: brake.leaf.stop: 190 deg given, 60 to 180 deg allowed.'],
    ],
    [
      'a foot shorter than the upright stands back',
      [['upright: 22', 'upright: 40']],
      [
        '17:32: brake.finger.upright: 40 mm given, behind the heel of a foot of 36 mm. Measure from the tip back to the front of the upright.',
      ],
    ],
    [
      'set-back the wrong way round',
      [['setBack: [1, 2.5]', 'setBack: [2.5, 1]']],
      ['23:12: brake.setBack: 2.5 to 1 thicknesses given. Give the least first.'],
    ],
    [
      'a punch whose section crosses itself',
      [
        [
          '[[0, 0], [6, 6.55], [6, 100], [-6, 100], [-6, 6.55]]',
          '[[0, 0], [6, 100], [6, 6.55], [-6, 100], [-6, 6.55]]',
        ],
      ],
      [
        '37:16: press.punches[0].section: the section of "straight" crosses itself. Give its corners in order, once round.',
      ],
    ],
    [
      'a punch upside down',
      [
        [
          '[[0, 0], [6, 6.55], [6, 100], [-6, 100], [-6, 6.55]]',
          '[[0, 0], [-6, -6.55], [-6, -100], [6, -100], [6, -6.55]]',
        ],
      ],
      [
        '37:16: press.punches[0].section: the lowest corner of "straight" is at -100 mm, 0 allowed. Measure the section from the point of the punch, upwards.',
      ],
    ],
    [
      'a die upside down',
      [
        [
          '[[-8, 0], [-3, 0], [0, -3.27], [3, 0], [8, 0], [8, -60], [-8, -60]]',
          '[[-8, 0], [8, 0], [8, 60], [-8, 60]]',
        ],
      ],
      [
        '47:16: press.dies[0].section: the highest corner of "V 6" is at 60 mm, 0 allowed. Measure the section from the top of the die, downwards.',
      ],
    ],
    [
      'a V wider than its block',
      [['opening: 6', 'opening: 16']],
      [
        '45:16: press.dies[0].opening: 16 mm given, the block is 16 mm wide. Give the width of the V at the top.',
      ],
    ],
    [
      'two dies of one name',
      [['name: V 8', 'name: V 6']],
      ['48:13: press.dies[1].name: the name "V 6" is taken by number 1. Give each a name of its own.'],
    ],
    [
      'a punch longer than the press',
      [['100, 200, 300]', '100, 200, 3000]']],
      [
        '36:47: press.punches[0].lengths[7]: 3000 mm given, the press is 1000 mm long. Check the units: a length may carry its own, such as "24 in".',
      ],
    ],
    [
      'a back gauge the wrong way round',
      [['most: 500', 'most: 5']],
      ['58:14: press.backGauge: 8 mm to 5 mm given. Give the least first.'],
    ],
    [
      'a welder for sheet from thick to thin',
      [['thickness: [0.5, 1.5]', 'thickness: [1.5, 0.5]']],
      ['79:73: spotWelder.thickness: 1.5 mm to 0.5 mm given. Give the least first.'],
    ],
    ['no units', [['units: mm\n', '']], ['4:1: units: missing. One of mm, in.']],
    ['units nobody knows', [['units: mm', 'units: cm']], [/^4:8: units: "cm" given\. /]],
    [
      'two strips of one metal',
      [
        [
          'strips: 5 }',
          'strips: 5 }\n  - { name: b, material: galvanised-steel, thickness: 1, insideRadius: 1.5, k: 0.4 }',
        ],
      ],
      [
        '86:5: strips[1]: "galvanised 1 mm" is of galvanised-steel, 1 mm, inside radius 1.5 mm too. Keep the one that jobs shall take.',
      ],
    ],
    [
      'a K that cannot be',
      [['k: 0.395', 'k: 1.395']],
      [/^85:94: strips\[0\]\.k: 1\.395 given, more than 0 to 1 allowed\.$/],
    ],
  ] as const)('%s', async (_, changes, says) => {
    const problems = await refused(...changes);
    expect(problems).toHaveLength(says.length);
    for (const [i, expected] of says.entries())
      if (typeof expected === 'string') expect(problems[i]).toBe(expected);
      else expect(problems[i]).toMatch(expected);
  });

  test('in a shop of inches lengths are told in inches', async () => {
    const path = await shopFile(
      'units: in\nbrake: { length: 24, capacity: [{ material: mild-steel, thickness: 0.048 }], fingers: [1, 25] }\n',
    );
    const { err } = await tinwright('shop', path);
    expect(err).toContain('2:91: brake.fingers[1]: 25 in given, the brake bends up to 24 in.');
  });

  test('an empty file, and one that is no shop', async () => {
    expect((await tinwright('shop', await shopFile(''))).err).toContain(
      '1:1: the shop file is empty. See `tinwright starter shop`.',
    );
    expect((await tinwright('shop', await emptyFolder())).err).toContain('this is a folder, not a shop file');
    expect((await tinwright('shop', await shopFile('hello\n'))).err).toContain('1:1: "hello" given');
  });

  test('--json: the problems as a list', async () => {
    const path = await shopFile(garden.replace('length: 1000', 'length: 0'));
    const { exit, out } = await tinwright('shop', path, '--json');
    expect(exit).toBe(2);
    expect(JSON.parse(out).problems[0]).toMatchObject({ path: 'brake.length', line: 11, column: 11 });
  });
});

describe('starter shop', () => {
  test('is the default shop, every value commented', async () => {
    const { exit, out } = await tinwright('starter', 'shop');
    expect(exit).toBe(0);
    expect(readShop(parse(out))).toEqual({ ...DEFAULT_SHOP, assumed: [] });
    const lines = out.split('\n').filter((l) => /^ *[a-zA-Z0-9]+:/.test(l));
    expect(lines.length).toBeGreaterThan(60);
    for (const line of lines) expect(line).toMatch(/ # \S/);
  });

  test('the press brake in its comments is one, and can be bent with', async () => {
    const { out } = await tinwright('starter', 'shop');
    const [before = '', after = ''] = out.split('# A press brake, invented too');
    const press = after
      .split('\n')
      .slice(1)
      .filter((l) => /^# {1,}(press|[ -])/.test(l))
      .map((l) => l.slice(2))
      .join('\n');
    const shop = readShop(parse(`${before}${press}\n`));
    expect(shop.press?.punches.map((p) => p.name)).toEqual(['straight', 'gooseneck']);
    expect(shop.press?.dies).toHaveLength(4);
    expect(shop.assumed).toEqual([]);
  });

  test('--schema: the words of every value', async () => {
    const { out } = await tinwright('starter', 'shop', '--schema');
    for (const { words } of Object.values(SHOP_WORDS)) expect(out).toContain(JSON.stringify(words));
  });
});
