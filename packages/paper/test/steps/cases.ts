import type { PartPlan } from '@tinwright/core';
import { type Brake, DEFAULT_SHOP, planSequence, type Sequence, type Shop } from '@tinwright/shop';
import { plannedCarrier } from '../../../files/test/carrier.js';
import { pressShop, straight, vDie } from '../../../shop/test/press-shop.js';
import { planned } from '../plan/patterns.js';

/** A part with its order in a shop. */
export interface Case {
  readonly name: string;
  readonly part: PartPlan;
  readonly sequence: Sequence;
  readonly shop: Shop;
}

const inShop = (name: string, part: PartPlan, shop: Shop): Case => ({
  name,
  part,
  sequence: planSequence(part, shop),
  shop,
});

export const PRESS: Shop = pressShop([straight(10)], [vDie(8, 10), vDie(16, 14)]);

/** An end of a tote: tabs on three sides. */
export const toteEnd: PartPlan = planned({
  family: 'tote-end',
  width: 190,
  shoulderHeight: 100,
  height: 200,
  crownWidth: 80,
  tabs: { length: 20 },
  bar: { diameter: 26, below: 34 },
});

const lippedTray: PartPlan = planned({
  family: 'open-box',
  length: 160,
  width: 120,
  height: 40,
  hems: { north: { type: 'closed', length: 10 } },
});

/** The default shop, its brake with a rear stop. */
export const WITH_STOP: Shop = {
  ...DEFAULT_SHOP,
  brake: { ...(DEFAULT_SHOP.brake as Brake), rearStop: 600, rearStopHeight: 12 },
};

/** Parts on the brake, in the vise, by hand and on a press, none of them without bends. */
export const CASES: readonly Case[] = [
  ...plannedCarrier()
    .parts.filter((p) => p.flat.bends.length > 0)
    .map((p) => inShop(`carrier ${p.name}`, p, DEFAULT_SHOP)),
  inShop('tote end', toteEnd, DEFAULT_SHOP),
  inShop(
    'open hems',
    planned({
      family: 'open-box',
      length: 160,
      width: 120,
      height: 40,
      hem: { type: 'open', length: 12, gap: 1.5 },
    }),
    DEFAULT_SHOP,
  ),
  inShop(
    'a hem by hand',
    planned({
      family: 'open-box',
      length: 160,
      width: 120,
      height: 40,
      hems: { north: { type: 'closed', length: 10 } },
    }),
    { ...DEFAULT_SHOP, brake: null },
  ),
  inShop(
    'channel over a block, without a vise',
    planned({ family: 'bent-strip', width: 90, legs: [40, 60, 40], angles: [90, 90] }),
    {
      ...DEFAULT_SHOP,
      brake: null,
      vise: null,
      formerBlock: {
        name: 'former block',
        length: 200,
        width: 40,
        height: 60,
        capacity: [{ material: 'mild-steel', thickness: 1.5 }],
      },
    },
  ),
  inShop('deep tray over a block', planned({ family: 'open-box', length: 160, width: 120, height: 75 }), {
    ...DEFAULT_SHOP,
    brake: null,
    formerBlock: {
      name: 'former block',
      length: 200,
      width: 40,
      height: 90,
      capacity: [{ material: 'mild-steel', thickness: 1.5 }],
    },
  }),
  inShop(
    'wired pan',
    planned({
      family: 'flared-pan',
      bottom: { length: 160, width: 100 },
      depth: 40,
      flare: 15,
      edge: { type: 'wire', diameter: 3 },
    }),
    DEFAULT_SHOP,
  ),
  inShop('lipped tray at a rear stop', lippedTray, WITH_STOP),
  inShop('box on a press', planned({ family: 'open-box', length: 180, width: 120, height: 40 }), PRESS),
  inShop(
    'step on a press',
    planned({ family: 'bent-strip', width: 80, legs: [40, 30, 40], angles: [90, -90] }),
    PRESS,
  ),
  inShop(
    'slight bend on a press',
    planned({ family: 'bent-strip', width: 80, legs: [40, 40], angles: [30] }),
    PRESS,
  ),
];
