import type { Remark } from '../errors/finding.js';
import type { Sheet } from '../fold/draft/tree.js';
import type { CutBy } from '../fold/flat/cut-back.js';
import type { FlatPattern } from '../fold/flat/flat.js';
import type { Material } from '../stock/materials.js';

/** A planned part as a check sees it. */
export interface Subject {
  readonly name: string;
  readonly sheet: Sheet;
  readonly material: Material;
  readonly flat: FlatPattern;
  /** What its outline is cut with; nobody says if left out. */
  readonly cutBy?: CutBy | null;
}

/** A rule of good making: looks at one part. */
export type Check = (subject: Subject) => readonly Remark[];
