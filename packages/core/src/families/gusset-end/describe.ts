import type { Description } from '../family.js';

export const describe: Description = {
  title: 'end with a gusset crown',
  summary:
    'A flat plate that closes a channel: straight sides to the shoulder, slopes to a flat crown that holds a handle, lower corners nipped to clear the bends it stands in. x runs along the width, y up.',
  sizes: {
    width: 'over the straight sides',
    shoulderHeight: 'from the lower edge to where the slopes start',
    height: 'from the lower edge to the crown',
    crownWidth: 'of the flat top',
    cornerNip: 'leg of the 45° cut at the lower corners: auto clears the inside radius, 0 for none',
  },
  example: { width: 197.6, shoulderHeight: 53, height: 120, crownWidth: 60, cornerNip: 'auto' },
};
