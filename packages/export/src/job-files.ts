import type { JobPlan, PartPlan } from '@tinwright/core';
import { toDxfR12 } from './dxf/r12.js';
import { toDxf } from './dxf/r2000.js';
import { manifestOf, manifestText, type PartFiles } from './manifest.js';
import { flatDrawing } from './sheets/flat.js';
import { toSvg } from './svg/write.js';

/** DXF forms that are written. */
export type DxfForm = 'r2000' | 'r12';

/** A file of the output folder: its path with forward slashes, and what stands in it. */
export interface OutFile {
  readonly path: string;
  readonly content: string | Uint8Array;
}

/** Everything `tinwright make` writes for a job, manifest last. Same plan, same bytes. */
export function jobFiles(plan: JobPlan, options: { readonly dxf: DxfForm }): readonly OutFile[] {
  const paths = ({ name }: PartPlan): PartFiles => ({ dxf: `parts/${name}.dxf`, svg: `parts/${name}.svg` });
  const parts = plan.parts.flatMap((p): readonly OutFile[] => {
    const { dxf, svg } = paths(p);
    return [
      { path: dxf, content: partDxf(p, options.dxf) },
      { path: svg, content: toSvg(flatDrawing(p.flat, p.name, [p.name])) },
    ];
  });
  return [
    ...parts,
    {
      path: 'job.json',
      content: manifestText(
        manifestOf(
          plan,
          paths,
          parts.map((f) => f.path),
        ),
      ),
    },
  ];
}

/** The cut file of one part. R12 has no units, so there a second line of the note says them. */
export function partDxf({ flat, name }: Pick<PartPlan, 'flat' | 'name'>, form: DxfForm): string {
  return form === 'r12'
    ? toDxfR12(flatDrawing(flat, name, [name, 'mm']))
    : toDxf(flatDrawing(flat, name, [name]));
}
