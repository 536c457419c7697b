// The long way of a job, by the command: written to disk, ordered, sheared, nested, drawn, printed, made in sizes.
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { main } from '@tinwright/cli';
import type { Trial } from './trials.js';

type Argv = readonly string[];

/** @param keep where the cut files stay for auditors outside; null for nowhere */
export async function endureDeep(trial: Trial, keep: string | null): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), 'tinwright-campaign-'));
  try {
    const named = filesOf(trial, folder);
    for (const [verb, ...argv] of commands(named, folder)) await ends([verb as string, ...argv]);
    if (keep !== null) {
      mkdirSync(keep, { recursive: true });
      await ends(['make', named.job, '--out', join(mkdtempSync(join(keep, 'j-')), 'made'), ...named.shop]);
    }
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

interface Named {
  readonly job: string;
  readonly shop: Argv;
  readonly rack: Argv;
  readonly table: Argv;
  readonly style: Argv;
}

/** The files of a trial, and the options that name them. JSON is YAML too. */
function filesOf({ job, shop, rack, rows, style }: Trial, folder: string): Named {
  const file = (name: string, data: unknown) => {
    writeFileSync(join(folder, name), JSON.stringify(data));
    return join(folder, name);
  };
  const option = (name: string, data: unknown) =>
    data === null ? [] : [`--${name}`, file(`${name}.yaml`, data)];
  const { curves = 'polyline', marks = 'cross', unit = 'mm', form = 'r2000' } = style;
  return {
    job: file('job.yaml', job),
    shop: option('shop', shop),
    rack: option('rack', rack),
    table: option('table', rows),
    style: ['--curves', curves, '--marks', marks, '--dxf-units', unit, '--dxf', form],
  };
}

function commands({ job, shop, rack, table, style }: Named, folder: string): readonly Argv[] {
  const out = (name: string) => ['--out', join(folder, name)];
  const made = ['--pictures', '--views', '--small-holes', 'mark', ...style];
  return [
    ['make', job, ...out('make'), ...shop, ...rack, ...made],
    ['check', job, ...shop],
    ['order', job, ...shop],
    ['plan', job, ...out('plan'), ...shop, '--dims', '1/16'],
    ['packet', job, ...out('packet.pdf'), ...shop, ...rack, '--lang', 'de'],
    ['page', job, ...out('page.html')],
    ['shear', job, ...out('shear'), ...shop, ...rack, '--steps', '2000'],
    ['nest', job, ...out('nest'), ...shop, ...rack, '--moves', '300', '--lanes', '1', '--threads', '1'],
    ...(table.length === 0 ? [] : [['sizes', job, ...out('sizes'), ...shop, ...table, '--jobs', '1']]),
  ];
}

/** @throws Error when a command does anything but end with 0, 1 or 2 and words that can be printed */
async function ends(argv: Argv): Promise<void> {
  let said = '';
  const say = (t: string) => {
    said += t;
  };
  const host = { out: say, err: say, colour: false, stdin: async () => Buffer.from('') };
  const exit = await main([...argv], host);
  const how = `${argv[0]} ended with ${exit}: ${said.slice(0, 500)}`;
  if (![0, 1, 2].includes(exit)) throw new Error(how);
  if (said.includes('a fault of the program') || said.includes('TINWRIGHT_DEBUG')) throw new Error(how);
  // biome-ignore lint/suspicious/noControlCharactersInRegex: those are what is looked for
  if (/[\u0000-\u0008\u000b-\u001f\u202a-\u202e]/.test(said)) throw new Error(`control characters: ${how}`);
}
