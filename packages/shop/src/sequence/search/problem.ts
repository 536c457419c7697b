import type { Material, Part, Point } from '@tinwright/core';
import { brakeAt, brakesOf } from '../../machines/brakes.js';
import { pieceCosts } from '../../machines/costs.js';
import type { Shop } from '../../machines/shop.js';
import { type SheetSpringback, springbackOf } from '../../metal/springback.js';
import { foldSetting } from '../../tools/leaf-setting.js';
import { marginFor } from '../../tools/margin.js';
import type { DieChoice } from '../../tools/press-setting.js';
import { foldTree } from '../part/fold-tree.js';
import type { HeldSide } from '../part/line.js';
import { type LineBook, lineBook } from '../part/line-stands.js';
import { type LineStroke, type Work, workOf } from '../part/operations.js';
import { contactBook } from '../part/self-contact.js';
import { brakeStation } from '../stations/brake-station.js';
import { gaugeBook } from '../stations/gauge.js';
import { handStation } from '../stations/hand-station.js';
import { benchStation, formerStation, seamerStation, viseStation } from '../stations/jaw-station.js';
import { type LeafBlank, leafWork } from '../stations/leaf-work.js';
import { pressRack } from '../stations/press-rack.js';
import type { Station } from '../stations/station.js';
import { handlingScale, headingOf, type PlacingInput, type Setting } from './handling.js';
import { placingBook } from './placing.js';
import type { BendProblem } from './states.js';
import { setAtFirst, toolBook } from './tool-book.js';
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

const HEM_FOLD = 135; // degrees a hem is folded to without a leaf; judgement

/** The search problem of a part in a shop. @param dies of a press that are asked: with all of them others only where the nearest do not go */
export function problemOf(
  { part, quantity, material, mass, blank }: PartToBend,
  shop: Shop,
  dies: DieChoice = 'near',
): BendProblem {
  const longest = Math.max(...blank);
  const { thickness, insideRadius } = part.sheet;
  const springback = springbackOf(shop.strips, material.name, thickness);
  // with several brakes, as far as each of them folds a hem
  const [leaf] = brakesOf(shop)
    .map(({ brake }) => foldSetting(brake, thickness, insideRadius))
    .toSorted((a, b) => a.most - b.most);
  const fold = { angle: leaf?.most ?? HEM_FOLD, setBack: leaf?.setBack ?? null };
  const work = workOf(foldTree(part, fold));
  const lines = lineBook(work);
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
  const own: LeafBlank = { material, margin: marginFor(shop.margin, longest), springback };
  const { press, profile } = shop;
  const tools = toolBook();
  const presses =
    press === null
      ? []
      : pressRack(
          { ...own, work, lineAt: lines, press, profile, dies },
          (mounting, station) => tools(setAtFirst(station), mounting, station) !== 'none',
        );
  const stations = stationsOf(work, lines, shop, own, presses);
  return {
    ...input,
    work,
    stations,
    ways: waysOf(work.operations, stations, input),
    positions: placingBook(input, work),
    contact: contactBook(work, lines),
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

function stationsOf(
  work: Work,
  lines: LineBook,
  shop: Shop,
  blank: LeafBlank,
  presses: readonly Station[],
): readonly Station[] {
  return [
    ...brakesOf(shop).map(({ id, brake }) => brakeStation(work, lines, id, brake, blank)),
    ...presses,
    ...(shop.vise === null
      ? []
      : [
          viseStation(work, lines, shop.vise, blank.material),
          benchStation(work, lines, shop.vise, blank.material),
        ]),
    ...(shop.handSeamer === null ? [] : [seamerStation(work, lines, shop.handSeamer, blank.material)]),
    ...(shop.formerBlock === null ? [] : [formerStation(work, lines, shop.formerBlock, blank.material)]),
    handStation(),
  ];
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
