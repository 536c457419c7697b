import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { tinwright } from '../host.js';
import { stripJob } from '../jobs.js';
import { emptyFolder, jobFile } from '../place.js';

const FAMILY = (name: string) => `{
  name: '${name}',
  describe: { title: 'rod for runner beans', summary: 'A rod.', sizes: {}, example: {} },
  params: () => ({}),
  values: {},
  derived: () => [],
  part: () => { throw new Error('not built here'); },
}`;

async function moduleFile(source: string): Promise<string> {
  const path = join(await emptyFolder(), 'own.mjs');
  await writeFile(path, source);
  return path;
}

describe('--with', () => {
  test('adds a family of one’s own to the list, behind the built-in ones', async () => {
    const own = await moduleFile(`export default ${FAMILY('bean-rod')};\n`);
    const { exit, out } = await tinwright('families', '--with', own);
    expect(exit).toBe(0);
    expect(out).toMatch(/^hemmed-channel /m);
    expect(out).toMatch(/^bean-rod +rod for runner beans\n$/m);
  });

  test('adds several from one module', async () => {
    const own = await moduleFile(`export default [${FAMILY('bean-rod')}, ${FAMILY('pea-rod')}];\n`);
    const { out } = await tinwright('families', '--with', own);
    const names = out
      .trimEnd()
      .split('\n')
      .map((line) => line.split(' ')[0]);
    expect(names.slice(-2)).toEqual(['bean-rod', 'pea-rod']);
  });

  test('makes its name known to jobs', async () => {
    const own = await moduleFile(`export default ${FAMILY('bean-rod')};\n`);
    const job = await jobFile(stripJob(['bent-strip', 'bean-rdo']));
    const { err } = await tinwright('check', job, '--with', own);
    expect(err).toContain('Did you mean "bean-rod"?');
  });

  test.each([
    ['a name that is taken', `export default ${FAMILY('handle')};`, 'there is a family "handle" already'],
    [
      'one name twice',
      `export default [${FAMILY('bean-rod')}, ${FAMILY('bean-rod')}];`,
      'there is a family "bean-rod" already. Give yours another name',
    ],
    ['no default export', 'export const family = 1;', 'export what defineFamily returns'],
    ['an empty list', 'export default [];', 'export what defineFamily returns'],
    ['something else', 'export default { name: "rod" };', 'export what defineFamily returns'],
    ['a fault when it is run', 'throw new Error("no rods left");', 'cannot be loaded: no rods left'],
  ])('refuses a module with %s', async (_, source, says) => {
    const own = await moduleFile(source);
    const { exit, out, err } = await tinwright('families', '--with', own);
    expect(exit).toBe(2);
    expect(out).toBe('');
    expect(err).toContain(`--with ${own}: `);
    expect(err).toContain(says);
  });

  test('refuses a module that is not there', async () => {
    const path = join(await emptyFolder(), 'own.mjs');
    const { exit, err } = await tinwright('families', '--with', path);
    expect(exit).toBe(2);
    expect(err).toContain(`--with ${path}: there is no such file`);
  });
});
