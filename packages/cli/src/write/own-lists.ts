import { join } from 'node:path';
import { PROGRAM } from '@tinwright/core';
import type { Disk } from './disk.js';

/** A list of ours at the root of a folder: the files of a set, itself among them, and all it says. */
export interface OwnList {
  readonly files: ReadonlySet<string>;
  readonly data: Readonly<Record<string, unknown>>;
}

/** Lists by their names. Sets of several commands share a folder, each with its list. */
export type OwnLists = ReadonlyMap<string, OwnList>;

const MARK = new RegExp(`^\\s*\\{\\s*"format":\\s*1,\\s*"program":\\s*"${PROGRAM.name} \\d`);
const ENOUGH = 120; // bytes that hold the mark

/** The lists of ours in a folder: JSON files that name this program first. None where there is no folder. */
export async function listsIn(disk: Disk, folder: string): Promise<OwnLists> {
  if ((await disk.look(folder))?.kind !== 'folder') return new Map();
  const found = new Map<string, OwnList>();
  for (const name of (await disk.names(folder)).filter((n) => n.endsWith('.json')).toSorted()) {
    const path = join(folder, name);
    if ((await disk.look(path))?.kind !== 'file') continue;
    if (!MARK.test(text(await disk.head(path, ENOUGH)))) continue;
    const list = ownList(name, text(await disk.read(path)));
    if (list !== null) found.set(name, list);
  }
  return found;
}

/** A list read; null when it is none of ours. */
export function ownList(name: string, content: string | Uint8Array): OwnList | null {
  const json = typeof content === 'string' ? content : text(content);
  if (!name.endsWith('.json') || name.includes('/') || !MARK.test(json.slice(0, ENOUGH))) return null;
  try {
    const data = JSON.parse(json) as Record<string, unknown>;
    return Array.isArray(data.files) ? { files: new Set([name, ...data.files.map(String)]), data } : null;
  } catch {
    return null;
  }
}

const text = (bytes: Uint8Array) => new TextDecoder().decode(bytes);
