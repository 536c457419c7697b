import type { Description } from '../family.js';
import type { values } from './params.js';

export const describe: Description<typeof values> = {
  title: 'hopper',
  summary:
    'Four walls that lean out over a ledge with a rectangular throat, closed by corner tabs; for potting compost over a bench or seed over a tray. x runs along the length.',
  example: {
    bottom: { length: 120, width: 90 },
    depth: 70,
    flare: 25,
    throat: { length: 90, width: 60 },
    tabs: { length: 12 },
  },
};
