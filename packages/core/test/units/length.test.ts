import { MM_PER_INCH, parseLength, type Unit } from '@tinwright/core';
import { expect, test } from 'vitest';

// 25.4 mm to the inch: international yard and pound agreement of 1959, from memory

function mm(value: number | string, unit: Unit): number {
  const parsed = parseLength(value, unit);
  if (!parsed.ok) throw new Error(`${value} was refused: ${parsed.why}`);
  return parsed.mm;
}

function why(value: number | string, unit: Unit): string {
  const parsed = parseLength(value, unit);
  if (parsed.ok) throw new Error(`${value} was read as ${parsed.mm} mm`);
  return parsed.why;
}

test('one inch: 25.4 mm', () => {
  expect(MM_PER_INCH).toBe(25.4);
  expect(mm(1, 'in')).toBe(25.4);
});

test.each([
  [12.5, 'mm', 12.5],
  [0, 'mm', 0],
  [2, 'in', 50.8],
  [0.5, 'in', 12.7],
  [0, 'in', 0],
] as const)('the plain number %d in a job in %s: %d mm', (value, unit, expected) => {
  expect(mm(value, unit)).toBeCloseTo(expected, 12);
});

test('a negative number: read as it is, its range is judged elsewhere', () => {
  expect(mm(-5, 'mm')).toBe(-5);
  expect(mm(-1, 'in')).toBe(-25.4);
});

test.each([
  ['12.5', 12.5, 317.5],
  ['15 1/2', 15.5, 393.7],
  ['15-1/2', 15.5, 393.7],
  ['3/4', 0.75, 19.05],
  ['.5', 0.5, 12.7],
  ['½', 0.5, 12.7],
  ['0', 0, 0],
])('the text %s without a unit: %d mm in a mm job, %d mm in an inch job', (text, inMm, inInches) => {
  expect(mm(text, 'mm')).toBeCloseTo(inMm, 10);
  expect(mm(text, 'in')).toBeCloseTo(inInches, 10);
});

// by hand: 15.5 × 25.4 = 393.7; 1 ft = 304.8; 11/16 × 25.4 = 17.4625
test.each([
  ['15 1/2 in', 393.7],
  ['15-1/2 in', 393.7],
  ['15 - 1/2 in', 393.7],
  ['15-1/2"', 393.7],
  ['15 1/2"', 393.7],
  ['15½ in', 393.7],
  ['15 ½ in', 393.7],
  ['15½"', 393.7],
  ['15.5 in', 393.7],
  ['15.5in', 393.7],
  ['3/4 in', 19.05],
  ['¾"', 19.05],
  ['11/16"', 17.4625],
  ['⅛ in', 3.175],
  ['⅞ in', 22.225],
  ['1 ft', 304.8],
  ["1'", 304.8],
  ['1/2 ft', 152.4],
  ['1 ft 3 in', 381],
  ['1 ft 3 1/2 in', 393.7],
  ['1 ft 3-1/2"', 393.7],
  ['1\' 3"', 381],
  ['1\'3"', 381],
  ["1' 3 1/2 in", 393.7],
  ['1 ft ½ in', 317.5],
  ['12.5 mm', 12.5],
  ['12.5mm', 12.5],
  ['4 cm', 40],
  ['0.4 m', 400],
  ['  7 mm  ', 7],
])('the text %s carries its own unit: %d mm in every job', (text, expected) => {
  expect(mm(text, 'mm')).toBeCloseTo(expected, 10);
  expect(mm(text, 'in')).toBeCloseTo(expected, 10);
});

test.each(['15 mm 1/2 in', '1 in 1 ft', '1 ft 1 ft', '1 ft 2 mm', '1 ft 3', '1 ft 2 in 3 in', '1 m 2 cm'])(
  '%s: refused for mixing units',
  (text) => {
    expect(why(text, 'mm')).toMatch(/mixes units; only feet followed by inches/);
    expect(why(text, 'in')).toContain(`"${text}"`);
  },
);

test.each(['', '   ', '\t'])('blank text "%s": refused as empty', (text) => {
  expect(why(text, 'mm')).toMatch(/^an empty text is not a length/);
});

