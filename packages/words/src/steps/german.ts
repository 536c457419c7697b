import type { StepWords } from './words.js';

/** What step pictures say in German. */
export const STEPS_GERMAN: StepWords = {
  language: 'de',
  title: (part, n, of) => `${part}, Schritt ${n} von ${of}`,
  alt: (what) => `${what}: Querschnitt vorher und nachher, und das Teil, wie es in der Maschine liegt`,
  before: 'Vorher',
  after: 'Nachher',
  seen: (scale) => `, ${scale}, von links gesehen`,
  detail: (scale) => `An der Biegelinie, ${scale}`,
  lying: 'Standplatz rechts unten. Dick: dreht sich. Schraffiert: gehalten',
  lies: 'Wie es liegt',
  held: (panel, { machine, action, clamp, held, touches }) =>
    `${panel}: ${{ brake: action === 'close' ? 'auf der Unterwange' : 'geklemmt', press: action === 'close' ? 'auf dem Tisch' : touches?.panel === held ? 'am Anschlag' : 'auf dem Gesenk', vise: 'geklemmt', hand: clamp === 'seamer' ? 'liegt still' : 'gehalten' }[machine]}`,
  turns: (panel, { action, clamp }) =>
    `${panel}: ${action === 'close' ? 'wird flach gedrückt' : clamp === 'seamer' ? 'dreht sich mit der Zange' : 'dreht sich'}`,
  tools: {
    fingers: 'Segment',
    beam: 'Oberwange',
    bed: 'Unterwange',
    leaf: 'Biegewange',
    punch: 'Stempel',
    ram: 'Stößel',
    die: 'Gesenk',
    gauge: 'Anschlag',
    stop: 'Anschlag',
    bar: 'Schiene',
    table: 'Tisch',
    bench: 'Werkbank',
    mallet: 'Holzhammer',
    jaw: 'Backe',
    block: 'Klotz',
    batten: 'Leiste',
  },
  rolled: {
    wired: { stages: ['1 Kante hochstellen', '2 Draht einlegen', '3 Zurollen'], core: 'Draht' },
    curl: {
      stages: ['1 Kante hochstellen', '2 Stab einlegen', '3 Rollen, Stab raus'],
      core: 'Stab',
    },
  },
  setBackHere: (size) => `Rückstand ${size}`,
  sightHere: 'Anlegelinie unter dieser Kante',
  openingHere: (size) => `V ${size}`,
  row: (tools, end, unit) =>
    `${tools === 'fingers' ? 'Segmente' : 'Werkzeuge'} von vorn, ohne Maßstab: ${unit} vom ${end === 'left' ? 'linken' : 'rechten'} Ende der Kantung`,
  caution: {
    brake:
      'Vorsicht: Hände weg von Segmenten und Biegewange, von ihren Griffen und Gewichten, wenn sie schwenkt. Anleitung der Maschine befolgen.',
    press:
      'Vorsicht: keine Hand zwischen Stempel und Gesenk, keine, wo das Blech hochschlägt. Anleitung der Maschine befolgen.',
    vise: 'Vorsicht: scharfe Kanten; Augen schützen, Finger weg vom Hammer.',
    hand: 'Vorsicht: scharfe Kanten; Augen schützen, Finger weg vom Hammer.',
  },
};
