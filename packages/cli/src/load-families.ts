import { resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { type AnyFamily, FAMILIES } from '@tinwright/core';
import type { Host } from './console.js';

/**
 * The built-in families and those of the modules named, each the default export or a list as one.
 * Null after saying what is wrong with a module.
 */
export async function loadFamilies(
  host: Host,
  modules: readonly string[],
): Promise<readonly AnyFamily[] | null> {
  const families = [...FAMILIES];
  for (const file of modules) {
    const loaded = await familiesIn(file);
    if (typeof loaded === 'string') {
      host.err(`--with ${file}: ${loaded}.\n`);
      return null;
    }
    const twin = loaded.find((f) => families.some((g) => g.name === f.name));
    if (twin !== undefined) {
      host.err(`--with ${file}: there is a family "${twin.name}" already. Give yours another name.\n`);
      return null;
    }
    families.push(...loaded);
  }
  return families;
}

async function familiesIn(file: string): Promise<readonly AnyFamily[] | string> {
  let exported: unknown;
  try {
    ({ default: exported } = (await import(pathToFileURL(resolve(file)).href)) as { default?: unknown });
  } catch (error) {
    return `cannot be loaded: ${error instanceof Error ? error.message.split('\n')[0] : String(error)}`;
  }
  const list: readonly unknown[] = Array.isArray(exported) ? exported : [exported];
  const sound = (f: unknown): f is AnyFamily =>
    typeof f === 'object' &&
    f !== null &&
    ['name', 'describe', 'params', 'check', 'part'].every((k) => k in f);
  return list.length > 0 && list.every(sound)
    ? list
    : 'export what defineFamily returns as the default, or a list of them';
}
