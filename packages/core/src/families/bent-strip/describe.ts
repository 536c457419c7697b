import type { Description } from '../family.js';

export const describe: Description = {
  title: 'strip with parallel bends',
  summary:
    'An angle, channel, Z, hat or any other strip bent across its width. x runs along the first leg, which stays put.',
  sizes: {
    width: 'along the bends',
    legs: 'outside legs in order, one more than there are bends; over 90° to the outer tangent',
    angles: 'bent through from flat, positive up, -180 to 180',
    insideRadii: "one for all bends, or one each; the sheet's when left out",
  },
  example: { width: 40, legs: [30, 60, 30], angles: [90, 90] },
};
