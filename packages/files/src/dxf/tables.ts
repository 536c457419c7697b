import type { LayerRow, Linetype } from '../layer-looks.js';
import { HANDLE, rowHandle } from './handles.js';
import { section, tag, tags } from './tag.js';

/** Dashes of each linetype, mm: drawn, left out, …; 0 is a dot. */
const DASHES: Readonly<Record<Linetype, readonly number[]>> = {
  CONTINUOUS: [],
  DASHED: [6, -3],
  DOTTED: [0, -2],
  DASHDOT: [8, -2, 0, -2],
};

/** The tables of an R2000 file: its layers, layer 0 that every file has, and what readers expect beside. */
export function tables(layers: readonly LayerRow[], view: readonly [width: number, height: number]): string {
  const all: readonly LayerRow[] = [{ name: '0', number: 7, linetype: 'CONTINUOUS' }, ...layers];
  return section(
    'TABLES',
    [
      table('VPORT', HANDLE.viewports, [viewport(view)]),
      table('LTYPE', HANDLE.linetypes, [bare('ByBlock'), bare('ByLayer'), ...linetypesOf(all).map(dashed)]),
      table('LAYER', HANDLE.layers, all.map(layerRow)),
      REST,
    ].join(''),
  );
}

/** Linetypes in use, in the order of the list. */
const linetypesOf = (layers: readonly LayerRow[]): readonly Linetype[] =>
  (Object.keys(DASHES) as Linetype[]).filter((l) => layers.some((row) => row.linetype === l));

const head = (name: string, handle: string, rows: number): string =>
  tags([0, 'TABLE'], [2, name], [5, handle], [330, 0], [100, 'AcDbSymbolTable'], [70, rows]);

const row = (name: string, table: string, handle: readonly [5 | 105, string], inside: string): string =>
  tags([0, name], handle, [330, table], [100, 'AcDbSymbolTableRecord']) + inside;

const table = (name: string, handle: string, rows: readonly string[]): string =>
  [
    head(name, handle, rows.length),
    ...rows.map((r, i) => row(name, handle, [5, rowHandle(handle, i)], r)),
    tag(0, 'ENDTAB'),
  ].join('');

const WINDOW =
  tags([100, 'AcDbViewportTableRecord'], [2, '*Active'], [70, 0]) + tags([10, 0], [20, 0], [11, 1], [21, 1]);
const GRID =
  tags([13, 0], [23, 0], [14, 10], [24, 10], [15, 10], [25, 10], [16, 0], [26, 0], [36, 1]) +
  tags([17, 0], [27, 0], [37, 0]);
const LENS =
  tags([42, 50], [43, 0], [44, 0], [50, 0], [51, 0], [71, 0], [72, 100], [73, 1], [74, 3]) +
  tags([75, 0], [76, 0], [77, 0], [78, 0]);

/** The view a reader opens with: the whole drawing. */
const viewport = ([width, height]: readonly [number, number]): string =>
  [
    WINDOW,
    tags([12, width / 2], [22, height / 2]),
    GRID,
    tags([40, height], [41, width / height]),
    LENS,
  ].join('');

const linetype = (name: string, words: string, dashes: readonly number[]): string =>
  [
    tags([100, 'AcDbLinetypeTableRecord'], [2, name], [70, 0], [3, words], [72, 65], [73, dashes.length]),
    tag(
      40,
      dashes.reduce((sum, d) => sum + Math.abs(d), 0),
    ),
    ...dashes.map((d) => tags([49, d], [74, 0])),
  ].join('');
const bare = (name: string) => linetype(name, '', []);
const dashed = (name: Linetype) =>
  linetype(name, name === 'CONTINUOUS' ? 'Solid line' : name.toLowerCase(), DASHES[name]);

const layerRow = ({ name, number, linetype: line }: LayerRow): string =>
  tags([100, 'AcDbLayerTableRecord'], [2, name], [70, 0], [62, number], [6, line], [370, -3]) +
  tag(390, HANDLE.plotStyle);

const TEXT_STYLE =
  tags([100, 'AcDbTextStyleTableRecord'], [2, 'Standard'], [70, 0], [40, 0], [41, 1]) +
  tags([50, 0], [71, 0], [42, 2.5], [3, 'txt'], [4, '']);

/** Its rows have their handle under 105. */
const DIMENSIONS = [
  head('DIMSTYLE', HANDLE.dimensions, 1),
  tags([100, 'AcDbDimStyleTable'], [71, 0]),
  row(
    'DIMSTYLE',
    HANDLE.dimensions,
    [105, rowHandle(HANDLE.dimensions, 0)],
    tags([100, 'AcDbDimStyleTableRecord'], [2, 'Standard'], [70, 0]),
  ),
  tag(0, 'ENDTAB'),
].join('');

const blockRecord = (handle: string, name: string, layout: string): string =>
  row(
    'BLOCK_RECORD',
    HANDLE.records,
    [5, handle],
    tags([100, 'AcDbBlockTableRecord'], [2, name], [340, layout]),
  );

/** Tables that are the same in every file. */
const REST = [
  table('STYLE', HANDLE.styles, [TEXT_STYLE]),
  table('VIEW', HANDLE.views, []),
  table('UCS', HANDLE.axes, []),
  table('APPID', HANDLE.programs, [tags([100, 'AcDbRegAppTableRecord'], [2, 'ACAD'], [70, 0])]),
  DIMENSIONS,
  head('BLOCK_RECORD', HANDLE.records, 2),
  blockRecord(HANDLE.model, '*Model_Space', HANDLE.modelLayout),
  blockRecord(HANDLE.paper, '*Paper_Space', HANDLE.paperLayout),
  tag(0, 'ENDTAB'),
].join('');
