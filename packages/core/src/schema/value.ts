import type { HemSpec } from '../bending/hem.js';
import { frozen } from '../units/frozen.js';
import type { Gives, ParamKit, SizeRange } from './kit.js';

/**
 * A value of a part, declared once: what it is, its range, its unit, its words, what stands for it when it is left
 * out. Everything else comes from that: the schema a job is read with, the published one, the type in the family's
 * code, help, starter jobs, sizes that advice may change.
 * `T` is the value as a family gets it, mm and degrees; `W` as a job holds it.
 */
export interface Value<T = unknown, W = unknown> {
  /** What it is, a short phrase; '' where its list or group says it. */
  readonly words: string;
  readonly unit: 'mm' | 'deg' | '';
  /** Words it may be; empty where it is none. */
  readonly options: readonly string[];
  /** Named values within it; `[]` stands for each entry of a list. */
  readonly inner: Values;
  /** Its groups by their `type`, where it is one of several. */
  readonly choices?: { readonly [type: string]: Values };
  /** The schema that reads it. */
  readonly read: (kit: ParamKit) => Gives<T>;
  /** The value as a job in any unit may write it. */
  write(value: T): unknown;
  /** Carries the type `W` only. */
  readonly written?: W;
}

/** Values by name. */
export type Values = { readonly [name: string]: Value };

/** Parameters as a family gets them: mm and degrees, defaults filled in. */
export type Given<V extends Values> = {
  readonly [K in keyof V]: V[K] extends { readonly read: (kit: ParamKit) => Gives<infer T> } ? T : never;
};

type WrittenAs<V> = V extends { readonly written?: infer W } ? W : never;
type LeftOut<V extends Values> = {
  [K in keyof V]: undefined extends (V[K] extends Value<unknown, infer W> ? W : never) ? K : never;
}[keyof V];

/** Parameters as a job holds them: what may be left out is optional. */
export type Written<V extends Values> = {
  readonly [K in Exclude<keyof V, LeftOut<V>>]: WrittenAs<V[K]>;
} & { readonly [K in LeftOut<V>]?: WrittenAs<V[K]> };

/** A length in words, with its own unit or in the job's: `12.5 mm`, `15 1/2 in`, `½"`. It starts with a number. */
export type LengthText = `${number}${string}` | `.${number}${string}` | `${Vulgar}${string}`;
type Vulgar = '¼' | '½' | '¾' | '⅛' | '⅜' | '⅝' | '⅞';

/** A length: a number in the job's unit, or text. */
export type Size = number | LengthText;

/** A size of a part before, `part.size`, with a little less or more: `{ of: 'body.seatWidth', less: 0.4 }`. */
export interface Follow {
  readonly of: `${string}.${string}`;
  readonly less?: Size;
  readonly plus?: Size;
}

/** A length as a job writes it: in the job's unit, with its own (`15 1/2 in`), or as another part's size. */
export type Length = Size | Follow;

const plain = { words: '', unit: '', options: [], inner: {} } as const;
const same = <T>(value: T): unknown => value;
const mm = (size: number): string => `${size} mm`;

/** A length. mm */
function size(words: string, range: SizeRange = {}): Value<number, Length> {
  return { ...plain, words, unit: 'mm', read: (k) => k.size(range), write: mm };
}

/** Degrees bent through. */
function angle(words: string, least: number, most: number): Value<number, number> {
  return { ...plain, words, unit: 'deg', read: (k) => k.angle(least, most), write: same };
}

/** A whole number. */
function count(words: string, least: number, most: number): Value<number, number> {
  return { ...plain, words, read: (k) => k.count(least, most), write: same };
}

/** One word of a list. */
function word<const W extends string>(words: string, options: readonly W[]): Value<W, W> {
  return { ...plain, words, options, read: (k) => k.oneOf(options), write: same };
}

/** A length, or a word that leaves it to the family. mm */
function sizeOr<const W extends string>(
  words: string,
  other: W,
  range: SizeRange = {},
): Value<number | W, Length | W> {
  return {
    ...plain,
    words,
    unit: 'mm',
    options: [other],
    read: (k) => k.either<W, number>(k.oneOf([other]), k.size(range), `${other} or a length`),
    write: (value) => (typeof value === 'number' ? mm(value) : value),
  };
}

/** A name of a panel, an edge, a file. */
function name(words: string): Value<string, string> {
  return { ...plain, words, read: (k) => k.text(), write: same };
}

/** Closed outlines by their corners. */
function outlines(
  words: string,
): Value<readonly (readonly (readonly number[])[])[], readonly (readonly (readonly number[])[])[]> {
  return { ...plain, words, read: (k) => k.outlines(), write: same };
}

/** Values of one kind under names that nobody knows before; `*` stands for each name. */
function named<T, W>(
  words: string,
  entry: Value<T, W>,
): Value<Readonly<Record<string, T>>, Readonly<Record<string, W>>> {
  return {
    ...plain,
    words,
    inner: { '*': entry },
    read: (k) => k.named(entry.read(k)),
    write: (given) => Object.fromEntries(Object.entries(given).map(([key, v]) => [key, entry.write(v)])),
  };
}

