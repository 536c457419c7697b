import { parseLength } from '@tinwright/core';

type Group = Readonly<Record<string, unknown>>;

const MOST = 1_000_000;

/** A range of numbers or lengths, `{ from, to, step }`. */
interface Range {
  readonly from: number;
  readonly to: number;
  readonly step: number;
  /** How a value of it is written. */
  readonly write: (value: number) => unknown;
}

const BARE = /^[\d\s./-]+$/; // a number or a fraction, in the unit of the job

/** What is written with `from`, `to` and `step`: all in the unit of the job, or each with a unit of its own; null otherwise. */
function rangeOf(value: unknown): Range | null {
  if (typeof value !== 'object' || value === null) return null;
  const ends = ['from', 'to', 'step'].map((k) => (value as Group)[k]);
  if (!ends.every((v) => typeof v === 'number' || typeof v === 'string')) return null;
  const bare = ends.map((v) => typeof v === 'number' || BARE.test(v));
  if (bare.some((b) => b !== bare[0])) return null;
  const [from, to, step] = ends.map((v) => {
    if (typeof v === 'number') return v;
    const length = parseLength(v, 'mm'); // bare ones stay what they are
    return length.ok ? length.mm : Number.NaN;
  }) as [number, number, number];
  return { from, to, step, write: bare[0] ? (v) => v : (v) => `${v} mm` };
}

/** How many rows an entry stands for: every combination of its lists and ranges. */
export function countOf(entry: Group): number {
  return Object.values(entry).reduce<number>((n, v) => n * Math.max(1, valuesOf(v).length), 1);
}

/** Every combination of the lists and ranges in an entry, the last one changing first; named ones are numbered. */
export function* combinations(entry: Group): Generator<Group> {
  const keys = Object.keys(entry).filter((k) => k !== 'name');
  const choices = keys.map((k) => valuesOf(entry[k]));
  const total = countOf(entry);
  for (let n = 0; n < total; n++) {
    let rest = n;
    const chosen: [string, unknown][] = [];
    for (let i = keys.length - 1; i >= 0; i--) {
      const list = choices[i] as readonly unknown[];
      chosen.unshift([keys[i] as string, list[rest % list.length]]);
      rest = Math.floor(rest / list.length);
    }
    const name =
      entry.name === undefined ? {} : { name: total === 1 ? entry.name : `${entry.name}-${n + 1}` };
    yield { ...name, ...Object.fromEntries(chosen) };
  }
}

function valuesOf(value: unknown): readonly unknown[] {
  if (Array.isArray(value)) return value;
  const range = rangeOf(value);
  if (range === null) return [value];
  const { from, to, step, write } = range;
  const count = Math.floor((to - from) / step + 1e-9) + 1;
  if (!(count >= 1 && count <= MOST)) return [value]; // told as what it is: no value
  return Array.from({ length: count }, (_, i) => write(Number((from + i * step).toFixed(9))));
}
