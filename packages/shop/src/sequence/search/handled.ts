import type { Work } from '../part/operations.js';
import type { Lies } from './changes.js';
import type { PlacingInput } from './handling.js';
import type { Ahead } from './precedence.js';
import type { Way } from './ways.js';

/** What a bound is computed from. */
export interface BoundInput extends PlacingInput {
  readonly work: Work;
  readonly ways: readonly (readonly Way[])[];
}

/** Least seconds still to come for a part that lies one way or another. */
export type ByLying = (at: Lies | null) => number;

/** Seconds of strokes, and of what is handled between them: of the steps left, and of what is known to lie ahead. */
export interface Handled {
  readonly plain: (left: readonly number[]) => ByLying;
  readonly informed: (ahead: Ahead) => ByLying;
}
