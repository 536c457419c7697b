import type * as z from 'zod/mini';
import type { Path, Problem } from '../errors/problem.js';
import { problemsOf } from '../schema/problems.js';

/** What a schema reads from data at a path; null, and its problems kept, where it cannot. */
export function parsed(schema: z.ZodMiniType, data: unknown, path: Path, problems: Problem[]): unknown {
  const read = schema.safeParse(data);
  if (read.success) return read.data;
  for (const p of problemsOf(read.error.issues, data)) problems.push({ ...p, path: [...path, ...p.path] });
  return null;
}
