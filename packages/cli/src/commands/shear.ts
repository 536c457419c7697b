import { type AnyFamily, JobError, problemText } from '@tinwright/core';
import type { Rack, ShearPlan } from '@tinwright/cutting';
import type { Language } from '@tinwright/words';
import type { DimsName } from '@tinwright/words/internal';
import type { Host } from '../host/console.js';
import { EXIT, type ExitCode, refuse, writing } from '../host/failure.js';
import {
  type AnyCommand,
  command,
  JSON_OPTION,
  langOption,
  RACK_OPTION,
  SHOP_OPTION,
} from '../line/command.js';
import { type OpenRack, stockKnown } from '../open/open-rack.js';
import { STANDARD_INPUT } from '../open/open-text.js';
import { tellShear } from '../print/shear-text.js';
import { leftOut } from '../stock/left-out.js';
import { type JobBlanks, openBlanks, SIZES_OPTION } from '../stock/shear-blanks.js';
import { coverFor, shearEffort, watchedEffort } from '../stock/shear-effort.js';
import { spareFile } from '../write/spare-file.js';
import { DIMS_OPTION, PAPER_OPTION } from './drawing.js';

interface Options {
  readonly job: readonly string[];
  readonly rack?: string;
  readonly shop?: string;
  readonly sizes: boolean;
  readonly out: string;
  readonly seed: string;
  readonly steps?: string;
  readonly seconds?: string;
  readonly offcuts: 'first' | 'free' | 'at-cost';
  readonly 'keep-offcuts': boolean;
  readonly paper?: string;
  readonly dims?: DimsName;
  readonly lang: Language;
  readonly json: boolean;
}

export const shear: AnyCommand = command<Options>({
  verb: 'shear',
  argument: { name: 'job', describe: 'job file, - for standard input', needed: true, several: true },
  summary: 'plan the cuts from sheets and offcuts to blanks, of one job or several',
  options: {
    rack: RACK_OPTION,
    shop: SHOP_OPTION,
    sizes: SIZES_OPTION,
    out: { type: 'string', default: 'shear', describe: 'folder to write, replaced as a whole' },
    seed: { type: 'string', default: '1', describe: 'another number searches in another order' },
    steps: { type: 'string', describe: 'steps of the search at most; a second takes about 150,000' },
    seconds: { type: 'string', describe: 'time for the search at most; plans then differ by machine' },
    offcuts: {
      type: 'string',
      choices: ['first', 'free', 'at-cost'],
      default: 'free',
      describe: 'offcuts before sheets, wherever that saves sheet, or only where it is cheaper',
    },
    'keep-offcuts': {
      type: 'boolean',
      default: false,
      describe: 'take what is cut out of the rack file and put the offcuts in',
    },
    paper: PAPER_OPTION,
    dims: DIMS_OPTION,
    lang: langOption('of pages and answers'),
    json: JSON_OPTION,
  },
  examples: [
    ['$0 shear carrier.yaml --rack rack.yaml --out shear', 'diagrams, cuts in order, cut list'],
    ['$0 shear carrier.yaml bins.yaml --rack rack.yaml --keep-offcuts', 'two jobs from the same sheets'],
    ['$0 shear tray.yaml --sizes', 'every size of a job together'],
  ],
  run,
});

