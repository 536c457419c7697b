import { PROGRAM } from '@tinwright/core';
import {
  CUT_STYLE,
  type CutStyle,
  cutSheet,
  type Nest,
  type NestPart,
  type SheetCuts,
  type TorchWork,
} from '@tinwright/cutting';
import type { OutFile } from '../out-file.js';
import { toSvg } from '../svg/write.js';
import { tableDxf } from '../table/part-table.js';
import { TABLE_STYLE, type TableStyle } from '../table/style.js';
import { type NestFlat, sheetDrawing } from './sheet-drawing.js';
import { sheetPaths } from './sheet-paths.js';

/** A nest with its cuts, sheet by sheet. */
export interface CutNest {
  readonly nest: Nest;
  readonly cuts: readonly SheetCuts[];
  /** What the torch has to do on each sheet, where `nest.json` shall say so. */
  readonly work?: readonly TorchWork[];
}

/**
 * Everything `tinwright nest` writes: a DXF to cut and an SVG to look at for every sheet, and `nest.json`, last.
 * @param findings in words, as a program reads them
 */
export function nestFiles(
  { nest, cuts, work }: CutNest,
  flats: readonly NestFlat[],
  style: TableStyle = TABLE_STYLE,
  findings: readonly object[] = [],
): readonly OutFile[] {
  const paths = sheetPaths(nest.sheets.map((sheet) => sheet.name));
  const files = nest.sheets.flatMap((sheet, i): readonly OutFile[] => {
    const [own, path] = [cuts[i] as SheetCuts, paths[i] as string];
    return [
      { path: `${path}.dxf`, content: tableDxf(sheetDrawing(sheet, own, flats, style, 'cut'), style) },
      { path: `${path}.svg`, content: toSvg(sheetDrawing(sheet, own, flats, style, 'look-at')) },
    ];
  });
  const list = nestJson(
    nest,
    files.map((f) => f.path),
    work,
  );
  return [...files, { path: 'nest.json', content: `${JSON.stringify({ ...list, findings }, null, 2)}\n` }];
}

/**
 * The cuts of every sheet of a nest.
 * @param style lines as ways in where nobody says, and the kerf of the rack it was nested for
 */
export function cutNest(
  nest: Nest,
  parts: readonly NestPart[],
  style: CutStyle = { ...CUT_STYLE, kerf: nest.kerf },
): CutNest {
  return { nest, cuts: nest.sheets.map((sheet) => cutSheet(sheet, parts, style)) };
}

/** The nest as a program reads it: flat coordinates come onto the sheet by the matrix `[a, b, c, d, e, f]`. */
function nestJson(
  nest: Nest,
  files: readonly string[],
  work?: readonly TorchWork[],
): Readonly<Record<string, unknown>> {
  return {
    format: 1,
    program: `${PROGRAM.name} ${PROGRAM.version}`,
    spacing: nest.spacing,
    edge: nest.edge,
    kerf: nest.kerf,
    sheets: nest.sheets.map(({ name, stock, pieces, density, usedTo }, i) => ({
      name,
      stock: stock.name,
      material: stock.material,
      thickness: stock.thickness,
      x: stock.x,
      y: stock.y,
      ...(stock.outline === null ? {} : { outline: stock.outline }),
      density,
      usedTo,
      ...(work === undefined ? {} : { cut: work[i] }),
      pieces,
    })),
    missing: nest.missing,
    files,
  };
}
