// Every rule with a number at its limit: it passes there and fails a hundredth of a millimetre past it. Limits typed
// again from the sources named beside them.
import { describe, expect, test } from 'vitest';
import { found, STRICT } from './kit.js';
import { BENDS } from './limits/bends.js';
import { CUTS } from './limits/cuts.js';
import { SIZES } from './limits/sizes.js';

const CASES = [...CUTS, ...BENDS, ...SIZES];

describe.each(CASES.map((c) => [`${c.code}: ${c.name}`, c] as const))('%s', (_, c) => {
  const shop = c.shop ?? STRICT;
  const step = c.fails === 'below' ? -0.01 : 0.01;

  test('passes at its limit', () => {
    expect(found(c.code, c.part(c.at + (c.fails === 'below' ? 1e-9 : -1e-9)), shop)).toBeUndefined();
  });

  test('fails past it, with number, limit and source', () => {
    const finding = found(c.code, c.part(c.at + step), shop);
    expect(finding?.severity).toBe(c.severity);
    expect(Math.abs((finding?.value as number) - c.value)).toBeLessThan(0.02);
    expect(Math.abs((finding?.limit as number) - c.limit)).toBeLessThan(0.02);
    expect(finding?.source).toMatch(c.source);
    expect(finding?.fix).not.toBe('');
    expect(finding?.at).toHaveLength(2);
  });
});
