import type { FamilyWords } from '../words.js';
import { flaredPan } from './flared-pan.js';

export const hopper: FamilyWords['families']['hopper'] = {
  title: 'Trichter',
  sizes: {
    ...flaredPan.sizes,
    throat: 'rechteckige Öffnung im Boden',
    'throat.length': 'der Öffnung, entlang x',
    'throat.width': 'der Öffnung, entlang y',
    'throat.west': 'vom Westrand des Bodens bis zur Öffnung; ohne Angabe in der Mitte',
    'throat.south': 'vom Südrand des Bodens bis zur Öffnung; ohne Angabe in der Mitte',
  },
};
