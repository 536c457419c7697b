import type { AnyFamily } from '@tinwright/core';
import type { Argv } from 'yargs';
import type { Host } from '../console.js';
import type { ExitCode } from '../failure.js';

/** A verb of the command line: words, options, and what it does. Heavy modules are loaded by `run`, not before. */
export interface Command<Options> {
  /** The verb with its arguments, as yargs takes it. */
  readonly usage: string;
  readonly summary: string;
  readonly options: (yargs: Argv) => Argv<Options>;
  readonly examples: readonly (readonly [command: string, does: string])[];
  /** `families`: the built-in ones and those loaded with `--with`. */
  readonly run: (options: Options, host: Host, families: readonly AnyFamily[]) => Promise<ExitCode>;
}

/** A command with its options' type put aside, as the list holds it. */
export type AnyCommand = Command<never>;

export function command<Options>(c: Command<Options>): AnyCommand {
  return c as unknown as AnyCommand;
}
