import { frozen } from '@tinwright/core/internal';
import { gooseneck, straightPunch, vDie } from './press-shapes.js';
import type { Press } from './shop.js';

/** A small press brake, invented: what its sections look like, and a pattern to draw one's own by. mm, kN */
export const EXAMPLE_PRESS: Press = frozen({
  name: 'press brake',
  length: 1000,
  force: 250,
  punches: [straightPunch('straight', 85), gooseneck('gooseneck', 8)],
  dies: [vDie('V 6', 6, 85, 8), vDie('V 8', 8, 85, 10), vDie('V 12', 12, 85, 13), vDie('V 16', 16, 85, 16)],
  ram: { half: 30, height: 150 },
  bed: { half: 30 },
  backGauge: { least: 8, most: 600, finger: { over: 8, under: 6, length: 60, width: 30 } },
  gaps: { end: 5, inner: 2 },
  overbend: 3,
});
