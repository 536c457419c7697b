import type { FormerBlock } from '@tinwright/shop';
import { TOOL_DEPTH } from '@tinwright/shop/internal';
import { type Machine, rectangle, type Tool } from './tool.js';

const BATTEN = 30; // mm high, as it is drawn

/** A block on the sheet at the edge of the bench, held down by a batten across its top. @param face of the block, mm behind the corner */
export function formerMachine({ width, height }: FormerBlock, face: number, thickness: number): Machine {
  const top = thickness + height;
  const both: readonly Tool[] = [
    { name: 'bench', outline: rectangle(-TOOL_DEPTH, -TOOL_DEPTH, 0, 0), mounted: false },
    { name: 'block', outline: rectangle(-width, thickness, -face, top), mounted: false },
    { name: 'batten', outline: rectangle(-width, top, -face, top + BATTEN), mounted: false },
  ];
  return { before: both, after: both };
}
