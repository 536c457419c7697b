import { many } from '../english.js';
import type { BendWords, HandFacts, ToldPlace } from './words.js';

const list = (names: readonly string[]): string =>
  names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;

const NEXT = 'The next step closes the hem.';
const spring = ({ set, angle }: HandFacts) => (set === angle ? '' : `: the sheet springs back to ${angle}`);
const closed = ({ strip, round }: HandFacts, flat: string): string =>
  round
    ? 'Press the edge down onto the sheet and leave the fold round: it must not be pressed flat.'
    : strip === null
      ? flat
      : `Lay a strip ${strip} thick into the fold, as thick as the gap of the hem. ${flat} Draw the strip out.`;
const vise = ({ held }: HandFacts) =>
  `Hang ${list(held)} between the folding bars, the line level with them, and clamp it.`;
const bench = ({ held }: HandFacts) =>
  `Lay ${list(held)} on the bench with the line at its edge and clamp a bar down on it along the line.`;
const block = ({ held }: HandFacts) =>
  `Lay ${list(held)} on the bench with the line at its edge, set the former block on it inside the part, its face along the line, and hold it down with a batten across its top, clamped to the bench past both ends of the part.`;
const over = ({ set }: HandFacts) =>
  `Bend the free side to ${set} with a mallet against a block of wood, a little at a time along the whole line.`;
const seamer = ({ held, set }: HandFacts) =>
  `Grip ${list(held)} in the hand seamer up to the line and turn it to ${set}, a little at a time along the whole line.`;
const laid = ({ angle }: HandFacts) =>
  `Take it out, lay it on the bench with the fold up, and lay the fold over to about ${angle} with the mallet. ${NEXT}`;
const gauge = ({ held, rear }: HandFacts) =>
  rear === null
    ? `Lay ${list(held)} on the die with the line under the punch`
    : `Lay the sheet on the die, ${list(held)} behind the punch, the ${rear.by} of ${rear.panel} against the back gauge`;
const rises = ({ tipsBack }: HandFacts) =>
  tipsBack
    ? 'Too little of it is in front of the tools to hold: have what lies behind them carried, clear of the tools; it rises as it is bent.'
    : 'Hold the sheet by hand in front of the tools; it rises as it is bent.';
const wire = ({ bends, rod }: HandFacts) =>
  rod === null
    ? `Bend ${list(bends)} up, lay the wire in and close the edge over it with pliers, mallet and setting-down tool, a little at a time from the middle.`
    : `Bend ${list(bends)} up and roll the edge round a rod of ${rod} with pliers and mallet, a little at a time from the middle; draw the rod out.`;

/** The end of a row that is set first, and where it lies. */
function rowStands({ from, by, end, onward }: ToldPlace): string {
  if (from === 'both')
    return {
      at: 'just as long as the bend',
      inside: `${by} of the bend left free at either end`,
      past: `${by} past either end of the bend`,
    }[end];
  const other = from === 'left' ? 'right' : 'left';
  const begins = from === 'left' ? 'beginning' : 'ending';
  return `${begins} ${end === 'at' ? 'at' : `${by} ${end}`} the ${from} end of the bend${onward ? `, standing out past the ${other} end` : ''}`;
}

