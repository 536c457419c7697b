import type { Description } from '../family.js';
import type { values } from './params.js';

export const describe: Description<typeof values> = {
  title: 'lid with a skirt',
  summary:
    'A plate with a skirt that goes over a box, or drops into it and hangs by a ledge. Drawn upside down: the skirt stands up from the plate. x runs along the length.',
  example: { length: 320, width: 220, depth: 25, hem: { type: 'closed', length: 8 } },
};
