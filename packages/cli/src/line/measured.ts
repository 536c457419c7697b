import type { Host } from '../host/console.js';
import type { ExitCode } from '../host/failure.js';
import type { OptionSpec } from './command.js';
import { orRefused, refuseOptions, typedNumber } from './typed.js';

/** Sizes measured on the bench. */
export const MEASURED_OPTION: OptionSpec = {
  type: 'strings',
  default: [],
  describe: 'a measured size, PART.SIZE=LENGTH; may be repeated',
};

/** `body.insideWidth=197.6` as name and length; a text says what is wrong. */
export function readMeasured(given: readonly string[]): Readonly<Record<string, unknown>> | string {
  if (given.length === 0)
    return 'give what was measured: --measured PART.SIZE=LENGTH, such as body.insideWidth=197.6';
  const pairs = given.map((text) => {
    const at = text.indexOf('=');
    return [text.slice(0, Math.max(0, at)).trim(), text.slice(at + 1).trim()] as const;
  });
  const wrong = pairs.findIndex(([name, value]) => name === '' || value === '');
  if (wrong >= 0) return `--measured ${given[wrong]}: write PART.SIZE=LENGTH, such as body.insideWidth=197.6`;
  const twice = pairs.find(([name], i) => pairs.findIndex(([n]) => n === name) !== i);
  if (twice !== undefined) return `--measured ${twice[0]} given more than once`;
  return Object.fromEntries(pairs.map(([name, value]) => [name, typedNumber(value)]));
}

/**
 * Compute with what was measured: what is wrong with it is told at the option, not at a line of the job.
 * @throws what else is wrong
 */
export function fromMeasured<T>(
  verb: string,
  host: Host,
  json: boolean,
  measured: Readonly<Record<string, unknown>>,
  compute: () => T,
): { readonly answer: T } | { readonly exit: ExitCode } {
  return orRefused(compute, (error) => {
    const own = error.problems.filter(
      ({ path: [key, name] }) => key === 'measured' && Object.hasOwn(measured, String(name)),
    );
    if (own.length === 0) throw error;
    return refuseOptions(
      verb,
      host,
      json,
      own.map((p) => ({ ...p, path: [`--measured ${String(p.path[1])}`] })),
    );
  });
}
