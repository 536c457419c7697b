import type { FamilyWords } from '../words.js';
import { TAB_LENGTH } from './shared.js';

export const divider: FamilyWords['families']['divider'] = {
  title: 'Trennwand für einen Kasten',
  sizes: {
    length: 'über die Außenseiten der Laschen, oder von Ende zu Ende',
    height: 'Höhe der Platte',
    tabs: 'Laschen an beiden Enden; weglassen für keine',
    'tabs.length': TAB_LENGTH,
    slots: 'Schlitze für kreuzende Trennwände; weglassen für keine',
    'slots.at': 'Mitte jedes Schlitzes vom Westende, der Reihe nach',
    'slots.from': 'oben oder unten: die Kante, von der sie geschnitten sind; was kreuzt, hat die andere',
    'slots.crossing': 'Dicke dessen, was kreuzt; eine Blechdicke, wenn weggelassen',
    'slots.clearance': 'Spiel quer im Schlitz und darunter',
    cornerNip: 'wie weit die unteren Ecken zurückstehen',
  },
};
