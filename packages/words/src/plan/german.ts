import { fastenerName } from './fastener-name.js';
import { spaced, times } from './spaced.js';
import type { PlanWords } from './words.js';

const inWords = (unit: string) => (unit === 'in' ? 'Zoll' : unit);

/** What plans and templates say in German. */
export const GERMAN: PlanWords = {
  language: 'de',
  up: 'hoch',
  down: 'runter',
  hems: {
    closed: 'Umschlag zu',
    open: 'Umschlag offen',
    teardrop: 'Umschlag tropfenförmig',
    wired: 'Drahteinlage',
    curl: 'Rollkante',
  },
  fastener: fastenerName({
    'spot-weld': 'Schweißpunkt',
    'plug-weld': 'Lochschweißung',
    'blind-rivet': 'Blindniet',
    screw: 'Schraube',
    hinge: 'Scharnier',
    hasp: 'Überfalle',
    handle: 'Griff',
    'rivet-nut': 'Einnietmutter',
    magnet: 'Magnet',
    caster: 'Lenkrolle',
  }),
  hole: (count, diameter, purpose) => spaced(times(count), `Ø${diameter}`, purpose),
  mark: (count, kind) => spaced(times(count), kind),
  patternAlt: (part) => `Abwicklung von ${part} mit Maßen`,
  details: 'Einzelheiten',
  detail: (name, scale, alike) => `${name} ${scale}${alike === 1 ? '' : `, ${alike} gleich oder gespiegelt`}`,
  detailAlt: (name) => `Einzelheit ${name} der Abwicklung, vergrößert, mit Maßen`,
  formedAlt: (part) =>
    `${part} gebogen: Vorderansicht, Draufsicht und Ansicht von links mit Maßen, und ein isometrisches Bild`,
  front: 'von vorn',
  top: 'von oben',
  side: 'von links',
  isometric: 'isometrisch, ohne Maßstab',
  title: (part, job) => (job === '' ? `Plan von ${part}` : `${job}: Plan von ${part}`),
  job: (name) => (name === '' ? '' : `Auftrag: ${name}`),
  stock: (material, thickness, x, y, unit) =>
    `Blech: ${material}, ${thickness}; Zuschnitt ${x} × ${y} ${unit}`,
  make: (quantity, mass) => `${quantity} Stück, je ${mass}`,
  sheet: (n, of) => `Blatt ${n} von ${of}`,
  patternScale: (scale) => `Abwicklung ${scale}`,
  viewScale: (scale) => `Ansichten ${scale}`,
  measure: (length, unit) => `muss ${length} ${unit} messen`,
  sizes: (dims, finer) =>
    `Maße in ${dims === 'mm' ? 'mm' : 'Zoll'}, ${
      { mm: 'auf 0,1 mm', in: 'auf 0,001 Zoll' }[dims as 'mm'] ?? `auf ${dims} gerundet`
    }${finer === 'finer too' ? ' (feiner, wo zwei Linien gleich lauten würden, und bei kurzen)' : ''}, jedes für sich von der Bezugsecke aus (Kreis, nah links); Anrissseite oben.`,
  rounding: (count, most, unit) =>
    `Vor dem Anfangen: Runden verschiebt ${count === 1 ? '1 Maß' : `${count} Maße`} um mehr als das, bis ${most} ${unit}; mit Stern unter „Gerundete Maße“.`,
  tolerance: (of, steps, unit) =>
    `Anreißtoleranz ISO 2768-1 ${of}: ${steps.map(([limit, to]) => `±${limit} bis ${to}`).join('; ')} ${unit}.`,
  caution:
    'Vorsicht: Schnittkanten und Grate sind scharf: Handschuhe beim Tragen, nie an drehenden Werkzeugen; Augen schützen; Finger weg von Schere und Abkantbank. Anleitungen der Maschinen, Regeln von Schule oder Werkstatt und örtliche Vorschriften gelten; geschulte oder befugte Leute, wo sie verlangt sind. Keine Tragfähigkeit.',
  cautionShort:
    'Vorsicht: scharfe Kanten und Grate; Handschuhe beim Tragen, Augen geschützt; Anleitungen, Regeln von Schule oder Werkstatt und örtliche Vorschriften gelten.',
  cautionZinc: 'Heißes Zink gibt Rauch ab: lüften, Datenblätter von Blech und Zusatz beachten.',
  formed: 'Fertiges Teil',
  marking: {
    heading: 'Anreißen, in dieser Reihenfolge',
    columns: { number: '', edge: 'von', offset: 'Abstand', what: 'Linie', reach: 'entlang', face: 'Seite' },
    left: 'links',
    bottom: 'nah',
    blank: (x, y) => `Zuschnitt ${x} × ${y}`,
    square: (diagonal) => `rechtwinklig, wenn beide Diagonalen ${diagonal} sind`,
    cut: 'Schnitt',
    scribe: 'nur anreißen',
    bend: (numbers, direction, angle, hem) => spaced(numbers.join(' '), direction, angle, hem),
    sight: (number) => `Anlegelinie von ${number}`,
    relief: (diameter) => `Freibohrung Ø${diameter}`,
    arc: (radius) => `Bogen R${radius} eines Ausschnitts`,
    span: (from, to) => `${from} bis ${to}`,
    at: (places) => `bei ${places.join('; ')}`,
    point: (x, y) => `(${x}, ${y})`,
    slant: (from, to) => `${from} bis ${to}`,
    face: 'Anriss',
    inside: 'Anriss, innen im Bug',
    outside: 'Anriss, außen am Bug',
  },
  program: {
    heading: 'Anreißen: je Zeile einmal einstellen',
    columns: { number: '', set: 'Maß', from: 'von', what: 'anreißen', where: 'wie weit' },
    edges: { west: 'linke Kante', east: 'rechte Kante', south: 'nahe Kante', north: 'ferne Kante' },
    long: 'beide langen Kanten',
    ends: 'beide Enden',
    all: 'alle vier Kanten',
    lines: ['aufrecht', 'waagerecht'],
    whole: 'von Kante zu Kante',
    both: 'von beiden Enden her',
    count: (all, [across, along]) =>
      `${all} insgesamt, gespiegelt ${[...(across ? ['links nach rechts'] : []), ...(along ? ['nah nach fern'] : [])].join(' und ')}`,
    points: (from, to) => `${from} nach ${to}`,
    at: (places) => `bei ${places.join('; ')}`,
    hole: 'Loch',
    mirrored:
      'Längen entlang einer Linie zählen von der linken oder der nahen (unteren) Kante; ein Punkt ist links | nah.',
  },
  bends: {
    heading: (unit) => `Kantungen, Längen in ${inWords(unit)}`,
    columns: {
      panel: 'Kantung, was sie biegt',
      bend: 'auf',
      radius: 'Innenradius',
      allowance: 'Zugabe',
      deduction: 'Abzug',
      set: 'einstellen',
    },
  },
  finished: {
    heading: (unit) => `Fertigmaße, ${inWords(unit)}`,
    columns: { size: 'Maß', what: 'gemessen', formed: 'gebogen' },
  },
  rounded: {
    heading: 'Gerundete Maße, Zoll',
    columns: { printed: 'gedruckt', exact: 'genau', off: 'Fehler' },
    over: (count) =>
      `${count === 1 ? '1 Maß weicht' : `${count} Maße weichen`} um mehr als die Anreißtoleranz ab (Stern): feineren Bruch nehmen oder nach genauen Maßen anreißen.`,
  },
  notes: {
    heading: 'Hinweise',
    cuts: 'Breite Linien werden geschnitten.',
    bends: 'Schmale Linien quer über die Abwicklung sind Kantungen: B1, B2 und so weiter.',
    blank: 'Das strichpunktierte Rechteck ist der Zuschnitt von der Schere.',
    datum:
      'Abstände zählen von der linken oder der nahen Kante, nie von der letzten Linie; „entlang“ zählt von der anderen dieser Kanten.',
    pencil:
      'Was geschnitten wird, anreißen. Biegelinien, die außen am Bug zu liegen kommen, mit Bleistift ziehen: ein Kratzer dort kann reißen (übliche Praxis, ohne Quelle).',
    strip:
      'Eine Biegelinie ist die Mitte ihres Biegestreifens, der so breit ist wie die Zugabe. Auf der Abkantbank steht die Kante einer scharfen Oberwange am geklemmten Rand des Streifens, die einer Oberwange vom Innenradius R um R darüber (FAA-H-8083-31).',
    nominal:
      'Diese Abwicklung rechnet keine Zugabe für Kantungen: Gebogenes wird größer als sein Nennmaß. Die gebogenen Maße folgen aus dem, was das Blech tut, und was in dieses Teil oder darüber passt, folgt ihnen.',
  },
  template: {
    title: (part, job) => (job === '' ? `Schablone von ${part}` : `${job}: Schablone von ${part}`),
    map: 'Übersicht der Blätter',
    mapAlt: (part, tiles) => `Wo die ${tiles} Blätter der Schablone von ${part} liegen`,
    tileAlt: (part, tile) => `Blatt ${tile} der Schablone von ${part}, wahre Größe`,
    page: (part, tile) => (tile === '' ? part : `${part}, Blatt ${tile}`),
    make: (quantity) => `${quantity} Stück`,
    printing:
      'In wahrer Größe drucken (100 %, nicht an die Seite anpassen) und vor Gebrauch das Quadrat auf jedem Blatt messen.',
    gluing:
      'Jedes Blatt an den Kanten „schneiden“ abschneiden, so über seine Nachbarn legen, dass die Kreuze sich decken, und kleben.',
    using:
      'Die Schablone auf die Anrissseite legen, festkleben und Ecken und Mitten mit dem Körner durchstechen; die Punkte mit der Reißnadel verbinden.',
    sights:
      'Strichpunktlinien mit S sind Anschlaglinien: auch ihre Enden durchstechen und unter die Kante der Oberwange legen.',
    square: (length, unit) => `Quadrat ${length} ${unit}`,
    cut: 'schneiden',
    glue: (tile) => `${tile} hier kleben`,
  },
};
