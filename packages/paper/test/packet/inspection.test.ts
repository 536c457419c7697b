import { planJob, readJob } from '@tinwright/core';
import { expect, test } from 'vitest';
import { planned } from '../../../files/test/samples.js';
import { CARRIER, pagesOf, sectionOf, wordsOf } from './packet.js';

/** Nominal and tolerance in the row that starts with `what`. */
const rowOf = (texts: readonly string[], what: string): readonly string[] => {
  const at = texts.findIndex((t) => t.startsWith(what));
  const nominal = texts.findIndex((t, i) => i > at && /^[\d.]+$/.test(t));
  return texts.slice(nominal, nominal + 2);
};
const textsOf = (plan: Parameters<typeof pagesOf>[0], options: Parameters<typeof pagesOf>[1] = {}) =>
  wordsOf(sectionOf(pagesOf(plan, { ...options, sections: ['inspection'] }), 'inspection')).map(
    (w) => w.text,
  );
const box = (length: number) =>
  planned([{ name: 'tray', family: 'open-box', length, width: 120, height: 30, note: '' }]);

// ISO 2768-1:1989, class c: 6 to 30 ±0.5, 30 to 120 ±0.8, 120 to 400 ±1.2, 400 to 1000 ±2; m: half bands below
test('bent sizes are held to class c at the edges of its bands when cut ones are held to m', () => {
  const texts = textsOf(box(400));
  expect(rowOf(texts, 'over the west and east')).toEqual(['400', '±1.2']);
  expect(rowOf(texts, 'over the south and north')).toEqual(['120', '±0.8']);
  const over = textsOf(box(400.1));
  expect(rowOf(over, 'over the west and east')).toEqual(['400.1', '±2']);
});

test('cut sizes are held to the class asked for', () => {
  const of = (tolerance: 'm' | 'f') => rowOf(textsOf(box(400), { tolerance }), 'blank, along the near edge');
  // 400 + 2 x 30 - 2 x 1.77 = 456.5: 400 to 1000, class m 0.8, class f 0.3
  expect(of('m')).toEqual(['456.5', '±0.8']);
  expect(of('f')).toEqual(['456.5', '±0.3']);
});

test('a column to fill in for each piece, three at most, and the object put together', () => {
  const texts = textsOf(CARRIER);
  expect(texts.filter((t) => t.startsWith('found 2'))).toHaveLength(1); // two ends
  expect(rowOf(texts, 'overall length')).toEqual(['320', '±1.2']);
  expect(rowOf(texts, 'overall width')).toEqual(['160', '±1.2']);
});

test('objects that nothing joins are measured each by itself, not with the room they are drawn apart', () => {
  const joint = (n: number) =>
    ({
      name: `on-${n}`,
      from: `tray-${n}.south-out`,
      to: `stiffener-${n}.leg-2-back`,
      by: 'none',
    }) as const;
  const job = readJob({
    units: 'mm',
    stock: { material: 'mild-steel', thickness: 1 },
    parts: [
      { name: 'tray', family: 'open-box', length: 300, width: 120, height: 40, quantity: 3 },
      { name: 'stiffener', family: 'bent-strip', width: 80, legs: [40, 30], angles: [90], quantity: 2 },
    ],
    joints: [
      joint(1),
      joint(2),
      { name: 'back', from: 'tray-3.north-out', to: 'tray-1.north-out', by: 'none' },
    ],
  });
  const texts = textsOf(planJob(job));
  const said = texts.filter((t) => t.startsWith('Put together'));
  expect(said).toEqual(['Put together: tray-1, stiffener-1, tray-3', 'Put together: tray-2, stiffener-2']);
  const lengths = texts.flatMap((t, i) => (t === 'overall length' ? [texts[i + 1]] : []));
  expect(lengths).toEqual(['300', '300']);
});

test('in inches sizes and tolerances are in inches', () => {
  const texts = textsOf(box(254), { paper: 'letter', dims: 'in' });
  // ±1.2 mm = 0.047 in
  expect(rowOf(texts, 'over the west and east')).toEqual(['10', '±0.047']);
});
