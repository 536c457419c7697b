import type { FamilyWords } from '../words.js';
import { TAB_LENGTH } from './shared.js';

export const hemmedChannel: FamilyWords['families']['hemmed-channel'] = {
  title: 'Kanal mit umgeschlagenen Seiten',
  sizes: {
    length: 'zwischen den Außenseiten der gekanteten Endlaschen',
    width: 'über die Außenseiten der Seiten',
    height: 'Höhe der Seiten, über den Umschlag',
    hem: 'Umschlag am Rand beider Seiten, nach innen; weglassen für keinen',
    endTabs: 'Laschen an beiden Enden; weglassen für offene Enden',
    'endTabs.length': TAB_LENGTH,
    'endTabs.on': 'Flächen mit Laschen: base, north, south',
    'endTabs.notch':
      'schräg (45° oder die Gehrung zwischen Laschen), rechtwinklig oder mit Freibohrung im Grund',
    'endTabs.gap': 'zwischen benachbarten Laschen frei',
    'endTabs.room': 'Dicke dessen, was an den Laschen anliegt; eine Blechdicke, wenn weggelassen',
  },
};
