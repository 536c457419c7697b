import { GERMAN_CAUTIONS } from './german-cautions.js';
import { GERMAN_OPERATIONS } from './german-operations.js';
import type { PacketWords } from './words.js';

/** What packets say in German. */
export const GERMAN_PACKET: PacketWords = {
  page: (n, of) => `Seite ${n} von ${of}`,
  packet: (job) => (job === '' ? 'Arbeitsmappe' : `${job}: Arbeitsmappe`),
  sections: {
    cover: 'Teile und Inhalt',
    cautions: 'Vorsicht: zuerst lesen',
    cuts: 'Zuschnittliste',
    plans: 'Pläne',
    operations: 'Arbeitsgänge',
    joints: 'Verbindungsplan',
    inspection: 'Prüfblatt',
    templates: 'Schablonen in wahrer Größe',
    worksheets: 'Arbeitsblätter',
    answers: 'Lösungen',
  },
  plan: (part) => `Plan von ${part}`,
  template: (part) => `Schablone von ${part}`,
  contents: 'Inhalt',
  contentsPage: 'Seite',
  bought: {
    heading: 'Gekaufte Teile',
    columns: {
      letter: '',
      part: 'Name',
      what: 'was es ist',
      count: 'Stück',
      size: 'Größe',
      on: 'kommt an',
      by: 'gehalten mit',
    },
    open: (degrees) => `öffnet ${degrees}°`,
  },
  cover: {
    picture: 'Was es wird',
    pictureAlt: (job, pieces) =>
      `${job === '' ? 'Das Stück' : job} zusammengesetzt, schräg von oben; Teile: ${pieces}`,
    partAlt: (part) => `${part} gebogen, schräg von oben`,
    parts: 'Teile',
    columns: {
      letter: '',
      part: 'Teil',
      what: 'was es ist',
      make: 'Stück',
      stock: 'Blech',
      blank: 'Zuschnitt',
      mass: 'fertig',
    },
    mass: (text) => `Zusammen ${text}, ohne Verbindungsmittel.`,
    totals: ({ sets, blanks, mass, fasteners, minutes }) =>
      `Für ${sets} Sätze zusammen: ${blanks} Zuschnitte, ${mass} Blech im Zuschnitt${fasteners.map(([n, name]) => `, ${n} × ${name}`).join('')}${minutes === null ? '' : `, etwa ${minutes} Minuten Biegen an den Maschinen`}.`,
    sets: (count, has) =>
      `Für ${count} Sätze: die Stückzahlen in ${has('cuts') ? 'Teileliste und Zuschnittliste' : 'der Teileliste'} sind die aller Sätze.`,
    start: (has) =>
      [
        'Zuerst die Seite Vorsicht lesen.',
        ...(has('operations')
          ? [
              `Dann die Arbeitsgänge einen nach dem anderen tun und abhaken${has('plans') ? '; sie sagen, wann welcher Plan dran ist' : ''}.`,
            ]
          : []),
        ...(has('plans') ? ['Ein Plan ist zum Anreißen mit Maßstab und Winkel.'] : []),
        ...(has('templates')
          ? [
              `Eine Schablone ist ${has('plans') ? 'dasselbe' : 'eine Abwicklung'} in wahrer Größe zum Auflegen${has('plans') ? ' und kann ihn ersetzen' : ''}.`,
            ]
          : []),
        ...(has('worksheets')
          ? ['Ein Arbeitsblatt ist ein Plan, auf dem Maße fehlen: ausrechnen und eintragen.']
          : []),
      ].join(' '),
  },
  cautions: GERMAN_CAUTIONS,
  cuts: {
    heading: 'Zuschnitte',
    columns: {
      part: 'Teil',
      pieces: 'Stück',
      blank: 'Zuschnitt',
      diagonal: 'Diagonalen',
      stock: 'Blech',
      mass: 'je Zuschnitt',
      done: 'fertig',
    },
    notes: (has) => [
      [
        'Zuschnitte gleicher Breite in einem Streifen schneiden.',
        'Ein Zuschnitt ist rechtwinklig, wenn beide Diagonalen so lang sind wie angegeben.',
        ...(has('operations')
          ? ['Teile, für die vorher gemessen wird (siehe Arbeitsgänge), erst nach dem Messen schneiden.']
          : []),
      ].join(' '),
    ],
    stock: (sheet, blanks, area, mass) =>
      `${sheet}: ${blanks === 1 ? '1 Zuschnitt' : `${blanks} Zuschnitte`}, zusammen ${area} und ${mass}, ohne Verschnitt.`,
  },
  operations: GERMAN_OPERATIONS,
  joints: {
    heading: 'Verbindungen',
    columns: {
      joint: 'Stelle',
      pieces: 'Teile',
      by: 'durch',
      count: 'Anzahl',
      pitch: 'Teilung',
      hole: 'Loch',
      clearance: 'Spalt daneben',
    },
    placed: 'eingesetzt',
    pictureAlt: (job) =>
      `${job === '' ? 'Das Stück' : job} an den Verbindungen auseinandergezogen; Kreuze sind Schweißpunkte`,
    picture: 'Welches Teil wohin gehört',
    rules: 'Was die Verbindungsmittel brauchen',
    ruleColumns: { by: 'Mitten, mindestens', edge: 'vom Rand', pitch: 'Teilung', bend: 'von der Kantung' },
    drill: (rivet, drill) => `Niet ${rivet}: Bohrer ${drill}.`,
    by: (sources) => `Abstände (auf Englisch): ${sources}.`,
    grip: (stack) => `Die Bleche sind zusammen ${stack} dick.`,
    notes: [
      'Wo die Verbindungsmittel sitzen, ist auf den Plänen beider Teile angerissen: auf jedem dieselbe Stelle. Keine Handschuhe am Bohrer, Augen schützen, wenn Nietdorne reißen oder Funken fliegen.',
      'Die Abstände sagen, wo ein Verbindungsmittel im Blech hält, nicht was es trägt. Keine Tragfähigkeit.',
    ],
  },
  inspection: {
    heading: (part, quantity) => (quantity === 1 ? part : `${part}, ${quantity} Stück`),
    columns: { what: 'Maß', nominal: 'soll', limit: 'Toleranz' },
    measured: (n, of) => (of === 1 ? 'ist' : `ist ${n}`),
    sides: {
      inside: 'innen',
      outside: 'außen',
      mould: 'bis dahin, wo sich die Außenseiten träfen',
      flat: '',
    },
    blankX: 'Zuschnitt, entlang der nahen Kante',
    blankY: 'Zuschnitt, entlang der linken Kante',
    overall: { x: 'Länge über alles', y: 'Breite über alles', z: 'Höhe über alles' },
    angle: (numbers) => `Winkel von ${numbers}, mit Winkel oder Winkelmesser`,
    object: 'Zusammengesetzt',
    notes: (cut, bent) => [
      `Schnittmaße nach ISO 2768-1 Klasse ${cut}, gebogene Maße nach Klasse ${bent}: was eine Abkantbank von Hand hält (welche Klasse das ist, und ±2° für Winkel, aus dem Gedächtnis).`,
      'Außen oder innen messen, wie es in der Zeile steht, an beiden Enden und in der Mitte; den schlechtesten Wert aufschreiben. Mehr Stücke als Spalten: das Blatt kopieren.',
    ],
    sign: 'Geprüft von, Datum:',
  },
  worksheet: {
    title: (part) => `Arbeitsblatt: ${part}`,
    copies: (sets) => `${sets} Kopien: eine je Satz`,
    heading: 'Arbeitsblatt',
    name: 'Name:',
    ask: (letters, unit) =>
      `Auf der Abwicklung dieses Teils fehlen die Maße ${letters}. In ${unit === 'in' ? 'Zoll' : unit} ausrechnen, den Weg aufschreiben und auf der Abwicklung eintragen.`,
    datum:
      'Jedes Maß auf der Abwicklung zählt von der linken oder der nahen Kante. Mit den Fertigmaßen anfangen.',
    bends: [
      'Eine gestreckte Länge ist die Summe der Außenlängen, weniger einen Abzug für jede Kantung dazwischen.',
      'Eine Biegelinie liegt in der Mitte ihres Biegestreifens: eine halbe Zugabe vom Ende der ebenen Fläche. Eine ebene Fläche ist so lang wie ihre Außenlänge, weniger einen halben Abzug und eine halbe Zugabe je Kantung daneben.',
    ],
    columns: { letter: '', working: 'Rechnung', size: 'Maß' },
    answerColumns: { part: 'Teil', letter: '', what: 'was', size: 'Maß' },
    bendLine: (numbers) => `Biegelinie ${numbers}`,
    edge: 'Kante oder Ecke',
    answersNote: 'Für die Lehrkraft: diese Seite herausnehmen, bevor die Blätter ausgeteilt werden.',
  },
};
