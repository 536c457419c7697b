import type { Description } from '../family.js';
import type { values } from './params.js';

export const describe: Description<typeof values> = {
  title: 'divider for a box',
  summary:
    'A flat divider that stands in a box, with tabs at its ends to fasten it by and slots where others cross it. x runs along the length, y up.',
  example: { length: 316, height: 50, tabs: { length: 15 }, slots: { at: [106, 212], from: 'top' } },
};
