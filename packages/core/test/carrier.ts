// A small harvest carrier of 1 mm mild steel: a hemmed channel, two gusset ends, a handle.
import { JobError, type JobPlan, type Problem, planJob, readJob } from '@tinwright/core';

/** A job as a file would hold it. */
export interface JobLike {
  readonly [key: string]: unknown;
  readonly parts: readonly Readonly<Record<string, unknown>>[];
  readonly joints?: readonly Readonly<Record<string, unknown>>[];
}

/** Sheet thickness and inside radius of the carrier, mm. */
export const T = 1;
export const R = 1;
/** Outside sizes of its channel, and what its ends and handle take from it. mm */
export const BODY = { length: 320, width: 160, height: 50 } as const;
export const END = { width: BODY.width - 2 * (T + R) - 0.4, height: 140, crownWidth: 60 } as const;
export const HANDLE = { span: BODY.length - 2 * T - 2.2, width: 40, tabs: 28 } as const;

type Change = Readonly<Record<string, unknown>>;

/** What of the carrier is other than usual. */
export interface Changes {
  readonly head?: Change;
  readonly body?: Change;
  readonly end?: Change;
  readonly handle?: Change;
  /** Changes of the four joints by their names. */
  readonly joints?: Readonly<Record<string, Change>>;
}

/** The carrier's job, sizes following each other. */
export function carrier({ head = {}, body = {}, end = {}, handle = {}, joints = {} }: Changes = {}): JobLike {
  const joint = (name: string, from: string, to: string) => ({
    name,
    from,
    to,
    by: 'spot-weld',
    ...joints[name],
  });
  return {
    units: 'mm',
    stock: { material: 'mild-steel', thickness: T },
    bending: { rule: 'k-factor', k: 0.42, insideRadius: R },
    ...head,
    parts: [
      {
        name: 'body',
        family: 'hemmed-channel',
        ...BODY,
        hem: { type: 'closed', length: 12 },
        endTabs: { length: 20 },
        ...body,
      },
      {
        name: 'end',
        family: 'gusset-end',
        quantity: 2,
        width: { of: 'body.seatWidth', less: 0.4 },
        shoulderHeight: 48,
        height: END.height,
        crownWidth: END.crownWidth,
        ...end,
      },
      {
        name: 'handle',
        family: 'handle',
        span: { of: 'body.insideLength', less: 2.2 },
        width: HANDLE.width,
        sideDepth: 14,
        hem: { type: 'closed', length: 8 },
        tabs: { length: HANDLE.tabs },
        ...handle,
      },
    ],
    joints: [
      joint('west', 'body.west', 'end-1.rim'),
      joint('east', 'body.east', 'end-2.rim'),
      joint('grip-west', 'end-1.crown', 'handle.west'),
      joint('grip-east', 'end-2.crown', 'handle.east'),
    ],
  };
}

/** A job read and planned. */
export const plan = (job: unknown): JobPlan => planJob(readJob(job));

/** What stops a job, in order. @throws Error when nothing does */
export function problemsOf(work: () => unknown): readonly Problem[] {
  try {
    work();
  } catch (error) {
    if (error instanceof JobError) return error.problems;
    throw error;
  }
  throw new Error('nothing was wrong with it');
}

/** Codes of what is to know of a job, in order. */
export const codesOf = ({ findings }: Pick<JobPlan, 'findings'>): readonly string[] =>
  findings.map((f) => f.code);
