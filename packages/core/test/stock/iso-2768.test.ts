import { linearTolerance } from '@tinwright/core';
import { ISO_2768_LINEAR } from '@tinwright/core/internal';
import { describe, expect, test } from 'vitest';

// ISO 2768-1:1989, linear sizes, ± mm: read in a copy on scribd.com 585640440. Class c over 0.5 to 3 and over 3 to
// 6 mm from memory; the copy prints the older figures of DIN 7168 there.
const BANDS = [3, 6, 30, 120, 400, 1000, 2000, 4000] as const;
const PRINTED = {
  f: [0.05, 0.05, 0.1, 0.15, 0.2, 0.3, 0.5, null],
  m: [0.1, 0.1, 0.2, 0.3, 0.5, 0.8, 1.2, 2],
  c: [0.2, 0.3, 0.5, 0.8, 1.2, 2, 3, 4],
  v: [null, 0.5, 1, 1.5, 2.5, 4, 6, 8],
} as const;

describe.each(['f', 'm', 'c', 'v'] as const)('class %s', (of) => {
  test.each(
    BANDS.map((upTo, i) => [i === 0 ? 0.5 : (BANDS[i - 1] as number), upTo, PRINTED[of][i]] as const),
  )('over %d to %d mm: ± %j mm', (over, upTo, printed) => {
    for (const size of [over + 0.01, (over + upTo) / 2, upTo])
      expect(linearTolerance(size, of)).toBe(printed);
  });

  test('outside the table there is none', () => {
    expect(linearTolerance(0.49, of)).toBeNull();
    expect(linearTolerance(4000.01, of)).toBeNull();
  });
});

test('eight bands in every class, and no class is finer than the one before it', () => {
  const classes = [ISO_2768_LINEAR.f, ISO_2768_LINEAR.m, ISO_2768_LINEAR.c, ISO_2768_LINEAR.v];
  for (const list of classes) expect(list).toHaveLength(BANDS.length);
  for (const [i, list] of classes.slice(1).entries())
    for (const [k, v] of list.entries()) {
      const finer = classes[i]?.[k];
      if (v !== null && finer !== null && finer !== undefined) expect(v).toBeGreaterThanOrEqual(finer);
    }
});
