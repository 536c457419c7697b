import type { Description } from '../family.js';
import type { values } from './params.js';

export const describe: Description<typeof values> = {
  title: 'handle',
  summary:
    'A strip with hemmed sides folded up and a tab folded down at each end, to be fixed to the crowns of two ends. x runs along the span.',
  example: {
    span: 398,
    width: 32,
    sideDepth: 14,
    hem: { type: 'closed', length: 8 },
    tabs: { length: 25 },
  },
};
