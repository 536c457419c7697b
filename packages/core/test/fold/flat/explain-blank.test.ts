import { explainBlank, kFactor } from '@tinwright/core';
import { corners, flange, fold, hem, panel, polygon, rectangle, square } from '@tinwright/core/family';
import { unfold } from '@tinwright/core/internal';
import { expect, test } from 'vitest';

const sheet = { thickness: 1, insideRadius: 1, rule: kFactor(0.42) };

test('a blank is its legs less its deductions, from edge to edge, in order', () => {
  const flat = unfold(
    fold(
      sheet,
      panel('base', rectangle(100, 60)),
      flange('north', ['base', 'north'], { height: 25 }),
      hem('hem', ['north', 'far'], { type: 'closed', length: 9 }),
      flange('south', ['base', 'south'], { height: 30 }),
      flange('west', ['base', 'west'], { height: 20 }),
      corners(['base'], square(0.5)),
    ),
  );
  const [x, y] = explainBlank(flat);
  expect([x.axis, y.axis]).toEqual(['x', 'y']);
  const told = (d: typeof x) =>
    d.terms.map((t) => (t.kind === 'leg' ? `${t.panel} ${t.length.toFixed(6)}` : `-${t.bend.id}`));
  expect(told(x)).toEqual(['west 20.000000', '-west', 'base 100.000000']);
  expect(told(y)).toEqual([
    'south 30.000000',
    '-south',
    'base 60.000000',
    '-north',
    'north 25.000000',
    '-hem',
    'hem 9.000000',
  ]);
  for (const d of [x, y]) expect(d.terms.reduce((s, t) => s + t.length, 0)).toBeCloseTo(d.total, 9);
});

test('where no straight way leads across, the size is only measured', () => {
  const shape = polygon(
    [
      [0, 0],
      [50, 0],
      [60, 30],
      [0, 40],
    ],
    ['south', 'slope', 'north', 'west'],
  );
  const flat = unfold(fold(sheet, panel('base', shape), flange('wing', ['base', 'slope'], { height: 20 })));
  const [x] = explainBlank(flat);
  expect(x.terms).toEqual([]);
  expect(x.total).toBeGreaterThan(60);
});
