import { ASSUMED } from '../../machines/assumed.js';
import { DEFAULT_SHOP } from '../../machines/default-shop.js';
import type { Brake, FormerBlock, HandSeamer, Vise } from '../../machines/shop.js';
import { longestLine, type MendTrial, machineMend } from './mend-trial.js';
import type { Mend } from './plan.js';

const LONGEST_BARS = 1000; // mm of folding bars, in a vise or clamped to a bench; judgement

/** What a shop without one might get: usual ones. */
const NO_VISE = DEFAULT_SHOP.vise as Vise;
const NO_BRAKE = DEFAULT_SHOP.brake as Brake;
const NO_SEAMER: HandSeamer = {
  name: 'hand seamer',
  width: 90,
  depth: 30,
  jaw: 8,
  capacity: NO_BRAKE.capacity.map((c) => ({ ...c, thickness: Math.min(1, c.thickness) })),
};

const BLOCK_HEIGHTS = [60, 80, 100, 150]; // mm; judgement

/** A block sawn to the longest line, as high as walls at its ends ask for: the lowest that does. Null where even the highest does not. */
function newBlock({ plan, shop, inShop }: MendTrial): FormerBlock | null {
  const block = (height: number): FormerBlock => ({
    name: 'former block',
    length: Math.ceil(longestLine(plan)),
    width: ASSUMED.formerBlock.width,
    height,
    capacity: NO_VISE.capacity,
  });
  const goes = (height: number) => inShop({ ...shop, formerBlock: block(height) }) !== null;
  const highest = BLOCK_HEIGHTS.at(-1) as number;
  if (shop.formerBlock !== null || !goes(highest)) return null;
  return block(BLOCK_HEIGHTS.find((h) => h === highest || goes(h)) as number);
}

/** Longer bars for the vise, or a vise, a hand seamer, a former block, a brake where there is none: each tried. */
export function newMachines(trial: MendTrial): readonly Mend[] {
  const { plan, shop, inShop } = trial;
  const line = Math.ceil(longestLine(plan));
  const length = Math.ceil(line / 100) * 100;
  const lacks = length - NO_BRAKE.fingers.reduce((a, b) => a + b, 0);
  const fingers = lacks > 0 ? [...NO_BRAKE.fingers, lacks] : NO_BRAKE.fingers;
  const none = shop.brake === null && shop.brakes.length === 0;
  const tries = [
    {
      parameter: 'vise.jaws',
      given: shop.vise?.jaws ?? null,
      found: line,
      asked: line <= LONGEST_BARS && (shop.vise === null || line > shop.vise.jaws),
      shop: { ...shop, vise: { ...(shop.vise ?? NO_VISE), jaws: line } },
    },
    {
      parameter: 'handSeamer.width',
      given: null,
      found: NO_SEAMER.width,
      asked: shop.handSeamer === null,
      shop: { ...shop, handSeamer: NO_SEAMER },
    },
    {
      parameter: 'brake.length',
      given: null,
      found: length,
      asked: none,
      shop: { ...shop, brake: { ...NO_BRAKE, length, fingers } },
    },
  ];
  const block = newBlock(trial);
  const blocks =
    block === null
      ? []
      : [machineMend('formerBlock.height', { given: null, found: block.height, bound: 'tried' })];
  const others = tries.flatMap(({ parameter, given, found, asked, shop: other }) =>
    asked && inShop(other) !== null ? [machineMend(parameter, { given, found, bound: 'least' })] : [],
  );
  return [...others, ...blocks];
}
