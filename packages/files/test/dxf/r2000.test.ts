import { flatDrawing, toDxf } from '@tinwright/files';
import { expect, test } from 'vitest';
import { layerStyle } from '../../src/layers.js';
import { readDxf, value } from '../dxf-reader.js';
import { samples } from '../samples.js';

const FILES = samples().map(({ name, flat }) => ({
  name,
  file: readDxf(toDxf(flatDrawing(flat, name, [name]))),
}));

// version AC1015 is R2000; $INSUNITS 4 is mm, $MEASUREMENT 1 is metric (DXF reference, from memory)
test.each(FILES)('$name: header says R2000, millimetres, metric', ({ file }) => {
  expect(file.header.get('$ACADVER')).toEqual([[1, 'AC1015']]);
  expect(file.header.get('$INSUNITS')).toEqual([[70, '4']]);
  expect(file.header.get('$MEASUREMENT')).toEqual([[70, '1']]);
});

test.each(FILES)('$name: handles are unique and below the seed', ({ file }) => {
  const seed = file.header.get('$HANDSEED')?.[0]?.[1] ?? '';
  const body = file.tags.slice(file.tags.findIndex(([, v]) => v === 'TABLES'));
  const handles = body.filter(([code]) => code === 5 || code === 105).map(([, v]) => v);
  expect(handles.length).toBeGreaterThan(20);
  expect(new Set(handles).size).toBe(handles.length);
  for (const h of handles) expect(Number.parseInt(h, 16)).toBeLessThan(Number.parseInt(seed, 16));
});

test.each(FILES)('$name: entities belong to the block record of model space', ({ file }) => {
  const at = file.tags.findIndex(
    ([code, v], i) => code === 0 && v === 'BLOCK_RECORD' && named(file.tags.slice(i + 1)),
  );
  const record = file.tags.slice(at).find(([code]) => code === 5)?.[1];
  expect(record).toBeDefined();
  expect(new Set(file.entities.map((e) => value(e, 330)))).toEqual(new Set([record]));
});

/** True for the groups of a record whose name is model space's. */
function named(after: readonly (readonly [number, string])[]): boolean {
  const end = after.findIndex(([code]) => code === 0);
  return after.slice(0, end).some(([code, v]) => code === 2 && v.toUpperCase() === '*MODEL_SPACE');
}

test.each(FILES)('$name: layers have the colours of the layer list', ({ file }) => {
  const rows = file.tags.flatMap(([code, v], i) => (code === 0 && v === 'LAYER' ? [i] : []));
  const colours = rows.map((i) => {
    const tags = file.tags.slice(i + 1, i + 12);
    return [value({ tags }, 2), Number(value({ tags }, 62))] as const;
  });
  const ours = colours.filter(([layer]) => layer !== '0');
  expect(ours.map(([layer]) => layer)).toContain('CUT');
  for (const [layer, colour] of ours)
    expect(colour).toBe(layerStyle(layer as Parameters<typeof layerStyle>[0]).number);
});
