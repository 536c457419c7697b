import {
  chmod,
  link,
  lstat,
  mkdir,
  open,
  readdir,
  readFile,
  realpath,
  rename,
  rm,
  rmdir,
  stat,
  unlink,
  writeFile,
} from 'node:fs/promises';
import { dirname, resolve } from 'node:path';

/** What stands at a path: times in ms, `device` and `inode` say which it is, `owner` whose. */
export interface StandingFile {
  readonly kind: 'file' | 'folder' | 'link' | 'other';
  readonly mode: number;
  readonly time: number;
  readonly size: number;
  readonly device: number;
  readonly inode: number;
}

/** All that writing asks of the file system, so that a test can let every step of it fail. */
export interface Disk {
  /** A new file, on the disk when this is done; the rights are those of any new file without a mode. */
  readonly create: (path: string, content: string | Uint8Array, mode?: number) => Promise<void>;
  /** Its time becomes now, by the clock of the disk; fails where there is none. */
  readonly touch: (path: string) => Promise<void>;
  readonly read: (path: string) => Promise<Uint8Array>;
  /** The first bytes of a file. */
  readonly head: (path: string, length: number) => Promise<Uint8Array>;
  /** What stands there, a link as itself; null when there is nothing. */
  readonly look: (path: string) => Promise<StandingFile | null>;
  /** The same with links followed. */
  readonly lookThrough: (path: string) => Promise<StandingFile | null>;
  readonly names: (folder: string) => Promise<readonly string[]>;
  /** Makes folders on the way too; the outermost that was made. */
  readonly makeFolder: (path: string) => Promise<string | undefined>;
  readonly rename: (from: string, to: string) => Promise<void>;
  /** A second name for a file; fails where one stands. */
  readonly link: (from: string, to: string) => Promise<void>;
  readonly unlink: (path: string) => Promise<void>;
  readonly removeFolder: (path: string) => Promise<void>;
  readonly removeAll: (path: string) => Promise<void>;
  readonly setMode: (path: string, mode: number) => Promise<void>;
  /** The names in a folder are on the disk when this is done. */
  readonly sync: (folder: string) => Promise<void>;
  readonly realPath: (path: string) => Promise<string>;
}

/** The disk there is. */
export const DISK: Disk = {
  create: async (path, content, mode = 0o666) => {
    const handle = await open(path, 'wx', mode);
    try {
      await handle.writeFile(content);
      await handle.sync();
    } finally {
      await handle.close();
    }
  },
  touch: async (path) => {
    const handle = await open(path, 'r+');
    try {
      await handle.write('.', 0);
    } finally {
      await handle.close();
    }
  },
  read: (path) => readFile(path),
  head: async (path, length) => {
    const handle = await open(path, 'r');
    try {
      const { buffer, bytesRead } = await handle.read(Buffer.alloc(length), 0, length, 0);
      return buffer.subarray(0, bytesRead);
    } finally {
      await handle.close();
    }
  },
  look: (path) => orNull(lstat(path)),
  lookThrough: (path) => orNull(stat(path)),
  names: (folder) => readdir(folder),
  makeFolder,
  rename,
  link,
  unlink,
  removeFolder: (path) => rmdir(path),
  removeAll: (path) => rm(path, { recursive: true, force: true }),
  setMode: chmod,
  sync: async (folder) => {
    if (process.platform === 'win32') return; // folders cannot be opened there
    const handle = await open(folder, 'r');
    try {
      await handle.sync();
    } finally {
      await handle.close();
    }
  },
  realPath: (path) => realpath(path),
};

/** The same, but nothing waits until it is on the metal: for what is easily made again. */
export const SWIFT_DISK: Disk = {
  ...DISK,
  create: (path, content, mode = 0o666) => writeFile(path, content, { flag: 'wx', mode }),
  sync: async () => undefined,
};

/**
 * One folder after the other: asked for all at once Node gives another reason on a read-only disk, and none for ever where
 * the system makes no folders, as in /proc.
 */
async function makeFolder(path: string): Promise<string | undefined> {
  if ((await orNull(stat(path)))?.kind === 'folder') return undefined;
  const around = dirname(resolve(path));
  const made = (await orNull(stat(around))) === null ? await makeFolder(around) : undefined;
  try {
    await mkdir(path);
  } catch (error) {
    // another run has made it since
    if (codeOf(error) !== 'EEXIST' || (await orNull(stat(path)))?.kind !== 'folder') throw error;
    return made;
  }
  return made ?? resolve(path);
}

type Stats = Awaited<ReturnType<typeof lstat>>;

async function orNull(looked: Promise<Stats>): Promise<StandingFile | null> {
  try {
    const found = await looked;
    const { mode, mtimeMs, size, dev, ino } = found;
    const numbers = { mode, time: mtimeMs, size, device: dev, inode: ino };
    const plain = Object.fromEntries(Object.entries(numbers).map(([k, v]) => [k, Number(v)]));
    return { kind: kindOf(found), ...(plain as unknown as Omit<StandingFile, 'kind'>) };
  } catch (error) {
    if (codeOf(error) === 'ENOENT') return null;
    throw error;
  }
}

function kindOf(found: Stats): StandingFile['kind'] {
  if (found.isDirectory()) return 'folder';
  if (found.isSymbolicLink()) return 'link';
  return found.isFile() ? 'file' : 'other';
}

/** What the system calls a failure; empty when it was no failure of the system. */
export const codeOf = (error: unknown): string => (error as NodeJS.ErrnoException | null)?.code ?? '';
