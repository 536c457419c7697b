import { kFactor } from '@tinwright/core';
import type { Sheet } from '@tinwright/core/family';
import { corners, flange, fold, hem, mitre, panel, rectangle } from '@tinwright/core/family';
import { form, homePose, measuredBox, place3 } from '@tinwright/core/internal';
import { expect, test } from 'vitest';

const sheet: Sheet = { thickness: 1.5, insideRadius: 2, rule: kFactor(0.4) };

test('a channel stands at its outside sizes exactly', () => {
  const part = fold(
    sheet,
    panel('base', rectangle(80, 40)),
    flange('north', ['base', 'north'], { height: 25 }),
    flange('south', ['base', 'south'], { height: 30 }),
  );
  const { size, box } = form(part);
  for (const [k, v] of [80, 40, 30].entries()) expect(size[k]).toBeCloseTo(v, 12);
  expect(box.min[2]).toBe(0);
});

test('a flange folded down hangs below the unmarked face, its leg measured from the marked one', () => {
  const part = fold(
    sheet,
    panel('base', rectangle(80, 40)),
    flange('lip', ['base', 'east'], { height: 12, angle: -90 }),
  );
  const { box } = form(part);
  expect(box.max[2]).toBeCloseTo(1.5, 12);
  expect(box.min[2]).toBeCloseTo(1.5 - 12, 12);
  expect(box.max[0]).toBeCloseTo(80, 12);
});

test.each([30, 45, 60, 89, 90, 91, 120, 135, 170])(
  'a leg of 30 mm bent %d degrees ends where plane geometry puts it',
  (angle) => {
    const { thickness: T, insideRadius: R } = sheet;
    const part = fold(
      sheet,
      panel('base', rectangle(50, 10)),
      flange('leg', ['base', 'east'], { height: 30, angle }),
    );
    const a = (angle * Math.PI) / 180;
    // up to 90° the legs meet at the apex of the outside faces; above, both are measured to the outer tangents
    const setback = angle <= 90 ? Math.tan(a / 2) * (R + T) : R + T;
    const straight = 30 - setback;
    const foot = 50 - setback; // tangent point on the base
    // outside face of the leg after the turn about the axis at (foot, R + T)
    const x = foot + (R + T) * Math.sin(a) + straight * Math.cos(a);
    const z = R + T - (R + T) * Math.cos(a) + straight * Math.sin(a);
    const leg = form(part).panels[1];
    const end = place3(leg?.pose ?? homePose(), [5, 30, 0]);
    expect(end[0]).toBeCloseTo(x, 9);
    expect(end[2]).toBeCloseTo(z, 9);
  },
);

test('a closed hem lies on its wall, two thicknesses together, as long as asked', () => {
  const part = fold(
    sheet,
    panel('base', rectangle(80, 40)),
    flange('north', ['base', 'north'], { height: 25 }),
    hem('hem', ['north', 'far'], { type: 'closed', length: 10 }),
  );
  const formed = form(part);
  const over = measuredBox(formed, { panels: ['hem'] });
  expect(over.max[2]).toBeCloseTo(25, 12);
  expect(over.max[2] - over.min[2]).toBeCloseTo(10, 12);
  // wall from 40 − T to 40, hem from 40 − 2T to 40 − T
  expect(over.min[1]).toBeCloseTo(40 - 2 * 1.5, 12);
});

test('a teardrop comes back to a quarter thickness from its wall and is as wide as asked', () => {
  const part = fold(
    sheet,
    panel('wall', rectangle(80, 40)),
    hem('hem', ['wall', 'north'], { type: 'teardrop', length: 14 }),
  );
  const formed = form(part);
  const hemPanel = formed.panels[1];
  const inside = hemPanel?.shape.map(([x, y]) => place3(hemPanel.pose, [x, y, 1.5])[2]) ?? [];
  expect(Math.min(...inside) - 1.5).toBeCloseTo(1.5 / 4, 9); // marked face of the hem looks down on the wall's
  const over = measuredBox(formed, { panels: ['hem'] });
  expect(over.max[1] - over.min[1]).toBeCloseTo(14, 9);
});

test('mitred walls that lean out meet along their corner with the gap asked', () => {
  const gap = 0.6;
  const part = fold(
    sheet,
    panel('base', rectangle(80, 60)),
    flange('north', ['base', 'north'], { height: 30, angle: 65 }),
    flange('east', ['base', 'east'], { height: 30, angle: 65 }),
    corners(['base'], mitre(gap)),
  );
  const formed = form(part);
  // the bisecting plane of that corner is vertical and runs at 45° through (80, 60)
  const side = (id: string) => {
    const p = formed.panels.find((f) => f.id === id);
    return (p?.shape ?? [])
      .flatMap(([x, y]) => [0, 1.5].map((z) => place3(p?.pose ?? homePose(), [x, y, z])))
      .map((q) => (q[0] - 80 - (q[1] - 60)) / Math.SQRT2);
  };
  expect(Math.max(...side('north'))).toBeCloseTo(-gap / 2, 9);
  expect(Math.min(...side('east'))).toBeCloseTo(gap / 2, 9);
});

test('volume is the flat faces times the thickness and the bends as rings', () => {
  const part = fold(sheet, panel('base', rectangle(50, 10)), flange('leg', ['base', 'east'], { height: 30 }));
  const ring = (Math.PI / 4) * ((2 + 1.5) ** 2 - 2 ** 2) * 10;
  expect(form(part).volume).toBeCloseTo((50 - 3.5 + 30 - 3.5) * 10 * 1.5 + ring, 9);
});
