import {
  JobError,
  MATERIALS,
  type Material,
  type MetalRow,
  MM_PER_INCH,
  type OffcutRow,
  type Path,
  type Point,
  type Price,
  type Problem,
  type RackRows,
  type SheetRow,
  type Trim,
  type Unit,
} from '@tinwright/core';
import { paramKit } from '@tinwright/core/family';
import { plainNumber, problemsOf, quoted, sayIn } from '@tinwright/core/internal';
import { crossingEdges, extentOf, ringArea } from './polygon.js';
import { rackSchema } from './rack-schema.js';
import { NO_TRIM, type Rack, type StockSheet } from './sheet.js';

/**
 * Read a rack from plain data, as a YAML or JSON parser gives it: full sheets, offcuts, trim, kerf, the least offcut
 * worth keeping. A sheet without a count can be had as often as needed; offcuts are there once.
 * @throws JobError with every problem found, in the order of the file, lengths in its unit
 */
export function readRack(data: unknown): Rack {
  const units: Unit = (data as { units?: unknown } | null)?.units === 'in' ? 'in' : 'mm';
  const read = rackSchema(paramKit(units)).safeParse(data);
  if (!read.success) throw new JobError(problemsOf(read.error.issues, data));
  return rackOf(read.data as RackRows, units, []);
}

/**
 * A rack of rows that were read, each with metal and thickness; rows without a name are called by their size.
 * @param path where they stand in their file
 * @param metals those that rows may be priced by weight in
 * @throws JobError names given twice, offcuts without a shape or that cross themselves, trims that leave nothing
 */
export function rackOf(
  rows: RackRows,
  units: Unit,
  path: Path,
  metals: readonly Weighed[] = MATERIALS,
): Rack {
  const problems = [
    ...twins(rows),
    ...rows.offcuts.flatMap((o, i) => offcutProblems(o, ['offcuts', i], units)),
    ...rows.sheets.flatMap((s, i) => trimProblems(s.size, s.trim ?? rows.trim, ['sheets', i], units)),
  ];
  if (problems.length > 0) throw new JobError(problems.map((p) => ({ ...p, path: [...path, ...p.path] })));
  const known: Known = { named: namer(rows, units), metals };
  const sheets = [
    ...rows.offcuts.map((o): StockSheet => offcutOf(o, known)),
    ...rows.sheets.map((s): StockSheet => sheetOf(s, rows.trim, known)),
  ];
  const [x, y] = rows.leastOffcut;
  return { sheets, kerf: rows.kerf, leastOffcut: { x, y } };
}

type Namer = (row: MetalRow, size: readonly [number, number]) => string;
type Weighed = Pick<Material, 'name' | 'density'>;

interface Known {
  readonly named: Namer;
  readonly metals: readonly Weighed[];
}

/** The name a row has, or its size, numbered where that is taken. */
function namer({ sheets, offcuts }: RackRows, units: Unit): Namer {
  const taken = new Set([...sheets, ...offcuts].map((r) => r.name));
  const length = (mm: number) => plainNumber(units === 'mm' ? mm : mm / MM_PER_INCH, units === 'mm' ? 1 : 2);
  return ({ name }, size) => {
    if (name !== null) return name;
    const plain = `${size.map(length).join(' x ')} ${units}`;
    let own = plain;
    for (let n = 2; taken.has(own); n++) own = `${plain} (${n})`;
    taken.add(own);
    return own;
  };
}

function sheetOf({ size, count, trim, ...row }: SheetRow, common: Trim | null, known: Known): StockSheet {
  const [x, y] = size;
  return {
    ...metalOf(row, size, x * y, known),
    origin: 'sheet',
    x,
    y,
    outline: null,
    count: count ?? Number.POSITIVE_INFINITY,
    trim: trim ?? common ?? NO_TRIM,
  };
}

