import type { AnyFamily } from '@tinwright/core';
import type { Host } from '../console.js';
import type { ExitCode } from '../failure.js';

/** An option of a verb. Texts are read as they stand; what they mean is the verb's business. */
export interface OptionSpec {
  /** `strings` may be given several times. */
  readonly type: 'string' | 'strings' | 'boolean';
  readonly describe: string;
  readonly default?: string | boolean | readonly string[];
  /** The only values there are. */
  readonly choices?: readonly string[];
  /** Values to offer a shell; others may do. */
  readonly values?: readonly string[];
}

/** A verb of the command line: words, options, and what it does. Heavy modules are loaded by `run`, not before. */
export interface Command<Options> {
  readonly verb: string;
  /** The one argument a verb can take. */
  readonly argument?: {
    readonly name: string;
    readonly describe: string;
    readonly needed: boolean;
    /** May be given several times. */
    readonly several?: true;
    /** Values to offer a shell; without them it offers files. */
    readonly values?: readonly string[];
  };
  readonly summary: string;
  readonly options: Readonly<Record<string, OptionSpec>>;
  readonly examples: readonly (readonly [command: string, does: string])[];
  /** `families`: the built-in ones and those loaded with `--with`. */
  readonly run: (options: Options, host: Host, families: readonly AnyFamily[]) => Promise<ExitCode>;
}

/** A command with its options' type put aside, as the list holds it. */
export type AnyCommand = Command<never>;

/** Keep a command's options' type together with what runs on them. */
export function command<Options>(c: Command<Options>): AnyCommand {
  return c as unknown as AnyCommand;
}

/** The argument of verbs that read a job. */
export const JOB = { name: 'job', describe: 'job file, - for standard input', needed: true } as const;

/** The option of verbs whose answer a program may read. */
export const JSON_OPTION: OptionSpec = {
  type: 'boolean',
  default: false,
  describe: 'print results for a program',
};

/** The option of verbs that write one file. */
export const FORCE_OPTION: OptionSpec = {
  type: 'boolean',
  default: false,
  describe: 'replace a file that tinwright did not write',
};

/** The option of verbs that write DXF. */
export const DXF_OPTION: OptionSpec = {
  type: 'string',
  choices: ['r2000', 'r12'],
  default: 'r2000',
  describe: 'form of the DXF files',
};

/** The option of verbs that cut from stock where it is known. */
export const RACK_OPTION: OptionSpec = {
  type: 'string',
  describe: 'file of sheets and offcuts to cut from; those of the job or the shop without',
};

/** The option of verbs that look at a job as one shop would make it. */
export const SHOP_OPTION: OptionSpec = {
  type: 'string',
  values: ['default'],
  describe: 'shop file, or default: its machines, its test strips for rule test-strip',
};
