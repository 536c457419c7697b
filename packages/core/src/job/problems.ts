import type * as z from 'zod/mini';
import { suggestion } from '../errors/nearest.js';
import type { Problem } from '../errors/problem.js';

type Issue = z.core.$ZodIssue;
type Path = readonly (string | number)[];

/** Problems in the words of a job, from what the schema found. `data` is what it was given. */
export function problemsOf(issues: readonly Issue[], data: unknown): readonly Problem[] {
  return issues.flatMap((issue) => problems(issue, issue.path as Path, data));
}

function problems(issue: Issue, path: Path, data: unknown): readonly Problem[] {
  const value = valueAt(data, path);
  switch (issue.code) {
    case 'unrecognized_keys':
      return issue.keys.map((key) => ({
        code: 'key-unknown',
        path: [...path, key],
        message: `unknown key "${key}"`,
        fix: suggestion(key, issue.message.split(', ')),
        at: 'key',
      }));
    case 'invalid_type':
      return [typeProblem(path, value, issue.expected)];
    case 'invalid_value':
      return [wordProblem(path, value, issue.values.map(String))];
    case 'invalid_union':
      return unionProblems(issue, path, data);
    default:
      return [{ code: 'value-range', path, message: issue.message, fix: '' }];
  }
}

function typeProblem(path: Path, value: unknown, expected: string): Problem {
  if (value === undefined)
    return { code: 'value-missing', path, message: 'missing', fix: `Give ${EXPECTED[expected] ?? expected}` };
  return {
    code: 'value-type',
    path,
    message: `${described(value)} given, ${EXPECTED[expected] ?? expected} allowed`,
    fix: '',
  };
}

const EXPECTED: Readonly<Record<string, string>> = {
  number: 'a number',
  int: 'a whole number',
  string: 'a text',
  object: 'named values',
  array: 'a list',
};

function wordProblem(path: Path, value: unknown, words: readonly string[]): Problem {
  if (value === undefined)
    return { code: 'value-missing', path, message: 'missing', fix: `One of ${words.join(', ')}` };
  const fix = typeof value === 'string' ? suggestion(value, words) : `Known: ${words.join(', ')}`;
  return { code: 'word-unknown', path, message: `${described(value)} given`, fix };
}

/** The branch that came furthest says it best: one that read the value and refused it, else the plain types. */
function unionProblems(
  issue: Extract<Issue, { code: 'invalid_union' }>,
  path: Path,
  data: unknown,
): readonly Problem[] {
  if (issue.discriminator !== undefined) {
    const at = [...path.slice(0, path.at(-1) === issue.discriminator ? -1 : undefined), issue.discriminator];
    return [
      wordProblem(
        at,
        valueAt(data, at),
        ('options' in issue ? (issue.options as readonly unknown[]) : []).map(String),
      ),
    ];
  }
  const branches = issue.errors.map((list) =>
    list.flatMap((i) => problems(i, [...path, ...(i.path as Path)], data)),
  );
  const read = branches.find((b) => b.some((p) => p.code === 'value-range' || p.code === 'key-unknown'));
  if (read !== undefined) return read;
  const value = valueAt(data, path);
  if (value === undefined) return [{ code: 'value-missing', path, message: 'missing', fix: 'Give a length' }];
  const words = branches.flat().flatMap((p) => (p.code === 'word-unknown' ? [p.fix] : []));
  const what = `a length such as 12.5 or "15 1/2 in"`;
  return [
    { code: 'value-type', path, message: `${described(value)} given, ${what} allowed`, fix: words[0] ?? '' },
  ];
}

function valueAt(data: unknown, path: Path): unknown {
  return path.reduce<unknown>(
    (d, step) =>
      typeof d === 'object' && d !== null ? (d as Record<string | number, unknown>)[step] : undefined,
    data,
  );
}

function described(value: unknown): string {
  if (value === null) return 'nothing';
  if (Array.isArray(value)) return 'a list';
  if (typeof value === 'object') return 'named values';
  if (typeof value === 'string') return `"${value.length > 40 ? `${value.slice(0, 40)}…` : value}"`;
  return String(value);
}
