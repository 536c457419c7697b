// Places that a set is never put in, and what is said of them.
import { mkdir, readFile, readlink, stat, symlink, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { WriteError } from '../../src/host/failure.js';
import { DISK } from '../../src/write/disk.js';
import { writeSet } from '../../src/write/files.js';
import { below, emptyFolder } from '../place.js';
import { content, LID, listOf, TRAY, TRAY_FILES } from './sets.js';

describe('a place that is not ours is refused and left as it is', () => {
  const NOT_OURS: readonly (readonly [string, string, string])[] = [
    ['a folder with a file', 'plan.txt', 'mine'],
    ['a folder with a hidden file', '.gitignore', '*'],
    ['a folder with a job.json of another program', 'job.json', '{"name":"other"}'],
    ['a folder with a job.json that lists no files', 'job.json', '{"format":1,"program":"tinwright 0.1.0"}'],
    ['a folder with a list of files of another program', 'job.json', '{"format":1,"files":["job.json"]}'],
    ['a folder with a job.json of another format', 'job.json', '{"format":2,"files":["job.json"]}'],
    ['a folder with a job.json that is no JSON', 'job.json', 'format: 1'],
    ['a folder with a job.json of nothing', 'job.json', 'null'],
  ];

  test.each(NOT_OURS)('%s', async (_, name, text) => {
    const around = await emptyFolder();
    const out = join(around, 'out');
    await mkdir(out);
    await writeFile(join(out, name), text);
    await expect(writeSet(out, TRAY)).rejects.toThrow(WriteError);
    await expect(writeSet(out, TRAY)).rejects.toThrow(/holds files that are not from tinwright.*--out/);
    expect(await content(around)).toEqual({ out: '', [`out/${name}`]: text });
  });

  test('a file', async () => {
    const around = await emptyFolder();
    await writeFile(join(around, 'out'), 'mine');
    await expect(writeSet(join(around, 'out'), TRAY)).rejects.toThrow(/is a file\. Choose another folder/);
    expect(await content(around)).toEqual({ out: 'mine' });
  });

  test.each(['nowhere', 'deep/nowhere'])('a link that leads to %s', async (target) => {
    const around = await emptyFolder();
    await symlink(target, join(around, 'out'));
    await expect(writeSet(join(around, 'out'), TRAY)).rejects.toThrow(
      'is a link that leads nowhere. Choose another folder with --out',
    );
    expect(await below(around)).toEqual(['out']);
    expect(await readlink(join(around, 'out'))).toBe(target);
  });

  test.each([['.'], [process.cwd()]])('%s, which holds the folder one stands in', async (out) => {
    await expect(writeSet(out, TRAY)).rejects.toThrow(
      'would be replaced under your feet. Choose a folder below this one',
    );
  });

  test.each(['out', 'deep/out'])('%s below a file', async (below_) => {
    const around = await emptyFolder();
    await writeFile(join(around, 'file'), 'mine');
    await expect(writeSet(join(around, 'file', below_), TRAY)).rejects.toThrow(
      /cannot be written: part of the path is a file\. Nothing was changed/,
    );
    expect(await content(around)).toEqual({ file: 'mine' });
  });
});

describe('a folder that is never replaced', () => {
  const none = { here: '/nowhere', home: '/nowhere' };

  test('a home folder, and one around it: refused before anything in it is listed', async () => {
    const home = await emptyFolder();
    const disk = {
      ...DISK,
      names: async () => {
        throw new Error('listed');
      },
    };
    for (const place of [home, join(home, '..'), '/'])
      await expect(writeSet(place, TRAY, { disk, kept: { ...none, home } })).rejects.toThrow(
        'is your home folder, or holds it. Choose a folder below it',
      );
    expect(await below(home)).toEqual([]);
    await writeSet(join(home, 'out'), TRAY, { disk: DISK, kept: { ...none, home } });
    expect(await below(join(home, 'out'))).toEqual(TRAY_FILES);
  });

  test('a mount point: says so, and what would work', async () => {
    const place = await emptyFolder();
    const device = (await stat(place)).dev;
    const lookThrough = async (path: string) => {
      const found = await DISK.lookThrough(path);
      return found === null || path !== place ? found : { ...found, device: device + 1 };
    };
    await expect(writeSet(place, TRAY, { disk: { ...DISK, lookThrough }, kept: none })).rejects.toThrow(
      `is a mount point and cannot be replaced. Choose a folder in it, such as ${join(place, 'set')}`,
    );
  });

  test('one in a folder that is read-only: the message names that folder', async () => {
    const around = await emptyFolder();
    const create = async () => {
      throw Object.assign(new Error(), { code: 'EACCES' });
    };
    await expect(
      writeSet(join(around, 'out'), TRAY, { disk: { ...DISK, create }, kept: none }),
    ).rejects.toThrow(
      `cannot be written: the folder around it, ${around}, is read-only for you. Nothing was changed`,
    );
    expect(await below(around)).toEqual([]);
  });
});

test('a list that names files outside its folder gives no right to them', async () => {
  const around = await emptyFolder();
  const out = join(around, 'out');
  await mkdir(out);
  await writeFile(join(around, 'thesis.txt'), 'mine');
  const list = listOf('job.json', ['../thesis.txt', join(around, 'thesis.txt')]);
  await writeFile(join(out, 'job.json'), list.content);
  await writeSet(out, LID);
  expect(await readFile(join(around, 'thesis.txt'), 'utf8')).toBe('mine');
});
