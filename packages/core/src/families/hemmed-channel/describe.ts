import type { Description } from '../family.js';

export const describe: Description = {
  title: 'channel with hemmed sides',
  summary:
    'The body of a carrier or a tray: a base, two sides with hemmed rims, and a ring of tabs at each end for an end to stand against. x runs along the length.',
  sizes: {
    length: 'between the outside faces of the folded end tabs',
    width: 'over the outside faces of the sides',
    height: 'of the sides, over the hem',
    hem: 'hem along the rim of both sides, folded in; leave out for none',
    'hem.type': 'closed, open, teardrop or none',
    'hem.length': 'finished width of the hem',
    'hem.gap': 'inside gap of an open hem, inside width of a teardrop',
    endTabs: 'tabs at both ends; leave out for open ends',
    'endTabs.length': 'outside length of the tabs',
    'endTabs.on': 'which panels carry tabs: base, north, south',
    'endTabs.notch':
      'slant (45° or the mitre between tabs), square, or relief (slant with a round hole at the root)',
    'endTabs.gap': 'kept between neighbouring tabs',
    'endTabs.room': 'thickness of what will stand against the tabs; one sheet when left out',
  },
  example: {
    length: 400,
    width: 200,
    height: 55,
    hem: { type: 'closed', length: 15 },
    endTabs: { length: 18 },
  },
};
