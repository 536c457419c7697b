import { type AnyFamily, PROGRAM, type ToleranceClass } from '@tinwright/core';
import { quoted, suggestion } from '@tinwright/core/internal';
import type { OutFile } from '@tinwright/files';
import type { PacketForm, PagesSeen, Section } from '@tinwright/paper';
import type { Language } from '@tinwright/words';
import type { DimsName } from '@tinwright/words/internal';
import { type Host, many } from '../host/console.js';
import { EXIT, type ExitCode, refuse, writing } from '../host/failure.js';
import type { ProgressBar } from '../host/progress.js';
import {
  type AnyCommand,
  command,
  FORCE_OPTION,
  JOB,
  JSON_OPTION,
  langOption,
  RACK_OPTION,
  SHOP_OPTION,
} from '../line/command.js';
import { MEASURED_OPTION } from '../line/measured.js';
import { SIZE_OPTION } from '../open/in-size.js';
import { openMeasured } from '../open/open-measured.js';
import { makingIn } from '../open/open-shop.js';
import { cutKnown } from '../stock/cut-known.js';
import { spareFile } from '../write/spare-file.js';
import { DIMS_OPTION, PAPER_OPTION, refusable } from './drawing.js';

interface Options {
  readonly job: string;
  readonly out: string;
  readonly paper?: string;
  readonly dims?: DimsName;
  readonly measured: readonly string[];
  readonly rack?: string;
  readonly shop?: string;
  readonly size?: string;
  readonly sections: readonly Section[];
  readonly lang: Language;
  readonly 'large-print': boolean;
  readonly tolerance: ToleranceClass;
  readonly date?: string;
  readonly sets?: string;
  readonly worksheet: boolean;
  readonly blank: readonly string[];
  readonly force: boolean;
  readonly json: boolean;
}

/** Sections and languages, as the export package has them; here so that help need not load it. */
export const SECTION_NAMES: readonly string[] = [
  'cautions',
  'cuts',
  'plans',
  'operations',
  'joints',
  'inspection',
  'templates',
];
const MOST_SETS = 500;

export const packet: AnyCommand = command<Options>({
  verb: 'packet',
  argument: JOB,
  summary: 'print everything for a job: cautions, plans, operations, templates',
  options: {
    out: {
      type: 'string',
      default: 'packet.pdf',
      describe: 'a file that ends in .pdf or .html, or a folder to write both into',
    },
    paper: PAPER_OPTION,
    dims: DIMS_OPTION,
    measured: MEASURED_OPTION,
    rack: RACK_OPTION,
    size: SIZE_OPTION,
    shop: SHOP_OPTION,
    sections: {
      type: 'strings',
      default: [],
      values: SECTION_NAMES,
      describe: 'only this section, cover and cautions; may be repeated',
    },
    lang: langOption('of the packet'),
    'large-print': { type: 'boolean', default: false, describe: 'letters 3.5 mm high instead of 2.5' },
    tolerance: {
      type: 'string',
      choices: ['f', 'm', 'c', 'v'],
      default: 'm',
      describe: 'class of ISO 2768-1 that cut sizes are held to; bent ones to the next coarser',
    },
    date: { type: 'string', describe: 'printed in the title blocks as it is' },
    sets: { type: 'string', describe: 'sets of the object to make, for a class' },
    worksheet: {
      type: 'boolean',
      default: false,
      describe: 'worksheets in place of plans: some sizes left out, answers last',
    },
    blank: {
      type: 'strings',
      default: [],
      describe: 'a bend whose sizes worksheets leave out, by number or name: B3; may be repeated',
    },
    force: FORCE_OPTION,
    json: JSON_OPTION,
  },
  examples: [
    ['$0 packet carrier.yaml --out carrier.pdf', 'one file to print and work from'],
    ['$0 packet carrier.yaml --sets 12 --worksheet', 'for a class of twelve'],
  ],
  run,
});

