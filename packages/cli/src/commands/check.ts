import type { AnyFamily } from '@tinwright/core';
import { type Host, many } from '../console.js';
import { EXIT, type ExitCode } from '../failure.js';
import { findingLines, worst } from '../findings.js';
import { openJob } from '../open-job.js';
import { type AnyCommand, command, JOB, JSON_OPTION } from './command.js';

interface Options {
  readonly job: string;
  readonly json: boolean;
}

export const check: AnyCommand = command<Options>({
  verb: 'check',
  argument: JOB,
  summary: 'read a job, compute it, and say what to know before cutting',
  options: {
    json: JSON_OPTION,
  },
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
    host.out(`${many(parts.length, 'part')}, ${many(pieces, 'piece')}: ${count}.\n`);
  }
  return worst(findings) === 'error' ? EXIT.findings : EXIT.done;
}
