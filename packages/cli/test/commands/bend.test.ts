import { describe, expect, test } from 'vitest';
import { tinwright } from '../host.js';

const MM_PER_INCH = 25.4;
const json = async (...options: readonly string[]) => {
  const { exit, out, err } = await tinwright('bend', ...options, '--json');
  expect(err).toBe('');
  expect(exit).toBe(0);
  return JSON.parse(out);
};

// Machinery's Handbook, 31st ed., p. 1421: 90 degrees in sheet of 1/16 in at an inside radius of 1/16 in,
// calculated from the printed formulas; four decimals
describe.each([
  ['soft', 0.1325],
  ['medium', 0.1381],
  ['hard', 0.1425],
])('handbook, %s group', (group, inches) => {
  const options = ['--rule', 'handbook', '--group', group];

  test(`in inches: allowance ${inches} in`, async () => {
    const { allowance } = await json('--units', 'in', '--thickness', '1/16', '--radius', '1/16', ...options);
    expect(Math.abs(allowance / MM_PER_INCH - inches)).toBeLessThanOrEqual(0.00006);
  });

  test(`in millimetres: 1.5875 mm gives ${inches} in too`, async () => {
    const { allowance } = await json('--thickness', '1.5875', '--radius', '1.5875', ...options);
    expect(Math.abs(allowance / MM_PER_INCH - inches)).toBeLessThanOrEqual(0.00006);
  });

  test('the answer is printed in the units of the question', async () => {
    const printed = async (...sheet: readonly string[]) => {
      const { out } = await tinwright('bend', ...sheet, ...options);
      const [, number, unit] = /^allowance +(\S+) (\S+)$/m.exec(out) ?? [];
      return { number: Number(number), unit };
    };
    const inch = await printed('--units', 'in', '--thickness', '1/16', '--radius', '1/16');
    expect(inch.unit).toBe('in');
    expect(Math.abs(inch.number - inches)).toBeLessThan(0.0006); // three decimals
    const mm = await printed('--thickness', '1.5875', '--radius', '1.5875');
    expect(mm.unit).toBe('mm');
    expect(Math.abs(mm.number - inches * MM_PER_INCH)).toBeLessThan(0.007); // two decimals
  });
});

// Machinery's Handbook, 31st ed., p. 1421, fig. 13: strap of 1/8 in, soft steel, straight 3.5 in: 5.545 in
test('handbook strap bent 180 and 60 degrees: 5.545 in', async () => {
  const rule = ['--units', 'in', '--thickness', '1/8', '--rule', 'handbook', '--group', 'medium'];
  const first = await json(...rule, '--radius', '3/8', '--angle', '180');
  const second = await json(...rule, '--radius', '5/8', '--angle', '60');
  expect(3.5 + (first.allowance + second.allowance) / MM_PER_INCH).toBeCloseTo(5.545, 3);
});

// Westermann textbook, section 16.8: v = 0.5·r + 1.5·t, legs 50, 40 and 30, r = t = 1: 116 mm
test('rule of thumb on a bracket of 50, 40 and 30 mm: flat length 116 mm', async () => {
  const linear = ['--rule', 'linear', '--perRadius', '0.5', '--perThickness', '1.5'];
  const { flatLength } = await json('--thickness', '1', '--radius', '1', '--legs', '50,40,30', ...linear);
  expect(flatLength).toBeCloseTo(116, 9);
});

// Tabellenbuch Metall, 90 degrees, values from memory: legs 25, 20, 15, s = 2, r = 4, v = 4.459: 51.08 mm
test('DIN 6935 on a bracket of 25, 20 and 15 mm: flat length 51.08 mm', async () => {
  const sheet = ['--thickness', '2', '--radius', '4', '--rule', 'din-6935'];
  const { deduction, flatLength } = await json(...sheet, '--legs', '25,20,15');
  expect(deduction).toBeCloseTo(4.459, 3);
  expect(flatLength).toBeCloseTo(51.08, 2);
});

// AC 43.13-1B, table 4-7: setback K = tan(A/2), times R + T
test.each([
  [45, 0.4142],
  [60, 0.5773],
  [90, 1],
])('outside setback at %d degrees is %f times R + T', async (angle, k) => {
  const { setback } = await json('--thickness', '1', '--radius', '1', '--angle', String(angle));
  expect(Math.abs(setback / 2 - k)).toBeLessThanOrEqual(0.0001); // the table cuts off, not rounds
});

test('two legs of 30 and 40 mm: 70 less the deduction', async () => {
  const sheet = ['--thickness', '1', '--radius', '1', '--k', '0.42'];
  const { flatLength, allowance, legs } = await json(...sheet, '--legs', '30, 40');
  expect(legs).toEqual([30, 40]);
  expect(allowance).toBeCloseTo((Math.PI / 2) * 1.42, 12);
  expect(flatLength).toBeCloseTo(70 - (4 - (Math.PI / 2) * 1.42), 12);
});

