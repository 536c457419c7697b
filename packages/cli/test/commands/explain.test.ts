import { describe, expect, test } from 'vitest';
import { tinwright } from '../host.js';
import { HEAD, partJob, STRIP, stripJob } from '../jobs.js';
import { jobFile } from '../place.js';

// BA = (π/180)·90·(1 + 0.42·1), FAA-H-8083-31 ch. 4 with the K of the job; BD = 2·(1 + 1) − BA
const DEDUCTION = 4 - (Math.PI / 2) * 1.42;

test('the blank of a strip is its legs less a deduction for each bend', async () => {
  const { exit, out } = await tinwright('explain', await jobFile(stripJob()), '--json');
  expect(exit).toBe(0);
  const [part, ...more] = JSON.parse(out);
  expect(more).toEqual([]);
  expect(part.name).toBe('bracket');
  const [x, y] = part.blank;
  const terms: readonly { readonly kind: string; readonly length: number }[] = x.terms;
  expect(terms.map((t) => t.kind)).toEqual(['leg', 'bend', 'leg', 'bend', 'leg']);
  const lengths = terms.map((t) => t.length);
  for (const [i, wanted] of [30, -DEDUCTION, 60, -DEDUCTION, 30].entries())
    expect(lengths[i]).toBeCloseTo(wanted, 9);
  expect(x.total).toBeCloseTo(
    lengths.reduce((a, b) => a + b, 0),
    9,
  );
  expect(y.total).toBeCloseTo(40, 9);
});

test('text shows legs, deductions, sum, the working and where K is from', async () => {
  const { out } = await tinwright('explain', await jobFile(stripJob()));
  expect(out).toMatch(/^bracket: .*1 mm; k-factor, K = 0\.42 \(k given in the job\)$/m);
  expect(out).toMatch(/\+ 30 mm +outside leg of leg-1/);
  expect(out).toMatch(new RegExp(`- ${DEDUCTION.toFixed(2)} mm +deduction of bend leg-2`));
  expect(out).toContain(`= ${(120 - 2 * DEDUCTION).toFixed(2)} mm`);
  expect(out).toContain('BA = π/180 × 90° × (1 + 0.42 × 1) = 2.2305');
});

test('equal bends are worked out once, with the names of all', async () => {
  const { out } = await tinwright('explain', await jobFile(stripJob()));
  expect(out.match(/BA = /g)).toHaveLength(1);
  expect(out).toMatch(/bend 90°, inside radius 1 mm: leg-2, leg-3$/m);
});

test('--part takes one part of several', async () => {
  const job = await jobFile(HEAD + STRIP + STRIP.replace('bracket', 'clip'));
  const all = JSON.parse((await tinwright('explain', job, '--json')).out);
  expect(all.map((p: { name: string }) => p.name)).toEqual(['bracket', 'clip']);
  const one = JSON.parse((await tinwright('explain', job, '--part', 'clip', '--json')).out);
  expect(one.map((p: { name: string }) => p.name)).toEqual(['clip']);
});

test('a part that is not in the job is refused, the nearest one named', async () => {
  const { exit, out, err } = await tinwright('explain', await jobFile(stripJob()), '--part', 'braket');
  expect(exit).toBe(2);
  expect(out).toBe('');
  expect(err).toBe('explain: part "braket" given. Did you mean "bracket"? Known: bracket.\n');
});

const strip = (units: 'mm' | 'in', legs: readonly unknown[], angle: number) =>
  partJob(
    'bent-strip',
    { width: 40, legs, angles: legs.slice(1).map((_, i) => (i % 2 === 0 ? angle : -angle)) },
    {
      units,
      stock: { material: 'mild-steel', gauge: 20 },
      bending: { rule: 'k-factor', k: 0.42, insideRadius: '1/16 in' },
    },
  );

describe.each([
  ['mm', 0.01],
  ['in', 0.0001],
] as const)('a job in %s', (units, step) => {
  test.each([30, 45, 61, 90, 119])('every column adds up as printed, bends of %d degrees', async (angle) => {
    const long = Array.from({ length: 12 }, (_, i) => 20 + i / 3);
    const { out } = await tinwright('explain', await jobFile(strip(units, long, angle)));
    const rows = [...out.matchAll(/^ {4}([+=-]) ([\d.]+) (mm|in)/gm)].map(([, sign, number, unit]) => ({
      sign,
      steps: Math.round(Number(number) / step),
      unit,
    }));
    const end = rows.findIndex((r) => r.sign === '=');
    expect(end).toBe(long.length * 2 - 1);
    const sum = rows.slice(0, end).reduce((s, r) => s + (r.sign === '-' ? -r.steps : r.steps), 0);
    expect(sum).toBe(rows[end]?.steps);
    expect(new Set(rows.map((r) => r.unit))).toEqual(new Set([units]));
  });

  test('that rounding is carried is said where it is', async () => {
    const CARRIED = 'rounding is carried from line to line';
    const long = Array.from({ length: 12 }, (_, i) => 20 + i / 3);
    const { out } = await tinwright('explain', await jobFile(strip(units, long, 61)));
    const [along, across] = out.split('blank along y');
    expect(along).toContain(CARRIED);
    expect(across).toContain('+ 40 ');
    expect(across).not.toContain(CARRIED);
  });
});

test('a job in inches: working in inches, and it says so', async () => {
  const { out } = await tinwright('explain', await jobFile(strip('in', [2, 2], 90)));
  expect(out).toMatch(/^tray: .*, 0\.0359 in; k-factor/m);
  expect(out).toMatch(/^ {2}bend 90°, inside radius 0\.0625 in: leg-2$/m);
  // π/2 × (1/16 + 0.42 × 0.0359) = 0.1219, two setbacks of 0.0984 less that
  expect(out).toContain(
    '    working, in:\n      BA = π/180 × 90° × (0.0625 + 0.42 × 0.0359) = 0.1219\n      SB = tan(90°/2) × 0.0984 = 0.0984\n',
  );
  expect(out).toContain('- 0.0749 in  deduction of bend leg-2');
  expect(out).not.toContain('mm');
});

test('a wired edge in a job in inches: its working is not of the rule, stays mm and says so', async () => {
  const pan = partJob(
    'flared-pan',
    { bottom: { length: 6, width: 4 }, depth: 1, flare: 0.4, edge: { type: 'wire', diameter: '1/8 in' } },
    { units: 'in', stock: { material: 'mild-steel', gauge: 24 } },
  );
  const { out } = await tinwright(
    'explain',
    await jobFile(pan.replace('"insideRadius":1', '"insideRadius":0.04')),
  );
  expect(out).toMatch(/working, in:\n +BA = /);
  expect(out).toMatch(/working, mm:\n +edge rolled round 3\.175: 2\.5 × 3\.175 = 7\.9375\n/); // 1/8 in are 3.175 mm
});

test('--json says that its lengths are mm', async () => {
  const { out } = await tinwright('explain', await jobFile(strip('in', [2, 2], 90)), '--json');
  expect(JSON.parse(out)).toMatchObject([
    { name: 'tray', unit: 'mm', blank: [{ axis: 'x' }, { total: 1016 }] },
  ]);
});
