import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';

/** The font the command falls back to; it is the command's, so it is looked for from there. */
export async function spareBytes(): Promise<Uint8Array> {
  const from = createRequire(new URL('../../cli/package.json', import.meta.url));
  return readFile(from.resolve('@fontsource/dejavu-sans/files/dejavu-sans-latin-400-normal.woff'));
}
