// Writes random jobs as folders of files, for auditors outside: node write-random.mjs FOLDER COUNT SEED.
// Every family in turn, every rule that compensates, mm and inches, both DXF forms. Prints what it wrote.
import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { FAMILIES, JobError, planJob, readJob } from '@tinwright/core';
import { type DxfForm, jobFiles } from '@tinwright/files';
import { paramsOf, sheets } from '@tinwright/testing';
import fc from 'fast-check';

const PER_FOLDER = 50;

const [folder = '', count = '0', seed = '1'] = process.argv.slice(2);
const wanted = Number(count);

interface RandomPart {
  readonly family: string;
  readonly stock: object;
  readonly bending: object;
}

/** Endless random parts that can be made, from one seed. */
function* parts(): Generator<RandomPart> {
  for (let round = 0; ; round++)
    for (const family of FAMILIES) {
      const samples = fc.sample(fc.tuple(paramsOf(family), sheets), {
        seed: Number(seed) + round,
        numRuns: 60,
      });
      for (const [params, sheet] of samples) {
        const part = { family: family.name, ...sheet, ...params };
        if (makeable(part)) yield part;
      }
    }
}

function makeable(part: object): boolean {
  try {
    planJob(readJob({ units: 'mm', parts: [{ name: 'part', ...part }] } as unknown));
    return true;
  } catch (error) {
    if (error instanceof JobError) return false;
    throw error;
  }
}

/** Every length of a part in inches; angles, counts and constants of rules stay. */
function inInches(value: unknown, key = ''): unknown {
  if (typeof value === 'number') return /^(angle|count|k$|per)/.test(key) ? value : value / 25.4;
  if (Array.isArray(value)) return value.map((v) => inInches(v, key));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([k, v]) => [k, inInches(v, k)]));
}

const source = parts();
let written = 0;
for (let f = 0; written < wanted; f++) {
  const units = f % 2 === 0 ? 'mm' : 'in';
  const dxf: DxfForm = f % 4 < 2 ? 'r2000' : 'r12';
  const list = Array.from({ length: Math.min(PER_FOLDER, wanted - written) }, (_, i) => {
    const part = source.next().value as RandomPart;
    return { name: `part-${i}`, ...(units === 'in' ? (inInches(part) as object) : part) };
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
