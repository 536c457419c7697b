#!/usr/bin/env node
// stands here before anything is built, so that it can be linked; the command itself is put together by the build
try {
  await import('../dist/bin/main.js');
} catch (error) {
  if (error.syscall === undefined) throw error;
  process.stderr.write(
    `tinwright: cannot be loaded, the system says ${error.code}. Of files open at once it needs some forty.\n`,
  );
  process.exitCode = 2;
}
