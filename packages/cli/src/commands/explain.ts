import { type AnyFamily, type BlankDimension, explainBlank, type PartPlan, type Unit } from '@tinwright/core';
import { plainNumber } from '@tinwright/core/internal';
import { materialName } from '@tinwright/words/internal';
import { workingIn } from '../bend/working-in.js';
import { type Host, paint, table } from '../host/console.js';
import { EXIT, type ExitCode, refuse } from '../host/failure.js';
import { type AnyCommand, command, JOB, JSON_OPTION, SHOP_OPTION } from '../line/command.js';
import { chosenParts } from '../open/chosen-parts.js';
import { SIZE_OPTION } from '../open/in-size.js';
import { openJob } from '../open/open-job.js';
import { columnOf, givenText, workedText } from '../print/size-text.js';

interface Options {
  readonly job: string;
  readonly part: string | undefined;
  readonly shop?: string;
  readonly size?: string;
  readonly json: boolean;
}

export const explain: AnyCommand = command<Options>({
  verb: 'explain',
  argument: JOB,
  summary: 'say why each blank is as large as it is',
  options: {
    part: { type: 'string', describe: 'only this part' },
    size: SIZE_OPTION,
    shop: SHOP_OPTION,
    json: JSON_OPTION,
  },
  examples: [['$0 explain carrier.yaml --part body', 'legs, bend deductions, rule and source']],
  run,
});

async function run(
  { job, part, shop, size, json }: Options,
  host: Host,
  families: readonly AnyFamily[],
): Promise<ExitCode> {
  const opened = await openJob(host, job, json, families, { shop, size });
  if ('exit' in opened) return opened.exit;
  const chosen = chosenParts(opened.plan, part);
  if (typeof chosen === 'string') return refuse(host, json, 'part-unknown', 'explain', chosen);
  if (json)
    host.out(
      `${JSON.stringify(
        chosen.map((p) => ({ name: p.name, unit: 'mm', blank: explainBlank(p.flat) })),
        null,
        2,
      )}\n`,
    );
  else for (const p of chosen) host.out(partText(host, p, opened.plan.job.units));
  return EXIT.done;
}

function partText(host: Host, p: PartPlan, units: Unit): string {
  const { rule, thickness } = p.sheet;
  const head = `${paint(host, 'bold', p.name)}: ${materialName(p.material, 'en')}, ${givenText(thickness, units)}; ${rule.title} (${rule.source})\n`;
  const dimensions = explainBlank(p.flat).map((d) => dimensionText(d, units));
  return `${head}${dimensions.join('')}${bendText(p, units)}\n`;
}

const CARRIED = 'rounding is carried from line to line, so that the column adds up';

function dimensionText({ axis, total, terms }: BlankDimension, units: Unit): string {
  const sum = workedText(total, units);
  if (terms.length === 0) return `blank along ${axis}: ${sum}, measured on the pattern\n`;
  const { terms: printed, carried } = columnOf(
    terms.map((t) => t.length),
    units,
  );
  const rows = terms.map((t, i) =>
    t.kind === 'leg'
      ? ['  ', `${t.length < 0 ? '-' : '+'} ${printed[i]}`, `outside leg of ${t.panel}`]
      : t.length > 0
        ? ['  ', `+ ${printed[i]}`, `added by bend ${t.bend.id}`]
        : ['  ', `- ${printed[i]}`, `deduction of bend ${t.bend.id}`],
  );
  return `blank along ${axis}: ${sum}\n${table([...rows, ['  ', `= ${sum}`, carried ? CARRIED : '']])}`;
}

/** Each different bend once, with its working. */
function bendText({ flat, sheet }: PartPlan, units: Unit): string {
  const keys = flat.bends.map((b) => `${b.angle} ${b.insideRadius}`);
  return flat.bends
    .filter((_, i) => keys.indexOf(keys[i] ?? '') === i)
    .map((b) => {
      const same = flat.bends.filter((_, i) => keys[i] === `${b.angle} ${b.insideRadius}`).map((o) => o.id);
      const bend = { thickness: sheet.thickness, insideRadius: b.insideRadius, angle: b.angle };
      const working = workingIn(units, sheet.rule, bend, b.terms);
      const lines = [`working, ${working.unit}:`, ...working.lines.map((l) => `  ${l}`), b.terms.source];
      return [
        `  bend ${plainNumber(b.angle, 2)}°, inside radius ${givenText(b.insideRadius, units)}: ${same.join(', ')}\n`,
        ...lines.map((l) => `    ${l}\n`),
      ].join('');
    })
    .join('');
}
