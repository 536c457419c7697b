// What goes into the library and what comes out of it crosses to a worker and back: plain data, no closures.
import { readdirSync, readFileSync } from 'node:fs';
import {
  bracket,
  FAMILIES,
  JobError,
  type JobPlan,
  job as job_,
  makePart,
  planJob,
  readJob,
  revivePlan,
} from '@tinwright/core';
import { asked, defineFamily, flange, panel, rectangle, value } from '@tinwright/core/family';
import { hardware } from '@tinwright/core/hardware';
import { jobFiles } from '@tinwright/files';
import { makingOf, packetFiles } from '@tinwright/paper';
import { DEFAULT_SHOP, planShop } from '@tinwright/shop';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';

const FOLDER = new URL('../examples/', import.meta.url);
const job = (file: string): unknown => parse(readFileSync(new URL(file, FOLDER), 'utf8'));

/** Ways to every function that a value holds as its own. */
function functionsIn(value: unknown, path = ''): readonly string[] {
  if (typeof value === 'function') return [path];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([k, v]) => functionsIn(v, `${path}.${k}`));
}

const OWN = ['garden-shop.yaml', 'row-markers.yaml']; // a shop, and a job of a family of its own
const EXAMPLES = readdirSync(FOLDER).filter((f) => f.endsWith('.yaml') && !OWN.includes(f));

/** Bytes of a folder and a packet made of a plan, in a shop. */
async function written(plan: JobPlan): Promise<readonly unknown[]> {
  const inShop = planShop(plan, DEFAULT_SHOP);
  const wanted = { dxf: 'r2000', inShop } as const;
  const options = { paper: 'A4', dims: 'mm' } as const;
  const packet = await packetFiles(plan, makingOf(plan, DEFAULT_SHOP), options, ['html']);
  return [inShop, jobFiles(plan, wanted), packet.files];
}

describe.each(EXAMPLES)('%s', (file) => {
  const plan = planJob(readJob(job(file), FAMILIES, { hardware }));

  test('its plan holds no functions of its own and crosses with all its data', () => {
    expect(functionsIn(plan)).toEqual([]);
    const crossed = structuredClone(plan);
    expect(crossed.parts.map((p) => p.flat)).toEqual(plan.parts.map((p) => p.flat));
    expect(crossed.assembly?.fasteners).toEqual(plan.assembly?.fasteners);
    expect(crossed.findings).toEqual(plan.findings);
  });

  test('a job that crossed is planned as it would have been', () => {
    const crossed = structuredClone(plan.job);
    const whole =
      crossed.hardware === null
        ? crossed
        : { ...crossed, hardware: { ...crossed.hardware, tools: hardware } };
    expect(planJob(whole).parts.map((p) => p.flat)).toEqual(plan.parts.map((p) => p.flat));
  });
});

test('of a plan that crossed a shop makes the same plan, files and packet, byte for byte', async () => {
  const plan = planJob(readJob(job('shelf-brackets.yaml')));
  const here = await written(plan);
  expect(functionsIn(here)).toEqual([]);
  expect(await written(structuredClone(plan))).toEqual(here);
});

test('a plan by strips of the shop, with findings whose changes are tried there, crosses and is the same', () => {
  const holes = { diameter: 3, count: 2, inset: 5 };
  const strip = { name: 's', material: 'mild-steel', thickness: 1, insideRadius: 1, k: 0.4, kError: 0.02 };
  const data = {
    units: 'mm',
    stock: { material: 'mild-steel', thickness: 1 },
    bending: { rule: 'test-strip', insideRadius: 1 },
    parts: [{ ...bracket.describe.example, name: 'low', family: 'bracket', base: 12, holes }],
  };
  const plan = planJob(readJob(data as unknown, FAMILIES, { strips: [{ ...strip, strips: 5 }] }));
  const shop = planShop(plan, DEFAULT_SHOP);
  expect(functionsIn(shop)).toEqual([]);
  expect(shop.findings.flatMap((f) => f.changes ?? [])).not.toEqual([]);
  expect(planShop(structuredClone(plan), DEFAULT_SHOP)).toEqual(shop);
});

test('a part made without a job holds no functions of its own', () => {
  const sheet = { material: 'mild-steel', thickness: 1 } as const;
  for (const f of FAMILIES)
    expect(functionsIn(makePart(f, f.describe.example as never, sheet)), f.name).toEqual([]);
});

describe('code of one’s own', () => {
  const label = defineFamily({
    name: 'row-label',
    values: { length: value.size('along the row'), height: value.size('from edge to edge') },
    build: ({ length, height }) => [
      panel('plate', rectangle(length, height), [['length'], ['height']]),
      flange('lip', ['plate', 'north'], { height: 12 }),
      asked('length', length, 'x'),
    ],
    describe: { title: 'label', summary: 'A plate with a lip.', example: { length: 120, height: 40 } },
  });
  const stock = { material: 'mild-steel', thickness: 1 } as const;
  const plan = job_({ units: 'mm', stock }).part('label', label, { length: 120, height: 40 }).plan();

  test('a family that crossed without its code is refused by name, and comes back with it', () => {
    const crossed = structuredClone(plan);
    expect(() => planShop(crossed, DEFAULT_SHOP)).toThrow(/family "row-label" came as data/);
    const revived = revivePlan(crossed, { families: [label] });
    expect(planShop(revived, DEFAULT_SHOP)).toEqual(planShop(plan, DEFAULT_SHOP));
  });

  test('a plan that did not cross is given back as it is', () => {
    expect(revivePlan(plan, { families: [label] })).toBe(plan);
  });
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
