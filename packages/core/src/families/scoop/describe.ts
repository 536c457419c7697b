import type { Description } from '../family.js';
import type { values } from './params.js';

export const describe: Description<typeof values> = {
  title: 'scoop',
  summary:
    'A scoop for compost or grit: a bottom that widens towards a hemmed or rolled lip, sloping sides, and a back to carry a handle. x runs from the back to the lip.',
  example: {
    length: 220,
    width: 130,
    height: 80,
    flare: 20,
    slope: 110,
    lip: { type: 'hem', length: 10 },
    tabs: { length: 18 },
  },
};
