import type { JointFacts, PacketWords } from './words.js';

const many = (count: number, one: string, more: string = `${one}s`) => `${count} ${count === 1 ? one : more}`;
const pairs = (joints: readonly JointFacts[]) =>
  joints
    .map((j) =>
      j.from === j.to ? `${j.from}, its own edges (${j.joint})` : `${j.to} on ${j.from} (${j.joint})`,
    )
    .join(', ');
const names = (joints: readonly JointFacts[]) => joints.map((j) => j.joint).join(', ');

const FASTENERS: Readonly<Record<string, string>> = {
  'spot-weld': 'spot weld',
  'plug-weld': 'plug weld',
  'blind-rivet': 'rivet',
  screw: 'screw',
};
const fastenerName = (kind: string) => FASTENERS[kind] ?? kind.replaceAll('-', ' ');

/** True for fasteners that go through a hole in both sheets. */
const hasHole = (fastener: string) => fastener === 'blind-rivet' || fastener === 'screw';

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

/** What packets say in English. */
export const ENGLISH_PACKET: PacketWords = {
  page: (n, of) => `page ${n} of ${of}`,
  packet: (job) => (job === '' ? 'Packet' : `${job}: packet`),
  sections: {
    cover: 'Parts and contents',
    cautions: 'Cautions: read first',
    cuts: 'Cut list',
    plans: 'Plans',
    operations: 'Operations',
    joints: 'Joints plan',
    inspection: 'Inspection sheet',
    templates: 'Templates at full size',
    worksheets: 'Worksheets',
    answers: 'Answers',
  },
  plan: (part) => `Plan of ${part}`,
  template: (part) => `Template of ${part}`,
  contents: 'Contents',
  contentsPage: 'page',
  cover: {
    picture: 'What it will be',
    pictureAlt: (job, pieces) =>
      `${job === '' ? 'The object' : `The ${job}`} put together, seen from above at a corner; its pieces: ${pieces}`,
    partAlt: (part) => `${part} bent, seen from above at a corner`,
    parts: 'Parts',
    columns: {
      letter: '',
      part: 'part',
      what: 'what it is',
      make: 'make',
      stock: 'sheet',
      blank: 'blank',
      mass: 'each',
    },
    mass: (text) => `Altogether ${text}, fasteners left out.`,
    sets: (count, has) =>
      `For ${count} sets: the pieces in the parts list${has('cuts') ? ', the cut list and below it' : ''} are those of all sets.`,
    start: (has) =>
      [
        'Read the cautions first.',
        ...(has('operations')
          ? [
              `Then work through the operations one by one and tick them off${has('plans') ? '; they say when to take which plan' : ''}.`,
            ]
          : []),
        ...(has('plans') ? ['A plan is for marking out with rule and square.'] : []),
        ...(has('templates')
          ? [
              `A template is ${has('plans') ? 'the same' : 'a pattern'} at full size, to lay on the sheet${has('plans') ? ', and may be used in its place' : ''}.`,
            ]
          : []),
        ...(has('worksheets')
          ? ['A worksheet is a plan with sizes left out: work them out and fill them in.']
          : []),
      ].join(' '),
  },
  cautions: {
    columns: { where: 'where', what: 'what can hurt, and what to do (source)' },
    all: {
      edges: {
        where: 'cut edges',
        text: 'Sheared edges and burrs cut like knives. Wear gloves to carry and turn sheet, carry it upright, deburr every edge and hole before anything else is done with it.',
        source: 'edges as in ISO 13715, from memory',
      },
      'burr-rotating': {
        where: 'drill',
        text: 'No gloves, loose sleeves, rings or loose hair near a drill or any other turning tool. Clamp the sheet down: thin sheet grabs when the drill breaks through.',
        source: 'trade pages; 29 CFR 1910.138, from memory',
      },
      eyes: {
        where: 'eyes and ears',
        text: 'Eye protection marked ANSI Z87.1 or EN 166 for cutting, drilling, hammering and when mandrels snap; hearing protection for hammering.',
        source: '29 CFR 1910.133, from memory',
      },
      shear: {
        where: 'shear',
        text: 'Keep fingers behind the guard and away from blade and hold-down; one person works the shear; feet clear of what falls.',
        source: "29 CFR 1910.212, from memory; the shear's manual",
      },
      'leaf-brake': {
        where: 'brake',
        text: 'Jaw and leaf crush. Hands off the bend line before the jaw closes, everybody clear of the leaf and its counterweights; a large sheet whips up while it is bent: stand to the side.',
        source: "from memory; the brake's manual",
      },
      'press-brake': {
        where: 'press brake',
        text: 'Hands stay out of the point of operation. A distance of 4 in (100 mm) from it is only allowed where guards cannot be used, and for trained operators. The sheet whips up; the back gauge pinches.',
        source: 'OSHA CPL 02-01-025, 29 CFR 1910.212',
      },
      vise: {
        where: 'vise and hammer',
        text: 'Strike with a mallet on a bar or block, never on the edge; look out for fingers between sheet and jaw.',
        source: 'from memory',
      },
      'resistance-weld': {
        where: 'spot welder',
        text: 'Only for people trained on it. Fingers never between the electrodes; guard or two-hand control where they could be; foot switch guarded; sparks shielded, eyes and arms covered.',
        source: '29 CFR 1910.255(a)(3), (b)(4) to (b)(6)',
      },
      implants: {
        where: 'spot welder',
        text: 'People with a pacemaker or a similar implant keep away from resistance welders: the magnetic field can disturb it.',
        source: 'ANSI Z49.1, directive 2013/35/EU, from memory',
      },
      arc: {
        where: 'arc welding',
        text: 'The arc burns eyes and skin: welding helmet with the right shade, covered skin, screens for everybody else. Only for trained people.',
        source: 'ANSI Z49.1, from memory',
      },
      fire: {
        where: 'hot work',
        text: 'Move or cover what burns within 35 ft (11 m), keep an extinguisher at hand, and watch for at least 30 minutes after the work (NFPA 51B asks for 60). Welded metal stays hot.',
        source: '29 CFR 1910.252(a)(2)(iii)(B), (vii), second-hand; NFPA 51B from memory',
      },
      air: {
        where: 'welding fume',
        text: 'Ventilate: an extractor at the work, or 2000 ft³/min (57 m³/min) of air for each welder in a room that is small (under 10 000 ft³ for each), low (under 16 ft) or closed.',
        source: '29 CFR 1910.252(c)(2), (c)(3)',
      },
      zinc: {
        where: 'galvanised sheet',
        text: 'Heated zinc gives off fume that makes ill like a flu (limit 5 mg/m³). Take the zinc off where it is welded or extract at the work, and follow the data sheets of sheet and filler.',
        source: '29 CFR 1910.1000, 1910.252, second-hand',
      },
      chromium: {
        where: 'stainless steel',
        text: 'Welding and hot cutting of stainless steel make hexavalent chromium: extract at the work, follow the data sheets of sheet and filler.',
        source: '29 CFR 1910.1026',
      },
      table: {
        where: 'cutting table',
        text: 'Laser: enclosure closed, interlocks working, right glasses. Plasma: shaded eye protection, extraction; no aluminium over water, which makes hydrogen. Only for trained people.',
        source: 'ANSI Z136, IEC 60825-1, from memory',
      },
      mandrels: {
        where: 'rivets',
        text: 'Mandrels snap and fly: eyes protected, catch or sweep them up. They are sharp.',
        source: '29 CFR 1910.133, from memory',
      },
      object: {
        where: 'finished object',
        text: 'Corners stay sharp even when edges are hemmed: round and deburr what hands, clothes or children can reach. Lift with both hands and a straight back.',
        source: 'sharp edges as in UL 1439, from memory',
      },
      food: {
        where: 'food',
        text: 'If food is to lie or grow in it: no lead solder or flux (0.2 % lead at most), wash off oil, line it where sheet or coating are not meant for food.',
        source: 'FDA Food Code 4-101.13(C); 21 CFR 189.240',
      },
      'food-zinc': {
        where: 'food and zinc',
        text: 'Galvanised sheet must not touch acid food (fruit, tomatoes, vinegar, sauerkraut): it dissolves zinc.',
        source: 'FDA Food Code 4-101.15',
      },
      pupils: {
        where: 'pupils',
        text: 'Under supervision, and after the teacher has shown the machine; the rules of the school come first.',
        source: 'BS 4163, from memory',
      },
      rules: {
        where: 'always',
        text: "Follow the machines' manuals, the rules of your school or shop and local codes. Get trained or licensed people where they are required.",
        source: 'common practice, no source',
      },
    },
    load: {
      question: 'How much does it carry?',
      answer:
        'That is not answered here. What sheet-metal work carries depends on the welds or rivets as they were really made, on the sheet as it really is, on how the load lies and swings, and on wear and rust; none of that is in a drawing. For lifting, for loads over people, for vehicles, pressure or heat a competent person has to check the finished object (in the UK LOLER 1998, in the US ASME B30.20; from memory). No load rating.',
    },
    findings: 'What to know about this job before cutting',
    findingColumns: { part: 'part', what: 'what', fix: 'what to do' },
    severity: { error: 'error', warning: 'warning', note: 'note' },
  },
  cuts: {
    heading: 'Blanks to shear',
    columns: {
      part: 'part',
      pieces: 'pieces',
      blank: 'blank',
      diagonal: 'diagonals',
      stock: 'sheet',
      mass: 'each',
      done: 'done',
    },
    notes: [
      'Shear blanks of the same width in one strip. Cut the parts that are measured for (see the operations) only after they are measured: until then shear the others.',
      'A blank is square when both diagonals are as long as given.',
    ],
    stock: 'Sheet needed, waste left out',
    stockColumns: { stock: 'sheet', pieces: 'blanks', area: 'area of blanks', mass: 'mass of blanks' },
  },
  operations: {
    shop: (name, assumed) =>
      assumed
        ? `No shop was given. The machines are assumed: ${name}. Numbers for fingers, stop and angle are those of the assumed brake; find your own where yours differs.`
        : `For the machines of ${name}.`,
    found: (parts) => `Bend order found for these machines: ${parts}.`,
    usual: (parts) =>
      `The trade's usual order of bends is given for ${parts} (hems, then inner before outer, then short before long; common practice, no source). No machine was tried: fold the part in paper first, and look that nothing is in the way.`,
    impossible: (part, reasons) =>
      `On these machines no order of bends was found for ${part}: ${reasons}. The order given for it is the trade's usual one: ask somebody with a deeper brake, or bend it over a bar in the vise.`,
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
      'hems-before-walls': 'a hem can only be pressed flat while the sheet beside it is flat',
      'inner-before-outer': 'what hangs on a wall is bent before the wall stands in the way',
      'short-before-long':
        'short walls fit between the fingers of the brake, long ones then pass beside them',
      'found-order': 'in this order every bend still fits into the machine',
      'correct-while-open': 'now it can still be put right',
      'bends-vary':
        'bends come out a little different on every machine; the next part is made for what is there',
      'seat-square': 'what is clamped askew stays askew',
      'first-can-be-undone': 'one fastener can still be undone; two hold whatever is wrong',
      'middle-outwards':
        'heat and force push the sheet ahead of them; from the middle outwards it has somewhere to go',
      'holds-by-others': 'it is held by what stands round it',
      'hands-and-cloth': 'it will be carried with bare hands',
      'measured-is-known': 'what is not measured is not known',
    },
    why: (text) => `Why: ${text}.`,
    with: (tools) => `With: ${tools}`,
    glossary:
      'Sight line: what lies under the edge of the fingers, which the sheet is bent round. Rear stop: from that edge back to the edge of the sheet that lies against it. Set-back: how far that edge stands behind the edge of the leaf. Directions are those of the picture: the sheet as it lies before you to be marked. Parts are named after them too: west is left, east right, north far, south near.',
    directions: {
      heading: 'Directions',
      alt: 'The sheet as it lies before you, marked face up: near edge towards you, far edge away from you, left and right edge; the datum corner is near left',
      face: 'marked face up',
      datum: 'datum corner',
      you: 'you',
      note: 'They belong to the sheet and go with it when it is turned: "right edge towards you" is this right edge.',
    },
    heading: 'In this order',
    picture: (part, step, of) => `Picture: ${part}, step ${step} of ${of}.`,
    pictures: (part) => `Pictures of bending ${part}`,
    trialBend: ({ thickness, radius, length, width, deduction }, unit) => ({
      title: 'Bend a trial strip',
      lines: [
        `Shear a strip of the same sheet (${thickness}), exactly ${length} ${unit} long and about ${width} ${unit} wide. Scribe its middle, bend it there to 90° with inside radius ${radius} ${unit}, and measure both legs over the outside. Both legs together, less the length of the strip, are the deduction.`,
        `${deduction === null ? 'The plans list the deductions they expect.' : `The plans expect ${deduction} ${unit}.`} When yours is off by more than a fifth of the thickness, the packet should be printed again with your K = ((2 × (R + T) – deduction) × 0.637 – R) ÷ T, where R is the inside radius and T the thickness. Else go on.`,
      ],
    }),
    shear: (part, quantity, x, y, diagonal, unit) => ({
      title: `${part}: shear ${many(quantity, 'blank')}`,
      lines: [
        `${x} × ${y} ${unit}. Shear one long edge straight first, then the others square to it; square when both diagonals are ${diagonal}.`,
      ],
    }),
    deburr: (part) => ({
      title: `${part}: deburr`,
      lines: ['Take the burr off all four edges, both faces, and wipe the sheet clean.'],
    }),
    mark: (part, bent, noted) => ({
      title: `${part}: mark out`,
      lines: [
        `Take the plan of ${part}. Lay the sheet as the pattern is drawn: datum corner near left. The face you mark is the marked face; write the name of the part on it.`,
        bent
          ? 'Go through the marking-out table from row 1 on: offsets from the left edge, then from the near edge, then slanted lines point to point, then centres. Set each from the edge, never from the last line.'
          : 'Go through the marking-out table from row 1 on: offsets from the edges, slanted lines point to point, then centres. Set each from the edge, never from the last line.',
        'Centre-punch holes lightly; a fastener without a hole gets a pencil cross.',
        ...(noted ? [`There is something to know about ${part} first: it stands behind the cautions.`] : []),
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
        ...holes.map(({ count, diameter, purpose, firstOnly }) =>
          firstOnly
            ? `Ø${diameter} ${unit} for ${purpose}s: of the ${count} marked, drill only the one nearest the middle of each row. The others are drilled through the other part once both are clamped together.`
            : `${count} × Ø${diameter} ${unit}${purpose === '' ? '' : ` for ${purpose}s`}.`,
        ),
        'Centre-punch, clamp the sheet on a block of wood, drill small first, then to size. A large hole is better punched, sawn or cut with a hole saw. Deburr both faces.',
      ],
    }),
    check: (part, bent, sizes, unit) => ({
      title: `${part}: measure it`,
      lines: [
        sizes.length === 0
          ? 'Measure it and fill in the inspection sheet.'
          : `In ${unit}: ${sizes.join(', ')}. Fill in the inspection sheet.${bent ? ' Correct the angles by hand first: most errors are angles.' : ''}`,
      ],
    }),
    measure: (part, { size, own, between, planned }, unit) => ({
      title: `Before ${part} is cut: measure what it fits into`,
      lines: [
        between === null
          ? `Measure between the walls where ${part} will stand, at both ends and in the middle: ${planned} ${unit} is planned${size === null ? '' : ` (${size})`}.`
          : `Measure the clear distance between ${between[0]} and ${between[1]} where ${part} will sit: ${planned} ${unit} is planned.`,
        `Take the least. Where it is not as planned, make ${part} smaller or larger by the difference: in its marking-out table the lines of the far half move by as much. With the program: ${
          size === null
            ? `change ${own ?? `the size of ${part}`} in the job`
            : `tinwright refit JOB --measured ${size}=LENGTH`.replaceAll(' ', '\u00A0')
        } and print its plan again.`,
      ],
    }),
    trialJoint: (fastener) => ({
      title: `Try one ${fastenerName(fastener)} on scrap`,
      lines: TRIAL_JOINTS[fastener] ?? ['Join two strips of the same sheet and try to part them.'],
    }),
    place: (joints, fastener, unit) => ({
      title:
        fastener !== null ? `Set in place and clamp: ${names(joints)}` : `Set in place: ${names(joints)}`,
      lines:
        fastener !== null
          ? [
              `Put ${pairs(joints)} as the joints plan shows; marks lie on marks.${hasHole(fastener) ? '' : ' Marks that would be hidden between the sheets are first copied to the outside of one of them.'} Beside them at least ${[...new Set(joints.map((j) => j.clearance))].join(' or ')} ${unit} stays free.`,
              'Clamp with little force. Check with the square that it stands upright, that both ends are alike, and that both diagonals across the open side are the same. Shift until they are, then clamp tight.',
            ]
          : [`Put ${pairs(joints)}. It is held without fasteners.`],
    }),
    first: (fastener, joints) => ({
      title: `First ${fastenerName(fastener)}: ${names(joints)}`,
      lines: [
        `Set one ${fastenerName(fastener)} in each joint, the one nearest the middle of the row.${
          hasHole(fastener)
            ? ' Where the hole is not there yet, drill it through the other part and deburr it.'
            : ''
        }`,
        'Then look for the last time: square, both ends upright, edges flush, nothing twisted. If not, undo it and clamp again.',
      ],
    }),
    rest: (fastener, joints) => ({
      title: `The other ${fastenerName(fastener)}s: ${names(joints)}`,
      lines: [
        `${joints.map((j) => `${j.joint} ${j.count} in all`).join(', ')}. From the middle outwards, left and right by turns.${
          hasHole(fastener)
            ? ' Drill the missing holes through the holes of the other part, deburr them, and set each fastener before the next hole is drilled.'
            : ''
        }`,
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
  },
  joints: {
    heading: 'Joints',
    columns: {
      joint: 'joint',
      pieces: 'pieces',
      by: 'by',
      count: 'number',
      pitch: 'pitch',
      hole: 'hole',
      clearance: 'gap beside it',
    },
    placed: 'set in place',
    pictureAlt: (job) =>
      `${job === '' ? 'The object' : `The ${job}`} taken apart along its joints; crosses mark fasteners`,
    picture: 'Which piece goes where',
    rules: 'What the fasteners need',
    ruleColumns: { by: 'centres, least', edge: 'from an edge', pitch: 'pitch', bend: 'from a bend' },
    drill: (rivet, drill) => `Rivet ${rivet}: drill ${drill}.`,
    by: (sources) => `Distances: ${sources}.`,
    grip: (stack) => `The sheets it holds are ${stack} thick together.`,
    notes: [
      'Where fasteners stand is marked on the plans of both parts: the same place on each. Gloves off the drill, eyes protected when mandrels snap or sparks fly.',
      'The distances say where a fastener holds the sheet, not what it carries. No load rating.',
    ],
  },
  inspection: {
    heading: (part, quantity) => (quantity === 1 ? part : `${part}, ${quantity} pieces`),
    columns: { what: 'dimension', nominal: 'nominal', limit: 'tolerance' },
    measured: (n, of) => (of === 1 ? 'found' : `found ${n}`),
    sides: { inside: 'inside', outside: 'outside', mould: 'to where the outside faces would meet', flat: '' },
    blankX: 'blank, along the near edge',
    blankY: 'blank, along the left edge',
    overall: { x: 'overall length', y: 'overall width', z: 'overall height' },
    angle: (numbers) => `angle of ${numbers}, with the square or protractor`,
    object: 'Put together',
    notes: (cut, bent) => [
      `Cut sizes are held to ISO 2768-1 class ${cut}, bent sizes to class ${bent}: what a hand brake holds (which class that is, and ±2° for angles, from memory).`,
      'Measure outside or inside as the line says, at both ends and in the middle; write down the worst. More pieces than columns: copy the sheet.',
    ],
    sign: 'Checked by, date:',
  },
  worksheet: {
    title: (part) => `Worksheet: ${part}`,
    set: (n, of) => (of === 1 ? 'Worksheet' : `Set ${n} of ${of}`),
    name: 'Name:',
    ask: (letters, unit) =>
      `On the pattern of this part the sizes ${letters} are left out. Work them out in ${unit}, write down how, and fill them in on the pattern.`,
    datum:
      'Every size on the pattern is measured from its left or its near edge. Start from the finished sizes.',
    bends: [
      'A flat length is the sum of the outside lengths, less one deduction for each bend between them.',
      'A bend line lies in the middle of its bent strip: half an allowance from where the flat panel ends. A flat panel is as long as its outside length, less half a deduction and half an allowance at each bend beside it.',
    ],
    columns: { letter: '', working: 'working', size: 'size' },
    answerColumns: { part: 'part', letter: '', what: 'what', size: 'size' },
    bendLine: (numbers) => `bend line ${numbers}`,
    edge: 'edge or corner',
    answersNote: 'For the teacher: take this page out before the worksheets are handed out.',
  },
};
