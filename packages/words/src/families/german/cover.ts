import type { FamilyWords } from '../words.js';
import { GAP, ROW_EDGE } from './shared.js';

export const cover: FamilyWords['families']['cover'] = {
  title: 'Haube mit Lüftung',
  sizes: {
    length: 'Länge der Grundplatte, auf die sie geht, außen',
    width: 'Breite der Grundplatte, auf die sie geht, außen',
    height: 'von der Oberseite der Platte bis zur Kante der Seiten',
    overlap: 'Höhe der Wände der Grundplatte, über die die Seiten reichen; die halbe Höhe, wenn weggelassen',
    clearance: 'Spiel zwischen Seiten und Grundplatte',
    vents: 'Felder runder Löcher, die Luft durchlassen; weglassen für keine',
    'vents.on': 'wo sie sind: top, north, south, east, west',
    'vents.diameter': 'Durchmesser jedes Lochs',
    'vents.pitch': 'von Mitte zu Mitte, in der Reihe und von Reihe zu Reihe',
    'vents.columns': 'Löcher in einer Reihe',
    'vents.rows': 'Reihen',
    tabs: 'Schraublaschen, an den Kanten der West- und Ostseite nach außen; weglassen für keine',
    'tabs.length': 'wie weit sie vor den Seiten stehen',
    'tabs.diameter': 'Durchmesser der Schraublöcher',
    'tabs.count': 'Löcher in jeder Lasche',
    'tabs.edge': ROW_EDGE,
    corner: 'offen oder überlappt (Nord- und Südseite decken die Enden der anderen)',
    gap: GAP,
  },
};
