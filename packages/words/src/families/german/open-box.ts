import type { FamilyWords } from '../words.js';
import { BOX_LENGTH, BOX_WIDTH, CORNER_TAB_LENGTH, GAP } from './shared.js';

export const openBox: FamilyWords['families']['open-box'] = {
  title: 'oben offener Kasten',
  sizes: {
    length: BOX_LENGTH,
    width: BOX_WIDTH,
    height: 'Höhe aller Wände, über das am Rand Gekantete',
    heights: 'Wände, die abweichen: north, south, east, west',
    'heights.north': 'Höhe der Nordwand',
    'heights.south': 'Höhe der Südwand',
    'heights.east': 'Höhe der Ostwand',
    'heights.west': 'Höhe der Westwand',
    dimensions: 'außen oder innen: wie Länge, Breite und Höhen gemeint sind',
    corner:
      'offen (rechtwinklig ausgeklinkt), überlappt (Nord- und Südwand decken die Enden der anderen), mit Laschen (hinter West- und Ostwand)',
    tabs: 'Ecklaschen eines Kastens mit Laschen',
    'tabs.length': CORNER_TAB_LENGTH,
    hem: 'Umschlag an jedem Rand, nach innen: Art, Länge, Spalt',
    hems: 'ein Umschlag für jede Wand; weggelassene Wände haben keinen',
    'hems.north': 'der Nordwand',
    'hems.south': 'der Südwand',
    'hems.east': 'der Ostwand',
    'hems.west': 'der Westwand',
    flangeReturn: 'Bord am Rand jeder Wand, nach innen; Umschläge sitzen dann an dessen Kante',
    relief: 'nichts, Loch oder Schlitz im Grund der Ecken',
    gap: GAP,
  },
};
