import { JobError, type Path, type Problem, pathText, problemText } from '@tinwright/core';
import type { Host } from '../host/console.js';
import { EXIT, type ExitCode } from '../host/failure.js';
import { plainDecimal } from '../text/plain-decimal.js';

/** A bare number is a number; a fraction or a length with its unit stays text, as in a job file. */
export function typedNumber(text: string | undefined): string | number | undefined {
  return text === undefined ? undefined : (plainDecimal(text) ?? text);
}

/** What was given of some values; the others are left out. */
export function given(entries: Readonly<Record<string, unknown>>): object {
  return Object.fromEntries(Object.entries(entries).filter(([, v]) => v !== undefined));
}

/**
 * Compute something from options; problems are printed with the option at fault.
 * @throws what is no JobError
 */
export function fromOptions<T>(
  verb: string,
  host: Host,
  json: boolean,
  compute: () => T,
): { readonly answer: T } | { readonly exit: ExitCode } {
  return orRefused(compute, ({ problems }) =>
    refuseOptions(
      verb,
      host,
      json,
      problems.map((p) => ({ ...p, path: optionPath(p.path) })),
    ),
  );
}

/**
 * Computes something; what `refuse` tells where it cannot be computed.
 * @throws what is no JobError, and what `refuse` throws
 */
export function orRefused<T>(
  compute: () => T,
  refuse: (error: JobError) => { readonly exit: ExitCode },
): { readonly answer: T } | { readonly exit: ExitCode } {
  try {
    return { answer: compute() };
  } catch (error) {
    if (!(error instanceof JobError)) throw error;
    return refuse(error);
  }
}

/** Tells what is wrong with options, whose names begin the paths. */
export function refuseOptions(
  verb: string,
  host: Host,
  json: boolean,
  problems: readonly Problem[],
): { readonly exit: ExitCode } {
  if (json) {
    const list = problems.map(({ code, path, message, fix }) => ({
      code,
      path: pathText(path),
      message,
      fix,
    }));
    host.out(`${JSON.stringify({ problems: list }, null, 2)}\n`);
  } else for (const p of problems) host.err(`${verb}: ${problemText(p)}\n`);
  return { exit: EXIT.unreadable };
}

/** Where the value of a problem was typed: `stock.thickness` is `--thickness`. */
function optionPath(path: Path): Path {
  const [group, name, ...rest] = path;
  const inside = group === 'stock' || group === 'bending' ? name : group;
  if (inside === undefined) return [];
  const option = inside === 'insideRadius' ? 'radius' : String(inside);
  return [`${option.length === 1 ? '-' : '--'}${option}`, ...rest];
}
