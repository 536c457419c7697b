import { frozen } from '../units/frozen.js';
import { MM_PER_INCH } from '../units/length.js';
import { type GripColumn, type GripSpan, gripsOf } from './rivet-grips.js';

/** A size of blind rivet. mm */
export interface RivetSize {
  /** Nominal diameter. */
  readonly diameter: number;
  readonly name: string;
  /** Least and greatest hole. */
  readonly hole: GripSpan;
  /** Drill to take: its number or letter, or millimetres. */
  readonly drill: string;
  readonly head: number;
  /** Total thickness its lengths hold, from and to: ranges with nothing listed between them. */
  readonly grips: readonly GripSpan[];
  readonly source: string;
}

const TM = 'TM 10-5410-221-14 table 4-3';
const IFI = 'holes by IFI-114, from memory';
const DRILL = `${TM}; drill diameter from memory; ${IFI}`;
const CUT_OFF = `${IFI}, and the drill too; grips as 4.8 mm by ISO 15981, columns inferred, the longer ones from memory`;
const HOLES = 'ISO 15977 family: holes dh1 from memory, heads by nutbolt.org DIN 7337';
const ISO = `${HOLES}; grips by ISO 15981, columns inferred, the shortest and the longest from memory`;
const AS = `${HOLES}; grips from memory, as the nearest size of ISO 15981`;

type Row = readonly [
  diameter: number,
  hole: GripSpan,
  head: number,
  grips: readonly GripSpan[],
  source: string,
];

// diameters, holes and grips in inches; heads are those of the nearest metric size, mm
const INCH: readonly (readonly [...Row, name: string, drill: string])[] = [
  [3 / 32, [0.097, 0.1], 5, [[0.02, 0.25]], `${TM}; ${IFI}`, '3/32 in', '#41'],
  [1 / 8, [0.129, 0.133], 6.5, [[0.02, 0.5]], `${TM}; ${IFI}`, '1/8 in', '#30'],
  [5 / 32, [0.16, 0.164], 8, [[0.02, 0.375]], DRILL, '5/32 in', '#20'],
  [3 / 16, [0.192, 0.196], 9.5, inInches('4.8'), CUT_OFF, '3/16 in', '#11'],
  // biome-ignore format: a row
  [1 / 4, [0.257, 0.261], 13, [[0.125, 0.5], [0.626, 0.75]], DRILL, '1/4 in', 'F'],
];

const METRIC: readonly Row[] = [
  [2.4, [2.5, 2.6], 5, gripsOf('2.4'), ISO],
  [3, [3.1, 3.2], 6.5, gripsOf('3.2'), AS],
  [3.2, [3.3, 3.4], 6.5, gripsOf('3.2'), ISO],
  [4, [4.1, 4.2], 8, gripsOf('4'), ISO],
  [4.8, [4.9, 5], 9.5, gripsOf('4.8'), ISO],
  [5, [5.1, 5.2], 9.5, gripsOf('4.8'), AS],
  [6, [6.1, 6.2], 12, gripsOf('6.4'), AS],
  [6.4, [6.5, 6.6], 13, gripsOf('6.4'), ISO],
];

function inInches(column: GripColumn): readonly GripSpan[] {
  return gripsOf(column).map(([from, to]) => [from / MM_PER_INCH, to / MM_PER_INCH]);
}

const inMm = ([a, b]: GripSpan): GripSpan => [a * MM_PER_INCH, b * MM_PER_INCH];

/** Blind rivets, thinnest first. */
export const RIVET_SIZES: readonly RivetSize[] = frozen(
  [
    ...INCH.map(([diameter, hole, head, grips, source, name, drill]): RivetSize => {
      return {
        diameter: diameter * MM_PER_INCH,
        name,
        hole: inMm(hole),
        drill,
        head,
        grips: grips.map(inMm),
        source,
      };
    }),
    ...METRIC.map(([diameter, hole, head, grips, source]): RivetSize => {
      const [name, drill] = [`${diameter.toFixed(1)} mm`, `${hole[0]} mm`];
      return { diameter, name, hole, drill, head, grips, source };
    }),
  ].toSorted((a, b) => a.diameter - b.diameter),
);

/** A distance in rivet diameters, and who says so. */
interface RivetRule {
  readonly factor: number;
  readonly source: string;
}

/** The hole to cut, mm: the middle of the standard's band. */
export const cutHole = ({ hole: [least, most] }: RivetSize): number => (least + most) / 2;

/** Layout rules of rivets, in rivet diameters, each with its source. Where sources disagree both stand here. */
export const RIVET_RULES: Readonly<
  Record<'pitch' | 'usualPitch' | 'row', RivetRule> & { edge: readonly [RivetRule, RivetRule] }
> = frozen({
  edge: [
    { factor: 2, source: 'TM 10-5410-229-13&P §5-6' },
    { factor: 2.5, source: 'NAVEDTRA 14251' },
  ],
  pitch: { factor: 3, source: 'NAVEDTRA 14018' },
  /** Of the usual 4 D to 8 D the wider, as hand-set rivets in light work stand. */
  usualPitch: { factor: 8, source: 'NAVEDTRA 14018' },
  row: { factor: 2.5, source: 'TM 10-5410-229' },
});

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
