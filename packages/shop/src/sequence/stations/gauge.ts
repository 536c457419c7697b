import { brakeAt } from '../../machines/brakes.js';
import type { Shop } from '../../machines/shop.js';
import type { TreeBend, TreePanel } from '../part/fold-tree.js';
import { type HeldSide, lineFrame, sightOffset } from '../part/line.js';
import type { LineBook } from '../part/line-stands.js';
import type { Mask } from '../part/mask.js';
import type { LineStroke, Work } from '../part/operations.js';
import {
  edgesIn,
  equalSetting,
  isWithin,
  type PossibleEdge,
  type Reach,
  type RearEdge,
  rearEdges,
  type Touches,
} from '../part/rear-edge.js';
import type { Station } from './station.js';
import { type GaugedStroke, gaugeBody, rearStopBody } from './stop-bodies.js';
import { type StopBody, type StopRoom, stopRoom } from './stop-room.js';

/** An edge against a stop. mm */
export interface Gauged extends RearEdge {
  /** What the stop is set to: from the line under the nose, or from the punch line, back to the edge. */
  readonly setting: number;
  /** The same bit for equal settings of the same stop, another one for any other. */
  readonly bit: bigint;
}

/** How a line can be brought to its place, whatever state the part is in. */
export interface Gauging {
  /** Bits of what a stop may be set to. */
  readonly settings: bigint;
  /** True where it may have to be set by its scribed line. */
  readonly byLine: boolean;
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
  readonly ever: (line: OnMachine) => Gauging;
}

/** What a stop can touch, the first that is there in a state. */
interface Stop {
  readonly edges: readonly PossibleEdge[];
  readonly gauged: ReadonlyMap<PossibleEdge, Gauged>;
  /** Null where the stop is not held against the part as a body. */
  readonly room: StopRoom | null;
  /** Left end of the bent material in the machine, mm. */
  readonly left: number;
}

const NEITHER: Gauging = { settings: 0n, byLine: false };

/**
 * Stops and gauges of a shop's machines for a part: the furthest edge in reach at which a stop finds room. Work by hand is set to its line in the time it takes; what closes a hem
 * goes by no line at all.
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
  const made = ({ operation, held, station }: OnMachine): Stop => {
    const { bend } = work.tree.panels[operation.panels[0] as number] as TreePanel & { bend: TreeBend };
    const half = bend.allowance / 2;
    const reach = reachOf(shop, station, half);
    if (reach === null) return { edges: [], gauged: new Map(), room: null, left: 0 };
    const frame = lineFrame(work, operation, held);
    const off = station.name === 'press' ? half : sightOffset(frame, setBack(operation, station) ?? 0);
    const own = edges(operation, held).filter((e) => isWithin(e, reach));
    const machine = station.name === 'press' ? 'press' : station.id;
    const gauged = own.map((e): [PossibleEdge, Gauged] => {
      const setting = e.distance + off;
      return [e, { ...e, setting, bit: bitFor(`${machine} ${equalSetting(setting)}`) }];
    });
    const body = bodyOf(shop, station, { tree: work.tree, frame, operation, bend });
    return {
      edges: own,
      gauged: new Map(gauged),
      room: body === null ? null : stopRoom(lineAt(operation, held), body),
      left: Math.min(...frame.spans.map((s) => s[0])),
    };
  };
  const stopFor = (line: OnMachine): Stop | null => {
    const { operation, held, station } = line;
    const key = `${operation.index} ${held} ${station.id}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    const stop = needsLine(operation, station) ? made(line) : null;
    known.set(key, stop);
    return stop;
  };
  return {
    at: (line, done) => {
      const stop = stopFor(line);
      if (stop === null) return null;
      return gaugedIn(stop, done)?.gauged ?? 'line';
    },
    touches: (line, done) => {
      const stop = stopFor(line);
      const found = stop === null ? null : gaugedIn(stop, done);
      return found === null ? null : { ...found.gauged.touches, at: found.at };
    },
    ever: (line) => {
      const stop = stopFor(line);
      if (stop === null) return NEITHER;
      const settings = [...stop.gauged.values()].reduce((bits, { bit }) => bits | bit, 0n);
      return { settings, byLine: stop.room !== null || !stop.edges.some(isAlways) };
    },
  };
}

/** What lies against a stop in a state: the furthest edge at which it has room. */
function gaugedIn(
  { edges, gauged, room, left }: Stop,
  done: Mask,
): { readonly gauged: Gauged; readonly at: number } | null {
  for (const edge of edgesIn(edges, done)) {
    const at = room === null ? (edge.along[0] + edge.along[1]) / 2 : room(edge, done);
    const found = gauged.get(edge);
    if (at !== null && found !== undefined) return { gauged: found, at: at - left };
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

const isAlways = ({ bent, flat }: PossibleEdge): boolean =>
  [bent, flat].every(({ low, high }) => low === 0 && high === 0);

const needsLine = ({ action }: LineStroke, { name }: Station): boolean =>
  action !== 'close' && (name === 'brake' || name === 'press');

/** How far behind the tangent line the stop or gauge of a machine touches; null for one without. mm */
function reachOf(shop: Shop, { name, id }: Station, half: number): Reach | null {
  const brake = brakeAt(shop, id);
  if (name === 'brake') return brake === null || brake.rearStop === null ? null : [0, brake.rearStop];
  return shop.press === null ? null : [shop.press.backGauge.least - half, shop.press.backGauge.most - half];
}
