import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { type AnyFamily, PROGRAM } from '@tinwright/core';
import { quoted } from '@tinwright/core/internal';
import type { Needs } from '@tinwright/queue';

/** Hashes of modules, sorted. */
export async function modulesHashed(modules: readonly string[]): Promise<readonly string[]> {
  const hash = async (m: string) =>
    createHash('sha256')
      .update(await readFile(m))
      .digest('hex');
  return (await Promise.all(modules.map(hash))).toSorted();
}

/** What a worker has to have for a job. */
export async function needsOf(
  data: unknown,
  families: readonly AnyFamily[],
  modules: readonly string[],
): Promise<Needs> {
  const parts = (data as { parts?: unknown } | null)?.parts;
  const asked = (Array.isArray(parts) ? parts : []).map((p: { family?: unknown } | null) => p?.family);
  const names = families.map((f) => f.name).filter((name) => asked.includes(name));
  return { program: PROGRAM.mark, families: names, modules: await modulesHashed(modules) };
}

/** Why a worker with these families and modules cannot make what has such needs; null when it can. */
export function refusalOf(
  needs: Needs,
  families: readonly AnyFamily[],
  modules: readonly string[],
): string | null {
  if (needs.program !== PROGRAM.mark)
    return `it is ${PROGRAM.mark}, the run is ${quoted(needs.program)}. Install the same version on both`;
  const lacking = needs.families.filter((name) => !families.some((f) => f.name === name));
  if (lacking.length > 0)
    return `it does not have the family ${lacking.map(quoted).join(', ')}. Start it with the same --with as the run`;
  if (needs.modules.join() !== modules.join())
    return 'its modules are not those of the run. Start it with the same --with and the same files';
  return null;
}
