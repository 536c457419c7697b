import { quoted } from '@tinwright/core/internal';
import { firstBytes, whyUnread } from '../text/file-bytes.js';

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
const LONGEST = 4096; // bytes

/** The secret in a file that runs and workers share; null without a file, a text says what is wrong with it. */
export async function keyIn(file: string | undefined): Promise<{ readonly key: string | null } | string> {
  if (file === undefined) return { key: null };
  try {
    const { bytes, size } = await firstBytes(file, LONGEST);
    if (size > LONGEST) return `--key ${quoted(file)}: ${size} bytes given, up to ${LONGEST} allowed`;
    const key = new TextDecoder().decode(bytes).trim();
    return key.length >= SHORTEST
      ? { key }
      : `--key ${quoted(file)}: ${key.length} characters given, ${SHORTEST} or more wanted`;
  } catch (error) {
    return `--key ${quoted(file)}: ${whyUnread(error, 'a file with a key')}`;
  }
}
