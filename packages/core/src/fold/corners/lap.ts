import type { CornerStyle, Relief } from '../draft/corner-style.js';

/**
 * Closed corner of two upright walls: the walls on the `over` edges run to the outside and cover the ends of the
 * others, which stop a gap short of them.
 */
export function lap(over: readonly string[], gap: number, relief: Relief | null = null): CornerStyle {
  return {
    name: 'lap',
    gap,
    meet: 'none',
    root: 'straight',
    relief,
    cuts: ({ edge, thickness }) => [
      { t: 1, d: 0, c: edge !== null && over.includes(edge) ? 0 : thickness + gap },
    ],
  };
}
