import { JobError, type JobPlan, problemText } from '@tinwright/core';
import type { KnownCut } from '@tinwright/files';
import type { Shop } from '@tinwright/shop';
import type { Host } from '../host/console.js';
import { type ExitCode, refuse } from '../host/failure.js';
import { openRack } from '../open/open-rack.js';

/** Whose blanks are cut, and from what. */
export interface CutAsked {
  readonly plan: JobPlan;
  readonly shop: Shop | null;
  readonly rack?: string | undefined;
  readonly json: boolean;
  /** Sets of the object to make. */
  readonly sets?: number;
}

/** How the blanks of a job are sheared, where a rack file, the job or the shop says what stock there is (`knownCut`). */
export async function cutKnown(
  host: Host,
  { rack, json, ...asked }: CutAsked,
): Promise<KnownCut | null | { readonly exit: ExitCode }> {
  const opened = rack === undefined ? null : await openRack(host, rack, json);
  if (opened !== null && 'exit' in opened) return opened;
  const { knownCut } = await import('@tinwright/files');
  try {
    return knownCut({ ...asked, rack: opened?.rack ?? null });
  } catch (error) {
    const [problem] = error instanceof JobError ? error.problems : [];
    if (problem === undefined) throw error;
    return { exit: refuse(host, json, problem.code, 'cut list', problemText(problem)) };
  }
}
