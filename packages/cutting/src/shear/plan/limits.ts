import { frozen } from '@tinwright/core/internal';

/** What a shear can do. mm; Infinity where nothing limits. */
export interface ShearLimits {
  /** Longest cut. */
  readonly length: number;
  /** Furthest setting of the rear stop. */
  readonly stop: number;
}

/** A shear that cuts anything. */
export const NO_LIMITS: ShearLimits = frozen({
  length: Number.POSITIVE_INFINITY,
  stop: Number.POSITIVE_INFINITY,
});
