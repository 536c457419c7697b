import * as z from 'zod/mini';
import { JobError } from '../errors/problem.js';
import { MATERIALS } from '../stock/materials.js';
import { MM_PER_INCH } from '../units/length.js';
import { KG_PER_POUND } from '../units/mass.js';
import { numberAbove } from '../units/range.js';
import { type GaugeData, gaugedThickness, gaugeSchema } from './gauge.js';
import { type Gives, type ParamKit, strictGroup } from './kit.js';
import { textName } from './text-line.js';

/** Direction of the rolling lines: along x, along y, or nobody minds. */
export type Grain = 'x' | 'y' | null;

/** Strips along the edges of a sheet that nothing may be cut from, mm, each 0 or more. */
export interface Trim {
  readonly west: number;
  readonly east: number;
  readonly south: number;
  readonly north: number;
}

/** What stock costs, in the shop's money: each sheet, a kilogram, or a square metre of it. */
export interface Price {
  readonly per: 'sheet' | 'kg' | 'm2';
  readonly amount: number;
}

/** What rows of sheets and offcuts share; null where the file does not say. mm */
export interface MetalRow {
  readonly name: string | null;
  readonly material: string | null;
  readonly thickness: number | null;
  readonly grain: Grain;
  readonly price: Price | null;
  readonly trim: Trim | null;
}

/** Full sheets of one kind; without a count as many as needed. */
export interface SheetRow extends MetalRow {
  readonly size: readonly [number, number];
  readonly count: number | null;
}

/** What an earlier job left: a rectangle, or corners once round. */
export interface OffcutRow extends MetalRow {
  readonly size: readonly [number, number] | null;
  readonly outline: readonly (readonly [number, number])[] | null;
}

/** Stock as a file gives it. mm */
export interface RackRows {
  readonly sheets: readonly SheetRow[];
  readonly offcuts: readonly OffcutRow[];
  readonly trim: Trim | null;
  readonly kerf: number;
  /** The least offcut worth keeping, either way round. */
  readonly leastOffcut: readonly [number, number];
}

/** Most kinds of sheets, most offcuts. */
const MOST = 2000;
const MOST_CORNERS = 200;
/** Widest kerf of a cut, mm. */
const WIDEST_KERF = 10;
const DEAREST = 1_000_000;
const COMMON_LEAST = 100;

const trim = (k: ParamKit): Gives<Trim> => {
  const edge = k.size({ min: 0 });
  const side = k.or(edge, 0);
  const sides: Gives<unknown> = strictGroup({ west: side, east: side, south: side, north: side });
  return z.pipe(
    k.either(edge, sides, 'one length for all edges, or { west, east, south, north },'),
    z.transform(
      (v): Trim => (typeof v === 'number' ? { west: v, east: v, south: v, north: v } : (v as Trim)),
    ),
  );
};

/** Ways to say a price, and how many kilograms or square metres are one of what it is per. */
const PER = {
  sheet: ['sheet', 1],
  kg: ['kg', 1],
  pound: ['kg', KG_PER_POUND],
  squareMetre: ['m2', 1],
  squareFoot: ['m2', ((12 * MM_PER_INCH) / 1000) ** 2],
} as const;

const price = (k: ParamKit): Gives<Price> => {
  const amount = () => numberAbove(0, DEAREST, '');
  const words = Object.keys(PER) as (keyof typeof PER)[];
  const group: Gives<unknown> = strictGroup({ per: k.oneOf(words), amount: amount() });
  return z.pipe(
    k.either(amount(), group, `a price of one sheet, or { per: ${words.join(' | ')}, amount },`),
    z.transform((v): Price => {
      if (typeof v === 'number') return { per: 'sheet', amount: v };
      const given = v as { readonly per: keyof typeof PER; readonly amount: number };
      const [per, of] = PER[given.per];
      return { per, amount: given.amount / of };
    }),
  );
};

/** What rows hold: a rack file names everything, other files leave out what they say elsewhere. */
type Rows = 'named' | 'loose';

