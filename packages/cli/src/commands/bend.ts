import { MATERIALS, RULE_KINDS, type Unit } from '@tinwright/core';
import { plainNumber } from '@tinwright/core/internal';
import { type BendAnswer, type LegsTo, readBend } from '../bend/read-bend.js';
import { workingIn } from '../bend/working-in.js';
import { type Host, many, table } from '../host/console.js';
import { EXIT, type ExitCode } from '../host/failure.js';
import {
  type AnyCommand,
  command,
  JSON_OPTION,
  SHEET_OPTIONS,
  SHOP_OPTION,
  UNITS_OPTION,
} from '../line/command.js';
import { fromOptions, given, typedNumber } from '../line/typed.js';
import { shopAsked } from '../open/open-shop.js';
import { givenText, workedText } from '../print/size-text.js';

interface Options {
  readonly units: Unit;
  readonly material: string;
  readonly angle: string;
  readonly rule: string;
  readonly thickness?: string;
  readonly gauge?: string;
  readonly radius?: string;
  readonly k?: string;
  readonly group?: string;
  readonly perRadius?: string;
  readonly perThickness?: string;
  readonly legs?: string;
  readonly legsTo: LegsTo;
  readonly shop?: string;
  readonly json: boolean;
}

export const bend: AnyCommand = command<Options>({
  verb: 'bend',
  summary: 'compute one bend and show the terms',
  options: {
    units: UNITS_OPTION,
    material: {
      type: 'string',
      default: 'mild-steel',
      describe: `one of ${MATERIALS.map((m) => m.name).join(', ')}`,
      values: MATERIALS.map((m) => m.name),
    },
    ...SHEET_OPTIONS,
    angle: { type: 'string', default: '90', describe: 'bent through, degrees' },
    rule: {
      type: 'string',
      default: 'k-factor',
      describe: RULE_KINDS.map((r) => `${r.name}: ${r.summary}`).join('\n'),
      values: RULE_KINDS.map((r) => r.name),
    },
    k: { type: 'string', describe: 'for k-factor' },
    group: {
      type: 'string',
      describe: 'for handbook: soft, medium or hard',
      values: ['soft', 'medium', 'hard'],
    },
    perRadius: { type: 'string', describe: 'for linear' },
    perThickness: { type: 'string', describe: 'for linear' },
    legs: {
      type: 'string',
      describe: 'outside legs with commas: the flat length of a strip with this bend between them',
    },
    'legs-to': {
      type: 'string',
      choices: ['tangent', 'apex'],
      default: 'tangent',
      describe:
        'where legs end at a bend over 90°: outer tangent (DIN 6935), or apex (mould lines by FAA and AC 43.13)',
    },
    shop: SHOP_OPTION,
    json: JSON_OPTION,
  },
  examples: [
    ['$0 bend --thickness 1 --radius 1 --k 0.42', 'allowance, setback and deduction at 90°'],
    ['$0 bend --units in --gauge 20 --radius 1/16 --rule handbook --group medium --legs 2,3', 'in inches'],
  ],
  run,
});

async function run(options: Options, host: Host): Promise<ExitCode> {
  const { json, units, shop } = options;
  const asked = await shopAsked(host, shop, json);
  if ('exit' in asked) return asked.exit;
  const strips = asked.shop?.strips ?? [];
  const read = fromOptions('bend', host, json, () => readBend(request(options), units, strips));
  if ('exit' in read) return read.exit;
  host.out(json ? `${JSON.stringify(jsonAnswer(read.answer), null, 2)}\n` : answerText(read.answer, units));
  return EXIT.done;
}

/** Numbers typed as text become numbers; what is not given is left out. */
function request(o: Options): object {
  return {
    stock: given({ material: o.material, thickness: typedNumber(o.thickness), gauge: typedNumber(o.gauge) }),
    bending: given({
      rule: o.rule,
      insideRadius: typedNumber(o.radius),
      k: typedNumber(o.k),
      group: o.group,
      perRadius: typedNumber(o.perRadius),
      perThickness: typedNumber(o.perThickness),
    }),
    angle: typedNumber(o.angle),
    legsTo: o.legsTo,
    legs: o.legs?.split(',').map((l) => typedNumber(l.trim())) ?? [],
  };
}

function answerText(answer: BendAnswer, units: Unit): string {
  const { bend, rule, terms } = answer;
  const given = (mm: number) => givenText(mm, units);
  const worked = (mm: number) => workedText(mm, units);
  const rows = [
    [
      'bend',
      `${bend.angle}° through, inside radius ${given(bend.insideRadius)}, thickness ${given(bend.thickness)}`,
    ],
    ['rule', `${rule.title} (${terms.source})`],
    ['allowance', worked(terms.allowance)],
    ['setback', worked(terms.setback)],
    ['deduction', worked(terms.deduction)],
    ...flatLengthRow(answer, units),
  ];
  const working = workingIn(units, rule, bend, terms);
  return `${table(rows)}working, ${working.unit}:\n${working.lines.map((line) => `  ${line}\n`).join('')}`;
}

/** The legs less what their bends take off; that is printed as what is missing between the two, so that it adds up. */
function flatLengthRow(
  { legs, flatLength, beyond, bend }: BendAnswer,
  units: Unit,
): readonly (readonly string[])[] {
  if (flatLength === null) return [];
  const given = legs.map((leg) => givenText(leg, units));
  const left = workedText(flatLength, units);
  const off = given.reduce((sum, leg) => sum + Number.parseFloat(leg), -Number.parseFloat(left));
  const taken = `${plainNumber(off, 4)} ${units} for ${many(legs.length - 1, 'bend')}`;
  const past = `${workedText(beyond, units)} past the outer tangent: tan(${bend.angle}°/2) × (R + T) − (R + T); off both legs of a bend with its deduction`;
  return [
    ...(beyond > 0 ? [['to the apex', past]] : []),
    ['flat length', `${given.join(' + ')} less ${taken} = ${left}`],
  ];
}

/** All lengths in mm, whatever unit was asked for. */
function jsonAnswer({ bend, rule, terms, legs, flatLength, material }: BendAnswer): object {
  return { unit: 'mm', ...bend, material: material.name, rule: rule.name, ...terms, legs, flatLength };
}
