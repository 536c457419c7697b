import type { Description } from '../family.js';
import type { values } from './params.js';

export const describe: Description<typeof values> = {
  title: 'strip with parallel bends',
  summary:
    'An angle, channel, Z, hat or any other strip bent across its width. x runs along the first leg, which stays put.',
  example: { width: 40, legs: [30, 60, 30], angles: [90, 90] },
};
