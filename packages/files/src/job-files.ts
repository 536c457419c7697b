import type { JobPlan, PartPlan } from '@tinwright/core';
import type { ShopPlan } from '@tinwright/shop';
import { cutListFiles } from './cut-list/csv.js';
import type { KnownCut } from './cut-list/cut-list.js';
import type { DxfForm } from './dxf/write.js';
import { manifestOf, manifestText, type PartFiles } from './manifest.js';
import type { OutFile } from './out-file.js';
import { pictureFiles, viewFiles } from './picture-files.js';
import { partDxf, partSvg } from './table/part-table.js';
import { TABLE_STYLE, type TableStyle } from './table/style.js';

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
  /** Files drawn elsewhere that belong to the set: the manifest lists them too. */
  readonly also?: readonly OutFile[];
}

/** Everything `tinwright make` writes for a job, manifest last. Same plan, same bytes. */
export function jobFiles(plan: JobPlan, wanted: Wanted): readonly OutFile[] {
  const files = [
    ...cutFiles(plan, { ...TABLE_STYLE, ...wanted.style, form: wanted.dxf }),
    ...(wanted.pictures ? pictureFiles(plan) : []),
    ...(wanted.views ? viewFiles(plan, wanted.dxf) : []),
    ...(wanted.cut ? cutListFiles(wanted.cut.work, plan.job.units) : []),
    ...(wanted.also ?? []),
  ];
  return [...files, manifestFile(plan, files, wanted)];
}

/** The cut files of a job: a DXF and an SVG for every part. */
export function cutFiles(plan: JobPlan, style: TableStyle): readonly OutFile[] {
  return plan.parts.flatMap((p): readonly OutFile[] => {
    const { dxf, svg } = filesOf(p);
    return [
      { path: dxf, content: partDxf(p, style) },
      { path: svg, content: partSvg(p, style) },
    ];
  });
}

/** The manifest of a set of files; it stands last among them. */
function manifestFile(plan: JobPlan, files: readonly OutFile[], { inShop, cut }: Wanted): OutFile {
  return {
    path: 'job.json',
    content: manifestText(
      manifestOf(
        plan,
        filesOf,
        files.map((f) => f.path),
        inShop ?? null,
        cut ?? null,
      ),
    ),
  };
}

const filesOf = ({ name }: PartPlan): PartFiles => ({ dxf: `parts/${name}.dxf`, svg: `parts/${name}.svg` });
