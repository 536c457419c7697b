import { cp, rename, rm } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { PROGRAM } from '@tinwright/core';
import { type Host, many } from '../host/console.js';
import { EXIT, type ExitCode, refuse, WriteError, writing } from '../host/failure.js';
import { DISK } from '../write/disk.js';
import { told } from '../write/reason.js';
import { replaceFile } from '../write/write-file.js';
import { apart } from './apart.js';
import { indexPicture, MOST_PICTURES } from './index-picture.js';
import { csvName, type JournalLine, linesOf, openJournal } from './journal.js';
import { type FoundShard, shardsIn } from './shard-list.js';

/** Join what shards made: the folders of sizes in the first one, and one list of all, in the order of the table. */
export async function mergeSizes(folders: readonly string[], host: Host, json: boolean): Promise<ExitCode> {
  const found = (await Promise.all(folders.map(shardsIn))).flat();
  const shards = found.toSorted((a, b) => a.index - b.index);
  const problem = apart(shards) ?? (await short(shards));
  if (problem !== null) return refuse(host, json, 'shards', 'sizes', `${folders.join(', ')}: ${problem}`);
  const out = folders[0] as string;
  const names: string[] = [];
  let total = 0;
  const failed = await writing(host, json, () =>
    told(
      out,
      (why) => `cannot be merged: ${why}. The shards stand as they were`,
      async () => {
        const journal = await openJournal(out, 'sizes.csv');
        try {
          for await (const { line, folder } of inOrder(shards)) {
            total += 1;
            if (line.status === 'made' && names.length < MOST_PICTURES) names.push(line.name);
            if (line.status === 'made') await bring(join(folder, line.name), join(out, line.name));
            await journal.write(line);
          }
          await journal.finish();
        } finally {
          await journal.leave();
        }
        const list = { format: 1, program: PROGRAM.mark, files: ['sizes.csv', 'index.svg'] };
        await replaceFile(join(out, 'sizes.json'), `${JSON.stringify(list, null, 2)}\n`, 'force');
        await replaceFile(join(out, 'index.svg'), await indexPicture(out, names), 'force');
      },
    ),
  );
  if (failed !== EXIT.done) return failed;
  host.out(
    json
      ? `${JSON.stringify({ out, sizes: total, shards: shards.length }, null, 2)}\n`
      : `${many(total, 'size')} of ${many(shards.length, 'shard')} in ${out}.\n`,
  );
  return EXIT.done;
}

/** A shard with less or more lines than rows are its own; null where none is. */
async function short(shards: readonly FoundShard[]): Promise<string | null> {
  for (const shard of shards) {
    const { index, count, folder, of } = shard;
    const own = Math.floor(((of?.rows ?? 0) + count - index) / count);
    let lines = 0;
    for await (const _ of linesOf(join(folder, csvName(shard)))) lines += 1;
    if (lines !== own)
      return `${csvName(shard)} has ${many(lines, 'line')} for ${many(own, 'row')}: run it again with --shard ${index}/${count}`;
  }
  return null;
}

/** Row 1 is of the first shard, row 2 of the second, and so on round. */
async function* inOrder(
  shards: readonly FoundShard[],
): AsyncGenerator<{ readonly line: JournalLine; readonly folder: string }> {
  const readers = shards.map((shard) => ({
    folder: shard.folder,
    lines: linesOf(join(shard.folder, csvName(shard))),
  }));
  for (;;)
    for (const { folder, lines } of readers) {
      const next = await lines.next();
      if (next.done) return;
      yield { line: next.value, folder };
    }
}

/** A size's folder copied to where the others are; it appears whole. */
async function bring(from: string, to: string): Promise<void> {
  if (resolve(from) === resolve(to)) return;
  if ((await DISK.look(to)) !== null)
    throw new WriteError(
      to,
      `is there already; the one in ${from} was not brought. The shards stand as they were`,
    );
  const fresh = `${to}.tinwright-new`;
  await rm(fresh, { recursive: true, force: true });
  await cp(from, fresh, { recursive: true, preserveTimestamps: true });
  await rename(fresh, to);
}
