import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { type AnyFamily, FAMILIES } from '@tinwright/core';
import { quoted } from '@tinwright/core/internal';
import { LONGEST_TEXT } from '@tinwright/page/internal';
import type { Host } from '../host/console.js';
import { EXIT, type ExitCode, refuse, writing } from '../host/failure.js';
import { type AnyCommand, command, FORCE_OPTION, JOB, JSON_OPTION, langOption } from '../line/command.js';
import { openJob } from '../open/open-job.js';
import { bytesOf } from '../open/open-text.js';

interface Options {
  readonly job: string;
  readonly out: string;
  readonly lang: 'en' | 'de';
  readonly lock: readonly string[];
  readonly worksheet: boolean;
  readonly force: boolean;
  readonly json: boolean;
}

export const page: AnyCommand = command<Options>({
  verb: 'page',
  argument: JOB,
  summary: 'make an interactive page of a job: change its sizes and watch it fold',
  options: {
    out: {
      type: 'string',
      default: 'page.html',
      describe: 'file to write; a browser opens it, no network needed',
    },
    lang: langOption('the page starts in'),
    lock: {
      type: 'strings',
      default: [],
      describe: 'a value that stays as it is, stock or parts.body.length; may be repeated',
    },
    worksheet: {
      type: 'boolean',
      default: false,
      describe: 'leave out the numbers that follow, for a class to find',
    },
    force: FORCE_OPTION,
    json: JSON_OPTION,
  },
  examples: [
    ['$0 page carrier.yaml --out carrier.html', 'one file, opened with a double click'],
    [
      '$0 page carrier.yaml --lock stock --worksheet',
      'for a class: the sheet is given, numbers are to be found',
    ],
  ],
  run,
});

async function run(
  { job, out, lang, lock, worksheet, force, json }: Options,
  host: Host,
  families: readonly AnyFamily[],
): Promise<ExitCode> {
  const again = readAgain(host);
  const opened = await openJob(again, job, json, families, { others: null });
  if ('exit' in opened) return opened.exit;
  const own = opened.plan.parts.find((p) => !FAMILIES.some((f) => f.name === p.family.name));
  if (own !== undefined)
    return refuse(
      host,
      json,
      'family-unknown',
      'page',
      `part ${quoted(own.name)} is of a family of your own, ${quoted(own.family.name)}; a page knows the built-in ones`,
    );
  const { strayLock } = await import('../open/locks.js');
  const stray = strayLock(lock, opened.plan, families);
  if (stray !== null) return refuse(host, json, 'usage', 'page', stray);
  const text = new TextDecoder().decode(await bytesOf(again, job, 'job'));
  if (text.length > LONGEST_TEXT)
    return refuse(
      host,
      json,
      'too-long',
      'page',
      `a job of ${text.length} characters given, a page reads up to ${LONGEST_TEXT}. Leave out comments, or make a page for fewer parts`,
    );
  const [{ pageFile }, { refuseInput, replaceFile }, template] = await Promise.all([
    import('@tinwright/page'),
    import('../write/files.js'),
    readFile(createRequire(import.meta.url).resolve('@tinwright/page/page.html'), 'utf8'),
  ]);
  const content = pageFile(template, { text, language: lang, locked: lock, worksheet });
  const failed = await writing(host, json, async () => {
    await refuseInput(host.inputs, out);
    await replaceFile(out, content, force ? 'force' : 'own only');
  });
  if (failed !== EXIT.done) return failed;
  host.out(json ? `${JSON.stringify({ out }, null, 2)}\n` : `${out}: open it in a browser.\n`);
  return EXIT.done;
}

/** The host with its standard input to be read more than once. */
function readAgain(host: Host): Host {
  let read: ReturnType<Host['stdin']> | null = null;
  return {
    ...host,
    stdin: () => {
      read ??= host.stdin();
      return read;
    },
  };
}
