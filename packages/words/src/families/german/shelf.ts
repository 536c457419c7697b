import type { FamilyWords } from '../words.js';
import { GAP, ROW_EDGE, TAB_LENGTH } from './shared.js';

export const shelf: FamilyWords['families']['shelf'] = {
  title: 'Regalboden mit gedoppelten Kanten',
  sizes: {
    length: 'über die Außenseiten der Endlaschen',
    depth: 'über die Außenseiten von Vorder- und Hinterkante',
    edge: 'Vorder- und Hinterkante, nach unten gekantet und gedoppelt',
    'edge.height': 'von der Oberseite des Bodens bis zur Umschlagkante',
    'edge.fold':
      'wie weit das Blech innen wieder hinaufreicht; so weit die Kantung Platz lässt, wenn weggelassen',
    ends: 'Laschen an beiden Enden, nach unten gekantet; weglassen für keine',
    'ends.length': TAB_LENGTH,
    'ends.holes': 'eine Reihe Löcher in jeder Lasche; weglassen für keine',
    'ends.holes.diameter': 'Durchmesser jedes Lochs',
    'ends.holes.count': 'in jeder Lasche',
    'ends.holes.edge': ROW_EDGE,
    gap: GAP,
  },
};
