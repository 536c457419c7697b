import type { Tooling } from '../../tools/press-tools.js';
import type { HeldSide } from '../part/line.js';
import type { Mask } from '../part/mask.js';
import type { LineStroke } from '../part/operations.js';

/** What stops an operation. Lengths mm. */
export interface Obstacle {
  readonly code:
    | 'leaf'
    | 'bed'
    | 'beam'
    | 'fingers'
    | 'punch'
    | 'die'
    | 'ram'
    | 'angle'
    | 'length'
    | 'capacity'
    | 'flange-short'
    | 'hold-short'
    | 'opening'
    | 'put-in'
    | 'take-off'
    | 'jaws'
    | 'force'
    | 'part';
  /** The panel in the way, -1 where it is no panel. */
  readonly panel: number;
  /** Found and allowed, where numbers tell it. */
  readonly value?: number;
  readonly limit?: number;
}

/**
 * How a part comes under a jaw or off it, the jaw lifted: straight to the front or the back, along the line past the end of
 * the fingers, tilted round their foot, or together with the fingers, loosened from the jaw. Off a punch with horns one end
 * of the line goes down first, then the part away from under the other.
 */
export type RemovalWay = 'straight' | 'along' | 'tilted' | 'with-fingers' | 'end-first';

/** A stretch of the tool along the line that may be covered, and how much of it has to be. mm */
export interface Stretch {
  readonly from: number;
  readonly to: number;
  /** Least total width of fingers or tools standing in it, and greatest; infinite where nothing limits it. */
  readonly least: number;
  readonly most: number;
  /** How much of what it covers may stay bare at either end of it. */
  readonly slack: readonly [number, number];
  /** Bent material in it, and what of the line lies bare past it at either end whatever stands in it; null where that is no end. */
  readonly covered: number;
  readonly past: readonly [number | null, number | null];
}

/** How an operation can be mounted in a state. */
export interface Mounting {
  readonly operation: LineStroke;
  readonly held: HeldSide;
  /** Null when it goes; with several, the first found. */
  readonly obstacle: Obstacle | null;
  readonly stretches: readonly Stretch[];
  /** How it comes under the jaw and off it; null where it lies on an open table, or does not go at all. */
  readonly putIn: RemovalWay | null;
  readonly takeOff: RemovalWay | null;
  /** True when the larger side turns. */
  readonly swings: boolean;
}

/** What holds for an operation in every state still to come. */
export interface Prospect {
  /** Tools that stand together and are wider than this never go in; infinite where nothing is known to limit them. mm */
  readonly narrow: number;
  /** Nor more tools in all, mm. */
  readonly room: number;
}

/** A machine, or a pair of hands, as the search sees it. */
export interface Station {
  readonly name: 'brake' | 'press' | 'vise' | 'hand';
  /** The machine with what is fixed in it. */
  readonly id: string;
  /** What no order changes: angle, length, thickness; null where it can be done at all. */
  readonly limits: (operation: LineStroke, held: HeldSide) => Obstacle | null;
  /** True when the larger side turns, or has to be carried behind a punch, however the part stands. */
  readonly swings: (operation: LineStroke, held: HeldSide) => boolean;
  readonly mount: (operation: LineStroke, held: HeldSide, done: Mask) => Mounting;
  /** What is left to hope for from a state on, whatever else is done; null where the operation can no longer be done so. */
  readonly prospect: (operation: LineStroke, held: HeldSide, done: Mask) => Prospect | null;
  /** Widths of fingers or tool lengths to cover stretches with; empty where nothing is mounted. */
  readonly rack: readonly number[];
  /** True when all of them are on when a job begins; else none is, nor what is fixed in it. */
  readonly wholeAtFirst: boolean;
  /** Length of a machine that is to be loaded in its middle, mm; null where it is all the same. */
  readonly balance: number | null;
  /** Uncovered between two pieces of tool, and at the end of a line. mm */
  readonly gaps: { readonly end: number; readonly inner: number };
  /** Of a press: what is fixed in it. With horns stretches are what is left for `rack` between them. */
  readonly tooling: Tooling | null;
}
