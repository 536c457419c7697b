import type { Item, Page } from '@tinwright/paper';
import { pagesPdf } from '@tinwright/paper';
import { typeface } from '@tinwright/paper/internal';
import { describe, expect, test } from 'vitest';
import { readPdf } from '../../../../tests/kit/read-pdf.js';
import { letter } from '../../src/page/letter.js';
import { oneByOne, type PendingPage } from '../../src/page/pending.js';
import { spareFont } from '../../src/page/spare-font.js';
import { SIZE_PER_CAPITAL } from '../../src/page/typeface.js';
import { spareBytes } from '../spare.js';

const face = typeface();
const info = { title: 'Plan of a tray', language: 'en', face };
const page = (...items: readonly Item[]): Page => ({
  title: 'page',
  width: 210,
  height: 297,
  blocks: [
    { alt: 'a picture', items },
    { alt: null, items: [] },
  ],
});

test('size, title, language and words for pictures are read back', async () => {
  const wide = { ...page(), width: 431.8, height: 279.4 };
  const read = await readPdf(await pagesPdf([page(), wide], info));
  expect([read.title, read.language]).toEqual(['Plan of a tray', 'en']);
  const sizes = read.pages.flatMap((p) => [p.width, p.height]);
  [210, 297, 431.8, 279.4].forEach((v, i) => {
    expect(sizes[i]).toBeCloseTo(v, 4);
  });
  expect(read.pages[0]?.alts).toEqual(['a picture']);
});

test('lines are where they were drawn, to a thousandth of a millimetre', async () => {
  const drawn = [
    [10, 20],
    [110, 20],
    [110, 95.25],
  ] as const;
  const read = await readPdf(
    await pagesPdf([page({ kind: 'stroke', pen: 'wide', points: drawn, closed: true })], info),
  );
  const [path] = read.pages[0]?.paths ?? [];
  expect(path).toHaveLength(4); // closed
  drawn.forEach(([x, y], i) => {
    expect(path?.[i]?.[0]).toBeCloseTo(x, 3);
    expect(path?.[i]?.[1]).toBeCloseTo(y, 3);
  });
});

test('text is text, where it was laid out and as long, lying and standing', async () => {
  const items = [
    letter(face, 'B1 up 90° AVAYo', [30, 40], { height: 2.5 }),
    letter(face, '436.5 × Ø3.3', [60, 70], { height: 3.5, turn: 90, bold: true }),
  ];
  const read = await readPdf(await pagesPdf([page(...items)], info));
  const texts = read.pages[0]?.texts ?? [];
  expect(texts.map((t) => t.text)).toEqual(items.map((w) => w.text));
  items.forEach((w, i) => {
    expect(texts[i]?.at[0]).toBeCloseTo(w.at[0], 2);
    expect(texts[i]?.at[1]).toBeCloseTo(w.at[1], 2);
    expect(texts[i]?.width).toBeCloseTo(w.width, 1.5);
    expect(texts[i]?.size).toBeCloseTo(w.height * SIZE_PER_CAPITAL, 2);
    expect(texts[i]?.turn).toBe(w.turn);
  });
});

test('the same pages give the same bytes, dated 1970', async () => {
  const pages = [page(letter(face, 'body', [30, 40], { height: 2.5 }))];
  const [a, b] = await Promise.all([pagesPdf(pages, info), pagesPdf(pages, info)]);
  expect(Buffer.from(a)).toEqual(Buffer.from(b));
  expect(Buffer.from(a).toString('latin1')).toContain('D:19700101000000Z');
});

test('pages that are made when they are asked for give the same bytes as a list of them', async () => {
  const pages = [1, 2, 3].map((n) => page(letter(face, `page ${n}`, [30, 40], { height: 2.5 })));
  const one = oneByOne(pages.map((p): PendingPage => ({ ...p, draw: () => p.blocks })));
  expect(Buffer.from(await pagesPdf(one, info))).toEqual(Buffer.from(await pagesPdf(pages, info)));
});

test('a hundred lines of text take a few kilobytes', async () => {
  const items = Array.from({ length: 100 }, (_, i) =>
    letter(face, `line ${i}: 19.1 to 319.8`, [30, 280 - 2.5 * i], { height: 2.5 }),
  );
  expect((await pagesPdf([page(...items)], info)).length).toBeLessThan(8000);
});

describe('with a spare font', () => {
  test('its letters are read back as text', async () => {
    const spare = typeface(spareFont(await spareBytes()));
    const words = letter(spare, 'Гряда łapa 1', [30, 40], { height: 2.5 });
    const bytes = await pagesPdf([page(words)], { ...info, face: spare });
    const [read] = (await readPdf(bytes)).pages;
    // runs of nothing but space are not read
    expect(read?.texts.map((t) => t.text.trim())).toEqual(['Гряда', 'ł', 'apa 1']);
    expect(Buffer.from(bytes)).toEqual(Buffer.from(await pagesPdf([page(words)], { ...info, face: spare })));
  });
});
