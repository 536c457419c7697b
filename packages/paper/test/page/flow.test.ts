import type { Box } from '@tinwright/core';
import type { Words } from '@tinwright/paper';
import { typeface } from '@tinwright/paper/internal';
import { expect, test } from 'vitest';
import { type Flowing, flow, type SetPassage, type Strip, setItems } from '../../src/page/flow.js';
import { letter } from '../../src/page/letter.js';

const face = typeface();
const strip = (text: string, height: number): Strip => ({
  height,
  items: [letter(face, text, [0, -height], { height: 2.5 })],
});
const passage =
  (name: string, rows: number, height: number, head = 0): Flowing =>
  () => ({
    alt: null,
    heading: head === 0 ? null : strip(`${name} heading`, head),
    head: head === 0 ? null : strip(`${name} head`, head),
    rows: Array.from({ length: rows }, (_, i) => strip(`${name}${i + 1}`, height)),
  });
/** Columns 100 mm high and 50 wide. */
const columns = (index: number): Box => ({ min: [60 * index, 0], max: [60 * index + 50, 100] });
const texts = (sets: readonly SetPassage[], column: number) =>
  sets
    .filter((s) => s.column === column)
    .map((s) =>
      setItems(s)
        .map((i) => (i as Words).text)
        .join(' '),
    );

test('passages stand under each other with 5 mm between them', () => {
  const sets = flow([passage('a', 2, 10), passage('b', 1, 10)], columns);
  expect(sets.flatMap((s) => setItems(s).map((i) => (i as Words).at))).toEqual([
    [0, 90],
    [0, 80],
    [0, 65],
  ]);
});

test('a long passage goes on in the next column under its head, without its heading', () => {
  const sets = flow([passage('a', 12, 10, 5)], columns);
  expect(texts(sets, 0)).toEqual(['a heading a head a1 a2 a3 a4 a5 a6 a7 a8 a9']);
  expect(texts(sets, 1)).toEqual(['a head a10 a11 a12']);
});

test('a short one is not torn apart: it waits, and a later one that fits goes first', () => {
  const sets = flow([passage('a', 6, 10), passage('b', 5, 10), passage('c', 2, 10)], columns);
  expect(texts(sets, 0)).toEqual(['a1 a2 a3 a4 a5 a6', 'c1 c2']);
  expect(texts(sets, 1)).toEqual(['b1 b2 b3 b4 b5']);
});

test('a long one is not begun for one or two rows', () => {
  const sets = flow([passage('a', 7, 10), passage('b', 12, 10)], columns);
  expect(texts(sets, 0)).toEqual(['a1 a2 a3 a4 a5 a6 a7']);
  expect(texts(sets, 1)).toEqual(['b1 b2 b3 b4 b5 b6 b7 b8 b9 b10']);
});

test('columns too low for anything are left empty', () => {
  const low = (index: number): Box => (index === 0 ? { min: [0, 0], max: [50, 8] } : columns(index));
  expect(flow([passage('a', 2, 10)], low).map((s) => s.column)).toEqual([1]);
});

test('a row higher than every column is refused', () => {
  expect(() => flow([passage('a', 1, 120)], columns)).toThrow('higher than a column');
});

test('each passage is laid out once for a width', () => {
  let count = 0;
  const counted: Flowing = (width) => {
    count += 1;
    return passage('a', 30, 10)(width);
  };
  flow([counted], columns);
  expect(count).toBe(1);
});

test('a strip with words of its own is a picture by itself, what stands round it is not', () => {
  const picture: Strip = { ...strip('picture', 10), alt: 'a picture' };
  const sets = flow(
    [() => ({ alt: null, heading: null, head: null, rows: [strip('a', 10), picture, strip('b', 10)] })],
    columns,
  );
  expect(sets.map((s) => [s.alt, texts([s], 0).join()])).toEqual([
    [null, 'a'],
    ['a picture', 'picture'],
    [null, 'b'],
  ]);
  expect(sets.flatMap((s) => setItems(s).map((i) => (i as Words).at[1]))).toEqual([90, 80, 70]);
});
