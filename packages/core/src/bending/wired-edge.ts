import { degrees, radians } from '../units/angle.js';
import { type BendTerms, outsideSetback } from './rule.js';
import { workingNumber as n } from './working.js';

/** An edge rolled round a wire. mm */
export interface WiredEdge {
  /** Diameter of the wire. */
  readonly diameter: number;
  /** Flat metal the edge takes; 2.5 wire diameters when null. */
  readonly allowance: number | null;
}

/** The roll that makes a wired edge. mm and degrees */
export interface Curl {
  /** Bent through. */
  readonly angle: number;
  readonly insideRadius: number;
  /** Straight end past the roll. */
  readonly lip: number;
  readonly terms: BendTerms;
}

const SOURCE = 'NAVEDTRA 14251 (Steelworker vol. 2): 2.5 times the wire';
const TIMES = 2.5;
const LEAST_ANGLE = 180; // less does not hold a wire
const GREATEST_ANGLE = 270; // the rest runs on straight towards the wall
const LIP = 0.5; // thicknesses: the end of a roll stays straight
const LIP_ROOM = 0.9; // of the wire's radius, before the lip meets the wall

/** Flat metal a wired edge takes, mm. Source: NAVEDTRA 14251, 2.5 × wire. */
export function wireAllowance({ diameter, allowance }: WiredEdge): number {
  return allowance ?? TIMES * diameter;
}

/** Flat metal of an edge rolled as far as it goes round nothing, `diameter` inside. mm. Common practice, no source. */
export const curlAllowance = (diameter: number, thickness: number): number =>
  radians(GREATEST_ANGLE) * ((diameter + thickness) / 2) + LIP * thickness;

/** Least and greatest allowance that goes round a wire and stops before the wall, mm. */
export function wireAllowanceRange(diameter: number, thickness: number): readonly [number, number] {
  const middle = (diameter + thickness) / 2;
  return [
    radians(LEAST_ANGLE) * middle + LIP * thickness,
    radians(GREATEST_ANGLE) * middle + Math.max(LIP * thickness, (LIP_ROOM * diameter) / 2),
  ];
}

/**
 * The roll round a wire, as far as the allowance reaches along the middle of the sheet.
 * @param thickness mm, above 0
 */
export function curlOf(edge: WiredEdge, thickness: number): Curl {
  const allowance = wireAllowance(edge);
  const insideRadius = edge.diameter / 2;
  const middle = insideRadius + thickness / 2;
  const angle = Math.min(degrees((allowance - LIP * thickness) / middle), GREATEST_ANGLE);
  const arc = radians(angle) * middle;
  const setback = outsideSetback({ thickness, insideRadius, angle });
  return {
    angle,
    insideRadius,
    lip: allowance - arc,
    terms: {
      allowance: arc,
      setback,
      deduction: 2 * setback - arc,
      working: [
        `edge rolled round ${n(edge.diameter)}: ${edge.allowance === null ? `${TIMES} × ${n(edge.diameter)}` : 'allowance given'} = ${n(allowance)}`,
        `rolled through ${n(angle)}°, ${n(allowance - arc)} left straight at the end`,
      ],
      source: edge.allowance === null ? SOURCE : 'allowance given in the job',
    },
  };
}
