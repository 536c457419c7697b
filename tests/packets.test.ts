// Packets of the examples and of random jobs: nothing on a page is in the way of a text, and read back from the PDF its
// links, bookmarks, pictures and numbers are what they should be.
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import {
  type AnyFamily,
  FAMILIES,
  JobError,
  type JobPlan,
  jobReader,
  planJob,
  readJob,
} from '@tinwright/core';
import { hardware } from '@tinwright/core/hardware';
import { jobFiles } from '@tinwright/files';
import {
  type Making,
  makingOf,
  type PacketOptions,
  packetFiles,
  packetPages,
  SECTIONS,
} from '@tinwright/paper';
import { DEFAULT_SHOP, jobOperations } from '@tinwright/shop';
import { paramsOf, sheets } from '@tinwright/testing';
import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import rowMarker from '../examples/row-marker.mjs';
import { carriers } from './kit/carriers.js';
import { pageFlaws } from './kit/page-flaws.js';
import { type ReadDocument, readPdf } from './kit/read-pdf.js';

const FOLDER = fileURLToPath(new URL('../examples/', import.meta.url));
const EXAMPLES = readdirSync(FOLDER).filter((f) => /(?<!-shop)\.yaml$/.test(f));
const read = jobReader(); // keeps the schemas that it builds
const families: readonly AnyFamily[] = [...FAMILIES, rowMarker];
const example = (file: string): JobPlan =>
  planJob(readJob(parse(readFileSync(`${FOLDER}${file}`, 'utf8')), families, { hardware }));

/** The trade's order of bends for every part: the planner's has tests of its own and takes its time. */
const unplanned = (plan: JobPlan): Making => ({
  shop: DEFAULT_SHOP,
  assumed: true,
  sequences: new Map(),
  operations: jobOperations(plan, new Map()),
  findings: plan.findings,
});

const flawsOf = (plan: JobPlan, options: PacketOptions, which: string): readonly string[] =>
  packetPages(plan, unplanned(plan), options).flatMap((p, i) =>
    pageFlaws(p).map((flaw) => `${which}, page ${i + 1}: ${flaw}`),
  );

/** More is asked for than a test takes every time. */
const MANY = process.env.TINWRIGHT_RUNS !== undefined;

describe('no text meets a text, a line or the edge of the paper', () => {
  const WAYS: readonly PacketOptions[] = [
    { paper: 'A4', dims: 'mm' },
    { paper: 'letter', dims: '1/32', worksheet: true, sets: 2 },
    { paper: 'A3', dims: 'mm', language: 'de', lettering: 3.5 },
  ];
  test.each(EXAMPLES.map((file, i) => [file, i] as const))('in packets of %s', (file, i) => {
    const plan = example(file);
    const ways = MANY ? WAYS : [WAYS[i % WAYS.length] as PacketOptions]; // `.ci/run` takes all
    expect(ways.flatMap((o) => flawsOf(plan, o, JSON.stringify(o)))).toEqual([]);
  });

  const single = fc
    .constantFrom(...FAMILIES)
    .chain((family) => fc.record({ family: fc.constant(family), params: paramsOf(family), sheet: sheets }))
    .map(({ family, params, sheet }) => ({
      units: 'mm',
      ...sheet,
      parts: [{ name: 'part', family: family.name, quantity: 2, ...params }],
    }));
  const random = fc.record({
    job: fc.oneof({ weight: 3, arbitrary: single }, { weight: 1, arbitrary: carriers }),
    paper: fc.constantFrom('A4', 'letter', 'A3', 'tabloid'),
    dims: fc.constantFrom('mm', 'in', '1/16'),
    language: fc.constantFrom('en', 'de'),
    lettering: fc.constantFrom(2.5 as const, 3.5 as const),
    worksheet: fc.boolean(),
  });

  test('in packets of random jobs', () => {
    const WANTED = MANY ? 20 : 10;
    let drawn = 0;
    const flaws: string[] = [];
    for (const { job, ...options } of fc.sample(random, 6 * WANTED)) {
      if (drawn >= WANTED) break;
      try {
        const sections = ['cautions', 'cuts', 'operations', 'inspection'] as const; // plans have tests of their own
        const asked = options.worksheet ? options : { ...options, sections };
        flaws.push(
          ...flawsOf(planJob(read(job)), asked, `${JSON.stringify(options)} ${JSON.stringify(job)}`),
        );
        drawn += 1;
      } catch (error) {
        if (!(error instanceof JobError)) throw error;
      }
    }
    expect(flaws).toEqual([]);
    expect(drawn).toBe(WANTED);
  });
});

