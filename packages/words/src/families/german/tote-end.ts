import type { FamilyWords } from '../words.js';
import { CROWN, TAB_LENGTH } from './shared.js';

export const toteEnd: FamilyWords['families']['tote-end'] = {
  title: 'Stirnblech mit eigenen Laschen',
  sizes: {
    width: 'über die Außenseiten der Seitenlaschen',
    shoulderHeight: 'von der Unterkante bis zum Beginn der Schrägen; so hoch sind die Seitenlaschen',
    height: 'von der Unterkante bis zur Oberkante',
    crownWidth: CROWN,
    tabs: 'Laschen am Fuß und an den Seiten',
    'tabs.length': TAB_LENGTH,
    'tabs.gap': 'zwischen benachbarten Laschen frei',
    bar: 'Loch für eine runde Stange; weglassen für keines',
    'bar.diameter': 'Durchmesser des Lochs',
    'bar.below': 'von der Oberkante bis zur Lochmitte',
  },
};
