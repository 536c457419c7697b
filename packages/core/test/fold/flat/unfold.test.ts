import { kFactor, nominal, verifyFlat, verifyForm } from '@tinwright/core';
import type { Sheet, Step } from '@tinwright/core/family';
import {
  corners,
  flange,
  fold,
  hem,
  hole,
  mark,
  mitre,
  panel,
  polygon,
  rectangle,
  reliefHole,
  reliefSlot,
  slant,
  square,
  vNotch,
} from '@tinwright/core/family';
import { form, loopArea, unfold } from '@tinwright/core/internal';
import { expect, test } from 'vitest';

const sheet: Sheet = { thickness: 1, insideRadius: 1, rule: kFactor(0.42) };
const BA = (Math.PI / 2) * 1.42;
const BD = 4 - BA;

test('an angle of 30 and 40 mm legs: flat length is the legs less one deduction', () => {
  const part = fold(
    sheet,
    panel('base', rectangle(30, 20)),
    flange('wall', ['base', 'east'], { height: 40 }),
  );
  const flat = unfold(part);
  expect(flat.blank.max[0]).toBeCloseTo(70 - BD, 12);
  expect(flat.blank.max[1]).toBeCloseTo(20, 12);
  expect(flat.outline).toHaveLength(4); // no corner left where bend zones join straight edges
});

test('the bend line runs along the middle of the zone, the tangent lines bound it', () => {
  const part = fold(
    sheet,
    panel('base', rectangle(30, 20)),
    flange('wall', ['base', 'east'], { height: 40 }),
  );
  const [bend] = unfold(part).bends;
  expect(bend?.line.map((p) => p[0])).toEqual([28 + BA / 2, 28 + BA / 2].map((v) => expect.closeTo(v, 12)));
  expect(bend?.tangents.map((t) => t[0][0])).toEqual([28, 28 + BA].map((v) => expect.closeTo(v, 12)));
  expect(bend?.line.map((p) => p[1]).toSorted()).toEqual([0, 20]);
});

// College workshop sheet, hemmed tray of 33 gauge galvanised iron: blank 200 × 150, marks at 10/40/160/190 and
// 5/35/115/145 give a base of 120 × 80, 30 high, hems of 10 and 5. No bend allowance.
test('hemmed tray laid out nominally: a 200 x 150 blank with the printed marks', () => {
  const thin: Sheet = { thickness: 0.22, insideRadius: 0.22, rule: nominal };
  const walls = (['north', 'south', 'east', 'west'] as const).flatMap((side): Step[] => [
    flange(side, ['base', side], { height: 30 }),
    hem(`hem-${side}`, [side, 'far'], {
      type: 'closed',
      length: side === 'east' || side === 'west' ? 10 : 5,
    }),
  ]);
  const flat = unfold(fold(thin, panel('base', rectangle(120, 80)), ...walls, corners(['base'], square(0))));
  expect(flat.blank.max).toEqual([expect.closeTo(200, 9), expect.closeTo(150, 9)]);
  const at = (k: 0 | 1, ids: readonly string[]) =>
    ids.map((id) => flat.bends.find((b) => b.id === id)?.line[0][k]).toSorted((a = 0, b = 0) => a - b);
  expect(at(0, ['hem-west', 'west', 'east', 'hem-east'])).toEqual(
    [10, 40, 160, 190].map((v) => expect.closeTo(v, 9)),
  );
  expect(at(1, ['hem-south', 'south', 'north', 'hem-north'])).toEqual(
    [5, 35, 115, 145].map((v) => expect.closeTo(v, 9)),
  );
});

const tabbed = (style: Parameters<typeof corners>[1]): readonly Step[] => [
  panel('base', rectangle(100, 60)),
  flange('north', ['base', 'north'], { height: 30 }),
  flange('west', ['base', 'west'], { height: 12 }),
  flange('tab', ['north', 'west'], { height: 12 }),
  corners(['base'], style),
];

test('tabs in one plane are cut along the mitre between them, half the gap each', () => {
  const flat = unfold(fold(sheet, ...tabbed(slant(0.5))));
  expect(verifyFlat(flat)).toEqual([]);
  const west = flat.panels.find((p) => p.id === 'west');
  // on the flange: t = d + gap/√2, so at the tangent line d = 2 the tab starts 2 + 0.3536 from the mould corner
  const edge = (west?.shape ?? []).map((p) => 60 - (p[1] - (flat.panels[0]?.frame.origin[1] ?? 0)));
  expect(Math.min(...edge)).toBeCloseTo(2 + 0.5 / Math.SQRT2, 9);
  expect(edge.some((v) => Math.abs(v - (12 + 0.5 / Math.SQRT2)) < 1e-9)).toBe(true);
});

