import type { Host } from './console.js';
import { EXIT } from './failure.js';

/** The process's own streams. Colour only on a terminal and without NO_COLOR; TINWRIGHT_DEBUG=1 shows where a fault is. */
export function processHost(): Host {
  const { stdout, stderr, stdin, env } = process;
  stdout.on('error', unprinted);
  stderr.on('error', unprinted);
  return {
    out: (text) => void stdout.write(text),
    err: (text) => void stderr.write(text),
    colour: stdout.isTTY === true && (env.NO_COLOR ?? '') === '' && env.TERM !== 'dumb',
    debug: env.TINWRIGHT_DEBUG === '1',
    progress: async (what, total) => (await import('./progress.js')).progressOn(stderr, what, total),
    end: (signal) => void process.kill(process.pid, signal),
    stdin: async () => {
      const chunks: Buffer[] = [];
      let size = 0;
      for await (const chunk of stdin) {
        chunks.push(chunk as Buffer);
        size += (chunk as Buffer).length;
        if (size > 2_000_000) break; // longer than any job; refused by its length
      }
      return Buffer.concat(chunks);
    },
  };
}

/** A reader that has seen enough (head, a pager) closes the pipe: no reason to fail. A full disk is one. */
function unprinted({ code }: NodeJS.ErrnoException): void {
  if (code === 'EPIPE' || process.exitCode === EXIT.unwritable) return;
  process.exitCode = EXIT.unwritable;
  process.stderr.write(`tinwright: the answer cannot be printed (${code ?? 'unknown reason'}).\n`);
}
