import { radians } from '../units/angle.js';
import type { StripBend } from './strip-bend.js';
import { workingLine, workingNumber } from './working.js';

/** One bend. mm and degrees; `angle` is bent through from flat, 0 < angle ≤ 270, without sign. */
export interface BendInput {
  readonly thickness: number;
  readonly insideRadius: number;
  readonly angle: number;
}

/** What a bend costs on the flat, with the working. Lengths mm. */
export interface BendTerms {
  /** Flat length between the two tangent lines. */
  readonly allowance: number;
  /** From the mould line (outer tangent above 90°) back to a tangent line. */
  readonly setback: number;
  /** What the two outside legs shrink by: 2·setback − allowance. */
  readonly deduction: number;
  /** The formula with its numbers, one step a line, for people to follow; written when it is asked for. */
  readonly working: readonly string[];
  /** Where the figures come from. */
  readonly source: string;
}

/** What a rule was made from: its kind, what the job says beside it, and the strips there were. */
export interface RuleMade {
  readonly kind: string;
  readonly constants: Readonly<Record<string, unknown>>;
  readonly strips: readonly StripBend[];
}

/** A bend rule: asked for a bend, it gives its terms. The kernel never knows which rule it is. */
export interface BendRule {
  /** Name in a job file. */
  readonly name: string;
  /** What it is and with which constants, in one line. */
  readonly title: string;
  readonly source: string;
  /** False when formed sizes are not expected to equal the sizes asked for. */
  readonly compensates: boolean;
  /** How a job asked for it, so that it can be made again where only its data came. */
  readonly made?: RuleMade;
  /** How far its allowance may be off, mm; null or left out where it does not know. */
  readonly doubt?: (bend: BendInput) => number | null;
  /** What a bend is laid out with. @throws JobError where the rule must not be used */
  readonly terms: (bend: BendInput) => BendTerms;
  /** What the metal does, where the rule lays out with something else: formed sizes follow from it. */
  readonly forms?: (bend: BendInput) => BendTerms;
}

/**
 * Outside setback: tan(A/2)·(R+T) up to 90°, R+T above (legs to the outer tangent, as DIN 6935 measures).
 * The two agree at 90°. Source: FAA-H-8083-31 ch. 4 and AC 43.13-1B table 4-7; DIN 6935 above 90°.
 */
export function outsideSetback({ thickness, insideRadius, angle }: BendInput): number {
  return (angle <= 90 ? Math.tan(radians(angle) / 2) : 1) * (insideRadius + thickness);
}

/** Bend allowance for a neutral axis at K thicknesses from the inside: (π/180)·A·(R + K·T). */
export function allowanceAtK({ thickness, insideRadius, angle }: BendInput, k: number): number {
  return radians(angle) * (insideRadius + k * thickness);
}

/** Terms from an allowance: setback and deduction follow by the identities. */
export function termsFromAllowance(
  bend: BendInput,
  allowance: number,
  working: () => readonly string[],
  source: string,
): BendTerms {
  const setback = outsideSetback(bend);
  const deduction = 2 * setback - allowance;
  return {
    allowance,
    setback,
    deduction,
    get working() {
      return [...working(), setbackLine(bend), deductionLine(setback, allowance)];
    },
    source,
  };
}

function setbackLine({ insideRadius, thickness, angle }: BendInput): string {
  const sum = insideRadius + thickness;
  return angle <= 90
    ? workingLine('SB = tan(#°/2) × #', [angle, sum], (a, s) => Math.tan(radians(a) / 2) * s)
    : `SB = R + T (outer tangent) = ${workingNumber(sum)}`;
}

function deductionLine(setback: number, allowance: number): string {
  return workingLine('BD = 2 × # − #', [setback, allowance], (s, b) => 2 * s - b);
}
