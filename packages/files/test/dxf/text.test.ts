import fc from 'fast-check';
import { expect, test } from 'vitest';
import { dxfText, dxfTextR12 } from '../../src/dxf/text.js';

// codes %%d, %%c, %%p and \U+XXXX: DXF reference, from memory
test('degree, diameter and plus-minus have their own codes', () => {
  expect(dxfText('90° Ø4 ±0.1')).toBe('90%%d %%c4 %%p0.1');
  expect(dxfTextR12('90° ⌀4 ±0.1')).toBe('90%%d %%c4 %%p0.1');
});

test('other letters go by their number in R2000, both halves of a pair', () => {
  expect(dxfText('Kräuter')).toBe('Kr\\U+00E4uter');
  expect(dxfText('🌱')).toBe('\\U+D83C\\U+DF31');
});

test('R12 drops accents and puts ? for what is left', () => {
  expect(dxfTextR12('Kräuter 漢 🌱')).toBe('Krauter ? ?');
});

test('two percent signs in a row are set apart, so that they start no code', () => {
  expect(dxfText('50%% dry')).toBe('50% % dry');
  expect(dxfText('50%%d')).not.toContain('%%');
});

test.each([
  ['50%%%d', '50% % %d'],
  ['%%%%d', '% % % %d'],
  ['100%', '100%'],
])('%s: percent signs never run together to a code of their own', (text, wanted) => {
  expect(dxfText(text)).toBe(wanted);
  expect(dxfTextR12(text)).toBe(wanted);
});

test('any text becomes one line of ASCII', () => {
  const anything = fc.string({ unit: 'binary' });
  fc.assert(
    fc.property(anything, (text) => {
      expect(dxfText(text)).toMatch(/^[ -~]*$/);
      expect(dxfTextR12(text)).toMatch(/^[ -~]*$/);
    }),
  );
});

test('plain words come through as they are', () => {
  expect(dxfText('harvest-carrier_2')).toBe('harvest-carrier_2');
  expect(dxfTextR12('harvest-carrier_2')).toBe('harvest-carrier_2');
});
