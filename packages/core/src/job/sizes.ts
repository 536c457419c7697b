import { sizesIn, valueAt } from '../advice/values.js';
import { suggestion } from '../errors/nearest.js';
import { JobError, type Path, type Problem, sayIn } from '../errors/problem.js';
import { quoted } from '../errors/quote.js';
import type { AnyFamily } from '../families/family.js';
import type { Sheet } from '../fold/draft/tree.js';
import { parseLength, type Unit } from '../units/length.js';
import { grownSizes } from './formed-sizes.js';

/** A size of a part that other parts may follow. mm */
export interface KnownSize {
  readonly name: string;
  readonly value: number;
  /** The parameter that moves it, one to one unless `rate` says otherwise. */
  readonly follows: string;
  /** How much it moves by for 1 mm of that parameter. */
  readonly rate?: number;
}

/**
 * Everything of a part that can be followed or measured, as it will be formed: derived sizes, then its own, but for those
 * in lists.
 */
export function sizesOf(family: AnyFamily, params: unknown, sheet: Sheet): readonly KnownSize[] {
  const own = sizesIn(params).filter(({ path }) => path.every((step) => typeof step === 'string'));
  const grown = grownSizes(family, params, sheet);
  const sizes: readonly KnownSize[] = [
    ...family.derived(params, sheet),
    ...own.map(({ path, given: value }) => ({ name: path.join('.'), value, follows: path.join('.') })),
  ];
  return grown.size === 0
    ? sizes
    : sizes.map((s) => ({ ...s, value: s.value + (s.rate ?? 1) * (grown.get(s.follows) ?? 0) }));
}

/** Sizes of the parts read so far, and the names of those that come later. */
export interface SizeBook {
  readonly known: ReadonlyMap<string, readonly KnownSize[]>;
  readonly order: readonly string[];
  /** Parts each part follows, as written. */
  readonly follows: ReadonlyMap<string, readonly string[]>;
  readonly units: Unit;
}

/** `part.size` in two; null when it is not written so. */
export function splitName(text: unknown): readonly [part: string, size: string] | null {
  if (typeof text !== 'string') return null;
  const dot = text.indexOf('.');
  return dot < 1 || dot === text.length - 1 ? null : [text.slice(0, dot), text.slice(dot + 1)];
}

const DEEPEST = 9; // steps to a value; what lies deeper is refused when it is read
const WORDS: readonly unknown[] = ['name', 'family', 'quantity', 'note', 'grain'];

/**
 * Put numbers where a part follows another: `{ of: body.insideWidth, less: 0.4 }` becomes a length. What of a part is
 * no length stays as it is.
 * @throws JobError naming the nearest part or size, or the order the parts should have
 */
export function resolved(data: unknown, path: Path, self: string, book: SizeBook): unknown {
  if (typeof data !== 'object' || data === null || path.length > DEEPEST) return data;
  if (Array.isArray(data)) return data.map((d: unknown, i) => resolved(d, [...path, i], self, book));
  if (path.length === 3 && WORDS.includes(path[2])) return data;
  if ('of' in data && path.length > 2) return `${followed(data as Following, path, self, book)} mm`;
  return Object.fromEntries(Object.entries(data).map(([k, v]) => [k, resolved(v, [...path, k], self, book)]));
}

interface Following {
  readonly of: unknown;
  readonly less?: unknown;
  readonly plus?: unknown;
}

function followed(data: Following, path: Path, self: string, book: SizeBook): number {
  const extra = Object.keys(data).find((k) => !['of', 'less', 'plus'].includes(k));
  if (extra !== undefined)
    throw refusal(
      [...path, extra],
      'key-unknown',
      `unknown key ${quoted(extra)}`,
      suggestion(extra, ['of', 'less', 'plus']),
      'key',
    );
  if (data.less !== undefined && data.plus !== undefined)
    throw refusal(path, 'follow-both', 'less and plus given', 'Give one of the two');
  const base = sizeNamed(data.of, [...path, 'of'], self, book);
  const [step, key] = data.plus === undefined ? [data.less, 'less'] : [data.plus, 'plus'];
  if (step === undefined) return base;
  const read = typeof step === 'number' || typeof step === 'string' ? parseLength(step, book.units) : null;
  if (read === null || !read.ok)
    throw refusal([...path, key], 'value-type', read === null ? 'no length given' : read.why, '');
  const found = key === 'plus' ? base + read.mm : base - read.mm;
  if (found >= 0) return found;
  const { size } = sayIn(book.units);
  throw refusal(
    path,
    'value-range',
    `${data.of} is ${size(base)}, less ${size(read.mm)} leaves no length`,
    '',
  );
}

