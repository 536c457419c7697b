// What every job has to go through: read, planned, verified, looked at, told, written, and the files read back with
// nothing from the writers. A job may be refused by name; anything else that is thrown is a failure.
import {
  FAMILIES,
  JobError,
  type JobPlan,
  jobReader,
  type PartPlan,
  planJob,
  verifyFlat,
  verifyForm,
} from '@tinwright/core';
import { hardware } from '@tinwright/core/hardware';
import { type DxfForm, jobFiles, type OutFile, partDxf, partSvg, TABLE_STYLE } from '@tinwright/files';
import { DEFAULT_SHOP } from '@tinwright/shop';
import { jobFindings } from '@tinwright/shop/internal';
import { tellFinding } from '@tinwright/words';
import type { Outcome } from './lean.js';
import { looked } from './look.js';

const SLOW = 10_000; // ms of processor time
const NONSENSE = /\bNaN\b|\bundefined\b|\[object |-?\bInfinity\b/;

/** A reader that keeps its schemas, as a service would. */
const read = jobReader(FAMILIES, { hardware });

/** @throws Error that says what the job broke */
export function endure(data: unknown, dxf: DxfForm = 'r2000'): Outcome {
  const start = process.cpuUsage();
  const plan = planned(data);
  if (Array.isArray(plan)) return { made: false, codes: plan };
  for (const part of (plan as JobPlan).parts) verified(part);
  for (const part of (plan as JobPlan).parts) readBack(part, dxf);
  written(plan as JobPlan, dxf);
  toldInBoth(plan as JobPlan);
  const { user, system } = process.cpuUsage(start);
  if ((user + system) / 1000 > SLOW)
    throw new Error(`took ${Math.round((user + system) / 1000)} ms of processor time`);
  return { made: true };
}

function planned(data: unknown): JobPlan | readonly string[] {
  try {
    return planJob(read(data));
  } catch (error) {
    if (!(error instanceof JobError)) throw error;
    for (const p of error.problems)
      if (NONSENSE.test(`${p.message} ${p.fix}`) && !NONSENSE.test(JSON.stringify(data)))
        throw new Error(`refused with nonsense: ${p.message} ${p.fix}`);
    const unsound = error.problems.find((p) => p.fix.startsWith('This is a fault of the program'));
    if (unsound !== undefined) throw new Error(`refused as a fault of the program: ${unsound.message}`);
    return error.problems.map((p) => p.code);
  }
}

function verified({ name, flat, formed, part, sheet }: PartPlan): void {
  const flaws = [...verifyFlat(flat), ...verifyForm(formed, sheet.rule.compensates ? part.asked : [])];
  if (flaws.length > 0) throw new Error(`${name}: ${flaws.map((f) => f.code).join(', ')}`);
}

/** The files hold what was planned. */
function readBack(part: PartPlan, form: DxfForm): void {
  const style = { ...TABLE_STYLE, form };
  looked(part, { dxf: partDxf(part, style), svg: partSvg(part, style) }, style);
}

/** Every file holds numbers, and comes out the same again. */
function written(plan: JobPlan, dxf: DxfForm): void {
  const [once, again] = [jobFiles(plan, { dxf }), jobFiles(plan, { dxf })];
  once.forEach((file, i) => {
    if (text(file) !== text(again[i] as OutFile))
      throw new Error(`${file.path}: other bytes the second time`);
    if (/\bNaN\b|\bInfinity\b|\bundefined\b/.test(text(file)))
      throw new Error(`${file.path}: holds no number`);
  });
}

const text = ({ content }: OutFile): string =>
  typeof content === 'string' ? content : Buffer.from(content).toString('latin1');

function toldInBoth(plan: JobPlan): void {
  for (const finding of jobFindings(plan, DEFAULT_SHOP))
    for (const language of ['en', 'de'] as const) {
      const { message, fix, source } = tellFinding(finding, plan.job.units, language);
      if (NONSENSE.test(`${message} ${fix} ${source}`))
        throw new Error(`${finding.code} in ${language}: ${message} ${fix}`);
    }
}
