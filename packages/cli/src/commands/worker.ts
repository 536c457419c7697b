import { availableParallelism } from 'node:os';
import type { AnyFamily } from '@tinwright/core';
import type { Host } from '../host/console.js';
import type { ExitCode } from '../host/failure.js';
import { type AnyCommand, command } from '../line/command.js';
import { KEY_OPTION, QUEUE_OPTION, readJobs } from '../line/queue-options.js';

interface Options {
  readonly queue: string;
  readonly key?: string;
  readonly jobs?: string;
  readonly with?: readonly string[];
}

export const worker: AnyCommand = command<Options>({
  verb: 'worker',
  summary: 'make sizes for a run on another machine, until Ctrl-C',
  options: {
    queue: { ...QUEUE_OPTION, default: 'redis://127.0.0.1:6379' },
    key: KEY_OPTION,
    jobs: { type: 'string', describe: 'tasks worked on at once; as many as processors when left out' },
  },
  examples: [['$0 worker --queue redis://store:6379', 'works for every sizes --queue with that address']],
  run,
});

async function run(options: Options, host: Host, families: readonly AnyFamily[]): Promise<ExitCode> {
  const jobs = readJobs(options.jobs, availableParallelism());
  const { work } = await import('../sizes/work.js');
  return work({ ...options, jobs, modules: options.with ?? [], families }, host);
}
