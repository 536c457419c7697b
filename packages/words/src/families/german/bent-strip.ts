import type { FamilyWords } from '../words.js';

export const bentStrip: FamilyWords['families']['bent-strip'] = {
  title: 'Streifen mit parallelen Kantungen',
  sizes: {
    width: 'Breite entlang der Kantungen',
    legs: 'Außenschenkel der Reihe nach, einer mehr als Kantungen; über 90° bis zur äußeren Tangente',
    angles: 'aus der Ebene gebogen, positiv nach oben, -180 bis 180',
    insideRadii: 'einer für alle Kantungen oder je einer; der des Blechs, wenn weggelassen',
  },
};
