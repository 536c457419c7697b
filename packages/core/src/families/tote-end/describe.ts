import type { Description } from '../family.js';

export const describe: Description = {
  title: 'end with tabs of its own',
  summary:
    'Closes a channel that has no tabs: a plate with straight sides, sloped shoulders and a crown, tabs folded in along its foot and sides, and a hole for a bar to carry it by. x runs along the width, y up.',
  sizes: {
    width: 'over the outside faces of the side tabs',
    shoulderHeight: 'from the lower edge to where the slopes start; the side tabs are as high',
    height: 'from the lower edge to the crown',
    crownWidth: 'of the flat top',
    tabs: 'tabs along the foot and the sides',
    'tabs.length': 'outside length of the tabs',
    'tabs.gap': 'kept between neighbouring tabs',
    bar: 'hole for a round bar; leave out for none',
    'bar.diameter': 'of the hole',
    'bar.below': 'from the crown to the middle of the hole',
  },
  example: {
    width: 197.6,
    shoulderHeight: 100,
    height: 180,
    crownWidth: 70,
    tabs: { length: 16 },
    bar: { diameter: 26, below: 30 },
  },
};
