// Random openings for a part that is planned: on its own panels, from its own edges, of a size that may fit.
import type { Part, PartPanel } from '@tinwright/core';
import fc from 'fast-check';

const share = (least: number, most: number) => fc.integer({ min: least, max: most }).map((n) => n / 100);

/** Up to three openings of any shape, as a job in mm holds them. Many fit, some do not. */
export function cutoutsOf({ panels }: Part): fc.Arbitrary<readonly object[]> {
  return fc.array(
    fc
      .constantFrom(...panels)
      .chain((p) => fc.tuple(shape(extent(p)), place(p)))
      .map(([s, p]) => ({ ...s, ...p })),
    { minLength: 1, maxLength: 3 },
  );
}

function extent({ shape: edges }: PartPanel): readonly [number, number] {
  const along = (k: 0 | 1) => {
    const values = edges.map((e) => e.from[k]);
    return Math.max(...values) - Math.min(...values);
  };
  return [along(0), along(1)];
}

const two = (mm: number) => Math.max(0.5, Math.round(mm * 100) / 100);

function shape([x, y]: readonly [number, number]): fc.Arbitrary<object> {
  return fc.tuple(share(5, 60), share(5, 60), share(0, 50)).chain(([a, b, r]) => {
    const [length, width] = [two(a * x), two(b * y)];
    const [most, least] = [Math.max(length, width), Math.min(length, width)];
    return fc.constantFrom<object>(
      { type: 'round', diameter: least },
      { type: 'slot', length: most, width: least },
      { type: 'rectangle', length, width, radius: Math.floor(2 * r * 0.9 * least) / 2 },
      { type: 'keyhole', diameter: least, width: two(least / 2), length: two(least) },
      { type: 'vent', length: most, width: most, slot: two(least / 3), web: two(least / 4) },
      { type: 'louvre', length, width, height: two(width / 2), slot: two(least / 6) },
      { type: 'label', length, width: most, slot: two(least / 4) },
    );
  });
}

function place({ id, outline, shape: cut }: PartPanel): fc.Arbitrary<object> {
  const [x, y] = extent({ shape: cut } as PartPanel);
  const edge = fc.tuple(fc.constantFrom(...outline.map((e) => e.name)), share(10, 60));
  return fc
    .record({
      edges: fc.array(edge, { maxLength: 2 }),
      turn: fc.constantFrom(0, 0, 0, 30, 90, -45),
      row: fc.constantFrom(null, null, 2, 3),
    })
    .map(({ edges, turn, row }) => ({
      panel: id,
      ...(edges.length === 0
        ? {}
        : { from: Object.fromEntries(edges.map(([name, s]) => [name, two(s * Math.min(x, y))])) }),
      ...(turn === 0 ? {} : { turn }),
      ...(row === null ? {} : { columns: { count: row, pitch: two(x / (row + 1)) } }),
    }));
}
