import { mkdir, readdir, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { WriteError } from '../../src/host/failure.js';
import { updateSet, writeSet } from '../../src/write/files.js';
import { below } from '../place.js';
import { type FaultyDisk, killedAt, QUICK, refusingAt } from './faulty-disk.js';
import {
  content,
  LID,
  LID_FILES,
  plans,
  saveTheirs,
  THEIRS,
  TRAY_FILES,
  withSet,
  withTheirs,
} from './sets.js';

const NOWHERE = { here: '/nowhere', home: '/nowhere' };
const SOUND = { disk: QUICK, kept: NOWHERE };
const PLANS = ['plans', 'plans.json', 'plans/tray.pdf'];
const OLD = withTheirs([...TRAY_FILES, ...PLANS]);
const NEW = withTheirs([...LID_FILES, ...PLANS]);

/** A set with plans beside it and files of the user's in it. */
async function used(): Promise<{ readonly around: string; readonly out: string }> {
  const place = await withSet();
  await writeSet(place.out, plans('tray'), SOUND);
  await saveTheirs(place.out);
  return place;
}

const tried = ({ disk }: FaultyDisk, out: string) =>
  writeSet(out, LID, { disk, kept: NOWHERE }).then(
    () => null,
    (error: unknown) => error,
  );

/** A process that was killed holds no lock; here it is this very process that goes on. */
async function withoutLocks(around: string): Promise<void> {
  for (const name of await readdir(around)) if (name.includes('tinwright-lock')) await rm(join(around, name));
}

/** How many steps a run takes when nothing goes wrong. */
async function stepsOfARun(counts: 'every step' | 'changes'): Promise<number> {
  const { out } = await used();
  const whole = refusingAt(-1, '', counts);
  expect(await tried(whole, out)).toBeNull();
  return whole.steps();
}

/** Every step of a run, from 1, each in a folder of its own: none waits for the disk of another. */
const atEveryStep = (last: number, check: (step: number) => Promise<void>) =>
  Promise.all(Array.from({ length: last }, (_, i) => check(i + 1)));

async function nothingOfTheirsIsLost(
  around: string,
  theirs: Readonly<Record<string, string>>,
): Promise<void> {
  const all = Object.values(await content(around));
  for (const text of Object.values(theirs)) expect(all).toContain(text);
}

test('a run takes many steps, each of which is tried below', async () => {
  expect(await stepsOfARun('every step')).toBeGreaterThan(60);
  expect(await stepsOfARun('changes')).toBeGreaterThan(25);
});

describe('killed before any step', () => {
  test.each([
    ['and run again', async () => undefined],
    [
      'and the folder was made by hand meanwhile, where none stood',
      async (out: string) => {
        await mkdir(join(out, 'parts'), { recursive: true });
        await writeFile(join(out, 'late.txt'), 'late');
        await writeFile(join(out, 'parts', 'late.jpg'), 'late too');
      },
    ],
  ])('%s: old set or new, then the new one and all of theirs', async (_, meanwhile) => {
    await atEveryStep(await stepsOfARun('changes'), async (step) => {
      const { around, out } = await used();
      await tried(killedAt(step), out);
      await nothingOfTheirsIsLost(around, THEIRS);
      const standing = (await readdir(around)).includes('out') ? await below(out) : [];
      const [isOld, isNew] = [standing.includes('parts/tray.dxf'), standing.includes('parts/lid.dxf')];
      expect([isOld, isNew, standing.length === 0].filter(Boolean), `step ${step}`).toHaveLength(1);
      for (const file of isOld ? TRAY_FILES : isNew ? LID_FILES : []) expect(standing).toContain(file);
      await withoutLocks(around);
      await meanwhile(out);
      const late = Object.keys(await content(out).catch(() => ({}))).filter((n) => n.includes('late'));
      await writeSet(out, LID, SOUND);
      expect(await below(out), `step ${step}`).toEqual([...NEW, ...late].toSorted());
      expect(await content(out)).toMatchObject(THEIRS);
      expect(await readdir(around)).toEqual(['out']);
    });
  });

  test('twice, the second time while it brings things into order', async () => {
    await atEveryStep(await stepsOfARun('changes'), async (first) => {
      if (first < 3 || first % 2 === 0) return;
      for (let second = 2 + (first % 3); second <= 25; second += 5) {
        const { around, out } = await used();
        await tried(killedAt(first), out);
        await withoutLocks(around);
        await tried(killedAt(second), out);
        await withoutLocks(around);
        await writeSet(out, LID, SOUND);
        expect(await below(out), `steps ${first} and ${second}`).toEqual(NEW);
        expect(await content(out)).toMatchObject(THEIRS);
        expect(await readdir(around)).toEqual(['out']);
      }
    });
  });
});

describe.each([
  ['EIO', 'every step'],
  ['ENOSPC', 'changes'],
  ['EACCES', 'changes'],
] as const)('refused with %s at %s', (code, counts) => {
  test('the message is what happened, and the next run mends it', async () => {
    await atEveryStep(await stepsOfARun(counts), async (step) => {
      const { around, out } = await used();
      const before = await content(out);
      const error = await tried(refusingAt(step, code, counts), out);
      await nothingOfTheirsIsLost(around, THEIRS);
      const now = await content(out).catch(() => ({}));
      if (error === null) expect(Object.keys(now), `step ${step}`).toEqual(NEW);
      else {
        expect(error).toBeInstanceOf(WriteError);
        const { message } = error as WriteError;
        if (message.includes('Nothing was changed')) expect(now, `step ${step}: ${message}`).toEqual(before);
        else if (message.startsWith('is written')) {
          expect(Object.keys(now), `step ${step}: ${message}`).toEqual(
            expect.arrayContaining([...LID_FILES]),
          );
          if (Object.keys(now).length < NEW.length)
            expect(message).toContain(join(around, '.out.tinwright-old'));
        } else expect(message).toContain(`lies in ${join(around, '.out.tinwright-old')}`);
      }
      await withoutLocks(around);
      await writeSet(out, LID, SOUND);
      expect(await below(out), `step ${step}`).toEqual(NEW);
      expect(await readdir(around)).toEqual(['out']);
    });
  });
});

test('a set of some files, killed before any step: the others stay, also in the end', async () => {
  const some = async () => [
    { path: 'plans/lid.pdf', content: 'lid' },
    {
      path: 'plans.json',
      content: String(plans('tray')[1]?.content).replace(
        '"plans/tray.pdf"',
        '"plans/tray.pdf","plans/lid.pdf"',
      ),
    },
  ];
  const count = refusingAt(-1, '', 'changes');
  await updateSet((await used()).out, some, { disk: count.disk, kept: NOWHERE });
  await atEveryStep(count.steps(), async (step) => {
    const { around, out } = await used();
    await updateSet(out, some, { disk: killedAt(step).disk, kept: NOWHERE }).catch(() => undefined);
    await withoutLocks(around);
    await updateSet(out, some, SOUND);
    expect(await below(out), `step ${step}`).toEqual([...OLD, 'plans/lid.pdf'].toSorted());
    expect(await content(out)).toMatchObject({ ...THEIRS, 'plans/tray.pdf': 'tray' });
    expect(await readdir(around)).toEqual(['out']);
  });
});
