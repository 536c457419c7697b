import type { ToleranceClass } from '@tinwright/core';
import type { Language } from '@tinwright/words';
import type { DimsName } from '@tinwright/words/internal';
import type { Typeface } from '../page/typeface.js';
import type { SightLine } from '../pattern/pattern-ask.js';

/** How plans are drawn. */
export interface PlanOptions {
  /** Name of the paper: A4, letter, A3 or tabloid. */
  readonly paper: string;
  readonly dims: DimsName;
  /** `1:2`; the largest that fits where it is left out. */
  readonly scale?: string;
  readonly tolerance?: ToleranceClass;
  /** Printed as it is. */
  readonly date?: string;
  /** Height of lettering, mm: 2.5, or 3.5 for large print (ISO 3098). */
  readonly lettering?: 2.5 | 3.5;
  /** The marking program, the table of all coordinates, or none of it: what a class works out for itself. */
  readonly marking?: 'program' | 'all' | 'none';
  /** Left out, since it stands elsewhere: what helps to read a plan, its finished sizes. */
  readonly leftOut?: readonly ('notes' | 'finished')[];
  /** English where nobody says. */
  readonly language?: Language;
  readonly face?: Typeface;
}

/** What a brake adds to the plan of a part. */
export interface BrakeMarks {
  readonly sights?: readonly SightLine[];
  /** Angles to set for springback, by the bend's id. */
  readonly setAngles?: Readonly<Record<string, number>>;
}
