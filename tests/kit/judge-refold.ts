// Folds every part of the folders again with the shared routine and judges what it says of parts and objects:
// node .ci/refold.mjs ROUTINE FOLDER… A remark that comes from how the routine looks is known by a rule, told with its
// reason and not counted.
import { spawnSync } from 'node:child_process';
import { readFileSync, realpathSync } from 'node:fs';
import { join } from 'node:path';
import type { WrittenPart } from './bend-zones.js';
import { panelsApart } from './panels-apart.js';
import { objectRemark } from './refold-objects.js';
import { type FoldedManifest, formedProblems, type Refolded } from './refold-parts.js';
import { standWritten } from './stand-files.js';

const [given = '', ...folders] = process.argv.slice(2);
const routine = realpathSync(given); // it runs only under its own name

const CUT_PAST =
  'it cuts along a wide edge as far past its ends as the edge is wide, through what stands there';

/** True for a piece that hangs on no bend only because the routine cut it off: by the metal of its bends the part falls into one panel a bend and one more. */
async function isCutPast(
  problem: string,
  { parts }: FoldedManifest,
  text: (path: string) => string,
): Promise<boolean> {
  if (!/panel \d+ .* is not reached by any bend$/.test(problem)) return false;
  const part = (parts as unknown as readonly (WrittenPart & { files: { dxf: string } })[]).find((p) =>
    problem.startsWith(`${p.name}: `),
  );
  return part !== undefined && (await panelsApart(part, text(part.files.dxf))) === part.bends.length + 1;
}

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
  const problems: string[] = [];
  for (const problem of formedProblems(manifest, parts)) {
    const own = await isCutPast(problem, manifest, text);
    if (own) console.log(`${folder}: ${problem}: the routine's own, ${CUT_PAST}`);
    else problems.push(problem);
    seen.known += own ? 1 : 0;
  }
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
