import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { FAMILIES } from '@tinwright/core';
import { expect, test } from 'vitest';
import { tinwright } from '../host.js';
import { below, emptyFolder } from '../place.js';

test.each(FAMILIES.map((f) => f.name))(
  'a picture of %s: one SVG file, the words are still printed',
  async (name) => {
    const folder = await emptyFolder();
    const { exit, out, err } = await tinwright('families', name, '--picture', join(folder, 'picture.svg'));
    expect({ exit, err }).toEqual({ exit: 0, err: '' });
    expect(out).toContain(`tinwright starter ${name}`);
    expect(await below(folder)).toEqual(['picture.svg']);
    expect(await readFile(join(folder, 'picture.svg'), 'utf8')).toMatch(
      /^<\?xml.*<svg .*<\/svg>\n<!-- tinwright \d\S* -->\n$/s,
    );
  },
);

test('a picture replaces an older one, and is the same bytes again', async () => {
  const path = join(await emptyFolder(), 'picture.svg');
  await tinwright('families', 'lid', '--picture', path);
  const old = await readFile(path, 'utf8');
  await tinwright('families', 'handle', '--picture', path);
  const first = await readFile(path, 'utf8');
  await tinwright('families', 'handle', '--picture', path);
  expect(first).not.toBe(old);
  expect(await readFile(path, 'utf8')).toBe(first);
});

test('a picture does not replace a file of somebody else, unless that is forced', async () => {
  const path = join(await emptyFolder(), 'picture.svg');
  await writeFile(path, '<svg/>');
  const { exit, err } = await tinwright('families', 'handle', '--picture', path);
  expect(exit).toBe(3);
  expect(err).toContain('is there and not as tinwright wrote it. Name another file, or give --force');
  expect(await readFile(path, 'utf8')).toBe('<svg/>');
  expect((await tinwright('families', 'handle', '--picture', path, '--force')).exit).toBe(0);
  expect(await readFile(path, 'utf8')).toContain('tinwright');
});

test('a picture that cannot be written: exit 3, what is there stays, nothing is left beside it', async () => {
  const folder = await emptyFolder();
  await writeFile(join(folder, 'file'), 'mine');
  const place = join(folder, 'file', 'picture.svg');
  for (const [path, why] of [
    [folder, 'is a folder. Name a file in it'],
    [place, 'cannot be written: part of the path is a file. Nothing was changed'],
  ] as const) {
    const { exit, err } = await tinwright('families', 'handle', '--picture', path);
    expect(exit).toBe(3);
    expect(err).toBe(`${path}: ${why}.\n`);
  }
  expect(await below(folder)).toEqual(['file']);
  expect(await readFile(join(folder, 'file'), 'utf8')).toBe('mine');
});

test('a picture of no family is refused, nothing is written', async () => {
  const folder = await emptyFolder();
  expect(await tinwright('families', '--picture', join(folder, 'a.svg'))).toEqual({
    exit: 2,
    out: '',
    err: 'families: name the family to draw with --picture.\n',
  });
  expect(await below(folder)).toEqual([]);
});
