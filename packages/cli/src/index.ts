import yargs, { type Argv } from 'yargs';
import type { AnyCommand } from './commands/command.js';
import { COMMANDS } from './commands/index.js';
import { type Host, processHost } from './console.js';
import { EXIT, type ExitCode } from './failure.js';
import { loadFamilies } from './load-families.js';
import { STANDARD_INPUT } from './open-job.js';

export type { Host } from './console.js';
export type { ExitCode } from './failure.js';

/**
 * Run the command line. Returns the exit status; prints through the host only.
 * @param argv arguments after the program's name
 */
export async function main(argv: readonly string[], host: Host = processHost()): Promise<ExitCode> {
  let exit: ExitCode | null = null;
  const parser = COMMANDS.reduce((y, c) => register(y, c, host, (code) => (exit = code)), base());
  let printed = '';
  let refusal: Error | string | null = null;
  const args = argv.map((a) => (a === '-' ? STANDARD_INPUT : a));
  await parser.parseAsync(args, {}, (error, _, output) => {
    refusal = error ?? null;
    printed = output;
  });
  if (refusal !== null) {
    host.err(`tinwright: ${refusalText(refusal)}\n`);
    return EXIT.unreadable;
  }
  if (printed !== '') host.out(`${printed}\n`);
  return exit ?? EXIT.done;
}

function base(): Argv {
  return yargs()
    .scriptName('tinwright')
    .usage('$0 <verb>\n\nFlat patterns for sheet metal: finished sizes in, cut files out.')
    .demandCommand(1, 'give a verb; tinwright --help lists them')
    .strict()
    .recommendCommands()
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

function register(y: Argv, c: AnyCommand, host: Host, done: (code: ExitCode) => void): Argv {
  const builder = (inner: Argv) =>
    c.examples.reduce((i, [line, does]) => i.example(line, does), c.options(inner));
  const handler = async (options: { with?: readonly string[] }) => {
    const families = await loadFamilies(host, options.with ?? []);
    done(families === null ? EXIT.unreadable : await c.run(options as never, host, families));
  };
  return y.command(c.usage, c.summary, builder, handler as never);
}

function refusalText(error: Error | string): string {
  const text = typeof error === 'string' ? error : error.message;
  return text.split('\n').join('; ');
}
