import type { AnyFamily } from '../families/family.js';
import { type BuiltInFamily, FAMILIES } from '../families/index.js';
import type { JobSource } from './input.js';
import type { Job } from './job.js';
import type { JobContext } from './read.js';
import { type JobReader, readerOf } from './reader.js';
import type { OwnTables } from './tables.js';

/**
 * A reader of jobs for one set of families. It keeps the schemas it builds: whoever reads more than one job keeps it.
 * @param families those a part may name; the built-in ones by default
 * @param own materials and bend rules of one's own that a job may name too
 * @throws RangeError for a row or a family of one's own with the name of another
 */
export function jobReader(families: readonly AnyFamily[] = FAMILIES, own: OwnTables = {}): JobReader {
  return readerOf(families, own);
}

/**
 * Read one job from data; see `jobReader` for many. Data that is typed in a program is checked as a `JobInput` when the
 * program is compiled, what a parser gave when it is read.
 * @param families those a part may name; the built-in ones by default
 * @throws JobError with every problem found, in the order of the job
 */
export function readJob<D, F extends AnyFamily = BuiltInFamily>(
  data: JobSource<D, F>,
  families: readonly F[] = FAMILIES as readonly AnyFamily[] as readonly F[],
  context: JobContext & OwnTables = {},
): Job {
  return readerOf(families, context)(data, context);
}
