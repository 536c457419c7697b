import type { Finding } from '../errors/finding.js';
import type { Path, Problem } from '../errors/problem.js';
import type { Body } from '../hardware/body.js';
import type { HardwareParams, HardwareType } from '../hardware/params.js';
import type { AnyFastenerKind } from '../joining/fastener.js';
import type { Gives, ParamKit } from '../schema/kit.js';
import type { Fastened } from './fasten.js';
import type { StandingSheet } from './layers.js';
import { type JointEnd, type JointSpec, type Placed, pieceNames, type Seated } from './types.js';

/** Bought parts of one kind in a job, one at each place. mm */
export interface HardwareSpec {
  readonly name: string;
  readonly params: HardwareParams;
  /** The face it stands on, and the second one of what joins two parts. */
  readonly on: JointEnd;
  readonly and: JointEnd | null;
  /** Off edges of the panel by their names; along the line where two parts meet only what lies along it counts. */
  readonly at: readonly Readonly<Record<string, number>>[];
  /** Degrees, counter-clockwise seen from outside. */
  readonly turn: number;
  readonly by: JointSpec['by'];
  readonly path: Path;
}

/** Names of the bought parts of a row, one at each place. */
export const boughtNames = ({ name, at }: Pick<HardwareSpec, 'name' | 'at'>): readonly string[] =>
  pieceNames({ name, quantity: at.length });

/** A bought part where it stands: a body of plain solids, x right, y up, z off the face it stands on. */
export interface Bought extends Placed {
  readonly type: HardwareType;
  readonly spec: HardwareSpec;
  readonly body: Body;
  /** The pieces it stands on. */
  readonly holds: readonly Placed[];
}

/** Bought parts with the holes they want and what goes through them. */
export interface Fitted {
  readonly bought: readonly Bought[];
  readonly fastened: readonly Fastened[];
}

/**
 * What reads bought parts, stands them and moves what they hinge: a program that wants none leaves it out of its bundle.
 */
export interface HardwareTools {
  /** Schema of the rows of a job. */
  readonly schema: (kit: ParamKit, fasteners: readonly AnyFastenerKind[]) => Gives<unknown>;
  /** Rows that went through the schema, with their fasteners looked up. */
  readonly read: (rows: readonly unknown[]) => readonly HardwareSpec[];
  /** Names that are taken. @param data the job */
  readonly twins: (data: unknown) => readonly Problem[];
  /** @throws JobError for what cannot stand where it is told to */
  readonly fit: (
    rows: readonly HardwareSpec[],
    placed: readonly Placed[],
    sheets: readonly StandingSheet[],
  ) => Fitted;
  /** What is in the way of a part that its hinges swing. */
  readonly swing: (
    bought: readonly Bought[],
    placed: readonly Placed[],
    seated: readonly Seated[],
  ) => readonly Finding[];
}

/** The bought parts of a job, and what stands them. */
export interface JobHardware {
  readonly rows: readonly HardwareSpec[];
  readonly tools: HardwareTools;
}
