import type { Description } from '../family.js';
import type { values } from './params.js';

export const describe: Description<typeof values> = {
  title: 'shelf with doubled edges',
  summary:
    'A shelf, its front and back edge turned down and doubled, with tabs at its ends to screw it by. Drawn upside down: the edges stand up. x runs along the length, y from the back to the front.',
  example: {
    length: 500,
    depth: 180,
    edge: { height: 30 },
    ends: { length: 28, holes: { diameter: 5, count: 2, edge: 40 } },
  },
};
