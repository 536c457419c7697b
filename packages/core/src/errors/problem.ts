/** Way to a value in a job: keys and indices. */
export type Path = readonly (string | number)[];

/**
 * Something that stops a job: it cannot be read, or the object cannot exist.
 * `path` leads to the value in the job (`['parts', 0, 'hem', 'length']`); an empty path is the job itself.
 */
export interface Problem {
  /** Stable name of the kind of problem, for programs. */
  readonly code: string;
  readonly path: Path;
  /** What is wrong, as a sentence without a full stop. */
  readonly message: string;
  /** What would be accepted, or how to mend it; '' when the message says it all. */
  readonly fix: string;
  /** Set when the key is at fault, not the value. */
  readonly at?: 'key' | 'value';
}

/** One or more problems, in the order of the job. Thrown by everything that reads or builds. */
export class JobError extends Error {
  override readonly name = 'JobError';
  readonly problems: readonly Problem[];

  constructor(problems: readonly Problem[]) {
    super(problems.map(problemText).join('\n'));
    this.problems = problems;
  }
}

/** `parts[0].hem.length`, as a person would point at it. */
export function pathText(path: Path): string {
  return path.reduce<string>((text, step) => {
    if (typeof step === 'number') return `${text}[${step}]`;
    return text === '' ? step : `${text}.${step}`;
  }, '');
}

/** The problem in one line: place, what is wrong, how to mend it. */
export function problemText(problem: Problem): string {
  const place = pathText(problem.path);
  const fix = problem.fix === '' ? '' : ` ${problem.fix}.`;
  return `${place === '' ? '' : `${place}: `}${problem.message}.${fix}`;
}

/** Throw a single problem. */
export function fail(code: string, path: Path, message: string, fix = ''): never {
  throw new JobError([{ code, path, message, fix }]);
}

/** Run `work`; problems it throws get `path` put before their own. */
export function within<T>(path: Path, work: () => T): T {
  try {
    return work();
  } catch (error) {
    if (!(error instanceof JobError)) throw error;
    throw new JobError(error.problems.map((p) => ({ ...p, path: [...path, ...p.path] })));
  }
}
