import type { CornerStyle, Relief } from '../draft/corner-style.js';

/**
 * Square notch: both flanges end straight at the neighbour's tangent line, further back where the gap asks for it;
 * a tab that would lie over a flange of the host starts above it.
 * Source of its purpose: NAVEDTRA 14251 (square notch for boxes).
 */
export function square(gap: number, relief: Relief | null = null): CornerStyle {
  return {
    name: 'square',
    gap,
    meet: 'butt',
    root: 'straight',
    relief,
    cuts: ({ start, edge, thickness }) => [
      { t: 1, d: 0, c: edge === null ? Math.max(start, roomOfTab(start, thickness, gap)) : start },
    ],
  };
}

/**
 * A tab starts a gap over the host's inside, its bend's tangent line may lie nearer. On the flat it lies beside the
 * neighbour, where a rule without setback leaves nothing between them: there the gap is enough.
 */
const roomOfTab = (start: number, thickness: number, gap: number): number =>
  start === 0 ? gap : thickness + gap;
