#!/usr/bin/env node
// stands here before anything is built, so that it can be linked; the command itself is put together by the build
await import('../dist/bin/main.js');