async function run(options: Options, host: Host, families: readonly AnyFamily[]): Promise<ExitCode> {
  const { json, out } = options;
  const sets = setsOf(options.sets);
  if (typeof sets === 'string') return refuse(host, json, 'usage', 'packet', sets);
  if (options.worksheet && options.sections.length > 0)
    return refuse(host, json, 'usage', 'packet', '--worksheet and --sections given; one of the two allowed');
  const stray = options.sections.find((s) => !SECTION_NAMES.includes(s));
  if (stray !== undefined)
    return refuse(
      host,
      json,
      'usage',
      'packet',
      `--sections: ${quoted(stray)} given. ${suggestion(stray, SECTION_NAMES)}`,
    );
  const opened = await openMeasured(host, families, { ...options, verb: 'packet' });
  if ('exit' in opened) return opened.exit;
  const refused = await writing(host, json, () => checkOut(out, options.force ? 'force' : 'own only'));
  if (refused !== EXIT.done) return refused;
  const { plan, shop } = opened;
  const { units } = plan.job;
  const { dims = units, paper = units === 'in' ? 'letter' : 'A4', date, sections, tolerance } = options;
  const forms = formsOf(out);
  const { DEFAULT_SHOP } = await import('@tinwright/shop');
  // without a shop the blanks are cut on the shear that is assumed, never from stock that is
  const cuttingShop = shop ?? { ...DEFAULT_SHOP, sheets: [], stock: [] };
  const cut = await cutKnown(host, { plan, shop: cuttingShop, rack: options.rack, json, sets });
  if (cut !== null && 'exit' in cut) return cut.exit;
  const written = await refusable('packet', host, json, async () => {
    const { packetFiles } = await import('@tinwright/paper');
    const asked = {
      paper,
      dims,
      tolerance,
      language: options.lang,
      lettering: options['large-print'] ? (3.5 as const) : (2.5 as const),
      sets,
      cut,
      worksheet: options.worksheet,
      leaveOut: options.blank,
      ...(sections.length > 0 && { sections }),
      ...(date && { date }),
    };
    const making = await makingIn(host, plan, shop, sets);
    return withPages(host, (onPages) => packetFiles(plan, making, { ...asked, onPages }, forms, spareFile));
  });
  if (written === null) return EXIT.unreadable;
  const { pages, files } = written;
  const failed = await writing(host, json, () => write(out, files, options.force ? 'force' : 'own only'));
  if (failed !== EXIT.done) return failed;
  const paths = forms.length > 1 ? files.map((f) => `${out}/${f.path}`) : [out];
  if (json) host.out(`${JSON.stringify({ out, pages, files: paths }, null, 2)}\n`);
  else host.out(`${many(pages, 'page')} in ${paths.join(' and ')}.\n`);
  return EXIT.done;
}

/** A packet's pages, told as they are drawn. */
async function withPages<T>(host: Host, work: (onPages: PagesSeen) => Promise<T>): Promise<T> {
  let bar: ProgressBar | undefined;
  try {
    return await work(async (pages) => {
      bar = await host.progress?.('pages', pages);
      return (page) => bar?.to(page);
    });
  } finally {
    bar?.end();
  }
}

/** How many sets, or a sentence about what cannot be. */
function setsOf(given: string | undefined): number | string {
  if (given === undefined) return 1;
  const sets = Number(given);
  if (Number.isInteger(sets) && sets >= 1 && sets <= MOST_SETS) return sets;
  return `--sets: ${quoted(given)} given, a whole number from 1 to ${MOST_SETS} allowed`;
}

/** The form a file's name asks for; both for a folder. */
function formsOf(out: string): readonly PacketForm[] {
  const [, form] = /\.(pdf|html)$/i.exec(out) ?? [];
  return form === undefined ? ['pdf', 'html'] : [form.toLowerCase() as PacketForm];
}

/** What cannot be written is told before it is drawn. */
async function checkOut(out: string, force: 'force' | 'own only'): Promise<void> {
  const { checkFolder, checkPlace } = await import('../write/files.js');
  return formsOf(out).length > 1 ? checkFolder(out) : checkPlace(out, force);
}

async function write(out: string, files: readonly OutFile[], force: 'force' | 'own only'): Promise<void> {
  const { replaceFile, writeSet } = await import('../write/files.js');
  const [only, ...more] = files;
  if (only !== undefined && more.length === 0) return replaceFile(out, only.content, force);
  const list = `${JSON.stringify({ format: 1, program: PROGRAM.mark, files: files.map((f) => f.path) }, null, 2)}\n`;
  return writeSet(out, [...files, { path: 'packet.json', content: list }]);
}
