import { degrees } from '../units/angle.js';

/** Hem shapes. `length` is the finished width of the hem from the outside of its fold, mm. */
export interface HemSpec {
  readonly type: 'closed' | 'open' | 'teardrop';
  readonly length: number;
  /** Inside gap of an open hem, greatest inside width of a teardrop, mm. Closed: 0. Default: see `hemFold`. */
  readonly gap?: number | undefined;
}

/** The single fold that makes a hem. mm and degrees. */
export interface HemFold {
  /** Bent through: 180, more for a teardrop. */
  readonly angle: number;
  readonly insideRadius: number;
  /** Leg of the hem from the outer tangent of the fold to its edge. */
  readonly leg: number;
}

/** Least opening a teardrop keeps at its edge, in thicknesses. From memory, no source. */
const TEARDROP_OPENING = 0.25;

/**
 * The fold behind a hem.
 * closed: R = 0, 180°. open: gap = 2R, by default one thickness. teardrop: inside width = 2R, by default two
 * thicknesses; the edge comes back to a quarter thickness from the face, which takes more than 180°.
 * @param thickness mm, above 0
 */
export function hemFold(hem: HemSpec, thickness: number): HemFold {
  if (hem.type === 'closed') return { angle: 180, insideRadius: 0, leg: hem.length };
  const insideRadius = (hem.gap ?? (hem.type === 'open' ? 1 : 2) * thickness) / 2;
  if (hem.type === 'open') return { angle: 180, insideRadius, leg: hem.length };
  return teardrop(hem.length, insideRadius, thickness);
}

/** Shape of a teardrop by the length s of its straight leg. */
interface Teardrop {
  /** Turn past 180°, radians. */
  readonly past: (s: number) => number;
  /** Finished width, mm; grows with s. */
  readonly width: (s: number) => number;
  /** Shortest straight leg: one thickness, or the inside width where that is more. */
  readonly least: number;
}

/**
 * A leg s turned past 180° by δ ends with its inside edge `opening` above the face, so with u = tan(δ/2):
 * 2R − 2su = opening·(1 + u²). Its finished width is R + T + (R + T) sin δ + s cos δ.
 */
function teardropShape(R: number, T: number): Teardrop {
  const opening = Math.min(TEARDROP_OPENING * T, R);
  const past = (s: number) =>
    2 * Math.atan((2 * R - opening) / (s + Math.sqrt(s * s + opening * (2 * R - opening))));
  const width = (s: number) => (R + T) * (1 + Math.sin(past(s))) + s * Math.cos(past(s));
  return { past, width, least: Math.max(T, 2 * R) };
}

/** The straight leg that gives a finished width, by bisection from the least one. */
function teardrop(length: number, R: number, T: number): HemFold {
  const { past, width, least } = teardropShape(R, T);
  let [low, high] = [least, length + least];
  for (let i = 0; i < 200 && high - low > 1e-13 * high; i++) {
    const s = (low + high) / 2;
    if (width(s) < length) low = s;
    else high = s;
  }
  const s = (low + high) / 2;
  return { angle: 180 + degrees(past(s)), insideRadius: R, leg: s + R + T };
}

/** Least finished width that leaves a straight leg to hold, mm: one thickness past the fold, more for a teardrop. */
export function leastHemLength({ type, gap }: Pick<HemSpec, 'type' | 'gap'>, thickness: number): number {
  const { insideRadius: R } = hemFold({ type, gap, length: 100 * thickness }, thickness);
  if (type !== 'teardrop') return R + 2 * thickness;
  const shape = teardropShape(R, thickness);
  return shape.width(shape.least);
}
