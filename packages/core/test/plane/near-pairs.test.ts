import type { Box } from '@tinwright/core';
import { nearPairs } from '@tinwright/core/internal';
import fc from 'fast-check';
import { expect, test } from 'vitest';

const side = fc.integer({ min: 0, max: 400 });
const box = fc.tuple(side, side, fc.integer({ min: 0, max: 40 }), fc.integer({ min: 0, max: 40 }));
const boxes = fc
  .array(box, { maxLength: 60 })
  .map((all) => all.map(([x, y, w, h]): Box => ({ min: [x, y], max: [x + w, y + h] })));

const near = (a: Box, b: Box, reach: number) =>
  [0, 1].every((k) => a.min[k as 0] - reach <= b.max[k as 0] && b.min[k as 0] - reach <= a.max[k as 0]);

test('pairs of one list and of two are those that every box looked at with every other gives, in order', () => {
  fc.assert(
    fc.property(boxes, boxes, fc.integer({ min: 0, max: 10 }), (own, others, reach) => {
      const all = own.flatMap((a, i) => own.flatMap((b, j) => (j > i && near(a, b, reach) ? [[i, j]] : [])));
      const two = own.flatMap((a, i) => others.flatMap((b, j) => (near(a, b, reach) ? [[i, j]] : [])));
      expect(nearPairs(own, reach)).toEqual(all);
      expect(nearPairs(own, reach, others)).toEqual(two);
    }),
    { numRuns: 60 },
  );
});
