import type { Description } from '../family.js';
import type { values } from './params.js';

export const describe: Description<typeof values> = {
  title: 'tray with a returned rim',
  summary:
    'A tray with its rim folded inwards all round, stiff and without a sharp edge, that stacks on others by angles at its corners. x runs along the length.',
  example: { length: 300, width: 200, height: 50, rim: { return: 14 }, stack: { rise: 10 } },
};
