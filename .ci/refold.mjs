// Folds every part of the folders again with the shared routine, puts the objects together, and judges what it says:
// node .ci/refold.mjs ROUTINE FOLDER…
import { runBundled } from './run-bundled.mjs';

await runBundled('tests/kit/judge-refold.ts');
