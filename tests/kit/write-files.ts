// What embedders write, from a job's data to files: the same program runs in Node and in a browser.
import { planJob, readJob } from '@tinwright/core';
import { hardware } from '@tinwright/core/hardware';
import { assemblySolid, DRAWING_WRITERS, flatDrawing, SOLID_WRITERS } from '@tinwright/files';
import { PAPERS, planFiles } from '@tinwright/paper';

/** Every format of a job's parts and of its object, by name of the file. */
export async function writeFiles(data: unknown): Promise<Readonly<Record<string, string | Uint8Array>>> {
  const plan = planJob(readJob(data as unknown, undefined, { hardware }));
  const drawn = plan.parts.flatMap((p) =>
    DRAWING_WRITERS.map((w) => [
      `${p.name}-${w.format}.${w.extension}`,
      w.write(flatDrawing(p.flat, p.name, [p.name])),
    ]),
  );
  const { assembly, job } = plan;
  const solids =
    assembly === null
      ? []
      : SOLID_WRITERS.map((w) => [`object.${w.extension}`, w.write(assemblySolid(job.name, assembly))]);
  const [paper] = PAPERS;
  const plans =
    paper === undefined
      ? { files: [] }
      : await planFiles(plan, plan.parts, { paper: paper.name, dims: 'mm' });
  const planned = plans.files.map((f) => [f.path, f.content]);
  return Object.fromEntries([...drawn, ...solids, ...planned]);
}