describe('the harvest carrier’s packet, read back from PDF', () => {
  const plan = example('harvest-carrier.yaml');
  let bytes: Uint8Array;
  let read: ReadDocument;
  let expected: readonly string[];
  beforeAll(async () => {
    const making = makingOf(plan, null);
    const options = { paper: 'A4', dims: 'mm' } as const;
    const { files } = await packetFiles(plan, making, options, ['pdf']);
    bytes = files[0]?.content as Uint8Array;
    read = await readPdf(bytes);
    expected = packetPages(plan, making, options).flatMap((p) => p.anchors?.map((a) => a.title) ?? []);
  });

  test('title, language, size', () => {
    expect([read.title, read.language]).toEqual(['harvest carrier: packet', 'en']);
    expect(bytes.length).toBeLessThan(3_000_000);
    for (const { width, height } of read.pages)
      expect([width, height].map(Math.round).toSorted()).toEqual([210, 297]);
  });

  test('without templates it has 12 pages, with four pictures of bends or more on a sheet of them', () => {
    const sections = SECTIONS.filter((s) => s !== 'templates');
    const pages = packetPages(plan, makingOf(plan, null), { paper: 'A4', dims: 'mm', sections });
    expect(pages.length).toBeLessThanOrEqual(12);
    const pictures = pages.map((p) => p.blocks.filter((b) => b.alt?.includes(', step ')).length);
    expect(pictures.filter((n) => n > 0).length).toBeLessThanOrEqual(3);
    expect(pictures.reduce((a, b) => a + b)).toBeGreaterThanOrEqual(7);
    const letters = pages.flatMap((p) => p.blocks.flatMap((b) => b.items));
    for (const i of letters) if (i.kind === 'words') expect(i.height).toBeGreaterThanOrEqual(2.5);
  });

  test('bookmarks are its sections, plans and templates below theirs', () => {
    expect(read.bookmarks.map((b) => b.title)).toEqual(expected);
    const below = read.bookmarks.filter((b) => b.level === 1).map((b) => b.title);
    expect(below).toEqual(expected.filter((t) => /^(Plan|Template) of /.test(t)));
    const pages = read.bookmarks.map((b) => b.page);
    expect(pages).toEqual(pages.toSorted((a, b) => a - b));
  });

  test('links of the contents lead to the pages they name', () => {
    const [cover] = read.pages;
    const wanted = read.bookmarks.slice(1).flatMap((b) => [b.page, b.page]); // title and number
    expect(cover?.links).toEqual(wanted);
    const numbers = cover?.texts.map((t) => t.text) ?? [];
    for (const { title, page } of read.bookmarks.slice(1)) {
      const at = numbers.findIndex((t) => t.trim() === title);
      expect(numbers[at + 1], title).toBe(String(page + 1));
    }
  });

  test('text is text: it is found as it is said', () => {
    const said = read.pages.flatMap((p) => p.texts.map((t) => t.text)).join(' ');
    expect(said).toContain('How much does it carry?');
    expect(said).toContain('body: bend B5 tab-west, B7 tab-north-west and B9 tab-south-west 90° up');
    expect(said).toContain(`page ${read.pages.length} of ${read.pages.length}`);
  });

  test('pictures have words', () => {
    const alts = read.pages.flatMap((p) => p.alts);
    expect(alts[0]).toContain('The harvest carrier put together');
    expect(alts.length).toBeGreaterThan(10);
  });

  test('blanks of the cut list are those of the manifest', async () => {
    const manifest = jobFiles(plan, { dxf: 'r2000' }).find((f) => f.path === 'job.json')?.content;
    const { parts } = JSON.parse(String(manifest)) as {
      parts: readonly { name: string; blank: { x: number; y: number } }[];
    };
    const page = read.bookmarks.find((b) => b.title === 'Cut list')?.page ?? -1;
    const texts = read.pages[page]?.texts.map((t) => t.text) ?? [];
    for (const { name, blank } of parts) {
      const tenth = (mm: number) => String(Math.round(mm * 10) / 10);
      expect(texts, name).toContain(`${tenth(blank.x)} × ${tenth(blank.y)}`);
      expect(texts, name).toContain(tenth(Math.hypot(blank.x, blank.y)));
    }
  });

  test('the same job gives the same bytes', async () => {
    const again = await packetFiles(
      example('harvest-carrier.yaml'),
      makingOf(plan, null),
      { paper: 'A4', dims: 'mm' },
      ['pdf'],
    );
    expect(Buffer.compare(Buffer.from(again.files[0]?.content as Uint8Array), Buffer.from(bytes))).toBe(0);
  });
});
