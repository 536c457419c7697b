import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';

/** A free font with most alphabets, for names the standard fonts of PDF cannot write. */
export async function spareFile(): Promise<Uint8Array> {
  const path = '@fontsource/dejavu-sans/files/dejavu-sans-latin-400-normal.woff';
  return readFile(createRequire(import.meta.url).resolve(path));
}
