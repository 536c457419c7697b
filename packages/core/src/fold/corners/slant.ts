import type { CornerStyle, Relief } from '../draft/corner-style.js';

/**
 * Slant notch: tabs that share a plane are cut along the mitre between them; any other flange is cut back at 45°
 * from the root. A flange folded flat also keeps `room` free of the neighbour's outside face, for what will
 * stand there.
 * Source of its purpose: NAVEDTRA 14251 (slant notch at hems). 45° at every crossing: common practice, no source.
 */
export function slant(gap: number, room = 0, relief: Relief | null = null): CornerStyle {
  return {
    name: 'slant',
    gap,
    meet: 'mitre',
    root: 'apex',
    relief,
    cuts: ({ start, tangent, angle, meets }) => {
      if (meets) return [{ t: 1, d: 0, c: start }];
      const from = angle > 90 ? Math.max(start, room) : start;
      return [{ t: 1, d: -1, c: from - tangent }];
    },
  };
}
