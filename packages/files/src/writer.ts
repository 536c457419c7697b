import type { Bytes } from './out-file.js';

/** A format that something is written in: same thing, same bytes. */
export interface Writer<Thing> {
  /** What options call it. */
  readonly format: string;
  /** What people call it. */
  readonly words: string;
  readonly extension: string;
  readonly mediaType: string;
  /** The format has no units: whoever draws says them in a note. */
  readonly unitless?: true;
  /** The file, as text or bytes. */
  readonly write: (thing: Thing) => string | Bytes;
}
