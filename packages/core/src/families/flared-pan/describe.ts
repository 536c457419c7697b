import type { Description } from '../family.js';

export const describe: Description = {
  title: 'pan with walls that lean out',
  summary:
    'A bottom and four walls that lean out alike, the rim plain, hemmed or rolled round a wire; drip pans, scoops and trays that stack. x runs along the length.',
  sizes: {
    bottom: 'of the bottom, between the lines where the outside faces of walls and bottom meet',
    'bottom.length': 'of the bottom, along x',
    'bottom.width': 'of the bottom, along y',
    depth: 'from under the bottom to the top of the finished rim',
    flare: 'how far each wall leans out over the depth; 0 for upright walls',
    edge: 'rim: plain, hem (folded in) or wire (rolled outwards)',
    'edge.type': 'plain, hem or wire',
    'edge.length': 'finished width of the hem',
    'edge.diameter': 'diameter of the wire',
    'edge.allowance': 'flat metal the roll takes; 2.5 wire diameters when left out',
    corner: 'mitred, or folded (tabs of the north and south walls inside the other two)',
    tabs: 'corner tabs of folded corners',
    'tabs.length': 'outside length of the corner tabs',
    gap: 'kept between neighbours at the corners',
  },
  example: {
    bottom: { length: 280, width: 180 },
    depth: 50,
    flare: 15,
    edge: { type: 'wire', diameter: 3 },
  },
};
