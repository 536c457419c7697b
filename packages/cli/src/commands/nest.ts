import { availableParallelism } from 'node:os';
import { join } from 'node:path';
import { type AnyFamily, cite, type Finding, type Unit } from '@tinwright/core';
import type { CutStyle, Nest, NestAsk, NestPart } from '@tinwright/cutting';
import type { CutNest, NestFlat, NestShapes, TableStyle } from '@tinwright/files';
import type { Language } from '@tinwright/words';
import { CONSOLE_WORDS } from '@tinwright/words/internal';
import { type Host, paint, table } from '../host/console.js';
import { EXIT, type ExitCode, refuse, writing } from '../host/failure.js';
import {
  type AnyCommand,
  command,
  DXF_OPTION,
  JSON_OPTION,
  langOption,
  RACK_OPTION,
  SHOP_OPTION,
} from '../line/command.js';
import {
  NEST_OPTIONS,
  type NestNumbers,
  type NestOptions,
  nestNumbers,
  SPACING,
} from '../line/nest-options.js';
import { stockKnown } from '../open/open-rack.js';
import { findingEntries, findingLines, worst } from '../print/findings.js';
import { spoken } from '../print/spoken.js';
import { type CommonCuts, commonCutsOf, drawn, noCommonCuts, torchWorks } from '../stock/common-cuts.js';
import { nestOn } from '../stock/nest-search.js';
import { type JobBlanks, openBlanks, SIZES_OPTION } from '../stock/shear-blanks.js';
import { TABLE_OPTIONS, type TableOptions, tableStyle } from '../stock/table-options.js';

interface Options extends TableOptions, NestOptions {
  readonly job: readonly string[];
  readonly rack?: string;
  readonly shop?: string;
  readonly sizes: boolean;
  readonly out: string;
  readonly lang: Language;
  readonly json: boolean;
}

export const nest: AnyCommand = command<Options>({
  verb: 'nest',
  argument: { name: 'job', describe: 'job file, - for standard input', needed: true, several: true },
  summary: 'lay true shapes on sheets and offcuts, ready to cut',
  options: {
    rack: RACK_OPTION,
    shop: SHOP_OPTION,
    sizes: SIZES_OPTION,
    out: { type: 'string', default: 'nest', describe: 'folder to write, replaced as a whole' },
    ...NEST_OPTIONS,
    dxf: DXF_OPTION,
    ...TABLE_OPTIONS,
    lang: langOption('of findings and answers'),
    json: JSON_OPTION,
  },
  examples: [
    ['$0 nest carrier.yaml --rack rack.yaml --out nest', 'a DXF and an SVG for every sheet'],
    ['$0 nest a.yaml b.yaml --rack rack.yaml --seconds 60 --kerf 1.3', 'two jobs, searched for a minute'],
  ],
  run,
});

async function run(options: Options, host: Host, families: readonly AnyFamily[]): Promise<ExitCode> {
  const { json } = options;
  const no = (message: string) => refuse(host, json, 'usage', 'nest', message);
  const jobs = await openBlanks(host, options.job, families, options);
  if ('exit' in jobs) return jobs.exit;
  const { rack: file } = options;
  const opened = await stockKnown(host, { ...jobs, ...(file !== undefined && { rack: file }), json });
  if (opened === null) return no('--rack FILE is missing: neither job nor shop say what sheets there are');
  if ('exit' in opened) return opened.exit;
  const units = jobs.plans[0]?.job.units ?? 'mm';
  const numbers = nestNumbers(options, units);
  if (typeof numbers === 'string') return no(numbers);
  const table = jobs.shop?.table ?? null;
  const kerf = numbers.kerf ?? (opened.rack.kerf || (table?.kerf ?? 0));
  const limits = { smallestHole: table?.smallestHole ?? 0, kerf, leastEdge: kerf, units };
  const asked = await tableStyle(host, options, limits, json);
  if (typeof asked === 'string') return no(asked);
  if ('exit' in asked) return asked.exit;
  const { parts, flats } = await shapesOf(jobs, asked.style);
  const common = commonCutsOf(options.commonCuts ? 'asked' : 'not-asked', kerf, jobs.plans);
  const spacing = numbers.spacing ?? (common.state === 'on' ? kerf : SPACING);
  const ask = askOf(parts, { ...opened.rack, kerf, offcuts: options.offcuts }, { ...numbers, spacing });
  const refused = await writing(host, json, async () =>
    (await import('../write/files.js')).checkFolder(options.out),
  );
  if (refused !== EXIT.done) return refused;
  const threads = numbers.threads ?? availableParallelism();
  const nested = await nestOn(ask, { ...numbers, threads, words: CONSOLE_WORDS[options.lang] }, host);
  const found = await drawn(nested, parts, common);
  const process = table?.process ?? 'plasma';
  const cut = {
    ...(await cutStyle(numbers, options.lead, kerf, process)),
    order: options.order,
    ...(common.state === 'on' && { commonCuts: common.least }),
  };
  const limited = await tableFindings(jobs);
  const of = { found, parts, flats, cut, style: asked.style, units, jobs, limited, ask, common };
  return write(options, host, of);
}

