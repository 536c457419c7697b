/** A file of the output folder: its path with forward slashes, and what stands in it. */
export interface OutFile {
  readonly path: string;
  readonly content: string | Uint8Array;
}
