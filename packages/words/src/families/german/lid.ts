import type { FamilyWords } from '../words.js';
import { GAP } from './shared.js';

export const lid: FamilyWords['families']['lid'] = {
  title: 'Deckel mit Zarge',
  sizes: {
    length: 'Länge dessen, was er deckt, außen; der Öffnung, in die er fällt, innen',
    width: 'Breite dessen, was er deckt, außen; der Öffnung, in die er fällt, innen',
    depth: 'von der Oberseite der Platte bis zur Kante der Zarge',
    fit: 'darüber (Zarge außen um den Kasten) oder darin (Zarge in der Öffnung, Platte auf dem Rand)',
    clearance: 'Spiel zwischen Zarge und Kasten auf jeder Seite',
    hem: 'Umschlag an der Kante der Zarge, nach innen; weglassen für keinen',
    ledge: 'wie weit die Platte eines Deckels, der hineinfällt, über die Zarge steht',
    corner:
      'eines Deckels, der darüber geht: offen oder überlappt (Nord- und Südzarge decken die Enden der anderen)',
    gap: GAP,
  },
};
