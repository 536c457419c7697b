import type { JobPlan, PartPlan } from '@tinwright/core';
import {
  assemblySolid,
  type Bytes,
  DRAWING_WRITERS,
  type Drawing,
  flatDrawing,
  jobFiles,
  SOLID_WRITERS,
  TABLE_STYLE,
  type Writer,
} from '@tinwright/files';
import { makingOf, packetFiles, planFiles } from '@tinwright/paper';
import { DEFAULT_SHOP, planShop } from '@tinwright/shop';
import { strToU8, zipSync } from 'fflate';
import type { Asks, FileView } from '../protocol.js';
import { paperFor, worksheetFile } from './prints.js';

/** Formats one may choose, with what people call them. */
export const FORMATS: readonly { readonly format: string; readonly words: string }[] = [
  ...DRAWING_WRITERS,
  ...SOLID_WRITERS,
].map(({ format, words }) => ({ format, words }));

/** Files of a job, the bytes the command writes. */
export async function filesFor(plan: JobPlan, ask: Asks['files']): Promise<readonly FileView[]> {
  const part = plan.parts.find((p) => p.name === ask.part);
  const writer = DRAWING_WRITERS.find((w) => w.format === ask.what);
  if (writer !== undefined) return part === undefined ? [] : [drawn(part, writer)];
  switch (ask.what) {
    case 'plan':
      return (await plans(plan, ask)).filter((f) => f.path === `plans/${ask.part}.pdf`);
    case 'packet':
      return packet(plan, ask);
    case 'worksheet':
      return [await worksheetFile(plan, ask.language)];
    case 'job':
      return [{ path: `${fileName(plan)}.yaml`, content: ask.text }];
    case 'all':
      return [{ path: `${fileName(plan)}.zip`, content: await everything(plan, ask) }];
    default:
      return solids(plan, ask.what);
  }
}

/** The bytes the command writes: a writer without units is drawn for with them in the note. */
function drawn(part: PartPlan, { extension, unitless, write }: Writer<Drawing>): FileView {
  const note = unitless === true ? [part.name, TABLE_STYLE.unit] : [part.name];
  return { path: `${part.name}.${extension}`, content: write(flatDrawing(part.flat, part.name, note)) };
}

function solids({ assembly, job }: JobPlan, what: string): readonly FileView[] {
  const writer = SOLID_WRITERS.find((w) => w.format === what);
  if (writer === undefined || assembly === null) return [];
  const name = job.name === '' ? 'assembly' : job.name;
  return [{ path: `assembly.${writer.extension}`, content: writer.write(assemblySolid(name, assembly)) }];
}

async function plans(plan: JobPlan, { language }: Asks['files']): Promise<readonly FileView[]> {
  const { files } = await planFiles(plan, plan.parts, { ...paperFor(plan.job.units), language });
  return files;
}

async function packet(plan: JobPlan, { language }: Asks['files']): Promise<readonly FileView[]> {
  const asked = { ...paperFor(plan.job.units), language };
  const { files } = await packetFiles(plan, makingOf(plan, null), asked, ['pdf']);
  return files;
}

/** The folder the command makes, with plans, packet and the job itself. */
async function everything(plan: JobPlan, ask: Asks['files']): Promise<Bytes> {
  const inShop = planShop(plan, DEFAULT_SHOP);
  const files = [
    { path: 'job.yaml', content: ask.text },
    ...jobFiles(plan, { dxf: 'r2000', pictures: true, inShop, language: ask.language }),
    ...(await plans(plan, ask)),
    ...(await packet(plan, ask)),
  ];
  const bytes = (c: string | Uint8Array) => (typeof c === 'string' ? strToU8(c) : c);
  // one date for all, so that the same job gives the same bytes
  return zipSync(Object.fromEntries(files.map((f) => [f.path, bytes(f.content)])), {
    mtime: '1980-01-01T12:00:00',
  });
}

const fileName = ({ job }: JobPlan): string =>
  job.name.replace(/[^\p{L}\p{N}]+/gu, '-').replace(/^-|-$/g, '') || 'job';
