import type { Point } from '@tinwright/core';
import { DEFAULT_SHOP, type Press, type Punch, type Shop } from '@tinwright/shop';

/** A V block with an opening, on a base `half` to either side. */
export const vDie = (opening: number, half: number): Press['dies'][number] => ({
  name: `V${opening}`,
  opening,
  angle: 85,
  sectioned: true,
  section: [
    [-half, 0],
    [-opening / 2, 0],
    [0, -opening / 2 / Math.tan((85 * Math.PI) / 360)],
    [opening / 2, 0],
    [half, 0],
    [half, -60],
    [-half, -60],
  ],
});

const body = (left: readonly Point[], right: readonly Point[]): readonly Point[] => [
  [0, 0],
  ...right,
  ...left.toReversed(),
];

/** A wedge of 85° that ends in a straight body. */
export const straight = (half: number): Punch => {
  const rise = half / Math.tan((85 * Math.PI) / 360);
  return {
    name: `straight ${2 * half}`,
    angle: 85,
    radius: 0.8,
    lengths: [10, 15, 20, 40, 50, 100, 200],
    horns: null,
    section: body(
      [
        [-half, rise],
        [-half, 120],
      ],
      [
        [half, rise],
        [half, 120],
      ],
    ),
  };
};

/** A punch whose free side goes back past the middle by `relief` above a short tip. */
export const gooseneck = (relief: number): Punch => ({
  ...straight(10),
  name: `relieved ${relief}`,
  section: body(
    [
      [-18, 18 / Math.tan((85 * Math.PI) / 360)],
      [-30, 40],
      [-30, 120],
    ],
    [
      [4, 4 / Math.tan((85 * Math.PI) / 360)],
      [-relief, 4 / Math.tan((85 * Math.PI) / 360) + (4 + relief) / Math.tan((85 * Math.PI) / 360)],
      [-relief, 120],
    ],
  ),
});

/** A shop with nothing but a press brake. */
export const pressShop = (
  punches: readonly Punch[],
  dies: Press['dies'],
  more: Partial<Press> = {},
): Shop => ({
  ...DEFAULT_SHOP,
  brake: null,
  vise: null,
  press: {
    name: 'press brake',
    length: 1000,
    force: 300,
    punches,
    dies,
    ram: { half: 30, height: 150 },
    bed: { half: 30 },
    backGauge: { least: 8, most: 600, finger: { over: 8, under: 6, length: 60, width: 30 } },
    gaps: { end: 5, inner: 2 },
    overbend: 0,
    ...more,
  },
});
