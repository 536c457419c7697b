#!/usr/bin/env node
import './host/folder-stands.js';
import { writeSync } from 'node:fs';
import { setFlagsFromString } from 'node:v8';
import { fault } from './host/failure.js';
import { processHost } from './host/process-host.js';
import { main } from './index.js';

// memory is cleared up before it has grown by half, not by three times: what a command holds is small beside what it drops
setFlagsFromString('--heap-growing-percent=40');

const GRACE = 1000; // ms

let done = false;
// a module of somebody's own may end the program, or wait for ever: that is not success
process.on('exit', (code) => {
  if (done || code > 128) return;
  process.exitCode = 2;
  writeSync(2, 'tinwright: the program was ended before it was done, by a module loaded with --with.\n');
});
// what is thrown where nobody waits for it, in a stream or a module's own timer, ends the program with one line too
process.on('uncaughtException', (error) => {
  done = true;
  process.exitCode = fault(processHost(), process.argv.includes('--json'), error);
  process.exit();
});
// not awaited: of an await that never ends newer Nodes print where it stands
void main(process.argv.slice(2)).then((exit) => {
  done = true;
  process.exitCode ??= exit; // set already when the answer could not be printed
  // timers and connections of somebody's own module are not waited for: once all is printed the program ends
  setInterval(() => {
    if (process.stdout.writableLength + process.stderr.writableLength === 0) process.exit();
  }, GRACE).unref();
});
