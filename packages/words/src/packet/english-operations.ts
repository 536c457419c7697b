import type { KnownFastener } from '@tinwright/core/family';
import { many } from '../english.js';
import { inHole, names } from './joint-facts.js';
import type { JointFacts, PacketWords } from './words.js';

const pairs = (joints: readonly JointFacts[]) =>
  joints
    .map((j) =>
      j.from === j.to ? `${j.from}, its own edges (${j.joint})` : `${j.to} on ${j.from} (${j.joint})`,
    )
    .join(', ');

const K = 'K = ((2 × (R + T) – deduction) × 0.637 – R) ÷ T, where R is the inside radius and T the thickness';

const FASTENERS: Readonly<Record<string, string>> = {
  'spot-weld': 'spot weld',
  'plug-weld': 'plug weld',
  'blind-rivet': 'rivet',
  screw: 'screw',
};
const fastenerName = ({ name, facts }: KnownFastener) =>
  FASTENERS[name] ?? facts.words?.one ?? name.replaceAll('-', ' ');
const fastenerNames = (kind: KnownFastener) =>
  FASTENERS[kind.name] === undefined && kind.facts.words !== undefined
    ? kind.facts.words.more
    : `${fastenerName(kind)}s`;

const TRIAL_JOINTS: Readonly<Record<string, readonly string[]>> = {
  'spot-weld': [
    'Clean two strips of the same sheet bare of oil, paint and scale. Weld them with one spot and peel them apart in the vise.',
    'The weld is good when it tears a button of metal out of one strip. If it parts at the face between the sheets, the setting is too weak: change time or current by the manual of the welder and try again.',
  ],
  'plug-weld': [
    'Clean two strips of the same sheet, drill the hole in the upper one, clamp and weld through it; then try to peel them apart in the vise. Mend the setting until the weld holds and does not burn through.',
  ],
  'blind-rivet': [
    'Drill two strips of the same sheet, deburr the holes on both sides, and set one rivet. The head lies flat, the strips lie tight on each other, and the rivet does not turn.',
  ],
  screw: [
    'Drill two strips of the same sheet and drive one screw. It draws the strips tight and does not strip the thread.',
  ],
};