const metal = (k: ParamKit, rows: Rows) => {
  const may = <T>(schema: Gives<T>): Gives<T | null> => (rows === 'named' ? schema : k.maybe(schema));
  return {
    name: may(textName()),
    material: may(k.oneOf(k.materials)),
    thickness: k.maybe(k.size({ min: 0.1, max: 6 })),
    gauge: k.maybe(gaugeSchema(k)),
    grain: k.maybe(k.oneOf(['x', 'y'])),
    price: k.maybe(price(k)),
    trim: k.maybe(trim(k)),
  };
};

/** A row as it is written, and with its thickness in place of its gauge. */
type Gauged = Pick<MetalRow, 'material' | 'thickness'> & { readonly gauge: GaugeData | null };

function withThickness(row: Gauged, rows: Rows): Omit<Gauged, 'gauge'> {
  const { gauge, ...rest } = row;
  if (gauge !== null && rest.thickness !== null)
    throw refused('thickness and gauge given: give one of the two');
  if (gauge === null && rest.thickness === null && rows === 'named')
    throw refused('no thickness: give thickness, or gauge');
  if (gauge === null) return rest;
  const metal = MATERIALS.find((m) => m.name === rest.material);
  const known = metal ?? { name: rest.material ?? 'a row without a material', gauges: null };
  return { ...rest, thickness: gaugedThickness(gauge, known) };
}

const refused = (message: string) => new JobError([{ code: 'value-range', path: [], message, fix: '' }]);

/** Rows may give a gauge in place of their thickness. */
const gauged = (row: Gives<unknown>, rows: Rows): Gives<unknown> =>
  z.pipe(
    row,
    z.transform((v, context) => {
      try {
        return withThickness(v as Gauged, rows);
      } catch (error) {
        if (!(error instanceof JobError)) throw error;
        for (const { path, message, fix } of error.problems) {
          const text = fix === '' ? message : `${message}. ${fix}`;
          context.issues.push({ code: 'custom', path: [...path], message: text, input: v });
        }
        return z.NEVER;
      }
    }),
  );

const pair = (k: ParamKit) => k.list(k.size(), 2, 2);

/** A list of full sheets; loose ones may be sizes by themselves. */
export function sheetRowsSchema(k: ParamKit, rows: Rows): Gives<readonly SheetRow[]> {
  const group = strictGroup({ ...metal(k, rows), size: pair(k), count: k.maybe(k.count(0, 100_000)) });
  const sheet = gauged(group as Gives<unknown>, rows);
  const row = rows === 'named' ? sheet : eitherRow(k, sheet);
  return k.list(row as Gives<SheetRow>, 0, MOST);
}

const NOTHING = { name: null, material: null, thickness: null, grain: null, price: null, trim: null };

function eitherRow(k: ParamKit, sheet: Gives<unknown>): Gives<unknown> {
  return z.pipe(
    k.either(
      pair(k),
      sheet,
      'a size such as [2000, 1000], or { size, material, thickness, count, price, … },',
    ),
    z.transform((v) => (Array.isArray(v) ? { ...NOTHING, size: v as unknown, count: null } : v)),
  );
}

/** Everything a rack says beside its units and name, to stand in a group. */
export function rackShape(k: ParamKit, rows: Rows): Readonly<Record<keyof RackRows, Gives<unknown>>> {
  const point = k.list(k.size({ min: 0 }), 2, 2);
  const group = strictGroup({
    ...metal(k, rows),
    size: k.maybe(pair(k)),
    outline: k.maybe(k.list(point, 3, MOST_CORNERS)),
  });
  const offcut = gauged(group as Gives<unknown>, rows);
  return {
    sheets: k.or(sheetRowsSchema(k, rows), []),
    offcuts: k.or(k.list(offcut, 0, MOST), []),
    trim: k.or<unknown>(trim(k), null),
    kerf: k.or(k.size({ min: 0, max: WIDEST_KERF }), 0),
    leastOffcut: k.or<unknown>(pair(k), [COMMON_LEAST, COMMON_LEAST]),
  };
}
