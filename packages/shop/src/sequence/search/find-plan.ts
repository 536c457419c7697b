import type { Material, Part, Point } from '@tinwright/core';
import type { Press, Shop } from '../../machines/shop.js';
import { type SheetSpringback, springbackOf } from '../../metal/springback.js';
import { foldSetting } from '../../tools/leaf-setting.js';
import { marginFor } from '../../tools/margin.js';
import { ancestors, foldTree } from '../part/fold-tree.js';
import type { Held } from '../part/line.js';
import { type LineBook, lineBook } from '../part/line-stands.js';
import { type Operation, type Work, workOf } from '../part/operations.js';
import { contactBook } from '../part/self-contact.js';
import { brakeStation } from '../stations/brake-station.js';
import { handStation } from '../stations/hand-station.js';
import { benchStation, seamerStation, viseStation } from '../stations/jaw-station.js';
import { type Blank, leafWork } from '../stations/leaf-work.js';
import { pressStation } from '../stations/press-station.js';
import type { Station } from '../stations/station.js';
import { bestFew } from './best-few.js';
import { cheapest } from './cheapest.js';
import { dive } from './dive.js';
import { handlingScale, headingOf, type Setting } from './handling.js';
import { type PlacingInput, placingBook } from './placing.js';
import type { Found, Problem } from './states.js';
import { sweeps } from './sweeps.js';

/** A part as the planner of bends sees it. */
export interface PartToBend {
  readonly name: string;
  readonly part: Part;
  readonly material: Material;
  /** kg of one piece. */
  readonly mass: number;
  /** Size of the blank, mm. */
  readonly blank: Point;
}

/** Looked at before a search gives up: a state of a part with many steps takes longer to look at. */
interface Effort {
  /** States made by the exact search, states kept by the wide one, states looked at for any plan. */
  readonly states: number;
  readonly width: number;
  readonly dives: number;
}

const EXACT_STEPS = 20; // searched through as a rule

const DEEP = 8; // bends one behind the other from which states take much longer to look at
const CHAIN = 1000; // times

function effortFor({ steps, tree }: Work): Effort {
  const depth = Math.max(0, ...tree.panels.map((_, i) => ancestors(tree, i).length - 1));
  const share = Math.min(1, EXACT_STEPS / Math.max(1, steps.length)) * (depth > DEEP ? CHAIN ** -0.25 : 1);
  return {
    states: Math.ceil(600_000 * share ** 4),
    width: Math.ceil(60 * share ** 2),
    dives: Math.ceil(20_000 * share ** 5),
  };
}

/** The search problem of a part in a shop. */
export function problemOf({ part, material, mass, blank }: PartToBend, shop: Shop): Problem {
  const longest = Math.max(...blank);
  const { thickness, insideRadius } = part.sheet;
  const springback = springbackOf(shop.strips, material.name, thickness);
  const foldAngle = shop.brake === null ? 135 : foldSetting(shop.brake, thickness, insideRadius).most;
  const work = workOf(foldTree(part, foldAngle));
  const lines = lineBook(work);
  const input: PlacingInput = {
    costs: shop.costs,
    scale: handlingScale(mass, longest),
    heading: kept(
      (o, held: Held) => headingOf(work, o, held),
      (held) => held,
    ),
    setting: kept(
      (o, station: Station) => settingOf(work, o, station, shop, springback),
      (s) => s.id,
    ),
  };
  return {
    ...input,
    work,
    stations: stationsOf(work, lines, shop, {
      material,
      margin: marginFor(shop.margin, longest),
      springback,
    }),
    positions: placingBook(input),
    contact: contactBook(work, lines),
  };
}

/** A function of an operation and something with a name, each answer kept. */
function kept<B, R>(make: (o: Operation, b: B) => R, name: (b: B) => string): (o: Operation, b: B) => R {
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

function stationsOf(work: Work, lines: LineBook, shop: Shop, blank: Blank): readonly Station[] {
  return [
    ...(shop.brake === null ? [] : [brakeStation(work, lines, shop.brake, blank)]),
    ...(shop.press === null ? [] : pressStations(work, lines, shop, shop.press, blank)),
    ...(shop.vise === null
      ? []
      : [
          viseStation(work, lines, shop.vise, blank.material),
          benchStation(work, lines, shop.vise, blank.material),
        ]),
    ...(shop.handSeamer === null ? [] : [seamerStation(work, lines, shop.handSeamer, blank.material)]),
    handStation(),
  ];
}

/** A press with every pair of its tools: which of them a bend is made with hangs on its radius and angle. */
function pressStations(
  work: Work,
  lines: LineBook,
  shop: Shop,
  press: Press,
  blank: Blank,
): readonly Station[] {
  const pairs = press.punches.flatMap((punch) => press.dies.map((die) => ({ punch, die })));
  return pairs.map((tooling) => pressStation(work, lines, press, tooling, blank, shop.profile));
}

const to = (value: number, step: number) => Math.round(value / step) * step;

/** What an operation wants set on its machine. */
function settingOf(
  { tree }: Work,
  operation: Operation,
  station: Station,
  shop: Shop,
  springback: SheetSpringback,
): Setting {
  if (station.name !== 'brake' || shop.brake === null) return { stop: null, setBack: null };
  if (operation.action === 'roll') return { stop: null, setBack: null };
  const leaf = leafWork(tree, operation, shop.brake, springback);
  // a hem is folded as far as the leaf goes: not half a degree further
  const stop = operation.action === 'fold' ? Math.floor(leaf.set * 2 + 1e-6) / 2 : to(leaf.set, 0.5);
  // a little more rather than less: with less the sheet would not pass the nose
  const setBack = Math.min(Math.ceil(leaf.setBack * 20 - 1e-6) / 20, shop.brake.setBack[1] * tree.thickness);
  return { stop: operation.action === 'close' ? null : stop, setBack };
}

/**
 * The cheapest plan; where there are too many states to look at, a good one with what it may still fall short, or any.
 * Without a plan, an infinite bound says that there is none.
 */
export function findPlan(problem: Problem): Found {
  const { states, width } = effortFor(problem.work);
  const exact = cheapest(problem, states);
  if (exact.moves !== null || exact.bound === Infinity) return exact;
  const quick = sweeps(problem);
  const few = quick.moves === null ? width : Math.ceil(width / 4);
  const wide = bestFew(problem, few);
  const best = wide.cost < quick.cost ? wide : quick;
  if (best.moves !== null) return { ...best, bound: exact.bound };
  const some = anyPlan(problem);
  return { ...some, bound: Math.max(some.bound, exact.bound) };
}

/** Some plan, or none, sooner than the cheapest is found. */
export function anyPlan(problem: Problem): Found {
  const quick = sweeps(problem);
  return quick.moves === null ? dive(problem, effortFor(problem.work).dives) : quick;
}
