import type { Description } from '../family.js';
import type { values } from './params.js';

export const describe: Description<typeof values> = {
  title: 'channel with hemmed sides',
  summary:
    'The body of a carrier or a tray: a base, two sides with hemmed rims, and a ring of tabs at each end for an end to stand against. x runs along the length.',
  example: {
    length: 400,
    width: 200,
    height: 55,
    hem: { type: 'closed', length: 15 },
    endTabs: { length: 18 },
  },
};
