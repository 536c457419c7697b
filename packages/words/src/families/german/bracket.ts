import type { FamilyWords } from '../words.js';
import { ROW_EDGE } from './shared.js';

export const bracket: FamilyWords['families']['bracket'] = {
  title: 'Winkel mit Löchern',
  sizes: {
    profile: 'angle (eine Kantung), z (zwei, die zweite zurück) oder u (zwei in derselben Richtung)',
    width: 'Breite entlang der Kantungen',
    base: 'äußerer Schenkel, der flach liegt, vom freien Ende bis zur ersten Kantung',
    web: 'äußerer Schenkel zwischen den Kantungen eines Z oder U',
    leg: 'äußerer Schenkel am Ende des Winkels',
    angle: 'jede Kantung, von flach an gemessen',
    holes: 'Löcher in einer Reihe quer über Grund und letzten Schenkel; weglassen für keine',
    'holes.diameter': 'Durchmesser jedes Lochs',
    'holes.count': 'in jedem Schenkel',
    'holes.inset': 'vom freien Ende eines Schenkels bis zur Mitte seiner Löcher',
    'holes.edge': ROW_EDGE,
  },
};
