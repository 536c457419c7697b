import { type AnyFamily, parseLength, type Unit } from '@tinwright/core';
import type { Medium, Paper } from '@tinwright/paper';
import type { Language } from '@tinwright/words';
import type { DimsName } from '@tinwright/words/internal';
import type { Host } from '../host/console.js';
import { type ExitCode, refuse } from '../host/failure.js';
import { type AnyCommand, command, JOB, JSON_OPTION, langOption, SHOP_OPTION } from '../line/command.js';
import { MEASURED_OPTION } from '../line/measured.js';
import { chosenParts } from '../open/chosen-parts.js';
import { SIZE_OPTION } from '../open/in-size.js';
import { openMeasured } from '../open/open-measured.js';
import { makingIn } from '../open/open-shop.js';
import { sizeText } from '../print/size-text.js';
import { spareFile } from '../write/spare-file.js';
import { DIMS_OPTION, drawing, PAPER_OPTION } from './drawing.js';

interface Options {
  readonly job: string;
  readonly part?: string;
  readonly paper?: string;
  readonly roll?: string;
  readonly dims?: DimsName;
  readonly out: string;
  readonly measured: readonly string[];
  readonly shop?: string;
  readonly lang: Language;
  readonly size?: string;
  readonly json: boolean;
}

const [NARROWEST, WIDEST] = [150, 2000]; // mm of a roll

export const template: AnyCommand = command<Options>({
  verb: 'template',
  argument: JOB,
  summary: 'draw patterns at full size, to lay on the metal',
  options: {
    part: { type: 'string', describe: 'only this part' },
    paper: { ...PAPER_OPTION, describe: 'cut into tiles for it; A4, or letter for a job in inches' },
    roll: { type: 'string', describe: 'or on a roll so wide, plotter paper: 610, 24 in' },
    dims: DIMS_OPTION,
    out: { type: 'string', default: 'out', describe: 'folder to write templates into, PDF' },
    measured: MEASURED_OPTION,
    size: SIZE_OPTION,
    shop: SHOP_OPTION,
    lang: langOption('of the templates'),
    json: JSON_OPTION,
  },
  examples: [
    ['$0 template carrier.yaml --paper A3', 'tiles to glue together, with a map of them'],
    ['$0 template carrier.yaml --roll "24 in"', 'in one piece from a roll'],
  ],
  run,
});

async function run(options: Options, host: Host, families: readonly AnyFamily[]): Promise<ExitCode> {
  const { json, out } = options;
  const opened = await openMeasured(host, families, { ...options, verb: 'template' });
  if ('exit' in opened) return opened.exit;
  const { units } = opened.plan.job;
  const parts = chosenParts(opened.plan, options.part);
  if (typeof parts === 'string') return refuse(host, json, 'part-unknown', 'template', parts);
  const { PAPERS, templateFiles } = await import('@tinwright/paper');
  const medium = mediumOf(options, units, PAPERS);
  if (typeof medium === 'string') return refuse(host, json, 'usage', 'template', medium);
  const { dims = units, lang: language } = options;
  const draw = async () => {
    const making = opened.shop === null ? null : await makingIn(host, opened.plan, opened.shop);
    return templateFiles(opened.plan, parts, { dims, medium, language }, spareFile, making);
  };
  const of = options.part === undefined ? 'all parts' : 'some parts';
  return drawing({ verb: 'template', out, plan: opened.plan, list: 'templates.json', of }, host, json, draw);
}

/** What to print on, or a sentence about what cannot be. */
function mediumOf({ paper, roll }: Options, units: Unit, papers: readonly Paper[]): Medium | string {
  if (roll === undefined) {
    const name = paper ?? (units === 'in' ? 'letter' : 'A4');
    const found = papers.find((p) => p.name === name) as Paper;
    return { kind: 'sheets', width: found.width, height: found.height };
  }
  if (paper !== undefined) return '--paper and --roll given; one of the two allowed';
  const value = Number(roll);
  const width = parseLength(Number.isFinite(value) && roll.trim() !== '' ? value : roll, units);
  if (!width.ok) return `--roll: ${width.why}`;
  const said = (mm: number) => sizeText(mm, units);
  if (!(width.mm >= NARROWEST && width.mm <= WIDEST))
    return `--roll: ${said(width.mm)} ${units} given, ${said(NARROWEST)} to ${said(WIDEST)} ${units} allowed`;
  return { kind: 'roll', width: width.mm };
}
