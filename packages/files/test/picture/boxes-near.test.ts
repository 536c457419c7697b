import fc from 'fast-check';
import { expect, test } from 'vitest';
import { boxesNear } from '../../src/picture/boxes-near.js';
import { scaledTo } from '../../src/picture/page.js';

type Box = readonly [number, number, number, number];

const size = fc.oneof(
  fc.constant(0),
  fc.integer({ min: 0, max: 40 }),
  fc.double({ min: 0, max: 3, noNaN: true }),
);
const place = fc.integer({ min: -50, max: 50 });
const box = fc.tuple(place, place, size, size).map(([x, y, w, h]): Box => [x, y, x + w, y + h]);

test('boxes near a box are those that looking through all finds, each once', () => {
  fc.assert(
    fc.property(
      fc.array(box, { maxLength: 120 }),
      fc.array(box, { minLength: 1, maxLength: 5 }),
      (all, asked) => {
        const near = boxesNear(Float64Array.from(all.flat()));
        for (const [x0, y0, x1, y1] of asked) {
          const met: number[] = [];
          near([x0, y0, x1, y1], (i) => met.push(i));
          const meets = ([a, b, c, d]: Box) => a <= x1 && c >= x0 && b <= y1 && d >= y0;
          expect(met.toSorted((p, q) => p - q)).toEqual(all.flatMap((one, i) => (meets(one) ? [i] : [])));
        }
      },
    ),
  );
});

test('200,000 lines are scaled to a picture', () => {
  const lines = Array.from({ length: 200_000 }, (_, i) => ({
    from: [i, 0] as const,
    to: [i + 1, 7] as const,
    kind: 'edge' as const,
  }));
  expect(scaledTo(lines, 150).scale).toBe(150 / 200_000);
});
