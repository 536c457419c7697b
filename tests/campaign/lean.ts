// The short way of a job: read, planned, verified, its files written and looked at with nothing from the writers. Of one
// part it asks no search for sizes that would work, and of its shop nothing but what reading takes from there.
import {
  FAMILIES,
  type Job,
  type JobContext,
  JobError,
  type JobReader,
  jobReader,
  type PartPlan,
  planJob,
} from '@tinwright/core';
import { hardware } from '@tinwright/core/hardware';
import { planPart } from '@tinwright/core/internal';
import { readRack } from '@tinwright/cutting';
import { partDxf, partSvg, TABLE_STYLE, type TableStyle } from '@tinwright/files';
import { jobContext, readShop } from '@tinwright/shop';
import { looked } from './look.js';
import type { Trial } from './trials.js';

/** How a trial ended: made, or refused with the codes of its problems. */
export type Outcome = { readonly made: true } | { readonly made: false; readonly codes: readonly string[] };

const read: JobReader = jobReader(FAMILIES, { hardware });

/** A shop by its text, read once: a reader is kept for the metals of each. */
const shops = new Map<string, JobContext>();

function contextOf(shop: unknown): JobContext {
  if (shop === null) return {};
  const text = JSON.stringify(shop);
  const context = shops.get(text) ?? jobContext(readShop(shop));
  shops.set(text, context);
  return context;
}

/** @throws Error that says what the job broke */
export function endureLean({ job, style, shop, rack }: Trial): Outcome {
  try {
    if (rack !== null) readRack(rack);
    const parts = planned(read(job, contextOf(shop)));
    for (const part of parts) written(part, { ...TABLE_STYLE, ...style });
    return { made: true };
  } catch (error) {
    if (!(error instanceof JobError)) throw error;
    const unsound = error.problems.find((p) => p.fix.startsWith('This is a fault of the program'));
    if (unsound !== undefined) throw new Error(`refused as a fault of the program: ${unsound.message}`);
    return { made: false, codes: error.problems.map((p) => p.code) };
  }
}

function planned(job: Job): readonly PartPlan[] {
  const alone = job.joints.length === 0 && job.hardware === null;
  return alone ? job.parts.map((p) => planPart(p)) : planJob(job).parts;
}

function written(part: PartPlan, style: TableStyle): void {
  looked(part, { dxf: partDxf(part, style), svg: partSvg(part, style) }, style);
}
