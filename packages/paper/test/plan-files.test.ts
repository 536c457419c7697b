import { JobError, type JobPlan, PROGRAM, planJob, readJob } from '@tinwright/core';
import { planFiles, templateFiles } from '@tinwright/paper';
import { expect, test } from 'vitest';
import { readPdf } from '../../../tests/kit/read-pdf.js';
import { spareBytes } from './spare.js';

const jobOf = (names: readonly string[], length = 60): JobPlan =>
  planJob(
    readJob({
      name: 'garden',
      units: 'mm',
      stock: { material: 'mild-steel', thickness: 1 },
      parts: names.map((name) => ({
        name,
        family: 'bent-strip',
        width: 40,
        legs: [30, length],
        angles: [90],
      })),
    } as unknown),
  );
const A4 = { paper: 'A4', dims: 'mm' } as const;

test('plans: a PDF a part, an SVG a sheet, and a list of them last', async () => {
  const plan = jobOf(['hook', 'stay']);
  const { parts, files } = await planFiles(plan, plan.parts, A4);
  expect(parts).toMatchObject([
    { name: 'hook', pages: 1, scale: '1:1', pdf: 'plans/hook.pdf', svg: ['plans/hook-1.svg'] },
    { name: 'stay', pages: 1, scale: '1:1', pdf: 'plans/stay.pdf', svg: ['plans/stay-1.svg'] },
  ]);
  const paths = ['plans/hook.pdf', 'plans/hook-1.svg', 'plans/stay.pdf', 'plans/stay-1.svg'];
  expect(files.map((f) => f.path)).toEqual([...paths, 'plans.json']);
  expect(JSON.parse(String(files.at(-1)?.content))).toEqual({
    format: 1,
    program: PROGRAM.mark,
    name: 'garden',
    paper: 'A4',
    dims: 'mm',
    parts: JSON.parse(JSON.stringify(parts)) as unknown,
    files: paths,
  });
});

test('in German where asked: plan, template and their language', async () => {
  const plan = jobOf(['haken']);
  const { files } = await planFiles(plan, plan.parts, { ...A4, language: 'de' });
  const [, sheet] = files.map((f) => String(f.content));
  expect(sheet).toContain('lang="de"');
  expect(sheet).toMatch(/B1 hoch 90°/);
  const medium = { kind: 'sheets', width: 210, height: 297 } as const;
  const templates = await templateFiles(plan, plan.parts, { dims: 'mm', medium, language: 'de' });
  const read = await readPdf(templates.files[0]?.content as Uint8Array);
  expect(read.language).toBe('de');
  expect(read.pages.flatMap((p) => p.texts.map((t) => t.text)).join(' ')).toMatch(/In wahrer Größe drucken/);
});

test('a paper there is none of is refused with those there are', async () => {
  const plan = jobOf(['hook']);
  await expect(planFiles(plan, plan.parts, { ...A4, paper: 'A5' })).rejects.toThrow(
    new RangeError('paper A5 given, A4, letter, A3, tabloid allowed'),
  );
});

test('templates: a PDF a part and a list', async () => {
  const plan = jobOf(['hook']);
  const medium = { kind: 'sheets', width: 210, height: 297 } as const;
  const { files } = await templateFiles(plan, plan.parts, { dims: 'mm', medium });
  expect(files.map((f) => f.path)).toEqual(['templates/hook.pdf', 'templates.json']);
});

test('a name the standard fonts cannot write is set in the spare font, which is not asked for otherwise', async () => {
  let asked = 0;
  const spare = () => {
    asked += 1;
    return spareBytes();
  };
  const plain = jobOf(['Hülse']);
  await planFiles(plain, plain.parts, A4, spare);
  expect(asked).toBe(0);
  const plan = jobOf(['łapa', 'Гряда']);
  const { files } = await planFiles(plan, plan.parts, A4, spare);
  expect(asked).toBe(1);
  for (const name of ['łapa', 'Гряда']) {
    const pdf = files.find((f) => f.path === `plans/${name}.pdf`)?.content as Uint8Array;
    const { pages } = await readPdf(pdf);
    expect(
      pages[0]?.texts
        .map((t) => t.text)
        .join(' ')
        .replaceAll(' ', ''),
    ).toContain(name);
  }
});

test('a name no font can write is told by its code points, never by empty boxes', async () => {
  const plan = jobOf(['山']);
  const { files } = await planFiles(plan, plan.parts, A4, spareBytes);
  const { pages } = await readPdf(files[0]?.content as Uint8Array);
  expect(pages[0]?.texts.map((t) => t.text)).toContain('[5C71]');
});

test('parts that cannot be drawn are all named', async () => {
  const plan = jobOf(['hook', 'stay']);
  const error = await planFiles(plan, plan.parts, { ...A4, scale: '5:1' }).catch((e: unknown) => e);
  expect(error).toBeInstanceOf(JobError);
  expect((error as JobError).problems.map((p) => p.part)).toEqual(['hook', 'stay']);
});
