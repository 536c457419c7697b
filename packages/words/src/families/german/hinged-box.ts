import type { FamilyWords } from '../words.js';
import { BOX_CORNER, BOX_DIMENSIONS, BOX_LENGTH, BOX_WIDTH, CORNER_TAB_LENGTH, GAP } from './shared.js';

export const hingedBox: FamilyWords['families']['hinged-box'] = {
  title: 'Hälfte eines Klappkastens',
  sizes: {
    length: BOX_LENGTH,
    width: BOX_WIDTH,
    height: 'Höhe dieser Hälfte, über das am Rand Gekantete',
    dimensions: BOX_DIMENSIONS,
    hem: 'Umschlag an jedem Rand, nach innen; weglassen für keinen',
    ledge: 'Plätze an West- und Ostwand für Winkel, die einen Einsatz tragen; weglassen für keine',
    'ledge.height': 'von der Unterseite bis dahin, wo der Einsatz steht',
    'ledge.leg': 'Höhe der Winkel, an der Wand',
    corner: BOX_CORNER,
    tabs: 'Ecklaschen eines Kastens mit Laschen',
    'tabs.length': CORNER_TAB_LENGTH,
    gap: GAP,
  },
};
