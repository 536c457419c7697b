// The README is run: its files are written, its commands typed, its program compiled and started; links lead somewhere.
import { execFileSync, spawnSync } from 'node:child_process';
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { FAMILIES, planJob, readJob } from '@tinwright/core';
import { assemblyPicture, familyPicture, toSvg } from '@tinwright/files';
import ts from 'typescript';
import { expect, test } from 'vitest';
import { parse } from 'yaml';

const ROOT = fileURLToPath(new URL('..', import.meta.url));
const MAIN = join(ROOT, 'packages/cli/bin/tinwright.js');
const README = readFileSync(join(ROOT, 'README.md'), 'utf8');

interface Block {
  readonly info: string;
  readonly text: string;
}

const blocks: readonly Block[] = [...README.matchAll(/^```([^\n]*)\n(.*?)^```$/gms)].map(
  ([, info = '', text = '']) => ({ info, text }),
);

interface Typed {
  readonly command: string;
  readonly output: string;
}

/** Commands of a console block with the output that stands under each. */
function typed(text: string): readonly Typed[] {
  return text
    .split(/^\$ /m)
    .slice(1)
    .map((part) => {
      const end = part.indexOf('\n');
      return { command: part.slice(0, end), output: part.slice(end + 1) };
    });
}

/** Output as printed in the README: a line `…` stands for the rest. */
function expectOutput(actual: string, printed: string): void {
  const [start, rest] = printed.split('…\n');
  if (rest === undefined) expect(actual).toBe(printed);
  else expect(actual.startsWith(start ?? '')).toBe(true);
}

test('every kind of code block is known here, so none is left unrun', () => {
  expect(blocks.map((b) => b.info)).toEqual([
    'sh',
    'console',
    'yaml out/shelf.yaml',
    'console',
    'yaml',
    'sh',
    'ts',
  ]);
});

test('a job that is shown but not saved is made, without an error', () => {
  const shown = blocks.filter((b) => b.info === 'yaml');
  expect(shown).toHaveLength(1);
  for (const { text } of shown) {
    const { parts, findings } = planJob(readJob(parse(text) as unknown));
    expect(parts.length).toBeGreaterThan(1);
    expect(findings.filter((f) => f.severity === 'error')).toEqual([]);
  }
});

test('the commands are scripts of the workspace', () => {
  const { scripts } = JSON.parse(readFileSync(join(ROOT, 'package.json'), 'utf8')) as {
    scripts: Record<string, string>;
  };
  const [first, second] = blocks.filter((b) => b.info === 'sh').map((b) => b.text.trim().split('\n'));
  expect(first).toEqual(['npm start', 'npm test']);
  // .ci/run types these two and starts the program outside this folder
  const [pack, install] = second ?? [];
  expect(install).toMatch(/^npm install --prefix \S+ \.\/out\/packages\/\*\.tgz$/);
  for (const command of [...(first ?? []), pack])
    expect(scripts[command?.replace(/^npm (run --silent )?/, '') ?? '']).toBeDefined();
});

test('what following the README writes is ignored by git', () => {
  const ignored = readFileSync(join(ROOT, '.gitignore'), 'utf8').split('\n');
  const files = blocks.filter((b) => b.info.startsWith('yaml ')).map((b) => b.info.slice(5));
  const folders = [...README.matchAll(/ --out (\S+)/g)].map(([, folder]) => folder ?? '');
  expect(files.length + folders.length).toBeGreaterThan(1);
  for (const path of [...files, ...folders]) expect(ignored).toContain(`${path.split('/')[0]}/`);
});

test('the files and commands of the README do what it prints', () => {
  const folder = mkdtempSync(join(tmpdir(), 'tinwright-readme-'));
  try {
    for (const { info, text } of blocks)
      if (info.startsWith('yaml ')) {
        const file = join(folder, info.slice(5));
        mkdirSync(dirname(file), { recursive: true });
        writeFileSync(file, text);
      }
    const commands = blocks.filter((b) => b.info === 'console').flatMap((b) => typed(b.text));
    expect(commands).toHaveLength(3);
    for (const { command, output } of commands) {
      const args = command.startsWith('npm start')
        ? [join(ROOT, '.ci/start.mjs')]
        : [MAIN, ...(command.split(' -- ')[1] ?? '').split(' ')];
      const done = spawnSync(process.execPath, args, {
        cwd: folder,
        encoding: 'utf8',
        env: { ...process.env, NO_COLOR: '1' },
      });
      expect(done.status, done.stderr).toBe(0);
      expectOutput(done.stdout, output);
    }
  } finally {
    rmSync(folder, { recursive: true });
  }
});

/** Packages that a program imports: each has one in its README. The others are typed in a shell. */
const LIBRARIES = readdirSync(join(ROOT, 'packages')).filter(
  (name) => existsSync(join(ROOT, 'packages', name, 'package.json')) && !['cli', 'queue'].includes(name),
);

const transpiled = (program: string) =>
  ts.transpileModule(program, {
    compilerOptions: { module: ts.ModuleKind.ESNext, target: ts.ScriptTarget.ES2022 },
  }).outputText;