/** Operations of a packet in English. */
export const ENGLISH_OPERATIONS: PacketWords['operations'] = {
  shop: (name, assumed) =>
    assumed
      ? `No shop was given. The machines are assumed: ${name}. Numbers for fingers, stop and angle are those of the assumed brake; find your own where yours differs.`
      : `For the machines of ${name}.`,
  found: (parts) => `Bend order found for these machines: ${parts}.`,
  usual: (parts) =>
    `The trade's usual order of bends is given for ${parts} (hems, then inner before outer, then short before long; common practice, no source). No machine was tried: fold the part in paper first, and look that nothing is in the way.`,
  impossible: (part, reasons, helps) =>
    `On these machines no order of bends was found for ${part}: ${reasons}. ${helps.length === 0 ? 'Nothing that was tried would help: ask somebody with other machines.' : `It would go with ${helps.join('; or ')}.`} The order given for it here is the trade's usual one, which these machines do not do.`,
  tools: 'Lay out',
  toolNames: {
    gloves: 'gloves',
    eyes: 'eye protection',
    rule: 'steel rule',
    square: 'try square',
    scriber: 'scriber',
    pencil: 'pencil',
    'centre-punch': 'centre punch',
    hammer: 'hammer',
    shear: 'shear',
    snips: 'snips or notcher',
    file: 'file or deburring tool',
    drill: 'drill with bits, and a block of wood',
    brake: 'brake',
    press: 'press brake',
    vise: 'vise with folding bars',
    mallet: 'mallet',
    protractor: 'protractor or a template of the angle',
    caliper: 'caliper',
    clamps: 'clamps',
    'spot-welder': 'spot welder',
    welder: 'welder',
    'rivet-gun': 'rivet gun and rivets',
    pliers: 'broad flat pliers',
    screwdriver: 'screwdriver and screws',
  },
  reasons: {
    'metal-differs': 'no two sheets and no two machines are alike; scrap is cheaper than a part',
    'all-from-edges': 'everything is measured from two edges, so these have to be straight and square',
    'burrs-lift': 'burrs cut hands, and keep the sheet from lying flat on rule, bed and stop',
    'each-from-datum': 'measured from the last line, small errors add up',
    'scratch-cracks': 'a scratch on the outside of a bend can start a crack',
    'flat-while-it-can': 'when the walls stand, snips no longer get there',
    'walls-block-drill':
      'when the walls stand, the drill may no longer get there, and a flat sheet lies firmly on its block',
    'match-drill': 'holes drilled through both parts fit; holes marked twice seldom do',
    'hems-before-walls': 'a hem is pressed flat, an edge rolled, while the sheet beside it is flat',
    'inner-before-outer': 'what hangs on a wall is bent before the wall stands in the way',
    'short-before-long': 'short walls fit between the fingers of the brake, long ones then pass beside them',
    'found-order': 'in this order every bend still fits into the machine',
    'correct-while-open': 'now it can still be put right',
    'bends-vary':
      'bends come out a little different on every machine; the next part is made for what is there',
    'spring-in':
      'no straight way leads in, past hems or returns: spring the walls apart by hand, one end first; where they do not give, make it smaller or bend the last wall after it',
    'seat-square': 'what is clamped askew stays askew',
    'first-can-be-undone': 'one fastener can still be undone; two hold whatever is wrong',
    'middle-outwards':
      'each one pushes the sheet ahead of it; from the middle outwards it has somewhere to go',
    'holds-by-others': 'it is held by what stands round it',
    'hands-and-cloth': 'it will be carried with bare hands',
    'play-small': 'it has less play than bends may be off (ISO 2768-1 m), so planned sizes will not do',
    'measured-is-known': 'what is not measured is not known',
  },
  why: (text) => `Why: ${text}.`,
  with: (tools) => `With: ${tools}`,
  leafTerms:
    'Sight line: what lies under the edge of the fingers, which the sheet is bent round. Rear stop: from that edge back to the edge of the sheet that lies against it. Set-back: how far that edge stands behind the edge of the leaf.',
  glossary:
    'Directions are those of the picture: the sheet as it lies before you to be marked. Parts are named after them too: west is left, east right, north far, south near.',
  directions: {
    heading: 'Directions',
    alt: 'The sheet as it lies before you, marked face up: near edge towards you, far edge away from you, left and right edge; the datum corner is near left',
    face: 'marked face up',
    datum: 'datum corner',
    you: 'you',
    note: 'They belong to the sheet and go with it when it is turned: "right edge towards you" is this right edge.',
  },
  heading: 'In this order',
  pictures:
    'In the pictures of bends the cross-sections are seen from your left; where the part lies in the machine you stand at the lower right. Thick: turns. Hatched: held.',
  plans: 'To read the plans',
  asBefore: (number) => `As operation ${number}.`,
  again: (numbers) =>
    `${numbers.length === 1 ? 'Twice' : `${numbers.length + 1} times`}: so is operation ${numbers.join(', ')}.`,
  trialBend: ({ thickness, radius, length, width, deduction, laidOut }, unit) => ({
    title: 'Bend a trial strip',
    lines: [
      `Shear a strip of the same sheet (${thickness}), exactly ${length} ${unit} long and about ${width} ${unit} wide. Scribe its middle, bend it there to 90° with inside radius ${radius} ${unit}, and measure both legs over the outside. Both legs together, less the length of the strip, are the deduction.`,
      laidOut === 'nominal'
        ? `${deduction === null ? '' : `The metal is expected to take ${deduction} ${unit}; the plans take nothing off, so both legs together come out that much longer. `}When yours is off by more than a fifth of the thickness, so are the sizes as formed: print the packet again with forms: { rule: k-factor, k: K } in the job, your ${K}.`
        : `${deduction === null ? 'The plans list the deductions they expect.' : `The plans expect ${deduction} ${unit}.`} When yours is off by more than a fifth of the thickness, the packet should be printed again with your ${K}. Else go on.`,
    ],
  }),
  shear: (part, quantity, x, y, diagonal, unit, how) => ({
    title: `${part}: shear ${many(quantity, 'blank')}`,
    lines: [
      `${x} × ${y} ${unit}, square when both diagonals are ${diagonal}.`,
      how === 'numbered'
        ? 'Make the cuts of the cut list in their order.'
        : 'Shear one long edge straight first, then the others square to it.',
    ],
  }),
  deburr: (part) => ({
    title: `${part}: deburr`,
    lines: ['Take the burr off all four edges, both faces, and wipe the sheet clean.'],
  }),
  mark: (part, noted) => ({
    title: `${part}: mark out`,
    lines: [
      `Take the plan of ${part}.`,
      ...(noted ? [`There is something to know about ${part} first: it stands behind the cautions.`] : []),
      'Lay the sheet as the pattern is drawn: datum corner near left. The face you mark is the marked face; write the name of the part on it.',
      'Go through the marking-out table row by row: set rule or square once, and scribe from every edge the row names as far as it says. Measure from the edge, never from the last line.',
      'Centre-punch holes lightly; a fastener without a hole gets a pencil cross.',
    ],
  }),
  cutOut: (part, openings) => ({
    title: `${part}: cut out`,
    lines: [
      'Cut notches and slanted edges along the wide lines of the plan, on the waste side; drill relief holes first where the plan has some. Cut up to the corner of a notch from both sides, never past it. File the cuts.',
      ...(openings === 0
        ? []
        : [
            `${openings === 1 ? 'One opening' : `${openings} openings`}: drill inside the line, at every rounded end or corner first, then saw, nibble or file up to it. The sheet stays clamped on both sides of the cut.`,
          ]),
    ],
  }),
  drill: (part, holes, unit) => ({
    title: `${part}: drill`,
    lines: [
      ...holes.map(({ count, diameter, purpose, drill, firstOnly }) =>
        firstOnly
          ? `Ø${diameter} ${unit} for ${purpose}s${drill === '' ? '' : `, with a drill of ${drill}`}: of the ${count} marked, drill only one in each row, the nearest to its middle, of two either. The others are drilled through the other part once both are clamped together.`
          : `${count} × Ø${diameter} ${unit}${purpose === '' ? '' : ` for ${purpose}s`}${drill === '' ? '' : `, with a drill of ${drill}`}.`,
      ),
      'Centre-punch, clamp the sheet on a block of wood, drill small first, then to size. A large hole is better punched, sawn or cut with a hole saw. Deburr both faces.',
    ],
  }),
  form: (part, { flaps, side, height, angle }, unit) => ({
    title: `${part}: bend ${flaps === 1 ? 'the flap of the louvre' : `${flaps} flaps of louvres`} out`,
    lines: [
      `Each flap is cut free on three sides. Grip it along the scribed line with broad flat pliers and bend it ${side === 'up' ? 'to the marked face' : 'away from the marked face'}, ${angle}°, until its free edge stands ${height} ${unit} off the sheet, a little at a time from end to end. Pictures and fits show it flat.`,
      'File the free edges and the ends of the cuts; a crack at an end is drilled out.',
    ],
  }),
  check: (part, bent, sizes, unit) => ({
    title: `${part}: measure it`,
    lines: [
      ...(bent ? ['Correct the angles by hand first: most errors are angles.'] : []),
      sizes === null
        ? 'Fill in the inspection sheet.'
        : `In ${unit === 'in' ? 'inches' : unit}: ${sizes.join(', ')}.`,
    ],
  }),
  measure: (part, { size, own, between, planned, follows, over }, unit) => ({
    title: `Before ${part} is cut: measure what it fits`,
    lines: [
      follows !== null
        ? `Measure ${follows.part}, ${follows.what}, at both ends and in the middle: ${planned} ${unit} is planned (${size}).`
        : between === null
          ? `Measure between the walls where ${part} will stand, at both ends and in the middle: ${planned} ${unit} is planned${size === null ? '' : ` (${size})`}.`
          : `Measure the clear distance between ${between[0]} and ${between[1]} where ${part} will sit: ${planned} ${unit} is planned.`,
      `Take the ${over ? 'largest' : 'least'}.`,
      `Where it is not as planned, make ${part} smaller or larger by the difference: in its marking-out table the lines of the far half move by as much.`,
      `With the program: ${
        size === null
          ? `change ${own ?? `the size of ${part}`} in the job`
          : `tinwright refit JOB --measured ${size}=LENGTH`.replaceAll(' ', '\u00A0')
      } and print its plan again.`,
    ],
  }),
  trialJoint: (fastener) => ({
    title: `Try one ${fastenerName(fastener)} on scrap`,
    lines: TRIAL_JOINTS[fastener.name] ??
      fastener.facts.words?.trial ?? ['Join two strips of the same sheet and try to part them.'],
  }),
  place: (joints, fastener, unit) => ({
    title: fastener !== null ? `Set in place and clamp: ${names(joints)}` : `Set in place: ${names(joints)}`,
    lines:
      fastener !== null
        ? [
            `Put ${pairs(joints)} as the joints plan shows; beside them at least ${[...new Set(joints.map((j) => j.clearance))].join(' or ')} ${unit} stays free.`,
            'Marks lie on marks.',
            ...(inHole(fastener)
              ? []
              : [
                  'Those that would be hidden between the sheets are first copied to the outside of one of them.',
                ]),
            'Clamp with little force. Check with the square that it stands upright, that both ends are alike, and that both diagonals across the open side are the same. Shift until they are, then clamp tight.',
          ]
        : [`Put ${pairs(joints)}. It is held without fasteners.`],
  }),
  fit: ({ name, what, count, pieces, fastener, opens }) => ({
    title: `Fit ${what}${count > 1 ? ` (${count})` : ''}: ${name}`,
    lines: [
      pieces.length > 1
        ? `Put ${pieces.join(' and ')} together as the joints plan shows, shut, edges flush, and hold them so. Lay it over the holes of both.`
        : `On ${pieces[0]}, over its holes.`,
      fastener === null
        ? 'Fasten it with what it comes with.'
        : `Set one ${fastenerName(fastener)} in ${pieces.length > 1 ? 'each half' : 'it'}, ${opens === null ? 'look that it sits straight' : `open it ${opens}° by hand and shut it again`}, then set the others.`,
      ...(opens === null ? [] : ['Keep fingers out of the line where both meet while it shuts.']),
    ],
  }),
  first: (fastener, joints) => ({
    title: `First ${fastenerName(fastener)}: ${names(joints)}`,
    lines: [
      `Set one ${fastenerName(fastener)} in each joint, the one nearest the middle of the row.${
        inHole(fastener)
          ? ' Where the hole is not there yet, drill it through the other part and deburr it.'
          : ''
      }`,
      'Then look for the last time: square, both ends upright, edges flush, nothing twisted. If not, undo it and clamp again.',
    ],
  }),
  rest: (fastener, joints) => ({
    title: `The other ${fastenerNames(fastener)}: ${names(joints)}`,
    lines: [
      `${joints.map((j) => `${j.joint} ${j.count} in all`).join(', ')}.`,
      'From the middle outwards, left and right by turns.',
      ...(inHole(fastener)
        ? [
            'Drill the missing holes through the holes of the other part, deburr them, and set each fastener before the next hole is drilled.',
          ]
        : []),
    ],
  }),
  finish: {
    title: 'Finish',
    lines: [
      'Run a hand in a cotton glove over every edge and corner; where it catches, file. Round corners that stand out. Wash off oil and chips.',
    ],
  },
  inspect: {
    title: 'Inspect',
    lines: [
      'Fill in the last columns of the inspection sheet and sign it. Press on every joint by hand: nothing moves.',
    ],
  },
};
