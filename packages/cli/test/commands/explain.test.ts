import { expect, test } from 'vitest';
import { tinwright } from '../host.js';
import { HEAD, STRIP, stripJob } from '../jobs.js';
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
