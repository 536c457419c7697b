// Folds every part of the folders again with the shared routine and judges what it says of parts and objects:
// node .ci/refold.mjs ROUTINE FOLDER… A remark that comes from how the routine looks is known by a rule, told with its
// reason and not counted.
import { spawnSync } from 'node:child_process';
import { readFileSync, realpathSync } from 'node:fs';
import { join } from 'node:path';
import { objectRemark } from './refold-objects.js';
import { type FoldedManifest, formedProblems, type Refolded } from './refold-parts.js';
import { standWritten } from './stand-files.js';

const [given = '', ...folders] = process.argv.slice(2);
const routine = realpathSync(given); // it runs only under its own name

const seen = { parts: 0, problems: 0, known: 0 };
for (const folder of folders) {
  const run = spawnSync(process.execPath, [routine, folder, '--json'], {
    encoding: 'utf8',
    maxBuffer: 1 << 28,
  });
  if (run.stdout === '') throw new Error(`${routine} ${folder}: ${run.stderr}`);
  const { parts, assembly } = JSON.parse(run.stdout) as Refolded;
  const text = (path: string) => readFileSync(join(folder, path), 'latin1');
  const manifest = JSON.parse(readFileSync(join(folder, 'job.json'), 'utf8')) as FoldedManifest;
  const problems = [...formedProblems(manifest, parts)];
  const object = assembly.length === 0 ? null : await standWritten(text);
  for (const remark of assembly) {
    const reason = object && objectRemark(remark, manifest, object);
    if (reason === null) problems.push(remark);
    else console.log(`${folder}: ${remark}: the routine's own, ${reason}`);
    seen.known += reason === null ? 0 : 1;
  }
  for (const problem of problems) console.log(`${folder}: ${problem}`);
  seen.problems += problems.length;
  seen.parts += parts.length;
}
console.log(
  `${seen.parts} parts folded again by the shared routine, with the objects they make: ` +
    `${seen.problems} problems; ${seen.known} remarks of its own`,
);
process.exitCode = seen.problems > 0 || seen.parts === 0 ? 1 : 0;