test('text shows the terms and the working', async () => {
  const { out } = await tinwright('bend', '--thickness', '1', '--radius', '1', '--k', '0.42');
  for (const row of ['allowance  2.23 mm', 'setback    2 mm', 'deduction  1.77 mm'])
    expect(out).toContain(row);
  expect(out).toContain('BD = 2 × 2 − 2.2305 = 1.7695');
});

// galvanised sheet gauge 20: 0.0396 in, two charts that agree
test('a gauge is read in the system of the material', async () => {
  const { thickness } = await json('--material', 'galvanised-steel', '--gauge', '20');
  expect(thickness / MM_PER_INCH).toBeCloseTo(0.0396, 9);
});

test('a length may carry its own unit', async () => {
  const { thickness, insideRadius } = await json('--units', 'in', '--thickness', '2 mm', '--radius', '1/8');
  expect(thickness).toBe(2);
  expect(insideRadius).toBeCloseTo(3.175, 12);
});

test.each([
  ['no thickness', [], 'no thickness'],
  ['thickness and gauge', ['--thickness', '1', '--gauge', '20'], 'Give one of the two'],
  ['a thickness of zero', ['--thickness', '0'], '0.1 mm to 6 mm allowed'],
  ['a thickness that is no length', ['--thickness', 'thin'], '"thin" is not a length'],
  [
    'an angle of 300 degrees',
    ['--thickness', '1', '--angle', '300'],
    '300 deg given, more than 0 to 270 deg allowed',
  ],
  ['an angle of zero', ['--thickness', '1', '--angle', '0'], 'more than 0 to 270 deg allowed'],
  ['an angle that is no number', ['--thickness', '1', '--angle', 'square'], 'a number allowed'],
  ['an unknown rule', ['--thickness', '1', '--rule', 'din-6953'], 'Did you mean "din-6935"?'],
  ['an unknown material', ['--thickness', '1', '--material', 'steel'], 'mild-steel'],
  ['one leg of nothing', ['--thickness', '1', '--legs', ' '], '--legs: an empty text is not a length'],
  [
    'a group the handbook lacks',
    ['--thickness', '1', '--rule', 'handbook', '--group', 'mild'],
    'medium, hard',
  ],
  [
    'a rule without its constants',
    ['--thickness', '1', '--rule', 'linear'],
    '--perRadius: missing. Give a number',
  ],
  ['a radius DIN 6935 stops at', ['--thickness', '1', '--radius', '0', '--rule', 'din-6935'], 'r/s = 0.05'],
])('%s is refused, and says what is allowed', async (_, options, says) => {
  const { exit, out, err } = await tinwright('bend', ...options);
  expect(exit).toBe(2);
  expect(out).toBe('');
  expect(err).toContain(says);
  expect(err).toMatch(/^bend: /);
});

// AC 43.13-1B table 4-7: setback K·(R + T) to where the mould lines meet; T 0.051, R 0.125 in worked out from the chart
test.each([
  [45, 0.0729],
  [90, 0.176],
  [135, 0.4249],
])('legs to the apex at %d°: the setback of each is %d in', async (angle, setback) => {
  const sheet = ['--units', 'in', '--thickness', '0.051', '--radius', '0.125', '--angle', String(angle)];
  const { flatLength, allowance } = await json(...sheet, '--legs', '2,3', '--legs-to', 'apex');
  expect(Math.abs((5 - (flatLength - allowance) / MM_PER_INCH) / 2 - setback)).toBeLessThanOrEqual(
    0.00005 + 1e-9,
  );
});

test('what legs to the apex lose beside the deduction is told', async () => {
  const bend = [
    '--thickness',
    '1',
    '--radius',
    '1',
    '--angle',
    '135',
    '--legs',
    '30,40',
    '--legs-to',
    'apex',
  ];
  const { out } = await tinwright('bend', ...bend);
  expect(out).toContain('to the apex  2.83 mm past the outer tangent'); // 2 × (tan 67.5° − 1)
  expect(out).toContain('less 6.34 mm'); // 0.68 of deduction and twice that
});

test('up to 90° a leg to the apex is one to the outer tangent', async () => {
  const bend = ['--thickness', '1', '--radius', '2', '--angle', '60', '--legs', '30,40'];
  expect(await json(...bend, '--legs-to', 'apex')).toEqual(await json(...bend));
});

test('180° has no apex: refused', async () => {
  const { exit, err } = await tinwright(
    'bend',
    '--angle',
    '180',
    '--thickness',
    '1',
    '--legs',
    '9,9',
    '--legs-to',
    'apex',
  );
  expect(exit).toBe(2);
  expect(err).toContain('outside faces meet under 180° only');
});

