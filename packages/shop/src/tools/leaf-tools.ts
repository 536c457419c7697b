import { radians } from '@tinwright/core/internal';
import type { Brake } from '../machines/shop.js';
import { type Convex, grown, rectangle } from '../sweep/polygon.js';
import { FLUSH, TOOL_DEPTH } from './margin.js';

/**
 * Sections of a leaf brake round a sheet of one thickness, as convex pieces. x forward to the operator from the hinge,
 * z up from the top of the bed; the sheet lies between 0 and T. The leaf is drawn down, and turns about the origin.
 */
export interface LeafTools {
  /** How far the fingers' tips stand behind the hinge, mm. */
  readonly setBack: number;
  /** With the margin: what hangs down on the free side stays clear of it. */
  readonly leaf: Convex;
  /** A little below its face and without margin: an edge of the held side may touch it. */
  readonly leafFace: Convex;
  readonly bed: Convex;
  /** The nose, then the upright. */
  readonly finger: readonly Convex[];
  readonly beam: Convex;
}

/** Of the leaf under its face, mm. */
export const LEAF_DEPTH = 40;

/** How far an edge may stick out over the line before the leaf lifts it, mm. Judgement. */
export const EDGE = 0.5;

/** @param margin mm kept off every tool */
export function leafTools(brake: Brake, thickness: number, setBack: number, margin = 0): LeafTools {
  const { finger, clearHeight, beam, leaf, bed } = brake;
  const s = setBack;
  const rise = Math.min(finger.upright * Math.tan(radians(finger.noseAngle)), clearHeight);
  const [tip, front, heel] = [-s, -s - finger.upright, -s - finger.foot];
  const top = thickness + clearHeight;
  const slope: Convex = [
    [heel, thickness],
    [tip, thickness],
    [front, thickness + rise],
    [heel, thickness + rise],
  ];
  return {
    setBack: s,
    leaf: rectangle(0, -LEAF_DEPTH, leaf.width + margin, -FLUSH),
    leafFace: rectangle(0, -LEAF_DEPTH, leaf.width, -EDGE),
    bed: rectangle(-bed - margin, -TOOL_DEPTH, 0, -FLUSH),
    finger: [grown(slope, margin), grown(rectangle(heel, thickness + rise, front, top), margin)],
    beam: grown(rectangle(-s - beam - TOOL_DEPTH, top, -s - beam, top + TOOL_DEPTH), margin),
  };
}
