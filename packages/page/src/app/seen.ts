import { useComputed } from '@preact/signals';
import type { FindingView, JobPath } from '../protocol.js';
import { written } from './control.js';
import { isLocked, placeName } from './locks.js';
import type { State } from './state.js';
import { unitOf } from './units.js';

/** All that a field shows beside its words. */
export interface FieldSeen {
  readonly given: unknown;
  readonly units: 'mm' | 'in';
  readonly locked: boolean;
  readonly problems: readonly { readonly message: string; readonly fix: string }[];
  /** Findings that this value would mend, by their place in the list. */
  readonly findings: readonly (Pick<FindingView, 'severity' | 'message'> & { readonly index: number })[];
  /** What a size measured at the bench makes of it, mm. */
  readonly fitted: number | null;
}

/**
 * What a field shows at a path. A field is drawn again only when that is another, so that a change of one size costs the
 * others nothing.
 */
export function useSeen(state: State, path: JobPath): FieldSeen {
  const text = useComputed(() => JSON.stringify(seenAt(state, path)));
  return JSON.parse(text.value) as FieldSeen;
}

function seenAt({ content, data, problems, job, fitted }: State, path: JobPath): FieldSeen {
  const key = path.join('.');
  const [root, part, ...rest] = placeName(data.value, path).split('.');
  const place = rest.join('.');
  const own = <T extends { readonly part: string }>(all: readonly T[]) =>
    root === 'parts' ? all.map((of, index) => ({ ...of, index })).filter((of) => of.part === part) : [];
  const changes = fitted.value !== null && 'changes' in fitted.value ? fitted.value.changes : [];
  return {
    given: written(data.value, path),
    units: unitOf(data.value),
    locked: isLocked(content, data.value, path),
    problems: problems.value
      .filter((p) => p.path.join('.') === key)
      .map(({ message, fix }) => ({ message, fix })),
    findings: own(job.value?.findings ?? [])
      .filter((f) => f.changes.some((c) => c.path.join('.') === place))
      .map(({ severity, message, index }) => ({ severity, message, index })),
    fitted: own(changes).find((c) => c.dimension === place)?.after ?? null,
  };
}