describe('in inches', () => {
  const inches = ['--units', 'in', '--radius', '1/16', '--rule', 'handbook', '--group', 'medium'];

  test.each([
    ['a sixteenth', ['--thickness', '1/16'], '0.0625'],
    ['20 gauge steel', ['--gauge', '20'], '0.0359'],
  ])('%s is printed with all its decimals', async (_, sheet, printed) => {
    const { out } = await tinwright('bend', ...inches, ...sheet);
    expect(out).toContain(`inside radius 0.0625 in, thickness ${printed} in\n`);
  });

  // Machinery's Handbook, 31st ed., p. 1421, medium group at 1/16 in: 0.1381 in
  test('the working is in inches and says so', async () => {
    const { out } = await tinwright('bend', ...inches, '--thickness', '1/16');
    expect(out).toContain('working, in:\n  BA = (0.64 × 0.0625 + 1.57 × 0.0625) × 90/90 = 0.1381\n');
    expect(out).not.toContain('mm');
  });

  test('--json is mm as ever, and says so', async () => {
    const answer = await json(...inches, '--thickness', '1/16');
    expect(answer).toMatchObject({ unit: 'mm', thickness: 1.5875 });
    expect(answer.working[0]).toBe('BA = (0.64 × 1.5875 + 1.57 × 1.5875) × 90/90 = 3.5084');
  });
});

test('a thickness in millimetres is printed with all its decimals, and the unit of the working', async () => {
  const { out } = await tinwright('bend', '--thickness', '1.5875', '--radius', '0.8');
  expect(out).toContain('inside radius 0.8 mm, thickness 1.5875 mm\n');
  expect(out).toContain('\nworking, mm:\n');
});

test.each([
  ['mm', '30,60.123,30.3333,44'],
  ['mm', '10,10,10,10,10,10,10,10,10,10,10'],
  ['in', '2,3,1/3'],
  ['in', '1,1,1,1,1,1,1,1,1,1,1,1,1'],
])('the flat length adds up as printed: %s, legs of %s', async (units, legs) => {
  const sheet = units === 'mm' ? ['--thickness', '1'] : ['--gauge', '20', '--units', 'in'];
  const { out } = await tinwright('bend', ...sheet, '--legs', legs);
  const [, given = '', taken, left] =
    /^flat length +(.*) less ([\d.]+) \w+ for \d+ bends = ([\d.]+) \w+$/m.exec(out) ?? [];
  const sum = given.split(' + ').reduce((s, leg) => s + Number.parseFloat(leg), 0);
  expect(sum).toBeGreaterThan(1);
  expect(sum - Number(taken)).toBeCloseTo(Number(left), 9);
});

describe('legs that end inside the setbacks of their bends', () => {
  // R = T = 1 at 90 degrees: a setback of 2 at each bend
  const sheet = ['--thickness', '1', '--radius', '1'];

  test.each([
    ['the first', '1.99,30', 'leg 1: 1.99 mm given, 2 mm or more allowed: its bend takes up that much.'],
    ['the last', '30,4,1.9999', 'leg 3: 1.9999 mm given, 2 mm or more allowed: its bend takes up that much.'],
    ['one between', '30,3,30', 'leg 2: 3 mm given, 4 mm or more allowed: its two bends take up that much.'],
  ])('%s is refused: leg, value, least', async (_, legs, says) => {
    const { exit, out, err } = await tinwright('bend', ...sheet, '--legs', legs);
    expect({ exit, out }).toEqual({ exit: 2, out: '' });
    expect(err).toContain(`bend: --legs: ${says} Make it `);
  });

  test('all are told, in the unit asked for', async () => {
    const { err } = await tinwright(
      'bend',
      '--units',
      'in',
      ...['--thickness', '1/16', '--legs', '1/16,1/8,3'],
    );
    expect(err.split('\n').map((l) => l.slice(0, 63))).toEqual([
      'bend: --legs: leg 1: 0.0625 in given, 0.125 in or more allowed:'.slice(0, 63),
      'bend: --legs: leg 2: 0.125 in given, 0.25 in or more allowed: i'.slice(0, 63),
      '',
    ]);
  });

  test.each([
    ['that just reach', ['--legs', '2,4,2']],
    ['of any length without compensation', ['--legs', '1,1', '--rule', 'nominal']],
    ['alone, with no bend beside it', ['--legs', '1']],
  ])('legs %s are fine', async (_, options) => {
    expect((await tinwright('bend', ...sheet, ...options)).exit).toBe(0);
  });

  test('with --json the path is text, as in every verb', async () => {
    const { out } = await tinwright('bend', ...sheet, '--legs', '1,30', '--json');
    expect(JSON.parse(out).problems).toMatchObject([{ code: 'leg-short', path: '--legs' }]);
    const sheetless = await tinwright('bend', '--thickness', '0', '--json');
    expect(JSON.parse(sheetless.out).problems).toMatchObject([{ code: 'value-range', path: '--thickness' }]);
  });
});
