import { kFactor } from '@tinwright/core';
import {
  corners,
  flange,
  fold,
  panel,
  rectangle,
  reliefHole,
  reliefSlot,
  slant,
  square,
} from '@tinwright/core/family';
import { expect, test } from 'vitest';

const arm = { edge: 'north', start: 3, tangent: 2, angle: 90, thickness: 1, meets: false };

// FAA-H-8083-31 ch. 4: relief holes of 1/8 in up to 0.064 in thick, 3/16 in above
test.each([
  [0.064, 0.01, 1 / 8],
  [0.0641, 0.01, 3 / 16],
  [0.032, 0.1, 0.2],
  [0.09, 0.1, 0.2],
  [0.09, 0.05, 3 / 16],
])('FAA-H-8083-31: sheet of %d in bent round %d in takes a hole of %d in', (thickness, radius, diameter) => {
  const hole = reliefHole(thickness * 25.4, radius * 25.4);
  expect(hole).toEqual({ kind: 'hole', diameter: expect.closeTo(diameter * 25.4, 9) });
});

test('a slot is one thickness deep, 1 mm at least', () => {
  expect([0.5, 1, 2].map(reliefSlot)).toEqual([1, 1, 2].map((depth) => ({ kind: 'slot', depth })));
});

/** Where a cut runs: t of its rim at a distance d from the bend. */
const rims = (
  style: typeof slant extends (...a: never) => infer S ? S : never,
  of: Partial<typeof arm>,
  d: number,
) => style.cuts({ ...arm, ...of }).map((cut) => (cut.c - cut.d * d) / cut.t);

test('slant: 45° from where the tangent lines meet; straight where tabs meet; room kept where it is folded flat', () => {
  expect(rims(slant(1), {}, 2)).toEqual([3]);
  expect(rims(slant(1), {}, 7)).toEqual([8]);
  expect(rims(slant(1), { meets: true }, 2)).toEqual([3]);
  expect(rims(slant(1), { meets: true }, 7)).toEqual([3]);
  expect(rims(slant(1, 6), {}, 2)).toEqual([3]);
  expect(rims(slant(1, 6), { angle: 180 }, 2)).toEqual([6]);
  expect(rims(slant(1, 2), { angle: 180 }, 2)).toEqual([3]);
});

test('square: at the neighbour’s tangent line; a tab starts over the sheet and the gap, or the gap alone without setback', () => {
  expect(rims(square(0.5), {}, 9)).toEqual([3]);
  expect(rims(square(0.5), { edge: null } as never, 9)).toEqual([3]);
  expect(rims(square(0.5), { edge: null, start: 1 } as never, 9)).toEqual([1.5]);
  expect(rims(square(0.5), { edge: null, start: 0 } as never, 9)).toEqual([0.5]);
});

test('a slot is a square bite into the panel at every corner where two bends start', () => {
  const sides = ['north', 'south', 'east', 'west'] as const;
  const part = fold(
    { thickness: 1, insideRadius: 1, rule: kFactor(0.42) },
    panel('base', rectangle(60, 40)),
    ...sides.map((s) => flange(s, ['base', s], { height: 20 })),
    corners(['base'], square(0.5, { kind: 'slot', depth: 1.5 })),
  );
  // both setbacks are 2: the panel is 56 by 36 between its bends, 1.5 by 1.5 off each of its corners
  const at = part.panels[0]?.shape.map((e) => e.from.map((v) => Math.round(v * 1e9) / 1e9).join()) ?? [];
  const off = [2, 3.5].flatMap((x) => [2, 3.5].map((y) => [x, y] as const)).filter(([x, y]) => x + y > 4);
  const asked = off.flatMap(([x, y]) => [
    [x, y],
    [60 - x, y],
    [x, 40 - y],
    [60 - x, 40 - y],
  ]);
  expect(at.toSorted()).toEqual(asked.map((p) => p.join()).toSorted());
});
