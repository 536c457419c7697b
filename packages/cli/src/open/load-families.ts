import { stat } from 'node:fs/promises';
import { resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { type AnyFamily, FAMILIES } from '@tinwright/core';
import { messageOf } from '../host/failure.js';
import { moduleFamily } from './module-family.js';

const LARGEST = 10_000_000; // bytes of a module

/** The built-in families and those of the modules named; a text says what is wrong with a module. */
export async function loadFamilies(modules: readonly string[]): Promise<readonly AnyFamily[] | string> {
  const families: AnyFamily[] = [...FAMILIES];
  for (const file of modules) {
    const loaded = await familiesIn(file);
    if (typeof loaded === 'string') return `--with ${file}: ${loaded}`;
    for (const family of loaded) {
      if (families.some((f) => f.name === family.name))
        return `--with ${file}: there is a family "${family.name}" already. Give yours another name`;
      families.push(moduleFamily(family, file));
    }
  }
  return families;
}

async function familiesIn(file: string): Promise<readonly AnyFamily[] | string> {
  const found = await stat(file).catch(() => null);
  if (found === null) return 'there is no such file';
  if (!found.isFile()) return 'is not a file';
  if (found.size > LARGEST) return `a file of ${found.size} bytes given, up to ${LARGEST} allowed`;
  let exported: unknown;
  try {
    ({ default: exported } = (await import(pathToFileURL(resolve(file)).href)) as { default?: unknown });
  } catch (error) {
    const said = messageOf(error).replace(/^Error: /, '');
    return `cannot be loaded: ${error instanceof Error ? said : `it throws ${said}`}`;
  }
  const list: readonly unknown[] = Array.isArray(exported) ? exported : [exported];
  const sound = (f: unknown): f is AnyFamily =>
    typeof f === 'object' &&
    f !== null &&
    ['name', 'describe', 'values', 'params', 'part', 'derived'].every((k) => k in f);
  return list.length > 0 && list.every(sound)
    ? list
    : 'export what defineFamily returns as the default, or a list of them';
}
