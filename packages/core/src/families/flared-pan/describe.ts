import type { Description } from '../family.js';
import type { values } from './params.js';

export const describe: Description<typeof values> = {
  title: 'pan with walls that lean out',
  summary:
    'A bottom and four walls that lean out alike, the rim plain, hemmed or rolled round a wire; drip pans, scoops and trays that stack. x runs along the length.',
  example: {
    bottom: { length: 280, width: 180 },
    depth: 50,
    flare: 15,
    edge: { type: 'wire', diameter: 3 },
  },
};
