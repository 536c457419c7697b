import { open } from 'node:fs/promises';
import { type AnyFamily, type Job, JobError, type JobPlan, planJob, readJob } from '@tinwright/core';
import type { Host } from './console.js';
import { EXIT, type ExitCode, placedProblems, printProblems } from './failure.js';
import { type JobText, LONGEST_JOB, readJobText, TextError } from './job-text.js';
import { withMends } from './mend.js';

/** What was computed from a job file, or the exit status after its problems were printed. */
export type Opened<T> = { readonly answer: T } | { readonly exit: ExitCode };

/** Stands for `-`, standard input, which the argument parser would take for an option without a name. */
export const STANDARD_INPUT = '(standard input)';

/** Read and plan the job in a file or from standard input; problems are printed with their places. */
export async function openJob(
  host: Host,
  file: string,
  json: boolean,
  families: readonly AnyFamily[],
): Promise<{ readonly plan: JobPlan } | { readonly exit: ExitCode }> {
  const opened = await withJob(host, file, json, (data) => planned(readJob(data, families)));
  return 'exit' in opened ? opened : { plan: opened.answer };
}

/** The plan of a job. @throws JobError that names, where building a part failed, the nearest size that would work */
function planned(job: Job): JobPlan {
  try {
    return planJob(job);
  } catch (error) {
    throw error instanceof JobError ? withMends(job, error) : error;
  }
}

/** Compute something from the job in a file or from standard input; problems are printed with their places. */
export async function withJob<T>(
  host: Host,
  file: string,
  json: boolean,
  compute: (data: unknown) => T,
): Promise<Opened<T>> {
  let text: JobText | null = null;
  try {
    text = readJobText(await bytesOf(host, file));
    return { answer: compute(text.data) };
  } catch (error) {
    if (!(error instanceof JobError) && !(error instanceof TextError)) throw error;
    printProblems(host, placedProblems(error, file, text), json);
    return { exit: EXIT.unreadable };
  }
}

/** What the job says, as bytes. @throws TextError when there is nothing to read */
async function bytesOf(host: Host, file: string): Promise<Uint8Array> {
  try {
    return file === STANDARD_INPUT ? await host.stdin() : await readStart(file);
  } catch (error) {
    throw error instanceof TextError ? error : unreadable(error);
  }
}

/** The file's bytes, but not much more than a job may have. */
async function readStart(path: string): Promise<Uint8Array> {
  const handle = await open(path);
  try {
    const { size } = await handle.stat();
    const buffer = Buffer.alloc(Math.min(Math.max(size, 64 * 1024), 2 * LONGEST_JOB));
    const { bytesRead } = await handle.read(buffer, 0, buffer.length, 0);
    if (size > LONGEST_JOB) throw tooLong(size);
    return buffer.subarray(0, bytesRead);
  } finally {
    await handle.close();
  }
}

function tooLong(size: number): TextError {
  const message = `a job file of ${size} bytes given, up to ${LONGEST_JOB} allowed`;
  return new TextError([{ code: 'too-long', path: [], message, fix: '', place: { line: 1, column: 1 } }]);
}

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file',
  EACCES: 'the file may not be read',
  EISDIR: 'this is a folder, not a job file',
};

function unreadable(error: unknown): TextError {
  const { code } = error as NodeJS.ErrnoException;
  if (code === undefined) throw error;
  const message = REASONS[code] ?? `the file cannot be read (${code})`;
  return new TextError([{ code: 'unreadable', path: [], message, fix: '', place: { line: 1, column: 1 } }]);
}
