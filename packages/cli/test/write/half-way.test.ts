// What stands when writing a set fails or is cut off.
import { mkdir, rename, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { OutFile } from '@tinwright/files';
import { describe, expect, test } from 'vitest';
import { WriteError } from '../../src/host/failure.js';
import { writeSet } from '../../src/write/files.js';
import { below, emptyFolder } from '../place.js';
import { content, LID, LID_FILES, set, TRAY, withSet } from './sets.js';

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
