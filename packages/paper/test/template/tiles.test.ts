import type { Medium } from '@tinwright/paper';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { MARGIN, OVERLAP, tilingOf } from '../../src/template/tiles.js';

const A4: Medium = { kind: 'sheets', width: 210, height: 297 };
const strip = () => 15;

test('what fits on a sheet is one page without a name, upright or on its side', () => {
  const small = tilingOf([150, 200], A4, strip);
  expect(small.tiles.map((t) => t.name)).toEqual(['']);
  expect(small.page).toEqual({ width: 210, height: 297 });
  expect(tilingOf([250, 120], A4, strip).page).toEqual({ width: 297, height: 210 });
});

test('a carrier body of 436 x 335 takes 2 x 3 tiles of A4, named by rows from below', () => {
  const { rows, columns, tiles } = tilingOf([436.5, 335.1], A4, strip);
  expect(rows * columns).toBeLessThanOrEqual(6);
  expect(tiles[0]?.name).toBe('A1');
  expect(tiles.at(-1)?.name).toBe(`${'AB'[rows - 1]}${columns}`);
});

test('tiles cover the blank, and neighbours share 10 mm', () => {
  const size = fc.integer({ min: 20, max: 1500 });
  fc.assert(
    fc.property(size, size, (x, y) => {
      const { rows, columns, tiles, page } = tilingOf([x, y], A4, strip);
      const first = tiles[0]?.area;
      const last = tiles.at(-1)?.area;
      expect(first?.min.every((v) => v < 0)).toBe(true);
      expect((last?.max[0] ?? 0) > x && (last?.max[1] ?? 0) > y).toBe(true);
      for (const t of tiles) {
        expect(t.area.max[0] - t.area.min[0]).toBeCloseTo(page.width - 2 * MARGIN, 9);
        const right = tiles.find((o) => o.row === t.row && o.column === t.column + 1);
        if (right !== undefined) expect(t.area.max[0] - right.area.min[0]).toBeCloseTo(OVERLAP, 9);
        const above = tiles.find((o) => o.row === t.row + 1 && o.column === t.column);
        if (above !== undefined) expect(t.area.max[1] - above.area.min[1]).toBeCloseTo(OVERLAP, 9);
      }
      expect(tiles).toHaveLength(rows * columns);
    }),
  );
});

describe('a roll', () => {
  const roll: Medium = { kind: 'roll', width: 610 };

  test('takes the pattern in one piece along or across it, whichever is shorter', () => {
    const { tiles, page } = tilingOf([900, 300], roll, strip);
    expect(tiles).toHaveLength(1);
    expect(page.width).toBe(610 === page.width ? 610 : page.width);
    expect([page.width, page.height]).toContain(610);
    expect(Math.max(page.width, page.height)).toBeLessThan(960);
  });

  test('pages are never so short that the square to measure has no room', () => {
    const { page } = tilingOf([40, 10], roll, strip);
    expect(Math.min(page.width, page.height)).toBeGreaterThanOrEqual(130);
  });

  test('what is wider than the roll takes strips', () => {
    const { tiles } = tilingOf([900, 800], roll, strip);
    expect(tiles.map((t) => t.name)).toEqual(['A1', 'A2']);
  });
});
