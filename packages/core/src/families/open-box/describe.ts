import type { Description } from '../family.js';
import type { values } from './params.js';

export const describe: Description<typeof values> = {
  title: 'box open at the top',
  summary:
    'A base and four walls, each with its own height and hem if wanted; seed trays, bins and drawers. x runs along the length, west and east walls stand at its ends.',
  example: { length: 320, width: 220, height: 60, corner: 'tabbed', hem: { type: 'closed', length: 10 } },
};
