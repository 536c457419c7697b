import { mkdtemp, readdir, realpath, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, onTestFinished } from 'vitest';
import { type Ran, tinwright } from './host.js';

/** A folder of its own for the running test, taken away afterwards. */
export async function emptyFolder(): Promise<string> {
  const folder = await realpath(await mkdtemp(join(tmpdir(), 'tinwright-')));
  onTestFinished(() => rm(folder, { recursive: true, force: true }));
  return folder;
}

/** Everything below a folder, hidden files too, sorted. */
export async function below(folder: string): Promise<readonly string[]> {
  return (await readdir(folder, { recursive: true })).toSorted();
}

/** A job file in a folder of its own. */
export async function jobFile(content: string | Uint8Array): Promise<string> {
  const path = join(await emptyFolder(), 'job.yaml');
  await writeFile(path, content);
  return path;
}

/** What `make` did with a job: problems with the file's path taken off, and what stands beside the job. */
export interface Made extends Ran {
  /** Problems as `line:column: text`, in the order they were printed. */
  readonly problems: readonly string[];
  readonly files: readonly string[];
}

/** Run `make` on a job file's content. */
export async function make(content: string | Uint8Array, ...options: readonly string[]): Promise<Made> {
  const path = await jobFile(content);
  const folder = join(path, '..');
  const ran = await tinwright('make', path, '--out', join(folder, 'out'), ...options);
  const lines = ran.err.split('\n').filter((l) => l !== '');
  const problems = lines.map((l) => (l.startsWith(`${path}:`) ? l.slice(path.length + 1) : `?? ${l}`));
  return { ...ran, problems, files: await below(folder) };
}

/** A refused job: exit 2, nothing on stdout, nothing written, every problem with its place. Gives the problems. */
export async function refused(content: string | Uint8Array): Promise<readonly string[]> {
  const { exit, out, problems, files } = await make(content);
  expect(exit).toBe(2);
  expect(out).toBe('');
  expect(files).toEqual(['job.yaml']);
  expect(problems.filter((p) => !/^[1-9]\d*:[1-9]\d*: \S/.test(p))).toEqual([]);
  expect(problems.length).toBeGreaterThan(0);
  return problems;
}
