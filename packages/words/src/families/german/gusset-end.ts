import type { FamilyWords } from '../words.js';
import { CROWN } from './shared.js';

export const gussetEnd: FamilyWords['families']['gusset-end'] = {
  title: 'Stirnblech mit schrägen Schultern',
  sizes: {
    width: 'über die geraden Seiten',
    shoulderHeight: 'von der Unterkante bis zum Beginn der Schrägen',
    height: 'von der Unterkante bis zur Oberkante',
    crownWidth: CROWN,
    cornerNip: 'Schenkel des 45°-Schnitts an den unteren Ecken',
  },
};
