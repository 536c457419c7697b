// What every job has to go through: read, planned, verified, looked at, told, written, and the files read back with
// nothing from the writers. A job may be refused by name; anything else that is thrown is a failure.
import {
  JobError,
  type JobPlan,
  jobReader,
  type PartPlan,
  planJob,
  verifyFlat,
  verifyForm,
} from '@tinwright/core';
import { type DxfForm, jobFiles, type OutFile, partDxf, TABLE_STYLE } from '@tinwright/files';
import { DEFAULT_SHOP } from '@tinwright/shop';
import { jobFindings } from '@tinwright/shop/internal';
import { tellFinding } from '@tinwright/words';
import { cutLoops } from '../kit/cut-layer.js';

/** How a job ended: made, or refused with the codes of its problems. */
export type Outcome = { readonly made: true } | { readonly made: false; readonly codes: readonly string[] };

const SLOW = 10_000; // ms of processor time
const LEAST_SEGMENT = 0.0009; // mm: a thousandth, less the rounding of the file's decimals
const NONSENSE = /\bNaN\b|\bundefined\b|\[object |-?\bInfinity\b/;

/** A reader that keeps its schemas, as a service would. */
const read = jobReader();

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

/** The outline cut from the file is as large as the pattern says. */
function readBack(part: PartPlan, dxf: DxfForm): void {
  const { name, flat } = part;
  const loops = cutLoops(partDxf(part, { ...TABLE_STYLE, form: dxf }));
  const areas = loops.map((l) => Math.abs(signedArea(l))).toSorted((a, b) => b - a);
  const net = areas.reduce((sum, a, i) => (i === 0 ? a : sum - a), 0);
  const allowed = 0.002 * flat.cutLength + 0.01; // chords of arcs, and the decimals of the file
  if (Math.abs(net - flat.area) > allowed)
    throw new Error(`${name}: ${net} mm² in the file, ${flat.area} planned`);
  const points = loops.flat();
  for (const loop of loops)
    loop.forEach((p, i) => {
      const [x = 0, y = 0] = loop[(i + 1) % loop.length] ?? [];
      if (Math.hypot(x - (p[0] ?? 0), y - (p[1] ?? 0)) < LEAST_SEGMENT)
        throw new Error(`${name}: two corners less than ${LEAST_SEGMENT} mm apart at ${p.join(', ')}`);
    });
  const [x, y] = [0, 1].map(
    (k) => Math.max(...points.map((p) => p[k as 0])) - Math.min(...points.map((p) => p[k as 0])),
  );
  if (Math.abs((x ?? 0) - flat.blank.max[0]) > 0.01 || Math.abs((y ?? 0) - flat.blank.max[1]) > 0.01)
    throw new Error(`${name}: a blank of ${x} by ${y} in the file, ${flat.blank.max.join(' by ')} planned`);
}

const signedArea = (loop: readonly (readonly number[])[]): number =>
  loop.reduce((sum, [x = 0, y = 0], i) => {
    const [u = 0, v = 0] = loop[(i + 1) % loop.length] ?? [];
    return sum + (x * v - u * y) / 2;
  }, 0);

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
