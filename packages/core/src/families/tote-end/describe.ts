import type { Description } from '../family.js';
import type { values } from './params.js';

export const describe: Description<typeof values> = {
  title: 'end with tabs of its own',
  summary:
    'Closes a channel that has no tabs: a plate with straight sides, sloped shoulders and a crown, tabs folded in along its foot and sides, and a hole for a bar to carry it by. x runs along the width, y up.',
  example: {
    width: 197.6,
    shoulderHeight: 100,
    height: 180,
    crownWidth: 70,
    tabs: { length: 16 },
    bar: { diameter: 26, below: 30 },
  },
};
