import type * as z from 'zod/mini';
import { valueAt } from '../advice/values.js';
import { nearest, suggestion } from '../errors/nearest.js';
import type { Path, Problem } from '../errors/problem.js';
import { quoted } from '../errors/quote.js';

type Issue = z.core.$ZodIssue;

/** Problems in the words of a job, from what the schema found. `data` is what it was given. */
export function problemsOf(issues: readonly Issue[], data: unknown): readonly Problem[] {
  return issues.flatMap((issue) => problems(issue, issue.path as Path, data));
}

/** What is missing told with what it is; `One of …` tells that by itself. */
export function withWords(problem: Problem, words: string): Problem {
  const told = problem.code !== 'value-missing' || words === '' || problem.fix.startsWith(ONE_OF);
  return told ? problem : { ...problem, fix: `${problem.fix}: ${words}` };
}

const ONE_OF = 'One of';

function problems(issue: Issue, path: Path, data: unknown): readonly Problem[] {
  const value = valueAt(data, path);
  switch (issue.code) {
    case 'unrecognized_keys':
      return issue.keys.map((key) => ({
        code: 'key-unknown',
        path: [...path, key],
        message: `unknown key ${quoted(key)}`,
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
  const wanted = EXPECTED[expected] ?? expected;
  if (value === undefined) return { code: 'value-missing', path, message: 'missing', fix: `Give ${wanted}` };
  const plain = expected === 'string' && ['number', 'boolean'].includes(typeof value);
  const fix = plain ? `Write it in quotes: "${String(value)}"` : '';
  return { code: 'value-type', path, message: `${described(value)} given, ${wanted} allowed`, fix };
}

const EXPECTED: Readonly<Record<string, string>> = {
  number: 'a number',
  string: 'text',
  object: 'a group of keys and values',
  array: 'a list',
};

function wordProblem(path: Path, value: unknown, words: readonly string[]): Problem {
  if (value === undefined)
    return { code: 'value-missing', path, message: 'missing', fix: `${ONE_OF} ${words.join(', ')}` };
  const fix = typeof value === 'string' ? suggestion(value, words) : `Known: ${words.join(', ')}`;
  return { code: 'word-unknown', path, message: `${described(value)} given`, fix };
}

/** The branch that read the value and refused it says it best; else the union's own words for what it takes. */
function unionProblems(
  issue: Extract<Issue, { code: 'invalid_union' }>,
  path: Path,
  data: unknown,
): readonly Problem[] {
  if (issue.discriminator !== undefined) {
    const at = [...path.slice(0, path.at(-1) === issue.discriminator ? -1 : undefined), issue.discriminator];
    const options = 'options' in issue ? (issue.options as readonly unknown[]) : [];
    return [
      wordProblem(at, valueAt(data, at), options.map(String)),
      ...misspelt(at, data, options.map(String)),
    ];
  }
  const branches = issue.errors.map((list) =>
    list.flatMap((i) => problems(i, [...path, ...(i.path as Path)], data)),
  );
  const read = branches.find((b) => b.some((p) => p.code === 'value-range' || p.path.length > path.length));
  if (read !== undefined) return read;
  const value = valueAt(data, path);
  if (value === undefined)
    return [{ code: 'value-missing', path, message: 'missing', fix: `Give ${issue.message}` }];
  const words = issue.errors.flat().flatMap((i) => (i.code === 'invalid_value' ? i.values.map(String) : []));
  const near = typeof value === 'string' ? nearest(value, words) : null;
  const fix = near === null ? '' : `Write "${near}"`;
  return [{ code: 'value-type', path, message: `${described(value)} given, ${issue.message} allowed`, fix }];
}

/** Keys that were meant to be the one that is missing: without it nothing else of the group is read. */
function misspelt(at: Path, data: unknown, words: readonly string[]): readonly Problem[] {
  const group = valueAt(data, at.slice(0, -1));
  const wanted = String(at.at(-1));
  if (typeof group !== 'object' || group === null || wanted in group) return [];
  return Object.entries(group)
    .filter(([key]) => nearest(key, [wanted]) !== null)
    .map(([key, value]) => {
      const word = nearest(String(value), words);
      return {
        code: 'key-unknown',
        path: [...at.slice(0, -1), key],
        message: `unknown key ${quoted(key)}`,
        fix: word === null ? suggestion(key, [wanted]) : `Did you mean "${wanted}"? Write ${wanted}: ${word}`,
        at: 'key',
      };
    });
}

function described(value: unknown): string {
  if (value === null) return 'nothing';
  if (Array.isArray(value)) return 'a list';
  if (typeof value === 'object') return 'a group of keys and values';
  return typeof value === 'string' ? quoted(value) : String(value);
}
