import type { OutFile } from '@tinwright/files';
import type { OwnList, OwnLists } from './files.js';

type Entry = Readonly<Record<string, unknown>>;

/**
 * The files of some parts, with a list that goes on naming the other parts which stand there and their files. Those of
 * the drawn parts are named by the fresh list alone. What the lists say of all their parts alike and is another now,
 * such as the paper, is said of each part that stays.
 */
export function joinedList(standing: OwnLists, files: readonly OutFile[]): readonly OutFile[] {
  const list = files.at(-1);
  const old = list === undefined ? undefined : standing.get(list.path);
  if (list === undefined || old === undefined) return files;
  const fresh = JSON.parse(String(list.content)) as Entry;
  const data = { ...fresh, parts: partsOf(old, fresh), files: filesOf(old, fresh) };
  return [...files.slice(0, -1), { path: list.path, content: `${JSON.stringify(data, null, 2)}\n` }];
}

const entries = (data: Entry, key: string) =>
  Array.isArray(data[key]) ? (data[key] as readonly Entry[]) : [];

function partsOf(old: OwnList, fresh: Entry): readonly Entry[] {
  const { format: _, program: __, parts: ___, files: ____, ...head } = old.data;
  const other = Object.fromEntries(Object.entries(head).filter(([k, v]) => fresh[k] !== v));
  const drawn = entries(fresh, 'parts');
  const kept = entries(old.data, 'parts').map(
    (p) => drawn.find((d) => d.name === p.name) ?? { ...other, ...p },
  );
  return [...kept, ...drawn.filter((d) => !kept.includes(d))];
}

function filesOf(old: OwnList, fresh: Entry): readonly string[] {
  const names = entries(fresh, 'parts').map((p) => p.name);
  const replaced = entries(old.data, 'parts').filter((p) => names.includes(p.name));
  const gone = new Set(replaced.flatMap((p) => Object.values(p).flat()));
  const now = fresh.files as readonly string[];
  const kept = (old.data.files as readonly string[]).filter((f) => !gone.has(f) && !now.includes(f));
  return [...kept, ...now];
}
