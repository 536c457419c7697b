import type { CornerStyle, Relief } from '../draft/corner-style.js';

/** Closed corner: the flanges run on to the bisecting plane between them and stop half the gap short of it. */
export function mitre(gap: number, relief: Relief | null = null): CornerStyle {
  return { name: 'mitre', gap, meet: 'mitre', root: 'straight', relief, cuts: () => [] };
}
