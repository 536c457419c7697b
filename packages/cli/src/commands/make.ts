import { join } from 'node:path';
import { type AnyFamily, plainNumber } from '@tinwright/core';
import { type Host, paint, table } from '../console.js';
import { EXIT, type ExitCode, writing } from '../failure.js';
import { findingLines, worst } from '../findings.js';
import { openJob } from '../open-job.js';
import { type AnyCommand, command } from './command.js';

interface Options {
  readonly job: string;
  readonly out: string;
  readonly dxf: 'r2000' | 'r12';
  readonly strict: boolean;
  readonly json: boolean;
}

export const make: AnyCommand = command<Options>({
  usage: 'make <job>',
  summary: 'make the cut files of a job',
  options: (y) =>
    y
      .positional('job', { type: 'string', demandOption: true, describe: 'job file, - for standard input' })
      .option('out', { type: 'string', default: 'out', describe: 'folder to write, replaced as a whole' })
      .option('dxf', {
        choices: ['r2000', 'r12'] as const,
        default: 'r2000' as const,
        describe: 'form of the DXF files',
      })
      .option('strict', {
        type: 'boolean',
        default: false,
        describe: 'write nothing while a finding is an error',
      })
      .option('json', { type: 'boolean', default: false, describe: 'print results for a program' }),
  examples: [
    ['$0 make carrier.yaml --out carrier', 'DXF, SVG and job.json for every part'],
    ['$0 make carrier.yaml --dxf r12', 'for an older cutting table'],
  ],
  run,
});

async function run(
  { job, out, dxf, strict, json }: Options,
  host: Host,
  families: readonly AnyFamily[],
): Promise<ExitCode> {
  const opened = await openJob(host, job, json, families);
  if ('exit' in opened) return opened.exit;
  const { plan } = opened;
  const [{ jobFiles }, { writeSet }] = await Promise.all([
    import('@tinwright/export'),
    import('../files.js'),
  ]);
  const wrong = worst(plan.findings) === 'error';
  const files = strict && wrong ? [] : jobFiles(plan, { dxf });
  const failed = files.length === 0 ? EXIT.done : await writing(host, () => writeSet(out, files));
  if (failed !== EXIT.done) return failed;
  const written = files.map((f) => f.path);
  if (json) host.out(`${JSON.stringify({ out, files: written, findings: plan.findings }, null, 2)}\n`);
  else {
    const rows = plan.parts.map((p) => [
      paint(host, 'bold', p.name),
      `${p.quantity} x ${p.family.name}`,
      `blank ${p.flat.blank.max.map((v) => plainNumber(v, 2)).join(' x ')} mm`,
      `${plainNumber(p.mass, 3)} kg`,
    ]);
    host.out(table(rows));
    for (const line of findingLines(host, plan.findings)) host.out(`${line}\n`);
    host.out(
      files.length > 0
        ? `${files.length} files in ${out}: open ${join(out, written[1] ?? '')} in a browser.\n`
        : 'Nothing written: a finding is an error.\n',
    );
    if (wrong && files.length > 0) host.out('Written, but a finding is an error.\n');
  }
  return wrong ? EXIT.findings : EXIT.done;
}
