import type { JobPlan } from '@tinwright/core';
import { type DxfForm, dxfOf } from './dxf/write.js';
import type { OutFile } from './out-file.js';
import { assemblyPicture, explodedPicture } from './sheets/assembly-picture.js';
import { partPicture } from './sheets/picture.js';
import { viewsDrawing } from './sheets/views.js';
import { toSvg } from './svg/write.js';

/** Pictures of a job: every part formed, and where it has joints the object assembled and taken apart; SVG and GLB. */
export async function pictureFiles(plan: JobPlan): Promise<readonly OutFile[]> {
  const { assemblyGlb, partGlb } = await import('./glb/write.js'); // only here: the library takes its time to load
  const { assembly, job } = plan;
  const title = job.name === '' ? 'assembly' : job.name;
  const parts = await Promise.all(
    plan.parts.map(
      async (p): Promise<readonly OutFile[]> => [
        { path: `pictures/${p.name}.svg`, content: toSvg(partPicture(p.name, p)) },
        { path: `pictures/${p.name}.glb`, content: await partGlb(p.name, p.formed) },
      ],
    ),
  );
  if (assembly === null) return parts.flat();
  return [
    ...parts.flat(),
    { path: 'pictures/assembly.svg', content: toSvg(assemblyPicture(title, assembly)) },
    { path: 'pictures/exploded.svg', content: toSvg(explodedPicture(title, assembly)) },
    { path: 'assembly.glb', content: await assemblyGlb(title, assembly) },
  ];
}

/** Front, top and side view of every formed part as DXF. */
export function viewFiles(plan: JobPlan, form: DxfForm): readonly OutFile[] {
  return plan.parts.map((p) => ({
    path: `views/${p.name}.dxf`,
    content: dxfOf(viewsDrawing(p.name, p), form),
  }));
}
