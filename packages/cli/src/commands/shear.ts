import { join } from 'node:path';
import { type AnyFamily, type Finding, JobError, problemText } from '@tinwright/core';
import type { Blank, Progress, Rack, ShearEffort, ShearPlan, Short } from '@tinwright/cutting';
import type { Language } from '@tinwright/words';
import type { DimsName } from '@tinwright/words/internal';
import { type Host, paint, table } from '../host/console.js';
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
import { findingEntries, findingLines } from '../print/findings.js';
import { spoken } from '../print/spoken.js';
import { type JobBlanks, openBlanks } from '../stock/shear-blanks.js';
import { spareFile } from '../write/spare-file.js';
import { DIMS_OPTION, PAPER_OPTION } from './drawing.js';

interface Options {
  readonly job: readonly string[];
  readonly rack?: string;
  readonly shop?: string;
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

const MOST_STEPS = 100_000_000;
const MOST_SECONDS = 86_400;
const LARGEST_SEED = 2 ** 31;

export const shear: AnyCommand = command<Options>({
  verb: 'shear',
  argument: { name: 'job', describe: 'job file, - for standard input', needed: true, several: true },
  summary: 'plan the cuts from sheets and offcuts to blanks, of one job or several',
  options: {
    rack: RACK_OPTION,
    shop: SHOP_OPTION,
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
  ],
  run,
});

async function run(options: Options, host: Host, families: readonly AnyFamily[]): Promise<ExitCode> {
  const { json, rack: file } = options;
  const no = (message: string) => refuse(host, json, 'usage', 'shear', message);
  const effort = await effortOf(options);
  if (typeof effort === 'string') return no(effort);
  if (options['keep-offcuts'] && file === undefined) return no('--keep-offcuts is for --rack FILE');
  const jobs = await openBlanks(host, options.job, json, families, options.shop);
  if ('exit' in jobs) return jobs.exit;
  const opened = await stockFor(jobs, options, host);
  if ('exit' in opened) return opened.exit;
  const { shearAbility } = await import('@tinwright/files/internal');
  const { limits, reach } = shearAbility(jobs.shop);
  const { planShear, verifyShearPlan } = await import('@tinwright/cutting');
  const { stockProblems } = await import('@tinwright/cutting/internal');
  const units = jobs.plans[0]?.job.units ?? 'mm';
  const problems = stockProblems(jobs.blanks, opened.rack, reach, units);
  if (problems.length > 0) return refused(host, json, new JobError(problems));
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
  tell(host, options, jobs, plans, findings);
  return findings.length > 0 ? EXIT.findings : EXIT.done;
}

/** Steps and seed as they were given, or a sentence about what cannot be. */
async function effortOf({ seed, steps, seconds }: Options): Promise<ShearEffort | string> {
  const { SHEAR_EFFORT } = await import('@tinwright/cutting');
  const whole = (name: string, text: string, most: number) => {
    const n = Number(text);
    const fine = /^\d+$/.test(text) && n <= most;
    return fine ? n : `--${name}: ${text} given, a whole number from 0 to ${most} allowed`;
  };
  const read = [
    whole('seed', seed, LARGEST_SEED),
    steps === undefined ? SHEAR_EFFORT.steps.sheets : whole('steps', steps, MOST_STEPS),
  ];
  const wrong = read.find((v) => typeof v === 'string');
  if (typeof wrong === 'string') return wrong;
  const [own, most] = read as [number, number];
  const time = seconds === undefined ? Number.POSITIVE_INFINITY : Number(seconds);
  if (!(time >= 0) || (time > MOST_SECONDS && seconds !== undefined))
    return `--seconds: ${seconds} given, 0 to ${MOST_SECONDS} allowed`;
  const offcut = Math.min(most, SHEAR_EFFORT.steps.offcut);
  const neat = Math.min(most, SHEAR_EFFORT.steps.neat);
  return { seed: own, steps: { sheets: most, offcut, neat }, enough: within(time) };
}

/** Pieces from which on a linear programme is worth loading. */
const MANY_PIECES = 60;

async function coverFor({ blanks }: JobBlanks): Promise<Pick<ShearEffort, 'cover'>> {
  if (blanks.reduce((sum, b) => sum + b.quantity, 0) < MANY_PIECES) return {};
  const { loadCoverSolver } = await import('../stock/cover-solver.js');
  return { cover: await loadCoverSolver() };
}

/** The effort with a sign of how far it is; a metal after the other starts anew. */
async function watchedEffort(host: Host, effort: ShearEffort) {
  const { sheets, offcut, neat } = effort.steps;
  const bar = await host.progress?.('shear', sheets + offcut + neat);
  const enough = (at: Progress) => {
    bar?.to(at.steps);
    return effort.enough(at);
  };
  return { watched: { ...effort, enough }, end: () => bar?.end() };
}

/** Shares of the time after which each goal gives way to the next. */
const SHARES = { sheets: 0.7, offcut: 0.85, neat: 1 } as const;

function within(seconds: number): (at: Progress) => boolean {
  const start = Date.now();
  return ({ stage }) => (Date.now() - start) / 1000 >= seconds * SHARES[stage];
}

/** Where nobody says what stock there is, sheets of the usual sizes, as many as needed. */
async function stockFor(
  jobs: JobBlanks,
  { rack, json, offcuts }: Options,
  host: Host,
): Promise<OpenRack | { readonly exit: ExitCode }> {
  const known = await stockKnown(host, { ...jobs, ...(rack !== undefined && { rack }), json });
  if (known !== null && 'exit' in known) return known;
  const { rack: found, bytes } = known ?? { rack: await usualRack(jobs), bytes: null };
  return { rack: { ...found, offcuts }, bytes };
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
  const job = jobs
    .map((j) => j.job.name)
    .filter((n) => n !== '')
    .join(', ');
  const files = await shearFiles(
    cutWork(jobs, { plans, parts }, (shop ?? DEFAULT_SHOP).rates),
    { job, units, paper: paper ?? (units === 'in' ? 'letter' : 'A4'), dims: dims ?? units, language: lang },
    spareFile,
  );
  const set = () => writeSet(out, files);
  if (!keep || file === undefined || bytes === null) return set();
  await (await import('../stock/cut-rack.js')).cutRack({ file, bytes, job }, plans, set);
}

function tell(
  host: Host,
  { out, json, lang }: Options,
  jobs: JobBlanks,
  plans: readonly ShearPlan[],
  findings: readonly Finding[],
): void {
  const units = jobs.plans[0]?.job.units ?? 'mm';
  const sheets = plans.flatMap((p) => p.sheets);
  const area = (list: readonly { readonly w: number; readonly h: number }[]) =>
    list.reduce((sum, { w, h }) => sum + w * h, 0);
  const whole = sheets.reduce((sum, { stock }) => sum + stock.x * stock.y, 0);
  const used = sheets.reduce((sum, s) => sum + area(s.parts), 0);
  const kept = sheets.reduce((sum, s) => sum + area(s.offcuts), 0);
  const sum = (of: (p: ShearPlan) => number) => plans.reduce((t, p) => t + of(p), 0);
  const share = (a: number) => (whole === 0 ? 0 : Number((a / whole).toFixed(4)));
  const answer = {
    sheets: sheets.length,
    used: share(used),
    offcuts: share(kept),
    waste: share(whole - used - kept),
    cuts: sum((p) => p.steps.length),
    settings: sum((p) => p.settings),
    cost: sum((p) => p.cost),
    bound: sum((p) => p.bound),
    missing: findings.map((f) => ({ part: f.part, ...shortOf(f) })),
    findings: findingEntries(findings, units, lang),
  };
  if (json) {
    host.out(`${JSON.stringify({ out, ...answer }, null, 2)}\n`);
    return;
  }
  const { words, percent, size } = spoken(lang, units);
  const rows = sheets.map(({ stock, parts, offcuts: [largest] }, i) => [
    paint(host, 'bold', words.sheet(i + 1)),
    stock.name,
    words.blanks(parts.length),
    words.used(percent(area(parts) / (stock.x * stock.y))),
    largest === undefined ? words.noOffcut : words.offcut(size(largest.w, largest.h)),
  ]);
  if (rows.length > 0) host.out(table(rows));
  host.out(`${words.cuts(answer.cuts, answer.settings)} ${words.open(join(out, 'shear.pdf'))}\n`);
  for (const line of findingLines(host, findings, units, lang)) host.out(`${line}\n`);
}

/** What is missing, for programs: pieces, kg of parts, sheets of the nearest kind by area alone. */
function shortOf({ values }: Finding) {
  const { count, kg, sheets, of } = values as Short;
  return { count, kg, sheets, of: of?.name ?? '' };
}

/** What no sheet was left for. */
async function leftOut(
  plans: readonly ShearPlan[],
  { blanks, parts }: JobBlanks,
  rack: Rack,
): Promise<readonly Finding[]> {
  const { leftOutFinding } = await import('@tinwright/cutting/internal');
  return plans.flatMap((plan) =>
    plan.missing.map(({ part, count }) => {
      const blank = blanks.find((b) => b.part === part) as Blank;
      const mass = parts.find((p) => p.part === part)?.mass ?? 0;
      const left = { ...blank, count, mass, area: blank.x * blank.y, why: 'stock-short' as const };
      return leftOutFinding(left, rack.sheets);
    }),
  );
}
