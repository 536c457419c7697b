import type { Description } from '../family.js';

export const describe: Description = {
  title: 'box open at the top',
  summary:
    'A base and four walls, each with its own height and hem if wanted; seed trays, bins and drawers. x runs along the length, west and east walls stand at its ends.',
  sizes: {
    length: 'between the west and east walls, outside or inside as `dimensions` says',
    width: 'between the south and north walls',
    height: 'of all walls, over what is folded at the rim',
    heights: 'walls that differ: north, south, east, west',
    'heights.north': 'height of the north wall',
    'heights.south': 'height of the south wall',
    'heights.east': 'height of the east wall',
    'heights.west': 'height of the west wall',
    dimensions: 'outside or inside: how length, width and heights are meant',
    corner:
      'open (square notch), lap (north and south walls cover the ends of the others), tabbed (tabs behind the west and east walls)',
    tabs: 'corner tabs of a tabbed box',
    'tabs.length': 'outside length of the corner tabs',
    hem: 'hem on every rim, folded in: type, length, gap',
    'hem.type': 'closed, open, teardrop or none',
    'hem.length': 'finished width of the hem',
    'hem.gap': 'inside gap of an open hem, inside width of a teardrop',
    hems: 'a hem for each wall on its own; walls left out have none',
    flangeReturn: 'flange folded in at the rim of every wall; hems then sit on its edge',
    relief: 'none, hole or slot at the root of the corners',
    gap: 'kept between neighbours at the corners',
  },
  example: { length: 320, width: 220, height: 60, corner: 'tabbed', hem: { type: 'closed', length: 10 } },
};
