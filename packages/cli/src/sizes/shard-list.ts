import { readdir, readFile, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { PROGRAM } from '@tinwright/core';
import { ownList } from '../write/own-lists.js';
import { replaceFile } from '../write/write-file.js';
import { csvName, type Shard } from './journal.js';
import type { RunMarks, TableMark } from './run-marks.js';

/** What a shard was made of. It stands beside the shard's file from when that is whole until the shard is run again. */
export interface ShardOf extends RunMarks, TableMark {}

const CSV = /^sizes-(\d+)-of-(\d+)\.csv$/;

const listName = (shard: Shard): string => csvName(shard).replace(/csv$/, 'json');

/** A shard's file in a folder; `of` is null where a run did not come to its end, or another one went over its sizes. */
export interface FoundShard extends Shard {
  readonly folder: string;
  readonly of: ShardOf | null;
}

/** The shards in a folder. */
export async function shardsIn(folder: string): Promise<readonly FoundShard[]> {
  const found: FoundShard[] = [];
  for (const name of await readdir(folder).catch(() => [])) {
    const [, index, count] = CSV.exec(name) ?? [];
    if (index === undefined) continue;
    const shard = { index: Number(index), count: Number(count) };
    found.push({ ...shard, folder, of: await ofIn(folder, shard) });
  }
  return found;
}

async function ofIn(folder: string, shard: Shard): Promise<ShardOf | null> {
  const name = listName(shard);
  const text = await readFile(join(folder, name), 'utf8').catch(() => '');
  return (ownList(name, text)?.data.of as ShardOf | undefined) ?? null;
}

/** A shard is through: what it was made of is written down. */
export async function markShard(out: string, shard: Shard, of: ShardOf): Promise<void> {
  const list = { format: 1, program: PROGRAM.mark, files: [csvName(shard)], of };
  await replaceFile(join(out, listName(shard)), `${JSON.stringify(list, null, 2)}\n`, 'force');
}

/** Before sizes are made: the shard they are of is not whole until they are; of all rows no shard is, and their files go. */
export async function unmarkShards(out: string, shard: Shard | null): Promise<void> {
  if (shard !== null) return rm(join(out, listName(shard)), { force: true });
  for (const found of await shardsIn(out)) {
    if (found.of === null) continue;
    await rm(join(out, csvName(found)), { force: true });
    await rm(join(out, listName(found)), { force: true });
  }
}
