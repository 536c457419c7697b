import { FAMILIES, jobReader } from '@tinwright/core';
import { asked, defineFamily, panel, rectangle, value } from '@tinwright/core/family';
import { expect, test } from 'vitest';

const plate = (name: string, side: string) =>
  defineFamily({
    name,
    values: { [side]: value.size('side of the plate') },
    describe: { title: 'plate', summary: 'A square plate.', example: { [side]: 50 } },
    build: (p: Readonly<Record<string, number>>) => [
      panel('plate', rectangle(p[side] as number, p[side] as number)),
      asked(side, p[side] as number, 'x', { panels: ['plate'] }),
    ],
  } as never);

test.each(['name', 'quantity', 'grain', 'stock', 'bending', 'cutouts'])(
  'a parameter called %s, as every part has: refused when the family is defined',
  (key) => {
    expect(() => plate('plate', key)).toThrow(RangeError);
  },
);

test('a family with the name of another: refused by the reader that would have to choose', () => {
  expect(() => jobReader([...FAMILIES, plate('open-box', 'side')])).toThrow(/"open-box" already/);
  expect(() => jobReader([...FAMILIES, plate('square-plate', 'side')])).not.toThrow();
});
