import type { Description } from '../family.js';

export const describe: Description = {
  title: 'divider for a box',
  summary:
    'A flat divider that stands in a box, with tabs at its ends to fasten it by and slots where others cross it. x runs along the length, y up.',
  sizes: {
    length: 'over the outside faces of the tabs, or from end to end',
    height: 'of the plate',
    tabs: 'tabs at both ends; leave out for none',
    'tabs.length': 'outside length of the tabs',
    slots: 'slots for dividers that cross; leave out for none',
    'slots.at': 'middle of each slot, from the west end, in order',
    'slots.from': 'top or bottom: the edge they are cut from; what crosses has the other',
    'slots.crossing': 'thickness of what crosses; one sheet when left out',
    'slots.clearance': 'play across a slot and below it',
    cornerNip: 'how far the lower corners give way: auto clears the inside radius of the box, 0 for none',
  },
  example: { length: 316, height: 50, tabs: { length: 15 }, slots: { at: [106, 212], from: 'top' } },
};
