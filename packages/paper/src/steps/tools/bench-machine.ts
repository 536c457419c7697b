import type { Point } from '@tinwright/core';
import { radians } from '@tinwright/core/internal';
import type { BendStep, Vise } from '@tinwright/shop';
import { bentTo, TOOL_DEPTH } from '@tinwright/shop/internal';
import { type Machine, rectangle, type Tool } from './tool.js';

const MALLET = { back: 35, front: 12, high: 45, over: 8 }; // mm: its face round the fold, and how far over it before
const SPRUNG = 3; // degrees the free side is bent further
const GAP = 0.3; // mm between a bar and the bent metal
const STEEPEST = 2; // mm a bar is cut back for every mm of its height

/** What is bent on a bench, mm: the held tangent line behind the corner, and how high a fold stands before and after. */
export interface BenchSheet {
  readonly thickness: number;
  readonly tangent: number;
  readonly hem: readonly [before: number, after: number];
}

/** A bar clamped down on the sheet at the edge of the bench; a fold is closed on the bench with a mallet. */
export function benchMachine(vise: Vise, step: BendStep, sheet: BenchSheet): Machine {
  const bench: Tool = { name: 'bench', outline: rectangle(-TOOL_DEPTH, -TOOL_DEPTH, 0, 0), mounted: false };
  if (step.action === 'close') {
    const [open, closed] = sheet.hem;
    return { before: [bench, mallet(open + MALLET.over)], after: [bench, mallet(closed)] };
  }
  const both = [bench, bar(vise, bentTo(step), sheet)];
  return { before: both, after: both };
}

/** Its front edge lies along the line; past square it is cut back under the free side. */
function bar({ grip, bar: high }: Vise, angle: number, { thickness, tangent }: BenchSheet): Tool {
  const slope = angle > 90 ? Math.min(STEEPEST, Math.tan(radians(angle - 90 + SPRUNG))) : 0;
  const top = thickness + high;
  const outline: readonly Point[] = [
    [-tangent - GAP - slope * high - grip, thickness],
    [-tangent - GAP, thickness],
    [-tangent - GAP - slope * high, top],
    [-tangent - GAP - slope * high - grip, top],
  ];
  return { name: 'bar', outline, mounted: false };
}

const mallet = (face: number): Tool => ({
  name: 'mallet',
  outline: rectangle(-MALLET.back, face, MALLET.front, face + MALLET.high),
  mounted: false,
});
