import type { AnyFamily } from '@tinwright/core';
import type { Host } from '../console.js';
import { EXIT, type ExitCode } from '../failure.js';
import { findingLines, worst } from '../findings.js';
import { openJob } from '../open-job.js';
import { type AnyCommand, command } from './command.js';

interface Options {
  readonly job: string;
  readonly json: boolean;
}

export const check: AnyCommand = command<Options>({
  usage: 'check <job>',
  summary: 'read a job, compute it, and say what to know before cutting',
  options: (y) =>
    y
      .positional('job', { type: 'string', demandOption: true, describe: 'job file, - for standard input' })
      .option('json', { type: 'boolean', default: false, describe: 'print results for a program' }),
  examples: [['$0 check carrier.yaml', 'findings by part, worst first; nothing is written']],
  run,
});

async function run({ job, json }: Options, host: Host, families: readonly AnyFamily[]): Promise<ExitCode> {
  const opened = await openJob(host, job, json, families);
  if ('exit' in opened) return opened.exit;
  const { findings, parts } = opened.plan;
  if (json) host.out(`${JSON.stringify({ findings }, null, 2)}\n`);
  else {
    for (const line of findingLines(host, findings)) host.out(`${line}\n`);
    const pieces = parts.reduce((s, p) => s + p.quantity, 0);
    const count = findings.length === 0 ? 'nothing to note' : `${findings.length} to note`;
    host.out(`${parts.length} parts, ${pieces} pieces: ${count}.\n`);
  }
  return worst(findings) === 'error' ? EXIT.findings : EXIT.done;
}
