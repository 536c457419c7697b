import { ENGLISH_CAUTIONS } from './english-cautions.js';
import { ENGLISH_OPERATIONS } from './english-operations.js';
import type { PacketWords } from './words.js';

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
  bought: {
    heading: 'Bought parts',
    columns: {
      letter: '',
      part: 'name',
      what: 'what it is',
      count: 'pieces',
      size: 'size',
      on: 'goes on',
      by: 'held by',
    },
    open: (degrees) => `opens ${degrees}°`,
  },
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
      mass: 'finished',
    },
    mass: (text) => `Altogether ${text}, fasteners left out.`,
    totals: ({ sets, blanks, mass, fasteners, minutes }) =>
      `For ${sets} sets together: ${blanks} blanks, ${mass} of sheet as sheared${fasteners.map(([n, name]) => `, ${n} ${name}s`).join('')}${minutes === null ? '' : `, about ${minutes} minutes of bending at the machines`}.`,
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
  cautions: ENGLISH_CAUTIONS,
  cuts: {
    heading: 'Blanks to shear',
    columns: {
      part: 'part',
      pieces: 'pieces',
      blank: 'blank',
      diagonal: 'diagonals',
      stock: 'sheet',
      mass: 'as sheared',
      done: 'done',
    },
    notes: (has) => [
      [
        'Shear blanks of the same width in one strip; one is square when both diagonals are as long as given.',
        ...(has('operations')
          ? [
              'Cut the parts that are measured for (see the operations) only after they are measured: until then shear the others.',
            ]
          : []),
      ].join(' '),
    ],
    stock: (sheet, blanks, area, mass) =>
      `${sheet}: ${blanks === 1 ? '1 blank' : `${blanks} blanks`}, together ${area} and ${mass}, waste left out.`,
  },
  operations: ENGLISH_OPERATIONS,
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
    copies: (sets) => `${sets} copies: one for each set`,
    heading: 'Worksheet',
    name: 'Name:',
    ask: (letters, unit) =>
      `On the pattern of this part the sizes ${letters} are left out. Work them out in ${unit === 'in' ? 'inches' : unit}, write down how, and fill them in on the pattern.`,
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
