import type { FamilyWords } from '../words.js';
import { TAB_LENGTH } from './shared.js';

export const offsetCheek: FamilyWords['families']['offset-cheek'] = {
  title: 'Wange einer Kanaletage',
  sizes: {
    offset: 'wie weit der Kanal zur Seite versetzt, quer zu seinen geraden Enden',
    angle: 'beide Knicke, von geradeaus gemessen',
    height: 'über die Außenseiten der Laschen, überall: des Kanals zwischen seinen Mänteln',
    straight: 'der kürzeren geraden Kante, an jedem Ende',
    tabs: 'Laschen an beiden Längsseiten, innen an den Mänteln',
    'tabs.length': TAB_LENGTH,
    'tabs.gap': 'so weit stehen die Laschen an jeder Ecke von der Gehrung zurück',
    hand: 'right (das rechte Ende steht höher, Laschen zum Betrachter) oder left; ein Kanal braucht von jeder eine',
  },
};
