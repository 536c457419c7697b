import type { Description } from '../family.js';
import type { values } from './params.js';

export const describe: Description<typeof values> = {
  title: 'bracket with holes',
  summary:
    'An angle, a Z or a U to fix one thing to another, with a row of holes in its base and in its last leg. x runs from the free end of the base to the first bend, y along the bends.',
  example: { width: 60, base: 40, leg: 50, holes: { diameter: 5, count: 2, inset: 15 } },
};
