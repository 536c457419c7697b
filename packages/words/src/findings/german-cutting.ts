import type { CuttingFindings, LeftWhy, OnSheet } from '@tinwright/cutting';
import type { Tellings, Tongue } from './telling.js';

const WHY: Readonly<Record<LeftWhy, string>> = {
  'too-large': 'größer als jede Tafel seines Werkstoffs',
  'no-metal': 'keine Tafel seines Werkstoffs im Lager',
  'stock-short': 'auf dem Lagerbestand war kein Platz mehr',
  grain: 'in der verlangten Walzrichtung zu groß für die Tafeln',
  shear: 'zu lang oder zu dick für die Schere',
  'sheet-long': 'die Tafel ist in beiden Richtungen länger als die Schere',
};

const REMEDY: Readonly<Record<LeftWhy, string>> = {
  'too-large': 'eine Tafel nehmen, auf die es passt, oder es zweiteilig machen',
  'no-metal': 'eine Tafel davon ins Lager nehmen',
  'stock-short': 'Tafeln ins Lager nehmen',
  grain: 'die Walzrichtung freigeben oder eine anders gewalzte Tafel nehmen',
  shear: 'auf dem Tisch oder anderswo schneiden',
  'sheet-long': 'die Tafel anderswo teilen lassen und die Hälften ins Lager schreiben',
};

const NO_COMMON = {
  kerf: 'die Schnittfuge ist 0, und der Tisch schnitte neben der Linie',
  'by-hand': 'Umrisse werden von Hand geschnitten',
  edges: 'keine geraden Kanten liegen weit genug aneinander',
} as const;

const COMMON_REMEDY = {
  kerf: 'die Breite der Schnittfuge angeben',
  'by-hand': 'cutBy: table angeben oder ohne gemeinsame Schnitte schneiden',
  edges:
    'Vierteldrehungen und keinen größeren Abstand als die Schnittfuge verlangen oder ohne gemeinsame Schnitte schneiden',
} as const;

const place = ({ sheet, piece, on, places }: OnSheet, t: Tongue): string =>
  `${piece} auf ${sheet} bei ${t.size(on[0])}, ${t.size(on[1])}${places > 1 ? ` und ${places - 1} weitere` : ''}`;

/** What is found on sheets, in German. */
export const GERMAN_CUTTING: Tellings<CuttingFindings> = {
  'edge-under-kerf': {
    message: ({ value, limit, ...at }, t) =>
      `${place(at, t)}: eine Kante von ${t.size(value)} ist kürzer als die Schnittfuge von ${t.size(limit)}, ihre Ecken werden rund`,
    remedy: () => 'nachfeilen, wo es darauf ankommt',
  },
  'slot-closes': {
    message: ({ limit, ...at }, t) =>
      `${place(at, t)}: schmaler als die Schnittfuge von ${t.size(limit)}, die Bahn lässt es aus`,
    aim: ({ limit }, t) => `breiter als ${t.least(limit)} machen`,
    remedy: () => 'von Hand sägen oder nibbeln',
  },
  'hole-closes': {
    message: ({ value, limit, ...at }, t) =>
      `${place(at, t)}: ein Loch von ${t.size(value)} wird nicht geschnitten, die Schnittfuge ist ${t.size(limit)} breit`,
    remedy: () => 'bohren; --small-holes mark zeichnet seine Mitte an',
  },
  'lead-short': {
    message: ({ value, limit, ...at }, t) =>
      `${place(at, t)}: der Anschnitt ist ${t.size(value)} statt ${t.size(limit)} lang`,
    remedy: () => 'mehr Abstand lassen oder kürzere Anschnitte verlangen',
  },
  'lead-none': {
    message: (at, t) =>
      `${place(at, t)}: kein Platz für einen Anschnitt, der Schnitt beginnt auf seiner Linie`,
    remedy: () => 'mehr Abstand lassen oder kürzere Anschnitte verlangen',
  },
  'common-cut': {
    message: ({ value, ...at }, t) =>
      `${place(at, t)}: ${t.size(value)} seiner Kante entstehen mit dem Schnitt eines Nachbarn und haben dessen schräge Seite; Teile werden neben Schnitten lose, die noch kommen`,
    remedy: () =>
      'darauf achten, dass kein loses Teil dem Brenner im Weg steht; ohne gemeinsame Schnitte schneiden, wo Kanten winklig sein müssen',
  },
  'ties-few': {
    message: ({ value, limit, ...at }, t) =>
      `${place(at, t)}: ${value} von ${limit} Haltestegen, für mehr lassen Schnitte für zwei Teile zugleich keinen Platz`,
    remedy: () => 'das Teil anders halten oder ohne gemeinsame Schnitte schneiden',
  },
  'common-cut-none': {
    message: ({ why }) => `kein Schnitt gilt zwei Teilen zugleich: ${NO_COMMON[why]}`,
    remedy: ({ why }) => COMMON_REMEDY[why],
  },
  'kerf-zero': {
    message: () =>
      'die Schnittfuge ist 0: Bahnen laufen auf den gezeichneten Linien, und Teile werden um die Fuge kleiner, wenn der Tisch sie nicht selbst ausgleicht',
    remedy: () => 'die Breite der Schnittfuge angeben, wenn die Steuerung sie nicht kennt',
  },
  'left-out': {
    message: ({ count, why, kg, sheets, of }, t) =>
      `${count} ohne Tafel: ${WHY[why]}${
        of === null
          ? ''
          : why === 'stock-short'
            ? `; es fehlen ${t.number(kg, 3)} kg Teile, allein der Fläche nach das ${t.number(sheets, 2)}fache einer Tafel ${of.name}`
            : `; am nächsten kommt ${of.name}, nutzbar ${t.most(of.x)} x ${t.most(of.y)}`
      }`,
    remedy: ({ why }) => REMEDY[why],
  },
};
