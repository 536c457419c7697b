import { once } from 'node:events';
import type { Writable } from 'node:stream';
import type { OutFile } from '@tinwright/files';
import { strToU8, Zip, ZipDeflate } from 'fflate';

const DAY = '1980-01-02T00:00:00'; // of every file, so that the same files give the same bytes

/** Stream files as a ZIP, each packed when it comes and taken as fast as the other side reads. */
export async function zipTo(
  out: Writable,
  files: AsyncIterable<OutFile>,
  signal: AbortSignal,
): Promise<void> {
  const zip = new Zip((error, chunk, last) => {
    if (error) out.destroy(error);
    else if (last) out.end(chunk);
    else out.write(chunk);
  });
  for await (const { path, content } of files) {
    signal.throwIfAborted();
    if (out.destroyed) return; // whoever asked went away
    const file = Object.assign(new ZipDeflate(path), { mtime: DAY });
    zip.add(file);
    file.push(typeof content === 'string' ? strToU8(content) : content, true);
    if (out.writableNeedDrain) await once(out, 'drain');
  }
  zip.end();
}
