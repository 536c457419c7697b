import { planJob, readJob } from '@tinwright/core';
import { expect, test } from 'vitest';

// College workshop sheet, scribd 578606676: galvanised tray from 200 x 150 mm, marks at 10/40/160/190 and
// 5/35/115/145, so base 120 x 80, walls 30, hems 10 and 5; lines scribed at nominal sizes.
test('the hemmed tray of the workshop sheet: blank 200 x 150, lines at 10/40/160/190 and 5/35/115/145', () => {
  const [tray] = planJob(
    readJob({
      units: 'mm',
      stock: { material: 'galvanised-steel', thickness: 0.3 },
      bending: { rule: 'nominal' },
      parts: [
        {
          name: 'tray',
          family: 'open-box',
          length: 120,
          width: 80,
          height: 30,
          hems: {
            east: { type: 'closed', length: 10 },
            west: { type: 'closed', length: 10 },
            north: { type: 'closed', length: 5 },
            south: { type: 'closed', length: 5 },
          },
        },
      ],
    }),
  ).parts;
  expect(tray?.flat.blank.max).toEqual([expect.closeTo(200, 9), expect.closeTo(150, 9)]);
  const lines = (k: 0 | 1) =>
    (tray?.flat.bends ?? [])
      .filter(({ line: [p, q] }) => Math.abs(p[k] - q[k]) < 1e-9)
      .map(({ line: [p] }) => Math.round(p[k] * 1e6) / 1e6)
      .toSorted((a, b) => a - b);
  expect(lines(0)).toEqual([10, 40, 160, 190]);
  expect(lines(1)).toEqual([5, 35, 115, 145]);
});
