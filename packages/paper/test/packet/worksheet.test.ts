import type { Page } from '@tinwright/paper';
import { describe, expect, test } from 'vitest';
import { pageFlaws } from '../../../../tests/kit/page-flaws.js';
import { CARRIER, pagesOf, saidOn, sectionOf, wordsOf } from './packet.js';

const carrier = CARRIER;
const pages = pagesOf(carrier, { worksheet: true });
const answers = (list: readonly Page[]) =>
  wordsOf(sectionOf(list, 'answers')).flatMap((w) => (w.value === undefined ? [] : [w.value]));

test('worksheets in place of plans, answers on the last page, nothing that gives them away', () => {
  const names = pages.flatMap((p) => p.anchors?.filter((a) => a.level === 0).map((a) => a.name) ?? []);
  expect(names).toEqual(['cover', 'cautions', 'worksheets', 'answers']);
  expect(saidOn(sectionOf(pages, 'worksheets'))).not.toContain('Marking out');
});

test('what is left out stands as a letter, and nowhere on the worksheets as a size', () => {
  const left = answers(pages);
  expect(left.length).toBeGreaterThan(6);
  const [body] = carrier.parts;
  const bends = body?.flat.bends.flatMap((b) => b.line.flatMap((p) => [p[0], p[1]])) ?? [];
  const own = left.slice(0, 6);
  for (const value of own) expect(bends.some((v) => Math.abs(v - value) < 1e-6)).toBe(true);
  const first = sectionOf(pages, 'worksheets').slice(0, 2); // the body's
  for (const value of own)
    expect(wordsOf(first).some((w) => w.value !== undefined && Math.abs(w.value - value) < 1e-6)).toBe(false);
  const texts = wordsOf(first)
    .filter((w) => w.bold)
    .map((w) => w.text);
  for (const letter of ['a', 'b', 'c', 'd', 'e', 'f']) expect(texts).toContain(letter);
});

test('every size left out can be worked out: the answer of a box is hand arithmetic', () => {
  // the hem of the carrier's side: its line lies 12 - 0.68 + 1.32 / 2 - … from the edge; read it off the pattern itself
  const [body] = carrier.parts;
  const hem = body?.flat.bends.find((b) => b.id === 'hem-south');
  const y = hem?.line[0][1] ?? 0;
  // finished width of the hem 12, deduction and allowance of its fold: 12 - (BD + BA) / 2 + BA / 2
  const { allowance = 0, deduction = 0 } = hem?.terms ?? {};
  expect(y).toBeCloseTo(12 - (deduction + allowance) / 2 + allowance / 2, 9);
  expect(answers(pages).some((v) => Math.abs(v - y) < 1e-9)).toBe(true);
});

describe('sets', () => {
  const three = pagesOf(carrier, { worksheet: true, sets: 3 });
  test('sheets that differ in the name alone stand once, with how many are wanted', () => {
    const own = sectionOf(three, 'worksheets');
    expect(own).toHaveLength(sectionOf(pages, 'worksheets').length);
    for (const page of own) expect(saidOn([page])).toContain('3 copies: one for each set');
    expect(answers(three)).toEqual(answers(pages));
  });
});

test('whoever teaches says which sizes are left out', () => {
  const chosen = pagesOf(carrier, { worksheet: true, leaveOut: ['B1', 'hem-north'] });
  const said = saidOn(sectionOf(chosen, 'answers'));
  const told = said.match(/bend line [B\d ]+/g) ?? [];
  expect(told).not.toHaveLength(0);
  const body = carrier.parts[0]?.flat.bends ?? [];
  const hem = `B${body.findIndex((b) => b.id === 'hem-north') + 1}`;
  for (const line of told) expect(['B1', hem].some((b) => line.split(' ').includes(b))).toBe(true);
});

test('letters are in nothing’s way', () => {
  expect(pages.flatMap(pageFlaws)).toEqual([]);
});
