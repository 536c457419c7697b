import { nearest, suggestion } from '@tinwright/core/internal';
import { expect, test } from 'vitest';
import { slips } from '../../src/errors/nearest.js';

// the usual worked examples of the edit distance, and counts by hand
test.each([
  ['kitten', 'sitting', 3],
  ['saturday', 'sunday', 3],
  ['flaw', 'lawn', 2],
  ['', 'hem', 3],
  ['hem', '', 3],
  ['hem', 'hem', 0],
  ['lenght', 'length', 2],
])('from %s to %s: %i slips, either way', (a, b, count) => {
  expect(slips(a, b)).toBe(count);
  expect(slips(b, a)).toBe(count);
});

const KEYS = ['length', 'width', 'height', 'hem', 'endTabs'];

// slips of one or two letters, counted by hand as insertions, deletions and replacements
test.each([
  ['lenght', 'length'],
  ['heigth', 'height'],
  ['widht', 'width'],
  ['hight', 'height'],
  ['wdith', 'width'],
  ['hen', 'hem'],
  ['endtabs', 'endTabs'],
  ['WIDTH', 'width'],
  ['width', 'width'],
])('%s: %s is the nearest known word', (word, known) => {
  expect(nearest(word, KEYS)).toBe(known);
});

test('a word like none: nothing is suggested', () => {
  expect(nearest('quantity', ['hem', 'gap'])).toBeNull();
  expect(nearest('xyz', ['hem', 'gap', 'leg'])).toBeNull();
});

test('no known words: nothing is suggested', () => {
  expect(nearest('width', [])).toBeNull();
});

test('two words equally near: the first listed is taken', () => {
  expect(nearest('leg', ['lug', 'log'])).toBe('lug');
  expect(nearest('leg', ['log', 'lug'])).toBe('log');
});

test('more than half the letters changed: no slip of the pen', () => {
  // six letters, limit three: three replaced is near, four is not
  expect(nearest('abcdef', ['abcxyz'])).toBe('abcxyz');
  expect(nearest('abcdef', ['abwxyz'])).toBeNull();
});

test('a suggestion: the near word first, then all that are known', () => {
  expect(suggestion('widht', ['length', 'width'])).toBe('Did you mean "width"? Known: length, width');
});

test('a suggestion for a word like none: only what is known', () => {
  expect(suggestion('quantity', ['hem', 'gap'])).toBe('Known: hem, gap');
});

test.each([
  ['inches', ['mm', 'in'], 'in'],
  ['galvanized', ['mild-steel', 'galvanised-steel'], 'galvanised-steel'],
  ['aluminum-5052', ['aluminium-5052-h32', 'copper'], 'aluminium-5052-h32'],
])('%s, as it is written elsewhere: the word meant', (word, known, meant) => {
  expect(nearest(word, known)).toBe(meant);
});