/** No pieces nearer to each other than the cut is wide, nor to the edge where nothing else is asked. */
const askOf = (
  parts: readonly NestPart[],
  rack: NestAsk['rack'],
  { spacing, edge, turns }: Pick<NestAsk, 'spacing' | 'turns'> & Pick<NestNumbers, 'edge'>,
): NestAsk => ({ parts, rack, spacing: Math.max(spacing, rack.kerf), edge: edge ?? rack.kerf, turns });

/** Outlines to nest, under the names blanks have, and what is marked on them. */
async function shapesOf({ plans, blanks }: JobBlanks, style: TableStyle): Promise<NestShapes> {
  const { nestShapes } = await import('@tinwright/files');
  const named = plans.flatMap((p) => p.parts).map((p, i) => ({ ...p, name: blanks[i]?.part ?? p.name }));
  return nestShapes(named, style);
}

/** What the table of the shop has to say of the parts: holes, gaps and webs it cannot cut or that burn away. */
async function tableFindings({ plans, blanks, shop }: JobBlanks): Promise<readonly Finding[]> {
  if (shop === null || shop.table === null) return [];
  const { SHOP_CHECKS } = await import('@tinwright/shop');
  const checks = SHOP_CHECKS.filter((c) => TABLE_CHECKS.includes(c.code));
  return plans
    .flatMap((p) => p.parts)
    .flatMap((part, i) =>
      checks.flatMap((check) =>
        check.remarks(part, shop).map((remark) => ({ ...remark, part: blanks[i]?.part ?? part.name })),
      ),
    );
}

/** Checks of a shop that are about what a table can cut. */
const TABLE_CHECKS: readonly string[] = [
  'hole-small',
  'hole-under-table',
  'gap-under-kerf',
  'web-narrow',
  'tolerance',
];

async function cutStyle(
  { leadLength, ties, tieWidth }: NestNumbers,
  lead: CutStyle['lead'],
  kerf: number,
  process: 'plasma' | 'laser',
): Promise<CutStyle> {
  const { LEAD_LENGTH } = await import('@tinwright/cutting/internal');
  return { kerf, lead, leadLength: leadLength ?? LEAD_LENGTH[process], ties, tieWidth };
}

interface Found {
  readonly found: Nest;
  readonly parts: readonly NestPart[];
  readonly flats: readonly NestFlat[];
  readonly cut: CutStyle;
  readonly style: TableStyle;
  readonly units: Unit;
  readonly jobs: JobBlanks;
  readonly limited: readonly Finding[];
  readonly ask: NestAsk;
  readonly common: CommonCuts;
}

