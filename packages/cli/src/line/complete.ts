import type { AnyCommand, OptionSpec } from './command.js';
import { COMMON_OPTIONS, takesValue, verbAt } from './usage.js';

/** What the completion scripts ask with; the words of the command line follow, up to the one that is being written. */
export const COMPLETION_FLAG = '--get-yargs-completions';

/**
 * Words that can stand where a command line breaks off: verbs, options, values of options and arguments that are known.
 * Nothing where any file may stand, so that the shell offers files.
 * @param line the program's name, then words; the last one may be cut short or empty
 */
export function completions(line: readonly string[], commands: readonly AnyCommand[]): readonly string[] {
  // bash cuts --dxf=r12 into three words
  const words = line.slice(1).map((w, i, all) => (w === '=' && i === all.length - 1 ? '' : w));
  const before = words.slice(0, -1).filter((w) => w !== '=');
  const current = words.at(-1) ?? '';
  const [, option, start = ''] = /^(--[^=]+)=(.*)$/s.exec(current) ?? [];
  const known = commands.find((c) => c.verb === before[verbAt(before, commands)]);
  if (option !== undefined)
    return beginning(valuesOf(option, known), start).map((value) => `${option}=${value}`);
  const previous = before.at(-1) ?? '';
  if (takesValue(previous, commands)) return beginning(valuesOf(previous, known), current);
  if (known === undefined)
    return beginning([...commands.map((c) => c.verb), ...options({}, before)], current);
  return beginning(afterVerb(known, before, current), current);
}

function afterVerb(
  { verb, argument, options: own }: AnyCommand,
  before: readonly string[],
  current: string,
): readonly string[] {
  if (current.startsWith('-')) return options(own, before);
  if (argument === undefined) return options(own, before);
  const given = before.filter((w, i) => w !== verb && !w.startsWith('-') && !before[i - 1]?.startsWith('--'));
  return given.length === 0 ? (argument.values ?? []) : options(own, before);
}

/** Options not given yet, or that may be given again. */
function options(own: Readonly<Record<string, OptionSpec>>, before: readonly string[]): readonly string[] {
  return [...Object.keys(own), ...COMMON_OPTIONS]
    .filter((name) => own[name]?.type === 'strings' || name === 'with' || !before.includes(`--${name}`))
    .map((name) => `--${name}`);
}

function valuesOf(option: string, command: AnyCommand | undefined): readonly string[] {
  const spec = command?.options[option.replace(/^-+/, '')];
  return spec?.choices ?? spec?.values ?? [];
}

/** An option is only offered where a dash is written or nothing else can stand. */
function beginning(words: readonly string[], start: string): readonly string[] {
  const fit = words.filter((w) => w.startsWith(start));
  const plain = fit.filter((w) => !w.startsWith('-'));
  return start === '' && plain.length > 0 ? plain : fit;
}
