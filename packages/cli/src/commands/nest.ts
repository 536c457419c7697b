import { availableParallelism } from 'node:os';
import { join } from 'node:path';
import { type AnyFamily, plainNumber, sayIn, type Unit } from '@tinwright/core';
import type {
  CutRemark,
  CutStyle,
  Nest,
  NestAsk,
  NestMissing,
  NestPart,
  SheetCuts,
} from '@tinwright/cutting';
import type { NestFlat, TableStyle } from '@tinwright/files';
import { type Host, many, paint, table } from '../console.js';
import { EXIT, type ExitCode, refuse, writing } from '../failure.js';
import { NEST_OPTIONS, type NestNumbers, type NestOptions, nestNumbers } from '../nest-options.js';
import { nestOn } from '../nest-search.js';
import { openRack } from '../open-rack.js';
import { type JobBlanks, openBlanks } from '../shear-blanks.js';
import { TABLE_OPTIONS, type TableOptions, tableStyle } from '../table-options.js';
import { type AnyCommand, command, DXF_OPTION, JSON_OPTION, SHOP_OPTION } from './command.js';

interface Options extends TableOptions, NestOptions {
  readonly job: readonly string[];
  readonly rack?: string;
  readonly shop?: string;
  readonly out: string;
  readonly json: boolean;
}

