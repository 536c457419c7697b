import type { Nest } from '@tinwright/cutting';
import { nestFiles } from '@tinwright/files';
import { expect, test } from 'vitest';

/** Files of a nest of empty sheets with these names, without their folder. */
function filesOf(names: readonly string[]): readonly string[] {
  const stock = { name: 'full', material: 'mild-steel', thickness: 1, x: 400, y: 300, outline: null };
  const sheets = names.map((name) => ({ name, stock, pieces: [], density: 0, usedTo: 0 }));
  const nest = { sheets, spacing: 5, edge: 1, kerf: 1, missing: [] } as unknown as Nest;
  const cuts = names.map(() => ({ contours: [], marks: [], findings: [] }));
  return nestFiles({ nest, cuts: cuts as never }, [])
    .map((f) => f.path)
    .filter((p) => p.endsWith('.dxf'))
    .map((p) => p.replace('nests/', ''));
}

test('every sheet has files of its own, on systems too where capitals do not count', () => {
  expect(filesOf(['bit', 'BIT', 'Bit'])).toEqual(['bit.dxf', 'BIT-2.dxf', 'Bit-3.dxf']);
  expect(filesOf(['a b', 'a-b', 'a/b', 'a-b-2'])).toEqual([
    'a-b.dxf',
    'a-b-2.dxf',
    'a-b-3.dxf',
    'a-b-2-2.dxf',
  ]);
  expect(filesOf(['\u00e9', 'e\u0301'])).toEqual(['\u00e9.dxf', 'e\u0301-2.dxf']);
});

test('no file is called as a device is, or by a name longer than systems take', () => {
  expect(filesOf(['CON', 'nul.old', 'Console'])).toEqual(['-CON.dxf', '-nul.old.dxf', 'Console.dxf']);
  const [long = '', other = ''] = filesOf(['é'.repeat(300), 'é'.repeat(301)]);
  expect(Buffer.byteLength(long)).toBeLessThan(255);
  expect(other).not.toBe(long);
});
