import type { DxfForm } from '@tinwright/files';
import { jobFiles, partDxf, TABLE_STYLE } from '@tinwright/files';
import { describe, expect, test } from 'vitest';
import { readDxf, value } from './dxf-reader.js';
import { planned } from './samples.js';
import { readSvg } from './svg-reader.js';

const plan = planned([
  {
    name: 'end',
    family: 'gusset-end',
    quantity: 2,
    width: 190,
    shoulderHeight: 50,
    height: 120,
    crownWidth: 60,
  },
  { name: 'Kräuterkiste', family: 'open-box', length: 120, width: 80, height: 30 },
]);
const FORMS: readonly DxfForm[] = ['r2000', 'r12'];
const made = {
  r2000: jobFiles(plan, { dxf: 'r2000' }),
  r12: jobFiles(plan, { dxf: 'r12' }),
};
const text = (form: DxfForm, path: string) => {
  const content = made[form].find((f) => f.path === path)?.content;
  if (typeof content !== 'string') throw new Error(`no text at ${path}`);
  return content;
};

describe.each(FORMS)('%s', (form) => {
  test('a DXF and an SVG for every part, the manifest last', () => {
    expect(made[form].map((f) => f.path)).toEqual([
      'parts/end.dxf',
      'parts/end.svg',
      'parts/Kräuterkiste.dxf',
      'parts/Kräuterkiste.svg',
      'job.json',
    ]);
  });

  test('the manifest lists the other files, and each part its own', () => {
    const manifest = JSON.parse(text(form, 'job.json'));
    const others = made[form].map((f) => f.path);
    expect(manifest.files).toEqual(others.slice(0, -1));
    expect(manifest.parts.flatMap((p: { files: object }) => Object.values(p.files))).toEqual(manifest.files);
  });

  test('the same plan gives the same bytes', async () => {
    expect(jobFiles(plan, { dxf: form })).toEqual(made[form]);
  });

  test('a name beyond ASCII is written in ASCII', () => {
    expect(text(form, 'parts/Kräuterkiste.dxf')).toMatch(/^[\r\n -~]*$/);
  });
});

test('the form decides the version of the DXF', () => {
  const version = (form: DxfForm) => readDxf(text(form, 'parts/end.dxf')).header.get('$ACADVER')?.[0]?.[1];
  expect(FORMS.map(version)).toEqual(['AC1015', 'AC1009']); // R2000, R12 (DXF reference, from memory)
});

test('R12 says its unit in a note, R2000 has it in the header', () => {
  const notes = (form: DxfForm) =>
    readDxf(text(form, 'parts/end.dxf'))
      .entities.filter((e) => e.type === 'TEXT')
      .map((e) => value(e, 1));
  expect(notes('r2000')).toEqual(['end']);
  expect(notes('r12')).toEqual(['end', 'mm']);
});

test('an SVG bears the name of its part', () => {
  const svg = readSvg(text('r2000', 'parts/Kräuterkiste.svg').trimEnd());
  expect(svg.children.find((c) => c.name === 'title')?.text).toBe('Kräuterkiste');
});

test('the cut file of one part is the one of the set', () => {
  const [end] = plan.parts;
  for (const form of FORMS)
    expect(end && partDxf(end, { ...TABLE_STYLE, form })).toBe(text(form, 'parts/end.dxf'));
});
