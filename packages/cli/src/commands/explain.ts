import {
  type AnyFamily,
  type BlankDimension,
  explainBlank,
  type PartPlan,
  plainNumber,
  suggestion,
} from '@tinwright/core';
import { type Host, paint, table } from '../console.js';
import { EXIT, type ExitCode } from '../failure.js';
import { openJob } from '../open-job.js';
import { type AnyCommand, command } from './command.js';

interface Options {
  readonly job: string;
  readonly part: string | undefined;
  readonly json: boolean;
}

export const explain: AnyCommand = command<Options>({
  usage: 'explain <job>',
  summary: 'say why each blank is as large as it is',
  options: (y) =>
    y
      .positional('job', { type: 'string', demandOption: true, describe: 'job file, - for standard input' })
      .option('part', { type: 'string', describe: 'only this part' })
      .option('json', { type: 'boolean', default: false, describe: 'print results for a program' }),
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
    host.err(
      `explain: part "${part}" given. ${suggestion(
        part ?? '',
        opened.plan.parts.map((p) => p.name),
      )}.\n`,
    );
    return EXIT.unreadable;
  }
  if (json)
    host.out(
      `${JSON.stringify(
        chosen.map((p) => ({ name: p.name, blank: explainBlank(p.flat) })),
        null,
        2,
      )}\n`,
    );
  else for (const p of chosen) host.out(partText(host, p));
  return EXIT.done;
}

const mm = (v: number) => `${plainNumber(v, 3)} mm`;

function partText(host: Host, p: PartPlan): string {
  const { rule, thickness } = p.sheet;
  const head = `${paint(host, 'bold', p.name)}: ${p.material.title}, ${mm(thickness)}; ${rule.title} (${rule.source})\n`;
  return `${head}${explainBlank(p.flat)
    .map((d) => dimensionText(d))
    .join('')}${bendText(p)}\n`;
}

function dimensionText({ axis, total, terms }: BlankDimension): string {
  if (terms.length === 0) return `blank along ${axis}: ${mm(total)}, measured on the pattern\n`;
  const rows = terms.map((t) =>
    t.kind === 'leg'
      ? ['  ', `+ ${mm(t.length)}`, `outside leg of ${t.panel}`]
      : ['  ', `- ${mm(-t.length)}`, `deduction of bend ${t.bend.id}`],
  );
  return `blank along ${axis}: ${mm(total)}\n${table([...rows, ['  ', `= ${mm(total)}`]])}`;
}

/** Each different bend once, with its working. */
function bendText({ flat }: PartPlan): string {
  const keys = flat.bends.map((b) => `${b.angle} ${b.insideRadius}`);
  return flat.bends
    .filter((_, i) => keys.indexOf(keys[i] ?? '') === i)
    .map((b) => {
      const same = flat.bends.filter((_, i) => keys[i] === `${b.angle} ${b.insideRadius}`).map((o) => o.id);
      const lines = [...b.terms.working, b.terms.source].map((l) => `    ${l}\n`).join('');
      return `  bend ${plainNumber(b.angle, 2)}°, inside radius ${mm(b.insideRadius)}: ${same.join(', ')}\n${lines}`;
    })
    .join('');
}