async function write({ out, json, lang }: Options, host: Host, f: Found): Promise<ExitCode> {
  const [{ verifyNest }, { cutNest, nestFiles }, { writeSet }] = await Promise.all([
    import('@tinwright/cutting'),
    import('@tinwright/files'),
    import('../write/files.js'),
  ]);
  const [flaw] = verifyNest(f.found, f.parts);
  if (flaw !== undefined)
    throw new Error(`a nest with ${flaw.code} on ${flaw.sheet}: ${flaw.pieces.join(', ')}`);
  const bare = cutNest(f.found, f.parts, f.cut);
  await holdCuts(bare, f);
  const work = await torchWorks(bare, f.common, f.jobs.shop?.rates ?? (await usualRates()));
  const cut = work === undefined ? bare : { ...bare, work };
  const findings = [...(await findingsOf(f, cut)), ...(await noCommonCuts(f.common, work))];
  const entries = findingEntries(findings, f.units, lang);
  const failed = await writing(host, json, () => writeSet(out, nestFiles(cut, f.flats, f.style, entries)));
  if (failed !== EXIT.done) return failed;
  if (json) host.out(`${JSON.stringify({ ...answerOf(cut, out), findings: entries }, null, 2)}\n`);
  else tell(host, { out, lang, units: f.units }, cut, findingLines(host, findings, f.units, lang));
  return worst(findings) === 'error' ? EXIT.findings : EXIT.done;
}

/** What was left out, what to know of the cuts, what the table has to say. */
async function findingsOf(
  { found, jobs, ask, cut, limited }: Found,
  { cuts }: CutNest,
): Promise<readonly Finding[]> {
  const { cutFindings, cuttingFinding, leftOutFinding } = await import('@tinwright/cutting/internal');
  const left = found.missing.map(({ part, count, why }) => {
    const blank = jobs.blanks.find((b) => b.part === part) as JobBlanks['blanks'][number];
    const listed = jobs.parts.find((p) => p.part === part);
    const of = { ...blank, count, why, area: listed?.area ?? 0, mass: listed?.mass ?? 0 };
    return leftOutFinding(of, ask.rack.sheets);
  });
  const source = [cite('general-practice')];
  const kerf = cut.kerf > 0 ? [] : [cuttingFinding('kerf-zero', 'warning', null, { values: {}, source })];
  return [...left, ...kerf, ...cutFindings(found.sheets, cuts), ...limited];
}

/** Cuts for two parts at once are verified before anything is written. */
async function holdCuts({ nest: { sheets }, cuts }: CutNest, { parts, cut }: Found): Promise<void> {
  if (cut.commonCuts === undefined) return;
  const { verifyCuts } = await import('@tinwright/cutting');
  for (const [i, sheet] of sheets.entries()) {
    const [flaw] = verifyCuts(sheet, parts, cuts[i]?.contours ?? [], cut.kerf);
    if (flaw !== undefined) throw new Error(`cuts of ${sheet.name} with ${flaw.code}: ${flaw.piece}`);
  }
}

const usualRates = async () => (await import('@tinwright/shop')).DEFAULT_SHOP.rates;

const answerOf = ({ nest: { sheets, missing }, work }: CutNest, out: string) => ({
  out,
  sheets: sheets.map((s, i) => ({
    name: s.name,
    pieces: s.pieces.length,
    density: Number(s.density.toFixed(4)),
    usedTo: s.usedTo,
    ...(work !== undefined && { cut: work[i] }),
  })),
  missing,
});

interface Telling {
  readonly out: string;
  readonly lang: Language;
  readonly units: Unit;
}

function tell(
  host: Host,
  { out, lang, units }: Telling,
  { nest: { sheets }, work = [] }: CutNest,
  lines: readonly string[],
): void {
  const { words, percent, size, minutes } = spoken(lang, units);
  const rows = sheets.map((s) => [
    paint(host, 'bold', s.name),
    words.parts(s.pieces.length),
    words.ofSheet(percent(s.density)),
    words.upTo(size(s.usedTo), size(s.stock.x)),
  ]);
  if (rows.length > 0) host.out(table(rows));
  work.forEach((w, i) => {
    const [length, spared] = [w.length, w.spared].map((l) => size(l)) as [string, string];
    host.out(`${sheets[i]?.name}: ${words.torch({ ...w, length, spared, minutes: minutes(w.minutes) })}\n`);
  });
  for (const line of lines) host.out(`${line}\n`);
  host.out(`${words.sheetsIn(sheets.length, join(out, 'nests'))}\n`);
}
