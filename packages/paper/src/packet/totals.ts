import { massText } from '@tinwright/core/internal';
import { blankMass } from './cut-list.js';
import type { PacketKit } from './kit.js';
import type { Making } from './making.js';

/** What all sets of the object take together: blanks, metal, fasteners, minutes of bending. */
export function totalsText(kit: PacketKit, { sequences }: Pick<Making, 'sequences'>): string {
  const { plan, sets, dims, words, plans } = kit;
  const { parts, assembly } = plan;
  const sum = (of: (part: (typeof parts)[number]) => number) =>
    sets * parts.reduce((all, p) => all + p.quantity * of(p), 0);
  const bent = parts.filter((p) => p.flat.bends.length > 0);
  const found = bent.every((p) => (sequences.get(p.name)?.steps.length ?? 0) > 0);
  const counts = new Map<string, number>();
  for (const { kind } of assembly?.fasteners ?? []) counts.set(kind, (counts.get(kind) ?? 0) + sets);
  return words.cover.totals({
    sets,
    blanks: sum(() => 1),
    mass: dims.own(massText(sum(blankMass), dims.unit)),
    fasteners: [...counts].map(([kind, n]) => [n, plans.fastener(kind)] as const),
    minutes:
      found && bent.length > 0 ? Math.ceil(sum((p) => sequences.get(p.name)?.seconds ?? 0) / 60) : null,
  });
}
