// Writes random jobs as folders of files, for auditors outside: node .ci/write-random.mjs FOLDER COUNT SEED.
// Every family in turn, with finished edges and openings, every rule that compensates, mm and inches, both DXF forms. Prints what it wrote.
import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { FAMILIES, JobError, type Part, type PartPlan, planJob, readJob } from '@tinwright/core';
import { planPart } from '@tinwright/core/internal';
import { type DxfForm, jobFiles } from '@tinwright/files';
import { paramsOf, sheets } from '@tinwright/testing';
import fc from 'fast-check';
import { cutoutsOf } from './cutouts.js';
import { edgesOf } from './edges.js';
import { inInches, type RandomPart } from './in-inches.js';

const PER_FOLDER = 50;

const [folder = '', count = '0', seed = '1'] = process.argv.slice(2);
const wanted = Number(count);

/** Endless random parts that can be made, from one seed. */
function* parts(): Generator<RandomPart> {
  let at = 0;
  for (let round = 0; ; round++)
    for (const family of FAMILIES) {
      const samples = fc.sample(fc.tuple(paramsOf(family), sheets), {
        seed: Number(seed) + round,
        numRuns: 60,
      });
      for (const [params, sheet] of samples) {
        const part = { family: family.name, ...sheet, ...params };
        if (planned(part) === null) continue;
        yield withExtras(part, at++);
      }
    }
}

/** The part planned; null where it cannot be made. */
function planned(part: object): PartPlan | null {
  try {
    const [read] = readJob({ units: 'mm', parts: [{ name: 'part', ...part }] } as unknown).parts;
    return read === undefined ? null : planPart(read); // no search for sizes that would work
  } catch (error) {
    if (error instanceof JobError) return null;
    throw error;
  }
}

/** Every other part gets finished edges, two in three get openings: the first of a few random ones that can be made. */
function withExtras(part: RandomPart, at: number): RandomPart {
  const edged = at % 2 === 0 ? part : first(part, 'edges', edgesOf, at);
  return at % 3 === 0 ? edged : first(edged, 'cutouts', cutoutsOf, at);
}

function first(
  part: RandomPart,
  key: string,
  of: (part: Part) => fc.Arbitrary<readonly object[]>,
  at: number,
): RandomPart {
  const plan = planned(part);
  if (plan === null) return part;
  const tries = fc.sample(of(plan.part), { seed: Number(seed) + at, numRuns: 8 });
  return tries.map((list) => ({ ...part, [key]: list })).find((p) => planned(p) !== null) ?? part;
}

const source = parts();
let written = 0;
for (let f = 0; written < wanted; f++) {
  const units = f % 2 === 0 ? 'mm' : 'in';
  const dxf: DxfForm = f % 4 < 2 ? 'r2000' : 'r12';
  const list = Array.from({ length: Math.min(PER_FOLDER, wanted - written) }, (_, i) => {
    const part = source.next().value as RandomPart;
    return { name: `part-${i}`, ...(units === 'in' ? inInches(part) : part) };
  });
  const plan = planJob(readJob({ units, parts: list } as unknown));
  for (const { path, content } of jobFiles(plan, { dxf })) {
    const target = join(folder, `${String(f).padStart(3, '0')}-${units}-${dxf}`, path);
    mkdirSync(dirname(target), { recursive: true });
    writeFileSync(target, content);
  }
  written += list.length;
}
process.stdout.write(`${written} random parts in ${folder}, seed ${seed}\n`);
