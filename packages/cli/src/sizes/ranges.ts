type Group = Readonly<Record<string, unknown>>;

const MOST = 1_000_000;

/** A range of lengths or numbers, `{ from, to, step }`. */
interface Range {
  readonly from: number;
  readonly to: number;
  readonly step: number;
}

const isRange = (value: unknown): value is Range =>
  typeof value === 'object' &&
  value !== null &&
  ['from', 'to', 'step'].every((k) => typeof (value as Group)[k] === 'number');

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
  if (!isRange(value)) return [value];
  const count = Math.floor((value.to - value.from) / value.step + 1e-9) + 1;
  if (!(count >= 1 && count <= MOST)) return [value]; // told as what it is: no value
  return Array.from({ length: count }, (_, i) => Number((value.from + i * value.step).toFixed(9)));
}
