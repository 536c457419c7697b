import { quoted } from '../errors/quote.js';

/** What a row of a job makes several pieces of: they are called by its name and a number. */
export interface Counted {
  readonly name: unknown;
  readonly count: number;
}

/** The piece that has a name, in words: `end-2` of `end` × 2; null where no piece of several has it. */
export function pieceNamed(name: unknown, rows: readonly Counted[]): string | null {
  const [, base, number] = typeof name === 'string' ? (/^(.*)-([1-9]\d*)$/.exec(name) ?? []) : [];
  if (base === undefined) return null;
  const same = (other: unknown) => typeof other === 'string' && asFile(other) === asFile(base);
  const of = rows.find((r) => same(r.name) && r.count > 1 && Number(number) <= r.count);
  return of === undefined ? null : `piece ${number} of ${of.count} of ${quoted(base)}`;
}

/** Names that would be the same file where case does not count are the same. */
export const asFile = (name: string): string => name.normalize('NFC').toLowerCase();
