import type { PieceCosts } from '../../machines/costs.js';
import type { Costs } from '../../machines/shop.js';
import type { Gauged } from '../stations/gauge.js';
import type { Mounting, Station, Stretch } from '../stations/station.js';
import { mounted } from '../stations/stretches.js';
import type { ToolSet } from './fingers.js';
import {
  changeCost,
  gaugeAfter,
  gaugeCost,
  moveCost,
  type PlacingInput,
  type Position,
  strokeCost,
  toolBook,
  toolsName,
} from './handling.js';
import type { Way } from './ways.js';

/** Where a mounting brings the part, and the seconds it takes from where it was, stroke included. */
export interface Placing {
  readonly at: Position;
  readonly seconds: number;
}

/** A mounting, and what lies against the stop for it. */
export interface Mount {
  readonly mounting: Mounting;
  readonly station: Station;
  readonly gauged: Gauged | 'line' | null;
}

/** Positions of a part, each there once, and the ways between them. */
export interface PlacingBook {
  /** From a position into a mounting; null when no tools of the rack serve. */
  readonly place: (from: Position | null, mount: Mount) => Placing | null;
  /** Seconds from a position through a way that takes no other tools and comes in and off by itself; stops are not counted. */
  readonly least: (from: Position | null, way: Way) => number;
  /** Seconds to change from one to another that has the same tools on; infinite where the tools differ. */
  readonly change: (from: Position, to: Position) => number;
  /** True once tools were changed on the way to some position. */
  readonly changed: () => boolean;
  /** The same position with the part lying another way. */
  readonly laid: (at: Position, heading: number, marked: boolean) => Position;
}

/** Every answer is kept: a part has few positions, and is in each of them in many states. */
export function placingBook(input: PlacingInput): PlacingBook {
  const { costs, scale, setting } = input;
  const tools = toolBook();
  const positions = new Map<string, Position>();
  const placings = new WeakMap<Mounting, Map<Mount['gauged'], Map<number, Placing | null>>>();
  const changes = new Map<number, number>();
  let changed = false;
  const leasts = new Map<number, number>();

  const positionFor = (p: Omit<Position, 'id'>): Position => {
    const key = `${p.tooling}/${p.faceUp}/${p.heading}/${p.stop}/${p.setBack}/${p.gauge}/${toolsName(p)}`;
    const known = positions.get(key) ?? { ...p, id: positions.size };
    positions.set(key, known);
    return known;
  };

  const placeAnew = (from: Position | null, { mounting, station, gauged }: Mount): Placing | null => {
    const { operation, held } = mounting;
    const byHand = station.name === 'vise' || station.name === 'hand';
    const on: ToolSet = byHand || from?.toolsOn === station.id ? (from?.tools ?? null) : null;
    const chosen = byHand ? on : tools(on, mounting, station);
    if (chosen === 'none') return null;
    changed ||= chosen !== on;
    const set = setting(operation, station);
    const before = from?.gauge ?? 0n;
    const at = positionFor({
      station: station.name,
      tooling: station.id,
      tools: chosen,
      toolsOn: byHand ? (from?.toolsOn ?? '') : station.id,
      faceUp: operation.angle > 0 ? 'marked' : 'unmarked',
      heading: input.heading(operation, held),
      stop: set.stop ?? from?.stop ?? null,
      setBack: set.setBack ?? from?.setBack ?? null,
      gauge: gaugeAfter(before, gauged),
    });
    return {
      at,
      seconds:
        moveCost(from, at, costs, station.rack, scale) +
        gaugeCost(before, gauged, costs) +
        mountCost(mounting, station, costs, (chosen ?? [station.rack]).flat().length) +
        (byHand ? 0 : costs.dress * bareEnds(chosen, mounting.stretches, station.gaps.inner)),
    };
  };

  return {
    place: (from, mount) => {
      const { mounting, gauged } = mount;
      const byGauge = placings.get(mounting) ?? new Map<Mount['gauged'], Map<number, Placing | null>>();
      placings.set(mounting, byGauge);
      const byPosition = byGauge.get(gauged) ?? new Map<number, Placing | null>();
      byGauge.set(gauged, byPosition);
      const id = from?.id ?? -1;
      const known = byPosition.get(id);
      if (known !== undefined) return known;
      const made = placeAnew(from, mount);
      byPosition.set(id, made);
      return made;
    },
    least: (from, way) => {
      if (from === null) return way.seconds;
      const pair = from.id * MOST_WAYS + way.index;
      const known = leasts.get(pair);
      if (known !== undefined) return known;
      const { station, faceUp, heading: to, stop, setBack } = way;
      const at = { station: station.name, tooling: station.id, faceUp, heading: to, stop, setBack };
      const made = costs.slide + changeCost(from, at, costs, scale) + way.seconds;
      leasts.set(pair, made);
      return made;
    },
    change: (from, to) => {
      const pair = from.id * MOST_POSITIONS + to.id;
      const known = changes.get(pair);
      if (known !== undefined) return known;
      const same = toolsName(from) === toolsName(to);
      const made = same ? changeCost(from, to, costs, scale) + unset(from, to, costs) : Infinity;
      changes.set(pair, made);
      return made;
    },
    changed: () => changed,
    laid: (at, heading, marked) => positionFor({ ...at, heading, faceUp: marked ? 'marked' : 'unmarked' }),
  };
}

const BARE = 10; // mm: an end that is bare further than that comes out round; judgement

/** Ends of a line that have to be dressed by hand; the whole rack leaves none bare. */
const bareEnds = (set: ToolSet, stretches: readonly Stretch[], inner: number): number =>
  sum(
    (set === null ? [] : stretches).map((stretch, i) => {
      const { bare } = mounted(set?.[i] ?? [], stretch, inner);
      return stretch.past.filter((p, side) => p !== null && p + (bare[side] as number) > BARE + 1e-6).length;
    }),
  );

/** Seconds of a stroke with what it takes to hold the part for it. */
function mountCost(
  { operation, putIn, takeOff, swings }: Mounting,
  station: Station,
  costs: PieceCosts,
  pieces: number,
): number {
  const ways = [putIn, takeOff].map((way) => {
    if (way === 'with-fingers') return costs.loosen + costs.loosenEach * pieces;
    return way === 'tilted' || way === 'end-first' ? costs.hook : 0;
  });
  return strokeCost(operation, station, costs) + (swings ? costs.swing : 0) + sum(ways);
}

const sum = (list: readonly number[]) => list.reduce((a, b) => a + b, 0);

/** Seconds by which a position with something set may lose against one where that is still free. */
const unset = (from: Position, to: Position, { stop, setBack, gauge }: Costs): number =>
  (from.stop !== null && to.stop === null ? stop : 0) +
  (from.setBack !== null && to.setBack === null ? setBack : 0) +
  (from.gauge !== 0n && from.gauge !== to.gauge ? gauge : 0);

const MOST_POSITIONS = 2 ** 26;
const MOST_WAYS = 2 ** 16;
