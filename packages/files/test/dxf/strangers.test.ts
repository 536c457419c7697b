// Two readers by other people take the files as they are; the strict loader of a third one does in .ci/run.
import { createRequire } from 'node:module';
import { partDxf, TABLE_STYLE, type TableStyle } from '@tinwright/files';
import { expect, test } from 'vitest';
import { readDxf } from '../dxf-reader.js';
import { samples } from '../samples.js';

interface Read {
  readonly entities: readonly { readonly type: string; readonly layer: string }[];
}
const load = createRequire(import.meta.url);
const { Helper } = load('dxf') as { Helper: new (text: string) => { readonly parsed: Read } };
const Parser = load('dxf-parser') as new () => { parseSync(text: string): Read };

const STYLES: readonly Partial<TableStyle>[] = [
  {},
  { curves: 'arcs', marks: 'point', unit: 'in' },
  { form: 'r12' },
];
const FILES = samples().flatMap(({ name, flat }) =>
  STYLES.map((style, i) => ({
    name: `${name} ${i}`,
    text: partDxf({ name, flat }, { ...TABLE_STYLE, ...style }),
  })),
);

test.each(FILES)('$name: both find every entity on its layer', ({ text }) => {
  const ours = readDxf(text).entities.filter((e) => e.type !== 'VERTEX' && e.type !== 'SEQEND');
  const layers = ours.map((e) => e.tags.find(([code]) => code === 8)?.[1]);
  const first = new Parser().parseSync(text);
  expect(first.entities.map((e) => [e.type, e.layer])).toEqual(ours.map((e, i) => [e.type, layers[i]]));
  const second = new Helper(text).parsed;
  const own = (type: string) => (type === 'POLYLINE' ? 'LWPOLYLINE' : type); // how it calls both
  expect(second.entities.map((e) => [own(e.type), e.layer])).toEqual(
    ours.map((e, i) => [own(e.type), layers[i]]),
  );
});
