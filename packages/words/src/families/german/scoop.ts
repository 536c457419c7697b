import type { FamilyWords } from '../words.js';
import { GAP, TAB_LENGTH } from './shared.js';

export const scoop: FamilyWords['families']['scoop'] = {
  title: 'Schaufel',
  sizes: {
    length: 'von der Außenseite der Rückwand bis zur Lippe',
    width: 'über die Außenseiten der Seiten, an der Rückwand',
    height: 'Höhe der Rückwand und der Seiten',
    flare: 'wie weit jede Seite über die Länge nach außen steht',
    slope: 'wie weit hinter der Lippe die Seiten ihre Höhe erreichen; die halbe Länge, wenn weggelassen',
    lip: 'Vorderkante des Bodens: glatt, Umschlag (nach unten) oder Draht (nach unten gerollt)',
    'lip.type': 'glatt, Umschlag oder Draht',
    'lip.length': 'fertige Breite des Umschlags',
    'lip.diameter': 'Durchmesser des Drahts',
    tabs: 'Laschen der Rückwand, innen an den Seiten',
    'tabs.length': TAB_LENGTH,
    gap: GAP,
  },
};
