/** A size of blind rivet. mm */
export interface RivetSize {
  /** Nominal diameter. */
  readonly diameter: number;
  readonly name: string;
  /** Least and greatest hole. */
  readonly hole: Span;
  /** Drill to take, in words. */
  readonly drill: string;
  readonly head: number;
  /** Total thickness its lengths hold, from and to: ranges with nothing listed between them. */
  readonly grips: readonly Span[];
  readonly source: string;
}

type Span = readonly [number, number];

const IN = 25.4;
const TM = 'TM 10-5410-221-14 table 4-3';
const DRILL = `${TM}; drill diameter from memory`;
const HOLES = 'ISO 15977 family: holes dh1 from memory, heads by nutbolt.org DIN 7337';
const ISO = `${HOLES}; grips by ISO 15981, columns inferred`;
const AS = `${HOLES}; grips from memory, as the nearest size of ISO 15981`;

type Row = readonly [
  diameter: number,
  name: string,
  hole: Span,
  drill: string,
  head: number,
  grips: readonly Span[],
  source: string,
  unit?: number,
];

// diameters, holes and grips in the row's unit; heads of inch sizes are those of the nearest metric one, mm
const ROWS: readonly Row[] = [
  [3 / 32, '3/32 in', [0.096, 0.1], '#41 (0.0960 in, 2.438 mm)', 5, [[0.02, 0.25]], TM, IN],
  [
    2.4,
    '2.4 mm',
    [2.5, 2.6],
    '2.5 mm',
    5,
    [
      [0.5, 3],
      [6, 9],
    ],
    ISO,
  ],
  [3, '3.0 mm', [3.1, 3.2], '3.1 mm', 6.5, [[1.5, 9]], AS],
  [1 / 8, '1/8 in', [0.128, 0.132], '#30 (0.1285 in, 3.264 mm)', 6.5, [[0.02, 0.5]], TM, IN],
  [3.2, '3.2 mm', [3.3, 3.4], '3.3 mm', 6.5, [[1.5, 9]], ISO],
  [5 / 32, '5/32 in', [0.16, 0.164], '#20 (0.1610 in, 4.089 mm)', 8, [[0.02, 0.375]], DRILL, IN],
  [4, '4.0 mm', [4.1, 4.2], '4.1 mm', 8, [[1, 8.5]], ISO],
  [
    3 / 16,
    '3/16 in',
    [0.192, 0.196],
    '#11 (0.1910 in, 4.851 mm)',
    9.5,
    [[1.5 / IN, 8 / IN]],
    'hole and drill from memory; grips of 4.8 mm by ISO 15981, columns inferred',
    IN,
  ],
  [4.8, '4.8 mm', [4.9, 5], '4.9 mm', 9.5, [[1.5, 8]], ISO],
  [5, '5.0 mm', [5.1, 5.2], '5.1 mm', 9.5, [[1.5, 8]], AS],
  [6, '6.0 mm', [6.1, 6.2], '6.1 mm', 12, [[3, 6]], AS],
  [
    1 / 4,
    '1/4 in',
    [0.257, 0.261],
    'F (0.257 in, 6.528 mm)',
    13,
    [
      [0.125, 0.5],
      [0.626, 0.75],
    ],
    DRILL,
    IN,
  ],
  [6.4, '6.4 mm', [6.5, 6.6], '6.5 mm', 13, [[3, 6]], ISO],
];

/** Blind rivets, thinnest first. */
export const RIVET_SIZES: readonly RivetSize[] = ROWS.map(
  ([diameter, name, hole, drill, head, grips, source, unit = 1]) => {
    const mm = ([a, b]: Span): Span => [a * unit, b * unit];
    return { diameter: diameter * unit, name, hole: mm(hole), drill, head, grips: grips.map(mm), source };
  },
);

/** Layout rules of rivets, in rivet diameters, each with its source. Where sources disagree both stand here. */
export const RIVET_RULES = {
  edge: [
    { factor: 2, source: 'TM 10-5410-229-13&P §5-6' },
    { factor: 2.5, source: 'NAVEDTRA 14251' },
  ],
  pitch: { factor: 3, source: 'NAVEDTRA 14018' },
  /** Of the usual 4 D to 8 D the wider, as hand-set rivets in light work stand. */
  usualPitch: { factor: 8, source: 'NAVEDTRA 14018' },
  row: { factor: 2.5, source: 'TM 10-5410-229' },
} as const;

/** The size a job means: the nearest within a twentieth of a millimetre, null when there is none. */
export function rivetSize(diameter: number): RivetSize | null {
  const near = RIVET_SIZES.toSorted(
    (a, b) => Math.abs(a.diameter - diameter) - Math.abs(b.diameter - diameter),
  )[0];
  return near !== undefined && Math.abs(near.diameter - diameter) <= 0.05 ? near : null;
}

/** True when a rivet of this size comes in a length for a stack so thick. mm */
export const holds = ({ grips }: RivetSize, total: number): boolean =>
  grips.some(([least, most]) => total >= least - 1e-9 && total <= most + 1e-9);
