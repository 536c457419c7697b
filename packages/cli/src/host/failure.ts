import { JobError, type Problem, pathText, placeText, problemText } from '@tinwright/core';
import { safeText, UNSOUND } from '@tinwright/core/internal';
import type { Place, ReadText, TextError } from '../text/read-text.js';
import type { Host } from './console.js';

/** Exit status of the command. */
export const EXIT = { done: 0, findings: 1, unreadable: 2, unwritable: 3 } as const;
/** One of the exit statuses. */
export type ExitCode = (typeof EXIT)[keyof typeof EXIT];

/** Files could not be written; the message is what became of them. */
export class WriteError extends Error {
  override readonly name = 'WriteError';
  readonly place: string;
  /** The signal that stopped the program; null when it was none. */
  readonly signal: NodeJS.Signals | null;
  constructor(place: string, message: string, signal: NodeJS.Signals | null = null) {
    super(message);
    this.place = place;
    this.signal = signal;
  }
}

/** Refuse to go on: one line on stderr, or a list of one problem as JSON on stdout. `who` is the verb or file. */
export function refuse(
  host: Host,
  json: boolean,
  code: string,
  who: string,
  message: string,
  exit: ExitCode = EXIT.unreadable,
): ExitCode {
  const text = safeText(message).replace(/\.+$/, '');
  if (json)
    host.out(
      `${JSON.stringify({ problems: [{ code, path: '', message: `${who}: ${text}`, fix: '' }] }, null, 2)}\n`,
    );
  else host.err(`${safeText(who)}: ${text}.\n`);
  return exit;
}

const MOST_SAID = 300; // letters of what a module throws

/** What was thrown, in one line of some length: it may be anything. */
export function messageOf(error: unknown): string {
  try {
    const [said = ''] = (error instanceof Error ? `${error.name}: ${error.message}` : String(error)).split(
      '\n',
    );
    return said.length > MOST_SAID ? `${said.slice(0, MOST_SAID)}…` : said;
  } catch {
    return 'something that cannot be said';
  }
}

/** Say that the program itself is at fault: one line, and where it happened only for who debugs it. */
export function fault(host: Host, json: boolean, error: unknown): ExitCode {
  const unsound = error instanceof JobError && error.problems.some((p) => p.code === UNSOUND);
  if (unsound) return refuse(host, json, 'with', 'tinwright', error.message);
  if (host.debug === true && error instanceof Error) host.err(`${error.stack}\n`);
  const what = `a fault of the program (${messageOf(error)}); please report it with the job file`;
  return refuse(host, json, 'fault', 'tinwright', what);
}

/** Do some writing; when it fails, say so and give the exit status for it. */
export async function writing(host: Host, json: boolean, write: () => Promise<void>): Promise<ExitCode> {
  try {
    await write();
    return EXIT.done;
  } catch (error) {
    if (!(error instanceof WriteError)) throw error;
    const exit = refuse(host, json, 'unwritable', error.place, error.message, EXIT.unwritable);
    if (error.signal !== null) host.end?.(error.signal);
    return exit;
  }
}

/** A problem with its place in the file, as `--json` gives it. */
export interface PlacedProblem {
  readonly file: string;
  readonly line: number;
  readonly column: number;
  readonly code: string;
  readonly path: string;
  /** Where it is, for people. */
  readonly where: string;
  readonly message: string;
  readonly fix: string;
}

/** Problems of a job with their places, in the order of the file. */
export function placedProblems(
  error: JobError | TextError,
  file: string,
  text: ReadText | null,
): readonly PlacedProblem[] {
  const place = (p: Problem): Place => {
    if ('place' in p) return p.place as Place;
    return text === null ? { line: 1, column: 1 } : text.locate(p);
  };
  return error.problems
    .map((p) => ({
      file,
      ...place(p),
      code: p.code,
      path: pathText(p.path),
      where: placeText(p),
      message: p.message,
      fix: p.fix,
      problem: p,
    }))
    .toSorted((a, b) => a.line - b.line || a.column - b.column)
    .map(({ problem: _, ...rest }) => rest);
}

const MOST_PRINTED = 100;

/** Print problems: one a line on stderr, or as JSON on stdout. */
export function printProblems(host: Host, problems: readonly PlacedProblem[], json: boolean): void {
  if (json) {
    host.out(`${JSON.stringify({ problems }, null, 2)}\n`);
    return;
  }
  for (const p of problems.slice(0, MOST_PRINTED))
    host.err(`${safeText(p.file)}:${p.line}:${p.column}: ${sentence(p)}\n`);
  const more = problems.length - MOST_PRINTED;
  if (more > 0) host.err(`${safeText(problems[0]?.file ?? '')}: and ${more} more; --json lists all.\n`);
}

function sentence({ where, message, fix }: PlacedProblem): string {
  return problemText({ code: '', path: where === '' ? [] : [where], message, fix });
}
