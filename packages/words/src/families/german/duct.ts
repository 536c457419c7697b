import type { FamilyWords } from '../words.js';

export const duct: FamilyWords['families']['duct'] = {
  title: 'rechteckiger Kanal',
  sizes: {
    length: 'des Stücks, über Borde oder Umschläge an seinen Enden',
    width: 'quer, über die Außenseiten',
    height: 'über die Außenseiten',
    piece: 'wrap (alle vier Seiten aus einem Blech) oder half (zwei Seiten; zwei gleiche ergeben den Kanal)',
    seam: 'der Lasche, die die Naht schließt, innen im Kanal',
    play: 'zwischen der Lasche und der Seite, an der sie liegt',
    ends: 'Enden: glatt, mit Borden (jede Seite nach außen) oder für Schieber (die senkrechten Seiten nach außen umgeschlagen, die anderen glatt)',
    'ends.type': 'glatt, mit Borden oder für Schieber',
    'ends.width': 'wie weit die Borde nach außen stehen',
    'ends.fold': 'Breite der Umschläge',
    crossBreak: 'none, oder scribed: Linien von Ecke zu Ecke jeder Seite, zum Kreuzsicken',
  },
};
