import { nearestFirst } from '../../tools/press-setting.js';
import type { HeldSide } from '../part/line.js';
import type { Mask } from '../part/mask.js';
import type { LineStroke } from '../part/operations.js';
import { hornStation } from './horn-station.js';
import { dieRank, type PressWork, pressStation } from './press-station.js';
import type { Mounting, Obstacle, Station } from './station.js';

/** Whether a rack has tools that cover what a mounting leaves them. */
export type Covers = (mounting: Mounting, station: Station) => boolean;

/**
 * A press with every pair of its tools: which of them a bend is made with hangs on its radius and angle. Dies that are not taken
 * first do only what those before them cannot do as the part stands, whichever side is held.
 */
export function pressRack(given: PressWork, covers: Covers): readonly Station[] {
  const { punches } = given.press;
  // of what takes the same time the first is chosen
  const dies = nearestFirst(given.press.dies, given.work.tree);
  const stations = punches.flatMap((punch) =>
    dies.flatMap((die) => {
      const plain = pressStation(given, { punch, die, horns: null });
      const { horns } = punch;
      return horns === null
        ? [plain]
        : [plain, hornStation(pressStation(given, { punch, die, horns }), plain)];
    }),
  );
  return given.dies === 'near' ? stations : stations.map((s) => lastResort(given, s, stations, covers));
}

/** Nobody changes to another die where the usual ones do. */
const NOT_NEEDED: Obstacle = { code: 'die', panel: -1 };

const SIDES: readonly HeldSide[] = ['parent', 'child'];

/** A station for what others of a better rank cannot do as the part stands. */
function lastResort(given: PressWork, own: Station, stations: readonly Station[], covers: Covers): Station {
  const ranks = new Map<number, (station: Station) => number>();
  const rankOf = (operation: LineStroke) => {
    const known = ranks.get(operation.index) ?? ranked(given, operation);
    ranks.set(operation.index, known);
    return known;
  };
  const goes = (station: Station, operation: LineStroke, held: HeldSide, done: Mask) => {
    if (station.limits(operation, held) !== null) return false;
    const mounting = station.mount(operation, held, done);
    return mounting.obstacle === null && covers(mounting, station);
  };
  const refused = new WeakMap<Mounting, Mounting>();
  return {
    ...own,
    mount: (operation, held, done) => {
      const mounting = own.mount(operation, held, done);
      const rank = rankOf(operation);
      if (mounting.obstacle !== null || rank(own) === 0) return mounting;
      const before = stations.filter((s) => rank(s) < rank(own));
      if (!before.some((s) => SIDES.some((side) => goes(s, operation, side, done)))) return mounting;
      const known = refused.get(mounting) ?? { ...mounting, obstacle: NOT_NEEDED, stretches: [] };
      refused.set(mounting, known);
      return known;
    },
  };
}

/** Places of dies for an operation, each looked up once. */
function ranked(given: PressWork, operation: LineStroke): (station: Station) => number {
  const places = new Map(given.press.dies.map((die) => [die, dieRank(given, operation, die)]));
  return ({ tooling }) => (tooling === null ? 0 : (places.get(tooling.die) ?? 0));
}
