import type { JobHardware } from '../assembly/bought.js';
import type { JointSpec } from '../assembly/types.js';
import type { Path } from '../errors/problem.js';
import type { AnyFamily } from '../families/family.js';
import type { Sheet } from '../fold/draft/tree.js';
import type { CutBy } from '../fold/flat/cut-back.js';
import type { Grain, RackRows } from '../schema/rack-rows.js';
import type { Material } from '../stock/materials.js';
import type { Unit } from '../units/length.js';
import type { MeasuredSize } from './measured.js';
import type { FollowedSize } from './sizes.js';

/** A part to make: its family, parameters and sheet. Lengths mm. */
export interface JobPart {
  readonly name: string;
  readonly family: AnyFamily;
  readonly params: unknown;
  readonly quantity: number;
  readonly note: string;
  /** How the rolling lines shall run on its flat. */
  readonly grain: Grain;
  /** What its outline is cut with; null where nobody says. */
  readonly cutBy: CutBy | null;
  readonly material: Material;
  readonly sheet: Sheet;
  /** Where it stands in the job, for problems found later. */
  readonly path: Path;
  /** Where its bending rule stands: with the part, or with the job. */
  readonly bendingPath: Path;
  /** Parameters it seems to have been made with, from what was measured on it; its own ones without a measure. */
  readonly asMade: unknown;
  /** Its sizes that follow sizes of other parts. */
  readonly follows: readonly FollowedSize[];
  /** Sizes measured on it, mm. */
  readonly measured: readonly MeasuredSize[];
  /** True when it is made already: its pattern and the places of its fasteners stay as they are. */
  readonly made: boolean;
}

/** A job read and checked: every size in mm, every default filled in. */
export interface Job {
  readonly units: Unit;
  readonly name: string;
  readonly note: string;
  readonly parts: readonly JobPart[];
  readonly joints: readonly JointSpec[];
  /** Bought parts that stand on its parts; null for none. */
  readonly hardware: JobHardware | null;
  /** Sheets and offcuts it shall be cut from, with metal and thickness; null where it names none. */
  readonly rack: RackRows | null;
  /** The job as drawn, before anything was measured; null when nothing was. */
  readonly drawn: Job | null;
}
