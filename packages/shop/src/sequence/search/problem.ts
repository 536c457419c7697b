import type { Material, Part, Point } from '@tinwright/core';
import { brakeAt } from '../../machines/brakes.js';
import { pieceCosts } from '../../machines/costs.js';
import type { Shop } from '../../machines/shop.js';
import type { SheetSpringback } from '../../metal/springback.js';
import type { DieChoice } from '../../tools/press-setting.js';
import type { HeldSide } from '../part/line.js';
import type { LineStroke, Work } from '../part/operations.js';
import { gaugeBook } from '../stations/gauge.js';
import { leafWork } from '../stations/leaf-work.js';
import type { Station } from '../stations/station.js';
import { setOnMachines } from './at-machines.js';
import { handlingScale, headingOf, type PlacingInput, type Setting } from './handling.js';
import { placingBook } from './placing.js';
import type { BendProblem } from './states.js';
import { waysOf } from './ways.js';

/** A part as the planner of bends sees it. */
export interface PartToBend {
  readonly name: string;
  readonly part: Part;
  readonly material: Material;
  /** Pieces that are made of it. */
  readonly quantity: number;
  /** kg of one piece. */
  readonly mass: number;
  /** Size of the blank, mm. */
  readonly blank: Point;
}

/** The search problem of a part in a shop. @param dies of a press that are asked: with all of them others only where the nearest do not go */
export function problemOf(
  { part, quantity, material, mass, blank }: PartToBend,
  shop: Shop,
  dies: DieChoice = 'near',
): BendProblem {
  const longest = Math.max(...blank);
  const { lines, springback, ...standing } = setOnMachines({ part, material, longest })(shop, dies);
  const { work, stations } = standing;
  const setting = kept(
    (o, station: Station) => settingOf(work, o, station, shop, springback),
    (s) => s.id,
  );
  const input: PlacingInput = {
    costs: pieceCosts(shop.costs, quantity),
    scale: handlingScale(mass, longest),
    heading: kept(
      (o, held: HeldSide) => headingOf(work, o, held),
      (held) => held,
    ),
    setting,
    gauges: gaugeBook(work, lines, shop, (o, station) => setting(o, station).setBack),
  };
  return {
    ...input,
    ...standing,
    ways: waysOf(work.operations, stations, input),
    positions: placingBook(input, work),
  };
}

/** A function of an operation and something with a name, each answer kept. */
function kept<B, R>(make: (o: LineStroke, b: B) => R, name: (b: B) => string): (o: LineStroke, b: B) => R {
  const known = new Map<string, R>();
  return (o, b) => {
    const key = `${o.index} ${name(b)}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    const made = make(o, b);
    known.set(key, made);
    return made;
  };
}

/** What an operation wants set on its machine. */
function settingOf(
  { tree }: Work,
  operation: LineStroke,
  station: Station,
  shop: Shop,
  springback: SheetSpringback,
): Setting {
  const brake = brakeAt(shop, station.id);
  if (brake === null) return { stop: null, setBack: null };
  if (operation.action === 'roll') return { stop: null, setBack: null };
  const leaf = leafWork(tree, operation, brake, springback);
  // a little more rather than less: with less the sheet would not pass the nose
  const setBack = Math.min(Math.ceil(leaf.setBack * 20 - 1e-6) / 20, brake.setBack[1] * tree.thickness);
  return { stop: operation.action === 'close' ? null : leaf.set, setBack };
}
