import { type SpawnSyncReturns, spawn, spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

/** The command as it is installed, built. */
export const BIN: string = fileURLToPath(new URL('../bin/tinwright.js', import.meta.url));

/** Run the built command in a shell that allows no file to grow: every write fails as on a full disk. */
export function onFullDisk(...argv: readonly string[]): SpawnSyncReturns<string> {
  const line = 'ulimit -f 0; exec "$0" "$@"';
  return spawnSync('sh', ['-c', line, process.execPath, BIN, ...argv], { encoding: 'utf8' });
}

/** Run the built command with nobody reading one of its streams; gives the exit status and what the other one said. */
export async function unread(
  stream: 'stdout' | 'stderr',
  ...argv: readonly string[]
): Promise<{ readonly exit: number | null; readonly said: string }> {
  const child = spawn(process.execPath, [BIN, ...argv], { stdio: ['ignore', 'pipe', 'pipe'] });
  child[stream].destroy();
  let said = '';
  child[stream === 'stdout' ? 'stderr' : 'stdout'].on('data', (chunk: Buffer) => {
    said += chunk.toString();
  });
  const exit = await new Promise<number | null>((done) => child.on('close', done));
  return { exit, said };
}
