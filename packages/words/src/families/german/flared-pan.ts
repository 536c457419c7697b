import type { FamilyWords } from '../words.js';
import { CORNER_TAB_LENGTH, GAP } from './shared.js';

export const flaredPan: FamilyWords['families']['flared-pan'] = {
  title: 'Wanne mit schrägen Wänden',
  sizes: {
    bottom: 'des Bodens, zwischen den Linien, in denen sich die Außenseiten von Wänden und Boden treffen',
    'bottom.length': 'Länge des Bodens, entlang x',
    'bottom.width': 'Breite des Bodens, entlang y',
    depth: 'von der Unterseite des Bodens bis zur Oberkante des fertigen Randes',
    flare: 'wie weit jede Wand über die Tiefe nach außen steht; 0 für senkrechte Wände',
    edge: 'Rand: glatt, Umschlag (nach innen) oder Draht (nach außen gerollt)',
    'edge.type': 'glatt, Umschlag oder Draht',
    'edge.length': 'fertige Breite des Umschlags',
    'edge.diameter': 'Durchmesser des Drahts',
    'edge.allowance': 'Blech, das die Rolle braucht; 2,5 Drahtdurchmesser, wenn weggelassen',
    corner: 'auf Gehrung oder gefaltet (Laschen der Nord- und Südwand innen an den anderen)',
    tabs: 'Ecklaschen gefalteter Ecken',
    'tabs.length': CORNER_TAB_LENGTH,
    gap: GAP,
  },
};
