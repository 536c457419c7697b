import {
  JobError,
  type Path,
  type Point,
  type Problem,
  paramKit,
  problemsOf,
  quoted,
  sayIn,
  type Unit,
} from '@tinwright/core';
import { crossingEdges, extentOf, ringArea } from './polygon.js';
import { rackSchema } from './rack-schema.js';
import { type Grain, NO_TRIM, type Rack, type StockSheet, type Trim } from './sheet.js';

interface MetalRow {
  readonly name: string;
  readonly material: string;
  readonly thickness: number;
  readonly grain: Grain;
  readonly price: number | null;
  readonly trim: Trim | null;
}

interface SheetRow extends MetalRow {
  readonly size: readonly [number, number];
  readonly count: number | null;
}

interface OffcutRow extends MetalRow {
  readonly size: readonly [number, number] | null;
  readonly outline: readonly Point[] | null;
}

interface RackData {
  readonly units: Unit;
  readonly kerf: number;
  readonly trim: Trim | null;
  readonly leastOffcut: readonly [number, number];
  readonly sheets: readonly SheetRow[];
  readonly offcuts: readonly OffcutRow[];
}

/**
 * Read a rack from plain data, as a YAML or JSON parser gives it: full sheets, offcuts, trim, kerf, the least offcut
 * worth keeping. A sheet without a count can be had as often as needed; offcuts are there once.
 * @throws JobError with every problem found, in the order of the file, lengths in its unit
 */
export function readRack(data: unknown): Rack {
  const units: Unit = (data as { units?: unknown } | null)?.units === 'in' ? 'in' : 'mm';
  const read = rackSchema(paramKit(units)).safeParse(data);
  if (!read.success) throw new JobError(problemsOf(read.error.issues, data));
  const found = read.data as RackData;
  const problems = [
    ...twins(found),
    ...found.offcuts.flatMap((o, i) => offcutProblems(o, ['offcuts', i], units)),
    ...found.sheets.flatMap((s, i) => trimProblems(s.size, s.trim ?? found.trim, ['sheets', i], units)),
  ];
  if (problems.length > 0) throw new JobError(problems);
  const sheets = [
    ...found.offcuts.map((o): StockSheet => offcutOf(o)),
    ...found.sheets.map((s): StockSheet => sheetOf(s, found.trim)),
  ];
  const [x, y] = found.leastOffcut;
  return { sheets, kerf: found.kerf, leastOffcut: { x, y } };
}

function sheetOf({ size, count, trim, ...metal }: SheetRow, common: Trim | null): StockSheet {
  const [x, y] = size;
  return {
    ...metal,
    origin: 'sheet',
    x,
    y,
    outline: null,
    count: count ?? Number.POSITIVE_INFINITY,
    trim: trim ?? common ?? NO_TRIM,
  };
}

/** An offcut was cut before: the trim of full sheets does not hold for it. */
function offcutOf({ size, outline, trim, ...metal }: OffcutRow): StockSheet {
  const ring = outline === null ? null : anticlockwise(outline);
  const extent = ring === null ? (size as readonly [number, number]) : extentOf(ring).size;
  return {
    ...metal,
    origin: 'offcut',
    x: extent[0],
    y: extent[1],
    outline: ring,
    count: 1,
    trim: trim ?? NO_TRIM,
  };
}

function anticlockwise(outline: readonly Point[]): readonly Point[] {
  const [dx, dy] = extentOf(outline).min;
  const moved = outline.map(([x, y]): Point => [x - dx, y - dy]);
  return ringArea(moved) < 0 ? moved.toReversed() : moved;
}

function twins({ sheets, offcuts }: RackData): readonly Problem[] {
  const rows = [
    ...sheets.map(({ name }, i) => ({ name, path: ['sheets', i, 'name'] as Path })),
    ...offcuts.map(({ name }, i) => ({ name, path: ['offcuts', i, 'name'] as Path })),
  ];
  return rows
    .filter((row, i) => rows.findIndex((o) => o.name === row.name) !== i)
    .map(({ name, path }) => ({
      code: 'name-twice',
      path,
      message: `the name ${quoted(name)} is taken`,
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
