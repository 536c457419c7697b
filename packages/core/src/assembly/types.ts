import type { Path } from '../errors/problem.js';
import type { Pose } from '../fold/draft/space.js';
import type { Site } from '../fold/draft/tree.js';
import type { Formed } from '../fold/formed/formed.js';
import type { Part } from '../fold/settle/part.js';
import type { AnyFastenerKind, FastenerAsk } from '../joining/fastener.js';
import type { Material } from '../stock/materials.js';

/** A part as the assembly sees it. `quantity` pieces of it are called NAME-1, NAME-2 …, a single one NAME. */
export interface AssemblyPart {
  readonly name: string;
  readonly quantity: number;
  /** As it stands: once it was measured, as it seems to have been made. */
  readonly part: Part;
  readonly formed: Formed;
  /** As its pattern is cut; the same unless it was measured. */
  readonly drawn: Part;
  readonly material: Material;
  /** True when it is made already: places of its fasteners stay where they were cut. */
  readonly made: boolean;
}

/** One end of a joint. */
export interface JointEnd {
  readonly piece: string;
  readonly site: string;
}

/** Two sites put together. mm */
export interface JointSpec {
  readonly name: string;
  readonly from: JointEnd;
  readonly to: JointEnd;
  /** How they are fastened; null for what is only set in place. */
  readonly by: { readonly kind: AnyFastenerKind; readonly ask: FastenerAsk } | null;
  /** Where the second stands on the first, from where the sites say: to its right, and upright. */
  readonly shift: { readonly across: number; readonly up: number };
  /** Places of several pieces along the site it starts from; null for one, where the sites say. */
  readonly places: JointPlaces | null;
  /** Clearance asked between the two parts away from the faces that touch. */
  readonly clearance: number;
  /** Where it stands in the job. */
  readonly path: Path;
}

/** Places along a site, from an end of its panel. mm */
export interface JointPlaces {
  /** Distances of the places; null for a row of `count`, `every` so far apart, about the middle. */
  readonly at: readonly number[] | null;
  /** null: spread evenly from end to end. */
  readonly every: number | null;
  /** null: as many as there are pieces. */
  readonly count: number | null;
  /** Edge the places are counted from; null for the one at the left hand of who looks at the face. */
  readonly edge: string | null;
}

/** A piece in its place; `pose` maps the formed part's frame into the assembly. */
export interface Placed {
  readonly piece: string;
  readonly part: AssemblyPart;
  readonly pose: Pose;
}

/** A joint between two placed pieces. mm */
export interface Seated {
  readonly joint: JointSpec;
  readonly from: Placed;
  readonly to: Placed;
  readonly sites: readonly [Site, Site];
  /** Distance between the faces that meet: 0 when they lie flat on each other. */
  readonly gap: number;
}

/** Names of the pieces of a part. */
export function pieceNames({ name, quantity }: Pick<AssemblyPart, 'name' | 'quantity'>): readonly string[] {
  return quantity === 1 ? [name] : Array.from({ length: quantity }, (_, i) => `${name}-${i + 1}`);
}
