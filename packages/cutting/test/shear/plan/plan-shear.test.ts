import { NO_LIMITS, planShear, SHEAR_EFFORT, verifyShearPlan } from '@tinwright/cutting';
import { lowerBound } from '@tinwright/cutting/internal';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { guillotineFlaws } from '../kit/guillotine.js';
import { blank, FULL, METAL, OFFCUT, orders, RACK } from '../kit/orders.js';

const QUICK = { ...SHEAR_EFFORT, steps: { sheets: 600, offcut: 200, neat: 20 } };

test('random orders: every plan replays without a flaw, and no cost is below the bound', () => {
  fc.assert(
    fc.property(orders, fc.integer({ min: 1, max: 1e6 }), ({ blanks, rack, limits }, seed) => {
      const plans = planShear(blanks, rack, limits, { ...QUICK, seed });
      expect(plans).toHaveLength(1);
      for (const plan of plans) {
        expect(verifyShearPlan(plan, blanks, limits)).toEqual([]);
        if (plan.missing.length === 0) expect(plan.cost).toBeGreaterThanOrEqual(plan.bound - 1e-6);
      }
      expect(guillotineFlaws(plans)).toBe('');
    }),
    { numRuns: 25 },
  );
});

test('a sheet longer both ways than the shear is used whole or not at all', () => {
  const limits = { length: 900, stop: 600 };
  const blanks = [blank('tray', 434.1, 331.2, 3), blank('top', 2000, 1000, 1)];
  const [plan] = planShear(blanks, { ...RACK, sheets: [FULL, OFFCUT] }, limits, QUICK);
  expect(verifyShearPlan(plan as NonNullable<typeof plan>, blanks, limits)).toEqual([]);
  expect(plan?.sheets.map(({ stock, cuts }) => [stock.name, cuts === null])).toEqual([
    ['full', true],
    ['end of a sheet', false],
  ]);
  expect(plan?.missing).toEqual([{ part: 'tray', count: 2 }]);
});

test('the same seed and steps: the same plan; another seed may give another', () => {
  const blanks = [
    blank('tray', 434.1, 331.2, 9),
    blank('end', 195.6, 160, 18),
    blank('handle', 452.3, 83.1, 9),
  ];
  const plan = (seed: number) => JSON.stringify(planShear(blanks, RACK, NO_LIMITS, { ...QUICK, seed }));
  expect(plan(3)).toBe(plan(3));
  expect(blanks[0]).toEqual(blank('tray', 434.1, 331.2, 9));
});

test('eight quarters of a sheet fill two sheets without waste, cut with two settings', () => {
  const [plan] = planShear([blank('quarter', 1000, 500, 8)], RACK, NO_LIMITS, QUICK);
  expect(plan?.sheets).toHaveLength(2);
  expect(plan?.settings).toBe(2);
  expect(plan?.steps).toHaveLength(6);
  expect(plan?.sheets.flatMap((s) => s.offcuts)).toEqual([]);
});

test('what fits an offcut is cut from it, and no sheet is opened', () => {
  const rack = { ...RACK, sheets: [FULL, OFFCUT] };
  const [plan] = planShear([blank('end', 195.6, 160, 6)], rack, NO_LIMITS, QUICK);
  expect(plan?.sheets.map((s) => s.stock.name)).toEqual(['end of a sheet']);
});

test('little on a large sheet leaves most of it in one piece', () => {
  const [plan] = planShear(
    [blank('tray', 434.1, 331.2, 2), blank('end', 195.6, 160, 4)],
    RACK,
    NO_LIMITS,
    QUICK,
  );
  const [largest] = plan?.sheets[0]?.offcuts ?? [];
  expect((largest?.w ?? 0) * (largest?.h ?? 0)).toBeGreaterThan(0.75 * 2000 * 1000);
});