/** Values that belong together. */
function group<V extends Values>(words: string, inner: V): Value<Given<V>, Written<V>> {
  return {
    ...plain,
    words,
    inner,
    read: (k) => k.group<Given<V>>(shapeOf(inner, k) as never),
    write: (value) => writtenBy(inner, value),
  };
}

/** Values of one kind in order. */
function list<T, W>(
  words: string,
  entry: Value<T, W>,
  [least, most]: readonly [number, number],
): Value<readonly T[], readonly W[]> {
  return {
    ...plain,
    words,
    inner: { '[]': entry },
    read: (k) => k.list(entry.read(k), least, most),
    write: (value) => value.map(entry.write),
  };
}

/** One of several groups, told apart by a word under `type`. */
function choice<C extends { readonly [type: string]: Values }>(
  words: string,
  typeWords: string,
  choices: C,
): Value<Chosen<C>, ChosenWritten<C>> {
  const options = Object.keys(choices);
  const inner = Object.assign({ type: word(typeWords, options) }, ...Object.values(choices)) as Values;
  return {
    ...plain,
    words,
    inner,
    choices,
    read: (k) =>
      k.byName(
        'type',
        options.map((o) => k.group<object>({ type: k.oneOf([o]), ...shapeOf(choices[o] as Values, k) })),
      ) as Gives<Chosen<C>>,
    write: (value) => writtenBy(inner, value),
  };
}

type Chosen<C extends { readonly [type: string]: Values }> = {
  [K in keyof C]: { readonly type: K } & Given<C[K]>;
}[keyof C];
type ChosenWritten<C extends { readonly [type: string]: Values }> = {
  [K in keyof C]: { readonly type: K } & Written<C[K]>;
}[keyof C];

/** A hem as a job writes it. */
export interface HemWritten {
  readonly type: 'closed' | 'open' | 'teardrop' | 'none';
  readonly length?: Length;
  readonly gap?: Length;
}

const HEM: Values = {
  type: word('closed, open, teardrop or none', ['closed', 'open', 'teardrop', 'none']),
  length: size('finished width of the hem'),
  gap: size('inside gap of an open hem, inside width of a teardrop'),
};

/** A hem; none when it is left out. */
function hem(words: string): Value<HemSpec | null, HemWritten | undefined> {
  return {
    ...plain,
    words,
    inner: HEM,
    read: (k) => k.or(k.hem(), null),
    write: (value) => (value === null ? undefined : writtenBy(HEM, value)),
  };
}

/** A value that may be left out: `fallback` then. */
function or<T, W>(value: Value<T, W>, fallback: T): Value<T, W | undefined> {
  return { ...value, read: (k) => k.instead(value.read(k), value.write(fallback)) } as Value<
    T,
    W | undefined
  >;
}

/** A value that may be left out: null then. */
function maybe<T, W>(value: Value<T, W>): Value<T | null, W | undefined> {
  return {
    ...value,
    read: (k) => k.maybe(value.read(k)),
    write: (given) => (given === null ? undefined : value.write(given)),
  } as Value<T | null, W | undefined>;
}

const kinds = {
  size,
  sizeOr,
  angle,
  count,
  word,
  name,
  named,
  outlines,
  group,
  list,
  choice,
  hem,
  or,
  maybe,
} as const;

/** The ways to declare a value of a family. */
export const value: Readonly<typeof kinds> = frozen(kinds);

/** A schema for each value. */
export function shapeOf(values: Values, kit: ParamKit): { readonly [name: string]: Gives<unknown> } {
  return Object.fromEntries(Object.entries(values).map(([name, v]) => [name, v.read(kit)]));
}

/** Values as a job in any unit may write them; what is left out is left out. */
function writtenBy(values: Values, given: unknown): object {
  const there = Object.entries(given as object).filter(([, v]) => v !== null && v !== undefined);
  return Object.fromEntries(there.map(([name, v]) => [name, values[name]?.write(v) ?? v]));
}

/** The declared value at a path; null where there is none. */
export function declaredAt(values: Values, path: readonly (string | number)[]): Value | null {
  const [step, ...rest] = path;
  if (step === undefined) return null;
  const found = values[typeof step === 'number' ? '[]' : step] ?? values['*'];
  if (found === undefined) return null;
  return rest.length === 0 ? found : declaredAt(found.inner, rest);
}

/** One line of words for every value by its path, `hem.length`. */
export function wordsOf(values: Values, path = ''): Readonly<Record<string, string>> {
  const lines = Object.entries(values).flatMap(([name, v]) => {
    const at = path === '' ? name : `${path}.${name}`;
    const own = v.words === '' || name === '[]' ? [] : [[at, v.words]];
    return [...own, ...Object.entries(wordsOf(v.inner, at))];
  });
  return Object.fromEntries(lines) as Record<string, string>;
}
