import { frozen } from '@tinwright/core/internal';
import type { ShearWords } from './words.js';

/** A shear plan in German. */
export const SHEAR_GERMAN: ShearWords = frozen({
  title: (job: string) => (job === '' ? 'Schneidplan' : `Schneidplan: ${job}`),
  sheet: (n: number) => `Tafel ${n}`,
  strip: (sheet: number, letter: string) => `Streifen ${sheet}${letter}`,
  offcut: (sheet: number, n: number) => `Reststück ${sheet}.${n}`,
  scrap: 'Abfall',
  sides: { left: 'links', right: 'rechts', lower: 'unten', upper: 'oben' },
  side: (side: string, piece: string) => `${side}: ${piece}`,
  steps: 'Schnitte der Reihe nach',
  columns: {
    cut: 'Schnitt',
    piece: 'Stück',
    stop: 'Anschlag',
    behind: 'Am Anschlag',
    front: 'Bleibt vorn',
  },
  marked: (size: string) => `anreißen ${size}`,
  same: '–',
  notes: [
    'Seiten wie auf dem Bild. Jedes Stück beim Schneiden beschriften. – : der Anschlag bleibt stehen.',
    'Vorsicht: Scheren quetschen und schneiden. Finger von Messer und Niederhalter fernhalten; Anleitung der Maschine und Regeln der Werkstatt befolgen.',
  ],
  sheets: 'Tafeln',
  sheetColumns: {
    sheet: 'Tafel',
    stock: 'Aus dem Lager',
    size: 'Maß',
    blanks: 'Zuschnitte',
    used: 'Genutzt',
    offcut: 'Größtes Reststück',
  },
  missing: (part: string, count: number) => `Für ${count} × ${part} war keine Tafel mehr da.`,
  alt: (sheet: number, stock: string, blanks: number) =>
    `Tafel ${sheet}, ${stock}, mit den Schnittlinien und ${blanks} Zuschnitten`,
  totals: (settings: number, cuts: number) =>
    `${cuts} ${cuts === 1 ? 'Schnitt' : 'Schnitte'}, Anschlag ${settings}-mal eingestellt.`,
  proved: 'Kein Plan braucht weniger Blech.',
  gap: (sheets: string) =>
    `Ein Plan mit weniger Blech ist nicht ausgeschlossen; keiner braucht weniger als ${sheets} von diesem.`,
  sums: {
    what: 'Was',
    amount: 'Wie viel',
    heading: 'Was gebraucht wird',
    used: 'Genutztes Blech, nach wahrer Fläche',
    kept: 'Reststücke, die bleiben',
    waste: 'Verschnitt',
    mass: 'Masse der Teile',
    price: 'Preis der Tafeln',
    shear: 'An der Schere, geschätzt',
    table: 'Stattdessen auf dem Tisch, geschätzt',
    joining: 'Verbinden, geschätzt',
    estimate:
      'Zeiten sind geschätzt, nach den Werten der Werkstattdatei oder, wo sie keine nennt, nach Ermessen: selbst stoppen.',
    minutes: (count: string) => `${count}\u00A0min`,
    cuts: (length: string, pierces: number, minutes: string) =>
      `${length} Schnitt, ${pierces} ${pierces === 1 ? 'Einstich' : 'Einstiche'}, ${minutes}`,
  },
  fasteners: {
    heading: 'Verbindungsmittel',
    columns: {
      kind: 'Mit',
      diameter: 'Durchmesser',
      length: 'Länge',
      stack: 'Beide Bleche',
      count: 'Anzahl',
    },
  },
});
