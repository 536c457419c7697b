import { jobReader, planJob, readJob } from '@tinwright/core';
import { valueAt } from '@tinwright/core/internal';
import { expect, test } from 'vitest';

const read = jobReader(); // keeps the schemas that it builds

const CHEEK = { offset: 80, angle: 30, height: 120, straight: 60, tabs: { length: 18 } };
const SHEET = {
  units: 'mm',
  stock: { material: 'galvanised-steel', thickness: 0.8 },
  bending: { rule: 'k-factor', insideRadius: 1 },
};
const by = { 'blind-rivet': { diameter: 3.2 } };

const cheek = (more: object) =>
  planJob(read({ ...SHEET, parts: [{ name: 'cheek', family: 'offset-cheek', ...CHEEK, ...more }] }))
    .parts[0] as NonNullable<ReturnType<typeof planJob>['parts'][0]>;

/** Two cheeks and two wrappers with this slanted leg and these bends. */
function duct(sizes: typeof CHEEK, slanted: number, angle: number = sizes.angle) {
  const wrapper = {
    name: 'wrapper',
    family: 'bent-strip',
    quantity: 2,
    width: 160,
    legs: [{ of: 'right.longLeg' }, slanted, { of: 'right.shortLeg' }],
    angles: [angle, -angle],
  };
  const hands = ['right', 'left'].map((hand) => ({ name: hand, family: 'offset-cheek', hand, ...sizes }));
  const joints = ['right', 'left'].flatMap((hand) =>
    ['under', 'over'].flatMap((side, k) =>
      [1, 2, 3].map((i) => ({
        name: `${hand}-${side}-${i}`,
        from: `wrapper-${k + 1}.leg-${i}`,
        to: `${hand}.${side}-${i}`,
        at: [0],
        edge: hand === 'right' ? 'north' : 'south',
        by,
      })),
    ),
  );
  const { findings, assembly } = planJob(read({ ...SHEET, parts: [...hands, wrapper], joints }));
  return { assembly, wrong: findings.filter((f) => f.severity !== 'note').map((f) => f.code) };
}

// An offset's true length is the hypotenuse over its set and its run, its mitres are half the bend: plane trigonometry,
// as the pattern books work it. Here it is worked from 3-4-5 triangles, with roots and no angle functions.
test('a set of 90 over a run of 120 is 150 long on the slant, and mitred by a third of the width', () => {
  const angle = 36.86989764584402; // of the triangle 3-4-5; tan of its half is 1/3
  const { formed, part } = cheek({ offset: 90, angle, height: 120, straight: 60 });
  const long = 60 + 120 / 3;
  expect(formed.size[0]).toBeCloseTo(long + 120 + 60, 6);
  expect(formed.size[1]).toBeCloseTo(90 + 120, 6);
  // a slanted tab ends the setback's share of the mitre, 1.8 / 3, and the gap off both corners
  const slant = part.panels.find((p) => p.id === 'under-2')?.outline ?? [];
  expect(slant[1]?.from[0]).toBeCloseTo(150 - 2 * (1.8 / 3 + 0.5), 6);
});

test('it is as wide along the slant as at its straight ends', () => {
  const { formed } = cheek({});
  const bends = Object.fromEntries(formed.bends.map((b) => [b.id, b.frame]));
  const [under, over] = [bends['under-2'], bends['over-2']];
  const [d, u] = [under?.origin ?? [], over?.origin ?? []];
  const [s, c] = [0.5, Math.sqrt(3) / 2]; // of 30 degrees
  const apart = -s * ((u[0] ?? 0) - (d[0] ?? 0)) + c * ((u[1] ?? 0) - (d[1] ?? 0));
  expect(apart).toBeCloseTo(120 - 2 * 1.8, 9); // between the axes of the bends, a setback in on both sides
});

test.each([
  [CHEEK, 160 + 0.8 * (2 - Math.sqrt(3))], // tan 15 degrees
  [{ ...CHEEK, angle: 45 }, 80 * Math.SQRT2 + 0.8 * (Math.SQRT2 - 1)], // tan 22.5 degrees
  [{ ...CHEEK, angle: 60, height: 70 }, 160 / Math.sqrt(3) + 0.8 / Math.sqrt(3)],
])('two cheeks and two equal wrappers close to a duct: %o, slanted leg %f', (sizes, slanted) => {
  const { assembly, wrong } = duct(sizes, slanted);
  expect(wrong).toEqual([]);
  expect(assembly?.placed).toHaveLength(4);
  const [right, left] = ['right', 'left'].map((n) => assembly?.placed.find((p) => p.piece === n)?.pose);
  // back to back, as far apart as the wrappers are wide
  const apart = [0, 1, 2].map((k) => (left?.origin[k] ?? 0) - (right?.origin[k] ?? 0));
  const across = apart.reduce((sum, v, k) => sum + v * (right?.z[k] ?? 0), 0);
  expect(Math.abs(across)).toBeCloseTo(160, 9);
});

test('a measured slanted leg moves the offset by its sine', () => {
  const job = {
    units: 'mm',
    stock: { material: 'galvanised-steel', thickness: 0.8 },
    parts: [
      { name: 'cheek', family: 'offset-cheek', ...CHEEK },
      {
        name: 'wrapper',
        family: 'bent-strip',
        width: 160,
        legs: [{ of: 'cheek.longLeg' }, { of: 'cheek.slantLeg' }, { of: 'cheek.shortLeg' }],
        angles: [30, -30],
      },
    ],
  };
  const slant = 160 + 0.8 * (2 - Math.sqrt(3));
  const [cheek, wrapper] = readJob(job as unknown).parts;
  expect(valueAt(wrapper?.params, ['legs', 1])).toBeCloseTo(slant, 9);
  expect(cheek?.asMade).toMatchObject({ offset: 80 });
  const measured = readJob({ ...job, measured: { 'cheek.slantLeg': slant + 2 } } as unknown);
  expect(valueAt(measured.parts[0]?.asMade, ['offset'])).toBeCloseTo(80 + 2 * 0.5, 9); // sin 30 degrees
});

test('a wrapper bent or cut otherwise than its cheeks does not close', () => {
  expect(duct(CHEEK, 160.2144, 31).wrong).toContain('loop-open');
  expect(duct(CHEEK, 162).wrong).toContain('loop-open');
});

test('tabs that would leave nothing of themselves at the inner corners are refused with what works', () => {
  expect(() => cheek({ straight: 4 })).toThrow(/straight: 4 mm given.*Use [\d.]+ mm or more/);
  expect(() => cheek({ offset: 3 })).toThrow(/offset: 3 mm given.*Use [\d.]+ mm or more/);
});
