import type { Description } from '../family.js';
import type { values } from './params.js';

export const describe: Description<typeof values> = {
  title: 'end with a gusset crown',
  summary:
    'A flat plate that closes a channel: straight sides to the shoulder, slopes to a flat crown that holds a handle, lower corners nipped to clear the bends it stands in. x runs along the width, y up.',
  example: { width: 197.6, shoulderHeight: 53, height: 120, crownWidth: 60, cornerNip: 'auto' },
};
