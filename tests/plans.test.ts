// Plans and templates of random jobs and of the examples: nothing on a page is in the way of a text, and read back from
// the PDF every size is the manifest's.
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import {
  type AnyFamily,
  FAMILIES,
  JobError,
  type JobPlan,
  jobReader,
  type PartPlan,
  planJob,
  readJob,
} from '@tinwright/core';
import { hardware } from '@tinwright/core/hardware';
import { jobFiles, type OutFile } from '@tinwright/files';
import { PAPERS, partPlan, partTemplate, planFiles, templateFiles } from '@tinwright/paper';
import { DIMS_NAMES } from '@tinwright/paper/internal';
import { paramsOf, sheets } from '@tinwright/testing';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import rowMarker from '../examples/row-marker.mjs';
import { carriers } from './kit/carriers.js';
import { pageFlaws } from './kit/page-flaws.js';
import { type ReadPage, readPdf } from './kit/read-pdf.js';

const FOLDER = fileURLToPath(new URL('../examples/', import.meta.url));
const EXAMPLES = readdirSync(FOLDER).filter((f) => /(?<!-shop)\.yaml$/.test(f));
const read = jobReader(); // keeps the schemas that it builds
const families: readonly AnyFamily[] = [...FAMILIES, rowMarker];
const example = (file: string): JobPlan =>
  planJob(readJob(parse(readFileSync(`${FOLDER}${file}`, 'utf8')), families, { hardware }));

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
  lettering: fc.constantFrom(2.5 as const, 2.5 as const, 2.5 as const, 3.5 as const),
});

/** Parts of a job that can be made; none of one that cannot. */
function planned(job: object): readonly PartPlan[] {
  try {
    return planJob(read(job)).parts;
  } catch (error) {
    if (error instanceof JobError) return [];
    throw error;
  }
}

