// Plans and templates of random jobs and of the examples: nothing on a page is in the way of a text, and read back from
// the PDF every size is the manifest's.
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import {
  type AnyFamily,
  FAMILIES,
  JobError,
  type JobPlan,
  type PartPlan,
  planJob,
  readJob,
} from '@tinwright/core';
import {
  DIMS_NAMES,
  jobFiles,
  PAPERS,
  pagesPdf,
  partPlan,
  partTemplate,
  planFiles,
  templateFiles,
  typeface,
} from '@tinwright/export';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import rowMarker from '../examples/row-marker.mjs';
import { paramsOf, sheets } from './kit/arbitrary.js';
import { carriers } from './kit/carriers.js';
import { pageFlaws } from './kit/page-flaws.js';
import { readPdf } from './kit/read-pdf.js';

const FOLDER = fileURLToPath(new URL('../examples/', import.meta.url));
const EXAMPLES = readdirSync(FOLDER).filter((f) => f.endsWith('.yaml'));
const families: readonly AnyFamily[] = [...FAMILIES, rowMarker];
const example = (file: string): JobPlan =>
  planJob(readJob(parse(readFileSync(`${FOLDER}${file}`, 'utf8')), families));

const single = fc
  .constantFrom(...FAMILIES)
  .chain((family) => fc.record({ family: fc.constant(family.name), params: paramsOf(family), sheet: sheets }))
  .map(({ family, params, sheet }) => ({
    units: 'mm',
    ...sheet,
    parts: [{ name: 'part', family, ...params }],
  }));

const random = fc.record({
  job: fc.oneof({ weight: 4, arbitrary: single }, { weight: 1, arbitrary: carriers }),
  paper: fc.constantFrom(...PAPERS.map((p) => p.name)),
  dims: fc.constantFrom(...DIMS_NAMES),
});

/** Parts of a job that can be made; none of one that cannot. */
function planned(job: object): readonly PartPlan[] {
  try {
    return planJob(readJob(job)).parts;
  } catch (error) {
    if (error instanceof JobError) return [];
    throw error;
  }
}

describe('random jobs', () => {
  const JOBS = 200;

  test(`on the plans of ${JOBS} jobs no text meets a text, a line or the edge of the paper`, () => {
    let [drawn, small] = [0, 0];
    const flaws: string[] = [];
    for (const { job, paper, dims } of fc.sample(random, 8 * JOBS)) {
      if (drawn >= JOBS) break;
      const parts = planned(job);
      for (const part of parts)
        try {
          const which = `${part.name}, ${paper}, ${dims}: ${JSON.stringify(job)}`;
          const { pages } = partPlan('random', part, { paper, dims });
          flaws.push(
            ...pages.flatMap((p, i) => pageFlaws(p).map((flaw) => `sheet ${i + 1}: ${flaw}: ${which}`)),
          );
        } catch (error) {
          if (!(error instanceof JobError)) throw error;
          expect(error.problems[0]?.code).toBe('paper-small');
          small += 1;
        }
      if (parts.length > 0) drawn += 1;
    }
    expect(flaws).toEqual([]);
    expect(drawn).toBe(JOBS);
    expect(small).toBeLessThan(JOBS / 20);
  });

  test('nor on their templates', () => {
    const flaws: string[] = [];
    let drawn = 0;
    for (const { job, paper, dims } of fc.sample(random, 200)) {
      const { width, height } = PAPERS.find((p) => p.name === paper) as (typeof PAPERS)[number];
      for (const part of planned(job)) {
        const { pages } = partTemplate('random', part, { dims, medium: { kind: 'sheets', width, height } });
        const which = `${part.name}, ${paper}: ${JSON.stringify(job)}`;
        flaws.push(
          ...pages.flatMap((p, i) => pageFlaws(p).map((flaw) => `page ${i + 1}: ${flaw}: ${which}`)),
        );
        drawn += 1;
      }
    }
    expect(flaws).toEqual([]);
    expect(drawn).toBeGreaterThan(50);
  });
});

/** The numbers a text is made of, `436.5`. */
const numbersIn = (text: string): readonly number[] =>
  [...text.matchAll(/\d+(?:\.\d+)?/g)].map(([n]) => Number(n));

interface Manifest {
  readonly parts: readonly {
    readonly name: string;
    readonly blank: { readonly x: number; readonly y: number };
    readonly bends: readonly { readonly line: readonly (readonly [number, number])[] }[];
    readonly marks: readonly {
      readonly at: readonly [number, number];
      readonly centre?: readonly [number, number];
    }[];
    readonly formed: { readonly x: number; readonly y: number; readonly z: number };
  }[];
}

