import { type AnyFamily, suggestion } from '@tinwright/core';
import { type Host, paint, table } from '../console.js';
import { EXIT, type ExitCode, writing } from '../failure.js';
import { type AnyCommand, command } from './command.js';

interface Options {
  readonly name: string | undefined;
  readonly picture: string | undefined;
  readonly json: boolean;
}

export const families: AnyCommand = command<Options>({
  usage: 'families [name]',
  summary: 'list part families, or the parameters of one',
  options: (y) =>
    y
      .positional('name', { type: 'string', describe: 'a family' })
      .option('picture', { type: 'string', describe: 'write a picture with its sizes to this SVG file' })
      .option('json', { type: 'boolean', default: false, describe: 'print results for a program' }),
  examples: [
    ['$0 families hemmed-channel', 'its parameters'],
    ['$0 families hemmed-channel --picture channel.svg', 'and where they are measured'],
  ],
  run,
});

async function run(options: Options, host: Host, all: readonly AnyFamily[]): Promise<ExitCode> {
  const { name, picture, json } = options;
  const chosen = name === undefined ? all : all.filter((f) => f.name === name);
  if (chosen.length === 0) {
    host.err(
      `families: "${name}" given. ${suggestion(
        name ?? '',
        all.map((f) => f.name),
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
    host.out(table(all.map((f) => [paint(host, 'bold', f.name), f.describe.title])));
  else for (const f of chosen) host.out(familyText(host, f));
  return picture === undefined || chosen[0] === undefined ? EXIT.done : drawFamily(chosen[0], picture, host);
}

async function drawFamily(family: AnyFamily, path: string, host: Host): Promise<ExitCode> {
  const [{ familyPicture, toSvg }, { writeOne }] = await Promise.all([
    import('@tinwright/export'),
    import('../files.js'),
  ]);
  return writing(host, () => writeOne(path, toSvg(familyPicture(family))));
}

function familyText(host: Host, { name, describe }: AnyFamily): string {
  const sizes = Object.entries(describe.sizes).map(([path, text]) => [
    `  ${paint(host, 'bold', path)}`,
    text,
  ]);
  return `${name}: ${describe.title}\n${describe.summary}\n\n${table(sizes)}\nA job to start from: tinwright starter ${name}\n`;
}
