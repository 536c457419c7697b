import type { Problem } from '../errors/problem.js';
import { quoted } from '../errors/quote.js';
import { asFile, pieceNamed } from './piece-named.js';

/** Parts whose names are taken: by another part, or by a piece of one of which several are made. */
export function partTwins(list: unknown): readonly Problem[] {
  if (!Array.isArray(list)) return [];
  const rows = list.map((p: { name?: unknown; quantity?: unknown } | null) => ({
    name: typeof p?.name === 'string' ? asFile(p.name) : null,
    count: Number(p?.quantity ?? 1),
  }));
  const several = rows.filter((r) => r.count > 1);
  const first = new Map<string, number>();
  return rows.flatMap(({ name }, i) => {
    if (name === null) return [];
    const before = first.get(name);
    if (before === undefined) first.set(name, i);
    const by = before === undefined ? pieceNamed(name, several) : `part ${before + 1}`;
    if (by === null) return [];
    const message = `the name ${quoted((list[i] as { name: string }).name)} is taken by ${by}`;
    return [
      { code: 'name-twice', path: ['parts', i, 'name'], message, fix: 'Give every part a name of its own' },
    ];
  });
}
