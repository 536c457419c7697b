import type { Description } from '../family.js';
import type { values } from './params.js';

export const describe: Description<typeof values> = {
  title: 'rectangular duct',
  summary:
    'A straight piece of duct, wrapped from one sheet or made of two equal halves, with flanges or folds for slips at its ends and lines to cross-break its sides by. x runs along the duct.',
  example: {
    length: 300,
    width: 200,
    height: 120,
    seam: 15,
    ends: { type: 'flanged', width: 20 },
    crossBreak: 'scribed',
  },
};
