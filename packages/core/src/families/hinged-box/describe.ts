import type { Description } from '../family.js';
import type { values } from './params.js';

export const describe: Description<typeof values> = {
  title: 'half of a hinged box',
  summary:
    'Body or lid of a crate that opens on a hinge: two of them meet rim on rim, and bought hinges and a hasp make their holes in the walls they stand on. The lid is drawn upside down. x runs along the length.',
  example: {
    length: 320,
    width: 200,
    height: 90,
    hem: { type: 'closed', length: 10 },
  },
};
