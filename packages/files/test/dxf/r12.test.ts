import { flatDrawing, toDxfR12 } from '@tinwright/files';
import { expect, test } from 'vitest';
import { numbers, readDxf, value } from '../dxf-reader.js';
import { samples } from '../samples.js';

const FILES = samples().map(({ name, flat }) => ({
  name,
  flat,
  file: readDxf(toDxfR12(flatDrawing(flat, name, [name, 'mm']))),
}));

// what R12 (AC1009) knows: no subclass markers, no LWPOLYLINE, no $INSUNITS (DXF reference, from memory)
test.each(FILES)('$name: nothing later readers added', ({ file }) => {
  expect(file.header.get('$ACADVER')).toEqual([[1, 'AC1009']]);
  expect(file.header.has('$INSUNITS')).toBe(false);
  expect(file.tags.filter(([code]) => code === 100 || code === 5 || code === 330)).toEqual([]);
  const known = ['LINE', 'CIRCLE', 'POLYLINE', 'VERTEX', 'SEQEND', 'TEXT'];
  expect(file.entities.map((e) => e.type).filter((t) => !known.includes(t))).toEqual([]);
});

test.each(FILES)('$name: an outline announces its vertices and lies at height 0', ({ file, flat }) => {
  const lines = file.entities.filter((e) => e.type === 'POLYLINE');
  expect(lines).toHaveLength(1 + flat.holes.filter((h) => h.length > 2).length);
  for (const line of lines) expect(numbers(line, 66, 70, 10, 20, 30)).toEqual([1, 1, 0, 0, 0]);
});

test.each(FILES)('$name: tables count their rows', ({ file }) => {
  const starts = file.tags.flatMap(([code, v], i) => (code === 0 && v === 'TABLE' ? [i] : []));
  expect(starts).toHaveLength(3);
  for (const s of starts) {
    const end = file.tags.findIndex(([, v], i) => i > s && v === 'ENDTAB');
    const table = file.tags.slice(s + 1, end);
    expect(table.filter(([code]) => code === 0)).toHaveLength(Number(value({ tags: table }, 70)));
  }
});

test.each(FILES)('$name: the unit is told in a note, the format has no place for it', ({ file }) => {
  const texts = file.entities.filter((e) => e.type === 'TEXT').map((e) => value(e, 1));
  expect(texts).toContain('mm');
});