/** An offcut was cut before: the trim of full sheets does not hold for it. */
function offcutOf({ size, outline, trim, ...row }: OffcutRow, known: Known): StockSheet {
  const ring = outline === null ? null : anticlockwise(outline);
  const extent = ring === null ? (size as readonly [number, number]) : extentOf(ring).size;
  const area = ring === null ? extent[0] * extent[1] : ringArea(ring);
  return {
    ...metalOf(row, extent, area, known),
    origin: 'offcut',
    x: extent[0],
    y: extent[1],
    outline: ring,
    count: 1,
    trim: trim ?? NO_TRIM,
  };
}

/** @param area mm² */
function metalOf(
  row: Omit<MetalRow, 'trim'>,
  size: readonly [number, number],
  area: number,
  { named, metals }: Known,
): Pick<StockSheet, 'name' | 'material' | 'thickness' | 'grain' | 'price'> {
  const { material, thickness, grain, price } = row;
  if (material === null || thickness === null)
    throw new RangeError('a sheet without metal or thickness given');
  const name = named({ ...row, trim: null }, size);
  const metal = metals.find((m) => m.name === material);
  const mass = metal === undefined ? null : (area * thickness * metal.density) / 1e9;
  return { name, material, thickness, grain, price: price && priceOf(price, area, mass) };
}

/** Price of one sheet of an area, mm², and a mass, kg; null by weight where that is not known. */
function priceOf({ per, amount }: Price, area: number, mass: number | null): number | null {
  if (per === 'sheet') return amount;
  if (per === 'm2') return (amount * area) / 1e6;
  return mass === null ? null : amount * mass;
}

function anticlockwise(outline: readonly Point[]): readonly Point[] {
  const [dx, dy] = extentOf(outline).min;
  const moved = outline.map(([x, y]): Point => [x - dx, y - dy]);
  return ringArea(moved) < 0 ? moved.toReversed() : moved;
}

function twins({ sheets, offcuts }: RackRows): readonly Problem[] {
  const rows = [
    ...sheets.map(({ name }, i) => ({ name, path: ['sheets', i, 'name'] as Path })),
    ...offcuts.map(({ name }, i) => ({ name, path: ['offcuts', i, 'name'] as Path })),
  ];
  return rows
    .filter((row, i) => row.name !== null && rows.findIndex((o) => o.name === row.name) !== i)
    .map(({ name, path }) => ({
      code: 'name-twice',
      path,
      message: `the name ${quoted(name ?? '')} is taken`,
      fix: 'Give each sheet and offcut a name of its own',
    }));
}

function offcutProblems({ size, outline, trim }: OffcutRow, path: Path, units: Unit): readonly Problem[] {
  if ((size === null) === (outline === null))
    return [
      {
        code: 'offcut-shape',
        path,
        message: 'a size or an outline is needed, not both',
        fix: 'Give one of them',
      },
    ];
  if (outline === null) return trimProblems(size as readonly [number, number], trim, path, units);
  const crossing = crossingEdges(outline);
  const say = sayIn(units);
  const at = ([x, y]: Point) => `(${say.size(x)}, ${say.size(y)})`;
  if (crossing !== null)
    return [
      {
        code: 'offcut-crosses',
        path: [...path, 'outline'],
        message: `the outline crosses or touches itself: the edge from ${at(crossing[0])} and the one from ${at(crossing[1])}`,
        fix: 'Give its corners once round, in order',
      },
    ];
  const flat = Math.abs(ringArea(outline)) < 1;
  return flat
    ? [{ code: 'offcut-flat', path: [...path, 'outline'], message: 'the outline encloses no area', fix: '' }]
    : [];
}

function trimProblems(
  [x, y]: readonly [number, number],
  trim: Trim | null,
  path: Path,
  units: Unit,
): readonly Problem[] {
  if (trim === null || (trim.west + trim.east < x && trim.south + trim.north < y)) return [];
  const say = sayIn(units);
  return [
    {
      code: 'trim-whole',
      path: [...path, 'size'],
      message: `the trim leaves nothing of ${say.size(x)} x ${say.size(y)}`,
      fix: `Trim less than ${say.most(Math.min(x, y) / 2)} an edge`,
    },
  ];
}
