// Parts whose answer is known from the geometry of the machine: closed forms of leaf and press brakes, and what a setter
// knows. Figures of the machine beside each.
import { DEFAULT_SHOP, EXAMPLE_PRESS, type Shop } from '@tinwright/shop';
import { SHOPS } from './shops.js';

export interface Known {
  readonly name: string;
  readonly part: object;
  readonly shop: Shop;
  readonly goes: boolean;
}

const sheet = {
  stock: { material: 'mild-steel', thickness: 1 },
  bending: { rule: 'k-factor', insideRadius: 1 },
};
type Brake = NonNullable<Shop['brake']>;
const usual: Brake = {
  ...(DEFAULT_SHOP.brake as Brake),
  finger: { foot: 60, upright: 35, noseAngle: 45, noseRadius: 0.5 },
  beam: 35,
  clearHeight: 75,
  gaps: { end: 10, inner: 6 },
};
/** Foot 60, upright 35, 75 clear, nothing else in the shop. */
const leaf = (more: Partial<Brake> = {}): Shop => ({
  ...DEFAULT_SHOP,
  brake: { ...usual, ...more },
  vise: null,
});
const school: Shop = { ...DEFAULT_SHOP, vise: null };
const hands: Shop = { ...DEFAULT_SHOP, brake: null };
const press: Shop = { ...DEFAULT_SHOP, brake: null, vise: null, press: EXAMPLE_PRESS };
const narrow: Shop = {
  ...press,
  press: { ...EXAMPLE_PRESS, dies: EXAMPLE_PRESS.dies.filter((d) => d.opening === 6) },
};
const block: Shop = {
  ...hands,
  formerBlock: {
    name: 'former block',
    length: 300,
    width: 40,
    height: 100,
    capacity: [{ material: 'mild-steel', thickness: 1.5 }],
  },
};
const straight: Shop = {
  ...press,
  press: { ...EXAMPLE_PRESS, punches: EXAMPLE_PRESS.punches.filter((p) => p.name === 'straight') },
};

const box = (length: number, width: number, height: number, more: object = {}) => ({
  ...sheet,
  family: 'open-box',
  length,
  width,
  height,
  ...more,
});
const strip = (legs: readonly number[], angles: readonly number[], width = 80) => ({
  ...sheet,
  family: 'bent-strip',
  width,
  legs,
  angles,
});
const u = (flange: number, web: number, width?: number) => strip([flange, web, flange], [90, 90], width);
const cheek = { family: 'offset-cheek', hand: 'right' };
const closed = { type: 'closed', length: 10 };

