/** A file of the output folder: its path with forward slashes, and what stands in it. */
export interface OutFile {
  readonly path: string;
  readonly content: string | Uint8Array;
}

/** A file whose bytes are made when they are asked for, so that who makes many can tell how far it is. */
export interface FileToMake {
  readonly path: string;
  readonly content: () => OutFile['content'];
}

export const madeFile = ({ path, content }: FileToMake): OutFile => ({ path, content: content() });
