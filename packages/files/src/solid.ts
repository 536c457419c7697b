import type { Assembly, Formed, Pose } from '@tinwright/core';

/** A formed part as it stands in a solid. */
export interface SolidPart {
  readonly name: string;
  readonly formed: Formed;
}

/** Formed parts as they stand, before they become a file. mm, z up; pieces of one part share it. */
export interface Solid {
  readonly name: string;
  readonly pieces: readonly {
    readonly name: string;
    readonly part: SolidPart;
    /** Where the piece stands; null for where it was formed. */
    readonly pose: Pose | null;
  }[];
}

/** One formed part. */
export function partSolid({ name, formed }: SolidPart): Solid {
  return { name, pieces: [{ name, part: { name, formed }, pose: null }] };
}

/** The assembled object as a solid in 3D, every piece by its name. mm */
export function assemblySolid(name: string, { placed, bought }: Assembly): Solid {
  return {
    name,
    pieces: [...placed, ...bought].map(({ piece, part, pose }) => ({ name: piece, part, pose })),
  };
}
