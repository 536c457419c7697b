import { join } from 'node:path';
import type { AnyFamily, Finding, JobPlan } from '@tinwright/core';
import { massText } from '@tinwright/core/internal';
import type { OutFile } from '@tinwright/files';
import type { ShopPlan } from '@tinwright/shop';
import type { Language } from '@tinwright/words';
import { type Host, paint, table } from '../host/console.js';
import { EXIT, type ExitCode, refuse, writing } from '../host/failure.js';
import { withProgress } from '../host/with-progress.js';
import {
  type AnyCommand,
  command,
  DXF_OPTION,
  JOB,
  JSON_OPTION,
  langOption,
  RACK_OPTION,
  SHOP_OPTION,
} from '../line/command.js';
import { SIZE_OPTION } from '../open/in-size.js';
import { openJob } from '../open/open-job.js';
import { DEFAULT_NAME, plannedIn } from '../open/open-shop.js';
import { findingEntries, findingLines, worst } from '../print/findings.js';
import { type Spoken, spoken } from '../print/spoken.js';
import { cutKnown } from '../stock/cut-known.js';
import { TABLE_OPTIONS, type TableOptions, tableStyle } from '../stock/table-options.js';
import type { JobSet } from '../write/files.js';

interface Options extends TableOptions {
  readonly job: string;
  readonly out: string;
  readonly 'file-names': 'part' | 'full';
  readonly pictures: boolean;
  readonly views: boolean;
  readonly steps: boolean;
  readonly strict: boolean;
  readonly rack?: string;
  readonly shop?: string;
  readonly size?: string;
  readonly lang: Language;
  readonly json: boolean;
}

export const make: AnyCommand = command<Options>({
  verb: 'make',
  argument: JOB,
  summary: 'make the cut files of a job',
  options: {
    out: { type: 'string', default: 'out', describe: 'folder to write, replaced as a whole' },
    dxf: DXF_OPTION,
    ...TABLE_OPTIONS,
    'file-names': {
      type: 'string',
      choices: ['part', 'full'],
      default: 'part',
      describe: 'what cut files are called: full adds quantity, material, thickness',
    },
    pictures: {
      type: 'boolean',
      default: false,
      describe: 'also pictures and 3D models of parts and object',
    },
    views: {
      type: 'boolean',
      default: false,
      describe: 'also front, top and side view of every formed part as DXF',
    },
    steps: {
      type: 'boolean',
      default: false,
      describe: 'also a picture of every bend, in the default shop without --shop',
    },
    strict: { type: 'boolean', default: false, describe: 'write nothing while a finding is an error' },
    rack: RACK_OPTION,
    size: SIZE_OPTION,
    shop: SHOP_OPTION,
    lang: langOption('of findings and answers, in job.json too'),
    json: JSON_OPTION,
  },
  examples: [
    ['$0 make carrier.yaml --out carrier', 'DXF, SVG and job.json for every part'],
    ['$0 make carrier.yaml --dxf r12', 'for an older cutting table'],
    ['$0 make carrier.yaml --shop shop.yaml', 'with bend orders and findings of a shop in job.json'],
  ],
  run,
});

async function run(options: Options, host: Host, families: readonly AnyFamily[]): Promise<ExitCode> {
  const { job, out, dxf, pictures, views, steps, strict, shop, size, lang, json } = options;
  const opened = await openJob(host, job, json, families, {
    shop: shop ?? (steps ? DEFAULT_NAME : undefined),
    size,
  });
  if ('exit' in opened) return opened.exit;
  const { plan } = opened;
  const { smallestHole = 0, kerf = 0 } = opened.shop?.table ?? {};
  const limits = { smallestHole, kerf, leastEdge: 0, units: plan.job.units };
  const asked = await tableStyle(host, options, limits, json);
  if (typeof asked === 'string') return refuse(host, json, 'usage', 'make', asked);
  if ('exit' in asked) return asked.exit;
  const { checkFolder, refuseJobSet, updateSet } = await import('../write/files.js');
  const set: JobSet = { out, list: 'job.json', of: 'all parts', plan, inputs: host.inputs };
  const refused = await writing(host, json, () =>
    checkFolder(out, (standing) => refuseJobSet(set, standing)),
  );
  if (refused !== EXIT.done) return refused;
  const inShop = await plannedIn(plan, opened.shop, host);
  const cut = await cutKnown(host, { plan, shop: opened.shop, rack: options.rack, json });
  if (cut !== null && 'exit' in cut) return cut.exit;
  const { allFindings, filesToMake, madeFile } = await import('@tinwright/files/internal');
  const findings = allFindings(plan, inShop, cut);
  const wrong = worst(findings) === 'error';
  const also = steps && !(strict && wrong) ? await stepsOf(plan, inShop, host, lang) : [];
  const toMake =
    strict && wrong
      ? []
      : filesToMake(plan, {
          dxf,
          style: { ...asked.style, names: options['file-names'] },
          pictures,
          views,
          inShop,
          cut,
          language: lang,
          also,
        });
  const files = await withProgress(host, 'files', toMake.length, (onProgress) =>
    toMake.map((file, i) => {
      const made = madeFile(file);
      onProgress(i + 1);
      return made;
    }),
  );
  const write = () =>
    updateSet(out, async (standing) => {
      await refuseJobSet(set, standing);
      return files;
    });
  const failed = files.length === 0 ? EXIT.done : await writing(host, json, write);
  if (failed !== EXIT.done) return failed;
  const written = files.map((f) => f.path);
  if (json) {
    const entries = findingEntries(findings, plan.job.units, lang);
    host.out(`${JSON.stringify({ out, files: written, findings: entries }, null, 2)}
`);
  } else tell(host, { plan, lang, out }, findings, written);
  return wrong ? EXIT.findings : EXIT.done;
}

interface Telling {
  readonly plan: JobPlan;
  readonly lang: Language;
  readonly out: string;
}

function tell(
  host: Host,
  { plan, lang, out }: Telling,
  findings: readonly Finding[],
  written: readonly string[],
): void {
  const said = spoken(lang, plan.job.units);
  const { words } = said;
  host.out(table(rowsOf(plan, said, host)));
  for (const line of findingLines(host, findings, plan.job.units, lang)) host.out(`${line}\n`);
  const none = written.length === 0;
  host.out(`${none ? words.notWritten : words.filesIn(written.length, out, join(out, toOpen(written)))}\n`);
  if (worst(findings) === 'error' && !none) host.out(`${words.writtenAll}\n`);
}

/** A line for every part. */
const rowsOf = (plan: JobPlan, { words, own, size }: Spoken, host: Host): readonly (readonly string[])[] =>
  plan.parts.map((p) => [
    paint(host, 'bold', p.name),
    `${p.quantity} x ${p.family.name}`,
    words.blank(size(...p.flat.blank.max)),
    own(massText(p.mass, plan.job.units)),
  ]);

/** A picture of every bend. Its package takes its time to load, so only here. */
async function stepsOf(
  plan: JobPlan,
  inShop: ShopPlan | null,
  host: Host,
  language: Language,
): Promise<readonly OutFile[]> {
  if (inShop === null) return [];
  const { jobStepFiles } = await import('@tinwright/paper');
  return withProgress(host, 'parts with pictures of bends', plan.parts.length, (onProgress) =>
    jobStepFiles(plan, inShop, { language, onProgress }),
  );
}

/** The file that shows most: the assembled object, else the first part. */
const toOpen = (paths: readonly string[]): string =>
  paths.find((p) => p === 'pictures/assembly.svg') ?? paths.find((p) => p.endsWith('.svg')) ?? '';
