import { type AnyFamily, FAMILIES, type PartPlan, planJob, readJob } from '@tinwright/core';
import { quoted, suggestion } from '@tinwright/core/internal';
import type { Language } from '@tinwright/words';
import { CONSOLE_WORDS, derivedWords, familyTitle, parameterWords } from '@tinwright/words/internal';
import { type Host, paint, table } from '../host/console.js';
import { EXIT, type ExitCode, refuse, writing } from '../host/failure.js';
import { type AnyCommand, command, FORCE_OPTION, JSON_OPTION, langOption } from '../line/command.js';

interface Options {
  readonly name: string | undefined;
  readonly picture: string | undefined;
  readonly force: boolean;
  readonly lang: Language;
  readonly json: boolean;
}

export const families: AnyCommand = command<Options>({
  verb: 'families',
  argument: { name: 'name', describe: 'a family', needed: false, values: FAMILIES.map((f) => f.name) },
  summary: 'list part families, or the parameters of one',
  options: {
    picture: { type: 'string', describe: 'write a picture of the family with its sizes to this SVG file' },
    force: FORCE_OPTION,
    lang: langOption('of the list; --json is English'),
    json: JSON_OPTION,
  },
  examples: [
    ['$0 families hemmed-channel', 'its parameters'],
    ['$0 families hemmed-channel --picture channel.svg', 'and where they are measured'],
  ],
  run,
});

async function run(options: Options, host: Host, all: readonly AnyFamily[]): Promise<ExitCode> {
  const { name, picture, lang, json } = options;
  const force = options.force ? 'force' : 'own only';
  const chosen = name === undefined ? all : all.filter((f) => f.name === name);
  if (chosen.length === 0) {
    const names = all.map((f) => f.name);
    return refuse(
      host,
      json,
      'family-unknown',
      'families',
      `${quoted(name ?? '')} given. ${suggestion(name ?? '', names)}`,
    );
  }
  if (picture !== undefined && name === undefined)
    return refuse(host, json, 'usage', 'families', 'name the family to draw with --picture');
  if (json) host.out(`${JSON.stringify(chosen.map(aboutFamily), null, 2)}\n`);
  else if (name === undefined)
    host.out(table(all.map((f) => [paint(host, 'bold', f.name), familyTitle(f, lang)])));
  else for (const f of chosen) host.out(familyText(host, f, lang));
  return picture === undefined || chosen[0] === undefined
    ? EXIT.done
    : drawFamily(chosen[0], { path: picture, force }, host, json);
}

async function drawFamily(
  family: AnyFamily,
  { path, force }: { readonly path: string; readonly force: 'force' | 'own only' },
  host: Host,
  json: boolean,
): Promise<ExitCode> {
  const [{ familyPicture, toSvg }, { refuseInput, replaceFile, signed }] = await Promise.all([
    import('@tinwright/files'),
    import('../write/files.js'),
  ]);
  return writing(host, json, async () => {
    await refuseInput(host.inputs, path);
    await replaceFile(path, signed(toSvg(familyPicture(family))), force);
  });
}

/** A family's words, the sites of its example and the sizes it publishes. */
function aboutFamily(family: AnyFamily): object {
  const { params, part, sheet } = exampleOf(family);
  const derived = family
    .derived(params, sheet)
    .map((d) => ({ name: d.name, words: d.words, follows: d.follows }));
  return { name: family.name, ...family.describe, sites: part.sites.map((s) => s.name), derived };
}

/** The family's example in 1 mm mild steel, built. */
function exampleOf(family: AnyFamily): PartPlan {
  const { name, describe } = family;
  const data = {
    units: 'mm',
    stock: { material: 'mild-steel', thickness: 1 },
    parts: [{ name: 'example', family: name, ...describe.example }],
  };
  const [plan] = planJob(readJob(data as unknown, [family])).parts as [PartPlan];
  return plan;
}

function familyText(host: Host, family: AnyFamily, lang: Language): string {
  const words = CONSOLE_WORDS[lang].family;
  const { name, describe } = family;
  const { params, part, sheet } = exampleOf(family);
  const rows = (list: readonly (readonly [string, string])[]) =>
    table(list.map(([key, text]) => [`  ${paint(host, 'bold', key)}`, text]));
  const derived = family.derived(params, sheet).map((d) => [d.name, derivedWords(d, lang)] as const);
  const sites = part.sites.map((s) => s.name);
  return [
    `${name}: ${familyTitle(family, lang)}\n${lang === 'en' ? `${describe.summary}\n` : ''}`,
    rows(Object.keys(describe.sizes).map((path) => [path, parameterWords(family, path, lang)] as const)),
    ...(derived.length === 0 ? [] : [`${words.follow(`{ of: PART.${derived[0]?.[0]} }`)}\n${rows(derived)}`]),
    ...(sites.length === 0 ? [] : [`${words.sites(sites.join(', '))}\n`]),
    `${words.starter(`tinwright starter ${name}`)}\n`,
  ].join('\n');
}
