import { brakeAt } from '../../machines/brakes.js';
import type { Shop } from '../../machines/shop.js';
import type { TreeBend, TreePanel } from '../part/fold-tree.js';
import { type HeldSide, lineFrame, sightOffset, spanOf } from '../part/line.js';
import type { LineBook } from '../part/line-stands.js';
import { keptBy, type Mask } from '../part/mask.js';
import type { LineStroke, Work } from '../part/operations.js';
import {
  equalSetting,
  isThere,
  isWithin,
  type PossibleEdge,
  type Reach,
  rearEdges,
  type Touches,
} from '../part/rear-edge.js';
import type { Station } from './station.js';
import { type GaugedStroke, gaugeBody, rearStopBody } from './stop-bodies.js';
import { type StopBody, type StopRoom, stopRoom } from './stop-room.js';

/** An edge against a stop, and the states in which it is there. mm */
export interface Gauged extends PossibleEdge {
  /** What the stop is set to: from the line under the nose, or from the punch line, back to the edge. */
  readonly setting: number;
  /** The same bit for equal settings of the same stop, another one for any other. */
  readonly bit: bigint;
}

/** How a line can be brought to its place, whatever state the part is in. */
export interface Gauging {
  /** What can lie against the stop, the first that is there and finds room; none where the line is set by eye. */
  readonly edges: readonly Gauged[];
  /** True where an edge that is there does: no stop finds no room. */
  readonly sure: boolean;
}

/** A line on a machine with one side held. */
export interface OnMachine {
  readonly operation: LineStroke;
  readonly held: HeldSide;
  readonly station: Station;
}

/** How the lines of a part are brought to their places. */
export interface GaugeBook {
  /** What lies against the stop in a state; `line` where it is set by its line, null where it needs neither. */
  readonly at: (line: OnMachine, done: Mask) => Gauged | 'line' | null;
  /** What lies against the stop, and where along the line; null where nothing does. */
  readonly touches: (line: OnMachine, done: Mask) => Touches | null;
  /** Null where it needs neither. */
  readonly ever: (line: OnMachine) => Gauging | null;
}

/** The stop of a machine behind a line. */
interface Stop extends Gauging {
  /** Null where the stop is not held against the part as a body. */
  readonly room: StopRoom | null;
  /** Left end of the bent material in the machine, mm. */
  readonly left: number;
  /** What lies against it in a state, each looked at once. */
  readonly found: (done: Mask) => Found | null;
}

/** An edge at which a stop has room, and where along the line. mm */
interface Found {
  readonly gauged: Gauged;
  readonly at: number;
}

const MOST_KEPT = 1024; // states of a line

/**
 * Stops and gauges of a shop's machines for a part: the furthest edge in reach at which a stop finds room. Work by hand is
 * set to its line in the time it takes; what closes a hem goes by no line at all.
 * @param setBack of the fingers for an operation, mm
 */
export function gaugeBook(
  work: Work,
  lineAt: LineBook,
  shop: Shop,
  setBack: (operation: LineStroke, station: Station) => number | null,
): GaugeBook {
  const edges = rearEdges(work);
  const known = new Map<string, Stop | null>();
  const names = new Map<string, bigint>();
  const bitFor = (name: string): bigint => {
    const bit = names.get(name) ?? 1n << BigInt(names.size);
    names.set(name, bit);
    return bit;
  };
  const made = ({ operation, held, station }: OnMachine): Omit<Stop, 'found'> => {
    const { bend } = work.tree.panels[operation.panels[0] as number] as TreePanel & { bend: TreeBend };
    const frame = lineFrame(work, operation, held);
    const off =
      station.name === 'press' ? bend.allowance / 2 : sightOffset(frame, setBack(operation, station) ?? 0);
    const reach = reachOf(shop, station, off);
    if (reach === null) return { edges: [], sure: true, room: null, left: 0 };
    const machine = station.name === 'press' ? 'press' : station.id;
    const body = bodyOf(shop, station, { tree: work.tree, frame, operation, bend });
    return {
      edges: edges(operation, held)
        .filter((e) => isWithin(e, reach))
        .map((e): Gauged => {
          const setting = e.distance + off;
          return { ...e, setting, bit: bitFor(`${machine} ${equalSetting(setting)}`) };
        }),
      sure: body === null,
      room: body === null ? null : stopRoom(lineAt(operation, held), body),
      left: spanOf(frame.spans)[0],
    };
  };
  const stopFor = (line: OnMachine): Stop | null => {
    const { operation, held, station } = line;
    const key = `${operation.index} ${held} ${station.id}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    const own = needsLine(operation, station) ? made(line) : null;
    const stop =
      own === null ? null : { ...own, found: keptBy(work.all, (done) => gaugedIn(own, done), MOST_KEPT) };
    known.set(key, stop);
    return stop;
  };
  return {
    at: (line, done) => {
      const stop = stopFor(line);
      if (stop === null) return null;
      return stop.found(done)?.gauged ?? 'line';
    },
    touches: (line, done) => {
      const stop = stopFor(line);
      const found = stop?.found(done) ?? null;
      return found === null ? null : { ...found.gauged.touches, at: found.at };
    },
    ever: stopFor,
  };
}

/** What lies against a stop in a state: the furthest edge at which it has room. */
function gaugedIn({ edges, room, left }: Omit<Stop, 'found'>, done: Mask): Found | null {
  for (const gauged of edges) {
    if (!isThere(gauged, done)) continue;
    const [from, to] = gauged.along;
    const at = room === null ? (from + to) / 2 : room(gauged, done);
    if (at !== null) return { gauged, at: at - left };
  }
  return null;
}

/** The stop of a machine as a body; null where the shop gives none. */
function bodyOf(shop: Shop, station: Station, stroke: Omit<GaugedStroke, 'overbend'>): StopBody | null {
  const brake = brakeAt(shop, station.id);
  if (brake !== null) return rearStopBody(brake, stroke.frame);
  const { press } = shop;
  if (press === null || station.tooling === null) return null;
  return gaugeBody(press.backGauge, station.tooling.die, { ...stroke, overbend: press.overbend });
}

const needsLine = ({ action }: LineStroke, { name }: Station): boolean =>
  action !== 'close' && (name === 'brake' || name === 'press');

/**
 * How far behind the tangent line the stop or gauge of a machine touches; null for one without. A rear stop lies behind the
 * feet of the fingers, which stand on the sheet. mm
 * @param off from the tangent line to where its setting is measured from
 */
function reachOf(shop: Shop, { name, id }: Station, off: number): Reach | null {
  if (name !== 'brake') {
    const { least, most } = shop.press?.backGauge ?? {};
    return least === undefined || most === undefined ? null : [least - off, most - off];
  }
  const brake = brakeAt(shop, id);
  if (brake === null || brake.rearStop === null) return null;
  return [brake.finger.foot - off, brake.rearStop - off];
}
