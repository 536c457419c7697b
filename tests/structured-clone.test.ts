// What goes into the library and what comes out of it crosses to a worker and back: plain data, no closures.
import { readFileSync } from 'node:fs';
import { FAMILIES, JobError, planJob, readJob } from '@tinwright/core';
import { jobFiles } from '@tinwright/files';
import { DEFAULT_SHOP, planShop } from '@tinwright/shop';
import { expect, test } from 'vitest';
import { parse } from 'yaml';

const FOLDER = new URL('../examples/', import.meta.url);
const job = (file: string): unknown => parse(readFileSync(new URL(file, FOLDER), 'utf8'));

/** Ways to every function that a value holds as its own. */
function functionsIn(value: unknown, path = ''): readonly string[] {
  if (typeof value === 'function') return [path];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([k, v]) => functionsIn(v, `${path}.${k}`));
}

test('a plan holds no functions of its own and crosses, with its assembly, fasteners and findings', () => {
  const data = job('harvest-carrier.yaml');
  const plan = planJob(readJob(structuredClone(data)));
  expect(functionsIn(plan)).toEqual([]);
  const crossed = structuredClone(plan);
  expect(crossed.parts.map((p) => p.flat)).toEqual(plan.parts.map((p) => p.flat));
  expect(crossed.assembly?.fasteners).toEqual(plan.assembly?.fasteners);
  expect(crossed.findings).toEqual(plan.findings);
});

test('of a plan that crossed the same files are written, byte for byte', () => {
  const plan = planJob(readJob(job('harvest-carrier.yaml')));
  const wanted = { dxf: 'r2000', views: true } as const;
  const [here, there] = [jobFiles(plan, wanted), jobFiles(structuredClone(plan), wanted)];
  expect(here.length).toBeGreaterThan(8);
  expect(there).toEqual(here);
});

test('a plan of every family and every kind of joint crosses', () => {
  const parts = FAMILIES.map((f) => ({ ...f.describe.example, name: f.name, family: f.name }));
  const plan = planJob(
    readJob({
      stock: { material: 'aluminium-5052-h32', thickness: 1 },
      ...{ units: 'mm', parts },
    } as unknown),
  );
  expect(functionsIn(structuredClone(plan))).toEqual([]);
});

test('the plan of a shop crosses', () => {
  const plan = planJob(readJob(job('shelf-brackets.yaml')));
  const shop = planShop(plan, DEFAULT_SHOP);
  expect(functionsIn(shop)).toEqual([]);
  expect(structuredClone(shop)).toEqual(shop);
});

test('an error crosses as data and is the same again', () => {
  const error = ((): unknown => {
    try {
      return readJob({ units: 'in', parts: [{ name: 'x', famly: 'open-box' }] } as unknown);
    } catch (e) {
      return e;
    }
  })();
  if (!(error instanceof JobError)) throw error;
  const again = JobError.fromJSON(JSON.parse(JSON.stringify(error)));
  expect(again).toBeInstanceOf(JobError);
  expect(again.problems).toEqual(error.problems);
  expect(again.message).toBe(error.message);
  expect(JobError.fromJSON(structuredClone(error.toJSON())).message).toBe(error.message);
});
