import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { tinwright } from './host.js';
import { below, emptyFolder, jobFile } from './place.js';

/** One line that means something in every format it can get into. */
const NASTY = `=1+1"></title></script><script>alert(1)</script><img src=x onerror=alert(2)> ]]> --> ' & $(id) \`id\` %s`;

const job = (text: string) =>
  JSON.stringify({
    units: 'mm',
    name: text,
    note: text,
    stock: { material: 'mild-steel', thickness: 1, sheets: [{ name: 'full', size: [1000, 500], count: 2 }] },
    bending: { rule: 'k-factor', insideRadius: 1 },
    parts: [{ name: 'bin', family: 'open-box', note: text, length: 120, width: 80, height: 30 }],
  });

/** Every file that the commands write of a job, by its path. */
async function written(text: string): Promise<ReadonlyMap<string, string>> {
  const [path, out] = [await jobFile(job(text)), await emptyFolder()];
  const set = async (...argv: readonly string[]) => {
    const ran = await tinwright(...argv);
    expect(ran.exit, ran.err).toBe(0);
  };
  await set('make', path, '--pictures', '--out', join(out, 'make'));
  await set('plan', path, '--out', join(out, 'plan'));
  await set('packet', path, '--out', join(out, 'packet'));
  await set('page', path, '--out', join(out, 'page.html'));
  const files = new Map<string, string>();
  for (const file of await below(out))
    if (/\.\w+$/.test(file)) files.set(file, await readFile(join(out, file), 'latin1'));
  return files;
}

type Look = (content: string, plain: string) => boolean;

const tags = (text: string) => text.match(/<\/?[a-z][^\s>/]*/gi) ?? [];
const codes = (text: string) => text.split(/\r?\n/).filter((_, i) => i % 2 === 0);
const noNewTag: Look = (content, plain) => {
  const known = new Set(tags(plain));
  return tags(content).every((t) => known.has(t)) && !/<img src=x|<script>alert/.test(content);
};
const isData: Look = (content) => typeof JSON.parse(content) === 'object';

/** What holds of a file whatever the text. */
const LOOKS: Readonly<Record<string, Look>> = {
  svg: noNewTag,
  html: noNewTag,
  dxf: (content, plain) => codes(content).join() === codes(plain).join(),
  json: isData,
  csv: (content) => content.split(/[\r\n,]+/).every((cell) => !/^"?[=+@]/.test(cell)),
  pdf: (content, plain) => (content.match(/\/(JavaScript|JS|Launch|URI)\b/) ?? null) === null && plain !== '',
  glb: (content, plain) => content.slice(0, 4) === 'glTF' && plain.slice(0, 4) === 'glTF',
};

describe('a text of the job that would be markup, a formula or a command', () => {
  test('is text in every file', async () => {
    const [plain, nasty] = [await written('a bin for bolts'), await written(NASTY)];
    expect([...nasty.keys()]).toEqual([...plain.keys()]);
    const kind = (file: string) => file.replace(/.*\./, '');
    expect([...new Set([...nasty.keys()].map(kind))].toSorted()).toEqual(Object.keys(LOOKS).toSorted());
    const bad = [...nasty].filter(([f, content]) => LOOKS[kind(f)]?.(content, plain.get(f) ?? '') !== true);
    expect(bad.map(([f]) => f)).toEqual([]);
  });

  test('lines cannot be broken: line ends and control characters are refused by name', async () => {
    for (const text of ['two\nlines', 'bell\u0007', 'turned\u202e'] as const) {
      const ran = await tinwright('check', await jobFile(job(text)));
      expect(ran.exit).toBe(2);
      expect(ran.err).toMatch(/name|note/);
    }
  });
});
