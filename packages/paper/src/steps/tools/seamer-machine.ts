import { radians } from '@tinwright/core/internal';
import type { BendStep, HandSeamer } from '@tinwright/shop';
import { bentTo } from '@tinwright/shop/internal';
import { type Machine, rectangle, type Tool, turned } from './tool.js';

const OFF = 1; // mm the tips of the jaws stand off the line, so that they are told from the bend

/** Pliers with wide jaws round the side that turns, their tips at the line. */
export function seamerMachine({ depth, jaw }: HandSeamer, step: BendStep, thickness: number): Machine {
  const at = (turn: number): readonly Tool[] =>
    [rectangle(OFF + thickness, thickness, depth, thickness + jaw), rectangle(OFF, -jaw, depth, 0)].map(
      (outline): Tool => ({ name: 'jaw', outline: turned(outline, radians(turn)), mounted: false }),
    );
  return { before: at(0), after: at(bentTo(step)) };
}
