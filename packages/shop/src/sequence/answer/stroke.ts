import type { FlatBend } from '@tinwright/core';
import type { Action } from '../part/operations.js';
import { endForEnd } from '../search/turns.js';
import type { BendStep, BendStroke, Handling, PatternSide } from './plan.js';

/** What is bent, of bends that are alike. */
export function strokeOf(action: Action, bends: readonly FlatBend[]): BendStroke {
  const [{ direction, insideRadius, hem }] = bends as readonly [FlatBend];
  return { action, bends: bends.map((b) => b.id), direction, insideRadius, hem };
}

/** From x, the right side of the pattern, counter-clockwise in eighths of a turn. */
const SIDES: readonly PatternSide[] = [
  'right',
  'far-right',
  'far',
  'far-left',
  'left',
  'near-left',
  'near',
  'near-right',
];
const EXACT = 0.5; // degrees

/** The side of the pattern in a direction on it, degrees from its x axis. */
export function towardsOf(heading: number): BendStep['towards'] {
  const eighth = Math.round(heading / 45);
  const side = SIDES[((eighth % 8) + 8) % 8] as PatternSide;
  return { side, roughly: Math.abs(heading - 45 * eighth) >= EXACT };
}

interface Lying extends Pick<BendStep, 'faceUp' | 'heading'> {
  readonly station: BendStep['machine'];
}

/** How a part gets from where it lay to where it lies; in a vise it hangs. */
export function handlingOf(before: Lying | null, now: Lying): Handling {
  if (before === null) return { over: null, round: null };
  const ends = before.faceUp !== now.faceUp && endForEnd(before, now);
  const over = before.faceUp === now.faceUp ? null : ends ? 'end-for-end' : 'sidewise';
  if (now.station === 'vise' || before.station === 'vise') return { over, round: null };
  const by = (before.heading + (ends ? 180 : 0) - now.heading) * (now.faceUp === 'marked' ? 1 : -1);
  const turn = ((Math.round(by) % 360) + 360) % 360;
  return { over, round: turn === 90 ? 90 : turn === 180 ? 180 : turn === 270 ? -90 : null };
}
