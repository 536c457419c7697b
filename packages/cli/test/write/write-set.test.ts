import { chmod, lstat, mkdir, readFile, readlink, stat, symlink, utimes, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { DISK } from '../../src/write/disk.js';
import { writeSet } from '../../src/write/files.js';
import { below, emptyFolder } from '../place.js';
import { content, LID, LID_FILES, plans, set, TRAY, TRAY_FILES, withSet } from './sets.js';

describe('a set appears complete', () => {
  test('in a new folder, with text and bytes as given, and nothing beside it', async () => {
    const around = await emptyFolder();
    const bytes = new Uint8Array([0, 255, 10, 13]);
    await writeSet(join(around, 'deep', 'out'), [...TRAY, { path: 'raw/a.bin', content: bytes }]);
    const out = join(around, 'deep', 'out');
    expect(await below(out)).toEqual([...TRAY_FILES, 'raw', 'raw/a.bin']);
    expect(await readFile(join(out, 'parts/tray.dxf'), 'utf8')).toBe('parts/tray.dxf');
    expect(new Uint8Array(await readFile(join(out, 'raw/a.bin')))).toEqual(bytes);
    expect(await below(join(around, 'deep'))).toHaveLength(1 + 6);
  });

  test('in a folder that is there and empty', async () => {
    const out = await emptyFolder();
    await writeSet(out, TRAY);
    expect(await below(out)).toEqual(TRAY_FILES);
  });

  test('with a slash behind the name of the folder', async () => {
    const around = await emptyFolder();
    await writeSet(`${join(around, 'out')}/`, TRAY);
    expect(await below(join(around, 'out'))).toEqual(TRAY_FILES);
  });
});

describe('a rerun', () => {
  test('replaces the set as one, stale files go', async () => {
    const { around, out } = await withSet();
    await writeSet(out, LID);
    expect(await below(out)).toEqual(LID_FILES);
    expect(await below(around)).toHaveLength(1 + LID_FILES.length);
  });

  test('replaces what a file held', async () => {
    const { out } = await withSet();
    await writeSet(out, set(['parts/tray.dxf', 'parts/tray.svg'], ' again'));
    expect(await readFile(join(out, 'parts/tray.dxf'), 'utf8')).toBe('parts/tray.dxf again');
  });

  test('keeps files that somebody added, beside the set and among its parts', async () => {
    const { out } = await withSet();
    await writeFile(join(out, 'notes.txt'), 'rack 3');
    await writeFile(join(out, 'parts', 'photo.jpg'), 'jpg');
    await mkdir(join(out, 'old', 'deep'), { recursive: true });
    await writeFile(join(out, 'old', 'deep', 'a.txt'), 'a');
    await symlink(join(out, '..', 'nowhere'), join(out, 'link'));
    await writeSet(out, LID);
    expect(await content(out)).toMatchObject({
      'notes.txt': 'rack 3',
      'parts/photo.jpg': 'jpg',
      'old/deep/a.txt': 'a',
      'parts/lid.dxf': 'parts/lid.dxf',
    });
    expect(await readlink(join(out, 'link'))).toBe(join(out, '..', 'nowhere'));
    expect(await below(out)).not.toContain('parts/tray.dxf');
    await writeSet(out, TRAY);
    expect(await readFile(join(out, 'notes.txt'), 'utf8')).toBe('rack 3');
  });
});

describe('what somebody added', () => {
  test('with the name of a new file: refused, nothing changed', async () => {
    const { around, out } = await withSet(set(['parts/tray.dxf']));
    await writeFile(join(out, 'parts', 'lid.dxf'), 'theirs');
    const before = await content(around);
    await expect(writeSet(out, set(['parts/tray.dxf', 'parts/lid.dxf']))).rejects.toMatchObject({
      place: join(out, 'parts', 'lid.dxf'),
      message: 'is in the way and not from tinwright. Move it away, or choose another folder',
    });
    expect(await content(around)).toEqual(before);
  });

  test('a relative link stays relative', async () => {
    const { out } = await withSet();
    await symlink('job.json', join(out, 'link'));
    await writeSet(out, LID);
    expect(await readlink(join(out, 'link'))).toBe('job.json');
  });

  test('an empty folder stays', async () => {
    const { out } = await withSet();
    await mkdir(join(out, 'photos', 'rack 3'), { recursive: true });
    await writeSet(out, LID);
    expect(await below(out)).toEqual([...LID_FILES, 'photos', 'photos/rack 3']);
  });

  test('rights given to the folder stay', async () => {
    const { out } = await withSet();
    for (const mode of [0o700, 0o775]) {
      await chmod(out, mode);
      await writeSet(out, LID);
      expect((await stat(out)).mode & 0o777).toBe(mode);
    }
  });
});

test('a link to a folder stays a link, the set stands in its target', async () => {
  const { around, out } = await withSet();
  await symlink('out', join(around, 'link'));
  await writeSet(join(around, 'link'), LID);
  expect((await lstat(join(around, 'link'))).isSymbolicLink()).toBe(true);
  expect(await readlink(join(around, 'link'))).toBe('out');
  expect(await below(out)).toEqual(LID_FILES);
});

describe('sets of several commands share a folder', () => {
  test('each replaces its own files and leaves those of the others', async () => {
    const { out } = await withSet();
    await writeSet(out, plans('tray'));
    expect(await below(out)).toEqual([...TRAY_FILES, 'plans', 'plans.json', 'plans/tray.pdf'].toSorted());
    await writeSet(out, plans('lid'));
    expect(await below(out)).toEqual([...TRAY_FILES, 'plans', 'plans.json', 'plans/lid.pdf'].toSorted());
    await writeSet(out, LID);
    expect(await below(out)).toEqual([...LID_FILES, 'plans', 'plans.json', 'plans/lid.pdf'].toSorted());
  });

  test('a set of one kind makes the folder known to the others', async () => {
    const out = join(await emptyFolder(), 'out');
    await writeSet(out, plans('tray'));
    await writeSet(out, TRAY);
    expect(await below(out)).toEqual([...TRAY_FILES, 'plans', 'plans.json', 'plans/tray.pdf'].toSorted());
  });
});

describe('files that are kept', () => {
  test('keep their times and rights, and are the same files still', async () => {
    const { out } = await withSet();
    await mkdir(join(out, 'photos'));
    const paths = ['notes.txt', 'photos/big.raw', 'parts/photo.jpg'].map((n) => join(out, n));
    for (const path of paths) {
      await writeFile(path, 'theirs');
      await chmod(path, 0o640);
      await utimes(path, 1_000_000, 1_000_000);
    }
    await utimes(join(out, 'photos'), 2_000_000, 2_000_000);
    const before = await Promise.all(paths.map((p) => stat(p)));
    await writeSet(out, LID);
    const after = await Promise.all(paths.map((p) => stat(p)));
    const facts = after.map(({ ino, mode, mtimeMs }) => ({ ino, mode, mtimeMs }));
    expect(facts).toEqual(before.map(({ ino, mode, mtimeMs }) => ({ ino, mode, mtimeMs })));
    expect((await stat(join(out, 'photos'))).mtimeMs).toBe(2_000_000_000);
  });

  test('a folder that is read-only stays so, with what is in it', async () => {
    const { out } = await withSet();
    await mkdir(join(out, 'photos'));
    await writeFile(join(out, 'photos', 'a.jpg'), 'a');
    await chmod(join(out, 'photos'), 0o555);
    await chmod(join(out, 'parts'), 0o555);
    const strict = {
      ...DISK,
      rename: async (from: string, to: string) => {
        if (/photos$/.test(from) && ((await stat(from)).mode & 0o200) === 0)
          throw Object.assign(new Error(), { code: 'EACCES' }); // as the system does for who is not root
        return DISK.rename(from, to);
      },
    };
    await writeSet(out, LID, { disk: strict, kept: { here: '/nowhere', home: '/nowhere' } });
    expect(await content(out)).toMatchObject({ 'photos/a.jpg': 'a', 'parts/lid.dxf': 'parts/lid.dxf' });
    for (const name of ['photos', 'parts']) expect((await stat(join(out, name))).mode & 0o777).toBe(0o555);
  });
});
