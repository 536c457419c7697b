import { FAMILIES, suggestion } from '@tinwright/core';
import { type Host, paint, table } from '../console.js';
import { EXIT, type ExitCode } from '../failure.js';
import { type AnyCommand, command } from './command.js';

interface Options {
  readonly name: string | undefined;
  readonly json: boolean;
}

export const families: AnyCommand = command<Options>({
  usage: 'families [name]',
  summary: 'list part families, or the parameters of one',
  options: (y) =>
    y
      .positional('name', { type: 'string', describe: 'a family' })
      .option('json', { type: 'boolean', default: false, describe: 'print results for a program' }),
  examples: [['$0 families hemmed-channel', 'its parameters and an example']],
  run,
});

async function run({ name, json }: Options, host: Host): Promise<ExitCode> {
  const chosen = name === undefined ? FAMILIES : FAMILIES.filter((f) => f.name === name);
  if (chosen.length === 0) {
    host.err(
      `families: "${name}" given. ${suggestion(
        name ?? '',
        FAMILIES.map((f) => f.name),
      )}.\n`,
    );
    return EXIT.unreadable;
  }
  if (json)
    host.out(
      `${JSON.stringify(
        chosen.map((f) => ({ name: f.name, ...f.describe })),
        null,
        2,
      )}\n`,
    );
  else if (name === undefined)
    host.out(table(FAMILIES.map((f) => [paint(host, 'bold', f.name), f.describe.title])));
  else for (const f of chosen) host.out(familyText(host, f));
  return EXIT.done;
}

function familyText(host: Host, { name, describe }: (typeof FAMILIES)[number]): string {
  const sizes = Object.entries(describe.sizes).map(([path, text]) => [
    `  ${paint(host, 'bold', path)}`,
    text,
  ]);
  return `${name}: ${describe.title}\n${describe.summary}\n\n${table(sizes)}\nA job to start from: tinwright starter ${name}\n`;
}
