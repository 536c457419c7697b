import type { JobPlan, PartPlan } from '@tinwright/core';
import { breath, plainNumber } from '@tinwright/core/internal';
import type { ShopPlan } from '@tinwright/shop';
import type { Language } from '@tinwright/words';
import { cutListFiles } from './cut-list/csv.js';
import type { KnownCut } from './cut-list/cut-list.js';
import type { Drawing } from './drawing.js';
import type { DxfForm } from './dxf/write.js';
import { manifestOf, manifestText, type PartFiles } from './manifest.js';
import { type FileToMake, madeFile, type OutFile } from './out-file.js';
import { picturesToMake, viewsToMake } from './picture-files.js';
import { partDrawing, partDxf, partSvg } from './table/part-table.js';
import { TABLE_STYLE, type TableStyle } from './table/style.js';
import type { Writer } from './writer.js';

/** What of a job is written besides the cut files. */
export interface Wanted {
  readonly dxf: DxfForm;
  /** What the cutting table wants beyond the form. */
  readonly style?: Omit<TableStyle, 'form'>;
  /** Pictures and 3D models of every part and of the object. */
  readonly pictures?: boolean;
  /** Front, top and side view of every formed part as DXF. */
  readonly views?: boolean;
  /** The job as a shop makes it: its bend orders and findings go to the manifest. */
  readonly inShop?: ShopPlan | null;
  /** What it is cut from, where stock is known: a cut list beside the files and in the manifest. */
  readonly cut?: KnownCut | null;
  /** Formats of one's own that every part's cut file is written in too, `parts/NAME.EXTENSION`. */
  readonly writers?: readonly Writer<Drawing>[];
  /** Language of what the manifest tells; English where nobody says. */
  readonly language?: Language;
  /** Files drawn elsewhere that belong to the set: the manifest lists them too. */
  readonly also?: readonly OutFile[];
}

/**
 * Everything `tinwright make` writes for a job, manifest last. Same plan, same bytes.
 * @throws RangeError for a writer of one's own whose extension is taken
 */
export function jobFiles(plan: JobPlan, wanted: Wanted): readonly OutFile[] {
  return filesToMake(plan, wanted).map(madeFile);
}

/**
 * The files of `jobFiles` one by one, each made when it is asked for, with room for other work between two: for a stream
 * that takes them as fast as it can, or a page that has to stay responsive. Who stops asking stops the work.
 * @throws as `jobFiles` does
 */
export async function* streamJobFiles(plan: JobPlan, wanted: Wanted): AsyncGenerator<OutFile, void> {
  for (const file of filesToMake(plan, wanted)) {
    yield madeFile(file);
    await breath();
  }
}

/** The files of `jobFiles` before they are made. @throws as `jobFiles` does */
export function filesToMake(plan: JobPlan, wanted: Wanted): readonly FileToMake[] {
  const style = { ...TABLE_STYLE, ...wanted.style, form: wanted.dxf };
  const files = [
    ...cutsToMake(plan, style, checkedWriters(wanted.writers ?? [])),
    ...(wanted.pictures ? picturesToMake(plan) : []),
    ...(wanted.views ? viewsToMake(plan, wanted.dxf) : []),
    ...asMade(wanted.cut ? cutListFiles(wanted.cut.work, plan.job.units) : []),
    ...asMade(wanted.also ?? []),
  ];
  const paths = files.map((f) => f.path);
  return [...files, { path: 'job.json', content: () => manifestOfSet(plan, paths, wanted) }];
}

const asMade = (files: readonly OutFile[]): readonly FileToMake[] =>
  files.map(({ path, content }) => ({ path, content: () => content }));

/** The cut files of a job: a DXF and an SVG for every part, and what writers of one's own make of it. */
export function cutFiles(
  plan: JobPlan,
  style: TableStyle,
  writers: readonly Writer<Drawing>[] = [],
): readonly OutFile[] {
  return cutsToMake(plan, style, checkedWriters(writers)).map(madeFile);
}

const cutsToMake = (
  plan: JobPlan,
  style: TableStyle,
  writers: readonly Writer<Drawing>[],
): readonly FileToMake[] =>
  plan.parts.flatMap((p) => {
    const path = cutPath(p, style.names);
    return [
      { path: `${path}.dxf`, content: () => partDxf(p, style) },
      { path: `${path}.svg`, content: () => partSvg(p, style) },
      ...writers.map(({ extension, write }) => ({
        path: `${path}.${extension}`,
        content: () => write(partDrawing(p, style)),
      })),
    ];
  });

function checkedWriters(writers: readonly Writer<Drawing>[]): readonly Writer<Drawing>[] {
  const all = ['dxf', 'svg', ...writers.map((w) => w.extension)];
  const twice = all.find(
    (extension, i) => all.indexOf(extension) !== i || !/^[a-z0-9]{1,12}$/.test(extension),
  );
  if (twice !== undefined)
    throw new RangeError(`extension ${twice} given, one of its own of a-z and 0-9 allowed`);
  return writers;
}

/** The manifest of a set of files. */
function manifestOfSet(
  plan: JobPlan,
  paths: readonly string[],
  { inShop, cut, style, language }: Wanted,
): string {
  const files = (p: PartPlan): PartFiles => {
    const path = cutPath(p, style?.names ?? TABLE_STYLE.names);
    return { dxf: `${path}.dxf`, svg: `${path}.svg` };
  };
  return manifestText(
    manifestOf(plan, files, paths, {
      inShop: inShop ?? null,
      cut: cut ?? null,
      language: language ?? 'en',
    }),
  );
}

/** Where a part's cut files stand, without their extension: under its name, or one that says what to cut it from. */
function cutPath({ name, quantity, material, sheet }: PartPlan, names: TableStyle['names']): string {
  if (names === 'part') return `parts/${name}`;
  return `parts/${name}_${quantity}x_${material.name}_${plainNumber(sheet.thickness, 2)}mm`;
}
