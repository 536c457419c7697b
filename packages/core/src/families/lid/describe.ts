import type { Description } from '../family.js';

export const describe: Description = {
  title: 'lid with a skirt',
  summary:
    'A plate with a skirt that goes over a box, or drops into it and hangs by a ledge. Drawn upside down: the skirt stands up from the plate. x runs along the length.',
  sizes: {
    length: 'of what it covers, outside; of the opening it drops into, inside',
    width: 'of what it covers, outside; of the opening it drops into, inside',
    depth: 'from the top of the plate to the edge of the skirt',
    fit: 'over (the skirt outside of the box) or inside (the skirt in the opening, the plate on its rim)',
    clearance: 'play between skirt and box on every side: auto clears the inside of the bend and the hem',
    hem: 'hem on the edge of the skirt, folded in; leave out for none',
    'hem.type': 'closed, open, teardrop or none',
    'hem.length': 'finished width of the hem',
    'hem.gap': 'inside gap of an open hem, inside width of a teardrop',
    ledge: 'how far the plate of a lid that drops in reaches past its skirt',
    corner: 'of a lid that goes over: open, or lap (north and south skirts cover the ends of the others)',
    gap: 'kept between neighbours at the corners',
  },
  example: { length: 320, width: 220, depth: 25, hem: { type: 'closed', length: 8 } },
};
