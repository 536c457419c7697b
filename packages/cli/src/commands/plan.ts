import type { AnyFamily, ToleranceClass } from '@tinwright/core';
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
import { spareFile } from '../write/spare-file.js';
import { DIMS_OPTION, drawing, PAPER_OPTION } from './drawing.js';

interface Options {
  readonly job: string;
  readonly part?: string;
  readonly paper?: string;
  readonly dims?: DimsName;
  readonly scale?: string;
  readonly tolerance: ToleranceClass;
  readonly date?: string;
  readonly marking: 'program' | 'all' | 'none';
  readonly out: string;
  readonly measured: readonly string[];
  readonly shop?: string;
  readonly lang: Language;
  readonly size?: string;
  readonly json: boolean;
}

export const plan: AnyCommand = command<Options>({
  verb: 'plan',
  argument: JOB,
  summary: 'draw plans to mark out and bend by hand',
  options: {
    part: { type: 'string', describe: 'only this part' },
    paper: PAPER_OPTION,
    dims: DIMS_OPTION,
    scale: {
      type: 'string',
      choices: ['10:1', '5:1', '2:1', '1:1', '1:2', '1:3', '1:4', '1:5', '1:10', '1:20', '1:50', '1:100'],
      describe: 'of the pattern; the largest that fits when left out',
    },
    tolerance: {
      type: 'string',
      choices: ['f', 'm', 'c', 'v'],
      default: 'm',
      describe: 'class of ISO 2768-1 that marking is held to: fine, medium, coarse, very coarse',
    },
    marking: {
      type: 'string',
      choices: ['program', 'all', 'none'],
      default: 'program',
      describe: 'how marking out is told: settings of rule and square, all coordinates, or not at all',
    },
    date: { type: 'string', describe: 'printed in the title block as it is' },
    out: { type: 'string', default: 'out', describe: 'folder to write plans into, PDF and SVG' },
    measured: MEASURED_OPTION,
    size: SIZE_OPTION,
    shop: SHOP_OPTION,
    lang: langOption('of the plans'),
    json: JSON_OPTION,
  },
  examples: [
    ['$0 plan carrier.yaml --paper A3', 'a plan of every part, on as many sheets as it takes'],
    ['$0 plan carrier.yaml --part body --dims 1/16', 'one part, sizes to the nearest sixteenth'],
  ],
  run,
});

async function run(options: Options, host: Host, families: readonly AnyFamily[]): Promise<ExitCode> {
  const { json, out } = options;
  const opened = await openMeasured(host, families, { ...options, verb: 'plan' });
  if ('exit' in opened) return opened.exit;
  const parts = chosenParts(opened.plan, options.part);
  if (typeof parts === 'string') return refuse(host, json, 'part-unknown', 'plan', parts);
  const { units } = opened.plan.job;
  const {
    dims = units,
    paper = units === 'in' ? 'letter' : 'A4',
    scale,
    tolerance,
    date,
    lang: language,
  } = options;
  const draw = async () => {
    const { planFiles } = await import('@tinwright/paper');
    const { marking } = options;
    const asked = {
      paper,
      dims,
      tolerance,
      marking,
      language,
      ...(scale && { scale }),
      ...(date && { date }),
    };
    const making = opened.shop === null ? null : await makingIn(host, opened.plan, opened.shop);
    return planFiles(opened.plan, parts, asked, spareFile, making);
  };
  const of = options.part === undefined ? 'all parts' : 'some parts';
  return drawing({ verb: 'plan', out, plan: opened.plan, list: 'plans.json', of }, host, json, draw);
}