test('grain along y on sheets rolled along x turns every blank', () => {
  const rack = { ...RACK, sheets: [{ ...FULL, grain: 'x' as const }] };
  const [plan] = planShear([blank('tray', 434.1, 331.2, 5, 'y')], rack, NO_LIMITS, QUICK);
  expect(plan?.sheets.flatMap((s) => s.parts.map((p) => [p.turned, p.w]))).toEqual(
    Array.from({ length: 5 }, () => [true, 331.2]),
  );
});

test('one sheet for more than it holds: what is missing is counted', () => {
  const rack = { ...RACK, sheets: [{ ...FULL, count: 1 }] };
  const [plan] = planShear([blank('half', 1000, 1000, 3)], rack, NO_LIMITS, QUICK);
  expect(plan?.sheets).toHaveLength(1);
  expect(plan?.missing).toEqual([{ part: 'half', count: 1 }]);
});

test('stock runs short: no more is left out for the sake of a larger offcut', () => {
  const blanks = [
    blank('tray', 434.1, 331.2, 14),
    blank('end', 195.6, 160, 10),
    blank('strip', 452.3, 83.1, 6),
  ];
  const rack = { ...RACK, sheets: [{ ...FULL, count: 1 }] };
  const left = (offcut: number) =>
    planShear(blanks, rack, NO_LIMITS, { ...QUICK, steps: { ...QUICK.steps, offcut } }).flatMap((p) =>
      p.missing.map(({ part, count }) => {
        const { x, y } = blanks.find((b) => b.part === part) ?? { x: 0, y: 0 };
        return count * x * y;
      }),
    );
  const area = (areas: readonly number[]) => areas.reduce((a, b) => a + b, 0);
  expect(area(left(0))).toBeGreaterThan(0);
  expect(area(left(2000))).toBeLessThanOrEqual(area(left(0)) + 1e-6);
});

test('a shear of 1050 mm parts a sheet of 2000 by 1000 across first', () => {
  const limits = { length: 1050, stop: 600 };
  const [plan] = planShear([blank('tray', 434.1, 331.2, 12)], RACK, limits, QUICK);
  expect(plan && verifyShearPlan(plan, [blank('tray', 434.1, 331.2, 12)], limits)).toEqual([]);
  expect(plan?.sheets.map((s) => s.cuts?.axis)).toEqual(plan?.sheets.map(() => 'x'));
  for (const { stop } of plan?.steps ?? []) if (stop !== null) expect(stop).toBeLessThanOrEqual(600);
});

test('two thicknesses are two plans', () => {
  const thin = { ...blank('lid', 200, 100, 2), thickness: 0.8 };
  const rack = { ...RACK, sheets: [FULL, { ...FULL, thickness: 0.8 }] };
  const plans = planShear([blank('tray', 300, 200, 1), thin], rack, NO_LIMITS, QUICK);
  expect(plans.map((p) => [p.material, p.thickness])).toEqual([
    [METAL.material, 1],
    [METAL.material, 0.8],
  ]);
});

test('no blanks: no plans', () => {
  expect(planShear([], RACK, NO_LIMITS, QUICK)).toEqual([]);
});

test('nine squares just over a third of a side need three sheets, though their area asks for two', () => {
  const items = Array.from({ length: 9 }, () => ({ w: 34, h: 34 }));
  const ways = new Uint8Array(9).fill(1);
  const bin = { x: 100, y: 100, cutX: 100, cutY: 100, cost: 1, count: 9, ways };
  expect(lowerBound({ items, bins: [bin] })).toBe(3);
});

