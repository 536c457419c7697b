/** Handles of an R2000 file's frame, hexadecimal: of tables, and of records that others point to. */
export const HANDLE = {
  viewports: '8',
  linetypes: '5',
  layers: '2',
  styles: '3',
  views: '6',
  axes: '7',
  programs: '9',
  dimensions: 'A',
  records: '1',
  model: '1F',
  modelBegin: '20',
  modelEnd: '21',
  modelLayout: '22',
  paper: '1B',
  paperBegin: '1C',
  paperEnd: '1D',
  paperLayout: '1E',
  root: 'C',
  groups: 'D',
  layouts: '1A',
  plotStyles: 'E',
  plotStyle: 'F',
} as const;

/** Rows of a table take handles from here on: 16 for each table, above all fixed ones. */
const ROWS = 0x40;

/** Handle of a table's row. @throws RangeError past the sixteenth row of a table */
export function rowHandle(table: string, row: number): string {
  if (row > 15) throw new RangeError(`row ${row + 1} of a DXF table given, 16 rows allowed`);
  return hex(ROWS + 16 * Number.parseInt(table, 16) + row);
}

/** Handle of an entity, counted from 0. */
export const entityHandle = (index: number): string => hex(0x100 + index);

const hex = (n: number) => n.toString(16).toUpperCase();
