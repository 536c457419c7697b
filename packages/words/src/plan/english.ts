import { frozen } from '@tinwright/core/internal';
import { fastenerName } from './fastener-name.js';
import { spaced, times } from './spaced.js';
import type { PlanWords } from './words.js';

const inWords = (unit: string) => (unit === 'in' ? 'inches' : unit);

/** What plans and templates say in English. */
export const ENGLISH: PlanWords = frozen({
  language: 'en',
  up: 'up',
  down: 'down',
  hems: {
    closed: 'closed hem',
    open: 'open hem',
    teardrop: 'teardrop hem',
    wired: 'wired edge',
    curl: 'curl',
  },
  fastener: fastenerName({
    'spot-weld': 'spot weld',
    'plug-weld': 'plug weld',
    'blind-rivet': 'blind rivet',
    screw: 'screw',
    hinge: 'hinge',
    hasp: 'hasp',
    handle: 'handle',
    'rivet-nut': 'rivet nut',
    magnet: 'magnet',
    caster: 'caster',
  }),
  hole: (count, diameter, purpose) => spaced(times(count), `Ø${diameter}`, purpose),
  mark: (count, kind) => spaced(times(count), kind),
  patternAlt: (part) => `Flat pattern of ${part} with its dimensions`,
  details: 'Details',
  detail: (name, scale, alike) => `${name} ${scale}${alike === 1 ? '' : `, ${alike} alike or mirrored`}`,
  detailAlt: (name) => `Detail ${name} of the pattern, enlarged, with its dimensions`,
  formedAlt: (part) => `${part} bent: front, top and left side view with sizes, and an isometric picture`,
  front: 'front',
  top: 'top',
  side: 'left side',
  isometric: 'isometric, no scale',
  title: (part, job) => (job === '' ? `Plan of ${part}` : `${job}: plan of ${part}`),
  job: (name) => (name === '' ? '' : `Job: ${name}`),
  stock: (material, thickness, x, y, unit) => `Stock: ${material}, ${thickness}; blank ${x} × ${y} ${unit}`,
  make: (quantity, mass) => `make ${quantity}, ${mass} each`,
  sheet: (n, of) => `Sheet ${n} of ${of}`,
  patternScale: (scale) => `Pattern ${scale}`,
  viewScale: (scale) => `views ${scale}`,
  measure: (length, unit) => `must measure ${length} ${unit}`,
  sizes: (dims, finer) =>
    `Sizes in ${dims === 'mm' ? 'mm' : 'inches'}, ${
      { mm: 'to 0.1 mm', in: 'to 0.001 in' }[dims as 'mm'] ?? `to the nearest ${dims}`
    }${finer === 'finer too' ? ' (finer where two lines would print alike, and where they are short)' : ''}, each rounded by itself from the datum corner (circle, near left); marked face up.`,
  rounding: (count, most, unit) =>
    `Before you start: rounding moves ${count === 1 ? '1 size' : `${count} sizes`} by more than that, up to ${most} ${unit}; ${count === 1 ? 'it stands' : 'they stand'} starred under "Rounded sizes".`,
  tolerance: (of, steps, unit) =>
    `Marking tolerance ISO 2768-1 ${of}: ${steps.map(([limit, to]) => `±${limit} up to ${to}`).join(', ')} ${unit}.`,
  caution:
    "Caution: cut edges and burrs are sharp: gloves to handle the sheet, never near rotating tools; protect your eyes; keep fingers clear of shear and brake. Follow the machines' manuals, your school's or shop's rules and local codes; trained or licensed people where they are required. No load rating.",
  cautionShort:
    "Caution: sharp edges and burrs; gloves to handle the sheet, eyes protected; follow manuals, your school's or shop's rules and local codes.",
  cautionZinc: 'Heated zinc gives off fume: ventilate, follow the data sheets of sheet and filler.',
  formed: 'Formed part',
  marking: {
    heading: 'Marking out, in this order',
    columns: { number: '', edge: 'from', offset: 'offset', what: 'line', reach: 'along', face: 'face' },
    left: 'left',
    bottom: 'near',
    blank: (x, y) => `blank ${x} × ${y}`,
    square: (diagonal) => `square when both diagonals are ${diagonal}`,
    cut: 'cut',
    scribe: 'line to scribe only',
    bend: (numbers, direction, angle, hem) => spaced(numbers.join(' '), direction, angle, hem),
    sight: (number) => `sight line of ${number}`,
    relief: (diameter) => `relief hole Ø${diameter}`,
    arc: (radius) => `arc R${radius} of a cut-out`,
    span: (from, to) => `${from} to ${to}`,
    at: (places) => `at ${places.join('; ')}`,
    point: (x, y) => `(${x}, ${y})`,
    slant: (from, to) => `${from} to ${to}`,
    face: 'marked',
    inside: 'marked, inside bend',
    outside: 'marked, outside bend',
  },
  program: {
    heading: 'Marking out: set the rule or square once a row',
    columns: { number: '', set: 'set', from: 'from', what: 'scribe', where: 'how far' },
    edges: { west: 'left edge', east: 'right edge', south: 'near edge', north: 'far edge' },
    long: 'both long edges',
    ends: 'both ends',
    all: 'all four edges',
    lines: ['upright', 'level'],
    whole: 'from edge to edge',
    both: 'from either end',
    count: (all, [across, along]) =>
      `${all} in all, mirrored ${[...(across ? ['left to right'] : []), ...(along ? ['near to far'] : [])].join(' and ')}`,
    points: (from, to) => `${from} to ${to}`,
    at: (places) => `at ${places.join(', ')}`,
    hole: 'hole',
    mirrored: 'Lengths along a line count from the left or the near (lower) edge; a point is left | near.',
  },
  bends: {
    heading: (unit) => `Bends, lengths in ${inWords(unit)}`,
    columns: {
      panel: 'bend, what it folds',
      bend: 'to',
      radius: 'inside radius',
      allowance: 'allowance',
      deduction: 'deduction',
      set: 'set to',
    },
  },
  finished: {
    heading: (unit) => `Finished sizes, ${inWords(unit)}`,
    columns: { size: 'size', what: 'measured', formed: 'as formed' },
  },
  rounded: {
    heading: 'Rounded sizes, inches',
    columns: { printed: 'printed', exact: 'exact', off: 'off by' },
    over: (count) =>
      `${count === 1 ? '1 size is' : `${count} sizes are`} off by more than the marking tolerance (starred): take a finer fraction, or mark from exact sizes.`,
  },
  notes: {
    heading: 'Notes',
    cuts: 'Wide lines are cut.',
    bends: 'Narrow lines across the pattern are bends: B1, B2 and so on.',
    blank: 'The dash-dotted rectangle is the sheared blank.',
    datum:
      'Offsets are from the left or the near edge, never from the line before; "along" is from the other of these edges.',
    pencil:
      'Scribe what is cut. Draw bend lines that come to lie outside a bend with a pencil: a scratch there can start a crack (common practice, no source).',
    strip:
      'A bend line is the middle of its bent strip, which is as wide as the allowance. On a leaf brake the edge of a sharp nose stands at the clamped edge of the strip, that of a nose of the inside radius R by R over it (FAA-H-8083-31).',
    nominal:
      'This pattern makes no allowance for bends: what is bent comes out larger than its nominal size. Sizes as formed follow from what the metal does, and whatever goes into or over this part follows them.',
  },
  template: {
    title: (part, job) => (job === '' ? `Template of ${part}` : `${job}: template of ${part}`),
    map: 'Tile map',
    mapAlt: (part, tiles) => `Where the ${tiles} tiles of the template of ${part} lie`,
    tileAlt: (part, tile) => `Tile ${tile} of the template of ${part}, full size`,
    page: (part, tile) => (tile === '' ? part : `${part}, tile ${tile}`),
    make: (quantity) => `make ${quantity}`,
    printing:
      'Print at actual size (100 %, no fitting to the page) and measure the square on every page before use.',
    gluing:
      'Cut each tile along its edges marked "cut", lay it over its neighbours so that the crosses meet, and glue.',
    using:
      'Lay the template on the marked face, tape it down, and prick the corners and centres through with a centre punch; join the pricks with the scriber.',
    sights:
      'Dash-dotted lines marked S are sight lines: prick their ends too, and set them under the edge of the fingers.',
    square: (length, unit) => `${length} ${unit} square`,
    cut: 'cut',
    glue: (tile) => `glue ${tile} here`,
  },
});
