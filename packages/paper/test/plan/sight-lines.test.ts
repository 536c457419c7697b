import type { FlatBend } from '@tinwright/core';
import { expect, test } from 'vitest';
import { sightLines } from '../../src/plan/sight-lines.js';
import { strip } from './patterns.js';

const { bends } = strip().flat;
const [first] = bends as [FlatBend];

test.each(['parent', 'flange'] as const)(
  'held on the %s side, the line lies between bend line and that side',
  (held) => {
    const [sight] = sightLines(bends, [{ bend: first.id, held, offset: 0.4 }]);
    const tangent = first.tangents[held === 'parent' ? 0 : 1][0][0];
    const [x, line] = [sight?.line[0][0] ?? Number.NaN, first.line[0][0]];
    expect(Math.abs(x - line)).toBeCloseTo(0.4, 9);
    expect(Math.sign(x - line)).toBe(Math.sign(tangent - line));
  },
);

test('a bend the pattern lacks has none', () => {
  expect(sightLines(bends, [{ bend: 'other', held: 'parent', offset: 1 }])).toEqual([]);
});
