import { planJob, readJob } from '@tinwright/core';
import { place3 } from '@tinwright/core/internal';
import { expect, test } from 'vitest';

const HALF = {
  family: 'hinged-box',
  length: 320,
  width: 200,
  hinge: { diameter: 4, count: 5, edge: 40, below: 15 },
  hasp: { diameter: 4, count: 2, edge: 140, below: 20 },
};

const plan = planJob(
  readJob({
    units: 'mm',
    stock: { material: 'galvanised-steel', thickness: 1 },
    bending: { rule: 'k-factor', insideRadius: 1 },
    parts: [
      { name: 'body', ...HALF, height: 120, ledge: { height: 80, leg: 25 } },
      { name: 'lid', ...HALF, height: 50 },
      { name: 'angle', family: 'bracket', width: 150, base: 20, leg: 25 },
      { name: 'tray', family: 'tray', length: 314, width: 180, height: 35, rim: { return: 10 } },
    ],
    joints: [
      { name: 'shut', from: 'body.rim', to: 'lid.rim', by: 'none' },
      {
        name: 'ledge',
        from: 'body.ledge-west',
        to: 'angle.leg-back',
        by: { 'blind-rivet': { diameter: 3.2 } },
      },
      { name: 'inside', from: 'body.ledge', to: 'tray.underside', by: 'none' },
    ],
  } as unknown),
);

const holes = (piece: string, wall: string) => {
  const placed = plan.assembly?.placed.find((p) => p.piece === piece);
  if (placed === undefined) throw new Error(`${piece} is not there`);
  const { part, pose } = placed;
  const panel = part.formed.panels.find((p) => p.id === wall);
  return (panel?.holes ?? [])
    .map(({ at: [x = 0, y = 0] }) => place3(pose, place3(panel?.pose ?? pose, [x, y, 0])))
    .toSorted((a, b) => a[0] - b[0]);
};

test.each(['north', 'south'])(
  'shut, the holes of the %s walls stand over each other in one plane',
  (wall) => {
    const [low, high] = [holes('body', wall), holes('lid', wall)];
    expect(low.length).toBeGreaterThan(1);
    expect(high).toHaveLength(low.length);
    low.forEach((at, i) => {
      expect(high[i]?.[0]).toBeCloseTo(at[0], 9);
      expect(high[i]?.[1]).toBeCloseTo(at[1], 9);
      // as far over the rims as the others below
      expect((high[i]?.[2] ?? 0) + at[2]).toBeCloseTo(240, 9);
    });
  },
);

test('a tray stands on the angles at the height said', () => {
  const at = (piece: string) => plan.assembly?.placed.find((p) => p.piece === piece)?.pose.origin[2];
  expect(at('tray')).toBeCloseTo(80, 9);
  // the angle's own outside lies a sheet below what stands on it
  expect(at('angle')).toBeCloseTo(79, 9);
  expect(plan.findings.filter((f) => f.code === 'clash')).toEqual([]);
});
