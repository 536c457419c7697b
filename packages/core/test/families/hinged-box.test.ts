import { planJob, readJob } from '@tinwright/core';
import { expect, test } from 'vitest';

const HALF = {
  family: 'hinged-box',
  length: 320,
  width: 200,
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

test('a tray stands on the angles at the height said', () => {
  const at = (piece: string) => plan.assembly?.placed.find((p) => p.piece === piece)?.pose.origin[2];
  expect(at('tray')).toBeCloseTo(80, 9);
  // the angle's own outside lies a sheet below what stands on it
  expect(at('angle')).toBeCloseTo(79, 9);
  expect(plan.findings.filter((f) => f.code === 'clash')).toEqual([]);
});
