import type { PartPlan, Point } from '@tinwright/core';
import type { Page, Words } from '@tinwright/paper';
import { pagesPdf, partTemplate, type TemplateOptions } from '@tinwright/paper';
import { typeface } from '@tinwright/paper/internal';
import { describe, expect, test } from 'vitest';
import { pageFlaws } from '../../../../tests/kit/page-flaws.js';
import { readPdf } from '../../../../tests/kit/read-pdf.js';
import { MARGIN } from '../../src/template/tiles.js';
import { box, planned } from '../plan/patterns.js';

const A4: TemplateOptions = { dims: 'mm', medium: { kind: 'sheets', width: 210, height: 297 } };
const wordsOf = (page: Page | undefined): readonly string[] =>
  (page?.blocks ?? []).flatMap((b) =>
    b.items.filter((i): i is Words => i.kind === 'words').map((w) => w.text),
  );

test('a small part is one page without a map', () => {
  const { pages, tiling } = partTemplate('garden', box({ length: 60, width: 50, height: 20 }), A4);
  expect([pages.length, tiling.tiles.length]).toEqual([1, 1]);
  expect(wordsOf(pages[0])).toContain('part, make 1');
  expect(wordsOf(pages[0]).join(' ')).not.toContain('glue');
});

describe('a part of several tiles', () => {
  const { pages, tiling } = partTemplate('garden', box(), A4);
  const [map, ...rest] = pages;

  test('first a map with the names of all tiles and what to do', () => {
    expect(rest).toHaveLength(tiling.tiles.length);
    for (const page of rest) {
      const [, name] = /tile (\S+), make 1/.exec(wordsOf(page).join('\n')) ?? [];
      expect(wordsOf(map)).toContain(name);
    }
    expect(wordsOf(map).join(' ')).toContain('Print at actual size');
    expect(wordsOf(map).join(' ')).toContain('Caution: cut edges');
  });

  test('every page has a caution and a square to measure', () => {
    for (const page of pages) {
      expect(wordsOf(page).join(' ')).toMatch(/Caution: /);
      expect(wordsOf(page)).toContain('100 mm square');
    }
  });

  test('each tile says what is cut and what is glued', () => {
    expect(wordsOf(rest[0])).toEqual(expect.arrayContaining(['glue A2 here']));
    expect(wordsOf(rest[1])).toEqual(expect.arrayContaining(['cut']));
  });

  test('the crosses of a seam lie at the same places of the pattern on both tiles', () => {
    const crosses = (page: Page | undefined) =>
      (page?.blocks[0]?.items ?? []).flatMap((i) => {
        if (i.kind !== 'stroke' || i.points.length !== 2 || i.pen !== 'narrow') return [];
        const [a, b] = i.points as [readonly [number, number], readonly [number, number]];
        return Math.abs(a[1] - b[1]) < 1e-9 && Math.abs(b[0] - a[0] - 6) < 1e-9 ? [(a[0] + b[0]) / 2] : [];
      });
    // tile A1 ends 8 mm from the right edge of its page, A2 starts 8 mm from the left of its: 5 mm inside either
    expect(crosses(rest[0]).some((x) => Math.abs(x - ((rest[0]?.width ?? 0) - 13)) < 1e-6)).toBe(true);
    expect(crosses(rest[1]).some((x) => Math.abs(x - 13) < 1e-6)).toBe(true);
  });

  test('no text is in the way of anything', () => {
    expect(pages.flatMap(pageFlaws)).toEqual([]);
  });
});

test('in inches the square is 4 in', () => {
  const { pages } = partTemplate('', box(), { ...A4, dims: '1/16' });
  for (const page of pages) expect(wordsOf(page)).toContain('4 in square');
});

test('from a roll in one piece', () => {
  const { pages } = partTemplate(
    '',
    planned({ family: 'bent-strip', width: 300, legs: [400, 500], angles: [90] }),
    {
      dims: 'mm',
      medium: { kind: 'roll', width: 610 },
    },
  );
  expect(pages).toHaveLength(1);
  expect([pages[0]?.width, pages[0]?.height]).toContain(610);
});

test('read back from PDF every corner of the outline is on its tiles where it belongs, within 0.05 mm', async () => {
  const part = box({ corner: 'lap', hem: { type: 'closed', length: 10 } });
  const { pages, tiling } = partTemplate('', part, A4);
  const read = await readPdf(await pagesPdf(pages, { title: '', language: 'en', face: typeface() }));
  let corners = 0;
  for (const [i, { area }] of tiling.tiles.entries()) {
    const points = read.pages[i + 1]?.paths.flat() ?? [];
    for (const { at } of part.flat.outline) {
      if (!at.every((v, k) => v > (area.min[k] as number) && v < (area.max[k] as number))) continue;
      const [x, y] = [at[0] - area.min[0] + MARGIN, at[1] - area.min[1] + MARGIN + tiling.strip];
      expect(
        points.some((p) => Math.hypot(p[0] - x, p[1] - y) < 0.05),
        `${at}`,
      ).toBe(true);
      corners += 1;
    }
  }
  expect(corners).toBeGreaterThanOrEqual(part.flat.outline.length);
});

test('sight lines of a brake are on the template, with the number of their bend', () => {
  const part = box({ length: 160, width: 100, height: 30 });
  const bend = part.flat.bends[0] as PartPlan['flat']['bends'][number];
  const [a, b] = bend.line;
  const aside = ([x, y]: Point): Point => [x + 3, y + 3];
  const line = [aside(a), aside(b)] as const;
  const options = { dims: 'mm', medium: { kind: 'sheets', width: 297, height: 420 } } as const;
  const drawn = (sights: object) =>
    partTemplate('', part, options, sights).pages.flatMap((p) => p.blocks.flatMap((b) => b.items));
  const words = (items: ReturnType<typeof drawn>) =>
    items.flatMap((i) => (i.kind === 'words' ? [i.text] : []));
  const dashed = (items: ReturnType<typeof drawn>) =>
    items.filter((i) => i.kind === 'stroke' && i.pen === 'centre').length;
  const [without, withOne] = [drawn({}), drawn({ sights: [{ bend: bend.id, line }] })];
  expect(words(without).join()).not.toMatch(/sight line|\bS1\b/);
  expect(words(withOne).join()).toMatch(/sight line of B1|\bS1\b/);
  expect(dashed(withOne)).toBe(dashed(without) + 1);
});
