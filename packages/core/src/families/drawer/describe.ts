import type { Description } from '../family.js';
import type { values } from './params.js';

export const describe: Description<typeof values> = {
  title: 'drawer with runners and a pull',
  summary:
    'A drawer for a bench or a rack: it slides on flanges at the rims of its sides and is opened by a lip or a handle. The front is at y = 0, x runs along it.',
  example: {
    width: 200,
    depth: 260,
    height: 70,
    front: 80,
    runners: { over: 230 },
    pull: { type: 'lip', depth: 22, drop: 14 },
    hem: { type: 'closed', length: 8 },
  },
};
