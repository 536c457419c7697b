import type { Description } from '../family.js';
import type { values } from './params.js';

export const describe: Description<typeof values> = {
  title: 'cheek of an offset duct',
  summary:
    'One flat side of the fitting that steps a rectangular duct aside: straight, slanted, straight, with tabs for the two wrappers, strips with parallel bends. x runs along the straight ends.',
  example: { offset: 80, angle: 30, height: 120, straight: 60, tabs: { length: 15 } },
};
