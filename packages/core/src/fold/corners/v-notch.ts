import type { CornerStyle, Relief } from '../draft/corner-style.js';

/**
 * V notch: flanges that come together when the panels they hang on are bent are cut along the plane between them, so
 * that a bend of 90° opens a V of 90°, another angle another V. Nothing else is cut.
 * Source of its purpose: NAVEDTRA 14251 and R. Singh, Basic Manufacturing Processes (V notch where inside flanges
 * meet, 90° or as the corner is).
 */
export function vNotch(gap: number, relief: Relief | null = null): CornerStyle {
  return { name: 'v', gap, meet: 'mitre', root: 'apex', relief, cuts: () => [] };
}