describe.each(EXAMPLES)('%s', (file) => {
  const plan = example(file);

  test('its plans read back from PDF: pages, sizes of paper, and every size the manifest has', async () => {
    const made = await jobFiles(plan, { dxf: 'r2000' });
    const manifest = JSON.parse(String(made.find((f) => f.path === 'job.json')?.content)) as Manifest;
    const { parts, files } = await planFiles(plan, plan.parts, { paper: 'A4', dims: 'mm' });
    expect(parts.map((p) => p.name)).toEqual(manifest.parts.map((p) => p.name));
    for (const { name, pages: count, pdf } of parts) {
      const read = await readPdf(files.find((f) => f.path === pdf)?.content as Uint8Array);
      expect(read.title).toContain(name);
      expect(read.language).toBe('en');
      expect(read.pages).toHaveLength(count);
      expect(files.filter((f) => f.path.startsWith(`plans/${name}-`))).toHaveLength(count);
      for (const { width, height } of read.pages)
        expect([width, height].map((v) => v.toFixed(2)).toSorted()).toEqual(['210.00', '297.00']);
      const [first] = read.pages;
      // ordinates along x stand upright, those along y lie
      const lone = (turn: number) =>
        (first?.texts ?? [])
          .filter((t) => t.turn === turn && /^[\d.]+$/.test(t.text))
          .map((t) => Number(t.text));
      const part = manifest.parts.find((p) => p.name === name);
      const told = (list: readonly number[], value: number) =>
        expect(
          list.some((n) => Math.abs(n - value) <= 0.05 + 1e-9),
          `${name}: ${value}`,
        ).toBe(true);
      told(lone(90), part?.blank.x ?? Number.NaN);
      told(lone(0), part?.blank.y ?? Number.NaN);
      for (const { line: [a, b] = [] } of part?.bends ?? []) {
        if (a === undefined || b === undefined) throw new Error('a bend without a line');
        if (Math.abs(a[0] - b[0]) < 1e-6) told(lone(90), a[0]);
        else if (Math.abs(a[1] - b[1]) < 1e-6) told(lone(0), a[1]);
        else for (const [x, y] of [a, b]) [told(lone(90), x), told(lone(0), y)];
      }
      const all = read.pages.flatMap((p) => p.texts.flatMap((t) => numbersIn(t.text)));
      for (const { at, centre = at } of part?.marks ?? []) for (const v of centre) told(all, v);
      if ((part?.bends.length ?? 0) > 0 && part !== undefined)
        for (const v of Object.values(part.formed)) told(all, v);
    }
  });

  test('its templates read back from PDF: the outline at full size, within 0.05 mm, and a square of 100 mm on every page', async () => {
    const medium = { kind: 'sheets', width: 210, height: 297 } as const;
    const { parts, files } = await templateFiles(plan, plan.parts, { dims: 'mm', medium });
    for (const { name, pdf } of parts) {
      const { flat } = plan.parts.find((p) => p.name === name) as PartPlan;
      const { pages } = await readPdf(files.find((f) => f.path === pdf)?.content as Uint8Array);
      const tiles = pages.length === 1 ? pages : pages.slice(1);
      for (const { paths } of pages) {
        const corners = paths.filter((p) => p.length === 3).map((p) => p[1] as readonly [number, number]);
        const square = corners.some(([x, y]) =>
          [
            [100, 0],
            [0, 100],
            [100, 100],
          ].every(([dx, dy]) =>
            corners.some(([u, v]) => Math.hypot(u - x - (dx as number), v - y - (dy as number)) < 0.05),
          ),
        );
        expect(square, `${name}: square`).toBe(true);
      }
      // every bend that lies whole on one tile has its length there
      const lengths = tiles.flatMap(({ paths }) =>
        paths.flatMap((p) =>
          p.slice(1).map((q, i) => Math.hypot(q[0] - (p[i]?.[0] ?? 0), q[1] - (p[i]?.[1] ?? 0))),
        ),
      );
      const sides = flat.bends
        .map(({ line: [a, b] }) => Math.hypot(b[0] - a[0], b[1] - a[1]))
        .filter((l) => l < (pages.length === 1 ? Infinity : 60));
      for (const l of sides)
        expect(
          lengths.some((v) => Math.abs(v - l) < 0.05),
          `${name}: ${l}`,
        ).toBe(true);
    }
  });
});

test('the same plan gives the same bytes', async () => {
  const plan = example('harvest-carrier.yaml');
  const [a, b] = await Promise.all(
    [1, 2].map(() => planFiles(plan, plan.parts, { paper: 'A3', dims: '1/16' })),
  );
  expect(a?.files.map((f) => [f.path, Buffer.from(f.content as Uint8Array).toString('hex')])).toEqual(
    b?.files.map((f) => [f.path, Buffer.from(f.content as Uint8Array).toString('hex')]),
  );
});
