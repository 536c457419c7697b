import {
  type BendAnswer,
  formatLength,
  JobError,
  MATERIALS,
  problemText,
  RULE_KINDS,
  readBend,
  type Unit,
} from '@tinwright/core';
import { type Host, table } from '../console.js';
import { EXIT, type ExitCode } from '../failure.js';
import { type AnyCommand, command } from './command.js';

interface Options {
  readonly units: Unit;
  readonly material: string;
  readonly thickness: string | undefined;
  readonly gauge: number | undefined;
  readonly radius: string | undefined;
  readonly angle: number;
  readonly rule: string;
  readonly k: number | undefined;
  readonly group: string | undefined;
  readonly perRadius: number | undefined;
  readonly perThickness: number | undefined;
  readonly legs: string | undefined;
  readonly json: boolean;
}

export const bend: AnyCommand = command<Options>({
  usage: 'bend',
  summary: 'compute one bend and show the terms',
  options: (y) =>
    y
      .option('units', {
        choices: ['mm', 'in'] as const,
        default: 'mm' as const,
        describe: 'for plain numbers and for the answer',
      })
      .option('material', {
        type: 'string',
        default: 'mild-steel',
        describe: `one of ${MATERIALS.map((m) => m.name).join(', ')}`,
      })
      .option('thickness', { type: 'string', describe: 'of the sheet; or give --gauge' })
      .option('gauge', { type: 'number', describe: "in the material's gauge system" })
      .option('radius', { type: 'string', describe: 'inside radius; the thickness when left out' })
      .option('angle', { type: 'number', default: 90, describe: 'bent through, degrees' })
      .option('rule', {
        type: 'string',
        default: 'k-factor',
        describe: RULE_KINDS.map((r) => `${r.name}: ${r.summary}`).join('\n'),
      })
      .option('k', { type: 'number', describe: 'for k-factor' })
      .option('group', { type: 'string', describe: 'for handbook: soft, medium or hard' })
      .option('perRadius', { type: 'number', describe: 'for linear' })
      .option('perThickness', { type: 'number', describe: 'for linear' })
      .option('legs', {
        type: 'string',
        describe: 'outside legs with commas: the flat length of a strip with this bend between them',
      })
      .option('json', { type: 'boolean', default: false, describe: 'print results for a program' }),
  examples: [
    ['$0 bend --thickness 1 --radius 1 --k 0.42', 'allowance, setback and deduction at 90°'],
    ['$0 bend --units in --gauge 20 --radius 1/16 --rule handbook --group medium --legs 2,3', 'in inches'],
  ],
  run,
});

async function run(options: Options, host: Host): Promise<ExitCode> {
  try {
    const answer = readBend(request(options), options.units);
    host.out(
      options.json ? `${JSON.stringify(jsonAnswer(answer), null, 2)}\n` : answerText(answer, options.units),
    );
    return EXIT.done;
  } catch (error) {
    if (!(error instanceof JobError)) throw error;
    for (const p of error.problems) host.err(`bend: ${problemText(p)}\n`);
    return EXIT.unreadable;
  }
}

/** Numbers typed as text stay numbers; what is not given is left out. */
function request(o: Options): object {
  const given = (entries: Record<string, unknown>) =>
    Object.fromEntries(Object.entries(entries).filter(([, v]) => v !== undefined));
  return {
    stock: given({ material: o.material, thickness: length(o.thickness), gauge: o.gauge }),
    bending: given({
      rule: o.rule,
      insideRadius: length(o.radius),
      k: o.k,
      group: o.group,
      perRadius: o.perRadius,
      perThickness: o.perThickness,
    }),
    angle: o.angle,
    legs: o.legs?.split(',').map((l) => length(l.trim())) ?? [],
  };
}

/** A bare number or fraction is in the chosen units, as numbers in a job file are. */
function length(text: string | undefined): string | number | undefined {
  if (text === undefined) return undefined;
  const value = Number(text);
  return text.trim() !== '' && Number.isFinite(value) ? value : text;
}

function answerText({ bend, rule, terms, legs, flatLength }: BendAnswer, units: Unit): string {
  const say = (mm: number) => formatLength(mm, units);
  const rows = [
    [
      'bend',
      `${bend.angle}° through, inside radius ${say(bend.insideRadius)}, thickness ${say(bend.thickness)}`,
    ],
    ['rule', `${rule.title} (${terms.source})`],
    ['allowance', say(terms.allowance)],
    ['setback', say(terms.setback)],
    ['deduction', say(terms.deduction)],
    ...(flatLength === null
      ? []
      : [
          [
            'flat length',
            `${legs.map(say).join(' + ')} less ${legs.length - 1} x deduction = ${say(flatLength)}`,
          ],
        ]),
  ];
  const working = terms.working.map((line) => `  ${line}\n`).join('');
  return `${table(rows)}working, mm:\n${working}`;
}

function jsonAnswer({ bend, rule, terms, legs, flatLength, material }: BendAnswer): object {
  return { ...bend, material: material.name, rule: rule.name, ...terms, legs, flatLength };
}