/** How a bend is told in English. */
export const BENDS_ENGLISH: BendWords = {
  action: ({ action, direction, hem }, names, angle) =>
    ({
      bend: `bend ${list(names)} ${angle === null ? '' : `${angle} `}${direction}`,
      fold: `fold ${list(names)} ${angle === null ? `${direction} as far as it goes` : `${angle} ${direction}`}`,
      close:
        hem === 'open'
          ? `close ${list(names)}, an open hem, over a strip`
          : hem === 'teardrop'
            ? `close ${list(names)}, a teardrop hem`
            : `close ${list(names)} flat`,
      roll: `roll the edge ${list(names)}${hem === 'curl' ? '' : ' round the wire'}`,
    })[action],
  how: {
    bend: {
      brake: (f) =>
        `Clamp ${list(f.held)} with the sight line under the edge of the fingers, then lift the leaf to ${f.set}${spring(f)}.`,
      press: (f) =>
        `${gauge(f)}, then press until the bend ${f.set === f.angle ? `measures ${f.angle} with the load off: it springs back` : `is ${f.set}: it springs back to ${f.angle} with the load off`}. ${rises(f)}`,
      vise: (f) => `${vise(f)} ${over(f)}`,
      bench: (f) => `${bench(f)} ${over(f)}`,
      former: (f) => `${block(f)} ${over(f)}`,
      seamer,
      hand: over,
      none: null,
    },
    fold: {
      brake: (f) =>
        `Clamp ${list(f.held)} with the sight line under the edge of the fingers, then lift the leaf as far as ${f.set}. ${NEXT}`,
      press: (f) => `${gauge(f)}, then press until the fold is ${f.set}. ${rises(f)} ${NEXT}`,
      vise: (f) => `${vise(f)} ${over(f)} ${laid(f)}`,
      bench: (f) => `${bench(f)} ${over(f)} ${laid(f)}`,
      former: null,
      seamer: (f) =>
        `${seamer(f)} Open the seamer, set it over the fold and press that over to about ${f.angle}. ${NEXT}`,
      hand: (f) => `${over(f)} ${laid(f)}`,
      none: () => `Fold it as far as the leaf goes. ${NEXT}`,
    },
    close: {
      brake: (f) =>
        closed(
          f,
          'Lift the fingers, push the fold under them up to its bend, and bring them down on it until the hem is closed.',
        ),
      press: (f) => closed(f, 'Lay the fold between flat bars and press until the hem is closed.'),
      vise: (f) => closed(f, 'Hang the fold between the jaws and close them until the hem is closed.'),
      bench: (f) =>
        closed(
          f,
          'Lay the fold on the bench and close it with the mallet, a little at a time along the whole line.',
        ),
      former: null,
      seamer: (f) =>
        closed(
          f,
          'Press the fold closed between the jaws of the hand seamer, a little at a time along the whole line.',
        ),
      hand: (f) => closed(f, 'Close the fold with the mallet on the bench, from the middle outwards.'),
      none: (f) =>
        closed(
          f,
          'Squeeze the fold under the jaw, or dress it down with a mallet on the bench, from the middle outwards.',
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
      along: 'Slide the part in along the line, past the end of the fingers.',
      tilted: 'Tilt the part, front up, to hook its rear wall in under the fingers.',
      'with-fingers': 'Loosen the fingers from the jaw and bring part and fingers in together.',
    },
    punch: {
      along: 'Slide the part in along the line, past the end of the punch.',
      tilted: 'Tilt the part on its way up, so that what is turned in passes beside the punch.',
      'end-first':
        'Bring it under the punch one end first: what is turned in at that end over the foot of its horn, the other end low; then lift the other end past its foot.',
    },
  },
  takeOff: {
    jaw: {
      along: 'Take it off along the line, past the end of the fingers.',
      tilted: 'Take it off tilted, front up, so that its rear wall comes out round the fingers.',
      'with-fingers':
        'To take it off, loosen the fingers from the jaw, draw them out with the part, then out of the part.',
    },
    punch: {
      along: 'Take it off along the line, past the end of the punch.',
      tilted: 'Take it off downwards and tilted, so that what is turned in comes out beside the punch.',
      'end-first':
        'To take it off, push it along the line as far as it goes, let the end in front down past the foot of its horn, then draw it out the other way.',
    },
  },
  byHand: 'No machine of the shop bends it there: by hand.',
  check: (square) => `Check with ${square ? 'the square' : 'a protractor or a template'}.`,
  bare: (size) => `Up to ${size} at an end has no finger over it: dress it by hand.`,
  claim: {
    none: (proved) => (proved === 'proved' ? 'no order of bends works' : 'no order of bends was found'),
    flat: 'nothing to bend',
    steps: (steps, time) => `${many(steps, 'operation')}, ${time} a piece`,
    best: (tools) =>
      tools === 'any'
        ? 'no order takes less time'
        : 'no order that changes tools only where it has to takes less time',
    less: (share, tools) =>
      `another order may take up to ${share} less time${tools === 'any' ? '' : ', with tools changed earlier perhaps more'}`,
  },
  labels: {
    machine: 'machine',
    held: 'held',
    jaws: 'in the jaws',
    face: 'marked face',
    towards: 'towards you',
    upright: 'top end',
    bars: 'bars',
    block: 'former block',
    sight: 'sight line',
    stop: 'rear stop',
    setBack: 'set-back',
    angle: 'angle',
    fingers: 'fingers',
    punch: 'punch',
    die: 'die',
    tools: 'tools',
    force: 'force',
    middle: 'off the middle',
    gauge: 'back gauge',
    hem: 'hem',
    radius: 'inside radius',
  },
  sides: {
    left: 'left edge',
    right: 'right edge',
    near: 'near edge',
    far: 'far edge',
    'near-left': 'near left corner',
    'near-right': 'near right corner',
    'far-left': 'far left corner',
    'far-right': 'far right corner',
  },
  values: {
    held: (panels, beside) =>
      `${list(panels)}, at ${panels.length > 1 ? 'their edges' : 'its edge'} to ${list(beside)}`,
    face: (faceUp, upright, { over: turned }) =>
      `${upright === 'upright' ? (faceUp === 'marked' ? 'away from you' : 'towards you') : faceUp === 'marked' ? 'up' : 'down'}${turned === null ? '' : turned === 'sidewise' ? ' (turn the part over sidewise)' : ' (turn the part over end for end)'}`,
    towards: (side, roughly, round) =>
      `${roughly === 'roughly' ? 'roughly the ' : ''}${side} of the pattern${round === null ? '' : round === 180 ? ' (turn it half round)' : ` (turn it ${round > 0 ? 'counter-clockwise' : 'clockwise'})`}`,
    sight: (off, way, panel) =>
      off === null
        ? 'on the bend line'
        : `${off} from the bend line, ${way === 'towards' ? 'towards' : 'away from'} ${panel}`,
    bars: (size) => `${size} long, as long as the bend`,
    block: (size) => `${size} long, sawn to the bend`,
    punch: (name, hollow, horns) =>
      [
        name,
        ...(hollow === null
          ? []
          : [`its hollow ${hollow === 'front' ? 'towards you' : 'to the back gauge'}`]),
        ...(horns === null ? [] : ['between its horns, feet outwards']),
      ].join(', '),
    horn: (size) => `${size} (horn)`,
    stop: (size, panel, by) => `${size} behind the edge of the fingers, at the ${by} of ${panel}`,
    middle: (size, side) =>
      `the bend stands ${size} to the ${side} of the middle of the press; its manual says what it takes there`,
    gauge: (size, panel, by) => `${size} behind the middle of the punch, at the ${by} of ${panel}`,
    byLine: 'none: no edge behind can lie against it; go by the line',
    angle: (set, angle) => (set === angle ? `stop at ${set}` : `stop at ${set}, springs back to ${angle}`),
    unloaded: (angle) => `${angle}, measured with the load off`,
    allTools: 'any, along the whole line',
    tools: (pieces, place, gap) =>
      `${pieces.join(' + ')} from the left${gap === null ? '' : `, ${gap} apart`}, ${rowStands(place)}`,
    force: (force) => `${force} kN`,
    radius: (made, drawn) => `about ${made}, ${drawn} drawn`,
    hem: (kind, gap) =>
      kind === 'open'
        ? `open, over a strip of ${gap}`
        : kind === 'teardrop'
          ? 'teardrop, left round'
          : 'flat, without a gap',
  },
};