async function run(options: Options, host: Host, families: readonly AnyFamily[]): Promise<ExitCode> {
  const { json, rack: file } = options;
  const no = (message: string) => refuse(host, json, 'usage', 'shear', message);
  const effort = await shearEffort(options);
  if (typeof effort === 'string') return no(effort);
  if (options['keep-offcuts'] && (file === undefined || file === STANDARD_INPUT))
    return no('--keep-offcuts is for --rack FILE');
  const jobs = await openBlanks(host, options.job, families, options);
  if ('exit' in jobs) return jobs.exit;
  const opened = await stockFor(jobs, options, host);
  if ('exit' in opened) return opened.exit;
  const { shearAbility } = await import('@tinwright/files/internal');
  const { limits, reach } = shearAbility(jobs.shop, jobs.plans);
  const { planShear, verifyShearPlan } = await import('@tinwright/cutting');
  const { piecesProblem, stockProblems } = await import('@tinwright/cutting/internal');
  const units = jobs.plans[0]?.job.units ?? 'mm';
  const many = piecesProblem(jobs.blanks);
  const problems = [
    ...stockProblems(jobs.blanks, opened.rack, reach, units),
    ...(many === null ? [] : [many]),
  ];
  if (problems.length > 0) return refused(host, json, new JobError(problems));
  const refusal = await writing(host, json, async () =>
    (await import('../write/files.js')).checkFolder(options.out),
  );
  if (refusal !== EXIT.done) return refusal;
  const { watched, end } = await watchedEffort(host, effort);
  const cover = await coverFor(jobs);
  const plans = planShear(jobs.blanks, opened.rack, limits, { ...watched, ...cover });
  end();
  const flaws = plans.flatMap((plan) => {
    const own = jobs.blanks.filter((b) => b.material === plan.material && b.thickness === plan.thickness);
    return verifyShearPlan(plan, own, limits);
  });
  const [flaw] = flaws;
  if (flaw !== undefined) throw new Error(`a shear plan with ${flaw.code}: ${flaw.what}`);
  const failed = await writing(host, json, () => write(options, jobs, opened, plans));
  if (failed !== EXIT.done) return failed;
  const findings = await leftOut(plans, jobs, opened.rack);
  tellShear(host, { ...options, units, usual: opened.usual }, plans, findings);
  return findings.length > 0 ? EXIT.findings : EXIT.done;
}

interface ShearStock extends OpenRack {
  /** Sheets that nobody said are there. */
  readonly usual: Rack['sheets'];
}

/** Where nobody says what stock there is, sheets of the usual sizes, as many as needed. */
async function stockFor(
  jobs: JobBlanks,
  { rack, json, offcuts }: Options,
  host: Host,
): Promise<ShearStock | { readonly exit: ExitCode }> {
  const known = await stockKnown(host, { ...jobs, ...(rack !== undefined && { rack }), json });
  if (known !== null && 'exit' in known) return known;
  const { rack: found, bytes } = known ?? { rack: await usualRack(jobs), bytes: null };
  return { rack: { ...found, offcuts }, bytes, usual: known === null ? found.sheets : [] };
}

async function usualRack({ blanks }: JobBlanks): Promise<Rack> {
  const [{ DEFAULT_SHOP }, { shopRack }] = await Promise.all([
    import('@tinwright/shop'),
    import('@tinwright/files/internal'),
  ]);
  return shopRack(DEFAULT_SHOP, blanks);
}

function refused(host: Host, json: boolean, { problems }: JobError): ExitCode {
  if (json) host.out(`${JSON.stringify({ problems: problems.map((p) => ({ ...p, path: '' })) }, null, 2)}\n`);
  else for (const p of problems) host.err(`shear: ${problemText(p)}\n`);
  return EXIT.unreadable;
}

/** The set, and the rack file changed with it or not at all. */
async function write(
  { rack: file, out, paper, dims, lang, 'keep-offcuts': keep }: Options,
  { plans: jobs, parts, shop }: JobBlanks,
  { bytes }: OpenRack,
  plans: readonly ShearPlan[],
): Promise<void> {
  const [{ shearFiles }, { cutWork }, { DEFAULT_SHOP }, { writeSet }] = await Promise.all([
    import('@tinwright/paper'),
    import('@tinwright/files/internal'),
    import('@tinwright/shop'),
    import('../write/files.js'),
  ]);
  const units = jobs[0]?.job.units ?? 'mm';
  const names = jobs.map((j) => j.job.name).filter((n) => n !== '');
  const job = [...new Set(names)].join(', ');
  const files = await shearFiles(
    cutWork(jobs, { plans, parts }, (shop ?? DEFAULT_SHOP).rates),
    { job, units, paper: paper ?? (units === 'in' ? 'letter' : 'A4'), dims: dims ?? units, language: lang },
    spareFile,
  );
  const set = () => writeSet(out, files);
  if (!keep || file === undefined || bytes === null) return set();
  await (await import('../stock/cut-rack.js')).cutRack({ file, bytes, job }, plans, set);
}
