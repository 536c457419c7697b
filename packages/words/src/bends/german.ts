import { inDecimal } from '../decimal.js';
import type { BendWords, HandFacts, ToldPlace } from './words.js';

const list = (names: readonly string[]): string =>
  names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} und ${names.at(-1)}`;

const NEXT = 'Der nächste Schritt schließt den Umschlag.';
const spring = ({ set, angle }: HandFacts) => (set === angle ? '' : `: das Blech federt auf ${angle} zurück`);
const closed = ({ strip, round }: HandFacts, flat: string): string =>
  round
    ? 'Die Kante auf das Blech drücken und den Bug rund lassen: er darf nicht flach werden.'
    : strip === null
      ? flat
      : `Einen Streifen von ${strip} Dicke in den Bug legen, so dick wie der Spalt des Umschlags. ${flat} Den Streifen herausziehen.`;
const vise = ({ held }: HandFacts) =>
  `${list(held)} zwischen die Biegeschienen hängen, Linie bündig mit ihnen, und klemmen.`;
const bench = ({ held }: HandFacts) =>
  `${list(held)} auf die Werkbank legen, Linie an deren Kante, und eine Schiene entlang der Linie darauf klemmen.`;
const block = ({ held }: HandFacts) =>
  `${list(held)} auf die Werkbank legen, Linie an deren Kante, den Formklotz innen daraufstellen, seine Stirn an der Linie, und mit einer Leiste quer darüber niederhalten, die beiderseits des Teils an die Werkbank gespannt wird.`;
const over = ({ set }: HandFacts) =>
  `Die freie Seite mit dem Holzhammer gegen einen Holzklotz auf ${set} biegen, nach und nach über die ganze Linie.`;
const seamer = ({ held, set }: HandFacts) =>
  `${list(held)} mit der Falzzange bis zur Linie greifen und nach und nach über die ganze Linie auf ${set} drehen.`;
const laid = ({ angle }: HandFacts) =>
  `Herausnehmen, mit dem Umschlag nach oben auf die Werkbank legen und ihn mit dem Holzhammer auf etwa ${angle} umlegen. ${NEXT}`;
const gauge = ({ held, rear }: HandFacts) =>
  rear === null
    ? `${list(held)} auf das Gesenk legen, Linie unter dem Stempel`
    : `Das Blech auf das Gesenk legen, ${list(held)} hinter dem Stempel, mit der ${rear.by === 'edge' ? 'Kante' : 'Außenseite'} von ${rear.panel} am Anschlag`;
const rises = ({ tipsBack }: HandFacts) =>
  tipsBack
    ? 'Vor den Werkzeugen ist zu wenig zum Halten: was dahinter liegt, tragen lassen, mit Abstand zu den Werkzeugen; es geht beim Biegen hoch.'
    : 'Das Blech vor den Werkzeugen mit den Händen halten; es geht beim Biegen hoch.';
const wire = ({ bends, rod }: HandFacts) =>
  rod === null
    ? `${list(bends)} hochbiegen, den Draht einlegen und die Kante mit Zange, Holzhammer und Setzhammer darüber schließen, von der Mitte aus und nach und nach.`
    : `${list(bends)} hochbiegen und die Kante mit Zange und Holzhammer um einen Stab von ${rod} rollen, von der Mitte aus und nach und nach; den Stab herausziehen.`;
const WAYS = { up: 'nach oben', down: 'nach unten' } as const;

/** The end of a row that is set first, and where it lies. */
function rowStands({ from, by, end, onward }: ToldPlace): string {
  if (from === 'both')
    return {
      at: 'genau so lang wie die Kantung',
      inside: `an beiden Enden der Kantung ${by} frei`,
      past: `an beiden Enden ${by} über die Kantung hinaus`,
    }[end];
  const [begins, side, other] =
    from === 'left' ? ['beginnt', 'linken', 'rechte'] : ['endet', 'rechten', 'linke'];
  const where =
    end === 'at'
      ? `am ${side} Ende`
      : `${by} ${end === 'inside' ? 'innerhalb' : 'außerhalb'} des ${side} Endes`;
  return `${begins} ${where} der Kantung${onward ? `, steht über das ${other} Ende hinaus` : ''}`;
}

/** How a bend is told in German. */
export const BENDS_GERMAN: BendWords = {
  action: ({ action, direction, hem }, names, angle) =>
    ({
      bend: `${list(names)} ${WAYS[direction]}${angle === null ? '' : ` auf ${angle}`} kanten`,
      fold: `${list(names)} ${WAYS[direction]}${angle === null ? '' : ` bis ${angle}`} vorbiegen`,
      close:
        hem === 'open'
          ? `${list(names)}, offener Umschlag, über einem Streifen zudrücken`
          : hem === 'teardrop'
            ? `${list(names)}, Tropfenumschlag, zudrücken`
            : `${list(names)} flach zudrücken`,
      roll: `Kante ${list(names)}${hem === 'curl' ? '' : ' um den Draht'} rollen`,
    })[action],
  how: {
    bend: {
      brake: (f) =>
        `${list(f.held)} klemmen, Anlegelinie unter der Kante der Segmente, dann die Biegewange auf ${f.set} heben${spring(f)}.`,
      press: (f) =>
        `${gauge(f)}, dann pressen, bis der Winkel ${f.set === f.angle ? `ohne Last gemessen ${f.angle} ist: er federt zurück` : `${f.set} ist: ohne Last federt er auf ${f.angle} zurück`}. ${rises(f)}`,
      vise: (f) => `${vise(f)} ${over(f)}`,
      bench: (f) => `${bench(f)} ${over(f)}`,
      former: (f) => `${block(f)} ${over(f)}`,
      seamer,
      hand: over,
      none: null,
    },
    fold: {
      brake: (f) =>
        `${list(f.held)} klemmen, Anlegelinie unter der Kante der Segmente, dann die Biegewange bis ${f.set} heben. ${NEXT}`,
      press: (f) => `${gauge(f)}, dann pressen, bis der Winkel ${f.set} ist. ${rises(f)} ${NEXT}`,
      vise: (f) => `${vise(f)} ${over(f)} ${laid(f)}`,
      bench: (f) => `${bench(f)} ${over(f)} ${laid(f)}`,
      former: null,
      seamer: (f) =>
        `${seamer(f)} Die Zange öffnen, über den Umschlag setzen und ihn auf etwa ${f.angle} umlegen. ${NEXT}`,
      hand: (f) => `${over(f)} ${laid(f)}`,
      none: () => `So weit vorbiegen, wie die Biegewange geht. ${NEXT}`,
    },
    close: {
      brake: (f) =>
        closed(
          f,
          'Die Segmente heben, den Umschlag bis zum Bug darunterschieben und sie senken, bis er geschlossen ist.',
        ),
      press: (f) =>
        closed(f, 'Den Umschlag zwischen flache Schienen legen und pressen, bis er geschlossen ist.'),
      vise: (f) =>
        closed(f, 'Den Umschlag zwischen die Backen hängen und sie schließen, bis er geschlossen ist.'),
      bench: (f) =>
        closed(
          f,
          'Den Umschlag auf der Werkbank mit dem Holzhammer schließen, nach und nach über die ganze Linie.',
        ),
      former: null,
      seamer: (f) =>
        closed(
          f,
          'Den Umschlag zwischen den Backen der Falzzange zudrücken, nach und nach über die ganze Linie.',
        ),
      hand: (f) =>
        closed(f, 'Den Umschlag auf der Werkbank mit dem Holzhammer schließen, von der Mitte nach außen.'),
      none: (f) =>
        closed(
          f,
          'Den Umschlag unter der Oberwange zudrücken, oder auf der Werkbank mit dem Holzhammer zuschlagen, von der Mitte nach außen.',
        ),
    },
    roll: {
      brake: wire,
      press: wire,
      vise: wire,
      bench: wire,
      former: wire,
      seamer: wire,
      hand: wire,
      none: wire,
    },
  },
  putIn: {
    jaw: {
      along: 'Das Teil längs der Linie einschieben, am Ende der Segmente vorbei.',
      tilted: 'Das Teil vorn anheben und die hintere Wand unter die Segmente einhängen.',
      'with-fingers': 'Die Segmente lösen und Teil und Segmente zusammen einsetzen.',
    },
    punch: {
      along: 'Das Teil längs der Linie einschieben, am Ende des Stempels vorbei.',
      tilted: 'Das Teil beim Anheben kippen, damit neben dem Stempel vorbeikommt, was nach innen steht.',
      'end-first':
        'Mit einem Ende voran unter den Stempel bringen: was dort nach innen steht, über den Fuß des Horns schieben, das andere Ende tief; dann das andere an seinem Fuß vorbei anheben.',
    },
  },
  takeOff: {
    jaw: {
      along: 'Längs der Linie abnehmen, am Ende der Segmente vorbei.',
      tilted: 'Vorn angehoben abnehmen, damit die hintere Wand um die Segmente herauskommt.',
      'with-fingers': 'Zum Abnehmen die Segmente lösen, mit dem Teil herausziehen, dann aus dem Teil nehmen.',
    },
    punch: {
      along: 'Längs der Linie abnehmen, am Ende des Stempels vorbei.',
      tilted: 'Nach unten und gekippt abnehmen, damit neben dem Stempel herauskommt, was nach innen steht.',
      'end-first':
        'Zum Abnehmen längs der Linie schieben, so weit es geht, das vordere Ende am Fuß seines Horns vorbei absenken, dann nach der anderen Seite herausziehen.',
    },
  },
  byHand: 'Keine Maschine der Werkstatt biegt es dort: von Hand.',
  check: (square) => `Mit ${square ? 'dem Winkel' : 'Winkelmesser oder Lehre'} prüfen.`,
  bare: (size) => `An einem Ende liegt auf bis zu ${size} kein Segment: von Hand nachrichten.`,
  claim: {
    none: (proved) =>
      proved === 'proved' ? 'keine Biegefolge ist möglich' : 'keine Biegefolge wurde gefunden',
    flat: 'nichts zu kanten',
    steps: (steps, time) => `${steps} ${steps === 1 ? 'Arbeitsgang' : 'Arbeitsgänge'}, ${time} je Stück`,
    best: (tools) =>
      tools === 'any'
        ? 'keine Folge braucht weniger Zeit'
        : 'keine Folge, die Werkzeuge nur wechselt, wo sie muss, braucht weniger Zeit',
    less: (share, tools) =>
      `eine andere Folge braucht vielleicht bis zu ${share} weniger Zeit${tools === 'any' ? '' : ', mit früher gewechselten Werkzeugen vielleicht mehr'}`,
  },
  labels: {
    machine: 'Maschine',
    held: 'gehalten',
    jaws: 'in der Zange',
    face: 'Anrissseite',
    towards: 'zum Körper',
    upright: 'oberes Ende',
    bars: 'Schienen',
    block: 'Formklotz',
    sight: 'Anlegelinie',
    stop: 'Anschlag',
    setBack: 'Rückstand',
    angle: 'Winkel',
    fingers: 'Segmente',
    punch: 'Stempel',
    die: 'Gesenk',
    tools: 'Werkzeuge',
    force: 'Kraft',
    middle: 'außermittig',
    gauge: 'Anschlag',
    hem: 'Umschlag',
    radius: 'Innenradius',
  },
  sides: {
    left: 'linke Kante',
    right: 'rechte Kante',
    near: 'nahe Kante',
    far: 'ferne Kante',
    'near-left': 'nahe linke Ecke',
    'near-right': 'nahe rechte Ecke',
    'far-left': 'ferne linke Ecke',
    'far-right': 'ferne rechte Ecke',
  },
  values: {
    held: (panels, beside) =>
      `${list(panels)}, an ${panels.length > 1 ? 'den Kanten' : 'der Kante'} zu ${list(beside)}`,
    face: (faceUp, upright, { over: turned }) =>
      `${upright === 'upright' ? (faceUp === 'marked' ? 'vom Körper weg' : 'zum Körper') : faceUp === 'marked' ? 'oben' : 'unten'}${turned === null ? '' : turned === 'sidewise' ? ' (Teil seitlich umdrehen)' : ' (Teil kopfüber umdrehen)'}`,
    towards: (side, roughly, round) =>
      `${roughly === 'roughly' ? 'etwa ' : ''}${side} der Abwicklung${round === null ? '' : round === 180 ? ' (halb herumdrehen)' : ` (${round > 0 ? 'gegen den' : 'im'} Uhrzeigersinn drehen)`}`,
    sight: (off, way, panel) =>
      off === null
        ? 'auf der Biegelinie'
        : `${off} von der Biegelinie, ${way === 'towards' ? `zu ${panel} hin` : `von ${panel} weg`}`,
    bars: (size) => `${size} lang, so lang wie die Biegung`,
    block: (size) => `${size} lang, auf die Biegung gesägt`,
    punch: (name, hollow, horns) =>
      [
        name,
        ...(hollow === null
          ? []
          : [`die Kröpfung ${hollow === 'front' ? 'nach vorn' : 'zum Anschlag hin'} offen`]),
        ...(horns === null ? [] : ['zwischen seinen Hörnern, Füße nach außen']),
      ].join(', '),
    horn: (size) => `${size} (Horn)`,
    stop: (size, panel, by) =>
      `${size} hinter der Kante der Segmente, an der ${by === 'edge' ? 'Kante' : 'Außenseite'} von ${panel}`,
    middle: (size, side) =>
      `die Kantung liegt ${size} ${side === 'left' ? 'links' : 'rechts'} der Mitte der Presse; was sie dort verträgt, sagt ihr Handbuch`,
    gauge: (size, panel, by) =>
      `${size} hinter der Mitte des Stempels, an der ${by === 'edge' ? 'Kante' : 'Außenseite'} von ${panel}`,
    byLine: 'keiner: hinten kann keine Kante anliegen; nach der Linie',
    angle: (set, angle) => (set === angle ? `bis ${set}` : `bis ${set}, federt auf ${angle} zurück`),
    unloaded: (angle) => `${angle}, ohne Last gemessen`,
    allTools: 'beliebig, auf der ganzen Linie',
    tools: (pieces, place, gap) =>
      `${pieces.join(' + ')} von links${gap === null ? '' : `, ${gap} Abstand`}, ${rowStands(place)}`,
    force: (force) => `${inDecimal(force, 'de')} kN`,
    radius: (made, drawn) => `etwa ${made}, gezeichnet ${drawn}`,
    hem: (kind, gap) =>
      kind === 'open'
        ? `offen, über einem Streifen von ${gap}`
        : kind === 'teardrop'
          ? 'tropfenförmig, rund gelassen'
          : 'flach, ohne Spalt',
  },
};
