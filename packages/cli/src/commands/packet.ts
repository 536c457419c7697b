import { type AnyFamily, type JobPlan, PROGRAM } from '@tinwright/core';
import { quoted, suggestion } from '@tinwright/core/internal';
import type { OutFile } from '@tinwright/files';
import type { PacketForm } from '@tinwright/paper';
import type { Shop } from '@tinwright/shop';
import { type Host, many } from '../host/console.js';
import { EXIT, type ExitCode, refuse, writing } from '../host/failure.js';
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
import { SIZE_OPTION, sizeNamed } from '../open/in-size.js';
import { openJob } from '../open/open-job.js';
import { openMeasured } from '../open/open-measured.js';
import { plainDecimal } from '../text/plain-decimal.js';
import type { JobSet } from '../write/files.js';
import { DIMS_OPTION, PAPER_OPTION } from './drawing.js';
import { PACKET, type PacketAsk, packetOf } from './packet-of.js';

interface Options extends PacketAsk {
  readonly job: string;
  readonly out?: string;
  readonly measured: readonly string[];
  readonly shop?: string;
  readonly size?: string;
  readonly sizes: boolean;
  readonly sets?: string;
  readonly force: boolean;
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
/** Rows that packets are printed for in one go: what is drawn waits in memory until all can be written. */
const MOST_SIZES = 50;

const CUT_ALONE = 'Each is cut from the whole stock; tinwright shear --sizes cuts all of them together.\n';

export const packet: AnyCommand = command<Options>({
  verb: 'packet',
  argument: JOB,
  summary: 'print everything for a job: cautions, plans, operations, templates',
  options: {
    out: {
      type: 'string',
      describe:
        'a file that ends in .pdf or .html, or a folder to write both into; packet.pdf when left out, packets with --sizes',
    },
    paper: PAPER_OPTION,
    dims: DIMS_OPTION,
    measured: MEASURED_OPTION,
    rack: RACK_OPTION,
    size: SIZE_OPTION,
    sizes: {
      type: 'boolean',
      default: false,
      describe: 'a packet for every row under sizes: in the job',
    },
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
    ['$0 packet tray.yaml --sizes --out packets', 'a file for every size'],
  ],
  run,
});

async function run(options: Options, host: Host, families: readonly AnyFamily[]): Promise<ExitCode> {
  const { json } = options;
  const out = options.out ?? (options.sizes ? 'packets' : 'packet.pdf');
  const sets = setsOf(options.sets);
  const wrong = typeof sets === 'string' ? sets : misfit({ ...options, out });
  if (typeof sets === 'string' || wrong !== null) return refuse(host, json, 'usage', 'packet', String(wrong));
  const opened = await wantedRows(host, options, families);
  if ('exit' in opened) return opened.exit;
  const force = options.force ? 'force' : 'own only';
  const forms = formsOf(out);
  const set: JobSet = {
    ...{ out, list: 'packet.json', of: 'all parts' },
    ...{ plan: opened.job, inputs: host.inputs },
  };
  const refused = await writing(host, json, () => checkOut(set, force));
  if (refused !== EXIT.done) return refused;
  const printed: { readonly pages: number; readonly cut: boolean }[] = [];
  const files: OutFile[] = [];
  for (const { plan, name } of opened.rows) {
    const packet = await packetOf(host, { name, plan, shop: opened.shop, sets, forms }, options);
    if ('exit' in packet) return packet.exit;
    printed.push({ pages: packet.pages, cut: packet.cut });
    files.push(...packet.files);
  }
  const failed = await writing(host, json, () => write(set, files, force));
  if (failed !== EXIT.done) return failed;
  const pages = printed.reduce((sum, p) => sum + p.pages, 0);
  const paths = forms.length > 1 ? files.map((f) => `${out}/${f.path}`) : [out];
  if (json) host.out(`${JSON.stringify({ out, pages, files: paths }, null, 2)}\n`);
  else {
    const where = options.sizes ? `${many(files.length, 'file')} in ${out}` : paths.join(' and ');
    host.out(`${many(pages, 'page')} in ${where}.\n`);
    if (options.sizes && printed.some((p) => p.cut)) host.out(CUT_ALONE);
  }
  return EXIT.done;
}

/** Options that do not go together, or a section that is none; null where all is well. */
function misfit({
  worksheet,
  blank,
  sections,
  sizes,
  size,
  measured,
  out,
}: Options & { readonly out: string }): string | null {
  const stray = sections.find((s) => !SECTION_NAMES.includes(s));
  if (worksheet && sections.length > 0) return '--worksheet and --sections given; one of the two allowed';
  if (blank.length > 0 && !worksheet) return '--blank is for --worksheet';
  if (stray !== undefined) return `--sections: ${quoted(stray)} given. ${suggestion(stray, SECTION_NAMES)}`;
  if (!sizes) return null;
  if (size !== undefined) return '--sizes and --size given; one of the two allowed';
  if (measured.length > 0)
    return '--sizes and --measured given; what was measured is of one size: give --size NAME';
  if (formsOf(out).length === 1) return `--out: ${quoted(out)} given, a folder allowed with --sizes`;
  return null;
}

/** A bend to be left out that no part has; null where there are none. */
async function strayBend(blank: readonly string[], rows: readonly Row[]): Promise<string | null> {
  if (blank.length === 0) return null;
  const { bendNumber } = await import('@tinwright/paper/internal');
  const bends = rows.flatMap(({ plan }) => plan.parts).map(({ flat }) => flat.bends);
  const known = new Set([
    ...bends.flatMap((of) => of.map((_, i) => bendNumber(i))),
    ...bends.flatMap((of) => of.map(({ id }) => id)),
  ]);
  const stray = blank.find((b) => !known.has(b));
  return stray === undefined ? null : `--blank: ${quoted(stray)} given. ${suggestion(stray, [...known])}`;
}

/** A job, or one of its sizes, and what the files of its packet are called. */
interface Row {
  readonly plan: JobPlan;
  readonly name: string;
}

/** What is to be printed: every bend that is to be left out is there. */
async function wantedRows(
  ...[host, options, families]: Parameters<typeof openRows>
): ReturnType<typeof openRows> {
  const opened = await openRows(host, options, families);
  const stray = 'exit' in opened ? null : await strayBend(options.blank, opened.rows);
  return stray === null ? opened : { exit: refuse(host, options.json, 'usage', 'packet', stray) };
}

/** What packets are printed of: the job itself, or as its rows have it. */
interface Rows {
  readonly job: JobPlan;
  readonly rows: readonly Row[];
  readonly shop: Shop | null;
}

/** The job as it is asked for, or every row of its sizes. */
async function openRows(
  host: Host,
  options: Options,
  families: readonly AnyFamily[],
): Promise<Rows | { readonly exit: ExitCode }> {
  const { job, json, shop } = options;
  if (!options.sizes) {
    const others = '--size NAME takes one, --sizes all';
    const opened = await openMeasured(host, families, { ...options, verb: 'packet', others });
    if ('exit' in opened) return opened;
    return { job: opened.plan, rows: [{ plan: opened.plan, name: PACKET }], shop: opened.shop };
  }
  const rows: Row[] = [];
  const each = (plan: JobPlan, name: string) => void rows.push({ plan: sizeNamed(plan, name), name });
  const opened = await openJob(host, job, json, families, { shop, each, most: MOST_SIZES + 1 });
  if ('exit' in opened) return opened;
  const no = (message: string) => ({ exit: refuse(host, json, 'usage', 'packet', message) });
  if (rows.length === 0) return no(`--sizes given, and ${quoted(job)} has no sizes:`);
  if (rows.length > MOST_SIZES)
    return no(`--sizes: over ${MOST_SIZES} rows given, ${MOST_SIZES} allowed. Print one with --size NAME`);
  return { job: opened.plan, rows, shop: opened.shop };
}

/** How many sets, or a sentence about what cannot be. */
function setsOf(given: string | undefined): number | string {
  if (given === undefined) return 1;
  const sets = plainDecimal(given);
  if (sets !== null && Number.isInteger(sets) && sets >= 1 && sets <= MOST_SETS) return sets;
  return `--sets: ${quoted(given)} given, a whole number from 1 to ${MOST_SETS} allowed`;
}

/** The form a file's name asks for; both for a folder. */
function formsOf(out: string): readonly PacketForm[] {
  const [, form] = /\.(pdf|html)$/i.exec(out) ?? [];
  return form === undefined ? ['pdf', 'html'] : [form.toLowerCase() as PacketForm];
}

/** What cannot be written is told before it is drawn. */
async function checkOut(set: JobSet, force: 'force' | 'own only'): Promise<void> {
  const { checkFolder, checkPlace, refuseInput, refuseJobSet } = await import('../write/files.js');
  if (formsOf(set.out).length > 1) return checkFolder(set.out, (standing) => refuseJobSet(set, standing));
  await refuseInput(set.inputs, set.out);
  await checkPlace(set.out, force);
}

/** The packet of a job, or of all its sizes. */
async function write(set: JobSet, files: readonly OutFile[], force: 'force' | 'own only'): Promise<void> {
  const { out, plan, inputs } = set;
  const { refuseInput, refuseJobSet, replaceFile, updateSet } = await import('../write/files.js');
  const [only] = files;
  if (only !== undefined && formsOf(out).length === 1) {
    await refuseInput(inputs, out);
    return replaceFile(out, only.content, force);
  }
  const head = { format: 1, program: PROGRAM.mark, name: plan.job.name };
  const list = JSON.stringify({ ...head, files: files.map((f) => f.path) }, null, 2);
  return updateSet(out, async (standing) => {
    await refuseJobSet(set, standing);
    return [...files, { path: 'packet.json', content: `${list}\n` }];
  });
}
