import type { CornerStyle, Relief } from '../corner-style.js';

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
    // a tab lies beside the neighbour on the flat too, where a rule without setback leaves nothing between them
    cuts: ({ start, edge }) => [{ t: 1, d: 0, c: edge === '' ? Math.max(start, gap) : start }],
  };
}
