import { PROGRAM } from '@tinwright/core';
import yargs, { type Argv, type Options } from 'yargs';
import { COMMANDS } from './commands/index.js';
import type { Host } from './host/console.js';
import { EXIT, type ExitCode, fault, refuse } from './host/failure.js';
import { printable } from './host/printable.js';
import { processHost } from './host/process-host.js';
import type { AnyCommand, OptionSpec } from './line/command.js';
import { COMPLETION_FLAG, completions } from './line/complete.js';
import { withExamples } from './line/help.js';
import {
  givenBroken,
  givenEmpty,
  givenTwice,
  inheritedOption,
  rephrased,
  unknownVerb,
  verbAt,
  withoutDashes,
} from './line/usage.js';
import { loadFamilies } from './open/load-families.js';
import { STANDARD_INPUT } from './open/open-text.js';

export type { Host } from './host/console.js';
export type { ExitCode } from './host/failure.js';

/**
 * Run the command line. Returns the exit status; prints through the host only.
 * @param words arguments after the program's name
 */
export async function main(words: readonly string[], shown: Host = processHost()): Promise<ExitCode> {
  const argv = words[0] === COMPLETION_FLAG ? words : withoutDashes(words, COMMANDS);
  const json = argv.includes('--json');
  const host = { ...printable(shown, json || argv.includes('--schema')), inputs: new Set<string>() };
  try {
    if (argv[0] === COMPLETION_FLAG) return offer(host, argv.slice(1));
    const unknown = unknownVerb(argv, COMMANDS) ?? inheritedOption(argv, COMMANDS);
    if (unknown !== null) return refuse(host, json, 'usage', 'tinwright', unknown);
    return await parsed(argv, host, json);
  } catch (error) {
    return fault(host, json, error);
  }
}

/** Print the words a shell may offer. */
function offer(host: Host, line: readonly string[]): ExitCode {
  for (const word of completions(line, COMMANDS)) host.out(`${word}\n`);
  return EXIT.done;
}

async function parsed(argv: readonly string[], host: Host, json: boolean): Promise<ExitCode> {
  let chosen: Chosen | null = null;
  const parser = COMMANDS.reduce(
    (y, command) => register(y, command, (options) => (chosen = { command, options })),
    base(),
  );
  let printed = '';
  let refusal: string | null = null;
  const at = verbAt(argv, COMMANDS);
  const verb = COMMANDS.find((c) => c.verb === argv[at]);
  await parser.parseAsync(verbFirst(argv, at), {}, (error, _, output) => {
    refusal = error ? error.message : null;
    printed = output;
  });
  if (refusal !== null)
    return refuse(host, json, 'usage', verb?.verb ?? 'tinwright', rephrased(refusal, argv, verb));
  if (chosen !== null) return run(chosen, host, json);
  host.out(`${verb === undefined || printed === PROGRAM.version ? printed : withExamples(printed, verb)}\n`);
  return EXIT.done;
}

/** The verb before its options, as the argument parser wants it. */
function verbFirst(argv: readonly string[], at: number): readonly string[] {
  const args = argv.map((a) => (a === '-' ? STANDARD_INPUT : a));
  return at < 1 ? args : [...args.slice(at, at + 1), ...args.slice(0, at), ...args.slice(at + 1)];
}

type Chosen = { readonly command: AnyCommand; readonly options: Readonly<Record<string, unknown>> };

async function run({ command, options }: Chosen, host: Host, json: boolean): Promise<ExitCode> {
  const wrong = givenTwice(options, command) ?? givenEmpty(options, command) ?? givenBroken(options, command);
  if (wrong !== null) return refuse(host, json, 'usage', command.verb, wrong);
  const modules = (options.with ?? []) as readonly string[];
  for (const module of modules) host.inputs?.add(module);
  const families = await loadFamilies(modules);
  if (typeof families === 'string') return refuse(host, json, 'with', command.verb, families);
  return command.run(options as never, host, families);
}

function base(): Argv {
  return yargs()
    .scriptName('tinwright')
    .usage('$0 <verb>\n\nFlat patterns for sheet metal: finished sizes in, cut files out.')
    .demandCommand(1, 'give a verb; tinwright --help lists them')
    .strict()
    .parserConfiguration({ 'boolean-negation': false, 'dot-notation': false, 'parse-numbers': false })
    .exitProcess(false)
    .option('with', {
      type: 'string',
      array: true,
      nargs: 1,
      describe: 'load part families from a module of your own (it is run)',
    })
    .locale('en')
    .wrap(100)
    .version(PROGRAM.version)
    .help();
}

function optionOf({ type, values: _, ...spec }: OptionSpec): Options {
  if (type === 'strings') return { ...spec, type: 'string', array: true, nargs: 1 };
  return { ...spec, type, requiresArg: type === 'string' };
}

function register(
  y: Argv,
  c: AnyCommand,
  choose: (options: Readonly<Record<string, unknown>>) => void,
): Argv {
  const { verb, argument, summary, options } = c;
  const usage = argument === undefined ? verb : `${verb} ${argumentText(argument)}`;
  const builder = (inner: Argv): Argv => {
    const described =
      argument === undefined
        ? inner
        : inner.positional(argument.name, { type: 'string', describe: argument.describe });
    return Object.entries(options).reduce<Argv>(
      (o, [name, spec]) => o.option(name, optionOf(spec)),
      described,
    );
  };
  return y.command(usage, summary, builder as (inner: Argv) => Argv, (given) => choose(given));
}

/** `<job>`, `[job]`, `<job..>` for one that may be given several times. */
function argumentText({ name, needed, several }: NonNullable<AnyCommand['argument']>): string {
  const all = several === true ? `${name}..` : name;
  return needed ? `<${all}>` : `[${all}]`;
}