/** What the compiler has to say of the programs in a folder, under the options of the tests. */
function compiled(folder: string): string {
  const config = {
    extends: join(ROOT, 'tests/tsconfig.json'),
    include: ['*.ts'],
    compilerOptions: { typeRoots: [join(ROOT, 'node_modules/@types')], noEmit: true },
  };
  writeFileSync(join(folder, 'tsconfig.json'), JSON.stringify(config));
  const tsc = join(ROOT, 'node_modules/typescript-native/bin/tsc');
  return spawnSync(process.execPath, [tsc, '-p', folder], { encoding: 'utf8' }).stdout;
}

/** Programs on the pages of the documentation and in the READMEs of the packages. */
function documentPrograms(): readonly string[] {
  const folders = [join(ROOT, 'examples/ideas'), join(ROOT, 'examples/ideas/start')];
  const pages = folders.flatMap((f) =>
    readdirSync(f)
      .filter((p) => p.endsWith('.md'))
      .map((p) => join(f, p)),
  );
  return [...pages, ...LIBRARIES.map((name) => join(ROOT, 'packages', name, 'README.md'))].flatMap((page) => {
    const text = readFileSync(page, 'utf8');
    const programs = [...text.matchAll(/^```ts\n(.*?)^```$/gms)].map((m) => m[1] as string);
    expect(programs, page).not.toHaveLength(0);
    return programs;
  });
}

test('the programs of the README and of docs compile strictly and run', () => {
  const program = blocks.find((b) => b.info === 'ts')?.text ?? '';
  expect(program.trim().split('\n').length).toBeLessThanOrEqual(10);
  const folder = mkdtempSync(join(ROOT, 'node_modules/.tinwright-readme-'));
  try {
    const file = join(folder, 'program.ts');
    writeFileSync(file, program);
    const others = documentPrograms().map((text, i) => {
      const other = join(folder, `page-${i + 1}.ts`);
      writeFileSync(other, text);
      return other;
    });
    expect(others.length).toBeGreaterThan(3);
    // run in a browser by .ci/page-check.mjs
    const page = readFileSync(join(ROOT, 'packages/page/README.md'), 'utf8');
    const embedding = /^```ts browser\n(.*?)^```$/ms.exec(page)?.[1] ?? '';
    expect(embedding).toContain('definePageElement');
    writeFileSync(join(folder, 'embedding.ts'), embedding);
    expect(compiled(folder)).toBe('');
    const code = transpiled(program);
    writeFileSync(join(folder, 'program.mjs'), code);
    const all = others.map((other) => other.replace(/\.ts$/, '.mjs'));
    for (const [i, other] of others.entries())
      writeFileSync(all[i] as string, transpiled(readFileSync(other, 'utf8')));
    const every = all.map((each) => `await import(${JSON.stringify(pathToFileURL(each).href)});`).join('\n');
    expect(
      execFileSync(process.execPath, ['--input-type=module', '-e', every], { encoding: 'utf8' }),
    ).toMatch(/parts\/tray\.dxf/);
    // a 12 x 8 tray, 1 1/2 high, of 24 gauge: some 15 x 11 in
    const printed = execFileSync(process.execPath, [join(folder, 'program.mjs')], { encoding: 'utf8' });
    const [, x, y] = /tray \[ ([\d.]+), ([\d.]+) \]/.exec(printed) ?? [];
    expect(Number(x) / 25.4).toBeCloseTo(14.9, 0);
    expect(Number(y) / 25.4).toBeCloseTo(10.9, 0);
  } finally {
    rmSync(folder, { recursive: true });
  }
});

test('pictures are what the tool draws today; `npm run derive` draws them again', () => {
  const folder = join(ROOT, 'examples/pictures');
  const { job, assembly } = planJob(
    readJob(parse(readFileSync(join(ROOT, 'examples/harvest-carrier.yaml'), 'utf8'))),
  );
  if (assembly === null) throw new Error('the carrier has joints');
  const drawn = new Map([
    ...FAMILIES.map((f) => [`${f.name}.svg`, familyPicture(f)] as const),
    ['harvest-carrier.svg', assemblyPicture(job.name, assembly)] as const,
  ]);
  expect(readdirSync(folder).toSorted()).toEqual([...drawn.keys()].toSorted());
  for (const [file, drawing] of drawn)
    expect(readFileSync(join(folder, file), 'utf8'), file).toBe(toSvg(drawing));
});

test('the table of families is what they say of themselves; `npm run derive` writes it again', () => {
  const rows = [...README.matchAll(/^\| `([a-z-]+)`: (.*?)\. .* \| !\[/gm)].map(([, name, title]) => [
    name,
    title,
  ]);
  expect(rows).toEqual(FAMILIES.map((f) => [f.name, f.describe.title]));
});

test('links of the documents lead to files, every family is shown', () => {
  for (const document of ['README.md', 'DEVELOPERS.md']) {
    const links = [...readFileSync(join(ROOT, document), 'utf8').matchAll(/\]\(([^)#]+)\)/g)].map(
      ([, l]) => l ?? '',
    );
    for (const link of links)
      if (!link.startsWith('http')) expect(existsSync(join(ROOT, link)), link).toBe(true);
  }
  for (const { name } of FAMILIES) expect(README).toContain(`\`${name}\``);
});
