import { valueAt, withValue } from '../advice/values.js';
import { suggestion } from '../errors/nearest.js';
import { JobError, type Path, type Problem } from '../errors/problem.js';
import { quoted } from '../errors/quote.js';
import { type KnownSize, splitName } from './sizes.js';

/** Sizes measured on finished parts, by part. mm */
export type MeasuredByPart = ReadonlyMap<string, readonly MeasuredSize[]>;

/** One measured size. mm */
export interface MeasuredSize {
  readonly size: string;
  readonly value: number;
  readonly path: Path;
}

/** The name that a reader of open groups passes over. */
export function unreadSize(data: unknown): readonly Problem[] {
  const given = (data as { measured?: unknown } | null)?.measured;
  if (typeof given !== 'object' || given === null || !Object.hasOwn(given, '__proto__')) return [];
  return [nameProblem('__proto__')];
}

const nameProblem = (key: string): Problem => ({
  code: 'size-name',
  path: ['measured', key],
  message: `${quoted(key)} given`,
  fix: 'Write part.size, such as body.insideWidth',
  at: 'key',
});

/** Measured sizes by part. @throws JobError for names that are not `part.size`, or parts that are not there */
export function measuredByPart(
  given: Readonly<Record<string, number>>,
  parts: readonly string[],
): MeasuredByPart {
  const problems: Problem[] = [];
  const byPart = new Map<string, MeasuredSize[]>();
  for (const [key, value] of Object.entries(given)) {
    const path: Path = ['measured', key];
    const split = splitName(key);
    if (split === null) problems.push(nameProblem(key));
    else if (!parts.includes(split[0]))
      problems.push({
        code: 'part-unknown',
        path,
        message: `there is no part ${quoted(split[0])}`,
        fix: suggestion(split[0], parts),
        at: 'key',
      });
    else byPart.set(split[0], [...(byPart.get(split[0]) ?? []), { size: split[1], value, path }]);
  }
  if (problems.length > 0) throw new JobError(problems);
  return byPart;
}

/**
 * Parameters a part seems to have been made with, from what was measured on it: each measured size moves the
 * parameter it follows. @throws JobError for sizes the part does not have
 */
export function asMade(
  params: unknown,
  sizes: readonly KnownSize[],
  measured: readonly MeasuredSize[],
): unknown {
  const followed = measured.map(({ size }) => sizes.find((s) => s.name === size)?.follows);
  return measured.reduce<unknown>((p, { size, value, path }, i) => {
    const known = sizes.find((s) => s.name === size);
    if (known === undefined)
      throw new JobError([
        {
          code: 'size-unknown',
          path,
          message: `there is no size ${quoted(size)} to measure`,
          fix: suggestion(
            size,
            sizes.map((s) => s.name),
          ),
          at: 'key',
        },
      ]);
    const first = measured[followed.indexOf(known.follows)] as MeasuredSize;
    if (first !== measured[i])
      throw new JobError([
        {
          code: 'measured-twice',
          path,
          message: `${size} and ${first.size} are the same measure taken twice`,
          fix: 'Give one of the two',
          at: 'key',
        },
      ]);
    const at = known.follows.split('.');
    return withValue(p, at, (valueAt(p, at) as number) + (value - known.value) / (known.rate ?? 1));
  }, params);
}
