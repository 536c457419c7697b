import type { Costs } from '../../machines/shop.js';
import type { Work } from '../part/operations.js';
import type { Gauged } from '../stations/gauge.js';
import type { Mounting, Station, Stretch } from '../stations/station.js';
import { bareEnds, mounted } from '../stations/stretches.js';
import { NONE_ON, type ToolSet } from './fingers.js';
import {
  changeCost,
  gaugeAfter,
  gaugeCost,
  leastTools,
  mountCost,
  moveCost,
  type PlacingInput,
  type Position,
  type ToolsOn,
  toolCost,
  toolsName,
} from './handling.js';
import { narrowLines, setAtFirst, toolBook } from './tool-book.js';
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
export function placingBook(input: PlacingInput, work: Work): PlacingBook {
  const { costs, scale, setting } = input;
  const tools = toolBook(narrowLines(work));
  const stations = new Map<string, Station>();
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

  /** What is on a machine when the part comes to it. */
  const toolsBefore = (from: Position | null, station: Station): ToolsOn => {
    const last =
      from === null ? undefined : from.toolsOn === station.id ? station : stations.get(from.toolsOn);
    const there =
      last !== undefined && (last === station || (last.name === 'press' && station.name === 'press'));
    return there && from !== null
      ? { station: last, set: from.tools }
      : { station, set: setAtFirst(station) };
  };

  /** Tools for a mounting, and what changing them takes; null where none of the rack serve. */
  const toolsFor = (from: Position | null, { mounting, station }: Mount): MountedTools | null => {
    // by hand what is on a machine stays there
    if (station.name === 'vise' || station.name === 'hand')
      return { tools: from?.tools ?? null, toolsOn: from?.toolsOn ?? '', seconds: 0 };
    stations.set(station.id, station);
    const was = toolsBefore(from, station);
    // pieces of another punch are no use
    const on = samePunch(was.station, station) ? was.set : NONE_ON;
    const chosen = tools(on, mounting, station);
    if (chosen === 'none') return null;
    changed ||= chosen !== on;
    const seconds = toolCost(was, { station, set: chosen }, costs);
    return { tools: chosen, toolsOn: station.id, seconds };
  };

  const placeAnew = (from: Position | null, mount: Mount): Placing | null => {
    const { mounting, station, gauged } = mount;
    const { operation, held } = mounting;
    const on = toolsFor(from, mount);
    if (on === null) return null;
    const set = setting(operation, station);
    const before = from?.gauge ?? 0n;
    const at = positionFor({
      station: station.name,
      tooling: station.id,
      tools: on.tools,
      toolsOn: on.toolsOn,
      faceUp: operation.angle > 0 ? 'marked' : 'unmarked',
      heading: input.heading(operation, held),
      stop: set.stop ?? from?.stop ?? null,
      setBack: set.setBack ?? from?.setBack ?? null,
      gauge: gaugeAfter(before, gauged),
    });
    const pieces = on.tools ?? [station.rack];
    const bare = on.toolsOn === station.id ? toDress(on.tools, mounting.stretches, station.gaps.inner) : 0;
    return {
      at,
      seconds:
        moveCost(from, at, costs, scale) +
        on.seconds +
        gaugeCost(before, gauged, costs) +
        mountCost(mounting, station, costs, pieces.flat().length) +
        costs.dress * bare,
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
      if (from === null) return way.seconds + leastTools(null, way.station, costs);
      const pair = from.id * MOST_WAYS + way.index;
      const known = leasts.get(pair);
      if (known !== undefined) return known;
      const { station, faceUp, heading: to, stop, setBack } = way;
      const at = { station: station.name, tooling: station.id, faceUp, heading: to, stop, setBack };
      const made =
        costs.slide + changeCost(from, at, costs, scale) + leastTools(from, station, costs) + way.seconds;
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
const toDress = (set: ToolSet, stretches: readonly Stretch[], inner: number): number =>
  sum(
    (set === null ? [] : stretches).map(
      (stretch, i) =>
        bareEnds(stretch, mounted(set?.[i] ?? [], stretch, inner)).filter((b) => b > BARE + 1e-6).length,
    ),
  );

const sum = (list: readonly number[]) => list.reduce((a, b) => a + b, 0);

/** Seconds by which a position with something set may lose against one where that is still free. */
const unset = (from: Position, to: Position, { stop, setBack, gauge }: Costs): number =>
  (from.stop !== null && to.stop === null ? stop : 0) +
  (from.setBack !== null && to.setBack === null ? setBack : 0) +
  (from.gauge !== 0n && from.gauge !== to.gauge ? gauge : 0);

/** Tools on the machine that was used last, and the seconds of changing them. */
interface MountedTools extends Pick<Position, 'tools' | 'toolsOn'> {
  readonly seconds: number;
}

const samePunch = (a: Station, b: Station): boolean =>
  a === b || (a.tooling !== null && a.tooling.punch === b.tooling?.punch);

const MOST_POSITIONS = 2 ** 26;
const MOST_WAYS = 2 ** 16;