test('a square notch keeps the tab on the flange above the other tab by the gap', () => {
  const flat = unfold(fold(sheet, ...tabbed(square(0.5))));
  expect(verifyFlat(flat)).toEqual([]);
  const tab = flat.panels.find((p) => p.id === 'tab');
  const base = flat.panels[0]?.frame.origin[1] ?? 0;
  // north's mould line lies at 60 − deduction on the flat; the tab starts 12 + 0.5 above it
  expect(Math.min(...(tab?.shape.map((p) => p[1] - base) ?? []))).toBeCloseTo(60 - BD + 12.5, 9);
});

test('a round relief takes three quarters of its circle out of the corner of two bends', () => {
  const box = (relief: Parameters<typeof square>[1]) =>
    unfold(
      fold(
        sheet,
        panel('base', rectangle(50, 40)),
        flange('north', ['base', 'north'], { height: 20 }),
        flange('west', ['base', 'west'], { height: 20 }),
        corners(['base'], square(0, relief ?? null)),
      ),
    );
  const [plain, holed] = [box(null), box({ kind: 'hole', diameter: 3 })];
  expect(verifyFlat(holed)).toEqual([]);
  expect(loopArea(plain.outline) - loopArea(holed.outline)).toBeCloseTo((3 / 4) * Math.PI * 1.5 ** 2, 9);
  const slotted = box({ kind: 'slot', depth: 1.2 });
  expect(verifyFlat(slotted)).toEqual([]);
  // a square bite of the panel and a strip of each bend
  expect(loopArea(plain.outline) - loopArea(slotted.outline)).toBeCloseTo(1.2 ** 2 + 2 * 1.2 * BA, 9);
});

// FAA-H-8083-31 ch. 4: diameter twice the bend radius, at least 1/8 in up to 0.064 in thick, 3/16 in above.
test('relief holes by the handbook: 1/8 in for thin sheet, 3/16 in for thick, twice the radius when larger', () => {
  expect(reliefHole(1, 1)).toEqual({ kind: 'hole', diameter: 3.175 });
  expect(reliefHole(1, 2.5)).toEqual({ kind: 'hole', diameter: 5 });
  expect(reliefHole(0.072 * 25.4, 1)).toEqual({ kind: 'hole', diameter: expect.closeTo(4.7625, 9) });
  expect(reliefSlot(0.5)).toEqual({ kind: 'slot', depth: 1 });
});

test('holes and marks stated on a flange land where the flat has that place', () => {
  const part = fold(
    sheet,
    panel('base', rectangle(30, 20)),
    flange('wall', ['base', 'east'], { height: 40 }),
    hole('wall', { at: [5, 25], diameter: 4 }),
    mark('wall', { kind: 'spot-weld', at: [5, 30], joint: 'seam' }),
  );
  const flat = unfold(part);
  // the wall's x runs down the east edge from its north end, its y on from the mould line, one deduction in
  expect(flat.marks[0]?.at).toEqual([expect.closeTo(30 - BD + 30, 9), expect.closeTo(20 - 5, 9)]);
  expect(flat.area).toBeCloseTo(20 * (70 - BD) - Math.PI * 4, 9);
  expect(flat.cutLength).toBeCloseTo(2 * (20 + 70 - BD) + Math.PI * 4, 9);
});

test('a mirrored part has the mirrored pattern', () => {
  const shape = (mirror: boolean) => {
    const points: [number, number][] = [
      [0, 0],
      [60, 0],
      [50, 30],
      [0, 40],
    ];
    const flip = points.map(([x, y]): [number, number] => [mirror ? -x : x, y]);
    return mirror
      ? polygon(
          [...flip].reverse(),
          ['right', 'top', 'left', 'bottom'].map(
            (n) => ({ right: 'top', top: 'right', left: 'bottom', bottom: 'left' })[n] ?? n,
          ),
        )
      : polygon(flip, ['bottom', 'right', 'top', 'left']);
  };
  const make = (mirror: boolean) =>
    unfold(
      fold(
        sheet,
        panel('base', shape(mirror)),
        flange('right', ['base', 'right'], { height: 15 }),
        flange('bottom', ['base', 'bottom'], { height: 12 }),
        corners(['base'], slant(0.4)),
      ),
    );
  const [one, other] = [make(false), make(true)];
  expect(verifyFlat(one)).toEqual([]);
  expect(verifyFlat(other)).toEqual([]);
  const width = one.blank.max[0];
  const key = (p: readonly [number, number]) => p.map((v) => Math.round(v * 1e6)).join(' ');
  const mirrored = new Set(one.outline.map((v) => key([width - v.at[0], v.at[1]])));
  expect(other.outline.map((v) => mirrored.has(key(v.at)))).toEqual(other.outline.map(() => true));
});

