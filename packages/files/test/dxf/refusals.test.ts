import type { Drawing, Shape } from '@tinwright/files';
import { toDxf, toDxfR12 } from '@tinwright/files';
import { describe, expect, test } from 'vitest';
import { readDxf, value } from '../dxf-reader.js';

const FORMS = [
  { form: 'R2000', write: toDxf },
  { form: 'R12', write: toDxfR12 },
] as const;
const BAD = [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, 1e9, -1e9, 1e21];

const drawing = (...shapes: readonly Shape[]): Drawing => ({
  title: 'bench bin',
  layers: [{ name: 'CUT', shapes }],
  box: { min: [0, 0], max: [10, 10] },
});
const note = (text: string): Drawing => ({
  title: text,
  layers: [{ name: 'NOTE', shapes: [{ kind: 'text', at: [1, 1], height: 3, text }] }],
  box: { min: [0, 0], max: [10, 10] },
});

/** The bad number in every place a shape has one. */
const shapesWith = (v: number): readonly Shape[] => [
  { kind: 'line', from: [v, 0], to: [1, 1] },
  { kind: 'line', from: [0, v], to: [1, 1] },
  { kind: 'line', from: [0, 0], to: [v, 1] },
  { kind: 'line', from: [0, 0], to: [1, v] },
  { kind: 'circle', centre: [v, 0], radius: 1 },
  { kind: 'circle', centre: [0, v], radius: 1 },
  { kind: 'circle', centre: [0, 0], radius: v },
  { kind: 'text', at: [v, 0], height: 2, text: 'x' },
  { kind: 'text', at: [0, v], height: 2, text: 'x' },
  { kind: 'text', at: [0, 0], height: v, text: 'x' },
  { kind: 'loop', loop: [[0, 0] as const, [v, 0] as const, [5, 5] as const].map((at) => ({ at, bulge: 0 })) },
  { kind: 'loop', loop: [[0, 0] as const, [9, 0] as const, [5, v] as const].map((at) => ({ at, bulge: 0 })) },
];

const INJECTIONS = [
  'a\nb',
  'a\r\n  0\r\nLINE\r\n  8\r\nCUT\r\n 10\r\n0\r\n',
  'a\n0\nEOF',
  'a\rb',
  'a\u2028b\u2029c\u0085d',
  'a\u0000b\u001b[31mc\u007fd',
  'tray \u202e 5 \u2066',
  'Kräuterkiste 90° ±0.1 Ø4 漢字 🌱',
  '50%% of %%d, %%u, %%nnn',
  '\ud800 alone',
];

describe.each(FORMS)('$form', ({ write }) => {
  test.each(BAD)('a coordinate of %s is refused, with what is allowed', (v) => {
    for (const shape of shapesWith(v)) {
      expect(() => write(drawing(shape)), JSON.stringify(shape)).toThrow(RangeError);
      expect(() => write(drawing(shape))).toThrow(`${v} given, a finite number up to 1000000 mm allowed`);
    }
    expect(() => write({ ...drawing(), box: { min: [0, 0], max: [v, 10] } })).toThrow(RangeError);
    expect(() => write({ ...drawing(), box: { min: [0, v], max: [10, 10] } })).toThrow(RangeError);
  });

  test('a kilometre is still written', () => {
    expect(() => write(drawing({ kind: 'line', from: [-1e6, 0], to: [1e6, 1] }))).not.toThrow();
  });

  test('coordinates below a millionth are written without an exponent', () => {
    const file = readDxf(write(drawing({ kind: 'line', from: [1e-9, -1e-12], to: [1.5e-6, 3] })));
    const line = file.entities.find((e) => e.type === 'LINE') ?? { tags: [] };
    expect([10, 20, 11, 21].map((c) => value(line, c))).toEqual(['0', '0', '0.000002', '3']);
  });

  test.each(INJECTIONS)('the text %j stays one value and adds no group', (text) => {
    const plain = readDxf(write(note('plain')));
    const written = write(note(text));
    const file = readDxf(written);
    expect(file.tags.map(([code]) => code)).toEqual(plain.tags.map(([code]) => code));
    expect(file.entities.map((e) => e.type)).toEqual(['TEXT']);
    expect(written).toMatch(/^[\r\n -~]*$/);
  });
});
