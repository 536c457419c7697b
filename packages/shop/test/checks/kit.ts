// Small families whose sizes are the numbers the rules look at, and short ways to ask for findings.
import type { AnyFamily, PartPlan, Unit } from '@tinwright/core';
import {
  asked,
  defineFamily,
  flange,
  hole,
  type Outline,
  panel,
  polygon,
  rectangle,
  slot,
  value,
} from '@tinwright/core/family';
import { DEFAULT_SHOP, SHOP_CHECKS, type Shop } from '@tinwright/shop';
import { shopFindings } from '@tinwright/shop/internal';
import type { ToldFinding } from '@tinwright/words';
import { told } from '../../../../tests/kit/told.js';
import { planned } from '../shops.js';

/** A sheet of another metal, thickness or inside radius, for `planned`. */
export const sheet = (thickness: number, insideRadius = thickness, material = 'mild-steel') => ({
  stock: { material, thickness },
  bending: { rule: 'k-factor', k: 0.42, insideRadius },
});

const words = <E>(title: string, example: E) => ({ title, summary: title, example });

/** A plate 100 × 60 with a wall along its east edge and a round hole, its middle `from` off that edge's mould line. */
const holed = defineFamily({
  name: 'holed-plate',
  values: {
    from: value.size('off the wall'),
    hole: value.size('diameter'),
    second: value.maybe(value.size('below the first')),
  },
  build: ({ from, hole: diameter, second }) => [
    panel('base', rectangle(100, 60)),
    flange('wall', ['base', 'east'], { height: 20 }),
    hole('base', { at: [100 - from, 30], diameter }),
    ...(second === null ? [] : [hole('base', { at: [100 - from, 30 - second], diameter })]),
    asked('length', 100, 'x', { panels: ['base', 'wall'] }),
  ],
  describe: words('plate with a hole', { from: 20, hole: 5 }),
});

/** A plate 100 × 60 with a wall along its north edge and a slot cut in from the south, its end `short` of the mould line. */
const slotted = defineFamily({
  name: 'slotted-plate',
  values: { short: value.size('of the wall'), slot: value.size('width') },
  build: ({ short, slot: width }) => [
    panel('base', rectangle(100, 60)),
    slot('base', { edge: 'south', at: [50, 0], width, depth: 60 - short }),
    flange('wall', ['base', 'north'], { height: 20 }),
    asked('width', 60, 'y', { panels: ['base', 'wall'] }),
  ],
  describe: words('plate with a slot', { short: 20, slot: 2 }),
});

/** A plate 100 × 60 with a notch of its own in the middle of its south edge, and a prong standing off its north edge. */
const cut = defineFamily({
  name: 'cut-plate',
  values: {
    notch: value.size('width'),
    deep: value.size('depth'),
    prong: value.size('width'),
    long: value.size('length'),
  },
  build: ({ notch, deep, prong, long }) => {
    const outline: Outline = polygon(
      [
        [0, 0],
        [50 - notch / 2, 0],
        [50 - notch / 2, deep],
        [50 + notch / 2, deep],
        [50 + notch / 2, 0],
        [100, 0],
        [100, 60],
        [50 + prong / 2, 60],
        [50 + prong / 2, 60 + long],
        [50 - prong / 2, 60 + long],
        [50 - prong / 2, 60],
        [0, 60],
      ],
      [],
    );
    return [panel('base', outline)];
  },
  describe: words('plate with a notch and a prong', { notch: 6, deep: 10, prong: 20, long: 20 }),
});

/** A plate with a flange on a stretch of its edge, metal `beside` it on both sides: the cuts there are as wide. */
const lanced = defineFamily({
  name: 'lanced-plate',
  values: { beside: value.size('width of the cuts') },
  build: ({ beside }) => {
    const outline: Outline = polygon(
      [
        [0, 0],
        [100, 0],
        [100, 60],
        [80, 60],
        [80, 40],
        [20, 40],
        [20, 60],
        [0, 60],
      ],
      ['south', 'east', 'north-east', 'side-east', 'root', 'side-west', 'north-west', 'west'],
    );
    return [
      panel('base', outline),
      flange('tongue', ['base', 'root'], { height: 30, inset: [beside, beside] }),
    ];
  },
  describe: words('plate with a tongue', { beside: 3 }),
});

/** A web 50 wide between a wall 80 high along its north edge and as high a tab at one end of its south edge. */
const uneven = defineFamily({
  name: 'uneven-channel',
  values: { facing: value.size('width of the tab') },
  build: ({ facing }) => [
    panel('base', rectangle(200, 50)),
    flange('wall', ['base', 'north'], { height: 80 }),
    flange('tab', ['base', 'south'], { height: 80, inset: [0, 200 - facing] }),
  ],
  describe: words('channel with a wall and a tab', { facing: 30 }),
});

export const TEST_FAMILIES: readonly AnyFamily[] = [holed, slotted, cut, lanced, uneven];

/** One of the test families planned. */
export const testPart = (part: object, job: object = {}): PartPlan => planned(part, job, TEST_FAMILIES);

/** All findings of a part in a shop with changes that pass, in English and a unit. */
export const findingsOf = (
  plan: PartPlan,
  shop: Shop = DEFAULT_SHOP,
  unit: Unit = 'mm',
): readonly ToldFinding[] =>
  shopFindings(plan, shop).map((f) => {
    const check = SHOP_CHECKS.find((c) => c.code === f.code);
    return told({ ...f, changes: check?.changes(plan, shop, unit) ?? [] }, unit);
  });

/** The finding of a rule, undefined where it has none. */
export const found = (
  code: string,
  plan: PartPlan,
  shop: Shop = DEFAULT_SHOP,
  unit: Unit = 'mm',
): ToldFinding | undefined => findingsOf(plan, shop, unit).find((f) => f.code === code);

export const STRICT: Shop = { ...DEFAULT_SHOP, profile: 'strict' };
export const USUAL: Shop = { ...DEFAULT_SHOP, profile: 'usual' };

/** A shop with a press brake and no other way to bend: dies of V 6 to 16, a straight punch 20 wide. */
export const PRESS: Shop['press'] = {
  name: 'press brake',
  length: 1000,
  force: 200,
  punches: [
    {
      name: 'straight',
      section: [
        [0, 0],
        [10, 12],
        [10, 100],
        [-10, 100],
        [-10, 12],
      ],
      angle: 85,
      radius: 0.8,
      lengths: [10, 15, 20, 40, 50, 100, 200, 300, 500],
      horns: null,
    },
  ],
  dies: [6, 8, 12, 16].map((opening) => ({
    name: `V ${opening}`,
    section: [
      [-opening / 2 - 6, 0],
      [opening / 2 + 6, 0],
      [opening / 2 + 6, -60],
      [-opening / 2 - 6, -60],
    ],
    opening,
    angle: 85,
    sectioned: true,
  })),
  ram: { half: 15, height: 100 },
  bed: { half: 15 },
  backGauge: { least: 8, most: 600, finger: { over: 8, under: 6, length: 60, width: 30 } },
  gaps: { end: 5, inner: 2 },
  overbend: 3,
};

export const PRESS_SHOP: Shop = { ...DEFAULT_SHOP, brake: null, vise: null, press: PRESS };

export const LASER_TABLE: Shop['table'] = {
  name: 'laser table',
  process: 'laser',
  length: 3000,
  width: 1500,
  kerf: 0.2,
  smallestHole: 1,
};
