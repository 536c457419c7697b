/** A file of a size, its path with forward slashes below the folder of that size. */
export interface ParcelFile {
  readonly path: string;
  readonly content: Uint8Array<ArrayBuffer>;
}

/** What came of a row: what is to be said of it, and its files. */
export interface RowResult {
  readonly said: unknown;
  readonly files: readonly ParcelFile[];
}

type Head = readonly { readonly said: unknown; readonly files: readonly (readonly [string, number])[] }[];

const LENGTH = 4; // bytes that say how long the head is

/** Items as bytes: the head as JSON, then the files one behind the other as they are. */
export function pack(items: readonly RowResult[]): Uint8Array {
  const head: Head = items.map(({ said, files }) => ({
    said,
    files: files.map((f) => [f.path, f.content.length]),
  }));
  const text = Buffer.from(JSON.stringify(head));
  const length = Buffer.alloc(LENGTH);
  length.writeUInt32LE(text.length);
  return Buffer.concat([length, text, ...items.flatMap((i) => i.files.map((f) => f.content))]);
}

/** Items from their bytes; null when they are none, or a path leads out of the folder of its size. */
export function unpack(bytes: Uint8Array): readonly RowResult[] | null {
  // what a connection brings is shared with no thread
  const buffer = Buffer.from(bytes.buffer as ArrayBuffer, bytes.byteOffset, bytes.byteLength);
  if (buffer.length < LENGTH) return null;
  let at = LENGTH + buffer.readUInt32LE();
  const head = readHead(buffer.subarray(LENGTH, at));
  if (head === null) return null;
  const items = head.map(({ said, files }) => ({
    said,
    files: files.map(([path, length]) => {
      at += length;
      return { path, content: buffer.subarray(at - length, at) };
    }),
  }));
  return at === buffer.length ? items : null;
}

function readHead(text: Uint8Array): Head | null {
  try {
    const head = JSON.parse(Buffer.from(text).toString()) as Head;
    return head.every(({ files }) => files.every(isFile)) ? head : null;
  } catch {
    return null;
  }
}

const isFile = ([path, length]: readonly [unknown, unknown]) =>
  typeof path === 'string' && staysInside(path) && Number.isInteger(length) && Number(length) >= 0;

/** True for a path that leads to a file below a folder, on every system. */
function staysInside(path: string): boolean {
  const steps = path.split('/');
  return (
    steps.length <= 4 && steps.every((s) => /^[^\\:*?"<>|\p{C}]{1,200}$/u.test(s) && !/^\.|[. ]$/.test(s))
  );
}
