import { frozen } from '../units/frozen.js';

/** Sources without a name of their own; languages have words for them. */
const SOURCE_KINDS = [
  'shop-file',
  'job',
  'joints',
  'measured',
  'design-guide',
  'design-guides',
  'cautious-guides',
  'fabricator',
  'fabricators',
  'general-practice',
  'makers-tables',
  'brake-manual',
  'planner',
] as const;

/** A source without a name of its own. */
export type SourceKind = (typeof SOURCE_KINDS)[number];

/** How a limit comes from its source. */
export type Basis =
  | 'computed'
  | 'derived'
  | 'judgement'
  | 'memory'
  | 'common-practice'
  | 'second-hand'
  | 'stricter';

/** Where a limit comes from, as data. */
export interface Source {
  /** The rule in symbols, `2T + R`, `#` standing for the size; null where the source gives the number itself. */
  readonly rule: string | null;
  /** A kind of source, or the name of a published work as it is printed; null where there is none. */
  readonly work: string | null;
  /** The number it gives, mm; null where the rule or the limit says it. */
  readonly size: number | null;
  readonly basis: Basis | null;
  /** Sources that disagree are profiles of the shop. */
  readonly profile: 'strict' | 'usual' | null;
  /** Values of the shop it leans on that the shop file leaves to be assumed, `brake.bed`. */
  readonly assumed: readonly string[];
}

/**
 * A source of a value, as data.
 * @param work title of a published work, a kind of source, or null where there is none
 * @param more the rule as printed (`2T + R`), a size in mm, and how the work is known: read, from memory, derived
 */
export function cite(
  work: SourceKind | (string & {}) | null,
  more: Partial<Omit<Source, 'work'>> = {},
): Source {
  return frozen({ rule: null, size: null, basis: null, profile: null, assumed: [], ...more, work });
}

/** Computed from the job itself, held against a limit of common practice. */
export const COMPUTED: readonly Source[] = frozen([
  cite(null, { basis: 'computed' }),
  cite(null, { basis: 'common-practice' }),
]);

/** Nothing published. */
export const COMMON_PRACTICE: readonly Source[] = frozen([cite(null, { basis: 'common-practice' })]);
