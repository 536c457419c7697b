/**
 * Bytes in a buffer of their own, as a `Blob` or a `Response` takes them. Said by what makes them, since types before
 * TypeScript 5.7 do not tell buffers apart.
 */
export type Bytes = ReturnType<Uint8ArrayConstructor['of']>;

/** A file of the output folder: its path with forward slashes, and what stands in it. */
export interface OutFile {
  readonly path: string;
  readonly content: string | Bytes;
}

/** A file whose bytes are made when they are asked for, so that who makes many can tell how far it is. */
export interface FileToMake {
  readonly path: string;
  readonly content: () => OutFile['content'];
}

export const madeFile = ({ path, content }: FileToMake): OutFile => ({ path, content: content() });
