import type { AnyFamily } from '@tinwright/core';
import type { Host } from '../host/console.js';
import type { ExitCode } from '../host/failure.js';

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

/** Tags of the languages there are; a test holds them against the words. */
export const LANGUAGE_TAGS = ['en', 'de'] as const;

/** The option of verbs that answer in a language. @param of what is in it */
export const langOption = (of: string): OptionSpec => ({
  type: 'string',
  choices: LANGUAGE_TAGS,
  default: 'en',
  describe: `language ${of}`,
});

/** The option of verbs without a job that says its units. */
export const UNITS_OPTION: OptionSpec = {
  type: 'string',
  choices: ['mm', 'in'],
  default: 'mm',
  describe: 'for plain numbers and for the answer',
};

/** Options of verbs that take a sheet without a job. */
export const SHEET_OPTIONS: Readonly<Record<'thickness' | 'gauge' | 'radius', OptionSpec>> = {
  thickness: { type: 'string', describe: 'of the sheet; or give --gauge' },
  gauge: { type: 'string', describe: "number in the material's gauge system" },
  radius: { type: 'string', describe: 'inside radius; the thickness when left out' },
};

/** The option of verbs that write DXF. */
export const DXF_OPTION: OptionSpec = {
  type: 'string',
  choices: ['r2000', 'r12'],
  default: 'r2000',
  describe: 'version of the DXF files',
};

/** The option of verbs that cut from stock where it is known. */
export const RACK_OPTION: OptionSpec = {
  type: 'string',
  describe: 'file of sheets and offcuts to cut from; when left out, those of the job or the shop',
};

/** The option of verbs that look at a job as one shop would make it. */
export const SHOP_OPTION: OptionSpec = {
  type: 'string',
  values: ['default'],
  describe: 'shop file, or default for a usual one: its machines and its test strips',
};
