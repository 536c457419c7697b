import { changeOf, nearestSize, valueAt, withValue } from '@tinwright/core/internal';
import { thicknessLimit } from '../../machines/capacity.js';
import { gaugesLess } from '../../machines/gauges.js';
import type { Brake, Press, Shop, Vise } from '../../machines/shop.js';
import { brakesIn, longestLine, type MendTrial, machineMend, stoppedBy } from './mend-trial.js';
import { newMachines } from './new-machines.js';
import type { Mend, Reason } from './plan.js';

const NARROW = 20; // mm, a leaf without its bars; usual, from memory
const STEP = 1; // mm, kN
const RUNGS = 5;

/** A value of a machine that may be another, and how far it may go, where one of these reasons stops the machine. */
interface Value<M> {
  readonly path: readonly string[];
  readonly codes: readonly Reason['code'][];
  readonly bound: 'least' | 'most';
  readonly end: (machine: M, trial: MendTrial) => number;
  readonly unit?: Mend['unit'];
}

const BRAKE: readonly Value<Brake>[] = [
  { path: ['clearHeight'], codes: ['beam', 'fingers'], bound: 'least', end: (b) => 3 * b.clearHeight },
  { path: ['opening'], codes: ['opening', 'put-in', 'take-off'], bound: 'least', end: (b) => 3 * b.opening },
  {
    path: ['finger', 'foot'],
    codes: ['fingers', 'put-in', 'take-off'],
    bound: 'most',
    // a foot ends behind the upright
    end: (b) => b.finger.upright + STEP,
  },
  // what stays bare at both ends may not be the line itself
  { path: ['gaps', 'end'], codes: ['fingers'], bound: 'least', end: (_, { plan }) => longestLine(plan) / 4 },
  { path: ['length'], codes: ['length'], bound: 'least', end: () => 4000 },
];

const PRESS: readonly Value<Press>[] = [
  {
    path: ['ram', 'height'],
    codes: ['ram', 'put-in', 'take-off'],
    bound: 'least',
    end: (p) => 3 * p.ram.height,
  },
  { path: ['force'], codes: ['force'], bound: 'least', end: (p) => 4 * p.force, unit: 'kN' },
  { path: ['length'], codes: ['length'], bound: 'least', end: () => 4000 },
];

const VISE: readonly Value<Vise>[] = [
  { path: ['grip'], codes: ['jaws'], bound: 'most', end: () => 4 },
  { path: ['depth'], codes: ['jaws'], bound: 'least', end: (v) => 3 * v.depth },
];

/** Values of the shop's machines, each of them by itself, with which an impossible part can be bent; then machines it has not got. */
export function machineMends(trial: MendTrial): readonly Mend[] {
  const { shop } = trial;
  const { press, vise } = shop;
  const mends = [
    ...brakesIn(shop).flatMap(({ brake, put, instead }) => {
      const own = { name: 'brake', given: brake, put: (b: Brake) => put(fingersFor(b)) } as const;
      const found = [...values(trial, own, BRAKE), ...withoutBars(trial, brake, put)];
      return found.map((m): Mend => ({ ...m, instead }));
    }),
    ...(press === null
      ? []
      : values(trial, { name: 'press', given: press, put: (p) => ({ ...shop, press: toolsFor(p) }) }, PRESS)),
    ...(vise === null
      ? []
      : values(trial, { name: 'vise', given: vise, put: (v) => ({ ...shop, vise: v }) }, VISE)),
  ];
  return [...mends.toSorted((a, b) => change(a) - change(b)), ...newMachines(trial)];
}

const change = ({ given, found }: Mend) => changeOf(given as number, found as number);

interface Own<M> {
  readonly name: 'brake' | 'press' | 'vise';
  readonly given: M;
  /** The shop with another in its place. */
  readonly put: (machine: M) => Shop;
}

function values<M>(trial: MendTrial, { name, given: machine, put }: Own<M>, list: readonly Value<M>[]) {
  return list.flatMap(({ path, codes, bound, end, unit = 'mm' }): readonly Mend[] => {
    if (!stoppedBy(trial, name, codes)) return [];
    const given = valueAt(machine, path) as number;
    const limits =
      bound === 'least'
        ? { least: given, most: end(machine, trial) }
        : { least: end(machine, trial), most: given };
    const goes = (v: number) => v !== given && trial.inShop(put(withValue(machine, path, v) as M)) !== null;
    const near = nearestSize(given, (v) => (goes(v) ? 0 : null), { step: STEP, rungs: RUNGS, ...limits });
    return near === null ? [] : [machineMend([name, ...path].join('.'), { given, ...near, unit })];
  });
}

const sum = (list: readonly number[]) => list.reduce((a, b) => a + b, 0);

/** A longer brake comes with fingers as long. */
function fingersFor(brake: Brake): Brake {
  const missing = brake.length - sum(brake.fingers);
  return missing > 0 ? { ...brake, fingers: [...brake.fingers, missing] } : brake;
}

/** A longer press comes with punches as long. */
function toolsFor(press: Press): Press {
  const punches = press.punches.map((p) => {
    const missing = press.length - sum(p.lengths);
    return missing > 0 ? { ...p, lengths: [...p.lengths, missing] } : p;
  });
  return { ...press, punches };
}

/** The leaf without its bars takes two gauges less. Source: a 4 ft brake's printed manual. */
function withoutBars(trial: MendTrial, brake: Brake, put: (brake: Brake) => Shop): readonly Mend[] {
  const given = brake.leaf.width;
  if (given <= NARROW) return [];
  const capacity = brake.capacity.map((c) => ({ ...c, thickness: gaugesLess(c.thickness, 2) }));
  if (trial.inShop(put({ ...brake, capacity, leaf: { ...brake.leaf, width: NARROW } })) === null) return [];
  const { thickness } = thicknessLimit(capacity, trial.plan.material);
  return [machineMend('brake.leaf.width', { given, found: NARROW, bound: 'most', thickness })];
}
