// Folds every part of the folders again with the shared routine, and judges its extents knowing how fine it looks:
// node .ci/refold.mjs ROUTINE FOLDER…
// The routine steps through a bend in 48, so a round of outside radius r that turns its quarter between two steps is
// seen short by up to r (1 − cos(sweep / 96)) at either end: 0.027 mm on a wired edge of 14 mm, past its own 0.02 mm.
import { spawnSync } from 'node:child_process';
import { readFileSync, realpathSync } from 'node:fs';
import { join } from 'node:path';

const STEPS = 48;
const TOLERANCE = 0.02; // mm, the routine's own

const [given, ...folders] = process.argv.slice(2);
const routine = realpathSync(given); // it runs only under its own name

const shortfall = ({ bends, thickness }) =>
  2 *
  Math.max(
    0,
    ...bends.map(
      ({ angle, insideRadius }) =>
        (insideRadius + thickness) * (1 - Math.cos((angle * Math.PI) / 180 / STEPS / 2)),
    ),
  );

const sorted = (values) => [...values].sort((a, b) => a - b);

/** What is wrong with one part as the routine folded it. */
function problemsOf(part, folded) {
  const said = sorted(Object.values(part.formed));
  const got = sorted(folded.formed);
  const extents = said.flatMap((size, k) => {
    const over = size - got[k];
    const far = over < -TOLERANCE || over > TOLERANCE + shortfall(part);
    return far ? [`formed extent ${got[k].toFixed(3)} but the manifest says ${size.toFixed(3)}`] : [];
  });
  return [...extents, ...folded.problems.filter((text) => !text.startsWith('formed extent '))];
}

let bad = 0;
let count = 0;
let objects = 0;
for (const folder of folders) {
  const run = spawnSync(process.execPath, [routine, folder, '--json'], {
    encoding: 'utf8',
    maxBuffer: 1 << 28,
  });
  if (run.stdout === '') throw new Error(`${routine} ${folder}: ${run.stderr}`);
  const { parts, assembly } = JSON.parse(run.stdout);
  const manifest = JSON.parse(readFileSync(join(folder, 'job.json'), 'utf8'));
  const problems = manifest.parts.flatMap((part) => {
    const folded = parts.find((p) => p.part === part.name);
    if (folded === undefined) return [`${part.name}: not folded`];
    return problemsOf(part, folded).map((text) => `${part.name}: ${text}`);
  });
  // the routine knows no bought parts, whose fasteners go through one sheet: what it says of objects is told and
  // counted by itself, not judged, until that is settled; tests/assembly puts objects together from their files
  for (const text of [...problems, ...assembly]) console.log(`${folder}: ${text}`);
  bad += problems.length;
  objects += assembly.length;
  count += parts.length;
}
console.log(
  `${count} parts folded again by the shared routine, ${bad} problems; ${objects} remarks on objects`,
);
process.exitCode = bad > 0 || count === 0 ? 1 : 0;
