import { spawn } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const BIN = fileURLToPath(new URL('../../packages/cli/bin/tinwright.js', import.meta.url));
const EVERY = 20; // ms
const TICKS = 100; // a second, on every Linux

/** A program that runs, and what it has taken so far: s of processor, MB at most; by what Linux says of it. */
export function started(program, argv, cwd) {
  const child = spawn(program, argv, { cwd, stdio: ['ignore', 'pipe', 'pipe'] });
  const run = { child, processor: 0, memory: 0, clock: 0, said: '' };
  for (const stream of [child.stdout, child.stderr])
    stream.on('data', (chunk) => {
      run.said += chunk;
    });
  const start = performance.now();
  const look = () => {
    try {
      const fields = readFileSync(`/proc/${child.pid}/stat`, 'latin1').split(') ').at(-1).split(' ');
      run.processor = (Number(fields[11]) + Number(fields[12])) / TICKS;
      const [, peak] = /VmHWM:\s+(\d+)/.exec(readFileSync(`/proc/${child.pid}/status`, 'latin1')) ?? [];
      run.memory = Math.max(run.memory, Number(peak ?? 0) / 1024);
    } catch {
      // it ended
    }
  };
  const looking = setInterval(look, EVERY);
  run.look = look;
  run.ended = new Promise((done) =>
    child.on('close', (code) => {
      clearInterval(looking);
      run.clock = (performance.now() - start) / 1000;
      done(code);
    }),
  );
  return run;
}

/** The command with these arguments. */
export const tinwright = (argv, cwd) => started(process.execPath, [BIN, ...argv], cwd);
