import { describe, expect, test } from 'vitest';
import { dimsOf } from '../../src/page/dims.js';
import { featuresOf } from '../../src/pattern/features.js';
import { ordinatesOf } from '../../src/pattern/ordinates.js';
import { box, handLayout, planned, strip } from '../plan/patterns.js';

const told = (part: ReturnType<typeof planned>, dims: Parameters<typeof dimsOf>[0]) =>
  ordinatesOf(part.flat, featuresOf(part.flat), dimsOf(dims));

describe('the layout by hand (common practice, no source)', () => {
  const ordinates = told(handLayout(), '1/32');
  const along = (axis: 0 | 1) => ordinates.filter((o) => o.axis === axis).map((o) => o.text);

  test.each(['0', '3/4', '2 3/4', '9 3/4', '11 3/4', '12 1/2'])('across: %s', (text) => {
    expect(along(1)).toContain(text);
  });

  test.each(['0', '3/4', '14 3/4', '15 1/2'])('along: %s', (text) => {
    expect(along(0)).toContain(text);
  });
});

test('a strip: both bend lines and the blank, each from the datum', () => {
  // 30, 60 and 30 less two deductions of 4 - (pi/2)·1.42 = 1.7695; bend lines half a deduction inside the legs
  const x = told(strip(), 'mm').filter((o) => o.axis === 0);
  expect(x.map((o) => o.text)).toEqual(['0', '29.1', '87.3', '116.5']);
  expect(x.every((o) => o.side === 'low' && o.from[1] === 0)).toBe(true);
});

test('what prints alike within a tenth of a millimetre is one; what only a coarse fraction makes alike is not', () => {
  const part = box({ corner: 'lap' });
  const texts = (dims: Parameters<typeof dimsOf>[0]) => told(part, dims).map((o) => `${o.axis} ${o.text}`);
  expect(new Set(texts('mm')).size).toBe(texts('mm').length);
  expect(texts('1/8').length).toBeGreaterThan(new Set(texts('1/8')).size);
});

test('each is told on a side it can be seen from: the crown of a gusset end from above', () => {
  const part = planned({
    family: 'gusset-end',
    width: 200,
    shoulderHeight: 50,
    height: 160,
    crownWidth: 60,
    cornerNip: 0,
  });
  const x = told(part, 'mm').filter((o) => o.axis === 0);
  expect(x.map((o) => [o.text, o.side])).toEqual([
    ['0', 'low'],
    ['70', 'high'],
    ['130', 'high'],
    ['200', 'low'],
  ]);
});

test('rounding never adds up: each is within half a step of its own distance from the datum', () => {
  for (const { value, text, axis } of told(box(), '1/16')) {
    const [, whole = '0', top = '0', bottom = '1'] = /^(?:(\d+)(?: |$))?(?:(\d+)\/(\d+))?$/.exec(text) ?? [];
    const printed = (Number(whole) + Number(top) / Number(bottom)) * 25.4;
    expect(Math.abs(printed - value), `${axis} ${text}`).toBeLessThanOrEqual(25.4 / 32 + 1e-9);
  }
});
