// Every example job is made, folds back from its files, and is valid by the published schema.
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type AnyFamily, FAMILIES, planJob, readJob } from '@tinwright/core';
import { jobFiles, jobJsonSchema } from '@tinwright/export';
import Ajv2020 from 'ajv/dist/2020.js';
import { expect, test } from 'vitest';
import { parse } from 'yaml';
import rowMarker from '../examples/row-marker.mjs';
import { familyContract } from './kit/family-contract.js';
import { foldFiles, type WrittenPart } from './kit/fold-files.js';

const FOLDER = fileURLToPath(new URL('../examples/', import.meta.url));
const jobs = readdirSync(FOLDER).filter((f) => f.endsWith('.yaml'));
const families: readonly AnyFamily[] = [...FAMILIES, rowMarker];
const read = (file: string) => readFileSync(`${FOLDER}${file}`, 'utf8');

test('there are example jobs', () => expect(jobs.length).toBeGreaterThan(3));

test('the schema beside the examples is the one the tool publishes', () => {
  expect(JSON.parse(read('tinwright.schema.json'))).toEqual(
    JSON.parse(JSON.stringify(jobJsonSchema(families))),
  );
});

const validate = new Ajv2020({ strict: false }).compile(JSON.parse(read('tinwright.schema.json')) as object);

test.each(jobs)('%s is valid by the schema; a misspelt key is not', (file) => {
  const job = parse(read(file)) as { parts: object[] };
  expect(validate(job), JSON.stringify(validate.errors)).toBe(true);
  expect(validate({ ...job, parts: [{ ...job.parts[0], lenght: 3 }] })).toBe(false);
});

test.each(jobs)('%s is made and folds back to its sizes from its files', async (file) => {
  const plan = planJob(readJob(parse(read(file)), families));
  expect(plan.findings).toEqual([]);
  const files = new Map((await jobFiles(plan, { dxf: 'r2000' })).map((f) => [f.path, String(f.content)]));
  const manifest = JSON.parse(files.get('job.json') ?? '') as {
    parts: (WrittenPart & { formed: { x: number; y: number; z: number }; files: { dxf: string } })[];
  };
  for (const part of manifest.parts) {
    const folded = await foldFiles(part, files.get(part.files.dxf) ?? '');
    expect(folded.shared).toBeLessThan(1e-3);
    for (const [k, v] of [part.formed.x, part.formed.y, part.formed.z].entries())
      expect(folded.size[k]).toBeCloseTo(v, 1.5);
  }
});

// a family from a script of one's own has the duties of the built-in ones
familyContract(rowMarker);
