import type { FormerBlock, HandSeamer, Vise } from '../machines/shop.js';
import { type Convex, rectangle } from '../sweep/polygon.js';
import { FLUSH } from './margin.js';

/**
 * Sections of a pair of jaws round a sheet, as convex pieces: x forward from the line to the free side, z up to the side it
 * is bent to; the held side lies between them, behind the line.
 */
export interface JawTools {
  /** As wide as the jaws, wherever they grip: bars, jaws, and what is behind them. */
  readonly jaws: readonly Convex[];
  /** Deeper than this the held side does not go in. mm */
  readonly depth: number;
  readonly width: number;
  /** Room past either end of the line for what clamps a bar down. mm */
  readonly clamps: number;
  /** What a bench takes beside the jaws, as wide as anything: either the one or the other. */
  readonly benches: readonly Convex[];
  /** What is there whichever way the part is turned, as wide as anything. */
  readonly fixed: readonly Convex[];
}

/** Degrees a hem is bent to over bars or in pliers; from there it is laid over. Common practice, no source. */
export const OVER_BARS = 90;

const DEEP = 1000; // mm
/** What the legs of folding bars keep the jaws off the sheet, mm. Judgement. */
export const BAR_LEGS = 4;
const CLAMPS = 40; // mm; judgement
const HINGE = 40; // mm either side of the sheet that pliers take behind their jaws; judgement

/** Bars on the jaws of a vise, the jaws under them, its screw, and the bench it stands on. */
export function viseTools({ jaws, depth, grip, bar, jaw, bench }: Vise, thickness: number): JawTools {
  const T = thickness;
  return {
    jaws: [
      ...pair(-grip, bar, T),
      // the legs of the bars keep the jaws off the sheet
      ...pair(-depth, jaw, T, -grip, BAR_LEGS),
      rectangle(-DEEP, -jaw, -depth, T + jaw),
    ],
    depth,
    width: jaws,
    clamps: 0,
    benches: [rectangle(-DEEP, -DEEP, -bench, -jaw), rectangle(-DEEP, T + jaw, -bench, DEEP)],
    fixed: [],
  };
}

/** A bar of the vise clamped down on the sheet at the edge of the bench: common practice where jaws are too thick. */
export function benchTools({ jaws, grip, bar }: Vise, thickness: number): JawTools {
  return {
    jaws: [rectangle(-grip, thickness, -thickness - FLUSH, thickness + bar)],
    depth: DEEP,
    width: jaws,
    clamps: CLAMPS,
    benches: [rectangle(-DEEP, -DEEP, 0, -FLUSH)],
    fixed: [],
  };
}

const BATTEN = 40; // mm, of a batten across a block; judgement

/**
 * A block on the sheet inside a part, its face along the line at the edge of the bench; a batten across its top goes past both
 * ends of the part, where it is clamped to the bench. Common practice, no source.
 */
export function formerTools({ length, width, height }: FormerBlock, thickness: number): JawTools {
  const [face, top] = [-thickness - FLUSH, thickness + height];
  return {
    jaws: [rectangle(-width, thickness, face, top)],
    depth: DEEP,
    width: length,
    clamps: 0,
    benches: [rectangle(-DEEP, -DEEP, 0, -FLUSH)],
    fixed: [rectangle(-width, top, face, top + BATTEN)],
  };
}

/** Pliers with wide jaws, held from behind. */
export function seamerTools({ width, depth, jaw }: HandSeamer, thickness: number): JawTools {
  return {
    jaws: [...pair(-depth, jaw, thickness), rectangle(-DEEP, -HINGE, -depth, thickness + HINGE)],
    depth,
    width,
    clamps: 0,
    benches: [],
    fixed: [],
  };
}

/** The same over and under the sheet; over it, set back for the thickness that is bent up. */
const pair = (from: number, thick: number, T: number, to = 0, off = 0): readonly Convex[] => [
  rectangle(from, T + off, Math.min(to, -T - FLUSH), T + thick),
  rectangle(from, -thick, to, -off),
];
