import type { JobPlan } from '@tinwright/core';
import { type DxfForm, dxfOf } from './dxf/write.js';
import { toGlb } from './glb/write.js';
import { type FileToMake, madeFile, type OutFile } from './out-file.js';
import { assemblyPicture, explodedPicture } from './sheets/assembly-picture.js';
import { partPicture } from './sheets/picture.js';
import { viewsDrawing } from './sheets/views.js';
import { assemblySolid, partSolid } from './solid.js';
import { toSvg } from './svg/write.js';

/** Pictures of a job: every part formed, and where it has joints the object assembled and taken apart; SVG and GLB. */
export const pictureFiles = (plan: JobPlan): readonly OutFile[] => picturesToMake(plan).map(madeFile);

export function picturesToMake(plan: JobPlan): readonly FileToMake[] {
  const { assembly, job } = plan;
  const title = job.name === '' ? 'assembly' : job.name;
  const parts = plan.parts.flatMap((p): readonly FileToMake[] => [
    { path: `pictures/${p.name}.svg`, content: () => toSvg(partPicture(p.name, p)) },
    { path: `pictures/${p.name}.glb`, content: () => toGlb(partSolid(p)) },
  ]);
  if (assembly === null) return parts;
  return [
    ...parts,
    { path: 'pictures/assembly.svg', content: () => toSvg(assemblyPicture(title, assembly)) },
    { path: 'pictures/exploded.svg', content: () => toSvg(explodedPicture(title, assembly)) },
    { path: 'assembly.glb', content: () => toGlb(assemblySolid(title, assembly)) },
  ];
}

/** Front, top and side view of every formed part as DXF. */
export const viewFiles = (plan: JobPlan, form: DxfForm): readonly OutFile[] =>
  viewsToMake(plan, form).map(madeFile);

export const viewsToMake = (plan: JobPlan, form: DxfForm): readonly FileToMake[] =>
  plan.parts.map((p) => ({
    path: `views/${p.name}.dxf`,
    content: () => dxfOf(viewsDrawing(p.name, p), form),
  }));
