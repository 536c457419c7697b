import { frozen } from '@tinwright/core/internal';
import type { StepWords } from './words.js';

const list = (names: readonly string[]): string =>
  names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;

/** What step pictures say in English. */
export const STEPS_ENGLISH: StepWords = frozen({
  language: 'en',
  title: (part, n, of) => `${part}, step ${n} of ${of}`,
  action: (action, bends, angle) =>
    ({
      bend: `bend ${list(bends)} to ${angle}`,
      fold: `fold ${list(bends)} as far as ${angle}`,
      close: `close ${list(bends)}`,
      roll: `work ${list(bends)} round the wire`,
    })[action],
  alt: (what) => `${what}: cross-section before and after, and the part as it lies in the machine`,
  before: 'Before',
  after: 'After',
  seen: (scale) => `, ${scale}, seen from your left`,
  detail: (scale) => `At the bend line, ${scale}`,
  lying: 'You stand at the lower right. Thick: turns. Hatched: held',
  held: (panel, { machine, action }) =>
    `${panel}: ${{ brake: action === 'close' ? 'on the bed' : 'clamped', press: 'at the gauge', vise: 'clamped', hand: 'held' }[machine]}`,
  turns: (panel, { action }) => `${panel}: ${action === 'close' ? 'is pressed flat' : 'turns'}`,
  tools: {
    fingers: 'finger',
    beam: 'beam',
    bed: 'bed',
    leaf: 'leaf',
    punch: 'punch',
    ram: 'ram',
    die: 'die',
    gauge: 'back gauge',
    bar: 'bar',
    table: 'table',
    jaw: 'jaw',
  },
  setBackHere: (size) => `set-back ${size}`,
  sightHere: 'sight line under this edge',
  openingHere: (size) => `V ${size}`,
  compass: ['east', 'north-east', 'north', 'north-west', 'west', 'south-west', 'south', 'south-east'],
  about: (compass) => `roughly ${compass}`,
  hook: 'Tilt the part front up to hook its rear wall in under the fingers.',
  how: {
    brakeBend: ({ held, set, angle }) =>
      `Clamp ${held} with the sight line under the edge of the fingers, then lift the leaf to ${set}${set === angle ? '' : `: the sheet springs back to ${angle}`}.`,
    brakeFold: ({ held, set }) =>
      `Clamp ${held} with the sight line under the edge of the fingers, then lift the leaf as far as ${set}. The next step closes the hem.`,
    brakeClose: () =>
      'Lift the fingers, push the fold under them up to its bend, and bring them down on it until the hem is closed.',
    pressBend: ({ held, set, angle }) =>
      `Push ${held} against the back gauge, then press until the bend ${set === angle ? `measures ${angle} with the load off: it springs back` : `is ${set}: it springs back to ${angle} with the load off`}.`,
    pressFold: ({ held, set }) =>
      `Push ${held} against the back gauge, then press until the fold is ${set}. The next step closes the hem.`,
    pressClose: () => 'Lay the fold between flat bars and press until the hem is closed.',
    viseBend: ({ held, angle }) =>
      `Hang ${held} between the folding bars, clamp it, then push the free side over to ${angle}, even along the whole line.`,
    viseFold: ({ held, angle }) =>
      `Hang ${held} between the folding bars, clamp it, then push the free side over to ${angle}. The next step closes the hem.`,
    viseClose: () => 'Hang the fold between the jaws and close them until the hem is closed.',
    benchBend: ({ held, angle }) =>
      `Lay ${held} on the bench with the line at its edge, clamp a bar down on it along the line, then push the free side to ${angle}, even along the whole line.`,
    benchFold: ({ held, angle }) =>
      `Lay ${held} on the bench with the line at its edge, clamp a bar down on it along the line, then push the free side to ${angle}. The next step closes the hem.`,
    benchClose: () =>
      'Lay the fold on the bench and close it with the mallet, a little at a time along the whole line.',
    seamerBend: ({ held, angle }) =>
      `Grip ${held} in the hand seamer up to the line and turn it to ${angle}, a little at a time.`,
    seamerFold: ({ held, angle }) =>
      `Grip ${held} in the hand seamer up to the line and turn it to ${angle}, a little at a time. The next step closes the hem.`,
    seamerClose: () =>
      'Press the fold closed between the jaws of the hand seamer, a little at a time along the whole line.',
    handRoll: ({ bends }) =>
      `Lay the wire in and roll the edge of ${list(bends)} round it with pliers, hammer and a setting-down tool.`,
  },
  rows: {
    machine: 'machine',
    held: 'held',
    up: 'face up',
    towards: 'near you',
    upright: 'top end',
    sight: 'sight line',
    stop: 'rear stop',
    setBack: 'set-back',
    angle: 'angle',
    fingers: 'fingers',
    punch: 'punch',
    die: 'die',
    tools: 'tools',
    force: 'force',
    gauge: 'back gauge',
    gap: 'hem',
  },
  cells: {
    machine: (kind, name) => (kind === 'hand' ? 'none: by hand' : name),
    held: (panel, bends) => `${panel}, at its edge to ${list(bends)}`,
    face: (face, kind, flipped) =>
      `${face} face ${kind === 'vise' ? 'away from you' : 'up'}${flipped ? ': flip the part over' : ''}`,
    towards: (compass, turned) =>
      `${compass} side of the pattern${turned === null ? '' : turned === 180 ? ': turn it right round' : `: turn it ${turned > 0 ? 'counter-clockwise' : 'clockwise'}`}`,
    sight: (offset, panel, towards) =>
      `${offset} from the tangent line of ${panel}, ${towards === 'bend' ? 'towards' : 'away from'} the bend`,
    tangentIsSight: (panel) => `the tangent line of ${panel}`,
    stop: (size) => `${size} behind the edge of the fingers`,
    noStop: 'none: no straight edge behind; go by the line',
    angle: (set, angle) => (set === angle ? `stop at ${set}` : `stop at ${set}, springs back to ${angle}`),
    unloaded: (angle) => `${angle}, measured with the load off`,
    allTools: 'any; they may stand along the whole line',
    tools: (pieces, from, side, gap) =>
      `${pieces.join(' + ')}, from the left; they start ${from} ${side === 'in' ? 'inside' : 'outside'} the left end of the bend${gap === '' ? '' : `, ${gap} apart`}`,
    unit: (size) => size,
    force: (force) => `${force} kN`,
    gauge: (size) => `${size} behind the middle of the punch`,
    noGauge: 'none: no straight edge behind; go by the line',
    gap: (size) =>
      size === '' ? 'flat, without a gap' : `lay a strip of ${size} in: that much gap stays inside`,
  },
  caution: {
    brake:
      "Caution: hands clear of fingers and leaf, and of the leaf's handles and weights as it swings. Follow the machine's manual.",
    press:
      "Caution: no hand between punch and die, none where the sheet swings up. Follow the machine's manual.",
    vise: 'Caution: sharp edges; protect your eyes, and mind your fingers under the hammer.',
    hand: 'Caution: sharp edges; protect your eyes, and mind your fingers under the hammer.',
  },
});
