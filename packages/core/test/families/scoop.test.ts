import { planJob, readJob } from '@tinwright/core';
import { describe, expect, test } from 'vitest';

const job = (parts: readonly object[], more: object = {}) =>
  planJob(
    readJob({
      units: 'mm',
      stock: { material: 'mild-steel', thickness: 1 },
      bending: { rule: 'k-factor', insideRadius: 1 },
      parts,
      ...more,
    } as unknown),
  );

const SCOOP = { name: 'scoop', family: 'scoop', length: 220, width: 130, height: 80 };

// NAVEDTRA 14251 (Steelworker vol. 2): a single hem takes its own width of metal, an edge round a wire 2.5 diameters
test.each([
  [{ type: 'plain' }, 0],
  [{ type: 'hem', length: 10 }, 10],
  [{ type: 'wire', diameter: 4 }, 10],
])('laid out nominally a lip %j takes %d mm', (lip, takes) => {
  const { flat } = job([{ ...SCOOP, lip }], { bending: { rule: 'nominal' } }).parts[0] as never as {
    flat: { blank: { max: readonly number[] } };
  };
  expect(flat.blank.max[0]).toBeCloseTo(80 + 220 + takes, 9);
});

test('its mouth is wider than its back by the flare on each side, where nothing is cut from it', () => {
  const [scoop] = job([{ ...SCOOP, flare: 22 }]).parts;
  const side = scoop?.formed.panels.find((p) => p.id === 'north');
  // the side runs out 22 in 220
  expect(Math.abs((side?.pose.x[1] ?? 0) / (side?.pose.x[0] ?? 1))).toBeCloseTo(0.1, 12);
  expect(side?.pose.y).toEqual([expect.closeTo(0, 9), expect.closeTo(0, 9), expect.closeTo(1, 9)]);
});

describe('a finish on the slope of a side beside a rolled lip', () => {
  const sides = ['south', 'north'];
  const wired = { ...SCOOP, height: 120, length: 380, slope: 190, lip: { type: 'wire', diameter: 18 } };
  const finishes = [
    { type: 'closed', length: 6 },
    { type: 'open', length: 8, gap: 2 },
    { type: 'teardrop', length: 14 },
    { type: 'return', height: 12 },
    { type: 'wired', diameter: 4 },
  ];
  const along = (panel: string, plan: ReturnType<typeof job>) => {
    const { cut } = plan.parts[0]?.part.panels.find((p) => p.id === panel) ?? { cut: { shape: [] } };
    return cut.shape.map(({ from }) => from[0]);
  };

  test.each(finishes.flatMap((f) => ['down', 'up'].map((side) => ({ ...f, side }))))(
    '%j leaves the end of the side where it was and ends with it',
    (finish) => {
      const plain = job([wired]);
      const edges = sides.map((panel) => ({ ...finish, panel, edge: 'lip' }));
      const finished = job([{ ...wired, edges }]);
      expect(Math.min(...along('south', finished))).toBeCloseTo(Math.min(...along('south', plain)), 9);
      expect(Math.max(...along('north', finished))).toBeCloseTo(Math.max(...along('north', plain)), 9);
      // x of the part runs to the lip: nothing of a side or its fold stands further out than the side's own end
      const end = (plan: ReturnType<typeof job>) =>
        Math.max(
          ...(plan.parts[0]?.formed.panels ?? [])
            .filter(({ id }) => /south|north/.test(id))
            .flatMap(({ shape, pose }) =>
              shape.map((v) => pose.origin[0] + v[0] * pose.x[0] + v[1] * pose.y[0]),
            ),
        );
      expect(end(finished)).toBeLessThanOrEqual(end(plain) + 1e-9);
    },
  );
});

test('a handle on feet stands on its back, as far off as its tabs are long', () => {
  const { assembly, findings } = job(
    [
      { ...SCOOP, lip: { type: 'hem', length: 10 } },
      {
        name: 'grip',
        family: 'handle',
        span: 80,
        width: 30,
        sideDepth: 12,
        tabs: { length: 50 },
        feet: { length: 15 },
      },
    ],
    {
      joints: [
        { name: 'on', from: 'scoop.back-out', to: 'grip.feet', by: { 'blind-rivet': { diameter: 3.2 } } },
      ],
    },
  );
  const grip = assembly?.placed.find((p) => p.piece === 'grip');
  // the inside of the grip looks at the back, 50 less a sheet away
  expect(grip?.pose.z[0]).toBeCloseTo(-1, 9);
  expect(grip?.pose.origin[0]).toBeCloseTo(-49, 9);
  expect(assembly?.fasteners.length).toBeGreaterThan(1);
  expect(findings.filter((f) => f.severity === 'error')).toEqual([]);
});

test('its back is riveted to its sides by their own tabs', () => {
  const joint = { name: 'corners', from: 'scoop.back-tabs', to: 'scoop.sides' };
  const by = { 'blind-rivet': { diameter: 3.2, count: 4 } };
  const { assembly, parts } = job([{ ...SCOOP, flare: 4, tabs: { length: 18 } }], {
    joints: [{ ...joint, by }],
  });
  expect(assembly?.fasteners).toHaveLength(4);
  const at = (id: string) => parts[0]?.part.panels.find((p) => p.id === id)?.marks.length;
  expect(['tab-south', 'tab-north', 'south', 'north'].map(at)).toEqual([2, 2, 2, 2]);
});
