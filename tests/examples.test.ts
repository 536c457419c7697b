// Every example job is made, folds back from its files, and is valid by the published schema.
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type AnyFamily, FAMILIES, planJob, readJob } from '@tinwright/core';
import { hardware } from '@tinwright/core/hardware';
import { jobFiles, jobJsonSchema, shopJsonSchema } from '@tinwright/files';
import { planSequence, readShop, verifySequence } from '@tinwright/shop';
import { familyContract } from '@tinwright/testing';
import Ajv2020 from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import rowMarker from '../examples/row-marker.mjs';
import type { WrittenPart } from './kit/bend-zones.js';
import { foldFiles } from './kit/fold-files.js';

const FOLDER = fileURLToPath(new URL('../examples/', import.meta.url));
const files = readdirSync(FOLDER).filter((f) => f.endsWith('.yaml'));
const shops = files.filter((f) => f.endsWith('-shop.yaml'));
const jobs = files.filter((f) => !shops.includes(f));
const families: readonly AnyFamily[] = [...FAMILIES, rowMarker];
const read = (file: string) => readFileSync(`${FOLDER}${file}`, 'utf8');

test('there are example jobs, and a shop', () => {
  expect(jobs.length).toBeGreaterThan(3);
  expect(shops).toHaveLength(1);
});

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
  const plan = planJob(readJob(parse(read(file)), families, { hardware }));
  expect(plan.findings.filter((f) => f.severity !== 'note')).toEqual([]); // a note is how it is done
  const files = new Map(jobFiles(plan, { dxf: 'r2000' }).map((f) => [f.path, String(f.content)]));
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

test('the shop schema beside the examples is the one the tool publishes', () => {
  expect(JSON.parse(read('tinwright-shop.schema.json'))).toEqual(
    JSON.parse(JSON.stringify(shopJsonSchema())),
  );
});

const validateShop = new Ajv2020({ strict: false }).compile(
  JSON.parse(read('tinwright-shop.schema.json')) as object,
);

describe.each(shops)('%s', (file) => {
  const data = parse(read(file)) as { brake: object };

  test('is valid by the schema; a misspelt key is not', () => {
    expect(validateShop(data), JSON.stringify(validateShop.errors)).toBe(true);
    expect(validateShop({ ...data, brake: { ...data.brake, lenght: 3 } })).toBe(false);
  });

  test('says that it is invented, and leaves nothing of its machines to be assumed', () => {
    const { name, assumed } = readShop(data);
    expect(name).toContain('invented');
    expect(assumed).toEqual([
      'brake.hold',
      'brake.ratedFlange',
      'press.gaps',
      'vise.bar',
      'vise.jaw',
      'vise.bench',
      'costs',
      'rates',
      'margin',
    ]);
  });

  test('bends the carrier, and a job takes its strip', () => {
    const shop = readShop(data);
    const carrier = parse(read('harvest-carrier.yaml')) as object;
    for (const part of planJob(readJob(carrier)).parts) {
      const sequence = planSequence(part, shop);
      expect(sequence.status, part.name).not.toBe('infeasible');
      expect(verifySequence(part.flat, sequence.steps, shop)).toEqual([]);
    }
    const bending = { rule: 'test-strip', insideRadius: 1.5 };
    const [row] = shop.strips;
    const stock = { material: row?.material, thickness: row?.thickness };
    const strip = { name: 'a', family: 'bent-strip', width: 50, legs: [40, 40], angles: [90] };
    const job = readJob({ units: 'mm', stock, bending, parts: [strip] } as unknown, undefined, {
      strips: shop.strips,
    });
    const [bend] = planJob(job).parts[0]?.flat.bends ?? [];
    expect(bend?.terms.allowance).toBeCloseTo((Math.PI / 2) * (1.5 + 0.395), 10);
  });
});

// a family from a script of one's own has the duties of the built-in ones
familyContract(rowMarker, test, { seed: fc.readConfigureGlobal().seed ?? 1 });
