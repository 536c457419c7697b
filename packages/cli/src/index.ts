import yargs, { type Argv, type Options } from 'yargs';
import type { AnyCommand, OptionSpec } from './commands/command.js';
import { COMMANDS } from './commands/index.js';
import { type Host, processHost } from './console.js';
import { EXIT, type ExitCode, refuse } from './failure.js';
import { loadFamilies } from './load-families.js';
import { STANDARD_INPUT } from './open-job.js';
import { givenTwice, rephrased, unknownVerb } from './usage.js';

export type { Host } from './console.js';
export type { ExitCode } from './failure.js';

/**
 * Run the command line. Returns the exit status; prints through the host only.
 * @param argv arguments after the program's name
 */
export async function main(argv: readonly string[], host: Host = processHost()): Promise<ExitCode> {
  const json = argv.includes('--json');
  const unknown = unknownVerb(argv, COMMANDS);
  if (unknown !== null) return refuse(host, json, 'usage', 'tinwright', unknown);
  let chosen: { readonly command: AnyCommand; readonly options: Readonly<Record<string, unknown>> } | null =
    null;
  const parser = COMMANDS.reduce(
    (y, command) => register(y, command, (options) => (chosen = { command, options })),
    base(),
  );
  let printed = '';
  let refusal: string | null = null;
  const args = argv.map((a) => (a === '-' ? STANDARD_INPUT : a));
  await parser.parseAsync(args, {}, (error, _, output) => {
    refusal = error ? error.message : null;
    printed = output;
  });
  const verb = COMMANDS.find((c) => argv.includes(c.verb));
  if (refusal !== null)
    return refuse(host, json, 'usage', verb?.verb ?? 'tinwright', rephrased(refusal, argv, verb));
  if (printed !== '') host.out(`${printed}\n`);
  return chosen === null ? EXIT.done : run(chosen, host, json);
}

type Chosen = { readonly command: AnyCommand; readonly options: Readonly<Record<string, unknown>> };

async function run({ command, options }: Chosen, host: Host, json: boolean): Promise<ExitCode> {
  const twice = givenTwice(options, command);
  if (twice !== null) return refuse(host, json, 'usage', command.verb, twice);
  const families = await loadFamilies((options.with ?? []) as readonly string[]);
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
    .completion('completion', 'print a completion script for your shell')
    .locale('en')
    .wrap(100)
    .version(false)
    .help();
}

function optionOf({ type, ...spec }: OptionSpec): Options {
  if (type === 'strings') return { ...spec, type: 'string', array: true, nargs: 1 };
  return { ...spec, type, requiresArg: type === 'string' };
}

function register(
  y: Argv,
  c: AnyCommand,
  choose: (options: Readonly<Record<string, unknown>>) => void,
): Argv {
  const { verb, argument, summary, options, examples } = c;
  const usage =
    argument === undefined
      ? verb
      : `${verb} ${argument.needed ? `<${argument.name}>` : `[${argument.name}]`}`;
  const builder = (inner: Argv): Argv => {
    const described =
      argument === undefined
        ? inner
        : inner.positional(argument.name, { type: 'string', describe: argument.describe });
    const optioned = Object.entries(options).reduce<Argv>(
      (o, [name, spec]) => o.option(name, optionOf(spec)),
      described,
    );
    return examples.reduce((e, [line, does]) => e.example(line, does), optioned);
  };
  return y.command(usage, summary, builder as (inner: Argv) => Argv, (given) => choose(given));
}