test('a part twice as large in everything has a pattern twice as large', () => {
  const make = (k: number) =>
    unfold(
      fold(
        { thickness: k, insideRadius: k, rule: kFactor(0.42) },
        panel('base', rectangle(100 * k, 60 * k)),
        flange('north', ['base', 'north'], { height: 30 * k }),
        hem('hem', ['north', 'far'], { type: 'teardrop', length: 9 * k }),
        flange('west', ['base', 'west'], { height: 12 * k }),
        flange('tab', ['north', 'west'], { height: 8 * k }),
        corners(['base', 'north'], slant(0.5 * k, 3 * k)),
      ),
    );
  const [one, two] = [make(1), make(2)];
  expect(two.outline).toHaveLength(one.outline.length);
  for (const [i, v] of two.outline.entries()) {
    expect(v.at[0]).toBeCloseTo(2 * (one.outline[i]?.at[0] ?? 0), 9);
    expect(v.at[1]).toBeCloseTo(2 * (one.outline[i]?.at[1] ?? 0), 9);
  }
});

test('panels that are not there and edges that are not there are named', () => {
  expect(() =>
    fold(sheet, panel('base', rectangle(10, 10)), flange('a', ['bse', 'east'], { height: 5 })),
  ).toThrow(/"bse".*Did you mean "base"/);
  expect(() =>
    fold(sheet, panel('base', rectangle(10, 10)), flange('a', ['base', 'est'], { height: 5 })),
  ).toThrow(/"est".*east/);
  expect(() => fold(sheet, panel('base', rectangle(10, 10)), panel('base', rectangle(5, 5)))).toThrow(
    /there already/,
  );
  expect(() =>
    fold(sheet, panel('base', rectangle(10, 10)), flange('a', ['base', 'east'], { height: 5, angle: 0 })),
  ).toThrow(/0 deg given/);
});

test('two bends closer than their setbacks leave nothing of the panel: refused by name', () => {
  const narrow = () =>
    fold(
      sheet,
      panel('base', rectangle(3, 20)),
      flange('a', ['base', 'east'], { height: 9 }),
      flange('b', ['base', 'west'], { height: 9 }),
    );
  expect(narrow).toThrow(/panel "base"/);
});

test.each([105, 149, 151, 165, 179])(
  'a flange of 90 and one of %d degrees keep clear of each other at a corner, mitred, square or slant',
  (angle) => {
    for (const style of [mitre(0.5), square(0.5), slant(0.5), vNotch(0.5)]) {
      const part = fold(
        sheet,
        panel('base', rectangle(80, 60)),
        flange('wall', ['base', 'east'], { height: 25 }),
        flange('leaf', ['base', 'north'], { height: 15, angle }),
        corners(['base'], style),
      );
      expect(verifyFlat(unfold(part)), style.name).toEqual([]);
      expect(verifyForm(form(part), []), style.name).toEqual([]);
    }
  },
);

test.each([60, 90, 120])(
  'a V notch lets inside flanges meet along the plane between them at %d degrees',
  (angle) => {
    const part = fold(
      sheet,
      panel('first', rectangle(60, 30)),
      flange('second', ['first', 'east'], { height: 50, angle }),
      flange('lip-first', ['first', 'north'], { height: 12 }),
      flange('lip-second', ['second', 'north'], { height: 12 }),
      corners(['first'], vNotch(0.6)),
    );
    const flat = unfold(part);
    expect(verifyFlat(flat)).toEqual([]);
    expect(verifyForm(form(part), [])).toEqual([]);
    // on the flat the two cuts open as wide as the bend is bent through
    const slope = (id: string) => {
      const shape = flat.panels.find((p) => p.id === id)?.shape ?? [];
      const cuts = shape
        .map((p, i) => [p, shape[(i + 1) % shape.length] ?? p] as const)
        .map(([p, q]) => Math.abs(Math.atan2(q[1] - p[1], q[0] - p[0]) * (180 / Math.PI)))
        .filter((a) => a > 1 && a < 179 && Math.abs(a - 90) > 1);
      return Math.min(...cuts.map((a) => Math.abs(90 - a)));
    };
    expect(slope('lip-first') + slope('lip-second')).toBeCloseTo(angle, 6);
  },
);
