/** A size of blind rivet. mm */
export interface RivetSize {
  /** Nominal diameter. */
  readonly diameter: number;
  readonly name: string;
  /** Least and greatest hole. */
  readonly hole: readonly [number, number];
  /** Drill to take, in words. */
  readonly drill: string;
  readonly head: number;
  /** Total thickness it can hold: least and greatest of all lengths listed. */
  readonly grip: readonly [number, number];
  readonly source: string;
}

const IN = 25.4;
const TM = 'TM 10-5410-221-14 table 4-3';
const ISO =
  'ISO 15977 family: holes dh1 from memory, heads by nutbolt.org DIN 7337; grips by ISO 15981, columns inferred';

/** Blind rivets, thinnest first. Heads of inch sizes are those of the nearest metric one. */
export const RIVET_SIZES: readonly RivetSize[] = [
  {
    diameter: (3 / 32) * IN,
    name: '3/32 in',
    hole: [0.096 * IN, 0.1 * IN],
    drill: '#41 (0.0960 in, 2.438 mm)',
    head: 5,
    grip: [0.02 * IN, 0.25 * IN],
    source: TM,
  },
  { diameter: 2.4, name: '2.4 mm', hole: [2.5, 2.6], drill: '2.5 mm', head: 5, grip: [0.5, 9], source: ISO },
  {
    diameter: (1 / 8) * IN,
    name: '1/8 in',
    hole: [0.128 * IN, 0.132 * IN],
    drill: '#30 (0.1285 in, 3.264 mm)',
    head: 6.5,
    grip: [0.02 * IN, 0.5 * IN],
    source: TM,
  },
  {
    diameter: 3.2,
    name: '3.2 mm',
    hole: [3.3, 3.4],
    drill: '3.3 mm',
    head: 6.5,
    grip: [1.5, 9],
    source: ISO,
  },
  {
    diameter: (5 / 32) * IN,
    name: '5/32 in',
    hole: [0.16 * IN, 0.164 * IN],
    drill: '#20 (0.1610 in, 4.089 mm)',
    head: 8,
    grip: [0.02 * IN, 0.375 * IN],
    source: TM,
  },
  { diameter: 4, name: '4.0 mm', hole: [4.1, 4.2], drill: '4.1 mm', head: 8, grip: [1, 8.5], source: ISO },
  {
    diameter: (3 / 16) * IN,
    name: '3/16 in',
    hole: [0.192 * IN, 0.196 * IN],
    drill: '#11 (0.1910 in, 4.851 mm)',
    head: 9.5,
    grip: [1.5, 8],
    source: `${TM}; 3/16 row and drill from memory`,
  },
  { diameter: 4.8, name: '4.8 mm', hole: [4.9, 5], drill: '4.9 mm', head: 9.5, grip: [1.5, 8], source: ISO },
  {
    diameter: (1 / 4) * IN,
    name: '1/4 in',
    hole: [0.257 * IN, 0.261 * IN],
    drill: 'F (0.257 in, 6.528 mm)',
    head: 13,
    grip: [0.125 * IN, 0.75 * IN],
    source: TM,
  },
  { diameter: 6.4, name: '6.4 mm', hole: [6.5, 6.6], drill: '6.5 mm', head: 13, grip: [3, 6], source: ISO },
];

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
