import { MM_PER_INCH, type Unit } from '../units/length.js';
import { safeText } from './quote.js';

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
  /** Name of the part it is about, once that is known. */
  readonly part?: string;
}

/** A `JobError` as data. */
export interface JobErrorData {
  readonly name: 'JobError';
  readonly problems: readonly Problem[];
}

/** One or more problems, in the order of the job. Thrown by everything that reads or builds. */
export class JobError extends Error {
  override readonly name = 'JobError';
  declare readonly problems: readonly Problem[];
  /** The problems before they were said in a unit: what builds a part does not know that of the job. */
  declare readonly refusals: readonly Refusal[];

  constructor(refusals: readonly Refusal[], unit: Unit = 'mm') {
    const problems = refusals.map((r) => worded(r, unit));
    super(problems.map(problemText).join('\n'));
    // not enumerable: the message has them in words, and what prints an error prints its other values once more
    for (const [key, value] of Object.entries({ name: this.name, problems, refusals }))
      Object.defineProperty(this, key, { value, enumerable: false });
  }

  /** As data, to be sent to another thread or kept; `fromJSON` makes the error again. */
  toJSON(): JobErrorData {
    return { name: 'JobError', problems: this.problems };
  }

  /** The error whose data this is; its problems stay in the unit they were said in. */
  static fromJSON({ problems }: JobErrorData): JobError {
    return new JobError(problems);
  }

  /** By name: a family of one's own may bring a second copy of this library, and throws that one's. */
  static override [Symbol.hasInstance](value: unknown): boolean {
    return value instanceof Error && value.name === 'JobError' && 'problems' in value;
  }
}

/** `parts[0].hem.length`, as a program would point at it. */
export function pathText(path: Path): string {
  return path.reduce<string>((text, step) => {
    if (typeof step === 'number') return `${text}[${step}]`;
    return text === '' ? step : `${text}.${step}`;
  }, '');
}

/** `part "body": hem.length`, as a person would point at it; parts without a name are counted from 1. */
export function placeText({ path, part }: Pick<Problem, 'path' | 'part'>): string {
  const [first, index, ...rest] = path;
  if (first !== 'parts' || typeof index !== 'number') return pathText(path);
  const who = part === undefined ? `part ${index + 1}` : `part "${part}"`;
  return rest.length === 0 ? who : `${who}: ${pathText(rest)}`;
}

/** The problem in one line: place, what is wrong, how to mend it. Safe to print: no control characters. */
export function problemText(problem: Problem): string {
  const place = placeText(problem);
  const fix = problem.fix === '' ? '' : ` ${problem.fix}.`;
  return safeText(`${place === '' ? '' : `${place}: `}${problem.message}.${fix}`);
}

/** Throw a single problem. */
export function fail(code: string, path: Path, message: Wording, fix: Wording = ''): never {
  throw new JobError([{ code, path, message, fix }]);
}

/** Run `work`; problems it throws get `path` put before their own. */
export function within<T>(path: Path, work: () => T): T {
  try {
    return work();
  } catch (error) {
    if (!(error instanceof JobError)) throw error;
    throw new JobError(error.refusals.map((p) => ({ ...p, path: [...path, ...p.path] })));
  }
}

/** How lengths are put into words for the unit of a job. All take mm. */
export interface Say {
  readonly unit: Unit;
  /** As given. */
  readonly size: (mm: number) => string;
  /** A limit from above, rounded so that the printed number is itself allowed. */
  readonly most: (mm: number) => string;
  /** A limit from below, rounded so that the printed number is itself allowed. */
  readonly least: (mm: number) => string;
}

/** Words that may wait for the unit they are said in. */
export type Wording = string | ((say: Say) => string);

/** A problem found before it is known in which unit the job is written. */
export interface Refusal extends Omit<Problem, 'message' | 'fix'> {
  readonly message: Wording;
  readonly fix: Wording;
}

/** Lengths in the words of a unit: hundredths of a millimetre, thousandths of an inch. */
export function sayIn(unit: Unit): Say {
  const [per, digits, step] = unit === 'mm' ? [1, 2, 100] : [MM_PER_INCH, 3, 1000];
  const text = (mm: number, whole: (steps: number) => number) => {
    const given = mm / per;
    // numbers that large have no digits behind the point, and are written with an exponent
    const said =
      Math.abs(given) < 1e15 ? (whole(given * step) / step).toFixed(digits).replace(/\.?0+$/, '') : given;
    return `${said} ${unit}`;
  };
  return {
    unit,
    size: (mm) => text(mm, (steps) => Math.round(steps + 1e-6)),
    most: (mm) => text(mm, (steps) => Math.floor(steps + 1e-6)),
    least: (mm) => text(mm, (steps) => Math.ceil(steps - 1e-6)),
  };
}

/** Words as they are said in a unit. */
export function inWords(words: Wording, say: Say): string {
  return typeof words === 'string' ? words : words(say);
}

/** The refusal as a problem, said in a unit. */
export function worded(refusal: Refusal, unit: Unit): Problem {
  const say = sayIn(unit);
  return { ...refusal, message: inWords(refusal.message, say), fix: inWords(refusal.fix, say) };
}
