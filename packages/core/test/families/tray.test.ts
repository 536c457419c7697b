// Trays with a returned rim: the workshop sheet's layout, and what stands on their corners.

import { planJob, readJob } from '@tinwright/core';
import { expect, test } from 'vitest';

const job = (parts: readonly object[], more: object = {}) =>
  planJob(
    readJob({
      units: 'mm',
      stock: { material: 'galvanised-steel', thickness: 1 },
      bending: { rule: 'k-factor', insideRadius: 1 },
      parts,
      ...more,
    } as unknown),
  );

// College workshop sheet, scribd 578606676: from the edge of the metal a line at 10, a wall of 30, a base of 120 long,
// no allowance for bends. The sheet folds its 10 over as a hem; as a return its lines stand at the same places.
test('the marks of the workshop sheet: lines 10 and 40 mm from each edge of 200 mm', () => {
  const tray = job(
    [{ name: 'tray', family: 'tray', length: 120, width: 80, height: 30, rim: { return: 10 } }],
    {
      bending: { rule: 'nominal' },
    },
  ).parts[0];
  const lines = (tray?.flat.bends ?? []).filter((b) => Math.abs(b.line[0][0] - b.line[1][0]) < 1e-9);
  expect(lines.map((b) => b.line[0][0]).toSorted((a, b) => a - b)).toEqual(
    [10, 40, 160, 190].map((x) => expect.closeTo(x, 9)),
  );
  expect(tray?.flat.blank.max).toEqual([expect.closeTo(200, 9), expect.closeTo(160, 9)]);
});

test.each(['open', 'tabbed'])('%s corners: between the returns it is open as far as it says', (corner) => {
  const [tray] = job([
    {
      name: 'tray',
      family: 'tray',
      length: 300,
      width: 200,
      height: 60,
      rim: { return: 15, lip: 8 },
      corner,
    },
  ]).parts;
  const box = (id: string) => {
    const p = tray?.formed.panels.find((q) => q.id === id);
    return (p?.shape ?? []).map(
      ([x]) => (p as NonNullable<typeof p>).pose.origin[1] + (p?.pose.x[1] ?? 0) * x,
    );
  };
  // lips hang down from the edges of the returns, their outsides 15 in from the walls' outsides
  expect(Math.max(...box('lip-south'))).toBeCloseTo(15, 9);
  expect(Math.min(...box('lip-north'))).toBeCloseTo(185, 9);
});

test('angles riveted round its corners stand over the rim by the rise, and the tray above fits between them', () => {
  const corners = ['north-east', 'east-south', 'south-west', 'west-north'];
  const { assembly, findings } = job(
    [
      {
        name: 'tray',
        family: 'tray',
        length: 300,
        width: 200,
        height: 60,
        rim: { return: 15 },
        stack: { rise: 10 },
      },
      { name: 'angle', family: 'bracket', quantity: 4, width: { of: 'tray.stackCorner' }, base: 30, leg: 30 },
    ],
    {
      joints: corners.map((at, i) => ({
        name: at,
        from: `tray.corner-${at}`,
        to: `angle-${i + 1}.inside`,
        by: { 'blind-rivet': { diameter: 3.2 } },
      })),
    },
  );
  expect(findings.filter((f) => f.severity === 'error')).toEqual([]);
  const angles = assembly?.placed.filter((p) => p.piece.startsWith('angle')) ?? [];
  expect(angles).toHaveLength(4);
  for (const { pose } of angles) {
    const ends = [0, 59].map((y) => pose.origin[2] + pose.y[2] * y);
    // 59 high: from a rise and the play over the underside to a rise over the rim
    expect(Math.min(...ends)).toBeCloseTo(11, 9);
    expect(Math.max(...ends)).toBeCloseTo(70, 9);
  }
});
