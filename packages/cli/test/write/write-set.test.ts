import {
  chmod,
  lstat,
  mkdir,
  readFile,
  readlink,
  rename,
  stat,
  symlink,
  utimes,
  writeFile,
} from 'node:fs/promises';
import { join } from 'node:path';
import type { OutFile } from '@tinwright/files';
import { describe, expect, test } from 'vitest';
import { WriteError } from '../../src/failure.js';
import { writeSet } from '../../src/files.js';
import { DISK } from '../../src/write/disk.js';
import { below, emptyFolder } from '../place.js';
import { content, LID, LID_FILES, listOf, plans, set, TRAY, TRAY_FILES, withSet } from './sets.js';

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

describe('a failure while writing', () => {
  const COLLIDING: readonly (readonly [string, readonly OutFile[]])[] = [
    [
      'a folder where a file should be',
      [
        { path: 'a/b', content: '1' },
        { path: 'a', content: '2' },
      ],
    ],
    [
      'a file where a folder should be',
      [
        { path: 'a', content: '1' },
        { path: 'a/b', content: '2' },
      ],
    ],
    [
      'two files of one path',
      [
        { path: 'a', content: '1' },
        { path: 'a', content: '2' },
      ],
    ],
    ['a name longer than a file may have', [{ path: 'a'.repeat(300), content: '1' }]],
    ['content that fails', [{ path: 'a', content: null as unknown as string }]],
  ];

  test.each(COLLIDING)('%s: the old set stays whole, nothing is left beside it', async (_, bad) => {
    const { around, out } = await withSet();
    const before = await content(around);
    await expect(writeSet(out, [...bad, ...LID])).rejects.toThrow(WriteError);
    await expect(writeSet(out, [...LID, ...bad])).rejects.toThrow('Nothing was changed');
    expect(await content(around)).toEqual(before);
  });

  test.each(COLLIDING)('%s: where there was no set there is none, nor the way to it', async (_, bad) => {
    const around = await emptyFolder();
    for (const out of [join(around, 'out'), join(around, 'deep', 'deeper', 'out')]) {
      await expect(writeSet(out, [...TRAY, ...bad])).rejects.toThrow(WriteError);
      expect(await below(around)).toEqual([]);
    }
  });
});

describe('a run that was cut off', () => {
  const sibling = (around: string, what: 'old' | 'new') => join(around, `.out.tinwright-${what}`);

  test('between the two renames: the next run finds the old set, with what was added to it', async () => {
    const { around, out } = await withSet();
    await writeFile(join(out, 'notes.txt'), 'rack 3');
    await rename(out, sibling(around, 'old'));
    await mkdir(sibling(around, 'new'));
    await writeFile(join(sibling(around, 'new'), 'half'), 'half');
    await writeSet(out, LID);
    expect(await below(around)).toEqual([
      'out',
      ...[...LID_FILES, 'notes.txt'].toSorted().map((f) => `out/${f}`),
    ]);
  });

  test('before them: what it had written goes', async () => {
    const { around, out } = await withSet();
    await mkdir(sibling(around, 'new'));
    await writeFile(join(sibling(around, 'new'), 'half'), 'half');
    await writeSet(out, LID);
    expect(await below(around)).toEqual(['out', ...LID_FILES.map((f) => `out/${f}`)]);
  });

  test('after them: the set it replaced goes, what is not of a set is kept', async () => {
    const { around, out } = await withSet();
    await writeSet(sibling(around, 'old'), set(['parts/old.dxf']));
    await writeFile(join(sibling(around, 'old'), 'notes.txt'), 'rack 3');
    await writeSet(out, LID);
    expect(await below(around)).toEqual([
      'out',
      ...[...LID_FILES, 'notes.txt'].toSorted().map((f) => `out/${f}`),
    ]);
  });

  test('between them, and somebody makes the folder anew: both are there', async () => {
    const { around, out } = await withSet();
    await writeFile(join(out, 'notes.txt'), 'rack 3');
    await rename(out, sibling(around, 'old'));
    await mkdir(sibling(around, 'new'));
    await mkdir(out);
    await writeFile(join(out, 'notes.txt'), 'rack 4');
    await writeSet(out, LID);
    expect(await content(out)).toMatchObject({ 'notes.txt': 'rack 3', 'notes (kept 1).txt': 'rack 4' });
    expect(await below(around)).toHaveLength(1 + LID_FILES.length + 2);
  });

  test('between them, and the next run fails: the old set is back whole', async () => {
    const { around, out } = await withSet();
    const before = await content(around);
    await rename(out, sibling(around, 'old'));
    await expect(writeSet(out, [...LID, ...LID])).rejects.toThrow(WriteError);
    expect(await content(around)).toEqual(before);
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
