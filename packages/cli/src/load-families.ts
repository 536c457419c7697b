import { existsSync } from 'node:fs';
import { resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { type AnyFamily, FAMILIES } from '@tinwright/core';

/** The built-in families and those of the modules named; a text says what is wrong with a module. */
export async function loadFamilies(modules: readonly string[]): Promise<readonly AnyFamily[] | string> {
  const families = [...FAMILIES];
  for (const file of modules) {
    const loaded = await familiesIn(file);
    if (typeof loaded === 'string') return `--with ${file}: ${loaded}`;
    for (const family of loaded) {
      if (families.some((f) => f.name === family.name))
        return `--with ${file}: there is a family "${family.name}" already. Give yours another name`;
      families.push(family);
    }
  }
  return families;
}

async function familiesIn(file: string): Promise<readonly AnyFamily[] | string> {
  let exported: unknown;
  try {
    ({ default: exported } = (await import(pathToFileURL(resolve(file)).href)) as { default?: unknown });
  } catch (error) {
    const { code, message } = error as NodeJS.ErrnoException;
    if (code === 'ERR_MODULE_NOT_FOUND' && !existsSync(file)) return 'there is no such file';
    return `cannot be loaded: ${String(message).split('\n')[0]}`;
  }
  const list: readonly unknown[] = Array.isArray(exported) ? exported : [exported];
  const sound = (f: unknown): f is AnyFamily =>
    typeof f === 'object' &&
    f !== null &&
    ['name', 'describe', 'params', 'check', 'part', 'derived'].every((k) => k in f);
  return list.length > 0 && list.every(sound)
    ? list
    : 'export what defineFamily returns as the default, or a list of them';
}
