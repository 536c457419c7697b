import type { StepWords } from './words.js';

const list = (names: readonly string[]): string =>
  names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} und ${names.at(-1)}`;

/** What step pictures say in German. */
export const STEPS_GERMAN: StepWords = {
  language: 'de',
  title: (part, n, of) => `${part}, Schritt ${n} von ${of}`,
  action: (action, bends, angle) =>
    ({
      bend: `${list(bends)} auf ${angle} biegen`,
      fold: `${list(bends)} bis ${angle} vorbiegen`,
      close: `${list(bends)} zudrücken`,
      roll: `${list(bends)} um den Draht rollen`,
    })[action],
  alt: (what) => `${what}: Querschnitt vorher und nachher, und das Teil, wie es in der Maschine liegt`,
  before: 'Vorher',
  after: 'Nachher',
  seen: (scale) => `, ${scale}, von links gesehen`,
  detail: (scale) => `An der Biegelinie, ${scale}`,
  lying: 'Standplatz rechts unten. Dick: dreht sich. Schraffiert: gehalten',
  held: (panel, { machine, action }) =>
    `${panel}: ${{ brake: action === 'close' ? 'auf der Unterwange' : 'geklemmt', press: 'am Anschlag', vise: 'geklemmt', hand: 'gehalten' }[machine]}`,
  turns: (panel, { action }) => `${panel}: ${action === 'close' ? 'wird flach gedrückt' : 'dreht sich'}`,
  tools: {
    fingers: 'Segment',
    beam: 'Oberwange',
    bed: 'Unterwange',
    leaf: 'Biegewange',
    punch: 'Stempel',
    ram: 'Stößel',
    die: 'Gesenk',
    gauge: 'Anschlag',
    bar: 'Schiene',
    table: 'Tisch',
    jaw: 'Backe',
  },
  setBackHere: (size) => `Rückstand ${size}`,
  sightHere: 'Anlegelinie unter dieser Kante',
  openingHere: (size) => `V ${size}`,
  compass: ['Osten', 'Nordosten', 'Norden', 'Nordwesten', 'Westen', 'Südwesten', 'Süden', 'Südosten'],
  about: (compass) => `etwa ${compass}`,
  hook: 'Das Teil vorn anheben und die hintere Wand unter die Segmente einhängen.',
  how: {
    brakeBend: ({ held, set, angle }) =>
      `${held} klemmen, Anlegelinie unter der Kante der Segmente, dann die Biegewange auf ${set} heben${set === angle ? '' : `: das Blech federt auf ${angle} zurück`}.`,
    brakeFold: ({ held, set }) =>
      `${held} klemmen, Anlegelinie unter der Kante der Segmente, dann die Biegewange bis ${set} heben. Der nächste Schritt schließt den Umschlag.`,
    brakeClose: () =>
      'Die Segmente heben, den Umschlag bis zum Bug darunterschieben und sie senken, bis er geschlossen ist.',
    pressBend: ({ held, set, angle }) =>
      `${held} an den Anschlag schieben, dann pressen, bis der Winkel ${set === angle ? `ohne Last gemessen ${angle} ist: er federt zurück` : `${set} ist: ohne Last federt er auf ${angle} zurück`}.`,
    pressFold: ({ held, set }) =>
      `${held} an den Anschlag schieben, dann pressen, bis der Winkel ${set} ist. Der nächste Schritt schließt den Umschlag.`,
    pressClose: () => 'Den Umschlag zwischen flache Schienen legen und pressen, bis er geschlossen ist.',
    viseBend: ({ held, angle }) =>
      `${held} zwischen die Biegeschienen hängen, klemmen, dann die freie Seite auf ${angle} drücken, gleichmäßig über die ganze Linie.`,
    viseFold: ({ held, angle }) =>
      `${held} zwischen die Biegeschienen hängen, klemmen, dann die freie Seite auf ${angle} drücken. Der nächste Schritt schließt den Umschlag.`,
    viseClose: () => 'Den Umschlag zwischen die Backen hängen und sie schließen, bis er geschlossen ist.',
    benchBend: ({ held, angle }) =>
      `${held} auf die Werkbank legen, Linie an deren Kante, eine Schiene entlang der Linie darauf klemmen, dann die freie Seite gleichmäßig über die ganze Linie auf ${angle} drücken.`,
    benchFold: ({ held, angle }) =>
      `${held} auf die Werkbank legen, Linie an deren Kante, eine Schiene entlang der Linie darauf klemmen, dann die freie Seite auf ${angle} drücken. Der nächste Schritt schließt den Umschlag.`,
    benchClose: () =>
      'Den Umschlag auf der Werkbank mit dem Holzhammer schließen, nach und nach über die ganze Linie.',
    seamerBend: ({ held, angle }) =>
      `${held} mit der Falzzange bis zur Linie greifen und nach und nach auf ${angle} drehen.`,
    seamerFold: ({ held, angle }) =>
      `${held} mit der Falzzange bis zur Linie greifen und nach und nach auf ${angle} drehen. Der nächste Schritt schließt den Umschlag.`,
    seamerClose: () =>
      'Den Umschlag zwischen den Backen der Falzzange zudrücken, nach und nach über die ganze Linie.',
    handRoll: ({ bends }) =>
      `Den Draht einlegen und die Kante von ${list(bends)} mit Zange, Hammer und Setzhammer darum rollen.`,
  },
  rows: {
    machine: 'Maschine',
    held: 'gehalten',
    up: 'Seite',
    towards: 'vorn',
    upright: 'oberes Ende',
    sight: 'Anlegelinie',
    stop: 'Anschlag',
    setBack: 'Rückstand',
    angle: 'Winkel',
    fingers: 'Segmente',
    punch: 'Stempel',
    die: 'Gesenk',
    tools: 'Werkzeuge',
    force: 'Kraft',
    gauge: 'Anschlag',
    gap: 'Umschlag',
  },
  cells: {
    machine: (kind, name) => (kind === 'hand' ? 'keine: von Hand' : name),
    held: (panel, bends) => `${panel}, an der Kante zu ${list(bends)}`,
    face: (face, kind, flipped) =>
      `${face === 'marked' ? 'Anrissseite' : 'Rückseite'} ${kind === 'vise' ? 'vom Körper weg' : 'oben'}${flipped ? ': Teil umdrehen' : ''}`,
    towards: (compass, turned) =>
      `${compass} der Abwicklung${turned === null ? '' : turned === 180 ? ': halb herumdrehen' : `: ${turned > 0 ? 'gegen den' : 'im'} Uhrzeigersinn drehen`}`,
    sight: (offset, panel, towards) =>
      `${offset} von der Tangentenlinie von ${panel}, ${towards === 'bend' ? 'zum Bug hin' : 'vom Bug weg'}`,
    tangentIsSight: (panel) => `die Tangentenlinie von ${panel}`,
    stop: (size) => `${size} hinter der Kante der Segmente`,
    noStop: 'keiner: hinten keine gerade Kante; nach der Linie',
    angle: (set, angle) => (set === angle ? `bis ${set}` : `bis ${set}, federt auf ${angle} zurück`),
    unloaded: (angle) => `${angle}, ohne Last gemessen`,
    allTools: 'beliebig; sie dürfen die ganze Linie entlang stehen',
    tools: (pieces, from, side, gap) =>
      `${pieces.join(' + ')}, von links; sie beginnen ${from} ${side === 'in' ? 'innerhalb' : 'außerhalb'} des linken Endes der Kantung${gap === '' ? '' : `, ${gap} Abstand`}`,
    unit: (size) => size,
    force: (force) => `${force} kN`,
    gauge: (size) => `${size} hinter der Mitte des Stempels`,
    noGauge: 'keiner: hinten keine gerade Kante; nach der Linie',
    gap: (size) =>
      size === '' ? 'flach, ohne Spalt' : `einen Streifen von ${size} einlegen: so viel Spalt bleibt`,
  },
  caution: {
    brake:
      'Vorsicht: Hände weg von Segmenten und Biegewange, von ihren Griffen und Gewichten, wenn sie schwenkt. Anleitung der Maschine befolgen.',
    press:
      'Vorsicht: keine Hand zwischen Stempel und Gesenk, keine, wo das Blech hochschlägt. Anleitung der Maschine befolgen.',
    vise: 'Vorsicht: scharfe Kanten; Augen schützen, Finger weg vom Hammer.',
    hand: 'Vorsicht: scharfe Kanten; Augen schützen, Finger weg vom Hammer.',
  },
};
