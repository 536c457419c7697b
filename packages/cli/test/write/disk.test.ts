import { symlink, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { codeOf, DISK } from '../../src/write/disk.js';
import { below, emptyFolder } from '../place.js';

const refused = (path: string) => DISK.makeFolder(path).then(() => 'made', codeOf);

test('folders are made on the way, the outermost that was made is told; one that is there is left', async () => {
  const folder = await emptyFolder();
  expect(await DISK.makeFolder(join(folder, 'a/b/c'))).toBe(join(folder, 'a'));
  expect(await DISK.makeFolder(join(folder, 'a/b/d'))).toBe(join(folder, 'a/b/d'));
  expect(await DISK.makeFolder(join(folder, 'a/b'))).toBeUndefined();
});

test('made twice at once, a folder is there, and nobody is refused', async () => {
  const folder = await emptyFolder();
  const ways = Array.from({ length: 8 }, () => DISK.makeFolder(join(folder, 'a/b')));
  const outermost = await Promise.all(ways);
  expect(outermost.filter((m) => m === join(folder, 'a')).length).toBeGreaterThan(0);
});

test('what is a file, or lies below one, or a link to nowhere, is no place for a folder', async () => {
  const folder = await emptyFolder();
  await writeFile(join(folder, 'file'), '');
  await symlink(join(folder, 'nowhere'), join(folder, 'link'));
  expect(await refused(join(folder, 'file'))).toBe('EEXIST');
  expect(await refused(join(folder, 'file/a'))).toBe('ENOTDIR');
  expect(await refused(join(folder, 'link'))).toBe('EEXIST');
  expect(await below(folder)).toEqual(['file', 'link']);
});

test('where the system makes no folders one is refused, at once', async () => {
  expect(await refused('/proc/tinwright-none')).not.toBe('made');
  expect(await refused('/proc/tinwright-none/deeper')).not.toBe('made');
});
