import type { FamilyWords } from '../words.js';
import { CORNER_TAB_LENGTH, GAP } from './shared.js';

export const drawer: FamilyWords['families']['drawer'] = {
  title: 'Schublade mit Laufborden und Griff',
  sizes: {
    width: 'über die Außenseiten der Seiten',
    depth: 'über die Außenseiten von Front und Rückwand',
    height: 'Höhe der Seiten und der Rückwand',
    front: 'Höhe der Front; so hoch wie die Seiten, wenn weggelassen',
    runners:
      'Borde am Rand der Seiten, nach außen gekantet, auf denen die Schublade läuft; weglassen für keine',
    'runners.over': 'Breite über beide Borde',
    pull: 'womit sie geöffnet wird: nichts, Lippe (Rand der Front nach außen und unten) oder Löcher für einen Griff',
    'pull.type': 'nichts, Lippe oder Löcher',
    'pull.depth': 'wie weit die Lippe vor der Front steht',
    'pull.drop': 'wie weit sie nach unten reicht, von ihrer Oberseite',
    'pull.diameter': 'Durchmesser jedes der beiden Löcher',
    'pull.spacing': 'zwischen ihren Mitten',
    'pull.below': 'vom Rand der Front bis zu ihren Mitten',
    hem: 'Umschlag am Rand der Rückwand und der Front ohne Lippe, nach innen; weglassen für keinen',
    corner: 'offen (rechtwinklig ausgeklinkt) oder mit Laschen (von Front und Rückwand hinter den Seiten)',
    tabs: 'Ecklaschen einer Schublade mit Laschen',
    'tabs.length': CORNER_TAB_LENGTH,
    gap: GAP,
  },
};