export const KNOWN: readonly Known[] = [
  { name: 'open box 200 x 120 x 50, fingers', part: box(200, 120, 50), shop: leaf(), goes: true },
  { name: 'the same, one solid jaw', part: box(200, 120, 50), shop: leaf({ fingers: [1000] }), goes: false },
  { name: 'walls 1 over what is clear', part: box(200, 120, 76), shop: leaf(), goes: false },
  { name: 'walls 2 under it', part: box(200, 120, 73), shop: leaf(), goes: true },
  { name: 'U 80 on a web of 50: neither side', part: u(80, 50), shop: leaf(), goes: false },
  { name: 'U 30 on a web of 50: by the leaf', part: u(30, 50), shop: leaf(), goes: true },
  { name: 'U 70 on a web of 70: under the foot', part: u(70, 70), shop: leaf(), goes: true },
  {
    name: 'U 18 on a web of 20, 3 degrees further: 17.6 is the limit',
    part: u(18, 20),
    shop: leaf(),
    goes: false,
  },
  { name: 'U 40 on a web of 30, straight punch', part: u(40, 30), shop: straight, goes: false },
  { name: 'U 34 on a web of 30 over a gooseneck', part: u(34, 30), shop: press, goes: true },
  {
    name: 'Z with a step of 4.9 over a V of 6: under 5 T',
    part: strip([40, 4.9, 40], [90, -90]),
    shop: press,
    goes: false,
  },
  {
    name: 'Z, legs of 70 on a step of 20, a bed 30 to either side under a die of 60: what hangs down meets it',
    part: strip([70, 20, 70], [90, -90]),
    shop: press,
    goes: false,
  },
  {
    name: 'Z, legs of 70 on a step of 20, a bed 12 to either side',
    part: strip([70, 20, 70], [90, -90]),
    shop: { ...press, press: { ...EXAMPLE_PRESS, bed: { half: 12 } } },
    goes: true,
  },
  {
    name: 'over a V of 6, 1.5 thick: four thicknesses',
    part: { ...strip([40, 60], [90]), stock: { material: 'mild-steel', thickness: 1.5 } },
    shop: narrow,
    goes: true,
  },
  {
    name: 'over a V of 6, 1.6 thick: less than four',
    part: { ...strip([40, 60], [90]), stock: { material: 'mild-steel', thickness: 1.6 } },
    shop: narrow,
    goes: false,
  },
  {
    name: 'a press that has the force over a V of 12 only, the third of its dies by radius',
    part: strip([40, 60], [90], 400),
    shop: { ...press, press: { ...EXAMPLE_PRESS, force: 21 } },
    goes: true,
  },
  { name: 'tray 80 deep by hand: bars do not reach', part: box(200, 150, 80), shop: hands, goes: false },
  { name: 'tray 80 deep by hand, over a block', part: box(200, 150, 80), shop: block, goes: true },
  { name: 'Z with a step of 14', part: strip([40, 14, 40], [90, -90]), shop: press, goes: true },
  {
    name: 'box with returns of 8: 8 stay bare',
    part: box(200, 120, 50, { flangeReturn: 8 }),
    shop: leaf(),
    goes: true,
  },
  {
    name: 'with returns of 15 the line is too bare',
    part: box(200, 120, 50, { flangeReturn: 15 }),
    shop: leaf(),
    goes: false,
  },
  {
    name: 'a hem before the walls at its ends',
    part: box(200, 120, 50, { hems: { north: closed } }),
    shop: leaf(),
    goes: true,
  },
  {
    name: 'returns of 8 on a press: under them no punch reaches the ends',
    part: box(220, 180, 40, { flangeReturn: 8 }),
    shop: press,
    goes: false,
  },
  {
    name: 'the same with horns',
    part: box(220, 180, 40, { flangeReturn: 8 }),
    shop: SHOPS.ends as Shop,
    goes: true,
  },
  {
    name: 'shelf whose edges lie lower than the jaw lifts, the rounds of their hems higher',
    part: {
      stock: { material: 'mild-steel', thickness: 0.8 },
      bending: { rule: 'k-factor', insideRadius: 0.8 },
      family: 'shelf',
      length: 660,
      depth: 360,
      edge: { height: 33.46, fold: 6 },
      ends: { length: 44, holes: { diameter: 6, count: 6, edge: 20 } },
      gap: 3,
    },
    shop: SHOPS.pair as Shop,
    goes: true,
  },
  { name: 'box 60 x 60, 80 deep', part: box(60, 60, 80), shop: school, goes: true },
  { name: 'box 50 x 50, 98 deep', part: box(50, 50, 98), shop: school, goes: true },
  { name: 'box 80 x 80, 90 deep', part: box(80, 80, 90), shop: school, goes: true },
  { name: 'box 200 x 200, 90 deep', part: box(200, 200, 90), shop: school, goes: true },
  {
    name: 'hat, a leaf with bars',
    part: strip([20, 40, 60, 40, 20], [-90, 90, 90, -90]),
    shop: leaf(),
    goes: false,
  },
  {
    name: 'hat, without',
    part: strip([25, 40, 70, 40, 25], [-90, 90, 90, -90]),
    shop: leaf({ leaf: { width: 20, stop: 135 } }),
    goes: true,
  },
  { name: 'U 50 on a web of 8 in the vise', part: u(50, 8, 50), shop: hands, goes: false },
  { name: 'U 50 on a web of 40 by hand', part: u(50, 40, 50), shop: hands, goes: true },
  { name: 'spiral', part: strip([12, 60, 70, 80], [90, 90, 90]), shop: school, goes: true },
  {
    name: 'square tube: it closes round the upright of the fingers',
    part: strip([60, 60, 60, 58], [90, 90, 90]),
    shop: school,
    goes: false,
  },
  { name: 'lipped channel', part: strip([15, 40, 90, 40, 15], [90, 90, 90, 90]), shop: school, goes: true },
  {
    name: 'carrier',
    part: {
      ...sheet,
      family: 'hemmed-channel',
      length: 400,
      width: 200,
      height: 55,
      hem: { type: 'closed', length: 15 },
      endTabs: { length: 18 },
    },
    shop: SHOPS.school as Shop,
    goes: true,
  },
  {
    name: 'tote end',
    part: {
      ...sheet,
      family: 'tote-end',
      width: 180,
      shoulderHeight: 110,
      height: 180,
      crownWidth: 40,
      tabs: { length: 15 },
    },
    shop: SHOPS.school as Shop,
    goes: true,
  },
  {
    name: 'flared pan',
    part: {
      ...sheet,
      family: 'flared-pan',
      bottom: { length: 220, width: 120 },
      depth: 40,
      flare: 12,
      edge: { type: 'plain' },
    },
    shop: SHOPS.school as Shop,
    goes: true,
  },
  {
    name: 'hinged box: an angle stop is set to half degrees, the east wall stands 0.2 mm in the leaf at the next',
    part: {
      stock: { material: 'aluminium-5052-h32', thickness: 1.5 },
      bending: { rule: 'k-factor', insideRadius: 0.75 },
      family: 'hinged-box',
      length: 557.43,
      width: 289.44,
      height: 83.59,
      cutouts: [
        {
          type: 'round',
          panel: 'north',
          diameter: 6.19,
          from: { far: 29.5 },
          columns: { count: 33, pitch: 13.862 },
        },
        {
          type: 'round',
          panel: 'south',
          diameter: 2.18,
          from: { far: 24.71 },
          columns: { count: 21, pitch: 20.607 },
        },
      ],
      tabs: { length: 17.6 },
      gap: 12.73,
    },
    shop: SHOPS.both as Shop,
    goes: true,
  },
  {
    name: 'offset cheek: 545 of punch on 558.7, neither end 5 bare',
    part: {
      ...sheet,
      ...cheek,
      offset: 48.8,
      angle: 5,
      height: 60,
      straight: 30.08,
      tabs: { length: 28.67 },
    },
    shop: press,
    goes: true,
  },
  {
    name: 'offset cheek 40 degrees: its plate reaches over the line beside the tab, past the end of a short die',
    part: {
      stock: { material: 'mild-steel', thickness: 1.2 },
      bending: { rule: 'k-factor', insideRadius: 0.6 },
      ...cheek,
      offset: 133.66,
      angle: 40,
      height: 60.13,
      straight: 30.13,
      tabs: { length: 10.19, gap: 5.62 },
    },
    shop: press,
    goes: true,
  },
  {
    name: 'offset cheek 45 degrees, so too',
    part: {
      stock: { material: 'aluminium-5052-h32', thickness: 1.5 },
      bending: { rule: 'k-factor', insideRadius: 1.5 },
      ...cheek,
      offset: 62.68,
      height: 60.02,
      straight: 116.22,
      tabs: { length: 14.62 },
    },
    shop: press,
    goes: true,
  },
  {
    name: 'tray 900 x 200: long walls on the straight brake, short ones between the fingers of the other',
    part: box(900, 200, 40),
    shop: SHOPS.pair as Shop,
    goes: true,
  },
  {
    name: 'the same without the brake with fingers',
    part: box(900, 200, 40),
    shop: { ...(SHOPS.pair as Shop), brakes: [] },
    goes: false,
  },
  {
    name: 'offset cheek 72 degrees: a tab made on its slant comes down beside the line while the next is bent',
    part: {
      stock: { material: 'mild-steel', thickness: 1.2 },
      bending: { rule: 'k-factor', insideRadius: 0.6 },
      ...cheek,
      offset: 159.87,
      angle: 72,
      height: 239.86,
      straight: 116.21,
      tabs: { length: 17.56 },
    },
    shop: SHOPS.both as Shop,
    goes: true,
  },
  {
    name: 'strip: a round bend begins 0.2 mm before the edge of a leaf 40 wide and its margin',
    part: {
      stock: { material: 'mild-steel', thickness: 1.5 },
      bending: { rule: 'k-factor', insideRadius: 3 },
      family: 'bent-strip',
      width: 79.95,
      legs: [39.56, 42.51, 59.92],
      angles: [-17, 31],
      insideRadii: [14.97],
    },
    shop: SHOPS.pair as Shop,
    goes: false,
  },
];
