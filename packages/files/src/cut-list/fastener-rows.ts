import type { Assembly, JobPlan } from '@tinwright/core';
import { rivetLength } from '@tinwright/core/internal';

/** Fasteners of one kind and length, and how many. mm */
export interface FastenerRow {
  readonly kind: string;
  /** Of the rivet or screw; null where it has none. */
  readonly diameter: number | null;
  /** Both sheets together, at the joint. */
  readonly stack: number;
  /** Of a blind rivet that holds the stack; null where none is or no table says. */
  readonly length: number | null;
  readonly count: number;
}

/** All fasteners of jobs by kind, diameter and length, the most frequent first. @param sets of each job */
export function fastenerRows(plans: readonly JobPlan[], sets = 1): readonly FastenerRow[] {
  const found = new Map<string, FastenerRow>();
  for (const { assembly } of plans)
    for (const row of assembly === null ? [] : rowsOf(assembly)) {
      const key = `${row.kind} ${row.diameter} ${row.length} ${row.stack.toFixed(3)}`;
      found.set(key, { ...row, count: (found.get(key)?.count ?? 0) + row.count * sets });
    }
  return [...found.values()].toSorted((a, b) => b.count - a.count || (a.kind < b.kind ? -1 : 1));
}

function rowsOf({ seated, fasteners }: Assembly): readonly FastenerRow[] {
  return seated.flatMap(({ joint, from, to }): readonly FastenerRow[] => {
    const count = fasteners.filter((f) => f.joint === joint.name).length;
    if (joint.by === null || count === 0) return [];
    const { name: kind, facts } = joint.by.kind;
    const diameter = (joint.by.ask as { readonly diameter?: number }).diameter ?? null;
    const stack = from.part.formed.thickness + to.part.formed.thickness;
    const length = facts.rivet === 'blind' && diameter !== null ? rivetLength(diameter, stack) : null;
    return [{ kind, diameter, stack, length, count }];
  });
}
