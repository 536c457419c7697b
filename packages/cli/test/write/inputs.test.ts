import { mkdir, readFile, symlink, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { tinwright } from '../host.js';
import { HEAD, stripJob } from '../jobs.js';
import { emptyFolder, jobFile } from '../place.js';

const read = (...path: readonly string[]) => readFile(join(...path), 'utf8');

/** A job whose box has a cut-out drawn in a file. */
const drawnJob = (cut: string) =>
  `${HEAD}  - { name: box, family: open-box, length: 200, width: 150, height: 40, cutouts: [{ type: outline, panel: base, cut: ${cut} }] }\n`;
const DRAWING =
  '<svg xmlns="http://www.w3.org/2000/svg" width="40mm" height="20mm" viewBox="0 0 40 20"><rect width="10" height="5"/></svg>\n';

describe('what a run reads it does not write over, not with --force either', () => {
  const says = 'is what this is made of. Name another file. Nothing was changed';

  test('page: its job, by its name, another way to it, and a link', async () => {
    const job = await jobFile(stripJob());
    const folder = dirname(job);
    await symlink(job, join(folder, 'link.html'));
    await mkdir(join(folder, 'in'));
    for (const out of [job, join(folder, 'in', '..', 'job.yaml'), join(folder, 'link.html')]) {
      const ran = await tinwright('page', job, '--out', out, '--force');
      expect(ran).toMatchObject({ exit: 3, out: '', err: expect.stringContaining(says) });
    }
    expect(await read(job)).toBe(stripJob());
  });

  test('packet: its job, its rack and its shop, told before it is drawn', async () => {
    const folder = await emptyFolder();
    const at = (name: string) => join(folder, name);
    await writeFile(at('job.pdf'), stripJob());
    await writeFile(at('shop.html'), 'units: mm\n');
    const rack =
      'units: mm\nsheets:\n  - { name: full, material: galvanised-steel, thickness: 1, size: [2000, 1000] }\n';
    await writeFile(at('rack.pdf'), rack);
    for (const out of ['job.pdf', 'shop.html', 'rack.pdf']) {
      const options = ['--shop', at('shop.html'), '--rack', at('rack.pdf'), '--force'];
      const ran = await tinwright('packet', at('job.pdf'), '--out', at(out), ...options);
      expect(ran).toMatchObject({ exit: 3, out: '', err: expect.stringContaining(says) });
    }
    expect(await read(at('job.pdf'))).toBe(stripJob());
    expect(await read(at('shop.html'))).toBe('units: mm\n');
    expect(await read(at('rack.pdf'))).toBe(rack);
  });

  test('page: a drawing of its job', async () => {
    const job = await jobFile(drawnJob('leaf.svg'));
    const leaf = join(dirname(job), 'leaf.svg');
    await writeFile(leaf, DRAWING);
    const ran = await tinwright('page', job, '--out', leaf, '--force');
    expect(ran).toMatchObject({ exit: 3, err: expect.stringContaining(says) });
    expect(await read(leaf)).toBe(DRAWING);
  });

  test('families: a module of one’s own', async () => {
    const module = join(await emptyFolder(), 'own.mjs');
    const source = 'const [name, describe, values, params, part, derived] = ["rod", {}, {}, 1, 1, 1];\n';
    await writeFile(module, `${source}export default { name, describe, values, params, part, derived };\n`);
    const before = await read(module);
    const options = ['--with', module, '--picture', module, '--force'];
    const ran = await tinwright('families', 'open-box', ...options);
    expect(ran).toMatchObject({ exit: 3, err: expect.stringContaining(says) });
    expect(await read(module)).toBe(before);
  });

  test('make: a drawing among the files of the set that is replaced', async () => {
    const folder = await emptyFolder();
    const at = (name: string) => join(folder, name);
    await writeFile(at('box.yaml'), drawnJob('set/parts/leaf.svg'));
    await writeFile(at('leaf.yaml'), stripJob(['bracket', 'leaf']));
    await tinwright('make', at('leaf.yaml'), '--out', at('set'));
    const list = JSON.parse(await read(at('set'), 'job.json'));
    // a drawing that can be cut, where a file of the set stood
    await writeFile(at('set/parts/leaf.svg'), DRAWING);
    const ran = await tinwright('make', at('box.yaml'), '--out', at('set'));
    expect(ran.exit).toBe(3);
    expect(ran.err).toContain('set: holds parts/leaf.svg, of which this is made');
    expect(JSON.parse(await read(at('set'), 'job.json'))).toEqual(list);
    expect(await read(at('set'), 'parts', 'leaf.svg')).toBe(DRAWING);
    expect((await tinwright('make', at('box.yaml'), '--out', at('other'))).exit).toBe(0);
  });
});
