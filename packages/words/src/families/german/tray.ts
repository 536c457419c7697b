import type { FamilyWords } from '../words.js';
import { BOX_CORNER, BOX_DIMENSIONS, BOX_LENGTH, BOX_WIDTH, CORNER_TAB_LENGTH, GAP } from './shared.js';

export const tray: FamilyWords['families']['tray'] = {
  title: 'Schale mit eingezogenem Rand',
  sizes: {
    length: BOX_LENGTH,
    width: BOX_WIDTH,
    height: 'Höhe der Wände, über die Borde',
    dimensions: BOX_DIMENSIONS,
    rim: 'was am Rand jeder Wand nach innen gekantet ist',
    'rim.return': 'Breite des Bords, von der Außenseite der Wand',
    'rim.lip': 'Tiefe einer Lippe, an der Kante des Bords nach unten gekantet; weglassen für keine',
    corner: BOX_CORNER,
    tabs: 'Ecklaschen einer Schale mit Laschen',
    'tabs.length': CORNER_TAB_LENGTH,
    stack: 'Plätze an den vier Ecken für Winkel, die die Schale darüber halten; weglassen für keine',
    'stack.rise': 'wie weit die Winkel über den Rand stehen',
    'stack.play': 'zwischen den Winkeln aufeinander stehender Schalen frei',
    gap: GAP,
  },
};
