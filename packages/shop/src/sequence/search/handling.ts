import { place3 } from '@tinwright/core/internal';
import type { PieceCosts } from '../../machines/costs.js';
import type { Costs } from '../../machines/shop.js';
import { poseFrom, type TreeBend, type TreePanel } from '../part/fold-tree.js';
import type { HeldSide } from '../part/line.js';
import type { LineStroke, Work } from '../part/operations.js';
import type { GaugeBook, Gauged } from '../stations/gauge.js';
import type { Mounting, Station } from '../stations/station.js';
import { difference, type ToolSet, toolSetKey } from './fingers.js';
import { type Bearing, turnCost } from './turns.js';

/** How the part lies and what is set, between two operations. */
export interface Position extends Bearing {
  readonly station: Station['name'];
  /** The machine with what is fixed in it. */
  readonly tooling: string;
  /** Tools on the machine that was used last, and which one that is; they stay while the part is done by hand. */
  readonly tools: ToolSet;
  readonly toolsOn: string;
  /** Angle the machine is set to, degrees, and its set-back, mm; null where nothing is set. */
  readonly stop: number | null;
  readonly setBack: number | null;
  /** Bit of what the stop or gauge that was used last is set to, 0n for none yet. */
  readonly gauge: bigint;
  /** Its number: the same position is there once. */
  readonly id: number;
}

/** A position without the tools that are on. */
export type Lie = Omit<Position, 'id' | 'tools' | 'toolsOn' | 'gauge'>;

/** What an operation sets, whichever way the part lies: to half a degree and a twentieth of a millimetre. */
export interface Setting {
  readonly stop: number | null;
  readonly setBack: number | null;
}

/** What placing hangs on. */
export interface PlacingInput {
  readonly costs: PieceCosts;
  readonly scale: number;
  readonly heading: (operation: LineStroke, held: HeldSide) => number;
  readonly setting: (operation: LineStroke, station: Station) => Setting;
  readonly gauges: GaugeBook;
}

/** Heading of a part under an operation, degrees from 0: away from the held side, on the flat pattern. */
export function headingOf({ tree }: Work, operation: LineStroke, held: HeldSide): number {
  const child = tree.panels[operation.panels[0] as number] as TreePanel & { bend: TreeBend };
  const pose = poseFrom(tree, 0, child.parent, () => 'flat');
  const { y } = child.bend.hinge.frame;
  const out = place3({ ...pose, origin: [0, 0, 0] }, [y[0], y[1], 0]);
  const turn = (Math.atan2(out[1], out[0]) * 180) / Math.PI + (held === 'parent' ? 0 : 180);
  return Math.round((((turn % 360) + 360) % 360) * 100) / 100;
}

/** Names the tools that are on, and where. */
export const toolsName = ({ toolsOn, tools }: Pick<Position, 'toolsOn' | 'tools'>): string =>
  `${toolsOn} ${toolSetKey(tools)}`;

/** Large or heavy parts are slower to turn and flip. */
export const handlingScale = (mass: number, longest: number): number => Math.max(1, mass / 3, longest / 600);

/** Seconds to go on to a position, stroke and tools not counted. The first one costs nothing. */
export const moveCost = (from: Position | null, to: Position, costs: Costs, scale: number): number =>
  from === null ? 0 : costs.slide + changeCost(from, to, costs, scale);

/**
 * Seconds to change from one position to another, tools and the way to the line not counted. A detour over a third
 * position never takes less: where costs would have it so, the detour is what is counted.
 */
export function changeCost(from: Position, to: Lie, costs: Costs, scale: number): number {
  // another brake is another machine; another punch is not
  const other = from.station !== to.station || (to.station === 'brake' && from.tooling !== to.tooling);
  const walk = other ? costs.walk : 0;
  const stop = differs(from.stop, to.stop) ? costs.stop : 0;
  const setBack = differs(from.setBack, to.setBack) ? costs.setBack : 0;
  return scale * turnCost(from, to, costs) + walk + stop + setBack;
}

/** True when something has to be set anew; null for what is not set at all. */
export const differs = (a: number | null, b: number | null): boolean => a !== null && b !== null && a !== b;

/** Seconds to bring a line to its place. @param on what is set, bits; 0n for nothing yet, which is set for nothing */
export function gaugeCost(on: bigint, gauged: Gauged | 'line' | null, costs: Costs): number {
  if (gauged === null) return 0;
  if (gauged === 'line') return costs.line;
  return on === 0n || on === gauged.bit ? 0 : costs.gauge;
}

/** What is set once a line is brought to its place, bits. */
export const gaugeAfter = (on: bigint, gauged: Gauged | 'line' | null): bigint =>
  gauged === null || gauged === 'line' ? on : gauged.bit;

/** A machine and what of its rack is on. */
export interface ToolsOn {
  readonly station: Station;
  readonly set: ToolSet;
}

/** Seconds of taking off and putting on: of a press the die and what stands at the ends too. */
export function toolCost(from: ToolsOn, to: ToolsOn, costs: Costs): number {
  const changed = difference(piecesOn(from), piecesOn(to));
  return changed === 0 ? 0 : costs.tools + costs.tool * changed;
}

function piecesOn({ station: { rack, tooling }, set }: ToolsOn): readonly string[] {
  const pieces = (set ?? [rack]).flat();
  if (tooling === null || pieces.length === 0) return pieces.map(String);
  const { punch, die, horns } = tooling;
  return [
    `die ${die.name}`,
    ...(horns?.widths.map((w, i) => `${punch.name} horn ${i} ${w}`) ?? []),
    ...pieces.map((p) => `${punch.name} ${p}`),
  ];
}

/** Seconds that tools take at least before a stroke on a machine: on a press that had none, or others, a die and a piece of punch. */
export const leastTools = (
  on: Position | null,
  { id, rack, wholeAtFirst }: Station,
  { tools, tool }: Costs,
): number => (wholeAtFirst || rack.length === 0 || on?.toolsOn === id ? 0 : tools + 2 * tool);

const BY_HAND = 100; // mm bent by hand at once; judgement

/** Seconds of the stroke itself; by hand a longer bend is done piece by piece. */
export function strokeCost(
  { action, length }: LineStroke,
  { name, id }: Pick<Station, 'name' | 'id'>,
  costs: Costs,
): number {
  if (id === 'seamer') return costs.seamer;
  if (id === 'former') return costs.former * Math.max(1, length / BY_HAND);
  if (name === 'vise' || name === 'hand') return costs.hand * Math.max(1, length / BY_HAND);
  return action === 'close' ? costs.flatten : costs.bend;
}

/** Seconds of a stroke with what it takes to hold the part for it. */
export function mountCost(
  { operation, putIn, takeOff, swings }: Mounting,
  station: Station,
  costs: PieceCosts,
  pieces: number,
): number {
  const ways = [putIn, takeOff].map((way): number => {
    if (way === 'with-fingers') return costs.loosen + costs.loosenEach * pieces;
    return way === 'tilted' || way === 'end-first' ? costs.hook : 0;
  });
  return strokeCost(operation, station, costs) + (swings ? costs.swing : 0) + ways.reduce((a, b) => a + b, 0);
}
