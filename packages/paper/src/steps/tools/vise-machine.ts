import { type Point, radians } from '@tinwright/core';
import type { BendStep, Vise } from '@tinwright/shop';
import { DEEP, type Machine, rectangle, type Tool } from './tool.js';

const BAR = 16; // mm, thickness of a folding bar as it is drawn
const JAW = 22; // mm
const LOWER = 4; // mm the jaws lie under the top of the bars
const APART = 12; // mm to either side of what is put in, before a hem is closed

/** What is bent in a vise, mm: `top` is the held tangent line below the corner, `hem` the thickness of a closed hem. */
export interface ViseSheet {
  readonly thickness: number;
  readonly top: number;
  readonly hem: readonly [before: number, after: number];
}

/** A vise with folding bars: the held side hangs between them. To close a hem its jaws do without bars. */
export function viseMachine(vise: Vise, step: BendStep, sheet: ViseSheet): Machine {
  if (step.action === 'close') {
    const [open, closed] = sheet.hem;
    return { before: squeeze(vise, -open - APART, APART), after: squeeze(vise, -closed, 0) };
  }
  // beyond a right angle the free side comes down behind the bar
  const slope = Math.tan(radians(Math.max(0, step.angle - 90) + (step.angle > 90 ? 3 : 0)));
  const both = [
    ...side(vise, -sheet.thickness, -1, sheet.top, Math.min(slope, 2)),
    ...side(vise, 0, 1, sheet.top, 0),
  ];
  return { before: both, after: both };
}

/** A bar with its jaw to one side of the sheet. */
function side(vise: Vise, face: number, way: 1 | -1, top: number, slope: number): readonly Tool[] {
  const at = (x: number) => face + way * x;
  const bar: readonly Point[] = [
    [at(0), -top],
    [at(BAR), -top - slope * BAR],
    [at(BAR), -top - slope * BAR - Math.max(vise.grip, 8)],
    [at(0), -top - slope * BAR - Math.max(vise.grip, 8)],
  ];
  const under = -top - slope * BAR - LOWER;
  const jaw = rectangle(at(way > 0 ? BAR : BAR + JAW), under - DEEP, at(way > 0 ? BAR + JAW : BAR), under);
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
