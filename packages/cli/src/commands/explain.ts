import {
  type AnyFamily,
  type BlankDimension,
  explainBlank,
  formatLength,
  type PartPlan,
  plainNumber,
  quoted,
  suggestion,
  type Unit,
} from '@tinwright/core';
import { type Host, paint, table } from '../console.js';
import { EXIT, type ExitCode, refuse } from '../failure.js';
import { openJob } from '../open-job.js';
import { type AnyCommand, command, JOB, JSON_OPTION } from './command.js';

interface Options {
  readonly job: string;
  readonly part: string | undefined;
  readonly json: boolean;
}

export const explain: AnyCommand = command<Options>({
  verb: 'explain',
  argument: JOB,
  summary: 'say why each blank is as large as it is',
  options: {
    part: { type: 'string', describe: 'only this part' },
    json: JSON_OPTION,
  },
  examples: [['$0 explain carrier.yaml --part body', 'legs, bend deductions, rule and source']],
  run,
});

async function run(
  { job, part, json }: Options,
  host: Host,
  families: readonly AnyFamily[],
): Promise<ExitCode> {
  const opened = await openJob(host, job, json, families);
  if ('exit' in opened) return opened.exit;
  const chosen = opened.plan.parts.filter((p) => part === undefined || p.name === part);
  if (chosen.length === 0) {
    const names = opened.plan.parts.map((p) => p.name);
    return refuse(
      host,
      json,
      'part-unknown',
      'explain',
      `part ${quoted(part ?? '')} given. ${suggestion(part ?? '', names)}`,
    );
  }
  if (json)
    host.out(
      `${JSON.stringify(
        chosen.map((p) => ({ name: p.name, blank: explainBlank(p.flat) })),
        null,
        2,
      )}\n`,
    );
  else for (const p of chosen) host.out(partText(host, p, opened.plan.job.units));
  return EXIT.done;
}

function partText(host: Host, p: PartPlan, units: Unit): string {
  const say = (mm: number) => formatLength(mm, units);
  const { rule, thickness } = p.sheet;
  const head = `${paint(host, 'bold', p.name)}: ${p.material.title}, ${say(thickness)}; ${rule.title} (${rule.source})\n`;
  const dimensions = explainBlank(p.flat).map((d) => dimensionText(d, say));
  return `${head}${dimensions.join('')}${bendText(p, say)}\n`;
}

type Words = (mm: number) => string;

function dimensionText({ axis, total, terms }: BlankDimension, say: Words): string {
  if (terms.length === 0) return `blank along ${axis}: ${say(total)}, measured on the pattern\n`;
  const rows = terms.map((t) =>
    t.kind === 'leg'
      ? ['  ', `+ ${say(t.length)}`, `outside leg of ${t.panel}`]
      : ['  ', `- ${say(-t.length)}`, `deduction of bend ${t.bend.id}`],
  );
  return `blank along ${axis}: ${say(total)}\n${table([...rows, ['  ', `= ${say(total)}`]])}`;
}

/** Each different bend once, with its working in millimetres. */
function bendText({ flat }: PartPlan, say: Words): string {
  const keys = flat.bends.map((b) => `${b.angle} ${b.insideRadius}`);
  return flat.bends
    .filter((_, i) => keys.indexOf(keys[i] ?? '') === i)
    .map((b) => {
      const same = flat.bends.filter((_, i) => keys[i] === `${b.angle} ${b.insideRadius}`).map((o) => o.id);
      const lines = [...b.terms.working, b.terms.source].map((l) => `    ${l}\n`).join('');
      return `  bend ${plainNumber(b.angle, 2)}°, inside radius ${say(b.insideRadius)}: ${same.join(', ')}\n${lines}`;
    })
    .join('');
}
