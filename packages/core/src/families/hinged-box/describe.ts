import type { Description } from '../family.js';
import type { values } from './params.js';

export const describe: Description<typeof values> = {
  title: 'half of a hinged box',
  summary:
    'Body or lid of a crate that opens on a hinge: two of them meet rim on rim, with holes for a hinge in their north walls and for a hasp in their south walls. The lid is drawn upside down. x runs along the length.',
  example: {
    length: 320,
    width: 200,
    height: 90,
    hem: { type: 'closed', length: 10 },
    hinge: { diameter: 4.2, count: 6, edge: 30, below: 18 },
    hasp: { diameter: 4.2, count: 2, edge: 145, below: 20 },
  },
};