describe('random jobs', () => {
  const JOBS = Number(process.env.TINWRIGHT_RUNS ?? 30);

  test(`on the plans of ${JOBS} jobs no text meets a text, a line or the edge of the paper`, () => {
    let [drawn, small] = [0, 0];
    const flaws: string[] = [];
    for (const { job, paper, dims, lettering } of fc.sample(random, 8 * JOBS)) {
      if (drawn >= JOBS) break;
      const parts = planned(job);
      for (const part of parts)
        try {
          const which = `${part.name}, ${paper}, ${dims}, ${lettering}: ${JSON.stringify(job)}`;
          const { pages } = partPlan('random', part, { paper, dims, lettering });
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
    expect(small).toBeLessThan(Math.max(3, JOBS / 20));
  });

  test('nor on their templates', () => {
    const flaws: string[] = [];
    let drawn = 0;
    for (const { job, paper, dims, lettering } of fc.sample(random, JOBS)) {
      const { width, height } = PAPERS.find((p) => p.name === paper) as (typeof PAPERS)[number];
      for (const part of planned(job)) {
        const { pages } = partTemplate('random', part, {
          dims,
          lettering,
          medium: { kind: 'sheets', width, height },
        });
        const which = `${part.name}, ${paper}: ${JSON.stringify(job)}`;
        flaws.push(
          ...pages.flatMap((p, i) => pageFlaws(p).map((flaw) => `page ${i + 1}: ${flaw}: ${which}`)),
        );
        drawn += 1;
      }
    }
    expect(flaws).toEqual([]);
    expect(drawn).toBeGreaterThan(JOBS / 4);
  });
});

interface ManifestPart {
  readonly name: string;
  readonly blank: { readonly x: number; readonly y: number };
  readonly formed: { readonly x: number; readonly y: number; readonly z: number };
  readonly bends: readonly { readonly line: readonly [Point, Point] }[];
  readonly marks: readonly { readonly at: Point; readonly centre?: Point }[];
}

type Point = readonly [number, number];

/** Sizes along x and y that a plan's pattern has to tell, by its manifest. */
function told({ blank, bends }: ManifestPart): readonly [x: readonly number[], y: readonly number[]] {
  const ends = bends.flatMap(({ line: [a, b] }): readonly [number | null, number | null][] => {
    if (Math.abs(a[0] - b[0]) < 1e-6) return [[a[0], null]];
    if (Math.abs(a[1] - b[1]) < 1e-6) return [[null, a[1]]];
    return [[...a], [...b]];
  });
  const along = (k: 0 | 1) => ends.map((e) => e[k]).filter((v) => v !== null);
  return [
    [blank.x, ...along(0)],
    [blank.y, ...along(1)],
  ];
}

/** Sizes that no number in a list prints to a tenth. */
const missing = (sizes: readonly number[], printed: readonly number[]) =>
  sizes.filter((v) => !printed.some((n) => Math.abs(n - v) <= 0.05 + 1e-9));

/** Lone numbers on a page: those along x stand upright, those along y lie. */
const lone = (page: ReadPage | undefined, turn: 0 | 90) =>
  (page?.texts ?? []).filter((t) => t.turn === turn && /^[\d.]+$/.test(t.text)).map((t) => Number(t.text));

const numbersOn = ({ texts }: ReadPage) =>
  texts.flatMap((t) => [...t.text.matchAll(/\d+(?:\.\d+)?/g)].map(([n]) => Number(n)));

/** True when four corners, each two short lines, stand in a square of this side. */
function hasSquare({ paths }: ReadPage, side: number): boolean {
  const corners = paths.flatMap((p) => (p.length === 3 ? [p[1] as Point] : []));
  const at = (x: number, y: number) => corners.some(([u, v]) => Math.hypot(u - x, v - y) < 0.05);
  return corners.some(([x, y]) => at(x + side, y) && at(x, y + side) && at(x + side, y + side));
}

/** Lengths of all straight lines on a page. */
const lengthsOn = ({ paths }: ReadPage) =>
  paths.flatMap((p) =>
    p.slice(1).map((q, i) => Math.hypot(q[0] - (p[i] as Point)[0], q[1] - (p[i] as Point)[1])),
  );

describe.each(EXAMPLES)('%s', (file) => {
  const plan = example(file);
  const fileOf = async (files: readonly OutFile[], path: string) =>
    readPdf(files.find((f) => f.path === path)?.content as Uint8Array);

  test('its plans read back from PDF: pages, paper, and every size the manifest has', async () => {
    const made = jobFiles(plan, { dxf: 'r2000' });
    const manifest = JSON.parse(String(made.find((f) => f.path === 'job.json')?.content));
    const list = manifest.parts as readonly ManifestPart[];
    const { parts, files } = await planFiles(plan, plan.parts, { paper: 'A4', dims: 'mm' });
    expect(parts.map((p) => p.name)).toEqual(list.map((p) => p.name));
    for (const [i, { name, pages: count, pdf }] of parts.entries()) {
      const part = list[i] as ManifestPart;
      const { title, language, pages } = await fileOf(files, pdf);
      expect([title.includes(name), language, pages.length]).toEqual([true, 'en', count]);
      expect(files.filter((f) => f.path.startsWith(`plans/${name}-`))).toHaveLength(count);
      for (const { width, height } of pages)
        expect([width, height].map((v) => v.toFixed(2)).toSorted()).toEqual(['210.00', '297.00']);
      const [x, y] = told(part);
      expect(missing(x, lone(pages[0], 90)), `${name}: along x`).toEqual([]);
      expect(missing(y, lone(pages[0], 0)), `${name}: along y`).toEqual([]);
      const marks = part.marks.flatMap((m) => m.centre ?? m.at);
      const formed = part.bends.length > 0 ? Object.values(part.formed) : [];
      // the marking program sets a mark off from either edge
      const { blank } = part;
      const numbers = pages.flatMap(numbersOn);
      const edges = numbers.flatMap((n) => [n, blank.x - n, blank.y - n]);
      expect(missing(marks, edges), `${name}: marks anywhere`).toEqual([]);
      expect(missing(formed, numbers), `${name}: formed sizes anywhere`).toEqual([]);
    }
  });

  test('its templates read back from PDF: bends at full size within 0.05 mm, a square of 100 mm on every page', async () => {
    const medium = { kind: 'sheets', width: 210, height: 297 } as const;
    const { parts, files } = await templateFiles(plan, plan.parts, { dims: 'mm', medium });
    for (const { name, pdf } of parts) {
      const { flat } = plan.parts.find((p) => p.name === name) as PartPlan;
      const { pages } = await fileOf(files, pdf);
      expect(pages.filter((p) => !hasSquare(p, 100))).toEqual([]);
      // bends short enough to lie whole on some tile
      const short = flat.bends
        .map(({ line: [a, b] }) => Math.hypot(b[0] - a[0], b[1] - a[1]))
        .filter((l) => l < 60);
      const lengths = pages.slice(pages.length === 1 ? 0 : 1).flatMap(lengthsOn);
      expect(
        short.filter((l) => !lengths.some((v) => Math.abs(v - l) < 0.05)),
        name,
      ).toEqual([]);
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
