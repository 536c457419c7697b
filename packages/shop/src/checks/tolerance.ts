import { cite, linearTolerance, type Source, type ToleranceClass } from '@tinwright/core';
import { brakesOf } from '../machines/brakes.js';
import type { Shop } from '../machines/shop.js';
import { plainCheck, type ShopCheck, type ShopSubject } from './check.js';
import { type ExpectedSize, remark } from './check-findings.js';
import { cutDeviation } from './iso-9013.js';

interface Expected extends ExpectedSize {
  readonly source: Source;
}

/** What sizes of the part are likely to come out at: bent ones by the brake there is, cut ones by the table. */
export const tolerance: ShopCheck = plainCheck('tolerance', (subject, shop) => {
  const expected = [...bent(subject, shop), ...cut(subject, shop)];
  const [first] = expected;
  if (first === undefined) return [];
  return [
    remark('tolerance', 'note', {
      value: first.deviation,
      unit: 'mm',
      values: { expected: expected.map(({ source: _, ...e }) => e) },
      source: expected.map((e) => e.source),
    }),
  ];
});

function bent({ formed, flat }: ShopSubject, shop: Shop): readonly Expected[] {
  const { press } = shop;
  if (flat.bends.length === 0 || (brakesOf(shop).length === 0 && press === null)) return [];
  const of: ToleranceClass = press === null ? 'c' : 'm';
  const angle = press === null ? 2 : 1;
  const size = Math.max(...formed.size);
  const value = linearTolerance(size, of);
  if (value === null) return [];
  return [
    {
      on: 'bent',
      size,
      deviation: value,
      angle,
      source: cite(`ISO 2768-1 class ${of}`, { basis: 'memory' }),
    },
  ];
}

function cut({ flat, sheet }: ShopSubject, { table }: Shop): readonly Expected[] {
  if (table === null) return [];
  const of = table.process === 'laser' ? 1 : 2;
  const size = Math.max(...flat.blank.max);
  const found = cutDeviation(of, size, sheet.thickness);
  if (found === null) return [];
  const { value } = found;
  return [
    {
      on: 'cut',
      size,
      deviation: value,
      angle: null,
      source: cite(`ISO 9013 class ${of}`, { basis: found.basis }),
    },
  ];
}