test('a verifier sees each kind of fault that is put into a plan', () => {
  const blanks = [blank('tray', 434.1, 331.2, 6, 'x')];
  const [plan] = planShear(blanks, RACK, NO_LIMITS, QUICK);
  const [sheet] = plan?.sheets ?? [];
  const [part] = sheet?.parts ?? [];
  if (!plan || !sheet?.cuts || !part) throw new Error('no plan');
  const codes = (changed: Partial<typeof sheet>, rest: Partial<typeof plan> = {}) =>
    verifyShearPlan({ ...plan, sheets: [{ ...sheet, ...changed }], ...rest }, blanks, NO_LIMITS).map(
      (f) => f.code,
    );
  const others = sheet.parts.slice(1);
  expect(codes({})).toEqual([]);
  expect(codes({ parts: others })).toContain('part-count');
  expect(codes({ parts: [{ ...part, x: part.x + 5 }, ...others] })).toContain('cut-through-part');
  expect(codes({ parts: [{ ...part, w: part.w - 5 }, ...others] })).toEqual([
    'part-not-cut-out',
    'part-size',
  ]);
  expect(codes({ cuts: { ...sheet.cuts, at: -3 } })).toContain('cut-outside-piece');
  expect(codes({ offcuts: [{ x: 0, y: 0, w: 120, h: 120 }] })).toEqual(['offcut-not-there']);
  expect(codes({ stock: { ...sheet.stock, trim: { west: 9, east: 9, south: 9, north: 9 } } })).toContain(
    'part-on-trim',
  );
  expect(codes({ stock: { ...sheet.stock, grain: part.turned ? 'x' : 'y' } })).toContain(
    'part-against-grain',
  );
  expect(codes({ stock: { ...sheet.stock, count: 0 } })).toContain('sheet-count');
  expect(codes({}, { steps: plan.steps.toReversed() })).toContain('steps-differ');
  expect(verifyShearPlan(plan, blanks, { length: 300, stop: 300 }).map((f) => f.code)).toContain(
    'cut-too-long',
  );
});

test('a blank, not the rest of its sheet, lies against the stop wherever the stop reaches', () => {
  const blanks = [blank('tray', 435.7, 331.2, 3), blank('rail', 610.3, 83.1, 4)];
  const [plan] = planShear(blanks, RACK, NO_LIMITS, QUICK);
  const sizes = blanks.flatMap((b) => [b.x, b.y]);
  const multiples = sizes.flatMap((s) => [1, 2, 3, 4].map((n) => n * s));
  // what is set is a blank's size, of some side by side, or a sum of both kinds; never what is left of the sheet
  const sums = [...multiples, ...multiples.flatMap((a) => multiples.map((b) => a + b))];
  for (const step of plan?.steps ?? []) {
    const freed = [step.low, step.high].some((piece) => piece.kind === 'blank');
    if (freed) expect(sums.some((s) => Math.abs(s - (step.stop ?? 0)) < 0.01)).toBe(true);
  }
});

test('offcuts first: what they hold is cut from them, the rest from as few sheets as by itself', () => {
  const blanks = [blank('tray', 600, 400, 5)];
  const rack = { ...RACK, sheets: [OFFCUT, FULL], offcuts: 'first' as const };
  const [plan] = planShear(blanks, rack, NO_LIMITS, QUICK);
  expect(plan?.missing).toEqual([]);
  expect(plan?.sheets.map((s) => [s.stock.origin, s.parts.length])).toEqual([
    ['offcut', 1],
    ['sheet', 4],
  ]);
  expect(verifyShearPlan(plan as NonNullable<typeof plan>, blanks, NO_LIMITS)).toEqual([]);
});

test.each([
  [blank('tray', 100, 100, 1e9), '1000000001 pieces to cut given, up to 100000 allowed'],
  [blank('tray', 100, 100, 1.5), 'blank tray: quantity 1.5 given, a whole number from 1 allowed'],
  [blank('tray', 100, 100, Number.NaN), 'blank tray: quantity NaN given, a whole number from 1 allowed'],
  [blank('tray', -100, 100, 1), 'blank tray: x -100 mm given, more than 0 allowed'],
  [blank('tray', 100, Infinity, 1), 'blank tray: y Infinity mm given, more than 0 allowed'],
])('%j is refused', (given, message) => {
  expect(() => planShear([blank('end', 10, 10, 1), given], RACK, NO_LIMITS, QUICK)).toThrow(
    expect.objectContaining({ name: 'RangeError', message }),
  );
});
