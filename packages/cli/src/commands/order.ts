import type { AnyFamily } from '@tinwright/core';
import type { Language } from '@tinwright/words';
import type { Host } from '../host/console.js';
import { EXIT, type ExitCode, refuse } from '../host/failure.js';
import { type AnyCommand, command, JOB, JSON_OPTION, langOption, SHOP_OPTION } from '../line/command.js';
import { chosenParts } from '../open/chosen-parts.js';
import { SIZE_OPTION } from '../open/in-size.js';
import { openJob } from '../open/open-job.js';
import { DEFAULT_NAME, plannedIn } from '../open/open-shop.js';
import { batchText, orderSpeech, sequenceText } from '../print/sequence-text.js';

interface Options {
  readonly job: string;
  readonly part?: string;
  readonly shop: string;
  readonly size?: string;
  readonly lang: Language;
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
    lang: langOption('of steps and answers'),
    json: JSON_OPTION,
  },
  examples: [
    ['$0 order carrier.yaml', 'on the machines of the default shop'],
    ['$0 order carrier.yaml --shop shop.yaml --part body', 'one part, in your own shop'],
  ],
  run,
});

async function run(
  { job, part, shop, size, lang, json }: Options,
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
  const { units } = plan.job;
  if (json) {
    const parts = sequences.map((s) => ({ name: s.part, sequence: sequenceEntry(s, units, lang) }));
    host.out(`${JSON.stringify({ shop: inShop.shop.name, parts, batch: inShop.batch }, null, 2)}\n`);
  } else {
    const { name } = inShop.shop;
    const said = await orderSpeech(lang, units, inShop.shop.units);
    host.out(`${said.words.shop(name === '' ? null : name)}\n\n`);
    for (const s of sequences) host.out(`${sequenceText(host, s, said)}\n`);
    if (sequences.filter((s) => s.steps.length > 0).length > 1) host.out(batchText(inShop.batch, said));
  }
  return sequences.some((s) => s.status === 'infeasible') ? EXIT.findings : EXIT.done;
}
