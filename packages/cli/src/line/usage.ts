import { quoted, suggestion } from '@tinwright/core/internal';
import type { AnyCommand } from './command.js';

/** Options every verb takes. */
export const COMMON_OPTIONS: readonly string[] = ['with', 'version', 'help'];

/** True for an option, as it is typed, whose value is the next word. */
export function takesValue(word: string, commands: readonly AnyCommand[]): boolean {
  const [, name] = /^--?([^=-][^=]*)$/.exec(word) ?? [];
  if (name === undefined) return false;
  return name === 'with' || commands.some((c) => /^string/.test(c.options[name]?.type ?? ''));
}

/** The words of a command line without the `--` behind which none is an option: a file that begins with a dash is one of this folder. */
export function withoutDashes(argv: readonly string[], commands: readonly AnyCommand[]): readonly string[] {
  const at = argv.indexOf('--');
  if (at < 0 || takesValue(argv[at - 1] ?? '', commands)) return argv;
  const behind = argv.slice(at + 1).map((word) => (/^-./.test(word) ? `./${word}` : word));
  return [...argv.slice(0, at), ...behind];
}

/** Index of the verb: the first word that is neither an option nor the value of one; -1 without a verb. */
export function verbAt(argv: readonly string[], commands: readonly AnyCommand[]): number {
  return argv.findIndex((a, i) => !a.startsWith('-') && !takesValue(argv[i - 1] ?? '', commands));
}

/** What is wrong with the words of a command line, in our words; null when its verb is known or there is none. */
export function unknownVerb(argv: readonly string[], commands: readonly AnyCommand[]): string | null {
  const verb = argv[verbAt(argv, commands)];
  const known = commands.map((c) => c.verb);
  if (verb === undefined || known.includes(verb)) return null;
  return `there is no verb ${quoted(verb)}. ${suggestion(verb, known)}`;
}

/** What is wrong with an option that every object has by its nature: the argument parser trips over those. */
export function inheritedOption(argv: readonly string[], commands: readonly AnyCommand[]): string | null {
  const name = argv
    .filter((a, i) => a.startsWith('-') && !takesValue(argv[i - 1] ?? '', commands))
    .map(optionName)
    .find((n) => n in {});
  if (name === undefined) return null;
  const verb = commands.find((c) => c.verb === argv[verbAt(argv, commands)]);
  return unknownWord(name, argv, [...Object.keys(verb?.options ?? {}), ...COMMON_OPTIONS]);
}

/** The argument parser's message in our words: option, value given, values known. */
export function rephrased(message: string, argv: readonly string[], command: AnyCommand | undefined): string {
  const known = [...Object.keys(command?.options ?? {}), ...COMMON_OPTIONS];
  const [, unknown] = /^Unknown arguments?: (.*)$/s.exec(message) ?? [];
  if (unknown !== undefined)
    return unknown
      .split(', ')
      .map((name) => unknownWord(name, argv, known))
      .join('; ');
  const [, option, given, choices] = /Argument: (\S+), Given: (.*), Choices: (.*)$/s.exec(message) ?? [];
  if (option !== undefined)
    return `--${option}: ${given} given. Known: ${(choices ?? '').replaceAll('"', '')}`;
  const [, bare] = /^Not enough arguments following: (.*)$/s.exec(message) ?? [];
  if (bare !== undefined) return `give a value after --${bare}`;
  const stray = argv.find((a) => a.startsWith('--') && !known.includes(optionName(a)));
  if (stray !== undefined) return unknownWord(optionName(stray), argv, known); // it took the next word for its value
  if (message.startsWith('Not enough non-option arguments'))
    return `give a ${command?.argument?.describe ?? 'verb; tinwright --help lists them'}`;
  return message.split('\n').join('; ');
}

const optionName = (word: string) => word.replace(/^-+/, '').split('=')[0] ?? '';

function unknownWord(name: string, argv: readonly string[], known: readonly string[]): string {
  const option = argv.some((a) => a === `--${name}` || a.startsWith(`--${name}=`) || a === `-${name}`);
  if (!option) return `${quoted(name)} is one argument too many`;
  return `there is no option --${name}. ${suggestion(name, known)}`;
}

/** An option given more than once that may be given once only. */
export function givenTwice(options: Readonly<Record<string, unknown>>, command: AnyCommand): string | null {
  const { argument } = command;
  const many = (k: string) =>
    k === '_' ||
    k === 'with' ||
    command.options[k]?.type === 'strings' ||
    (argument?.several === true && k === argument.name);
  const twice = Object.keys(options).find((k) => !many(k) && Array.isArray(options[k]));
  return twice === undefined ? null : `--${twice} given more than once, once allowed`;
}

/** An option, or the argument, of more than one line: whatever prints it would break. */
export function givenBroken(options: Readonly<Record<string, unknown>>, command: AnyCommand): string | null {
  const { argument } = command;
  const typed = [...Object.keys(command.options), 'with', ...(argument === undefined ? [] : [argument.name])];
  for (const name of typed)
    for (const text of [options[name]].flat())
      if (typeof text === 'string' && /[\n\r\u0085\u2028\u2029]/.test(text))
        return `${name === argument?.name ? name : `--${name}`}: ${quoted(text)} given, a text in one line allowed`;
  return null;
}

/** An option, or the argument, of no text at all: a variable of a script that is not set, and no name of a file or size. */
export function givenEmpty(options: Readonly<Record<string, unknown>>, command: AnyCommand): string | null {
  const { argument } = command;
  const typed = [...Object.keys(command.options), 'with', ...(argument === undefined ? [] : [argument.name])];
  const empty = typed.find((k) => [options[k]].flat().includes(''));
  if (empty === undefined) return null;
  return empty === argument?.name ? `give a ${argument.describe}` : `give a value after --${empty}`;
}
