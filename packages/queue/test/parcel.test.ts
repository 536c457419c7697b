import { pack, unpack } from '@tinwright/queue';
import { describe, expect, test } from 'vitest';

const file = (path: string, text = 'a') => ({ path, content: new TextEncoder().encode(text) });
const ITEMS = [
  {
    said: { name: 'tray' },
    files: [file('job.json', '{}'), file('parts/tray ä.dxf', '0\nEOF\n'), file('e', '')],
  },
  { said: null, files: [] },
];
const plain = (items: ReturnType<typeof unpack>) =>
  items?.map(({ said, files }) => ({
    said,
    files: files.map((f) => [f.path, new TextDecoder().decode(f.content)]),
  }));

test('items come out as they were packed, byte for byte', () => {
  expect(plain(unpack(pack(ITEMS)))).toEqual(plain(ITEMS));
});

test('bytes that lack something, have something more or are something else are none', () => {
  const whole = pack(ITEMS);
  for (const n of [0, 3, 5, 20, whole.length - 1]) expect(unpack(whole.slice(0, n)), `${n}`).toBeNull();
  expect(unpack(new Uint8Array([...whole, 0]))).toBeNull();
  expect(unpack(new TextEncoder().encode('[{"said":1,"files":[]}]'))).toBeNull();
  const headed = (text: string) => new Uint8Array([text.length, 0, 0, 0, ...new TextEncoder().encode(text)]);
  expect(unpack(headed('[{"said":1,"files":[]}]'))).toHaveLength(1);
  for (const head of [
    'null',
    '{}',
    '[1]',
    '[{"files":[["a",-1]]}]',
    '[{"files":[["a",1e300]]}]',
    '[{"files":[[1,0]]}]',
  ])
    expect(unpack(headed(head)), head).toBeNull();
});

describe('a path that leads out of the folder of its size', () => {
  test.each([
    '../tray.dxf',
    'parts/../../tray.dxf',
    '/etc/passwd',
    'C:/tray.dxf',
    'parts\\..\\tray.dxf',
    './tray.dxf',
    '.profile',
    'parts//tray.dxf',
    '',
    'a/b/c/d/e.dxf',
    'tray\u0000.dxf',
    'tray.dxf ',
    `${'x'.repeat(201)}.dxf`,
  ])('%j is refused', (path) => {
    expect(unpack(pack([{ said: 1, files: [file('job.json'), file(path)] }]))).toBeNull();
  });
});
