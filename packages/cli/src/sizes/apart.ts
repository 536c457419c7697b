import { csvName } from './journal.js';
import type { FoundShard, ShardOf } from './shard-list.js';

/** What tells shards of one run from those of another, what is easiest to see first. */
const APART = {
  program: 'made by another version',
  job: 'of another job',
  shop: 'of another shop',
  rack: 'of another rack or cut list',
  options: 'made with other options',
  modules: 'made with other modules',
  rows: 'of another table',
  table: 'of another table',
} as const satisfies Record<keyof ShardOf, string>;

/** Why shards, by their numbers, cannot be joined, and which to run again; null where they are all of one run. */
export function apart(shards: readonly FoundShard[]): string | null {
  const [first] = shards;
  if (first === undefined) return 'no shards here; each writes a file such as sizes-1-of-3.csv';
  const { count } = first;
  const other = shards.find((s) => s.count !== count);
  if (other !== undefined)
    return `${csvName(first)} and ${csvName(other)} are of different runs. Delete those that are not wanted`;
  const lack = Array.from({ length: count }, (_, i) => i + 1).filter(
    (n) => !shards.some((s) => s.index === n),
  );
  if (lack.length > 0) return `shard ${listed(lack)} of ${count} is missing`;
  if (shards.length > count) return 'a shard is there twice';
  const open = shards.filter((s) => s.of === null).map((s) => s.index);
  if (open.length > 0)
    return `shard ${listed(open)} of ${count} did not come to its end, or does not say what it is of: run it again with --shard ${open[0]}/${count}`;
  return mixed(shards, first);
}

/** The shards of the run that has fewest are to be run again, or the others as they are. */
function mixed(shards: readonly FoundShard[], { count }: FoundShard): string | null {
  const groups = new Map<string, FoundShard[]>();
  for (const shard of shards) {
    const key = JSON.stringify(shard.of);
    groups.set(key, [...(groups.get(key) ?? []), shard]);
  }
  const [most, next] = [...groups.values()].toSorted((a, b) => b.length - a.length);
  if (most?.[0] === undefined || next?.[0] === undefined) return null;
  const [here, there] = [most[0].of, next[0].of] as readonly ShardOf[];
  const keys = Object.keys(APART) as readonly (keyof ShardOf)[];
  const sign = keys.find((key) => here?.[key] !== there?.[key]) ?? 'table';
  const few = shards.filter((s) => !most.includes(s)).map((s) => s.index);
  const others = listed(most.map((s) => s.index));
  return `shard ${listed(few)} of ${count} is ${APART[sign]} than shard ${others}. All have to be of one run: run --shard ${few[0]}/${count} again as the others were, or the others as that one`;
}

const MOST = 20;

const listed = (numbers: readonly number[]): string =>
  numbers.length <= MOST
    ? numbers.join(', ')
    : `${numbers.slice(0, MOST).join(', ')} and ${numbers.length - MOST} more`;
