import type { Description } from '../family.js';

export const describe: Description = {
  title: 'handle',
  summary:
    'A strip with hemmed sides folded up and a tab folded down at each end, to be fixed to the crowns of two ends. x runs along the span.',
  sizes: {
    span: 'over the outside faces of the folded tabs',
    width: 'over the outside faces of the sides',
    sideDepth: 'of the sides, over the hem',
    hem: 'hem along the edge of both sides, folded in; leave out for none',
    'hem.type': 'closed, open, teardrop or none',
    'hem.length': 'finished width of the hem',
    'hem.gap': 'inside gap of an open hem, inside width of a teardrop',
    tabs: 'tabs at both ends, folded down',
    'tabs.length': 'outside length of the tabs',
    'tabs.gap': 'kept between the tabs and the sides at the corners',
  },
  example: {
    span: 398,
    width: 32,
    sideDepth: 14,
    hem: { type: 'closed', length: 8 },
    tabs: { length: 25 },
  },
};