test.each([
  ['a word', 'wide'],
  ['a negative length', '-5 mm'],
  ['a negative fraction', '-1/2 in'],
  ['junk after the unit', '5 mm wide'],
  ['junk after the number', '12x'],
  ['a unit with a letter too many', '5 mmm'],
  ['an unknown unit', '5 yd'],
  ['a decimal comma', '12,5 mm'],
  ['an exponent', '1e3'],
  ['a unit alone', 'mm'],
  ['a fraction of a fraction', '3/4/5'],
  ['a fraction less a fraction', '1/2-1/4'],
  ['a plus sign', '+5'],
  ['the word NaN', 'NaN'],
  ['the word Infinity', 'Infinity'],
  ['an approximate mark', '~5 mm'],
])('%s (%s): refused, with the text and an example that can be read', (_case, text) => {
  const said = why(text, 'mm');
  expect(said).toContain(`"${text}" is not a length`);
  expect(said).toContain('12.5 mm');
  expect(parseLength(text, 'in').ok).toBe(false);
});

test.each([
  ['two bare numbers', '5 5'],
  ['two decimal points', '1.5.5'],
  ['two fractions', '1/2 1/2'],
  ['a decimal with a fraction', '15.5½'],
  ['a number before a mixed number', '2 1 1/2 in'],
])('%s (%s): refused', (_case, text) => {
  expect(parseLength(text, 'mm').ok).toBe(false);
  expect(parseLength(text, 'in').ok).toBe(false);
});

test('the examples in a refusal: each can be read', () => {
  const examples = ['12.5 mm', '4 cm', '3/4 in', '15-1/2"', '1 ft 3 1/2 in'];
  const said = why('wide', 'mm');
  for (const example of examples) {
    expect(said).toContain(example);
    expect(mm(example, 'mm')).toBeGreaterThan(0);
  }
});

test('a text over 40 characters: refused at once, quoting only its start', () => {
  const said = why('9'.repeat(41), 'mm');
  expect(said).toContain(`"${'9'.repeat(20)}…" is too long`);
  expect(why('1 '.repeat(100_000), 'mm')).toMatch(/too long/);
  expect(why('½'.repeat(41), 'mm')).toMatch(/too long/);
  expect(why(`5 mm${' '.repeat(40)}junk`, 'mm')).toMatch(/too long/);
});

test('a text of 40 characters: still read', () => {
  expect(mm(`${'0'.repeat(36)}5 mm`.slice(-40), 'mm')).toBe(5);
});

test.each(['1/0 in', '0/0 in', '5 1/0', '1 ft 1/0 in'])('%s, a division by zero: refused', (text) => {
  expect(why(text, 'mm')).toMatch(/not a finite length/);
});

test.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])(
  'the number %d: refused',
  (value) => {
    expect(why(value, 'mm')).toBe(`${value} is not a finite length`);
    expect(parseLength(value, 'in').ok).toBe(false);
  },
);

test('a number that overflows when turned into millimetres: refused', () => {
  expect(parseLength(1e308, 'in').ok).toBe(false);
  expect(parseLength(1e308, 'mm').ok).toBe(true);
});

test.each([
  ['1\'-3 1/2"', 15.5 * 25.4],
  ['5 MM', 5],
  ['2″', 50.8],
  ['1′ 6″', 457.2],
  [`${' '.repeat(50)}5 mm`, 5],
])('%s, as people also write it: read', (text, expected) => {
  expect(mm(text, 'mm')).toBeCloseTo(expected, 9);
});

test.each([
  ['11 5/8""', 295.275],
  ['5\'-3"', 1600.2],
  ['3 inches', 76.2],
  ['1 foot 2 inches', 355.6],
  ['12 millimeters', 12],
])('%s, as people write it: %d mm', (text, mm) => {
  const read = parseLength(text, 'mm');
  expect(read.ok && read.mm).toBeCloseTo(mm, 6);
});

test('a fraction of 1 or more after a whole number: refused with what it would be', () => {
  expect(parseLength('11 10/8', 'in')).toMatchObject({
    ok: false,
    why: expect.stringContaining('write 12 1/4'),
  });
});

test.each(['22ga', '22 gauge', '#22'])('%s: a gauge is no length, and where it goes is told', (text) => {
  expect(parseLength(text, 'in')).toMatchObject({ ok: false, why: expect.stringContaining('gauge: 22') });
});
