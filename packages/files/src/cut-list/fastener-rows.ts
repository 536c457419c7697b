import type { Assembly, HardwareSpec, JobPlan, Seated } from '@tinwright/core';
import { rivetLength } from '@tinwright/core/internal';

/** Fasteners of one kind and length, or bought parts of one kind and size, and how many. mm */
export interface FastenerRow {
  readonly kind: string;
  /** Of the rivet or screw, or of what is round; null where it has none. */
  readonly diameter: number | null;
  /** Both sheets together, at the joint; null for a bought part. */
  readonly stack: number | null;
  /** Of a blind rivet that holds the stack, or of a bought part; null where none is or no table says. */
  readonly length: number | null;
  readonly count: number;
}

/** All fasteners of jobs by kind, diameter and length, the most frequent first. @param sets of each job */
export function fastenerRows(plans: readonly JobPlan[], sets = 1): readonly FastenerRow[] {
  const found = new Map<string, FastenerRow>();
  for (const { assembly } of plans)
    for (const row of assembly === null ? [] : rowsOf(assembly)) {
      const key = `${row.kind} ${row.diameter} ${row.length} ${row.stack?.toFixed(3)}`;
      found.set(key, { ...row, count: (found.get(key)?.count ?? 0) + row.count * sets });
    }
  return [...found.values()].toSorted((a, b) => b.count - a.count || (a.kind < b.kind ? -1 : 1));
}

function rowsOf({ seated, bought, fasteners }: Assembly): readonly FastenerRow[] {
  const count = (joint: string) => fasteners.filter((f) => f.joint === joint).length;
  const joined = seated.flatMap(({ joint, from, to }) =>
    rowOf(joint.by, from.part.formed.thickness + to.part.formed.thickness, count(joint.name)),
  );
  const fitted = bought.flatMap(({ piece, spec, body, holds: [host] }) => [
    { kind: spec.params.type, ...sizesOf(spec.params), stack: null, count: 1 },
    ...rowOf(spec.by, body.thickness + (host?.part.formed.thickness ?? 0), count(piece)),
  ]);
  return [...joined, ...fitted];
}

function rowOf(by: Seated['joint']['by'], stack: number, count: number): readonly FastenerRow[] {
  if (by === null || count === 0) return [];
  const { name: kind, facts } = by.kind;
  const diameter = (by.ask as { readonly diameter?: number }).diameter ?? null;
  const length = facts.rivet === 'blind' && diameter !== null ? rivetLength(diameter, stack) : null;
  return [{ kind, diameter, stack, length, count }];
}

/** What a bought part is asked for by in a shop. */
function sizesOf(p: HardwareSpec['params']): Pick<FastenerRow, 'diameter' | 'length'> {
  switch (p.type) {
    case 'hinge':
      return { diameter: null, length: p.length };
    case 'hasp':
      return { diameter: null, length: p.strap + p.staple };
    case 'handle':
      return { diameter: null, length: p.span };
    case 'rivet-nut':
      return { diameter: p.hole, length: p.length };
    case 'magnet':
      return { diameter: p.diameter, length: p.height };
    case 'caster':
      return { diameter: p.wheel.diameter, length: p.height };
  }
}
