import type { Description } from '../family.js';
import type { values } from './params.js';

export const describe: Description<typeof values> = {
  title: 'cover with vents',
  summary:
    'A cover that goes over a base and is screwed to it through its sides, or by tabs to what is behind, with fields of holes for air. Drawn upside down: the sides stand up from the plate. x runs along the length.',
  example: {
    length: 180,
    width: 120,
    height: 60,
    overlap: 20,
    vents: { diameter: 4, pitch: 10, columns: 8, rows: 4 },
    tabs: { length: 18, diameter: 5 },
  },
};
