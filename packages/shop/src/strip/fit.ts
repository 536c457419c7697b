import { outsideSetback } from '@tinwright/core';
import { fail, plainNumber, radians } from '@tinwright/core/internal';
import type { StripRow } from '../machines/strip-row.js';
import { bendPoint, springPoint } from './bend-point.js';
import { throughOrigin } from './least-squares.js';
import type { MeasuredStrips } from './measured.js';

/** A number with one standard error. */
export interface Estimate {
  readonly value: number;
  readonly error: number;
}

/** How one strip lies to the fit. */
export interface StripResidual {
  readonly name: string;
  /** K by this strip alone. */
  readonly k: number;
  /** Measured deduction less that of the fit, mm. */
  readonly deduction: number;
  /** Degrees a bend of 90° would open by this strip alone; null when it was not measured. */
  readonly springback: number | null;
  /** It contradicts the others: in its lengths, or in its angles. */
  readonly contradicts: readonly ('lengths' | 'angles')[];
}

/** What bent strips give. mm, degrees */
export interface StripFit {
  readonly row: StripRow;
  /** Of a bend of 90°. */
  readonly allowance: Estimate;
  readonly deduction: Estimate;
  /** Angle left over angle set; null when no strip tells. */
  readonly springbackFactor: Estimate | null;
  readonly strips: readonly StripResidual[];
}

/** How the fit is made, in words. */
export const FIT_METHOD =
  'least squares over the strips, weighted by what their readings may be off; errors are one standard error';

const usualName = ({ material, thickness, insideRadius }: MeasuredStrips) =>
  `${material} T ${plainNumber(thickness, 2)} R ${plainNumber(insideRadius, 2)}`;

/**
 * K and springback of a metal from its bent strips. Strips that contradict the others stay out of the numbers and are
 * named in `strips`.
 * @throws JobError when no K between 0 and 1 follows
 */
export function fitStrips(measured: MeasuredStrips): StripFit {
  const { thickness: T, insideRadius: R, reading, strips } = measured;
  const bends = strips.map((s) => bendPoint(s, measured, reading));
  const bent = throughOrigin(bends);
  const { slope: k, error } = bent;
  if (!(k > 0 && k <= 1))
    return fail(
      'strip-impossible',
      ['strips'],
      `K = ${plainNumber(k, 3)} follows from the strips, more than 0 to 1 allowed`,
      'Measure thickness, radius and strips again; thin metal wants long legs and a fine caliper',
    );
  const springs = strips.map((s) => springPoint(s, reading));
  const told = springs.flatMap((p, i) => (p === null ? [] : [i]));
  const sprung =
    told.length === 0
      ? null
      : throughOrigin(told.map((i) => springs[i] as NonNullable<(typeof springs)[number]>));
  const oddSprings = sprung?.odd.map((i) => told[i]) ?? [];
  const arc = radians(90);
  return {
    row: {
      name: measured.name === '' ? usualName(measured) : measured.name,
      material: measured.material,
      thickness: T,
      insideRadius: R,
      k,
      kError: error,
      springback: sprung === null ? null : 90 * (sprung.slope - 1),
      springbackError: sprung === null ? 0 : 90 * sprung.error,
      strips: strips.length - bent.odd.length,
    },
    allowance: { value: arc * (R + k * T), error: arc * T * error },
    deduction: {
      value: 2 * outsideSetback({ thickness: T, insideRadius: R, angle: 90 }) - arc * (R + k * T),
      error: arc * T * error,
    },
    springbackFactor:
      sprung === null ? null : { value: 1 / sprung.slope, error: sprung.error / sprung.slope ** 2 },
    strips: strips.map((s, i) => {
      const { x, y } = bends[i] as (typeof bends)[number];
      const spring = springs[i];
      return {
        name: s.name,
        k: y / x,
        deduction: -(bent.residuals[i] as number), // a longer arc takes less off
        springback: spring === null || spring === undefined ? null : 90 * (spring.y / spring.x - 1),
        contradicts: [
          ...(bent.odd.includes(i) ? (['lengths'] as const) : []),
          ...(oddSprings.includes(i) ? (['angles'] as const) : []),
        ],
      };
    }),
  };
}
