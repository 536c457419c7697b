import { readFile } from 'node:fs/promises';
import { quoted } from '@tinwright/core/internal';

type QueuePackage = typeof import('@tinwright/queue');

/** The package that talks to Redis, which only those have who added it; a text says how. */
export async function loadQueue(): Promise<QueuePackage | string> {
  try {
    return await import('@tinwright/queue');
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'ERR_MODULE_NOT_FOUND') throw error;
    return 'sizes over many machines need one more package: npm install @tinwright/queue';
  }
}

const SHORTEST = 16; // characters

/** The secret in a file that runs and workers share; null without a file, a text says what is wrong with it. */
export async function keyIn(file: string | undefined): Promise<{ readonly key: string | null } | string> {
  if (file === undefined) return { key: null };
  try {
    const key = (await readFile(file, 'utf8')).trim();
    return key.length >= SHORTEST
      ? { key }
      : `--key ${quoted(file)}: ${key.length} characters given, ${SHORTEST} or more wanted`;
  } catch (error) {
    return `--key ${quoted(file)}: cannot be read (${(error as NodeJS.ErrnoException).code})`;
  }
}
