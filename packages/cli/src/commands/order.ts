import type { AnyFamily } from '@tinwright/core';
import { sayIn } from '@tinwright/core/internal';
import type { Host } from '../host/console.js';
import { EXIT, type ExitCode, refuse } from '../host/failure.js';
import { type AnyCommand, command, JOB, JSON_OPTION, SHOP_OPTION } from '../line/command.js';
import { chosenParts } from '../open/chosen-parts.js';
import { SIZE_OPTION } from '../open/in-size.js';
import { openJob } from '../open/open-job.js';
import { DEFAULT_NAME, plannedIn } from '../open/open-shop.js';
import { batchText, sequenceText } from '../print/sequence-text.js';

interface Options {
  readonly job: string;
  readonly part?: string;
  readonly shop: string;
  readonly size?: string;
  readonly json: boolean;
}

export const order: AnyCommand = command<Options>({
  verb: 'order',
  argument: JOB,
  summary: 'find the order of bends, and what to set for each',
  options: {
    part: { type: 'string', describe: 'only this part' },
    size: SIZE_OPTION,
    shop: { ...SHOP_OPTION, default: DEFAULT_NAME },
    json: JSON_OPTION,
  },
  examples: [
    ['$0 order carrier.yaml', 'on the machines of the default shop'],
    ['$0 order carrier.yaml --shop shop.yaml --part body', 'one part, in your own shop'],
  ],
  run,
});

async function run(
  { job, part, shop, size, json }: Options,
  host: Host,
  families: readonly AnyFamily[],
): Promise<ExitCode> {
  const opened = await openJob(host, job, json, families, { shop, size });
  if ('exit' in opened) return opened.exit;
  const { plan } = opened;
  const chosen = chosenParts(plan, part);
  if (typeof chosen === 'string') return refuse(host, json, 'part-unknown', 'order', chosen);
  const inShop = await plannedIn({ ...plan, parts: chosen }, opened.shop, host);
  if (inShop === null) return EXIT.done;
  const { sequenceEntry } = await import('@tinwright/files/internal');
  const { sequences } = inShop;
  const say = sayIn(plan.job.units);
  if (json) {
    const parts = sequences.map((s) => ({ name: s.part, sequence: sequenceEntry(s, say) }));
    host.out(`${JSON.stringify({ shop: inShop.shop.name, parts, batch: inShop.batch }, null, 2)}\n`);
  } else {
    host.out(
      `In ${inShop.shop.name === '' ? 'the shop' : inShop.shop.name}. Where tools stand is measured along the bend line from its left end, seen from the front.\n\n`,
    );
    for (const s of sequences) host.out(`${await sequenceText(host, s, say, sayIn(inShop.shop.units))}\n`);
    if (sequences.filter((s) => s.steps.length > 0).length > 1) host.out(batchText(inShop.batch));
  }
  return sequences.some((s) => s.status === 'infeasible') ? EXIT.findings : EXIT.done;
}
