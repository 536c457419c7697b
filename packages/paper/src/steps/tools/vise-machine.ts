import type { Point } from '@tinwright/core';
import { radians } from '@tinwright/core/internal';
import type { BendStep, Vise } from '@tinwright/shop';
import { BAR_LEGS, bentTo, TOOL_DEPTH } from '@tinwright/shop/internal';
import { type Machine, rectangle, type Tool } from './tool.js';

const JAW = 22; // mm
const APART = 12; // mm to either side of what is put in, before a hem is closed

/**
 * What is bent in a vise, mm: `faces` is how far metal between the bars stands to the back and the front of the sheet's
 * front face (low folds are held with it), `top` the held tangent line below the corner, `hem` the thickness of a hem.
 */
export interface ViseSheet {
  readonly faces: readonly [back: number, front: number];
  readonly top: number;
  readonly hem: readonly [before: number, after: number];
}

/** A vise with folding bars: the held side hangs between them. To close a hem its jaws do without bars. */
export function viseMachine(vise: Vise, step: BendStep, sheet: ViseSheet): Machine {
  if (step.action === 'close') {
    const [open, closed] = sheet.hem;
    return { before: squeeze(vise, -open - APART, APART), after: squeeze(vise, -closed, 0) };
  }
  const [back, front] = sheet.faces;
  // beyond a right angle the free side comes down behind the bar
  const past = bentTo(step) - 90;
  const slope = past > 0 ? Math.tan(radians(past + 3)) : 0;
  const both = [
    ...side(vise, -back, -1, sheet.top, Math.min(slope, 2)),
    ...side(vise, front, 1, sheet.top, 0),
  ];
  return { before: both, after: both };
}

/** A bar with its jaw to one side of the sheet. */
function side(vise: Vise, face: number, way: 1 | -1, top: number, slope: number): readonly Tool[] {
  const at = (x: number) => face + way * x;
  const bar: readonly Point[] = [
    [at(0), -top],
    [at(vise.bar), -top - slope * vise.bar],
    [at(vise.bar), -top - slope * vise.bar - vise.grip],
    [at(0), -top - slope * vise.bar - vise.grip],
  ];
  // the jaws take the bars below what they grip
  const under = -top - slope * vise.bar - vise.grip;
  const [near, far] = way > 0 ? [BAR_LEGS, vise.jaw] : [vise.jaw, BAR_LEGS];
  const jaw = rectangle(at(near), under - TOOL_DEPTH, at(far), under);
  return [
    { name: 'bar', outline: way > 0 ? bar.toReversed() : bar, mounted: false },
    { name: 'jaw', outline: jaw, mounted: false },
  ];
}

const OVER = 3; // mm the jaws stand over the fold

const squeeze = (vise: Vise, back: number, front: number): readonly Tool[] => [
  { name: 'jaw', outline: rectangle(back - JAW, -vise.depth, back, OVER), mounted: false },
  { name: 'jaw', outline: rectangle(front, -vise.depth, front + JAW, OVER), mounted: false },
];