export const nest: AnyCommand = command<Options>({
  verb: 'nest',
  argument: { name: 'job', describe: 'job file, - for standard input', needed: true, several: true },
  summary: 'lay true shapes on sheets and offcuts, ready to cut',
  options: {
    rack: { type: 'string', describe: 'file of sheets and offcuts' },
    shop: SHOP_OPTION,
    out: { type: 'string', default: 'nest', describe: 'folder to write, replaced as a whole' },
    ...NEST_OPTIONS,
    dxf: DXF_OPTION,
    ...TABLE_OPTIONS,
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
  if (options.rack === undefined) return no('--rack FILE is missing: the sheets and offcuts to nest on');
  const jobs = await openBlanks(host, options.job, json, families, options.shop);
  if ('exit' in jobs) return jobs.exit;
  const opened = await openRack(host, options.rack, json);
  if ('exit' in opened) return opened.exit;
  const units = jobs.plans[0]?.job.units ?? 'mm';
  const numbers = nestNumbers(options, units);
  if (typeof numbers === 'string') return no(numbers);
  const asked = await tableStyle(host, options, jobs.shop?.table?.smallestHole ?? 0, json);
  if ('exit' in asked) return asked.exit;
  const { parts, flats } = shapesOf(jobs);
  const kerf = numbers.kerf ?? opened.rack.kerf;
  const ask: NestAsk = {
    parts,
    rack: { ...opened.rack, kerf },
    spacing: Math.max(numbers.spacing, kerf),
    edge: numbers.edge ?? kerf,
    turns: numbers.turns,
  };
  const found = await nestOn(ask, { ...numbers, threads: numbers.threads ?? availableParallelism() }, host);
  const cut = cutStyle(numbers, options.lead, kerf, jobs.shop?.table?.process ?? 'plasma');
  return write(options, host, { found, parts, flats, cut, style: asked.style, units });
}

/** Outlines to nest, under the names blanks have, and what is marked on them. */
function shapesOf({ plans, blanks }: JobBlanks): { parts: readonly NestPart[]; flats: readonly NestFlat[] } {
  const planned = plans.flatMap((p) => p.parts);
  const parts = planned.map(({ flat }, i): NestPart => {
    const { part, material, thickness, quantity, grain } = blanks[i] as JobBlanks['blanks'][number];
    return { part, material, thickness, quantity, grain, outline: flat.outline, holes: flat.holes };
  });
  return { parts, flats: planned.map(({ flat }, i) => ({ part: parts[i]?.part ?? '', flat })) };
}

function cutStyle(
  n: NestNumbers,
  lead: CutStyle['lead'],
  kerf: number,
  process: 'plasma' | 'laser',
): CutStyle {
  const usual = process === 'laser' ? 2 : 4;
  return { kerf, lead, leadLength: n.leadLength ?? usual, ties: n.ties, tieWidth: n.tieWidth };
}

interface Found {
  readonly found: Nest;
  readonly parts: readonly NestPart[];
  readonly flats: readonly NestFlat[];
  readonly cut: CutStyle;
  readonly style: TableStyle;
  readonly units: Unit;
}

async function write({ out, json }: Options, host: Host, f: Found): Promise<ExitCode> {
  const [{ verifyNest }, { cutNest, nestFiles }, { writeSet }] = await Promise.all([
    import('@tinwright/cutting'),
    import('@tinwright/files'),
    import('../files.js'),
  ]);
  const [flaw] = verifyNest(f.found, f.parts);
  if (flaw !== undefined)
    throw new Error(`a nest with ${flaw.code} on ${flaw.sheet}: ${flaw.pieces.join(', ')}`);
  const cut = cutNest(f.found, f.parts, f.cut);
  const failed = await writing(host, json, () => writeSet(out, nestFiles(cut, f.flats, f.style)));
  if (failed !== EXIT.done) return failed;
  const remarks = cut.cuts.flatMap((c, i) => remarksOf(c, f.found.sheets[i]?.name ?? '', f.units));
  const lines = [...missingLines(f.found.missing), ...(f.cut.kerf === 0 ? [NO_KERF] : []), ...remarks];
  if (json) host.out(`${JSON.stringify(answerOf(f.found, out, lines), null, 2)}\n`);
  else tell(host, out, f.found, lines);
  return f.found.missing.length > 0 ? EXIT.findings : EXIT.done;
}

const NO_KERF =
  'The kerf is 0: paths run on the drawn lines, and parts come out smaller unless the table makes up for its cut.';

const answerOf = ({ sheets, missing }: Nest, out: string, remarks: readonly string[]) => ({
  out,
  sheets: sheets.map((s) => ({
    name: s.name,
    pieces: s.pieces.length,
    density: Number(s.density.toFixed(4)),
    usedTo: s.usedTo,
  })),
  missing,
  remarks,
});

function tell(host: Host, out: string, { sheets }: Nest, lines: readonly string[]): void {
  const rows = sheets.map((s) => [
    paint(host, 'bold', s.name),
    many(s.pieces.length, 'part'),
    `${plainNumber(s.density * 100, 1)} % of the sheet`,
    `up to ${plainNumber(s.usedTo, 1)} of ${plainNumber(s.stock.x, 1)} mm`,
  ]);
  if (rows.length > 0) host.out(table(rows));
  for (const line of lines) host.out(`${line}\n`);
  host.out(`${many(sheets.length, 'sheet')} in ${join(out, 'nests')}.\n`);
}

const WHY: Readonly<Record<NestMissing['why'], string>> = {
  'too-large': 'larger than every sheet of its metal',
  'no-metal': 'no sheet of its metal in the rack',
  'stock-short': 'no room was left on the stock',
  grain: 'too large for the sheets along the grain it asks for',
};

const missingLines = (missing: readonly NestMissing[]) =>
  missing.map(({ part, count, why }) => `${count} x ${part} not nested: ${WHY[why]}.`);

const remarksOf = ({ remarks }: SheetCuts, sheet: string, units: Unit): readonly string[] =>
  remarks.map((r) => {
    const place = r.at.map((v) => plainNumber(v, 1)).join(', ');
    return `${sheet}, ${r.piece} at ${place} mm: ${saidOf(r, sayIn(units).size)}.`;
  });

function saidOf({ code, value, limit }: CutRemark, size: (mm: number) => string): string {
  switch (code) {
    case 'edge-short':
      return `an edge of ${size(value)} is shorter than the cut of ${size(limit)} is wide, its corners come out round`;
    case 'slot-closes':
      return `narrower than the cut of ${size(limit)}, the path leaves it out`;
    case 'hole-closes':
      return `a hole of ${size(value)} is not cut, the cut is ${size(limit)} wide`;
    case 'lead-short':
      return `the way in is ${size(value)} instead of ${size(limit)}`;
    case 'lead-none':
      return 'no room for a way in';
  }
}