function sizeNamed(of: unknown, path: Path, self: string, book: SizeBook): number {
  const split = splitName(of);
  if (split === null)
    throw refusal(
      path,
      'size-name',
      `${typeof of === 'string' ? quoted(of) : 'no name'} given`,
      'Write part.size, such as body.insideWidth',
    );
  const [part, size] = split;
  if (part === self)
    throw refusal(path, 'follow-ring', `${self} would follow itself`, 'Follow a part that stands before it');
  const sizes = book.known.get(part);
  if (sizes !== undefined) {
    const found = sizes.find((s) => s.name === size);
    if (found !== undefined) return found.value;
    throw refusal(
      path,
      'size-unknown',
      `${part} has no size ${quoted(size)}`,
      suggestion(
        size,
        sizes.map((s) => s.name),
      ),
    );
  }
  const ring = ringOf([self, part], book.follows);
  if (ring !== null)
    throw refusal(
      path,
      'follow-ring',
      `sizes follow each other in a ring: ${ring.join(', ')}`,
      'Give one of them a length of its own',
    );
  const [mine, other] = [book.order.indexOf(self), book.order.indexOf(part)];
  if (other > mine)
    throw refusal(
      path,
      'follow-later',
      `${self} follows ${part}, which stands after it`,
      `Put ${part} first`,
    );
  if (other >= 0) throw new JobError([]); // its own mistake is told already
  throw refusal(
    path,
    'part-unknown',
    `there is no part ${quoted(part)}`,
    suggestion(part, [...book.known.keys()]),
  );
}

/** A size of a part that follows one of another part. mm */
export interface FollowedSize {
  /** The parameter that follows, by its path. */
  readonly own: string;
  /** What it follows, `body.seatWidth`, and how large that is planned to be. */
  readonly of: string;
  readonly value: number;
  /** How much smaller it is than what it follows; below 0 where it is larger. */
  readonly play: number;
}

/** Sizes of a part that follow others, as its data says and its parameters were read. */
export function followedSizes(
  data: unknown,
  params: unknown,
  known: SizeBook['known'],
  path: Path = [],
): readonly FollowedSize[] {
  if (typeof data !== 'object' || data === null) return [];
  if ('of' in data && path.length > 0) {
    const [part, size] = splitName(data.of) ?? ['', ''];
    const found = known.get(part)?.find((s) => s.name === size);
    const own = valueAt(params, path);
    return found === undefined || typeof own !== 'number'
      ? []
      : [{ own: path.join('.'), of: `${part}.${size}`, value: found.value, play: found.value - own }];
  }
  return Object.entries(data).flatMap(([k, v]) =>
    followedSizes(v, params, known, [...path, Array.isArray(data) ? Number(k) : k]),
  );
}

/** Parts whose sizes a part follows, as its data says, which may be nested without end. */
export function followedParts(data: unknown, left = DEEPEST): readonly string[] {
  if (typeof data !== 'object' || data === null || !left) return [];
  if ('of' in data) return (splitName(data.of) ?? []).slice(0, 1);
  return Object.values(data).flatMap((v) => followedParts(v, left - 1));
}

/** The way on from the last part back to the first, if there is one; parts in `seen` lead nowhere. */
function ringOf(
  way: readonly string[],
  follows: ReadonlyMap<string, readonly string[]>,
  seen = new Set<string>(),
): readonly string[] | null {
  const last = way.at(-1) as string;
  if (seen.has(last)) return null;
  seen.add(last);
  for (const next of follows.get(last) ?? []) {
    const ring = next === way[0] ? [...way, next] : ringOf([...way, next], follows, seen);
    if (ring !== null) return ring;
  }
  return null;
}

function refusal(
  path: Path,
  code: string,
  message: string,
  fix: string,
  at: Problem['at'] = 'value',
): JobError {
  return new JobError([{ code, path, message, fix, at }]);
}
