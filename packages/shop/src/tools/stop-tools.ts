import type { Die, GaugeFinger } from '../machines/shop.js';
import { type Convex, rectangle } from '../sweep/polygon.js';
import { TOOL_DEPTH } from './margin.js';

/** mm that what lies against a stop may push into it: sheet and stop give. Judgement. */
export const STOP_GIVES = 0.75;

/**
 * Sections of a finger of a back gauge as convex pieces: x forward from the punch line, z up from the top of the die, with
 * which it rises. Where it stands nearer than the die is wide, it lies on the die.
 * @param setting from the punch line back to its front, mm
 */
export function fingerSection(
  { over, under, length }: GaugeFinger,
  { section }: Pick<Die, 'section'>,
  setting: number,
): readonly Convex[] {
  const rear = Math.min(...section.map((p) => p[0]));
  const low = -setting > rear ? 0 : -under;
  const front = -setting - STOP_GIVES;
  return [
    rectangle(-setting - length, low, front, over),
    rectangle(-setting - length - TOOL_DEPTH, -TOOL_DEPTH, -setting - length, over),
  ];
}

/** Section of the rear stop on the bed of a leaf brake. @param front forward of the hinge, mm */
export const rearStopSection = (height: number, front: number): readonly Convex[] => [
  rectangle(front - TOOL_DEPTH, 0, front - STOP_GIVES, height),
];

/** Of a rear stop along the line, mm; judgement. */
export const REAR_STOP_WIDTH = 30;
