import type { Unit } from '@tinwright/core';
import { plainDecimal } from '../text/plain-decimal.js';
import type { OptionSpec } from './command.js';
import { typedLength } from './typed-length.js';

/** What was asked of a nest, as typed. */
export interface NestOptions {
  readonly spacing?: string;
  readonly edge?: string;
  readonly kerf?: string;
  readonly turns: string;
  readonly lead: 'line' | 'arc' | 'none';
  readonly leadLength?: string;
  readonly ties: string;
  readonly tieWidth?: string;
  readonly commonCuts: boolean;
  readonly order: 'nearest' | 'spread';
  readonly offcuts: 'first' | 'free' | 'at-cost';
  readonly lanes: string;
  readonly seed: string;
  readonly moves: string;
  readonly seconds?: string;
  readonly threads?: string;
}

/** Options of `nest`, those of the files aside. */
export const NEST_OPTIONS: Readonly<Record<string, OptionSpec>> = {
  spacing: {
    type: 'string',
    describe: 'least distance between parts; 5 mm when left out, the kerf with --common-cuts',
  },
  edge: {
    type: 'string',
    describe: 'least distance to the edge of the sheet, beyond its trim; the kerf when left out',
  },
  kerf: {
    type: 'string',
    describe: 'width of the cut that paths make up for; 0 for none; that of the rack when left out',
  },
  turns: {
    type: 'string',
    default: 'quarter',
    values: ['quarter', 'half', 'none', 'free'],
    describe: 'how parts may be turned: quarter, half, none, free (every 15 degrees), or degrees: 0,45,90',
  },
  lead: { type: 'string', choices: ['line', 'arc', 'none'], default: 'line', describe: 'lead-ins of cuts' },
  'lead-length': { type: 'string', describe: 'their length; when left out 4 mm, for a laser 2 mm' },
  ties: { type: 'string', default: '0', describe: 'micro-joints that hold each part' },
  'tie-width': { type: 'string', describe: 'metal that each leaves; 0.5 mm when left out' },
  'common-cuts': {
    type: 'boolean',
    default: false,
    describe: 'straight edges of neighbours a kerf apart, cut once for both; one has its slanting side',
  },
  order: {
    type: 'string',
    choices: ['nearest', 'spread'],
    default: 'nearest',
    describe: 'which part is cut next: the nearest, or one far from the last, to spread the heat',
  },
  offcuts: {
    type: 'string',
    choices: ['first', 'free', 'at-cost'],
    default: 'first',
    describe: 'offcuts before sheets, wherever that saves sheet, or only where it is cheaper',
  },
  lanes: { type: 'string', default: '2', describe: 'searches side by side; the best counts' },
  seed: { type: 'string', default: '1', describe: 'another number searches in another order' },
  moves: {
    type: 'string',
    default: '20000',
    describe: 'moves of parts each search makes; a second takes about 10000',
  },
  seconds: { type: 'string', describe: 'time for each search instead; nests then differ by machine' },
  threads: { type: 'string', describe: 'searches at a time; as many as the machine has cores when left out' },
};

/** The numbers typed, mm and degrees. */
export interface NestNumbers {
  readonly spacing: number | null;
  readonly edge: number | null;
  readonly kerf: number | null;
  readonly turns: readonly number[];
  readonly leadLength: number | null;
  readonly ties: number;
  readonly tieWidth: number;
  readonly lanes: number;
  readonly seed: number;
  readonly moves: number;
  readonly seconds: number | null;
  readonly threads: number | null;
}

/** Gap between parts for plasma (a maker's guide for parts, as read); a laser needs less. */
export const SPACING = 5;

const NAMED: Readonly<Record<string, readonly number[]>> = {
  quarter: [0, 90, 180, 270],
  half: [0, 180],
  none: [0],
  free: Array.from({ length: 24 }, (_, k) => 15 * k),
};

/** The options as numbers, or a sentence about the first that cannot be. */
export function nestNumbers(o: NestOptions, units: Unit): NestNumbers | string {
  const wrong: string[] = [];
  const keep = <T>(read: T | string): T | null => {
    if (typeof read !== 'string') return read;
    wrong.push(read);
    return null;
  };
  const size = (name: string, text: string | undefined, least: number, most: number) =>
    text === undefined ? null : keep(typedLength(name, text, units, least, most));
  const count = (name: string, text: string | undefined, least: number, most: number) =>
    text === undefined ? null : keep(countOf(name, text, least, most));
  const numbers = {
    spacing: size('spacing', o.spacing, 0.1, 200),
    edge: size('edge', o.edge, 0, 200),
    kerf: size('kerf', o.kerf, 0, 10),
    turns: keep(turnsOf(o.turns)) ?? [],
    leadLength: size('lead-length', o.leadLength, 0.1, 50),
    ties: count('ties', o.ties, 0, 100) ?? 0,
    tieWidth: size('tie-width', o.tieWidth, 0.05, 10) ?? 0.5,
    lanes: count('lanes', o.lanes, 1, 64) ?? 1,
    seed: count('seed', o.seed, 0, 2 ** 31) ?? 0,
    moves: count('moves', o.moves, 0, 1e9) ?? 0,
    seconds: count('seconds', o.seconds, 1, 86_400),
    threads: count('threads', o.threads, 1, 256),
  };
  return wrong[0] ?? numbers;
}

function countOf(name: string, text: string, least: number, most: number): number | string {
  const n = Number(text);
  const fine = /^\d+$/.test(text) && n >= least && n <= most;
  return fine ? n : `--${name}: ${text} given, a whole number from ${least} to ${most} allowed`;
}

function turnsOf(text: string): readonly number[] | string {
  const named = NAMED[text];
  if (named !== undefined) return named;
  const list = text.split(',').map((t) => plainDecimal(t) ?? Number.NaN);
  if (list.every((n) => Number.isFinite(n) && n >= 0 && n < 360)) return [...new Set(list)];
  return `--turns: ${text} given; quarter, half, none, free or degrees from 0 to below 360 allowed`;
}
